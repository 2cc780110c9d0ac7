import { cosDegrees } from '../../numeric/index.js';
import { fail } from '../../problem/index.js';
import type { Note } from '../../provenance/index.js';
import type { Working } from '../../working/index.js';
import { inMillimetres, requireNotNegative, requirePositive } from '../check.js';
import { bridgingPriors, rodPriors } from '../priors.js';
import { samplePrior } from '../sample-prior.js';
import type { BridgingModel, BridgingSide } from './bridging-sides.js';
import { anchorLimit } from './failure-sites.js';

const priors = {
  ...rodPriors,
  siteScatter: bridgingPriors.siteScatter,
  bearingPressure: bridgingPriors.bearingPressure,
  bearingWidth: bridgingPriors.bearingWidth,
} as const;

const parameterNames = Object.keys(priors) as readonly (keyof RodParameters)[];

/** What is uncertain about a rod; meanings, ranges and reasons in reference-data/stitch-priors.json. */
export type RodParameters = Readonly<Record<keyof typeof priors, number>>;

/** A rod through the laminate without anything at its ends: a cured pin of fibres, or of metal. SI units. */
export interface RodInput {
  readonly kind: 'rod';
  /** m */
  readonly diameter: number;
  /** Along the rod, Pa. */
  readonly modulus: number;
  /** In tension, Pa. */
  readonly strength: number;
  /** Through the laminate on either side of the crack, m. */
  readonly embedded: readonly [number, number];
  /** From straight through the laminate, degrees, 0 to 45; 0 when not given. */
  readonly lean?: number;
  /** Measured or chosen values; the priors' where not given. */
  readonly parameters?: Partial<RodParameters>;
}

const steepest = 45;

/** One sample: parameters given stay as they are, the others are drawn, always in the same order. */
export function sampleRod(input: RodInput, random: () => number): RodInput {
  const drawn: Partial<Record<keyof RodParameters, number>> = {};
  for (const name of parameterNames) drawn[name] = samplePrior(priors[name], random);
  return { ...input, parameters: { ...drawn, ...input.parameters } };
}

function parametersOf(given: Partial<RodParameters> = {}): RodParameters {
  const all: Partial<Record<keyof RodParameters, number>> = {};
  for (const name of parameterNames) {
    const value = given[name] ?? priors[name].value;
    if (name === 'snubbing' || name === 'siteScatter') requireNotNegative(name, value);
    else requirePositive(name, value);
    all[name] = value;
  }
  return all as RodParameters;
}

/**
 * A rod as a penetration: friction q = pi d tau along its embedded lengths, no anchors, rupture at strength times area.
 *
 * A rod that leans by a is longer in the laminate, h/cos a, and turns at the mouth of its hole towards the opening, where friction
 * multiplies what comes from inside by k = e^(mu a): q and EA are those seen from the crack, k times those of the rod.
 * @throws out-of-range diameter, modulus, strength or an embedded length not above 0; lean not in 0 to 45 degrees; a parameter outside its range
 * @source book account of both limits Tong, Mouritz and Bannister 2002; friction at the mouth as of a rope around a bollard
 */
export function rodModel(
  input: RodInput,
  working?: Working,
): { readonly model: BridgingModel; readonly notes: readonly Note[] } {
  const { diameter: d, modulus, strength, embedded, lean = 0 } = input;
  requirePositive('diameter of the rod', d, inMillimetres);
  requirePositive('modulus of the rod', modulus, (E) => `${E / 1e9} GPa`);
  requirePositive('strength of the rod', strength, (sigma) => `${sigma / 1e6} MPa`);
  for (const h of embedded) requirePositive('embedded length of the rod', h, inMillimetres);
  if (!(lean >= 0 && lean <= steepest)) {
    fail({
      code: 'out-of-range',
      message: `lean of the rod = ${lean} degrees, must lie in 0 to ${steepest}`,
      allowed: `0 to ${steepest} degrees`,
    });
  }
  const parameters = parametersOf(input.parameters);
  const area = (Math.PI * d * d) / 4;
  const turned = Math.exp((parameters.snubbing * lean * Math.PI) / 180);
  const side = (h: number): BridgingSide => ({
    depth: h / cosDegrees(lean),
    axialStiffness: turned * modulus * area,
    slipResistance: turned * Math.PI * d * parameters.frictionStress,
    lateralResistance: parameters.bearingPressure * parameters.bearingWidth * d,
    anchorStrength: 0,
    anchorCompliance: 0,
  });
  const model: BridgingModel = {
    sides: [side(embedded[0]), side(embedded[1])],
    crackStrength: strength * area,
    siteScatter: parameters.siteScatter,
  };
  if (working !== undefined) showRod(input, parameters, turned, model, working);
  return {
    model,
    notes: [
      {
        level: 'assumption',
        text: 'rod held by friction alone: the bond that breaks first raises the peak of a pull-out test, and the work by a few hundredths',
        source: 'liu-2003',
      },
    ],
  };
}

/** Takes down a rod as a penetration. */
function showRod(
  { diameter: d_R, modulus: E_R, strength: sigma_R, embedded: [h_1, h_2], lean = 0 }: RodInput,
  parameters: RodParameters,
  f_m: number,
  { sides, crackStrength: F_c }: BridgingModel,
  working: Working,
): void {
  const [{ axialStiffness: EA_l, slipResistance: q_l, lateralResistance: q_n, depth: l_1 }, { depth: l_2 }] = sides;
  const rod = { d_R, E_R, sigma_R, h_1, h_2, alpha_R: lean, tau_R: parameters.frictionStress };
  const bed = { mu_R: parameters.snubbing, p_0: parameters.bearingPressure, f_w: parameters.bearingWidth };
  working.step('rodInHole', { ...rod, ...bed, f_m, EA_l, q_l, q_n, l_1, l_2, F_c });
  for (const [i, side] of sides.entries()) {
    const { depth: l_s } = side;
    working.part('sides', i + 1).step('sideSlips', { q_l, l_s, F_s: anchorLimit(side) });
  }
}

/** Says which parameters of a rod were assumed. */
export function assumedRodParameters({ lean = 0, parameters = {} }: RodInput): readonly Note[] {
  const assumed = [
    ...(parameters.frictionStress === undefined ? [`friction ${priors.frictionStress.value / 1e6} MPa`] : []),
    ...(parameters.snubbing === undefined && lean > 0 ? [`friction at the mouth ${priors.snubbing.value}`] : []),
  ];
  if (assumed.length === 0) return [];
  const text = `not measured, taken from the priors of rods: ${assumed.join(', ')}`;
  return [{ level: 'assumption', text, source: 'common-practice' }];
}
