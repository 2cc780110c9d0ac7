import { fail } from '../../problem/index.js';
import { type Note, type SourceKey, uniqueNotes, uniqueSources } from '../../provenance/index.js';
import { times } from '../axes.js';
import { stiffness } from '../stiffness.js';
import type { Laminate, Vector3 } from '../types.js';
import { type EllipseRelease, ellipseGrowth } from './ellipse-growth.js';
import { buckleEllipse } from './ellipse-ritz.js';
import { growthMultiplier } from './growth-multiplier.js';
import { demandLengths, reducedBending } from './plate.js';
import { thinFilmNotes, unsymmetricNotes } from './thin-film.js';

/** An elliptic delamination with its axes along x and y. */
export interface EllipseBlister {
  /** Half axes along x and y, m; both alike for a circle. */
  readonly a: number;
  readonly b: number;
  /** Strain of the laminate: x, y, xy with engineering shear, tension positive. */
  readonly strain: Vector3;
  /** J/m² */
  readonly toughness?: number;
  /** The plies on the other side of the delamination, to tell how thin the film is beside them. */
  readonly base?: Laminate;
}

/** The state at which the plies above an elliptic delamination buckle, and what drives it on. */
export interface EllipseBlisterResult {
  /** What the given strain is multiplied by to buckle them. */
  readonly multiplier: number;
  readonly strain: Vector3;
  /** N/m in the plies above, before they buckle. */
  readonly N: Vector3;
  /**
   * Energy release rate under the given strain, J/m², as the mean over an edge that grows along x alone and along y alone; 0 before
   * buckling.
   */
  readonly G: readonly [x: number, y: number];
  /** What the given strain is multiplied by until the larger G reaches the toughness; absent when that is beyond 20 times buckling. */
  readonly growthMultiplier?: number;
  readonly notes: readonly Note[];
  readonly sources: readonly SourceKey[];
}

/** Ratio of the axes beyond which the polynomials of the solution no longer follow the waves. */
const slender = 3;
/** Multiple of the buckling strain beyond which they no longer follow its folds. */
const deep = 5;
/** Share of the deflection to the other side that is worth a warning. */
const contact = 0.02;

/**
 * Buckling and growth of an elliptic delamination: the plies above it are a clamped anisotropic plate strained with the laminate.
 *
 * Ritz: w = (1 - ξ² - η²)² Σ c ξ^i η^j up to the sixth power, energy of D' = D - B A⁻¹ B with D16 and D26 against the work of N = A ε; an upper
 * bound that for a circle under even compression is 14.682 D/R². Past buckling the membrane strains of moderately large deflections
 * are added and G is the loss of energy per new area, see `ellipseGrowth`; its split into modes and its peak along the edge are not told.
 *
 * @param sublaminate the plies above the delamination, with angles from the laminate's x
 * @param blister half axes in m, toughness in J/m², all more than 0
 * @throws out-of-range for axes or toughness, for a strain that is not finite or under which nothing buckles; not-admissible as `stiffness`;
 *   not-computable for axes whose energy a number of 64 bits cannot hold
 * @source Timoshenko & Gere 1961 (clamped circle); Hutchinson & Suo 1992 (growth of the circle, near buckling); the series for the
 *   ellipse is derived in docs/theory/plates.md
 */
