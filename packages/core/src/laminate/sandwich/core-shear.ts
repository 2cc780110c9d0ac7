import { type ShearForces, shearStressDistribution } from '../shear/index.js';
import type { Laminate } from '../types.js';
import type { CoreShear } from './types.js';

/** Points per ply over which the largest stress is sought: the parabola in the core lies within 1e-4 of its peak at one of them. */
const points = 51;

/**
 * Shear stress in the core of a sandwich by equilibrium, √(τxz² + τyz²), beside V/d.
 *
 * @param d distances of the neutral planes of the faces along x and y, m
 * @param strength of the core in shear, Pa
 * @throws not-a-number when a force is not finite
 */
export function coreShear(
  laminate: Laminate,
  forces: ShearForces,
  d: readonly [x: number, y: number],
  strength: number | undefined,
): CoreShear {
  const { points: all } = shearStressDistribution(laminate, forces, points);
  const inCore = all.filter(({ ply }) => laminate.plies[ply - 1]?.core === true);
  const stress = Math.max(...inCore.map(({ tauXz, tauYz }) => Math.hypot(tauXz, tauYz)));
  return {
    stress,
    nominal: Math.hypot((forces.Vx ?? 0) / d[0], (forces.Vy ?? 0) / d[1]),
    ...(strength === undefined || stress === 0 ? {} : { ratio: strength / stress }),
  };
}
