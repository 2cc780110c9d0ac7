import { invertSpd3 } from '../numeric/index.js';
import { layout } from './kernel-layout.js';

/**
 * Inverts one laminate's stiffness by blocks and estimates its condition, in place in the kernel's output.
 *
 * With everything in one unit (B/t, D/t²): X = A⁻¹ B, S = D - B X, d = S⁻¹, b = -X d, a = A⁻¹ + X d Xᵀ; A and the
 * Schur complement S by Cholesky. Then b/t and d/t² go back to their own units. The scaling keeps a thin laminate from
 * looking ill-conditioned merely because its D is small in N m.
 *
 * @param v kernel output with A, B, D of the laminate in place
 * @param at where the laminate's row starts
 * @param t thickness, m
 * @returns false when A or S is not positive definite; a, b, d and the condition are then not valid
 * @source Jones 1999, ch. 4 (partial inversion of A, B, D); scaling and condition are this kernel's own.
 */
export function invertStiffness(v: Float64Array, at: number, t: number): boolean {
  const atA = at + layout.a;
  const atB = at + layout.b;
  const atD = at + layout.d;
  if (!(t > 0 && invertSpd3(v, at + layout.A, v, atA))) return false;
  const r = 1 / t;
  const A11 = v[at]!;
  const A12 = v[at + 1]!;
  const A16 = v[at + 2]!;
  const A22 = v[at + 3]!;
  const A26 = v[at + 4]!;
  const A66 = v[at + 5]!;
  const B11 = v[at + 6]! * r;
  const B12 = v[at + 7]! * r;
  const B16 = v[at + 8]! * r;
  const B22 = v[at + 9]! * r;
  const B26 = v[at + 10]! * r;
  const B66 = v[at + 11]! * r;
  const rr = r * r;
  const D11 = v[at + 12]! * rr;
  const D12 = v[at + 13]! * rr;
  const D16 = v[at + 14]! * rr;
  const D22 = v[at + 15]! * rr;
  const D26 = v[at + 16]! * rr;
  const D66 = v[at + 17]! * rr;
  const i11 = v[atA]!;
  const i12 = v[atA + 1]!;
  const i16 = v[atA + 2]!;
  const i22 = v[atA + 3]!;
  const i26 = v[atA + 4]!;
  const i66 = v[atA + 5]!;

  const X11 = i11 * B11 + i12 * B12 + i16 * B16;
  const X12 = i11 * B12 + i12 * B22 + i16 * B26;
  const X13 = i11 * B16 + i12 * B26 + i16 * B66;
  const X21 = i12 * B11 + i22 * B12 + i26 * B16;
  const X22 = i12 * B12 + i22 * B22 + i26 * B26;
  const X23 = i12 * B16 + i22 * B26 + i26 * B66;
  const X31 = i16 * B11 + i26 * B12 + i66 * B16;
  const X32 = i16 * B12 + i26 * B22 + i66 * B26;
  const X33 = i16 * B16 + i26 * B26 + i66 * B66;

  v[atD] = D11 - (B11 * X11 + B12 * X21 + B16 * X31);
  v[atD + 1] = D12 - (B11 * X12 + B12 * X22 + B16 * X32);
  v[atD + 2] = D16 - (B11 * X13 + B12 * X23 + B16 * X33);
  v[atD + 3] = D22 - (B12 * X12 + B22 * X22 + B26 * X32);
  v[atD + 4] = D26 - (B12 * X13 + B22 * X23 + B26 * X33);
  v[atD + 5] = D66 - (B16 * X13 + B26 * X23 + B66 * X33);
  if (!invertSpd3(v, atD, v, atD)) return false;
  const d11 = v[atD]!;
  const d12 = v[atD + 1]!;
  const d16 = v[atD + 2]!;
  const d22 = v[atD + 3]!;
  const d26 = v[atD + 4]!;
  const d66 = v[atD + 5]!;

  const Y11 = X11 * d11 + X12 * d12 + X13 * d16;
  const Y12 = X11 * d12 + X12 * d22 + X13 * d26;
  const Y13 = X11 * d16 + X12 * d26 + X13 * d66;
  const Y21 = X21 * d11 + X22 * d12 + X23 * d16;
  const Y22 = X21 * d12 + X22 * d22 + X23 * d26;
  const Y23 = X21 * d16 + X22 * d26 + X23 * d66;
  const Y31 = X31 * d11 + X32 * d12 + X33 * d16;
  const Y32 = X31 * d12 + X32 * d22 + X33 * d26;
  const Y33 = X31 * d16 + X32 * d26 + X33 * d66;

  const a11 = i11 + (Y11 * X11 + Y12 * X12 + Y13 * X13);
  const a12 = i12 + (Y11 * X21 + Y12 * X22 + Y13 * X23);
  const a16 = i16 + (Y11 * X31 + Y12 * X32 + Y13 * X33);
  const a22 = i22 + (Y21 * X21 + Y22 * X22 + Y23 * X23);
  const a26 = i26 + (Y21 * X31 + Y22 * X32 + Y23 * X33);
  const a66 = i66 + (Y31 * X31 + Y32 * X32 + Y33 * X33);

  // The columns' sums one by one: Math.max over six of them costs as much as a matrix product.
  const { abs } = Math;
  const b1 = abs(B11) + abs(B12) + abs(B16);
  const b2 = abs(B12) + abs(B22) + abs(B26);
  const b6 = abs(B16) + abs(B26) + abs(B66);
  const norm = largest(
    largest(
      abs(A11) + abs(A12) + abs(A16) + b1,
      abs(A12) + abs(A22) + abs(A26) + b2,
      abs(A16) + abs(A26) + abs(A66) + b6,
    ),
    largest(
      b1 + abs(D11) + abs(D12) + abs(D16),
      b2 + abs(D12) + abs(D22) + abs(D26),
      b6 + abs(D16) + abs(D26) + abs(D66),
    ),
    0,
  );
  const inverseNorm = largest(
    largest(
      abs(a11) + abs(a12) + abs(a16) + abs(Y11) + abs(Y12) + abs(Y13),
      abs(a12) + abs(a22) + abs(a26) + abs(Y21) + abs(Y22) + abs(Y23),
      abs(a16) + abs(a26) + abs(a66) + abs(Y31) + abs(Y32) + abs(Y33),
    ),
    largest(
      abs(Y11) + abs(Y21) + abs(Y31) + abs(d11) + abs(d12) + abs(d16),
      abs(Y12) + abs(Y22) + abs(Y32) + abs(d12) + abs(d22) + abs(d26),
      abs(Y13) + abs(Y23) + abs(Y33) + abs(d16) + abs(d26) + abs(d66),
    ),
    0,
  );
  v[at + layout.condition] = norm * inverseNorm;

  v[atA] = a11;
  v[atA + 1] = a12;
  v[atA + 2] = a16;
  v[atA + 3] = a22;
  v[atA + 4] = a26;
  v[atA + 5] = a66;
  // 0 - y rather than -y: an uncoupled laminate gets 0, not -0.
  v[atB] = (0 - Y11) * r;
  v[atB + 1] = (0 - Y12) * r;
  v[atB + 2] = (0 - Y13) * r;
  v[atB + 3] = (0 - Y21) * r;
  v[atB + 4] = (0 - Y22) * r;
  v[atB + 5] = (0 - Y23) * r;
  v[atB + 6] = (0 - Y31) * r;
  v[atB + 7] = (0 - Y32) * r;
  v[atB + 8] = (0 - Y33) * r;
  v[atD] = d11 * rr;
  v[atD + 1] = d12 * rr;
  v[atD + 2] = d16 * rr;
  v[atD + 3] = d22 * rr;
  v[atD + 4] = d26 * rr;
  v[atD + 5] = d66 * rr;
  return true;
}

/** The largest of three numbers that are not NaN. */
function largest(x: number, y: number, z: number): number {
  const most = x > y ? x : y;
  return most > z ? most : z;
}
