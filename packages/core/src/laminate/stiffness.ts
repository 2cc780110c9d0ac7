import { fail } from '../problem/index.js';
import { uniqueSources } from '../provenance/index.js';
import type { Working } from '../working/index.js';
import { evaluateBatch } from './kernel.js';
import { allocateBatch, layout, ROW } from './kernel-layout.js';
import { sumPlies } from './kernel-sum.js';
import { full, symmetric } from './matrix3.js';
import { componentsAt, componentsOf } from './named.js';
import { tabulateQbar } from './qbar.js';
import type { Laminate, Stiffness } from './types.js';

/** Above this condition number fewer than two digits of the inverse are left in double precision. */
const largestCondition = 1e14;

/**
 * Stiffness of a laminate about its mid-plane, and its inverse.
 *
 * A = Σ Qbar t, B = Σ Qbar t z, D = Σ Qbar (t z² + t³/12); N = A e + B k, M = B e + D k; e = a N + b M, k = bᵀ N + d M.
 * Thin-plate theory: plane stress in each ply, straight normals, perfect bond. Transverse shear is not covered.
 *
 * @param laminate plies from the tool side (z = -t/2)
 * @param working takes the steps down, when given
 * @returns A N/m, B N, D N m, a m/N, b 1/N, d 1/(N m), order x, y, xy with engineering shear strain
 * @throws not-admissible when the stiffness is not positive definite, or its scaled condition number is above 1e14
 * @source Jones 1999, ch. 4; Tsai & Pagano 1968 (ply stiffness at an angle)
 */
export function stiffness(laminate: Laminate, working?: Working): Stiffness {
  const { qbarTable, row } = tabulateQbar(laminate.plies, working);
  const { batch, out } = allocateBatch(1, laminate.plies.length, qbarTable);
  batch.plyOffsets[1] = laminate.plies.length;
  batch.row.set(row);
  batch.thickness.set(laminate.plies.map((ply) => ply.thickness));
  evaluateBatch(batch, out);

  const { values } = out;
  const condition = values[layout.condition] ?? 0;
  if (out.status[0] !== 0) {
    fail({
      code: 'not-admissible',
      message: 'the stiffness of the laminate is not positive definite',
      allowed: 'plies with E1, E2 and G12 above 0 and nu12² below E1/E2',
    });
  }
  if (condition > largestCondition) {
    fail({
      code: 'not-admissible',
      message: `the stiffness of the laminate has the condition number ${condition.toExponential(1)}, the limit is 1e14`,
      allowed: 'a condition number of 1e14 or less',
      hint: 'a ply with a modulus many orders above or below the others has often a wrong unit',
    });
  }
  if (working !== undefined) showSums(laminate, qbarTable, row, values, working);
  return {
    A: symmetric(values, layout.A),
    B: symmetric(values, layout.B),
    D: symmetric(values, layout.D),
    a: symmetric(values, layout.a),
    b: full(values, layout.b),
    d: symmetric(values, layout.d),
    thickness: values[layout.thickness] ?? 0,
    condition,
    notes: laminate.notes,
    sources: uniqueSources(laminate.sources, ['jones-1999', 'tsai-pagano-1968']),
  };
}

/** Takes down the sums ply by ply, each term by the kernel's own loop, and the inverse. */
function showSums(
  { plies }: Laminate,
  qbarTable: Float64Array,
  row: Int32Array,
  values: Float64Array,
  working: Working,
): void {
  const h = values[layout.thickness] ?? 0;
  const thickness = Float64Array.from(plies, (ply) => ply.thickness);
  const term = new Float64Array(3 * ROW);
  const matrices = (from: ArrayLike<number>): Record<string, number> => ({
    ...componentsAt('A', from, layout.A),
    ...componentsAt('B', from, layout.B),
    ...componentsAt('D', from, layout.D),
  });
  let lower = -h / 2;
  const rows = plies.map((ply, k) => {
    sumPlies(qbarTable, row, thickness, k, k + 1, lower, term, 0);
    const z_b = lower;
    const z_k = lower + ply.thickness / 2;
    lower += ply.thickness;
    const Qbar = componentsAt('Qbar', qbarTable, (row[k] ?? 0) * ROW);
    return { t_k: ply.thickness, z_b, z_k, theta: ply.angle, ...Qbar, h: ply.thickness, ...matrices(term) };
  });
  working.step('stackSums', { h, ...matrices(values) }, rows);
  working.step('inverse', {
    ...matrices(values),
    ...componentsAt('a', values, layout.a),
    ...componentsOf('b', full(values, layout.b)),
    ...componentsAt('d', values, layout.d),
  });
}
