import * as z from 'zod/mini';
import { type KindName, kinds } from '../../quantity/index.js';
import {
  choice,
  elasticStrain,
  quantity,
  type Range,
  reference,
  section,
  seenTemperatureChange,
  text,
} from './fields.js';
import { oneOrList } from './one-or-list.js';
import { strengthEntry } from './strength.js';

const three = (kind: KindName, words: string, range: Range = {}) => {
  const component = z.nullable(quantity(kind, words, range));
  return z
    .tuple([component, component, component], {
      error: () => `${words}: a list of three, [x, y, xy]; null for a component that follows`,
    })
    .check(z.describe(`${words}: [x, y, xy], ${kinds[kind].name} each; null for a component that follows`));
};

const shearForces = z
  .tuple([quantity('forcePerLength', 'shear force Vx'), quantity('forcePerLength', 'shear force Vy')], {
    error: () => 'shear forces through the thickness: a list of two, [Vx, Vy]',
  })
  .check(
    z.describe(
      'shear forces through the thickness, on the faces across x and across y: [Vx, Vy], a force per length each',
    ),
  );

const moisture = quantity('fraction', 'moisture', { min: 0, max: 1 });

export const loadEntry = section('a load case on a laminate', {
  laminate: reference('a laminate of this file'),
  N: z.optional(three('forcePerLength', 'force per width')),
  M: z.optional(three('momentPerLength', 'moment per width')),
  strain: z.optional(three('strain', 'mid-plane strain, instead of N', elasticStrain)),
  curvature: z.optional(three('curvature', 'curvature, instead of M')),
  shear: z.optional(shearForces),
  temperatureChange: z.optional(
    quantity('temperatureChange', 'change from the stress-free temperature', seenTemperatureChange),
  ),
  temperatureGradient: z.optional(
    quantity('temperatureGradient', 'change of temperature per thickness, bag side hotter'),
  ),
  moisture: z.optional(
    oneOrList(
      'moisture taken up, mass of water per mass of ply: a fraction for all plies, or a list with one for each ply of the built-up laminate, from the tool side',
      moisture,
      moisture,
      { least: 1, most: 100_000 },
    ),
  ),
  strength: z.optional(strengthEntry),
  note: z.optional(text('a remark')),
});

/** The limit of a target is read once the quantity, and with it the unit, is known. */
const limit = (words: string) => z.union([z.string(), z.number()], { error: () => words }).check(z.describe(words));

export const targetEntry = section('a target on a quantity of the design', {
  quantity: reference('path of a number in the JSON report, for example laminates.edge.thickness'),
  atMost: z.optional(limit('upper limit with its unit')),
  atLeast: z.optional(limit('lower limit with its unit')),
  within: z.optional(
    z
      .tuple([limit('lower limit with its unit'), limit('upper limit with its unit')], {
        error: () => 'two limits: [lower, upper]',
      })
      .check(z.describe('lower and upper limit')),
  ),
  priority: z.optional(choice('a priority', ['hard', 'soft'])),
  note: z.optional(text('a remark')),
});
