import * as z from 'zod/mini';
import { choice, listOf, quantity, reference, section } from './fields.js';
import { oneOrList } from './one-or-list.js';

const angle = quantity('angle', 'ply angle', { min: -360, max: 360 });

const plyChoice = section('a ply of the stack', {
  angle,
  material: z.optional(reference('a ply, fabric or core of this file')),
});

const yesOrNo = (words: string) => z.boolean({ error: () => 'true or false' }).check(z.describe(words));

/** That the number is whole is judged where the search is set up. */
const whole = (words: string, min: number, max: number) => quantity('number', words, { min, max });

const plies = 'plies of the stack, of its half when symmetric: a whole number, or a list of them';
const plyCount = quantity('number', plies, { min: 1, max: 200 });

const stackEntry = section('the stack of a laminate, to be found', {
  laminate: reference('a laminate of this file, whose stack is written as an orientation code'),
  choices: z.optional(
    z
      .array(z.union([plyChoice, angle], { error: () => 'an angle, or { angle, material }' }), {
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
  plies: oneOrList(plies, plyCount, plyCount, { least: 1, most: 50 }),
  symmetric: z.optional(yesOrNo('true when the plies are the tool-side half, which is mirrored')),
  balanced: z.optional(
    yesOrNo('true when every ply that couples stretching with shearing needs one of the opposite angle'),
  ),
  grouping: z.optional(whole('most plies alike next to each other, across the mid-plane too', 1, 400)),
  outer: z.optional(plyChoice.check(z.describe('the first ply, at the tool side'))),
  angleJump: z.optional(
    quantity('angle', 'largest step between the angles of neighbours, as lines', { min: 0, max: 90 }),
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
  population: z.optional(whole('members of a generation of nsga2; 100 when not given', 4, 10_000)),
  generations: z.optional(whole('generations of nsga2; 100 when not given', 1, 100_000)),
  seed: z.optional(whole('seed of the random numbers of nsga2; 1 when not given', 0, 2 ** 32 - 1)),
  keep: z.optional(whole('candidates shown; 20 when not given', 1, 1000)),
});
