import { entry } from '../matrix3.js';
import type { Matrix3, Vector3 } from '../types.js';
import { deflectionShapes } from './ellipse-shapes.js';
import { largestEigenvalue } from './largest-eigenvalue.js';
import { diskIntegral, type Polynomial, xDerivative, yDerivative } from './polynomial.js';

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
export function buckleEllipse(D: Matrix3, [a, b]: readonly [number, number], N: Vector3): EllipseBuckling | undefined {
  const [even, odd] = ([0, 1] as const).map((parity) => largestFactor(D, a, b, N, deflectionShapes(parity)));
  const factor = Math.max(even ?? 0, odd ?? 0);
  return factor > 0 ? { multiplier: 1 / factor, parity: factor === even ? 0 : 1 } : undefined;
}

/** Largest ratio of the work of the forces to the bending energy. */
function largestFactor(
  D: Matrix3,
  a: number,
  b: number,
  [Nx, Ny, Nxy]: Vector3,
  shapes: readonly Polynomial[],
): number {
  // The energies are taken per size of the plate (D11 + D22, a b), which leaves numbers near 1.
  const scale = entry(D, 0, 0) + entry(D, 1, 1);
  const d = (i: number, j: number): number => entry(D, i, j) / scale;
  const [r, s] = [b / a, a / b];
  const parts = shapes.map((w) => {
    const [wx, wy] = [xDerivative(w), yDerivative(w)];
    return { wx, wy, xx: xDerivative(wx), yy: yDerivative(wy), xy: xDerivative(wy) };
  });
  const table = (of: (p: (typeof parts)[0], q: (typeof parts)[0]) => number): number[][] =>
    parts.map((p) => parts.map((q) => of(p, q)));
  const bending = table(
    (p, q) =>
      d(0, 0) * r * r * diskIntegral(p.xx, q.xx) +
      d(0, 1) * (diskIntegral(p.xx, q.yy) + diskIntegral(p.yy, q.xx)) +
      d(1, 1) * s * s * diskIntegral(p.yy, q.yy) +
      4 * d(2, 2) * diskIntegral(p.xy, q.xy) +
      2 * d(0, 2) * r * (diskIntegral(p.xx, q.xy) + diskIntegral(p.xy, q.xx)) +
      2 * d(1, 2) * s * (diskIntegral(p.yy, q.xy) + diskIntegral(p.xy, q.yy)),
  );
  const size = Math.max(Math.abs(Nx), Math.abs(Ny), Math.abs(Nxy));
  if (size === 0) return 0;
  const work = table(
    (p, q) =>
      -(
        Nx * r * diskIntegral(p.wx, q.wx) +
        Ny * s * diskIntegral(p.wy, q.wy) +
        Nxy * (diskIntegral(p.wx, q.wy) + diskIntegral(p.wy, q.wx))
      ) / size,
  );
  return (largestEigenvalue(work, bending) * size * a * b) / scale;
}
