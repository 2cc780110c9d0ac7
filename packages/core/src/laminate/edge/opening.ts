import { laminate } from '../stack.js';
import type { Laminate } from '../types.js';
import { energiesOf, type Holding, type StripState } from './strip-energy.js';

/** A laminate that may part, with its energies. */
export interface Whole {
  readonly laminate: Laminate;
  readonly energy: ReturnType<typeof energiesOf>;
}

/** The strains at which a delamination starts, tension and compression; 0 when heat alone is enough. */
export interface OnsetStrain {
  readonly tension: number;
  readonly compression: number;
}

/** What is released at each front when the laminate parts along one interface, or along it and its mirror image. */
export interface EdgeOpening {
  /** Fronts that advance together at one edge. */
  readonly fronts: 1 | 2;
  /** Axial modulus of the whole laminate and, E*, of its parts weighed by thickness, Pa. */
  readonly modulus: number;
  readonly partedModulus: number;
  /** G per square of axial strain, J/m²: t (E - E*)/(2 fronts). */
  readonly perSquare: number;
  /** Energy release rate per front in the given state, J/m². */
  readonly G: number;
  /** Where a toughness is given. */
  readonly onset?: OnsetStrain;
}

/**
 * Energy release rate of an edge that parts after given numbers of plies, with the strain held.
 *
 * fronts G = U(whole) - Σ U(parts), a square form in the strain: c2 ε² + c1 ε + c0, the last two from heat.
 *
 * @param cuts numbers of plies below each open interface, rising
 * @source O'Brien 1982, with one more term for heat
 */
export function opening(
  { laminate: whole, energy }: Whole,
  cuts: readonly number[],
  holding: Holding,
  state: StripState,
  toughness: number | undefined,
): EdgeOpening {
  const bounds = [0, ...cuts, whole.plies.length];
  const parts = bounds.slice(1).map((end, i) => energiesOf(laminate(whole.plies.slice(bounds[i] ?? 0, end))));
  const fronts = cuts.length === 1 ? 1 : 2;
  const released = (at: StripState): number =>
    (energy(holding, at) - parts.reduce((sum, part) => sum + part(holding, at), 0)) / fronts;
  const { temperatureChange, strain } = state;
  const c2 = released({ strain: 1, temperatureChange: 0 });
  const [c0, c1] =
    temperatureChange === 0
      ? [0, 0]
      : [
          released({ strain: 0, temperatureChange }),
          (released({ strain: 1, temperatureChange }) - released({ strain: -1, temperatureChange })) / 2,
        ];
  const modulus = (2 * energy(holding, { strain: 1, temperatureChange: 0 })) / whole.thickness;
  return {
    fronts,
    modulus,
    partedModulus: modulus - (2 * fronts * c2) / whole.thickness,
    perSquare: c2,
    G: Math.max(0, (c2 * strain + c1) * strain + c0),
    ...(toughness === undefined || c2 <= 0 ? {} : { onset: onsetOf(c2, c1, c0, toughness) }),
  };
}

/** Roots of c2 ε² + c1 ε + c0 = Gc on either side of no strain. */
function onsetOf(c2: number, c1: number, c0: number, Gc: number): OnsetStrain {
  if (c0 >= Gc) return { tension: 0, compression: 0 };
  const root = Math.sqrt(c1 * c1 + 4 * c2 * (Gc - c0));
  return { tension: (root - c1) / (2 * c2), compression: -(root + c1) / (2 * c2) };
}
