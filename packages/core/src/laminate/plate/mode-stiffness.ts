import type { PlateStiffness } from './plate.js';

/** Wave numbers of the half waves m and n over the sides a and b, 1/m. */
export const waveNumbers = (a: number, b: number, m: number, n: number): readonly [number, number] => [
  (m * Math.PI) / a,
  (n * Math.PI) / b,
];

/**
 * Pressure per deflection of a thin plate in sin α x sin β y, Pa/m: D11 α⁴ + 2 (D12 + 2 D66) α² β² + D22 β⁴.
 *
 * @source Jones 1999, ch. 5
 */
export function thinModeStiffness({ D11, D12, D22, D66 }: PlateStiffness, alpha: number, beta: number): number {
  const [x, y] = [alpha * alpha, beta * beta];
  return D11 * x * x + 2 * (D12 + 2 * D66) * x * y + D22 * y * y;
}

/**
 * The same by first-order shear theory: gᵀ L (L + H)⁻¹ H g with g = (α, β), H = diag(Hx, Hy) and L the bending operator
 * [D11 α² + D66 β², (D12 + D66) αβ; ., D66 α² + D22 β²], the normals' rotations being eliminated; this form loses no digits on a thin
 * plate. With `inertia` > 0 L is less by it: rotary inertia times the square of the circular frequency.
 *
 * @source Whitney 1973; Reddy 2004, ch. 6
 */
export function shearModeStiffness(p: PlateStiffness, alpha: number, beta: number, inertia = 0): number {
  const [x, y] = [alpha * alpha, beta * beta];
  const L11 = p.D11 * x + p.D66 * y - inertia;
  const L22 = p.D66 * x + p.D22 * y - inertia;
  const L12 = (p.D12 + p.D66) * alpha * beta;
  const [h1, h2] = [p.Hx * alpha, p.Hy * beta];
  const [m11, m22] = [L11 + p.Hx, L22 + p.Hy];
  const det = m11 * m22 - L12 * L12;
  const r1 = (m22 * h1 - L12 * h2) / det;
  const r2 = (m11 * h2 - L12 * h1) / det;
  return alpha * (L11 * r1 + L12 * r2) + beta * (L12 * r1 + L22 * r2);
}
