import { type BridgingParameters, bridgingPriors, type PenetrationInput } from '../../stitch/index.js';
import type { Working } from '../../working/index.js';
import { type Draw, parametersWith } from './samples.js';

/** What a rigid bend does not use, and what a bend that yields does not. */
const ofYieldingBends: readonly (keyof BridgingParameters)[] = [
  'bendRadius',
  'faceConfinement',
  'bendFriction',
  'floatGrip',
];

/** Takes down the median of each parameter that a stitch does not give, where it is not the likeliest value of its prior. */
export function showMedians(middle: Draw, penetration: PenetrationInput, working: Working): void {
  const taken = parametersWith(middle.parameters, penetration);
  const names = Object.keys(taken) as (keyof BridgingParameters)[];
  for (const name of names) {
    if (penetration.parameters?.[name] !== undefined) continue;
    if (penetration.bends !== 'yielding' && ofYieldingBends.includes(name)) continue;
    const { value: x_mode, low: x_l, high: x_h, distribution } = bridgingPriors[name];
    const x_M = taken[name];
    // Of a lognormal prior the median is its value.
    if (distribution !== 'triangular' || x_M === undefined || Math.abs(x_M - x_mode) < 1e-9 * x_h) continue;
    const below = (x_h - x_l) / 2 < x_mode - x_l;
    working.part(name).step(below ? 'medianBelowLikeliest' : 'medianAboveLikeliest', { x_l, x_mode, x_h, x_M });
  }
}
