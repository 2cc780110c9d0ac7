import type { Coupon, LaminateArm } from '../../src/fracture/index.js';
import { toSI } from '../../src/quantity/index.js';
import { bridgingPriors, type PenetrationInput, type RodInput, rodPriors, stitchType } from '../../src/stitch/index.js';
import { type Case, inputOf, sizeOf } from './inputs.js';
import { armOfPly, rodFibre, threadOf } from './materials.js';

/** The two laws that stand side by side: bends over the faces that do not give way, and bends that do; rods with the friction of threads, and with their own. */
export type Bends = 'rigid' | 'yielding';
export const bendsOf: readonly Bends[] = ['rigid', 'yielding'];

/** m */
export const pitchOf = ({ pattern }: Pick<Case, 'pattern'>): number => toSI(pattern.pitch, pattern.unit);
const spacingOf = ({ pattern }: Pick<Case, 'pattern'>): number => toSI(pattern.rowSpacing, pattern.unit);

/** Penetrations per area, 1/m². */
export const densityOf = (one: Pick<Case, 'pattern'>): number => 1 / (pitchOf(one) * spacingOf(one));

/** m */
export const rowDistance = spacingOf;

/** The arm of a case, with the strain at which it breaks. */
export const armOfCase = (one: Case): LaminateArm => armOfPly(one.arm.ply, inputOf(one, 'armThickness').value);

/** One penetration of a case held by a thread. */
export function penetrationOf(one: Case, bends: Bends): PenetrationInput {
  const { thread, stitch, anchorEfficiency } = one;
  if (thread === undefined || stitch === undefined) throw new Error(`${one.label}: no thread`);
  const parameters = {
    ...(bends === 'rigid' && { beddingIn: 0 }),
    ...(anchorEfficiency && { anchorEfficiency: anchorEfficiency.value }),
  };
  return {
    type: stitchType(stitch.id),
    needleThread: threadOf(thread.id),
    ...(stitch.id === 'saddle' && { underThread: threadOf(thread.id) }),
    thickness: 2 * inputOf(one, 'armThickness').value,
    bends,
    pitch: pitchOf(one),
    parameters,
  };
}

/** Friction of a rod at the ends and in the middle of its range, Pa: once as if it were a thread, once its own. */
export function rodFrictions(bends: Bends): Readonly<Record<'median' | 'low' | 'high', number>> {
  const { value, low, high } = (bends === 'rigid' ? bridgingPriors : rodPriors).frictionStress;
  return { median: value, low, high };
}

/** One penetration of a case held by a rod. */
export function rodOf(one: Case, frictionStress: number): RodInput {
  const { rod } = one;
  if (rod === undefined) throw new Error(`${one.label}: no rod`);
  const { density, modulus, tenacity } = rodFibre(rod.fibre);
  const h = inputOf(one, 'armThickness').value;
  return {
    kind: 'rod',
    diameter: toSI(rod.diameter, rod.unit),
    modulus: rod.fibreFraction * density * modulus,
    strength: rod.fibreFraction * density * tenacity,
    embedded: [h, h],
    parameters: { frictionStress },
  };
}

/** The arms hold whatever comes, as tabs or a fixture that also pulls lengthways make them. */
function withoutBreaking({ failureStrain: _, ...arm }: LaminateArm): LaminateArm {
  return arm;
}

/** The specimen of a case without its stitches; arms that cannot break unless wanted. */
export function specimenOf(one: Case, breaking = false): Coupon['specimen'] {
  const arm = breaking ? armOfCase(one) : withoutBreaking(armOfCase(one));
  const bondToughness = inputOf(one, 'bondToughness').value;
  if (one.mode === 'I') {
    const size = (name: string) => sizeOf('doubleCantilever', name);
    return {
      kind: 'dcb',
      arms: [arm, arm],
      width: size('width'),
      bondToughness,
      crackLength: size('crackLength'),
      length: size('length'),
      until: { crackLength: size('lastCrackLength') },
    };
  }
  const size = (name: string) => sizeOf('endNotchedFlexure', name);
  return {
    kind: 'enf',
    arms: [arm, arm],
    width: size('width'),
    bondToughness,
    crackLength: size('crackLength'),
    span: size('span'),
    overhang: size('overhang'),
  };
}

/** Where the rows of a specimen lie: from half a row distance beyond the crack to the end of the bond. */
export function rowsOf(one: Case, specimen: Coupon['specimen']) {
  const distance = spacingOf(one);
  const start = (specimen.crackLength ?? 0) + distance / 2;
  const end = specimen.kind === 'enf' ? specimen.span + (specimen.overhang ?? 0) : sizeOf('doubleCantilever', 'length');
  return {
    pattern: { kind: 'parallel', pitch: pitchOf(one), rowSpacing: distance },
    growth: 'across',
    from: start,
    to: end,
    origin: start,
  } as const;
}

/** A case as a coupon. Its bond is held at its value: the ratio is to the same bond. */
export function couponOf(one: Case, bends: Bends, breaking = false): Coupon {
  const specimen = specimenOf(one, breaking);
  return {
    specimen,
    stitching: { ...rowsOf(one, specimen), penetration: penetrationOf(one, bends) },
    bondToughnessRange: { low: specimen.bondToughness, high: specimen.bondToughness },
  };
}
