import * as z from 'zod/mini';
import { choice, listOf, quantity, reference, section } from './fields.js';
import { oneOrList } from './one-or-list.js';

const angle = quantity('angle', 'ply angle', { min: -360, max: 360 });

const plyChoice = section('a ply of the stack', {
  angle,
  material: z.optional(reference('a ply, fabric or core of this file')),
});

const yesOrNo = (words: string) => z.boolean({ error: () => 'true or false' }).check(z.describe(words));

/** A key whose meaning for readers is longer than the name that its problems use. */
const meaning = <Schema extends z.ZodMiniType>(words: string, schema: Schema) => schema.check(z.describe(words));

/** That the number is whole is judged where the search is set up. */
const whole = (name: string, words: string, [min, max]: readonly [number, number], otherwise = '') =>
  z.optional(
    meaning(`${words}, a whole number from ${min} to ${max}${otherwise}`, quantity('number', name, { min, max })),
  );

const plyCount = quantity('number', 'plies', { min: 1, max: 200 });
const plies = meaning(
  'plies of the stack, of its half when symmetric: a whole number from 1 to 200, or a list of them',
  oneOrList('a whole number, or a list of them', plyCount, plyCount, { least: 1, most: 50 }),
);

const angleOrPly = z.union([plyChoice, angle], { error: () => 'an angle, or { angle, material }' });

const stackEntry = section('the stack of a laminate, to be found', {
  laminate: reference('a laminate of this file, whose stack is written as an orientation code'),
  choices: z.optional(
    z
      .array(angleOrPly, {
        error: () => 'a list of plies to choose from',
      })
      .check(
        z.minLength(1),
        z.maxLength(100),
        z.describe('what each ply can be: angles, or { angle, material }; or give `angles`'),
      ),
  ),
  materials: z.optional(
    listOf(
      'materials to choose from, each at each of the `angles`',
      reference('a ply, fabric or core of this file'),
      20,
    ),
  ),
  angles: z.optional(listOf('angles to choose from', angle, 72)),
  plies,
  symmetric: z.optional(yesOrNo('true when the plies are the tool-side half, which is mirrored')),
  balanced: z.optional(
    yesOrNo('true when every ply that couples stretching with shearing needs one of the opposite angle'),
  ),
  grouping: whole('grouping', 'most plies alike next to each other, across the mid-plane too', [1, 400]),
  outer: z.optional(meaning('the first ply, at the tool side: an angle, or { angle, material }', angleOrPly)),
  angleJump: z.optional(
    meaning(
      'largest step between the angles of neighbours, as lines: an angle from 0° to 90°, for example 45',
      quantity('angle', 'angleJump', { min: 0, max: 90 }),
    ),
  ),
});

const limit = (words: string) => z.union([z.string(), z.number()], { error: () => words }).check(z.describe(words));

const constraintEntry = section('a limit that candidates keep to', {
  quantity: reference('path of a number in the JSON report'),
  atLeast: z.optional(limit('lower limit with its unit')),
  atMost: z.optional(limit('upper limit with its unit')),
});

const aims = (words: string) =>
  z.optional(listOf(words, reference('path of a number in the JSON report, for example laminates.edge.arealMass'), 10));

const inputValue = z.union([z.string(), z.number(), z.boolean()], {
  error: () => 'a value as it would be written at that place',
});

/** What is to be found: inputs that vary, aims and limits. */
export const searchEntry = section('a search for the best candidates', {
  vary: z.optional(
    z
      .record(z.string(), listOf('the values that an input takes', inputValue, 1000), {
        error: () => 'inputs by their dotted paths, each with a list of values',
      })
      .check(
        z.describe('inputs by their dotted paths, for example stitching.edge.pitch, each with its list of values'),
      ),
  ),
  stack: z.optional(stackEntry),
  minimise: aims('quantities to be made small'),
  maximise: aims('quantities to be made large'),
  constraints: z.optional(listOf('limits that candidates keep to', constraintEntry, 100)),
  targets: z.optional(
    yesOrNo('false when the hard targets of the design are not limits of the search; true when not given'),
  ),
  method: z.optional(
    choice('a method', ['exhaustive', 'nsga2']).check(
      z.describe(
        'exhaustive goes through all candidates, nsga2 breeds good ones; by default exhaustive for up to 10 000 000 laminates or, where whole designs are computed, 20 000 designs',
      ),
    ),
  ),
  population: whole('population', 'members of a generation of nsga2', [4, 10_000], '; 100 when not given'),
  generations: whole('generations', 'generations of nsga2', [1, 100_000], '; 100 when not given'),
  seed: whole('seed', 'seed of the random numbers of nsga2', [0, 2 ** 32 - 1], '; 1 when not given'),
  keep: whole('keep', 'candidates shown', [1, 1000], '; 20 when not given'),
});
