import { laminate } from '../stack.js';
import type { Laminate } from '../types.js';
import { type StripPart, type StripState, stripPart } from './strip-part.js';

/** A laminate that may part, also as a strip. */
export interface Whole {
  readonly laminate: Laminate;
  readonly strip: StripPart;
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
  /** Whether the parts would bend into each other, in the given state or in tension where none is given, and so touch at the edge. */
  readonly touches: boolean;
  /** Axial modulus of the whole laminate and, E*, of its parts weighed by thickness as they are in tension, Pa. */
  readonly modulus: number;
  readonly partedModulus: number;
  /** G per square of axial tension, J/m²: t (E - E*)/(2 fronts). */
  readonly perSquare: number;
  /** Energy release rate per front in the given state, J/m². */
  readonly G: number;
  /** Where a toughness is given. */
  readonly onset?: OnsetStrain;
}

/** c2 ε² + c1 ε + c0, J/m². */
type Square = readonly [c2: number, c1: number, c0: number];

/** Share that a strip keeps, where the wall it would bend into lets it touch at its free end only, of what lying flat on the wall would keep. */
const kept = 0.75;
/** Share of the release below which what contact keeps is rounding. */
const noise = 1e-6;

/**
 * Energy release rate of an edge that parts after given numbers of plies, with the strain held.
 *
 * fronts G = U(whole) - Σ U(parts), a square form in the strain: c2 ε² + c1 ε + c0, the last two from heat. Parts that would bend into
 * each other, by the curvature Δκ, touch at the edge and stand apart between it and the front, which keeps ¾ of ½ D Δκ²,
 * 1/D = 1/D(below) + 1/D(above); the middle part of three stays flat. G is convex in the strain.
 *
 * @param cuts numbers of plies below each open interface, rising; two are mirror images
 * @param state that G is wanted for; undefined for unit tension
 * @source O'Brien 1982, with parts that bend, contact and heat added
 */
export function opening(
  { laminate: whole, strip }: Whole,
  cuts: readonly number[],
  state: StripState | undefined,
  temperatureChange: number,
  toughness: number | undefined,
): EdgeOpening {
  const bounds = [0, ...cuts, whole.plies.length];
  const parts = bounds.slice(1).map((end, i) => stripPart(laminate(whole.plies.slice(bounds[i] ?? 0, end))));
  const fronts = cuts.length === 1 ? 1 : 2;
  const [below, above] = [parts[0] ?? strip, cuts.length === 1 ? parts[1] : undefined];
  const bending = above === undefined ? below.bending : 1 / (1 / below.bending + 1 / above.bending);

  /** Curvature by which the parts would bend apart. */
  const apart = (at: StripState): number => below.curvature(at) - (above?.curvature(at) ?? 0);
  const released = (at: StripState): number =>
    (strip.energy(at) - parts.reduce((sum, part) => sum + part.energy(at), 0)) / fronts;
  const pressed = (at: StripState): number => (bending * apart(at) ** 2) / 2;

  const open = squareOf(released, temperatureChange);
  const touching = squareOf((at) => released(at) - kept * pressed(at), temperatureChange);
  const branch = (at: StripState): Square => (apart(at) < 0 ? touching : open);

  const tension = { strain: 1, temperatureChange: 0 };
  const [perSquare] = branch(tension);
  const modulus = (2 * strip.energy(tension)) / whole.thickness;
  const judged = state ?? tension;
  return {
    fronts,
    touches: apart(judged) < 0 && pressed(judged) > noise * released(judged),
    modulus,
    partedModulus: modulus - (2 * fronts * perSquare) / whole.thickness,
    perSquare,
    G: state === undefined ? 0 : Math.max(0, valueAt(branch(state), state.strain)),
    ...(toughness === undefined || perSquare <= 0
      ? {}
      : { onset: onsetOf({ open, touching }, (strain) => apart({ strain, temperatureChange }) < 0, toughness) }),
  };
}

const valueAt = ([c2, c1, c0]: Square, strain: number): number => (c2 * strain + c1) * strain + c0;

/** The coefficients of a square form at a change of temperature. */
function squareOf(form: (at: StripState) => number, temperatureChange: number): Square {
  const c2 = form({ strain: 1, temperatureChange: 0 });
  if (temperatureChange === 0) return [c2, 0, 0];
  const at = (strain: number): number => form({ strain, temperatureChange });
  return [c2, (at(1) - at(-1)) / 2, at(0)];
}

/**
 * The strains on either side of no strain at which G = Gc.
 *
 * Touching releases less, so going outward the open crack reaches Gc first: where it does so open, that is the strain sought, else the
 * crack touches there and that branch has it.
 */
function onsetOf(
  { open, touching }: { readonly open: Square; readonly touching: Square },
  closes: (strain: number) => boolean,
  Gc: number,
): OnsetStrain {
  if ((closes(0) ? touching : open)[2] >= Gc) return { tension: 0, compression: 0 };
  const root = ([c2, c1, c0]: Square, side: 1 | -1): number =>
    (side * Math.sqrt(c1 * c1 + 4 * c2 * (Gc - c0)) - c1) / (2 * c2);
  const on = (side: 1 | -1): number => {
    const strain = root(open, side);
    return side * strain > 0 && !closes(strain) ? strain : root(touching, side);
  };
  return { tension: on(1), compression: on(-1) };
}
