import type { Access, Basis, SourceKey } from '../provenance/index.js';

/** One number of the library with its unit as printed, its source and how it was obtained. */
export interface LibraryValue {
  readonly value: number;
  /** As printed, for example `GPa`; empty for a plain number. */
  readonly unit: string;
  readonly source: SourceKey;
  /** Table or page in the source. */
  readonly where: string;
  readonly basis: Basis;
  readonly access: Access;
  readonly confidence?: 'high' | 'medium' | 'low';
  /** Range and standard deviation, in the same unit. */
  readonly low?: number;
  readonly high?: number;
  readonly sd?: number;
  readonly note?: string;
}

/** A material, thread or table row of the library. */
export interface LibraryEntry {
  readonly label: string;
  readonly note?: string;
  /** Further sources on which the note rests. */
  readonly sources?: readonly SourceKey[];
  readonly values: Readonly<Record<string, LibraryValue>>;
}

/** A ready-made cloth; its fibre is an entry of the library. */
export interface LibraryFabric extends LibraryEntry {
  readonly fibre: string;
  readonly architecture: 'ud' | 'woven' | 'multiaxial' | 'mat';
  readonly weave?: 'plain' | 'twill' | 'satin';
  /** Layers of a multiaxial in order: angle in degrees, share of the areal mass. */
  readonly layers?: readonly { readonly angle: number; readonly share: number }[];
}

/** A ready-made ply; the entries of the library nearest to what it is made of, with which its modulus is compared. */
export interface LibraryPly extends LibraryEntry {
  readonly fibre?: string;
  readonly resin?: string;
  /** `ud` when not given. */
  readonly architecture?: 'ud' | 'woven';
}

/** A yarn (the fibre as spun, without a size) or a sewing thread. */
export interface LibraryThread extends LibraryEntry {
  readonly form: 'yarn' | 'thread';
  /** The thread entry whose values hold where this one gives none. */
  readonly inherits?: string;
}

/** A source: who, what, where and when, and how it was reached. */
export interface BibliographyEntry {
  readonly citation: string;
  readonly access: Access;
  /** True for the source of an equation, a term or a convention. */
  readonly model?: boolean;
  readonly note?: string;
}
