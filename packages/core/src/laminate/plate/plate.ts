import { fail } from '../../problem/index.js';
import type { Note, SourceKey } from '../../provenance/index.js';
import { times } from '../axes.js';
import { entry, inverse, largest } from '../matrix3.js';
import { demandShearStiffness, type Matrix2, transverseShear } from '../shear/index.js';
import { stiffness } from '../stiffness.js';
import type { Laminate, Matrix3, Vector3 } from '../types.js';

/** A rectangle simply supported on all four edges; clamped and free edges are not covered. */
export interface Plate {
  /** Along x and y, m. */
  readonly a: number;
  readonly b: number;
}

/** What a simply supported plate bends by: specially orthotropic bending stiffness, N m, and shear stiffness, N/m. */
export interface PlateStiffness {
  readonly D11: number;
  readonly D12: number;
  readonly D22: number;
  readonly D66: number;
  readonly Hx: number;
  readonly Hy: number;
  readonly notes: readonly Note[];
  readonly sources: readonly SourceKey[];
}

/** Above this value of a bend-twist parameter the neglect of D16 and D26 is named. */
const noticeable = 1e-6;

/**
 * The stiffness that the series solutions use, with notes on what they neglect.
 *
 * D' = D - B A⁻¹ B, the bending stiffness of a plate free to stretch, which is D for a symmetric stack. D16, D26 and H12 are left out.
 *
 * @param H N/m; that of `transverseShear` when not given
 * @throws out-of-range for an H that cannot be; not-admissible as `stiffness`
 * @source Jones 1999, ch. 5 (specially orthotropic plates)
 */
export function plateStiffness(laminate: Laminate, H?: Matrix2): PlateStiffness {
  if (H !== undefined) demandShearStiffness(H);
  const { A, B, D } = stiffness(laminate);
  const reduced = reducedBending(A, B, D);
  const [D11, D12, D16] = [entry(reduced, 0, 0), entry(reduced, 0, 1), entry(reduced, 0, 2)];
  const [D22, D26, D66] = [entry(reduced, 1, 1), entry(reduced, 1, 2), entry(reduced, 2, 2)];
  const shear = H === undefined ? transverseShear(laminate) : { ...laminate, H };
  const twist = Math.max(Math.abs(D16) / (D11 ** 3 * D22) ** 0.25, Math.abs(D26) / (D11 * D22 ** 3) ** 0.25);
  const notes: Note[] = [...shear.notes];
  if (twist > noticeable) {
    notes.push({
      level: 'warning',
      text: `Bend-twist coupling is left out: D16/(D11³ D22)^¼ or D26/(D11 D22³)^¼ is ${twist.toPrecision(3)}. With it the plate buckles earlier and vibrates slower than computed.`,
    });
  }
  if (largest(B) > 1e-9 * largest(A) * laminate.thickness) {
    notes.push({
      level: 'warning',
      text: 'The stack is not symmetric: D - B A⁻¹ B stands in for D, an approximation that supposes edges free to move in the plane; the plate also bends before it buckles.',
      source: 'jones-1999',
    });
  }
  return { D11, D12, D22, D66, Hx: shear.H[0][0], Hy: shear.H[1][1], notes, sources: shear.sources };
}

/** D - B A⁻¹ B. */
export function reducedBending(A: Matrix3, B: Matrix3, D: Matrix3): Matrix3 {
  const a = inverse(A);
  const column = (j: number): Vector3 => times(B, times(a, [entry(B, 0, j), entry(B, 1, j), entry(B, 2, j)]));
  const columns = [column(0), column(1), column(2)];
  const row = (i: number): number[] => columns.map((bab, j) => entry(D, i, j) - (bab[i] ?? 0));
  return [row(0), row(1), row(2)];
}

/** Refuses a length that is not a finite number above 0. @throws out-of-range */
export function demandLengths(lengths: Readonly<Record<string, number>>): void {
  for (const [name, value] of Object.entries(lengths)) {
    if (!(value > 0 && Number.isFinite(value))) {
      fail({ code: 'out-of-range', message: `${name} is ${value} m`, allowed: 'a finite length above 0' });
    }
  }
}
