import { type Batch, type BatchResult, type BatchStrength, LOAD_STRIDE, layout } from './kernel-layout.js';
import { deformation, leastRatio, leastRatioHeated } from './kernel-least-ratio.js';
import { STRESS_ROW } from './kernel-ply-stress.js';
import { ratioFunctions } from './strength/criterion-models.js';

/** N and M that hold a heated laminate flat at its old size, per kelvin. */
const hindered = new Float64Array(LOAD_STRIDE);

/**
 * Writes the least strength ratio of laminate k under every load of the batch, and where it is.
 *
 * σ = σ_res + R σ_mech at both faces of every ply, from the inverse that stands in the kernel's output already.
 */
export function writeRatios(batch: Batch, strength: BatchStrength, out: BatchResult, k: number, at: number): void {
  const { table, loads, temperatureChange } = strength;
  const ratio = ratioFunctions[table.criterion];
  const count = loads.length / LOAD_STRIDE;
  if (temperatureChange !== undefined) sumHindered(batch, table.stress, k, out.values[at + layout.thickness]!);
  for (let load = 0; load < count; load++) {
    writeDeformation(out.values, at, loads, load * LOAD_STRIDE, 1, 0);
    const change = temperatureChange === undefined ? 0 : temperatureChange[load]!;
    if (change === 0) leastRatio(ratio, batch, table, out, k, at, k * count + load);
    else {
      writeDeformation(out.values, at, hindered, 0, change, LOAD_STRIDE);
      leastRatioHeated(ratio, change, batch, table, out, k, at, k * count + load);
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
