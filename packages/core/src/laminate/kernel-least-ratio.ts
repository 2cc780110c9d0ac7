import { type Batch, type BatchResult, LOAD_STRIDE, layout, type StrengthTable } from './kernel-layout.js';
import { STRESS_ROW, sigma1, sigma2, tau12 } from './kernel-ply-stress.js';
import type { RatioFunction } from './strength/criterion-models.js';

/** Mid-plane strain and curvature of the laminate at hand under the load at hand; then those of heat alone. */
export const deformation = new Float64Array(2 * LOAD_STRIDE);

/**
 * The weakest face without residual stress.
 *
 * Both faces of a ply share its row of the table, and neighbouring plies the strain of their interface. A ratio at or above the
 * least so far is not worked out. Written out rather than shared with the heated form: the compiler then keeps the numbers in registers.
 */
export function leastRatio(
  ratio: RatioFunction,
  { plyOffsets, row, thickness }: Batch,
  { stress: table, constants }: StrengthTable,
  out: BatchResult,
  k: number,
  at: number,
  to: number,
): void {
  const ex = deformation[0]!;
  const ey = deformation[1]!;
  const exy = deformation[2]!;
  const kx = deformation[3]!;
  const ky = deformation[4]!;
  const kxy = deformation[5]!;
  const first = plyOffsets[k]!;
  const end = plyOffsets[k + 1]!;
  let z = -0.5 * out.values[at + layout.thickness]!;
  let x = ex + z * kx;
  let y = ey + z * ky;
  let xy = exy + z * kxy;
  let least = Number.MAX_VALUE;
  let where = -1;
  for (let i = first; i < end; i++) {
    z += thickness[i]!;
    const upX = ex + z * kx;
    const upY = ey + z * ky;
    const upXy = exy + z * kxy;
    const r = row[i]!;
    const c = constants[r];
    if (c !== undefined) {
      const p = r * STRESS_ROW;
      const p0 = table[p]!;
      const p1 = table[p + 1]!;
      const p2 = table[p + 2]!;
      const p3 = table[p + 3]!;
      const p4 = table[p + 4]!;
      const p5 = table[p + 5]!;
      const p6 = table[p + 6]!;
      const p7 = table[p + 7]!;
      let R = ratio(p0 * x + p1 * y + p2 * xy, p3 * x + p4 * y + p5 * xy, p6 * (y - x) + p7 * xy, 0, 0, 0, c, least);
      if (R < least) {
        least = R;
        where = 2 * (i - first);
      }
      R = ratio(
        p0 * upX + p1 * upY + p2 * upXy,
        p3 * upX + p4 * upY + p5 * upXy,
        p6 * (upY - upX) + p7 * upXy,
        0,
        0,
        0,
        c,
        least,
      );
      if (R < least) {
        least = R;
        where = 2 * (i - first) + 1;
      }
    }
    x = upX;
    y = upY;
    xy = upXy;
  }
  out.ratio![to] = where < 0 ? Number.POSITIVE_INFINITY : least;
  out.weakest![to] = where;
}

/** The weakest face with the stress that `change` kelvin leaves, see {@link leastRatio}. */
export function leastRatioHeated(
  ratio: RatioFunction,
  change: number,
  { plyOffsets, row, thickness }: Batch,
  { stress: table, constants }: StrengthTable,
  out: BatchResult,
  k: number,
  at: number,
  to: number,
): void {
  const e = deformation;
  const first = plyOffsets[k]!;
  const end = plyOffsets[k + 1]!;
  let z = -0.5 * out.values[at + layout.thickness]!;
  let least = Number.MAX_VALUE;
  let where = -1;
  for (let face = 2 * first; face < 2 * end; face++) {
    const r = row[face >> 1]!;
    const c = constants[r];
    if (c !== undefined) {
      const p = r * STRESS_ROW;
      const x = e[0]! + z * e[3]!;
      const y = e[1]! + z * e[4]!;
      const xy = e[2]! + z * e[5]!;
      const heldX = e[6]! + z * e[9]!;
      const heldY = e[7]! + z * e[10]!;
      const heldXy = e[8]! + z * e[11]!;
      const R = ratio(
        sigma1(table, p, x, y, xy),
        sigma2(table, p, x, y, xy),
        tau12(table, p, x, y, xy),
        sigma1(table, p, heldX, heldY, heldXy) - change * table[p + 8]!,
        sigma2(table, p, heldX, heldY, heldXy) - change * table[p + 9]!,
        tau12(table, p, heldX, heldY, heldXy),
        c,
        least,
      );
      if (R < least) {
        least = R;
        where = face - 2 * first;
      }
    }
    if (face % 2 === 0) z += thickness[face >> 1]!;
  }
  out.ratio![to] = where < 0 ? Number.POSITIVE_INFINITY : least;
  out.weakest![to] = where;
}
