import { fail } from '../problem/index.js';
import type { Working } from '../working/index.js';
import { rotateStrain, times } from './axes.js';
import { freeStrainSymbols, showFreeStrain } from './free-strain-steps.js';
import { ROW } from './kernel-layout.js';
import { sumStack } from './kernel-sum.js';
import type { Load } from './load.js';
import { symmetric } from './matrix3.js';
import { tabulateQbar } from './qbar.js';
import type { Laminate, Vector3 } from './types.js';

/** Strain that each ply would take by itself, from heat and moisture, and the forces it needs to be held back. */
export interface FreeStrain {
  /** Free strain of ply k at height z (m), in ply axes 1, 2, 12. */
  readonly at: (k: number, z: number) => Vector3;
  /** N_T, N/m, and M_T, N: what holds the laminate flat at its old size, with opposite sign. */
  readonly N: Vector3;
  readonly M: Vector3;
  /** Whether any heat or moisture acts. */
  readonly acts: boolean;
  /** Expansion and swelling that enter `at` for ply k, by the symbols of the working. */
  readonly of: (k: number) => Record<string, number>;
}

/**
 * Free strains of the plies and their resultants.
 *
 * e_k(z) = α_k (ΔT + g z) + β_k C_k; N_T = Σ ∫ Qbar_k e_k dz, M_T = Σ ∫ Qbar_k e_k z dz, with α and β turned to laminate axes
 * as strains (shear component from rotation, engineering).
 *
 * @param working takes the steps down, when given and any heat or moisture acts
 * @throws not-computable when heat or moisture acts and a ply has no coefficient for it; out-of-range when the moisture
 *   list does not fit the plies; not-a-number when a value is not finite
 * @source Jones 1999, ch. 4.5; Kaw 2006, ch. 4
 */
export function freeStrain(laminate: Laminate, load: Load, working?: Working): FreeStrain {
  const { plies } = laminate;
  const uniform = finite('temperatureChange', load.temperatureChange ?? 0);
  const gradient = finite('temperatureGradient', load.temperatureGradient ?? 0);
  const moisture = moisturePerPly(laminate, load);
  const heated = uniform !== 0 || gradient !== 0;

  const heat = plies.map((ply, k): Vector3 => {
    if (!heated) return [0, 0, 0];
    const { alpha1, alpha2 } = ply.expansion ?? lacks(ply.name, k, 'thermal expansion', 'alpha1 and alpha2');
    return [alpha1, alpha2, 0];
  });
  const swelling = plies.map((ply, k): Vector3 => {
    const C = moisture[k] ?? 0;
    if (C === 0) return [0, 0, 0];
    const { beta1, beta2 } = ply.moistureExpansion ?? lacks(ply.name, k, 'moisture expansion', 'beta1 and beta2');
    return [beta1 * C, beta2 * C, 0];
  });

  // Six columns that the stack is summed over: the stress of hindered heat strain per kelvin, and of hindered swelling.
  const { qbarTable, row } = tabulateQbar(plies);
  const table = new Float64Array(plies.length * ROW);
  plies.forEach((ply, k) => {
    const Qbar = symmetric(qbarTable, (row[k] ?? 0) * ROW);
    const hindered = (free: Vector3): Vector3 => times(Qbar, rotateStrain(free, -ply.angle));
    table.set([...hindered(heat[k] ?? none), ...hindered(swelling[k] ?? none)], k * ROW);
  });
  const moments = new Float64Array(3 * ROW);
  const order = Int32Array.from(plies.keys());
  const thickness = Float64Array.from(plies, (ply) => ply.thickness);
  sumStack(table, order, thickness, 0, plies.length, moments, 0);
  // Below the rounding of its own sum a resultant is zero: a mirrored stack takes up no moment of heat, exactly.
  const hottest = Math.abs(uniform) + (Math.abs(gradient) * laminate.thickness) / 2;
  const largest = (column: 0 | 3): number =>
    table.reduce(
      (most, value, i) => (i % ROW >= column && i % ROW < column + 3 ? Math.max(most, Math.abs(value)) : most),
      0,
    );
  const noise = 2 ** -52 * plies.length * (largest(0) * hottest + largest(3));
  const resultant = (moment: 0 | 1, from: Float64Array = moments, whole = true): Vector3 => {
    const m = (order: number, i: number): number => from[order * ROW + i] ?? 0;
    const component = (i: number): number => {
      const sum = uniform * m(moment, i) + gradient * m(moment + 1, i) + m(moment, i + 3);
      return whole && Math.abs(sum) < noise * laminate.thickness ** (moment + 1) ? 0 : sum;
    };
    return [component(0), component(1), component(2)];
  };
  const acts = heated || moisture.some((C) => C !== 0);
  if (working !== undefined && acts) {
    showFreeStrain({ laminate, uniform, gradient, moisture, heated, qbarTable, row, table, resultant }, working);
  }

  return {
    at: (k, z) => {
      const [a1, a2] = heat[k] ?? none;
      const [b1, b2] = swelling[k] ?? none;
      const T = uniform + gradient * z;
      return [a1 * T + b1, a2 * T + b2, 0];
    },
    N: resultant(0),
    M: resultant(1),
    acts,
    of: (k) => freeStrainSymbols(plies[k], moisture[k] ?? 0, uniform, gradient, heated),
  };
}

const none: Vector3 = [0, 0, 0];

function moisturePerPly({ plies }: Laminate, { moisture = 0 }: Load): readonly number[] {
  const list = typeof moisture === 'number' ? plies.map(() => moisture) : moisture;
  if (list.length !== plies.length) {
    fail({
      code: 'out-of-range',
      message: `moisture has ${list.length} numbers, the laminate has ${plies.length} plies`,
      allowed: 'one number for all plies, or one per ply',
    });
  }
  for (const value of list) finite('moisture', value);
  return list;
}

function finite(name: string, value: number): number {
  if (Number.isFinite(value)) return value;
  return fail({ code: 'not-a-number', message: `${name} is ${value}`, allowed: 'a finite number' });
}

function lacks(name: string, k: number, what: string, keys: string): never {
  return fail({
    code: 'not-computable',
    message: `ply ${k + 1} (${name}) has no ${what}, so the response to it cannot be computed`,
    allowed: `${keys} for every ply of the laminate`,
    hint: `give the material its ${what}, or leave it out of the load`,
  });
}
