import * as z from 'zod/mini';
import { discounts, failureCriteria, loadComponents, tsaiHillVariants } from '../../laminate/index.js';
import { choice, listOf, quantity, section } from './fields.js';
import { oneOrList } from './one-or-list.js';

const component = choice('a component of the load', loadComponents);

/** An optional key: its schema speaks in problems, the meaning stands in the reference of the design file. */
const optional = <Schema extends z.ZodMiniType>(meaning: string, schema: Schema) =>
  z.optional(schema.check(z.describe(meaning)));

const listed = (words: readonly string[]): string => words.join(', ');

/** How strength is judged under a load case; everything has a default. */
export const strengthEntry = section('how strength is judged; every key may be left out', {
  criterion: optional(
    `the criterion by which layers fail one after the other, of ${listed(failureCriteria)}; hashin when not given, since it tells fibres from matrix and asks for no further values`,
    choice('a criterion', failureCriteria),
  ),
  discount: optional(
    'what a failed layer loses: matrix (when not given) E2, G12 and nu12 while its fibres hold; total E1, E2 and G12 whatever fails',
    choice('a discount', discounts),
  ),
  remainingStiffness: optional(
    'share of a lost stiffness that a failed layer keeps; 1 % when not given',
    quantity('fraction', 'remaining stiffness', { min: 1e-6, below: 1 }),
  ),
  collapse: optional(
    'share of the stiffness against the load below which the laminate has failed; 10 % when not given',
    quantity('fraction', 'stiffness at collapse', { above: 0, below: 1 }),
  ),
  envelope: optional(
    `the two components of the failure envelope, of ${listed(loadComponents)}; those of the load when not given`,
    z.tuple([component, component], { error: () => 'two components of the load, for example [Nx, Nxy]' }),
  ),
  envelopeCriteria: optional(
    'criteria drawn in the envelope, at most four; maxStress, tsaiWu, hashin and puck when not given',
    listOf('a list of one to four criteria', choice('a criterion', failureCriteria), 4),
  ),
  tsaiHill: optional(
    `the strengths that Tsai-Hill takes, of ${listed(tsaiHillVariants)}; sign when not given: by the sign of each stress`,
    choice('a variant of Tsai-Hill', tsaiHillVariants),
  ),
  F12star: optional(
    'interaction of Tsai-Wu, F12/√(F11 F22), above -1 and below 1; -0.5 when not given',
    quantity('number', 'F12star', { above: -1, below: 1 }),
  ),
  transverseShearStrength: optional(
    'strength in shear across the fibre for Hashin, a stress; half of Yc when not given',
    quantity('stress', 'transverse shear strength', { above: 0 }),
  ),
  hashinAlpha: optional(
    'share of shear in the tension of fibres for Hashin, from 0 to 1; 1 when not given',
    quantity('number', 'hashinAlpha', { min: 0, max: 1 }),
  ),
  puck: optional(
    'inclinations of Puck: carbon (when not given: 0.35 and 0.30), glass (0.30 and 0.25), or a list of two numbers, for tension and for compression',
    oneOrList(
      'carbon, glass, or a list of two inclinations',
      choice('a set of inclinations', ['carbon', 'glass']),
      quantity('number', 'inclination', { min: 0 }),
      { least: 2, most: 2 },
    ),
  ),
});
