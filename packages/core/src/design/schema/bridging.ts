import * as z from 'zod/mini';
import { formatNumber, formatQuantity, type KindName } from '../../quantity/index.js';
import { bridgingPriors, usualVariation } from '../../stitch/index.js';
import { choice, listOf, quantity, section } from './fields.js';

/** An optional key whose meaning for readers is longer than the words that its problems use. */
const optional = <Schema extends z.ZodMiniType>(meaning: string, schema: Schema) =>
  z.optional(schema.check(z.describe(meaning)));

/** "7 MPa when not given, 3.5 MPa to 14 MPa usual". */
function usual(name: keyof typeof bridgingPriors, kind: KindName): string {
  const { value, low, high } = bridgingPriors[name];
  const show = (number: number): string => (kind === 'number' ? formatNumber(number) : formatQuantity(number, kind));
  return `${show(value)} when not given, ${show(low)} to ${show(high)} usual`;
}

const ends = ['surface', 'none'] as const;
const failures = ['threadAtCrack', 'threadAtAnchor', 'threadPullOut'] as const;

const end = (face: string) =>
  optional(
    `what holds the thread at the ${face} face, surface or none: surface, when not given, a bend over the face or a lock pulled to it; none for a tuft, a pin, or a face that is worn or sanded off`,
    choice('an end of the thread', ends),
  );

const measured = section('a curve measured on one stitch, in place of the computed one', {
  opening: listOf(
    'openings of the crack at the points of the curve, lengths from 0 on that never fall, at least two; the same opening twice is a drop',
    quantity('length', 'opening', { min: 0, max: 0.1 }),
    2000,
  ),
  force: listOf(
    'forces of one stitch at these openings, as many',
    quantity('force', 'force of one stitch', { min: 0, max: 1e5 }),
    2000,
  ),
  failure: choice('what gave way', failures).check(
    z.describe(
      'what gave way, of threadAtCrack, threadAtAnchor, threadPullOut: the thread in the plane of the crack, at its lock or bend over a face, or its hold on the laminate',
    ),
  ),
  variation: optional(
    `coefficient of variation between the stitches that were measured, a fraction: ${formatQuantity(usualVariation, 'fraction', { digits: 2 })} when not given`,
    quantity('fraction', 'variation between stitches', { min: 0, max: 1 }),
  ),
  cutOff: optional(
    'true when the test ended while the stitch still held; without it the curve has to end at or near zero force',
    z.boolean({ error: () => 'true or false' }),
  ),
});

/** What is known of how one stitch holds a crack. */
export const bridgingEntry = section('how one stitch holds a crack; every key may be left out', {
  friction: optional(
    `friction between the soaked thread and the laminate while it slips, a stress: ${usual('frictionStress', 'stress')}`,
    quantity('stress', 'friction', { min: 0, max: 500e6 }),
  ),
  sewnEfficiency: optional(
    `share of the straight thread's strength left after sewing, in the plane of the crack, a fraction: ${usual('sewnEfficiency', 'fraction')}`,
    quantity('fraction', 'strength left after sewing', { above: 0, max: 1 }),
  ),
  lockEfficiency: optional(
    `share of the straight thread's strength left at a lock or a bend over a face, a fraction: ${usual('anchorEfficiency', 'fraction')}; glass and carbon need their own, far lower`,
    quantity('fraction', 'strength left at a lock or bend', { above: 0, max: 1 }),
  ),
  strengthFactor: optional(
    `strength of the thread in hand over its tenacity: ${usual('tenacityFactor', 'number')}`,
    quantity('number', 'strength over tenacity', { min: 0.1, max: 3 }),
  ),
  stiffnessFactor: optional(
    `stiffness of the thread in the laminate over its modulus: ${usual('modulusFactor', 'number')}`,
    quantity('number', 'stiffness over modulus', { min: 0.1, max: 3 }),
  ),
  packing: optional(
    `share of fibre inside the outline of one cured leg, for threads without a packing of their own, a fraction: ${usual('packing', 'fraction')}`,
    quantity('fraction', 'packing', { min: 0.3, max: 0.9 }),
  ),
  beddingIn: optional(
    `how far a bend over a face sinks into it by the time it breaks, in diameters of one leg: ${usual('beddingIn', 'number')}`,
    quantity('number', 'bedding-in', { min: 0, max: 10 }),
  ),
  bends: optional(
    'how the bends over the faces give way, rigid or yielding: rigid, when not given, by no more than beddingIn; yielding, as the bed under them yields and the thread on the face follows, which opens the stitch further and has not been measured',
    choice('a way of the bends', ['rigid', 'yielding']),
  ),
  scatter: optional(
    `coefficient of variation of the strength of one place from stitch to stitch, a fraction: ${usual('siteScatter', 'fraction')}`,
    quantity('fraction', 'scatter', { min: 0, max: 0.5 }),
  ),
  bearingPressure: optional(
    `pressure at which a thread ploughs sideways into the laminate, a stress: ${usual('bearingPressure', 'stress')}`,
    quantity('stress', 'bearing pressure', { above: 0, max: 5e9 }),
  ),
  bearingWidth: optional(
    `width of the thread that bears on the laminate, over the diameter of the round bundle of its legs: ${usual('bearingWidth', 'number')}`,
    quantity('number', 'bearing width', { min: 0.1, max: 5 }),
  ),
  legAngle: optional(
    'zigzag: lean of the legs from straight through the laminate, an angle from 0 to 60 degrees; 0 when not given',
    quantity('angle', 'lean of the legs', { min: 0, max: 60 }),
  ),
  needleFace: end('needle'),
  underFace: end('under'),
  measured: z.optional(measured),
});
