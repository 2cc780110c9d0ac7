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

/** Doubles per row of a table of ply stiffness: 11, 12, 16, 22, 26, 66. */
export const ROW = 6;

/** Laminates as flat arrays: laminate k has the plies `plyOffsets[k]` up to, not including, `plyOffsets[k + 1]`. */
export interface Batch {
  /** One more than there are laminates; starts with 0, never falls. */
  readonly plyOffsets: Int32Array;
  /** Row of `qbarTable` for each ply, from the tool side of each laminate. */
  readonly row: Int32Array;
  /** Thickness of each ply, m, above 0. */
  readonly thickness: Float64Array;
  /** Stiffness of plies in laminate axes, Pa, {@link ROW} doubles per row: 11, 12, 16, 22, 26, 66. */
  readonly qbarTable: Float64Array;
}

/** What the kernel writes: `values` holds {@link STRIDE} doubles per laminate, laid out as in {@link layout}. */
export interface BatchResult {
  readonly values: Float64Array;
  /** Per laminate: 0 computed; 1 the stiffness is not positive definite (then its values are all zero). */
  readonly status: Uint8Array;
}

/**
 * Arrays for a batch and its result, all zero, to be filled and used again for as many batches as wanted.
 *
 * @param laminates number of laminates
 * @param plies number of plies of all laminates together
 * @param qbarTable the table that the plies' rows point into
 */
export function allocateBatch(
  laminates: number,
  plies: number,
  qbarTable: Float64Array,
): { readonly batch: Batch; readonly out: BatchResult } {
  return {
    batch: {
      plyOffsets: new Int32Array(laminates + 1),
      row: new Int32Array(plies),
      thickness: new Float64Array(plies),
      qbarTable,
    },
    out: { values: new Float64Array(laminates * STRIDE), status: new Uint8Array(laminates) },
  };
}
