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

/**
 * The legs in one hole as one bundle: EA = sum n t m; strength EA times the least breaking strain, so that of unlike threads the first to
 * break counts; q = friction times a tight cord around the legs, (pi + 2 (n - 1)) d; sideways p0 times the bearing width.
 * @throws missing-key thread without tenacity or modulus; out-of-range see {@link checkThread}
 */
export function bundleOf(
  legs: Legs,
  threads: { readonly needle: Thread; readonly under: Thread },
  parameters: BridgingParameters,
): Bundle {
  const strands: readonly Strand[] = [
    { thread: threads.needle, legs: legs.needle },
    { thread: threads.under, legs: legs.under },
  ].filter((strand) => strand.legs > 0);
  let [count, axialStiffness, diameters, squares] = [0, 0, 0, 0];
  let breakingStrain = Number.POSITIVE_INFINITY;
  for (const { thread, legs: n } of strands) {
    const modulus = needed(thread, 'modulus') * parameters.modulusFactor;
    const tenacity = needed(thread, 'tenacity') * parameters.tenacityFactor;
    const d = threadDiameter(thread.packing === undefined ? { ...thread, packing: parameters.packing } : thread);
    count += n;
    axialStiffness += n * thread.linearDensity * modulus;
    diameters += n * d;
    squares += n * d * d;
    breakingStrain = Math.min(breakingStrain, tenacity / modulus);
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
