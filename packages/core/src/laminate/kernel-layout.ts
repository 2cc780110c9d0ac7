import { fail } from '../problem/index.js';
import type { Criterion } from './strength/criterion.js';
import type { StrengthConstants } from './strength/strength-constants.js';

/**
 * Where the numbers of one laminate stand in a row of the kernel's output, as offsets into {@link STRIDE} doubles.
 *
 * | name | numbers | order | unit |
 * | --- | --- | --- | --- |
 * | A, B, D | 6 each | 11, 12, 16, 22, 26, 66 | N/m, N, N m |
 * | a | 6 | 11, 12, 16, 22, 26, 66 | m/N |
 * | b | 9 | by rows: 11, 12, 16, 21, 22, 26, 61, 62, 66 | 1/N |
 * | d | 6 | 11, 12, 16, 22, 26, 66 | 1/(N m) |
 * | inPlane | 7 | Ex, Ey, Gxy, nuxy, nuyx, etaxyx, etaxyy from a | Pa, - |
 * | flexural | 7 | the same from d | Pa, - |
 * | thickness | 1 | | m |
 * | condition | 1 | 1-norm, of the stiffness scaled to A, B/t, D/t² | - |
 *
 * a, b, d are the blocks of the whole inverse: strain = a N + b M, curvature = bᵀ N + d M.
 */
export const layout = {
  A: 0,
  B: 6,
  D: 12,
  a: 18,
  b: 24,
  d: 33,
  inPlane: 39,
  flexural: 46,
  thickness: 53,
  condition: 54,
} as const;

/** Doubles per laminate in the kernel's output. */
export const STRIDE = 55;

/** Doubles per load of a batch: Nx, Ny, Nxy (N/m), Mx, My, Mxy (N). */
export const LOAD_STRIDE = 6;

/** Doubles per row of a table of ply stiffness: 11, 12, 16, 22, 26, 66. */
export const ROW = 6;

/** Laminates as flat arrays: laminate k has the plies `plyOffsets[k]` up to, not including, `plyOffsets[k + 1]`. */
export interface Batch {
  /** One more than there are laminates; from 0 up, never falls. A part of a batch is a `subarray` of these. */
  readonly plyOffsets: Int32Array;
  /** Row of `qbarTable` for each ply, from the tool side of each laminate. */
  readonly row: Int32Array;
  /** Thickness of each ply, m, above 0. */
  readonly thickness: Float64Array;
  /** Stiffness of plies in laminate axes, Pa, `ROW` doubles per row: 11, 12, 16, 22, 26, 66. */
  readonly qbarTable: Float64Array;
  /** What the plies are to bear; without it no strength ratio is computed. */
  readonly strength?: BatchStrength;
}

/** What the plies of a batch bear, by one criterion; from `makeStrengthTable`. */
export interface StrengthTable {
  readonly criterion: Criterion;
  /** A row of ply stress for each row of `qbarTable`. */
  readonly stress: Float64Array;
  /** Strength constants for each row of `qbarTable`; undefined where a ply cannot break. */
  readonly constants: readonly (StrengthConstants | undefined)[];
  /** Whether every material has thermal expansion. */
  readonly expands: boolean;
}

/** Loads of a batch and what its plies bear. */
export interface BatchStrength {
  readonly table: StrengthTable;
  /** {@link LOAD_STRIDE} doubles per load: Nx, Ny, Nxy (N/m), Mx, My, Mxy (N); every laminate bears every load, one at a time. */
  readonly loads: Float64Array;
  /** Per load: change from the stress-free temperature, K. Its stress is not multiplied by the ratio. Zero when not given. */
  readonly temperatureChange?: Float64Array;
}

/** What the kernel writes: `values` holds {@link STRIDE} doubles per laminate, laid out as in {@link layout}. */
export interface BatchResult {
  readonly values: Float64Array;
  /** Per laminate: 0 computed; 1 the stiffness is not positive definite (then its values are all zero). */
  readonly status: Uint8Array;
  /**
   * Per laminate and load, laminate by laminate: the least strength ratio of all faces of its plies. 0 where residual stress alone
   * breaks a ply and where the laminate is not computed, Infinity where the load breaks nothing.
   */
  readonly ratio?: Float64Array;
  /** The face of that ratio: twice the number of plies below its ply, plus 1 for the face toward the bag; -1 where there is none. */
  readonly weakest?: Int32Array;
}

/**
 * Arrays for a batch and its result, all zero, to be filled and used again for as many batches as wanted.
 *
 * @param laminates number of laminates, whole, 0 or more
 * @param plies number of plies of all laminates together, whole, 0 or more
 * @param qbarTable the table that the plies' rows point into
 * @param strength loads and strengths, when ratios are wanted
 * @throws out-of-range for a number that is not whole, or below 0
 */
export function allocateBatch(
  laminates: number,
  plies: number,
  qbarTable: Float64Array,
  strength?: BatchStrength,
): { readonly batch: Batch; readonly out: BatchResult } {
  for (const [name, value] of Object.entries({ laminates, plies })) {
    if (!(Number.isSafeInteger(value) && value >= 0)) {
      fail({
        code: 'out-of-range',
        message: `the number of ${name} is ${value}`,
        allowed: 'a whole number, 0 or more',
      });
    }
  }
  const ratios = strength === undefined ? 0 : laminates * (strength.loads.length / LOAD_STRIDE);
  return {
    batch: {
      plyOffsets: new Int32Array(laminates + 1),
      row: new Int32Array(plies),
      thickness: new Float64Array(plies),
      qbarTable,
      ...(strength === undefined ? {} : { strength }),
    },
    out: {
      values: new Float64Array(laminates * STRIDE),
      status: new Uint8Array(laminates),
      ...(strength === undefined ? {} : { ratio: new Float64Array(ratios), weakest: new Int32Array(ratios) }),
    },
  };
}
