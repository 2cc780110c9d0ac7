import { fail } from '../../problem/index.js';
import type { Legs } from '../stitch-type.js';
import { threadDiameter } from '../thread.js';
import type { Thread } from '../types.js';
import type { BridgingParameters } from './bridging-parameters.js';

/** The legs of one penetration on one side of the lock, acting together. */
export interface Bundle {
  /** Strands in the hole. */
  readonly legs: number;
  /** N */
  readonly axialStiffness: number;
  /** Straight, as tabled, before any loss by sewing, N. */
  readonly strength: number;
  /** Of one leg, the mean where threads differ, m. */
  readonly legDiameter: number;
  /** Friction per length it slips along, N/m. */
  readonly slipResistance: number;
  /** Force per length at which it ploughs sideways, N/m. */
  readonly lateralResistance: number;
}

interface Strand {
  readonly thread: Thread;
  readonly legs: number;
}

function needed(thread: Thread, name: 'tenacity' | 'modulus'): number {
  return (
    thread[name] ??
    fail({
      code: 'missing-key',
      message: `${name} of thread ${thread.name} is not known`,
      hint:
        name === 'modulus'
          ? 'from a pull test: force per linear density over strain'
          : 'breaking force over linear density',
    })
  );
}

type Threads = Readonly<Record<'needle' | 'under', Thread>>;

const modulusOf = (thread: Thread, { modulusFactor }: BridgingParameters) => needed(thread, 'modulus') * modulusFactor;
const tenacityOf = (thread: Thread, { tenacityFactor }: BridgingParameters) =>
  needed(thread, 'tenacity') * tenacityFactor;
const diameterOf = (thread: Thread, { packing }: BridgingParameters) =>
  threadDiameter(thread.packing === undefined ? { ...thread, packing } : thread);

/** The threads that have legs in a hole. */
const strandsOf = (legs: Legs, threads: Threads): readonly Strand[] =>
  [
    { thread: threads.needle, legs: legs.needle },
    { thread: threads.under, legs: legs.under },
  ].filter((strand) => strand.legs > 0);

/**
 * The legs in one hole as one bundle: EA = sum n t m; strength EA times the least breaking strain, so that of unlike threads the first to
 * break counts; q = friction times a tight cord around the legs, (pi + 2 (n - 1)) d; sideways p0 times the bearing width.
 * @throws missing-key thread without tenacity or modulus; out-of-range see `checkThread`
 */
export function bundleOf(legs: Legs, threads: Threads, parameters: BridgingParameters): Bundle {
  let [count, axialStiffness, diameters, squares] = [0, 0, 0, 0];
  let breakingStrain = Number.POSITIVE_INFINITY;
  for (const { thread, legs: n } of strandsOf(legs, threads)) {
    const modulus = modulusOf(thread, parameters);
    const d = diameterOf(thread, parameters);
    count += n;
    axialStiffness += n * thread.linearDensity * modulus;
    diameters += n * d;
    squares += n * d * d;
    breakingStrain = Math.min(breakingStrain, tenacityOf(thread, parameters) / modulus);
  }
  const legDiameter = diameters / count;
  return {
    legs: count,
    axialStiffness,
    strength: axialStiffness * breakingStrain,
    legDiameter,
    slipResistance: parameters.frictionStress * (Math.PI + 2 * (count - 1)) * legDiameter,
    lateralResistance: parameters.bearingPressure * parameters.bearingWidth * Math.sqrt(squares),
  };
}

/** One thread of a bundle with what the model makes of its numbers. */
interface BundledStrand extends Strand {
  /** As in the laminate, N/(kg/m). */
  readonly modulus: number;
  readonly breakingStrain: number;
  /** m */
  readonly diameter: number;
  readonly packing: number;
}

/** The threads of `bundleOf`, each by itself, for its working. */
export const bundledStrands = (
  legs: Legs,
  threads: Threads,
  parameters: BridgingParameters,
): readonly BundledStrand[] =>
  strandsOf(legs, threads).map((strand) => {
    const { thread } = strand;
    const modulus = modulusOf(thread, parameters);
    return {
      ...strand,
      modulus,
      breakingStrain: tenacityOf(thread, parameters) / modulus,
      diameter: diameterOf(thread, parameters),
      packing: thread.packing ?? parameters.packing,
    };
  });
