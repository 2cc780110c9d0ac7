import { fail } from '../../problem/index.js';
import { type Note, type SourceKey, uniqueNotes, uniqueSources } from '../../provenance/index.js';
import type { Matrix2 } from '../shear/index.js';
import { arealMass } from '../stack.js';
import type { Laminate } from '../types.js';
import { shearModeStiffness, thinModeStiffness, waveNumbers } from './mode-stiffness.js';
import { demandLengths, type Plate, type PlateStiffness, plateStiffness } from './plate.js';

/** How the vibration of a plate is computed. */
export interface VibrationOptions {
  /** kg/m²; Σ ρ t when not given. */
  readonly arealMass?: number;
  /** Whether normals that turn have inertia; true when not given. */
  readonly rotaryInertia?: boolean;
  /** How many of the lowest modes are returned, 1 to 25; 1 when not given. */
  readonly modes?: number;
  /** Shear stiffness, N/m; that of `transverseShear` when not given. */
  readonly H?: Matrix2;
}

/** A natural mode with m and n half waves along x and y. */
export interface PlateMode {
  readonly m: number;
  readonly n: number;
  /** Hz, of a thin plate and with shear. */
  readonly thin: number;
  readonly withShear: number;
}

/** Natural modes of a plate, the lowest first. */
export interface PlateVibration {
  readonly modes: readonly PlateMode[];
  readonly notes: readonly Note[];
  readonly sources: readonly SourceKey[];
}

const mostModes = 25;

/**
 * Natural frequencies of a simply supported specially orthotropic plate in vacuum.
 *
 * ω² = K_mn / (I0 + I2 (α² + β²)) for a thin plate; with shear the lowest root of K_mn(I2 ω²) = I0 ω². I0 = Σ ρ t,
 * I2 = Σ ρ (t z² + t³/12). Water around the plate, which lowers the frequency much, and clamped
 * edges are not covered.
 *
 * @param plate m
 * @returns Hz
 * @throws missing-key when a ply has no density and no areal mass is given; out-of-range for sides, mass, H or number of modes;
 *   not-admissible as `stiffness`
 * @source Jones 1999, ch. 5; Reddy 2004 (rotary inertia and shear)
 */
export function plateVibration(laminate: Laminate, plate: Plate, options: VibrationOptions = {}): PlateVibration {
  const { a, b } = plate;
  demandLengths({ a, b });
  const { modes: wanted = 1, rotaryInertia = true } = options;
  if (!(Number.isInteger(wanted) && wanted >= 1 && wanted <= mostModes)) {
    fail({ code: 'out-of-range', message: `modes is ${wanted}`, allowed: `a whole number from 1 to ${mostModes}` });
  }
  const I0 = massOf(laminate, options.arealMass);
  const I2 = rotaryInertia ? rotaryInertiaOf(laminate, I0) : 0;
  const p = plateStiffness(laminate, options.H);
  const found: PlateMode[] = [];
  // Frequency rises with m and with n: the k lowest modes have m n of at most k.
  for (let m = 1; m <= wanted; m++) {
    for (let n = 1; m * n <= wanted; n++) {
      const [alpha, beta] = waveNumbers(a, b, m, n);
      const thin = thinModeStiffness(p, alpha, beta) / (I0 + I2 * (alpha * alpha + beta * beta));
      found.push({ m, n, thin: hertz(thin), withShear: hertz(squareWithShear(p, [alpha, beta], I0, I2)) });
    }
  }
  const modes = found.toSorted((one, other) => one.withShear - other.withShear).slice(0, wanted);
  return {
    modes,
    notes: uniqueNotes([...p.notes, inAir]),
    sources: uniqueSources(p.sources, ['jones-1999', 'reddy-2004']),
  };
}

const inAir: Note = {
  level: 'assumption',
  text: 'Frequencies are those of the plate alone; water that moves with it lowers them much.',
};

const hertz = (square: number): number => Math.sqrt(square) / (2 * Math.PI);

/** The lowest root of K(I2 s) = I0 s, between 0 and K(0)/I0; K falls with s up to its first pole, which lies above the root. */
function squareWithShear(p: PlateStiffness, [alpha, beta]: readonly [number, number], I0: number, I2: number): number {
  let upper = shearModeStiffness(p, alpha, beta) / I0;
  if (I2 === 0) return upper;
  let lower = 0;
  for (let halving = 0; halving < 60; halving++) {
    const s = (lower + upper) / 2;
    const K = shearModeStiffness(p, alpha, beta, I2 * s);
    if (K > I0 * s) lower = s;
    else upper = s;
  }
  return (lower + upper) / 2;
}

function massOf(laminate: Laminate, given: number | undefined): number {
  const mass = given ?? arealMass(laminate).total;
  if (mass === undefined) {
    return fail({
      code: 'missing-key',
      message: 'a ply of the laminate has no density, so its natural frequency cannot be computed',
      allowed: 'a density for every ply, or the areal mass',
    });
  }
  if (!(mass > 0 && Number.isFinite(mass))) {
    fail({ code: 'out-of-range', message: `the areal mass is ${mass} kg/m²`, allowed: 'a finite mass above 0' });
  }
  return mass;
}

/** Σ ρ (t z² + t³/12), kg; that of an even density where a ply does not give its own. */
function rotaryInertiaOf({ plies, thickness }: Laminate, I0: number): number {
  let lower = -thickness / 2;
  let sum = 0;
  for (const { density, thickness: t } of plies) {
    const z = lower + t / 2;
    sum += (density ?? Number.NaN) * (t * z * z + (t * t * t) / 12);
    lower += t;
  }
  return Number.isNaN(sum) ? (I0 * thickness * thickness) / 12 : sum;
}
