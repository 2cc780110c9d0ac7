import { fail } from '../../problem/index.js';
import { type Note, type SourceKey, uniqueNotes, uniqueSources } from '../../provenance/index.js';
import { entry } from '../matrix3.js';
import { stripStiffness } from '../shear/index.js';
import { stiffness } from '../stiffness.js';
import type { Laminate } from '../types.js';
import { demandLengths } from './plate.js';
import { isUnsymmetric, thinFilmNotes } from './thin-film.js';

/** A delamination as long strip across x, and what the laminate under it is strained by. */
export interface StripBlister {
  /** Whole length of the blister along x, m. */
  readonly length: number;
  /** Strain of the laminate along x, tension positive; 0 when not given. */
  readonly strain?: number;
  /** J/m² */
  readonly toughness?: number;
  /** The plies on the other side of the delamination, to tell how thin the film is beside them. */
  readonly base?: Laminate;
}

/** Buckling of the plies above a delamination and what drives the delamination on. */
export interface StripBlisterResult {
  /** Strain of the laminate, negative, and force in the plies above, N/m, negative, at which they buckle. */
  readonly criticalStrain: number;
  readonly criticalN: number;
  /** Energy release rate at each of the two fronts under the given strain, J/m²; 0 before buckling. */
  readonly G: number;
  /** Strain, negative, at which G reaches the given toughness. */
  readonly growthStrain?: number;
  readonly notes: readonly Note[];
  readonly sources: readonly SourceKey[];
}

/** Longest blister, in thicknesses of the plies above it, for which shear through the thickness is worth a warning. */
const stubby = 20;

/**
 * Buckling and growth of a delamination as wide as it likes across x: the plies above it are a clamped strip on a stiff base.
 *
 * Ncr = 4π² D/l², εcr = Ncr/A11, with D the component x of D - B A⁻¹ B cut down to x and xy (`stripStiffness`): w, u and v follow x
 * alone, vanish at both ends, and leave Nx and Nxy the same all along. Buckled, with compression e0 > εcr,
 * G = A11 (e0 - εcr)(e0 + 3 εcr)/2, so growth starts at e0 = √(4 εcr² + 2 Gc/A11) - εcr. Thin film: the laminate below neither bends nor
 * relaxes and is strained along x alone, εy = γxy = 0. Waves along the strip are not covered.
 *
 * @param sublaminate the plies above the delamination, with angles from the laminate's x
 * @param blister length in m, toughness in J/m², both more than 0
 * @throws out-of-range for length, strain or toughness; not-admissible as `stiffness`
 * @source Chai, Babcock & Knauss 1981 (one isotropic film); the laminated film is derived in docs/theory/plates.md
 */
export function stripBlister(sublaminate: Laminate, blister: StripBlister): StripBlisterResult {
  const { length, strain = 0, toughness } = blister;
  demandLengths({ length });
  if (!Number.isFinite(strain)) {
    fail({ code: 'out-of-range', message: `the strain is ${strain}`, allowed: 'a finite strain' });
  }
  if (toughness !== undefined && !(toughness > 0 && Number.isFinite(toughness))) {
    fail({ code: 'out-of-range', message: `the toughness is ${toughness} J/m²`, allowed: 'a finite value above 0' });
  }
  const film = stiffness(sublaminate);
  const A11 = entry(film.A, 0, 0);
  const N = (4 * Math.PI ** 2 * stripStiffness(film).D11) / (length * length);
  const critical = N / A11;
  const e0 = Math.max(-strain, critical);
  return {
    criticalStrain: -critical,
    criticalN: -N,
    G: (A11 * (e0 - critical) * (e0 + 3 * critical)) / 2,
    ...(toughness === undefined
      ? {}
      : { growthStrain: critical - Math.sqrt(4 * critical * critical + (2 * toughness) / A11) }),
    notes: uniqueNotes([
      ...sublaminate.notes,
      ...thinFilmNotes(film, blister.base),
      ...(isUnsymmetric(film) ? [unsymmetric] : []),
      ...shortNotes(length, sublaminate.thickness),
    ]),
    sources: uniqueSources(sublaminate.sources, ['chai-babcock-knauss-1981', 'selvage-2026-derivation']),
  };
}

const unsymmetric: Note = {
  level: 'assumption',
  text: 'The plies that buckle are not symmetric among themselves: bending stretches and shears them, which a long strip is free to do between its two edges. They buckle later where its ends are near.',
};

function shortNotes(length: number, thickness: number): Note[] {
  if (length >= stubby * thickness) return [];
  return [
    {
      level: 'warning',
      text: `The blister is ${(length / thickness).toPrecision(2)} thicknesses long; below ${stubby} shear through the thickness lowers its buckling load.`,
    },
  ];
}
