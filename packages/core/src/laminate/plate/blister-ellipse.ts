import { fail } from '../../problem/index.js';
import { type Note, type SourceKey, uniqueNotes, uniqueSources } from '../../provenance/index.js';
import { times } from '../axes.js';
import { stiffness } from '../stiffness.js';
import type { Laminate, Vector3 } from '../types.js';
import { buckleEllipse } from './ellipse-ritz.js';
import { demandLengths, reducedBending } from './plate.js';

/** An elliptic delamination with its axes along x and y. */
export interface EllipseBlister {
  /** Half axes along x and y, m; both alike for a circle. */
  readonly a: number;
  readonly b: number;
  /** Strain of the laminate: x, y, xy with engineering shear, tension positive. */
  readonly strain: Vector3;
}

/** The state at which the plies above an elliptic delamination buckle. */
export interface EllipseBlisterResult {
  /** What the given strain is multiplied by to buckle them. */
  readonly multiplier: number;
  readonly strain: Vector3;
  /** N/m in the plies above, before they buckle. */
  readonly N: Vector3;
  readonly notes: readonly Note[];
  readonly sources: readonly SourceKey[];
}

/** Ratio of the axes beyond which the polynomials of the solution no longer follow the waves. */
const slender = 3;

/**
 * Buckling of the plies above an elliptic delamination, as a clamped anisotropic plate strained with the laminate.
 *
 * Ritz: w = (1 - ξ² - η²)² Σ c ξ^i η^j up to the eighth power, energy of D' = D - B A⁻¹ B with D16 and D26 against the work of N = A ε; an upper
 * bound that for a circle under even compression is 14.682 D/R². Growth of a buckled ellipse is not covered.
 *
 * @param sublaminate the plies above the delamination, with angles from the laminate's x
 * @param blister half axes in m, more than 0
 * @throws out-of-range for axes, for a strain that is not finite or under which nothing buckles; not-admissible as `stiffness`
 * @source Timoshenko & Gere 1961 (clamped circle); the series for the ellipse is derived in docs/theory/plates.md
 */
export function ellipseBlister(sublaminate: Laminate, { a, b, strain }: EllipseBlister): EllipseBlisterResult {
  demandLengths({ a, b });
  if (!strain.every(Number.isFinite)) {
    fail({ code: 'out-of-range', message: `the strain is ${strain.join(', ')}`, allowed: 'three finite strains' });
  }
  const { A, B, D } = stiffness(sublaminate);
  const N = times(A, strain);
  const multiplier = buckleEllipse(reducedBending(A, B, D), [a, b], N);
  if (multiplier === undefined) {
    return fail({
      code: 'out-of-range',
      message: `the strain ${strain.join(', ')} compresses the plies in no direction`,
      allowed: 'a strain under which they are compressed or sheared',
    });
  }
  const scaled = ([x, y, xy]: Vector3): Vector3 => [multiplier * x, multiplier * y, multiplier * xy];
  const ratio = Math.max(a / b, b / a);
  const long: Note[] =
    ratio > slender
      ? [
          {
            level: 'warning',
            text: `The axes of the ellipse stand as ${ratio.toPrecision(2)} to 1; beyond ${slender} the computed buckling load may be too high: use the long strip.`,
          },
        ]
      : [];
  return {
    multiplier,
    strain: scaled(strain),
    N: scaled(N),
    notes: uniqueNotes([...sublaminate.notes, clamped, ...long]),
    sources: uniqueSources(sublaminate.sources, ['timoshenko-gere-1961', 'selvage-2026-derivation']),
  };
}

const clamped: Note = {
  level: 'assumption',
  text: 'The plies above the delamination are clamped along its edge and strained as the laminate under them.',
};
