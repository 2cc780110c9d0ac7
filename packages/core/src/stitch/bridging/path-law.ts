import { rootBetween, sinCosDegrees } from '../../numeric/index.js';
import type { BridgingCurve } from '../bridging-types.js';
import type { BridgingModel } from './bridging-sides.js';
import { type GivingWay, givingWay, pullOutForce } from './failure-sites.js';
import { bedOf, deflected } from './ploughing.js';
import { openingAt } from './slip.js';

/** Where a crack has moved at a penetration, m. */
export interface CrackMovement {
  readonly opening: number;
  readonly sliding: number;
}

/** One penetration at a point of its path. */
export interface BridgingState extends CrackMovement {
  /** Of the thread at the crack plane, N. */
  readonly tension: number;
  /** Of the thread from straight through the laminate, radians. */
  readonly angle: number;
  /** On the laminate: closing the crack, and against its sliding, N. */
  readonly normal: number;
  readonly shear: number;
}

const stateAt = (movement: CrackMovement, tension: number, angle: number): BridgingState => ({
  ...movement,
  tension,
  angle,
  normal: tension * Math.cos(angle),
  shear: tension * Math.sin(angle),
});

/** Relative bracket of the tension: far below the error of the chords. */
const close = 1e-9;

/**
 * Follows a penetration along straight lines between movements; the point where it gives way is put in, before and after the drop.
 *
 * Whole, the tension S solves e(S) = drawn(S, w, u). Pulling out, S is the pull-out force at the slip drawn(S, w, u) - drawn(S, w_b, u_b): what
 * has been drawn out since it gave way at (w_b, u_b).
 */
export function followPath(
  model: BridgingModel,
  path: readonly CrackMovement[],
  way: GivingWay = givingWay(model),
): readonly BridgingState[] {
  const bed = bedOf(model);
  const limit = openingAt(model, way.force);
  const drawn = (S: number, { opening, sliding }: CrackMovement) => deflected(bed, S, opening, sliding).drawn;
  const excess = (to: CrackMovement) => drawn(way.force, to) - limit;
  const state = (to: CrackMovement, S: number) => stateAt(to, S, deflected(bed, S, to.opening, to.sliding).angle);
  const whole = (to: CrackMovement): BridgingState =>
    state(
      to,
      rootBetween((S) => openingAt(model, S) - drawn(S, to), 0, way.force, close),
    );
  const most = pullOutForce(model, way, 0);
  const broken = (to: CrackMovement, since: CrackMovement): BridgingState => {
    const slip = (S: number) => Math.max(0, drawn(S, to) - drawn(S, since));
    return state(
      to,
      rootBetween((S) => S - pullOutForce(model, way, slip(S)), 0, most, close),
    );
  };
  let from: CrackMovement = { opening: 0, sliding: 0 };
  let gaveWayAt: CrackMovement | undefined;
  const states: BridgingState[] = [stateAt(from, 0, 0)];
  for (const to of path) {
    if (gaveWayAt === undefined && excess(to) > 0) {
      const start = from;
      const between = (t: number): CrackMovement => ({
        opening: start.opening + t * (to.opening - start.opening),
        sliding: start.sliding + t * (to.sliding - start.sliding),
      });
      gaveWayAt = between(rootBetween((t) => excess(between(t)), 0, 1));
      states.push(state(gaveWayAt, way.force), broken(gaveWayAt, gaveWayAt));
    }
    states.push(gaveWayAt === undefined ? whole(to) : broken(to, gaveWayAt));
    from = to;
  }
  return states;
}

/** Points on each part of a straight path, before and after the thread gives way. */
const points = 50;

/** A straight path at an angle from pure opening, out to where nothing holds any more: denser near the start, where force rises like a root. */
export function straightPath(
  model: BridgingModel,
  degrees: number,
  way: GivingWay = givingWay(model),
): readonly CrackMovement[] {
  const { cos: c, sin: s } = sinCosDegrees(degrees);
  const bed = bedOf(model);
  const limit = openingAt(model, way.force);
  const along = (length: number): CrackMovement => ({ opening: length * c, sliding: length * s });
  const excess = (length: number) => deflected(bed, way.force, length * c, length * s).drawn - limit;
  let far = limit;
  while (excess(far) < 0) far *= 2;
  const atBreak = rootBetween(excess, 0, far);
  const slip = Math.max(...([0, 1] as const).map((i) => (way.pullOut[i].share > 0 ? model.sides[i].depth : 0)));
  const end = Math.max(atBreak + slip, atBreak * (1 + 1e-9));
  return [
    ...Array.from({ length: points - 1 }, (_, i) => along(atBreak * ((i + 1) / points) ** 2)),
    ...Array.from({ length: points }, (_, i) => along(atBreak + ((end - atBreak) * (i + 1)) / points)),
  ];
}

/** Path length and the force along the path: its area is the work of both tractions. */
export function curveAlong(states: readonly BridgingState[]): BridgingCurve {
  const opening = [0];
  const force = [0];
  let length = 0;
  let last = states[0];
  for (const state of states.slice(1)) {
    if (last === undefined) break;
    const [dw, du] = [state.opening - last.opening, state.sliding - last.sliding];
    const step = Math.hypot(dw, du);
    if (step > 0) {
      const along = ({ normal, shear }: BridgingState) => (normal * dw + shear * du) / step;
      // A corner of the path, or a drop: the force changes at one place.
      const before = along(last);
      if (before !== force.at(-1)) {
        opening.push(length);
        force.push(before);
      }
      length += step;
      opening.push(length);
      force.push(along(state));
    }
    last = state;
  }
  return { opening, force };
}
