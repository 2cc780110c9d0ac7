import { type BoundaryValueProblem, solveBoundaryValue } from '../numeric/index.js';
import { fail } from '../problem/index.js';
import type { Note, SourceKey } from '../provenance/index.js';
import { ANGLE, armSlope, emptySection, H, M, perArm, type SectionCompliance, V, X, Y } from './elastica-section.js';
import type { Arm } from './types.js';

/** An arm clamped flat at one end, with a dead force at the other. Per width. */
export interface BentArmInput {
  /** Stretch and shear are left out where not given. */
  readonly arm: Pick<Arm, 'bendingStiffness'> & Partial<Pick<Arm, 'axialStiffness' | 'shearStiffness'>>;
  /** m */
  readonly length: number;
  /** Force at the free end along the arm as it was and away from it, N/m; it keeps its direction. */
  readonly force: { readonly along: number; readonly away: number };
  /** Intervals along the arm, 2 or more; when not given enough for six digits. */
  readonly intervals?: number;
}

/** A point of a bent arm. */
export interface BentArmPoint {
  /** From the clamp along the arm as it was, m. */
  readonly distance: number;
  /** Along the arm as it was and away from it, m. */
  readonly x: number;
  readonly y: number;
  /** rad */
  readonly angle: number;
  /** N m per m of width. */
  readonly moment: number;
}

export interface BentArm {
  readonly points: readonly BentArmPoint[];
  readonly notes: readonly Note[];
  readonly sources: readonly SourceKey[];
}

const size = perArm;
/** The force is put on in stages, each this much more than the last. */
const stage = 1.5;
/** Greatest force, in EI/length²: it bends the arm within a hundredth of its length. */
const greatest = 1e4;

/**
 * The shape of a thin arm bent by a force at its end through any angle: the elastica, with stretch and shear where given.
 *
 * EI θ'' = H sin θ - V cos θ for an arm that neither stretches nor shears; see `sectionAt` for one that does. Hermite-Simpson
 * collocation, order 4, the force put on in stages.
 *
 * @param input stiffnesses in N m and N/m, length in m, force in N per m of width
 * @returns points from the clamp to the tip
 * @throws out-of-range a stiffness or length not above 0, a force that is not finite, intervals not a whole number from 2 on; not-computable no shape found, or a force above 10⁴ EI/length²
 * @source Reissner 1972; Bisshopp & Drucker 1945 (the cantilever)
 */
export function bentArm({ arm, length, force, intervals }: BentArmInput): BentArm {
  check({ arm, length, force, ...(intervals === undefined ? {} : { intervals }) });
  // In units of the length and of EI/length², a force of 1 bends the arm by about a third of its length.
  const unit = arm.bendingStiffness / (length * length);
  const compliance = {
    bend: 1,
    stretch: arm.axialStiffness === undefined ? 0 : unit / arm.axialStiffness,
    shear: arm.shearStiffness === undefined ? 0 : unit / arm.shearStiffness,
  };
  const load = { along: force.along / unit, away: force.away / unit };
  const strength = Math.hypot(load.along, load.away);
  if (!(strength <= greatest)) {
    fail({
      code: 'not-computable',
      message: `the force is ${strength.toPrecision(3)} EI/length², at most ${greatest} can be followed`,
      allowed: `forces up to ${greatest} EI/length²`,
      hint: 'beyond a few bending lengths √(EI/force) from the clamp the arm is straight: take a shorter one',
    });
  }
  const count = intervals ?? Math.max(24, Math.ceil(12 * Math.sqrt(strength)));
  const steps = new Float64Array(count).fill(1 / count);
  let z = straight(count);
  for (let share = Math.min(1, 1 / strength); ; share = Math.min(1, share * stage)) {
    const next = solveBoundaryValue(cantilever(compliance, share * load.along, share * load.away), steps, z);
    if (next === undefined) {
      fail({
        code: 'not-computable',
        message: `no shape found under ${(100 * share).toFixed(0)} % of the force`,
        allowed: 'forces away from those at which a straight arm buckles, and intervals short against √(EI/force)',
      });
    }
    z = next;
    if (share === 1) break;
  }
  const read = (k: number, i: number): number => z[k * size + i] ?? 0;
  return {
    points: Array.from({ length: count + 1 }, (_, k) => ({
      distance: (length * k) / count,
      x: length * read(k, X),
      y: length * read(k, Y),
      angle: read(k, ANGLE),
      moment: unit * length * read(k, M),
    })),
    notes: [{ level: 'assumption', text: 'The arm is elastic and clamped rigidly; the force keeps its direction.' }],
    sources: ['reissner-1972', 'bisshopp-drucker-1945'],
  };
}

function cantilever(compliance: SectionCompliance, along: number, away: number): BoundaryValueProblem {
  const section = emptySection();
  const value = (z: ArrayLike<number>, i: number): number => z[i] ?? 0;
  return {
    size,
    left: 3,
    slope(z, at, f, J) {
      armSlope(compliance, z, at, 0, size, f, J, section);
    },
    jump: () => false,
    first(z, at, r, J) {
      [X, Y, ANGLE].forEach((i, row) => {
        r[row] = value(z, at + i);
        J[row * size + i] = 1;
      });
    },
    last(z, at, r, J) {
      (
        [
          [M, 0],
          [H, along],
          [V, away],
        ] as const
      ).forEach(([i, wanted], row) => {
        r[row] = value(z, at + i) - wanted;
        J[row * size + i] = 1;
      });
    },
  };
}

function straight(count: number): Float64Array {
  const z = new Float64Array((count + 1) * size);
  for (let k = 0; k <= count; k++) z[k * size + X] = k / count;
  return z;
}

function check({ arm, length, force, intervals = 2 }: BentArmInput): void {
  const above0 = { length, ...arm };
  for (const [name, value] of Object.entries(above0)) {
    if (!(value > 0 && Number.isFinite(value))) {
      fail({
        code: 'out-of-range',
        message: `${name} = ${value}, must be above 0`,
        allowed: 'a finite number above 0',
      });
    }
  }
  for (const [name, value] of Object.entries(force)) {
    if (!Number.isFinite(value)) {
      fail({
        code: 'out-of-range',
        message: `force ${name} = ${value} N/m, must be finite`,
        allowed: 'a finite number',
      });
    }
  }
  if (!(Number.isInteger(intervals) && intervals >= 2)) {
    fail({
      code: 'out-of-range',
      message: `intervals = ${intervals}, must be a whole number from 2 on`,
      allowed: 'a whole number, 2 or more',
    });
  }
}
