import { fail } from '../../problem/index.js';
import type { Note } from '../../provenance/index.js';
import { requireNotNegative, requirePositive } from '../check.js';
import { bridgingPriors } from '../priors.js';

/** What is uncertain about a penetration; meanings, ranges and reasons in reference-data/stitch-priors.json. */
export type BridgingParameters = Readonly<Record<keyof typeof bridgingPriors, number>>;

export const bridgingParameterNames = Object.keys(bridgingPriors) as readonly (keyof BridgingParameters)[];

/** Only for bends that yield. */
export const yieldingParameterNames: readonly (keyof BridgingParameters)[] = [
  'bendRadius',
  'faceConfinement',
  'bendFriction',
  'floatGrip',
];

/** How a parameter is called and shown in a note. */
const shown: Readonly<Record<keyof BridgingParameters, (value: number) => string>> = {
  frictionStress: (value) => `friction ${value / 1e6} MPa`,
  sewnEfficiency: (value) => `strength left after sewing ${value}`,
  anchorEfficiency: (value) => `strength left at an anchor ${value}`,
  tenacityFactor: (value) => `strength over tabled strength ${value}`,
  modulusFactor: (value) => `stiffness over tabled stiffness ${value}`,
  packing: (value) => `packing ${value}`,
  beddingIn: (value) => `bedding-in of surface bends ${value} diameters`,
  siteScatter: (value) => `scatter of a site ${value * 100} %`,
  bearingPressure: (value) => `bearing pressure ${value / 1e6} MPa`,
  bearingWidth: (value) => `bearing width ${value} of the bundle`,
  bendRadius: (value) => `radius of the bends as cured ${value} diameters`,
  faceConfinement: (value) => `bearing pressure of the face ${value} times that inside`,
  bendFriction: (value) => `friction around the bends ${value}`,
  floatGrip: (value) => `thread on the face held along ${value} of its perimeter`,
};

const mayBeZero: readonly (keyof BridgingParameters)[] = [
  'frictionStress',
  'beddingIn',
  'siteScatter',
  'bendRadius',
  'bendFriction',
  'floatGrip',
];
/** 1 or less by their nature: shares of the straight thread's strength, and of the outline of a leg. */
const shares: readonly (keyof BridgingParameters)[] = ['sewnEfficiency', 'anchorEfficiency', 'packing', 'floatGrip'];

function check(name: keyof BridgingParameters, value: number): void {
  if (mayBeZero.includes(name)) requireNotNegative(name, value);
  else requirePositive(name, value);
  if (shares.includes(name) && value > 1) {
    fail({ code: 'out-of-range', message: `${name} = ${value}, must not be above 1`, allowed: 'above 0, at most 1' });
  }
}

/**
 * The parameters given, the rest by the priors' single values.
 * @throws out-of-range a parameter below 0 or not finite, 0 where it must be above; efficiencies, packing and grip above 1
 */
export function bridgingParameters(given: Partial<BridgingParameters> = {}): BridgingParameters {
  const all: Partial<Record<keyof BridgingParameters, number>> = {};
  for (const name of bridgingParameterNames) {
    const value = given[name] ?? bridgingPriors[name].value;
    check(name, value);
    all[name] = value;
  }
  return all as BridgingParameters;
}

/** Says which of the parameters were assumed, and with which values: the priors' where not said. */
export function assumedParameters(
  names: readonly (keyof BridgingParameters)[],
  given: Partial<BridgingParameters> = {},
  taken?: Partial<BridgingParameters>,
): readonly Note[] {
  const assumed = names.filter((name) => given[name] === undefined);
  if (assumed.length === 0) return [];
  const valued = (name: keyof BridgingParameters): number =>
    Number((taken?.[name] ?? bridgingPriors[name].value).toPrecision(3));
  const list = assumed.map((name) => shown[name](valued(name))).join(', ');
  return [
    {
      level: 'assumption',
      text: `not measured, ${taken === undefined ? 'taken from the priors of stitching' : 'taken at the middle of what is known of stitching'}: ${list}`,
      source: 'common-practice',
    },
  ];
}
