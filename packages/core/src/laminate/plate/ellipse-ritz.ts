import { Matrix } from 'ml-matrix';
import { entry } from '../matrix3.js';
import type { Matrix3, Vector3 } from '../types.js';
import { bendingTable, forceTable } from './ellipse-tables.js';
import { largestEigenvalue } from './largest-eigenvalue.js';

/** When a clamped ellipse buckles, and whether in shapes of even or odd power: alike or opposite at opposite points. */
export interface EllipseBuckling {
  readonly multiplier: number;
  readonly parity: 0 | 1;
}

/**
 * The factor on membrane forces N (N/m, tension positive) at which a clamped ellipse of half axes (m) buckles; undefined when none does.
 *
 * Bending energy ∫ D11 wxx² + 2 D12 wxx wyy + D22 wyy² + 4 D66 wxy² + 4 (D16 wxx + D26 wyy) wxy against
 * ∫ -Nx wx² - Ny wy² - 2 Nxy wx wy, over polynomials of even and of odd power apart, which do not couple.
 */
export function buckleEllipse(D: Matrix3, axes: readonly [number, number], N: Vector3): EllipseBuckling | undefined {
  const [even, odd] = ([0, 1] as const).map((parity) => largestFactor(D, axes, N, parity));
  const factor = Math.max(even ?? 0, odd ?? 0);
  return factor > 0 ? { multiplier: 1 / factor, parity: factor === even ? 0 : 1 } : undefined;
}

/** Largest ratio of the work of the forces to the bending energy. */
function largestFactor(D: Matrix3, [a, b]: readonly [number, number], N: Vector3, parity: 0 | 1): number {
  const size = Math.max(...N.map(Math.abs));
  if (size === 0) return 0;
  // The energies are taken per size of the plate (D11 + D22, a b), which leaves numbers near 1.
  const scale = entry(D, 0, 0) + entry(D, 1, 1);
  const slimness = Math.sqrt(b / a);
  const bending = Matrix.div(bendingTable(D, slimness, parity), scale);
  const work = Matrix.div(forceTable(N, slimness, parity), -size);
  return ((largestEigenvalue(work, bending)?.value ?? Number.NaN) * size * a * b) / scale;
}
