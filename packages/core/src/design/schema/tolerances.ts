import * as z from 'zod/mini';
import { choice, quantity, reference, section, text } from './fields.js';

/** Limits of a share: more than nothing, and not so much that the input could change its sign. */
const share = { above: 0, max: 1 } as const;

const amount = (words: string) =>
  z
    .union([z.string(), z.number()], { error: () => `${words}: a number with its unit` })
    .check(z.describe(`${words}: a number with its unit, as the input has one`));

export const toleranceEntry = section('how well one input is known', {
  input: reference('dotted path of a number of this file, for example materials.cloth.fibreVolumeFraction'),
  relative: z.optional(quantity('fraction', 'half the range as a share of the value', share)),
  plusMinus: z.optional(amount('half the range')),
  between: z.optional(
    z
      .tuple([amount('low end'), amount('high end')], { error: () => 'two ends, for example [48 %, 53 %]' })
      .check(z.describe('both ends of the range')),
  ),
  distribution: z.optional(
    choice('a distribution', ['normal', 'lognormal', 'uniform', 'triangular']).check(
      z.describe(
        'normal by default; the ends are two standard deviations from the middle (lognormal: of the logarithm) for normal and lognormal, the limits for uniform and triangular',
      ),
    ),
  ),
  note: z.optional(text('a remark')),
});
