import type { BridgingModel } from './bridging-sides.js';

/** B = 1/q_1 + 1/q_2 of the beds on both sides, m/N: times the tension, the sum of the radii to which the thread bends. */
export function bedOf({ sides }: BridgingModel): number {
  return 1 / sides[0].lateralResistance + 1 / sides[1].lateralResistance;
}

/** x - sin x without loss of figures. */
function lessSine(x: number): number {
  return x < 1e-3 ? (x ** 3 / 6) * (1 - (x * x) / 20) : x - Math.sin(x);
}

/** How a thread under tension lies across a crack. */
export interface Deflected {
  /** Angle from the straight hole where it leaves the laminate, radians, 0 to pi/2. */
  readonly angle: number;
  /** Length of thread drawn out of the straight hole, both sides, m. */
  readonly drawn: number;
}

/**
 * The thread as a string under tension S: straight across the gap, and in the laminate, a bed that yields at a constant force per length square to
 * the thread, in arcs of radius S/q. With B = 1/q_1 + 1/q_2
 * u = S B (1 - cos angle) + w tan angle,  drawn = S B (angle - sin angle) + w/cos angle.
 * Small angles give the parabola u = S B angle^2/2. With w = 0 and u beyond S B the thread lies in the plane of the crack and ploughs.
 * @param tension S, N, 0 or above
 * @param opening w, m, 0 or above
 * @param sliding u, m, 0 or above
 */
export function deflected(bed: number, tension: number, opening: number, sliding: number): Deflected {
  if (sliding === 0) return { angle: 0, drawn: opening };
  const reach = tension * bed;
  const inBed = sliding < reach ? 2 * Math.asin(Math.sqrt(sliding / (2 * reach))) : Math.PI / 2;
  if (opening === 0) return { angle: inBed, drawn: reach * lessSine(inBed) + Math.max(0, sliding - reach) };
  // Either part alone would need the larger angle: from there Newton's steps on the rising, convex sum fall to the root.
  let angle = Math.min(inBed, Math.atan2(sliding, opening));
  for (let round = 0; round < 60; round++) {
    const [sine, cosine] = [Math.sin(angle), Math.cos(angle)];
    const over = 2 * reach * Math.sin(angle / 2) ** 2 + (opening * sine) / cosine - sliding;
    const step = over / (reach * sine + opening / (cosine * cosine));
    angle -= step;
    if (!(step > 1e-14 * angle)) break;
  }
  return { angle, drawn: reach * lessSine(angle) + opening / Math.cos(angle) };
}
