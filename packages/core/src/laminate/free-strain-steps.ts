import type { Working } from '../working/index.js';
import { rotateStrain } from './axes.js';
import { ROW } from './kernel-layout.js';
import { sumPlies } from './kernel-sum.js';
import { componentsAt, vectorAs } from './named.js';
import type { Laminate, Vector3 } from './types.js';

/** What the free strain of a laminate is computed from. */
interface FreeStrainParts {
  readonly laminate: Laminate;
  readonly uniform: number;
  readonly gradient: number;
  readonly moisture: readonly number[];
  readonly heated: boolean;
  readonly qbarTable: Float64Array;
  readonly row: Int32Array;
  /** Per ply: stress of hindered heat strain per kelvin, and of hindered swelling. */
  readonly table: Float64Array;
  /** N_T or M_T from moments of the table, of the whole stack or of one ply. */
  readonly resultant: (moment: 0 | 1, moments: Float64Array, whole: boolean) => Vector3;
}

type Expanding = Laminate['plies'][number];

/** What the free strain at a height of a ply is computed from, by symbols. */
export function freeStrainSymbols(
  ply: Expanding | undefined,
  C: number,
  DeltaT: number,
  g_T: number,
  heated: boolean,
): Record<string, number> {
  const { alpha1 = 0, alpha2 = 0 } = (heated ? ply?.expansion : undefined) ?? {};
  const { beta1 = 0, beta2 = 0 } = (C === 0 ? undefined : ply?.moistureExpansion) ?? {};
  return { alpha1, alpha2, beta1, beta2, C, DeltaT, g_T };
}

/** Takes down what hinders the plies, ply by ply, and its sums, each term by the kernel's own loop. */
export function showFreeStrain(parts: FreeStrainParts, working: Working): void {
  const { laminate, uniform, gradient, moisture, heated, qbarTable, row, table, resultant } = parts;
  const { plies } = laminate;
  const wet = moisture.some((C) => C !== 0);
  const named = (moments: Float64Array, whole: boolean): Record<string, number> => ({
    ...vectorAs(['N_Tx', 'N_Ty', 'N_Txy'], resultant(0, moments, whole)),
    ...vectorAs(['M_Tx', 'M_Ty', 'M_Txy'], resultant(1, moments, whole)),
  });
  const order = Int32Array.from(plies.keys());
  const thickness = Float64Array.from(plies, (ply) => ply.thickness);
  const moments = new Float64Array(3 * ROW);
  let lower = -laminate.thickness / 2;
  const rows = plies.map((ply, k) => {
    const part = working.part('plies', k + 1);
    const given = freeStrainSymbols(ply, moisture[k] ?? 0, uniform, gradient, heated);
    const stress = table.subarray(k * ROW, (k + 1) * ROW);
    const from = (first: number): Vector3 => [stress[first] ?? 0, stress[first + 1] ?? 0, stress[first + 2] ?? 0];
    const heat = vectorAs(['p_x', 'p_y', 'p_xy'], from(0));
    const swelling = vectorAs(['s_x', 's_y', 's_xy'], from(3));
    const turned = (name: string, along = 0, across = 0): Record<string, number> =>
      vectorAs([`${name}_x`, `${name}_y`, `${name}_xy`], rotateStrain([along, across, 0], -ply.angle));
    const stiff = { theta: ply.angle, ...componentsAt('Qbar', qbarTable, (row[k] ?? 0) * ROW) };
    if (heated) {
      part.step('turnedExpansion', {
        ...given,
        ...stiff,
        ...turned('alpha', given.alpha1, given.alpha2),
        ...heat,
      });
    }
    if (given.C !== 0) {
      part.step('turnedSwelling', {
        ...given,
        ...stiff,
        ...turned('beta', given.beta1, given.beta2),
        ...swelling,
      });
    }
    sumPlies(table, order, thickness, k, k + 1, lower, moments, 0);
    const z_k = lower + ply.thickness / 2;
    lower += ply.thickness;
    return { DeltaT: uniform, g_T: gradient, t_k: ply.thickness, z_k, ...heat, ...swelling, ...named(moments, false) };
  });
  sumPlies(table, order, thickness, 0, plies.length, -laminate.thickness / 2, moments, 0);
  working.step(wet ? 'hinderedHeatAndMoisture' : 'hinderedHeat', named(moments, true), rows);
}
