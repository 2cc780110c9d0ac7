import { choice, fail } from '../problem/index.js';
import { checkFinite } from './check-finite.js';
import { invertStiffness } from './kernel-inverse.js';
import { type Batch, type BatchResult, type BatchStrength, LOAD_STRIDE, layout, ROW, STRIDE } from './kernel-layout.js';
import { STRESS_ROW } from './kernel-ply-stress.js';
import { writeRatios } from './kernel-strength.js';
import { sumStack } from './kernel-sum.js';
import { failureCriteria } from './strength/criterion.js';

/**
 * Writes the seven engineering constants of a compliance: Ex, Ey, Gxy, nuxy, nuyx, etaxyx, etaxyy.
 *
 * E = scale / c11, G = scale / c66, nuxy = -c12 / c11, etaxyx = c16 / c11. For in-plane constants the compliance is a and
 * the scale 1/t; for flexural ones it is d and 12/t³.
 *
 * @param c holds the compliance 11, 12, 16, 22, 26, 66 from `from` on
 * @source Jones 1999, ch. 2 (constants of an anisotropic sheet), applied to a and d
 */
export function writeConstants(c: Float64Array, from: number, scale: number, out: Float64Array, to: number): void {
  const r1 = 1 / c[from]!;
  const r2 = 1 / c[from + 3]!;
  const less12 = 0 - c[from + 1]!;
  out[to] = scale * r1;
  out[to + 1] = scale * r2;
  out[to + 2] = scale / c[from + 5]!;
  out[to + 3] = less12 * r1;
  out[to + 4] = less12 * r2;
  out[to + 5] = c[from + 2]! * r1;
  out[to + 6] = c[from + 4]! * r2;
}

/**
 * Stiffness, inverse and engineering constants of many laminates, without allocating anything per laminate.
 *
 * Every other function of this folder that needs A, B, D or their inverse calls this one. The result of a laminate depends
 * on its own plies alone, bit for bit: not on its place in the batch, nor on what stood in `out` before.
 *
 * @param batch laminates as flat arrays, see {@link Batch}
 * @param out written, see {@link BatchResult} and {@link layout}; a laminate that is not positive definite (also one without
 *   plies, with a thickness or row that is not a number of the batch) gets status 1 and zeros
 * @throws out-of-range when an array is too short for the number of laminates or plies, or offsets fall; not-a-number for loads that are not
 *   finite; not-computable when heat acts on a material without expansion; not-a-choice for an unknown criterion
 * @source Jones 1999, ch. 4; Tsai & Pagano 1968 for the rows of the table
 */
export function evaluateBatch(batch: Batch, out: BatchResult): void {
  const { plyOffsets, row, thickness, qbarTable } = batch;
  const { values, status } = out;
  const n = Math.max(0, plyOffsets.length - 1);
  checkOffsets(plyOffsets);
  checkLength('row', row.length, plyOffsets[n] ?? 0);
  checkLength('thickness', thickness.length, plyOffsets[n] ?? 0);
  checkLength('values', values.length, n * STRIDE);
  checkLength('status', status.length, n);
  const { strength } = batch;
  const loads = strength === undefined ? 0 : checkStrength(strength, qbarTable, out, n);

  for (let k = 0; k < n; k++) {
    const at = k * STRIDE;
    const first = plyOffsets[k]!;
    const end = plyOffsets[k + 1]!;
    const t = sumStack(qbarTable, row, thickness, first, end, values, at);
    dropNoise(values, at, t, end - first);
    if (invertStiffness(values, at, t)) {
      const r = 1 / t;
      writeConstants(values, at + layout.a, r, values, at + layout.inPlane);
      writeConstants(values, at + layout.d, 12 * r * r * r, values, at + layout.flexural);
      values[at + layout.thickness] = t;
      status[k] = 0;
      if (strength !== undefined) writeRatios(batch, strength, out, k, at);
    } else {
      values.fill(0, at, at + STRIDE);
      out.ratio?.fill(0, k * loads, (k + 1) * loads);
      out.weakest?.fill(-1, k * loads, (k + 1) * loads);
      status[k] = 1;
    }
  }
}

/**
 * Sets to zero what rounding leaves of a B that cancels: below 2⁻⁵² x plies x A t, the bound of the sum's own rounding error.
 * A mirrored stack so has B = 0 and uncoupled inverses exactly.
 */
function dropNoise(values: Float64Array, at: number, t: number, plies: number): void {
  const A11 = values[at]!;
  const A22 = values[at + 3]!;
  const noise = 2 ** -52 * plies * t * (A11 > A22 ? A11 : A22);
  for (let i = at + layout.B; i < at + layout.D; i++) {
    const b = values[i]!;
    if (b < noise && b > -noise) values[i] = 0;
  }
}

/** @returns how many loads there are */
function checkStrength(strength: BatchStrength, qbarTable: Float64Array, out: BatchResult, n: number): number {
  const { table, loads, temperatureChange } = strength;
  choice('criterion', table.criterion, failureCriteria);
  const count = Math.floor(loads.length / LOAD_STRIDE);
  const rows = qbarTable.length / ROW;
  checkLength('loads', loads.length, Math.ceil(loads.length / LOAD_STRIDE) * LOAD_STRIDE);
  checkLength('temperatureChange', temperatureChange?.length ?? count, count);
  checkLength('stress', table.stress.length, rows * STRESS_ROW);
  checkLength('constants', table.constants.length, rows);
  checkLength('ratio', out.ratio?.length ?? 0, n * count);
  checkLength('weakest', out.weakest?.length ?? 0, n * count);
  checkFinite('loads', loads);
  if (temperatureChange === undefined) return count;
  checkFinite('temperatureChange', temperatureChange);
  if (!table.expands && temperatureChange.some((change) => change !== 0)) {
    fail({
      code: 'not-computable',
      message: 'heat acts, but a material of the batch has no thermal expansion',
      allowed: 'alpha1 and alpha2 for every material, or no change of temperature',
    });
  }
  return count;
}

/** The plies of the laminates follow each other. */
function checkOffsets(plyOffsets: Int32Array): void {
  let last = 0;
  for (let k = 0; k < plyOffsets.length; k++) {
    const next = plyOffsets[k]!;
    if (next < last) {
      fail({
        code: 'out-of-range',
        message: `\`plyOffsets\` falls from ${last} to ${next} at entry ${k}`,
        allowed: 'from 0 up, each at least the one before',
      });
    }
    last = next;
  }
}

function checkLength(name: string, length: number, needed: number): void {
  if (length >= needed) return;
  fail({
    code: 'out-of-range',
    message: `\`${name}\` has ${length} entries, the batch needs ${needed}`,
    allowed: `${needed} entries or more`,
    hint: 'allocateBatch(laminates, plies, qbarTable) makes arrays that fit',
  });
}
