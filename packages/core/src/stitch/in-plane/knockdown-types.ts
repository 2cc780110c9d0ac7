import type { Note, SourceKey } from '../../provenance/index.js';
import type { Estimate, InPlaneParameters } from './estimate.js';
import type { WavyPly } from './formulas.js';
import type { PublishedChange } from './published.js';

/** Stitches seen by fibres loaded along their length. SI units. */
export interface KnockdownInput {
  /** The ply whose fibres are loaded. */
  readonly ply: WavyPly;
  /** Distance between holes across the loaded fibres, m: the row spacing for fibres along the rows, the pitch for fibres across them. */
  readonly spacing: number;
  /** Distance between holes along a row, m. */
  readonly pitch: number;
  /** 1/m^2 */
  readonly penetrationDensity: number;
  /** Diameter of the round bundle of the legs in a hole, m. */
  readonly bundleDiameter: number;
  /** Measured width of hole or resin pocket, m; from the bundle when not given. */
  readonly holeWidth?: number;
  /** Of the needle, m; the width of the hole when not given. */
  readonly needleDiameter?: number;
  readonly parameters?: Partial<InPlaneParameters>;
}

/** What stitches take from a laminate in its plane: factors on the value without stitches. */
export interface InPlaneKnockdown {
  /** Share of the width whose fibres are disturbed. */
  readonly affectedWidth: Estimate;
  /** Angle of the fibres beside a hole, radians. */
  readonly waviness: Estimate;
  readonly modulus: Estimate;
  /** `lower`: the whole section at the strength of the disturbed strips; `upper`: mean over the width. */
  readonly compression: { readonly lower: Estimate; readonly upper: Estimate };
  /** Strength by cut fibres alone; printed losses can be far larger. */
  readonly tension: Estimate;
  /** Bending across a row, fibres running across it: `lower` with the holes as gaps, `upper` by cut fibres alone. */
  readonly perforation: { readonly lower: Estimate; readonly upper: Estimate };
  /** Share of the area that the thread alone takes, and the thread with its resin pockets. */
  readonly displaced: { readonly lower: number; readonly upper: Estimate };
  /**
   * 1/(1 - displaced): the thickness under a soft tool, where the fibres between the holes keep their density and nominal stresses fall by as much;
   * in a closed tool the fibre fraction between the holes.
   */
  readonly crowding: { readonly lower: number; readonly upper: Estimate };
  /** In print. */
  readonly published: readonly PublishedChange[];
  readonly notes: readonly Note[];
  readonly sources: readonly SourceKey[];
}
