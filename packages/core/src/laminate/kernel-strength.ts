import type { InPlaneConstants, Ply } from '../material/index.js';
import { type Batch, type BatchResult, type BatchStrength, LOAD_STRIDE, layout } from './kernel-layout.js';
import { STRESS_ROW, sigma1, sigma2, tau12, writeStressRows } from './kernel-ply-stress.js';
import { type Criterion, choice, failureCriteria, type StrengthOptions } from './strength/criterion.js';
import { type RatioFunction, ratioFunctions } from './strength/criterion-models.js';
import { type StrengthConstants, strengthConstants } from './strength/strength-constants.js';

/** Mid-plane strain and curvature of the laminate at hand under the load at hand; then those of heat and moisture alone. */
const deformation = new Float64Array(2 * LOAD_STRIDE);
/** N and M that hold a heated laminate flat at its old size, per kelvin. */
const hindered = new Float64Array(LOAD_STRIDE);

/**
 * Writes the least strength ratio of laminate k under every load of the batch, and where it is.
 *
 * σ = σ_res + R σ_mech at both faces of every ply, from the inverse that stands in the kernel's output already.
 */
export function writeRatios(batch: Batch, strength: BatchStrength, out: BatchResult, k: number, at: number): void {
  const { criterion, loads, temperatureChange } = strength;
  const ratio = ratioFunctions[criterion];
  const count = loads.length / LOAD_STRIDE;
  if (temperatureChange !== undefined) sumHindered(batch, strength.table, k, out.values[at + layout.thickness]!);
  for (let load = 0; load < count; load++) {
    writeDeformation(out.values, at, loads, load * LOAD_STRIDE, 1, 0);
    const change = temperatureChange === undefined ? 0 : temperatureChange[load]!;
    if (change === 0) leastRatio(ratio, batch, strength, out, k, at, k * count + load);
    else {
      writeDeformation(out.values, at, hindered, 0, change, LOAD_STRIDE);
      leastRatioHeated(ratio, change, batch, strength, out, k, at, k * count + load);
    }
  }
}

/** Strain = a N + b M and curvature = bᵀ N + d M of `factor` times six forces. */
function writeDeformation(
  v: Float64Array,
  at: number,
  force: Float64Array,
  from: number,
  factor: number,
  to: number,
): void {
  const a = at + layout.a;
  const b = at + layout.b;
  const d = at + layout.d;
  const Nx = factor * force[from]!;
  const Ny = factor * force[from + 1]!;
  const Nxy = factor * force[from + 2]!;
  const Mx = factor * force[from + 3]!;
  const My = factor * force[from + 4]!;
  const Mxy = factor * force[from + 5]!;
  deformation[to] = v[a]! * Nx + v[a + 1]! * Ny + v[a + 2]! * Nxy + v[b]! * Mx + v[b + 1]! * My + v[b + 2]! * Mxy;
  deformation[to + 1] =
    v[a + 1]! * Nx + v[a + 3]! * Ny + v[a + 4]! * Nxy + v[b + 3]! * Mx + v[b + 4]! * My + v[b + 5]! * Mxy;
  deformation[to + 2] =
    v[a + 2]! * Nx + v[a + 4]! * Ny + v[a + 5]! * Nxy + v[b + 6]! * Mx + v[b + 7]! * My + v[b + 8]! * Mxy;
  deformation[to + 3] = v[b]! * Nx + v[b + 3]! * Ny + v[b + 6]! * Nxy + v[d]! * Mx + v[d + 1]! * My + v[d + 2]! * Mxy;
  deformation[to + 4] =
    v[b + 1]! * Nx + v[b + 4]! * Ny + v[b + 7]! * Nxy + v[d + 1]! * Mx + v[d + 3]! * My + v[d + 4]! * Mxy;
  deformation[to + 5] =
    v[b + 2]! * Nx + v[b + 5]! * Ny + v[b + 8]! * Nxy + v[d + 2]! * Mx + v[d + 4]! * My + v[d + 5]! * Mxy;
}

/** N_T = Σ Qbar α t and M_T = Σ Qbar α t z, per kelvin. */
function sumHindered({ plyOffsets, row, thickness }: Batch, table: Float64Array, k: number, t: number): void {
  hindered.fill(0);
  const end = plyOffsets[k + 1]!;
  let z = -0.5 * t;
  for (let i = plyOffsets[k]!; i < end; i++) {
    const w = thickness[i]!;
    const moment = w * (z + 0.5 * w);
    const p = row[i]! * STRESS_ROW + 10;
    for (let j = 0; j < 3; j++) {
      hindered[j] = hindered[j]! + table[p + j]! * w;
      hindered[j + 3] = hindered[j + 3]! + table[p + j]! * moment;
    }
    z += w;
  }
}

/**
 * The weakest face without residual stress.
 *
 * Both faces of a ply share its row of the table, and neighbouring plies the strain of their interface. A ratio at or above the
 * least so far is not worked out. Written out rather than shared with the heated form: the compiler then keeps the numbers in registers.
 */
function leastRatio(
  ratio: RatioFunction,
  { plyOffsets, row, thickness }: Batch,
  { table, constants }: BatchStrength,
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
function leastRatioHeated(
  ratio: RatioFunction,
  change: number,
  { plyOffsets, row, thickness }: Batch,
  { table, constants }: BatchStrength,
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

/**
 * Table of ply stress and strength constants for a batch: one row for every material at every angle, in the order of `makeQbarTable`.
 *
 * @param materials moduli and strengths, Pa; without strengths a material counts as unbreakable; without expansion it does not
 *   answer to heat
 * @param angles degrees from x to the fibre
 * @param criterion one of `failureCriteria`
 * @param options the criterion's choices
 * @returns what {@link BatchStrength} needs beside the loads
 * @throws as `strengthConstants`; not-a-choice for an unknown criterion
 */
export function makeStrengthTable(
  materials: readonly StrengthMaterial[],
  angles: readonly number[],
  criterion: Criterion,
  options: StrengthOptions = {},
): Pick<BatchStrength, 'criterion' | 'table' | 'constants'> {
  choice('criterion', criterion, failureCriteria);
  const table = new Float64Array(materials.length * angles.length * STRESS_ROW);
  const constants: (StrengthConstants | undefined)[] = [];
  for (const material of materials) {
    const { strengths } = material;
    const own = strengths === undefined ? undefined : strengthConstants({ ...material, strengths }, criterion, options);
    writeStressRows(material, angles, table, constants.length * STRESS_ROW);
    for (let i = 0; i < angles.length; i++) constants.push(own);
  }
  return { criterion, table, constants };
}

/** A material of {@link makeStrengthTable}. */
export type StrengthMaterial = InPlaneConstants & Partial<Pick<Ply, 'strengths' | 'expansion'>>;
