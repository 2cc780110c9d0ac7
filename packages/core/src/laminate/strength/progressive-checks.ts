import { fail } from '../../problem/index.js';
import type { Load } from '../load.js';
import { type SplitLoad, splitLoad } from './split-load.js';

/** A share of a stiffness. @throws out-of-range */
export function checkedShare(name: string, value: number, least: number): number {
  if (value >= least && value < 1) return value;
  const from = least > 1e-300 ? `${least}` : 'above 0';
  return fail({ code: 'out-of-range', message: `${name} is ${value}`, allowed: `from ${from} to less than 1` });
}

/** The load in its two parts. @throws not-computable for a deformation other than 0 */
export function checkedLoad(load: Load): SplitLoad {
  const prescribed = [...(load.strain ?? []), ...(load.curvature ?? [])].find((value) => value !== null && value !== 0);
  if (prescribed !== undefined) {
    fail({
      code: 'not-computable',
      message: `the load prescribes a deformation of ${prescribed}; progressive failure raises forces`,
      allowed: 'N and M; strain and curvature of 0 or null only',
    });
  }
  return splitLoad(load);
}