export function ellipseBlister(sublaminate: Laminate, blister: EllipseBlister): EllipseBlisterResult {
  const { a, b, strain, toughness } = blister;
  demandLengths({ a, b });
  if (!strain.every(Number.isFinite)) {
    fail({ code: 'out-of-range', message: `the strain is ${strain.join(', ')}`, allowed: 'three finite strains' });
  }
  if (toughness !== undefined && !(toughness > 0 && Number.isFinite(toughness))) {
    fail({ code: 'out-of-range', message: `the toughness is ${toughness} J/m²`, allowed: 'a finite value above 0' });
  }
  const film = stiffness(sublaminate);
  const [N, D] = [times(film.A, strain), reducedBending(film.A, film.B, film.D)];
  const buckling = buckleEllipse(D, [a, b], N);
  if (buckling === undefined) {
    return fail({
      code: 'out-of-range',
      message: `the strain ${strain.join(', ')} compresses the plies in no direction`,
      allowed: 'a strain under which they are compressed or sheared',
    });
  }
  const { multiplier } = buckling;
  const scaled = ([x, y, xy]: Vector3): Vector3 => [multiplier * x, multiplier * y, multiplier * xy];
  const buckled = multiplier < 1;
  const release =
    buckled || toughness !== undefined ? ellipseGrowth({ A: film.A, D }, [a, b], strain, buckling) : undefined;
  const now = buckled ? release?.(1) : undefined;
  const grown =
    toughness === undefined || release === undefined ? undefined : growthMultiplier(release, multiplier, toughness);
  const states: JudgedState[] = [
    ...(now === undefined ? [] : [{ where: 'Under the given strain', multiplier: 1, release: now }]),
    ...(grown === undefined ? [] : [{ where: 'At the strain of growth', ...grown }]),
  ];
  return {
    multiplier,
    strain: scaled(strain),
    N: scaled(N),
    G: now?.G ?? [0, 0],
    ...(grown === undefined ? {} : { growthMultiplier: grown.multiplier }),
    notes: uniqueNotes([
      ...sublaminate.notes,
      clamped,
      ...thinFilmNotes(film, blister.base),
      ...unsymmetricNotes(film),
      ...slenderNotes(Math.max(a / b, b / a)),
      ...(release === undefined ? [] : [mean]),
      ...contactNotes(buckling.parity === 1, states),
      ...deepNotes(multiplier, states),
    ]),
    sources: uniqueSources(sublaminate.sources, [
      'timoshenko-gere-1961',
      'chai-babcock-knauss-1981',
      ...(release === undefined ? [] : ['hutchinson-suo-1992']),
      'selvage-2026-derivation',
    ]),
  };
}

const clamped: Note = {
  level: 'assumption',
  text: 'The plies that buckle are clamped along the edge of the delamination and strained as the rest of the laminate.',
};

const mean: Note = {
  level: 'assumption',
  text: 'G is the mean over an edge that grows along x or along y. Where the edge is driven unevenly its worst point starts earlier. Into which modes G splits is not told.',
};

function slenderNotes(ratio: number): Note[] {
  if (ratio <= slender) return [];
  return [
    {
      level: 'warning',
      text: `The axes of the ellipse stand as ${ratio.toPrecision(2)} to 1; beyond ${slender} the computed buckling load may be too high: use the long strip.`,
    },
  ];
}

interface JudgedState {
  /** Where the state is, in words, and its multiple of the given strain. */
  readonly where: string;
  readonly multiplier: number;
  readonly release?: EllipseRelease;
}

/** Warns where the buckled plies bend to both sides: in every state when they do so in the buckling mode. */
function contactNotes(odd: boolean, states: readonly JudgedState[]): Note[] {
  const touching = states.filter(
    ({ release }) => release !== undefined && release.opposite > contact * release.deflection,
  );
  if (!odd && touching.length === 0) return [];
  return [
    {
      level: 'warning',
      text: `${odd ? 'From buckling on' : (touching[0]?.where ?? '')} the plies bend to both sides and press on the laminate under them, which is not counted: ${odd ? 'they buckle later than computed, and G is rough' : 'G is rough there'}.`,
    },
  ];
}

function deepNotes(critical: number, states: readonly JudgedState[]): Note[] {
  const [first] = states.filter(({ multiplier }) => multiplier > deep * critical);
  if (first === undefined) return [];
  return [
    {
      level: 'warning',
      text: `${first.where} the blister is at ${(first.multiplier / critical).toPrecision(2)} times its buckling strain. Beyond ${deep} times the folds of the plies are finer than the solution: G is rough there.`,
    },
  ];
}
