import * as z from 'zod/mini';
import { choice, quantity, reference, section, text } from './fields.js';

const couponTypes = ['dcb', 'enf', 'peel', 'wedge'] as const;

const size = { above: 0, max: 5 } as const;
const reach = { min: 0, max: 5 } as const;
const energy = { above: 0, max: 100_000 } as const;

/** An optional key whose meaning for readers is longer than the words that its problems use. */
const optional = <Schema extends z.ZodMiniType>(meaning: string, schema: Schema) =>
  z.optional(schema.check(z.describe(meaning)));

const arm = reference('a laminate of this file');
const arms = 'a laminate of this file for both arms, or two: [UPPER, LOWER]';

/** A specimen, or an edge, that a crack runs through with or without stitches. */
export const couponEntry = section('a coupon', {
  title: z.optional(text('a name for readers')),
  type: choice('a type of coupon', couponTypes).check(
    z.describe(
      'what is done, of dcb, enf, peel, wedge: dcb pulls two arms open, enf bends a notched beam so that its halves slide, peel pulls two arms apart in a T, wedge holds an edge open',
    ),
  ),
  arms: z
    .union([arm, z.tuple([arm, arm])], { error: () => arms })
    .check(
      z.describe(
        `${arms}, the upper one under the loads and on the side of the needle; their x lies along the crack, the layers run from the tool side of the upper arm down, the crack lies between the arms`,
      ),
    ),
  stitching: z.optional(
    reference('the stitch plan of this file whose stitches go through both arms; unstitched when not given'),
  ),
  growth: optional(
    'how the crack meets the rows, across or along: across, when not given, its front is parallel to the rows and meets one after the other; along, it grows in their direction',
    choice('a direction of growth', ['across', 'along']),
  ),
  width: quantity('length', 'width', size),
  length: z.optional(quantity('length', 'dcb and peel: length from the loads to the end of the bond', size)),
  crackLength: z.optional(
    quantity(
      'length',
      'crack at the start, from the loads, of enf from the support at the cracked end, of wedge from the edge',
      size,
    ),
  ),
  bondToughness: quantity('toughness', 'energy that the bond without stitches takes per area of new crack', energy),
  bondToughnessRange: z.optional(
    z
      .tuple(
        [
          quantity('toughness', 'lower end of the range', energy),
          quantity('toughness', 'upper end of the range', energy),
        ],
        {
          error: () => 'two toughnesses: [lower, upper]',
        },
      )
      .check(
        z.describe('range of bondToughness, nine in ten: [lower, upper], a toughness each; assumed when not given'),
      ),
  ),
  firstRow: optional(
    'distance from the end of the crack, of wedge from the edge, to the first row of the pattern, a length of 0 or more; one distance of rows when not given; not for edgeRows that the crack crosses: their offsets count from the loads, of wedge from the edge',
    quantity('length', 'distance to the first row', reach),
  ),
  stitchedLength: optional(
    'length of the stitched stretch from the first row on, of edgeRows that the crack crosses from the end of the crack on; to the end of the bond when not given',
    quantity('length', 'length of the stitched stretch', size),
  ),
  span: z.optional(quantity('length', 'enf: distance of the supports', size)),
  loadSpan: optional(
    'enf: distance of two loads about the middle, a length; a single load when not given',
    quantity('length', 'distance of the loads', size),
  ),
  overhang: optional(
    'enf: length of bond beyond the far support; none when not given',
    quantity('length', 'overhang', reach),
  ),
  friction: optional(
    'enf: coefficient of friction of the crack faces, from 0 to 2; 0 when not given',
    quantity('number', 'coefficient of friction', { min: 0, max: 2 }),
  ),
  opening: z.optional(quantity('length', 'wedge: opening at which the edge is held', { above: 0, max: 0.5 })),
  depth: z.optional(quantity('length', 'wedge: depth of the bond from the edge', size)),
  until: z.optional(
    section('dcb, enf and peel: where the test ends at the latest; every key may be left out', {
      displacement: z.optional(quantity('length', 'displacement at the end', size)),
      crackLength: z.optional(quantity('length', 'crack at the end', size)),
    }),
  ),
  breaking: optional(
    'what counts as breaking of an arm, anything or fibres: anything that fails in a layer, when not given, or only fibres',
    choice('a kind of breaking', ['anything', 'fibres']),
  ),
  across: optional(
    'how the arms bend across, held or free: held flat, when not given, as those much wider than thick; free, as narrow strips',
    choice('a way to bend across', ['held', 'free']),
  ),
  test: z.optional(
    section(
      'dcb, enf and peel: what tests of this coupon gave; narrows the ranges of every coupon with the same stitch, without stitches of every one with the same bondToughness',
      {
        peakForce: quantity('force', 'mean of the greatest forces', { above: 0 }),
        variation: optional(
          'coefficient of variation of that mean, a fraction; 10 % when not given',
          quantity('fraction', 'coefficient of variation', { above: 0, max: 1 }),
        ),
      },
    ),
  ),
  note: z.optional(text('a remark')),
});
