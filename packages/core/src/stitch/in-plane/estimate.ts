import { fail } from '../../problem/index.js';
import { requireNotNegative, requirePositive } from '../check.js';
import { inPlanePriors, type Prior } from '../priors.js';

/** Geometry and material values that are uncertain; meanings and ranges in reference-data/stitch-priors.json. */
export type InPlaneParameters = Readonly<Record<keyof typeof inPlanePriors, number>>;

/** An estimate by the single values of the parameters, with its least and greatest over their ranges. */
export interface Estimate {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

type Name = keyof InPlaneParameters;
const names = Object.keys(inPlanePriors) as readonly Name[];

/** Checks the parameters given. @throws out-of-range not above 0; cutShare below 0 or above 1 */
export function checkInPlaneParameters(given: Partial<InPlaneParameters>): void {
  for (const name of names) {
    const value = given[name];
    if (value === undefined) continue;
    if (name === 'cutShare') requireNotNegative(name, value);
    else requirePositive(name, value);
    if (name === 'cutShare' && value > 1) {
      fail({ code: 'out-of-range', message: `cutShare = ${value}, must not be above 1`, allowed: '0 to 1' });
    }
  }
}

/** A quantity by the single values, and its extremes over every corner of the ranges of the parameters it depends on. */
export function estimate(
  quantity: (parameters: InPlaneParameters) => number,
  dependsOn: readonly Name[],
  given: Partial<InPlaneParameters>,
): Estimate {
  const single = singleParameters(given);
  const value = quantity(single);
  let [low, high] = [value, value];
  const free = dependsOn.filter((name) => given[name] === undefined);
  for (let corner = 0; corner < 2 ** free.length; corner++) {
    const moved = free.map((name, i) => [name, inPlanePriors[name][(corner >> i) & 1 ? 'high' : 'low']] as const);
    const at = quantity({ ...single, ...Object.fromEntries(moved) });
    low = Math.min(low, at);
    high = Math.max(high, at);
  }
  return { value, low, high };
}

/** The parameters given, the rest by the priors' single values. */
export function singleParameters(given: Partial<InPlaneParameters>): InPlaneParameters {
  return parametersBy((prior) => prior.value, given);
}

function parametersBy(choice: (prior: Prior) => number, given: Partial<InPlaneParameters>): InPlaneParameters {
  const all = names.map((name) => [name, given[name] ?? choice(inPlanePriors[name])] as const);
  return Object.fromEntries(all) as InPlaneParameters;
}
