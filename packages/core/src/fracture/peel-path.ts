import { lastWork } from './path-work.js';
import type { PeelCase, PeelControl, PeelEquilibrium, PeelHistory } from './peel-case.js';
import { equilibrium } from './peel-state.js';
import { excess, nextStop, type PeelStep, startDrop, stepDown, stepStill, stepTowards } from './peel-step.js';
import { isSpent, untouched } from './row-stages.js';

/** A state on the path of equilibrium, natural units. */
export interface PathPoint {
  readonly displacement: number;
  readonly load: number;
  readonly length: number;
  readonly byLoad: number;
  /** Done by the grips along the path; given back where they move together. */
  readonly work: number;
  readonly elastic: number;
  readonly bond: number;
  readonly thread: number;
  readonly strain: number;
  readonly strainShare: number;
  readonly zone: number;
  /** Largest turn of an arm at the front, rad. */
  readonly turn: number;
  /** The values of the arms at the front and at the grips; absent of a state between two. */
  readonly ends?: { readonly front: Float64Array; readonly grips: Float64Array };
  /** Of a state between two: the toughness by load of both, and its place between them, 0 to 1. */
  readonly landing?: { readonly before: number; readonly after: number; readonly place: number };
}

export interface PathEvent {
  readonly kind: 'bond' | 'row' | 'arm';
  readonly row?: number;
  /** Index of the point. */
  readonly point: number;
}

/** A state of the arms with what had become of the rows. */
export interface SharpestState {
  readonly state: PeelEquilibrium;
  readonly history: PeelHistory;
}

export interface PeelPath {
  readonly points: readonly PathPoint[];
  readonly events: readonly PathEvent[];
  /** The state in which an arm comes nearest to breaking; absent where no state was found. */
  readonly sharpest?: SharpestState;
  readonly end: 'arm' | 'row' | 'length' | 'displacement' | 'lost';
}

export interface PathLimits {
  readonly from: number;
  readonly to: number;
  /** Largest growth of the crack in one step. */
  readonly growth: number;
  readonly displacement: number;
  /** Divides the largest steps. */
  readonly refine: number;
  /** Ends where the first row gives way, or beyond this load. */
  readonly untilRow?: { readonly load: number };
  /** The bond bears whatever release comes. */
  readonly bondHolds?: boolean;
}

/** Largest step of the square root of the release at the front. */
const loadingStep = 0.1;
/** Largest step of the displacement while the front stands still, as a share of it. */
const pullingStep = 0.05;
/** A step whose work and energies miss each other by more than this share of what moved is halved, */
const misfit = 5e-4;
/** unless it is already this small a share of the largest. */
const smallest = 2 ** -16;
/** Where a bond that holds is given up. */
const mostRelease = 1e6;
const mostPoints = 50_000;
const near = 1e-6;

/**
 * Follows the equilibrium of a peel from the unloaded state.
 *
 * While the bond holds, the release at the front is raised; once it has reached the bond's toughness the front is moved on and the release kept.
 * Where a row's force drops, its opening is kept while the force goes down, and release or front follow. Each of these sets one state
 * whatever the grips do, so the path goes on through stretches where they would have to move together.
 *
 * @returns the path; it ends as `lost` where no equilibrium is found
 */
export function followPeel(peel: PeelCase, limits: PathLimits): PeelPath {
  let history: PeelHistory = {
    memory: peel.rows.map(() => untouched),
    start: peel.rows.map(() => undefined),
  };
  const points: PathPoint[] = [];
  const events: PathEvent[] = [];
  const gaveWay = new Set<number>();
  const giveWay = (row: number): void => {
    if (gaveWay.has(row)) return;
    gaveWay.add(row);
    events.push({ kind: 'row', row, point: points.length - 1 });
  };
  const start = equilibrium(peel, history, { length: limits.from, release: 1e-8 }, undefined);
  if (start === undefined) return { points, events, end: 'lost' };
  let current = start;
  points.push(pointAt(current, points, limits.from));
  let sharpest: SharpestState = { state: current, history };
  let share = 1;
  let drop: number | undefined;
  let growing = false;
  let stuck = false;
  let earlier: PeelEquilibrium | undefined;

  while (points.length < mostPoints) {
    if (!growing && current.release >= 1 && limits.bondHolds !== true) {
      growing = true;
      events.push({ kind: 'bond', point: points.length - 1 });
    }
    if (current.length >= limits.to) return { points, events, sharpest, end: 'length' };
    if (current.displacement >= limits.displacement) return { points, events, sharpest, end: 'displacement' };
    if (drop === undefined) {
      const { row, by } = excess(peel, history, current);
      if (row !== undefined && by > -near) ({ history, drop } = startDrop(peel, { state: current, history }, row));
    }
    if (limits.untilRow !== undefined && current.load > limits.untilRow.load)
      return { points, events, sharpest, end: 'row' };
    if (limits.untilRow !== undefined && (drop !== undefined || gaveWay.size > 0)) {
      if (drop !== undefined) giveWay(drop);
      return { points, events, sharpest, end: 'row' };
    }
    if (current.release >= mostRelease) break;
    const step: PeelStep | undefined = attempt(peel, history, { current, earlier, drop, stuck }, limits, share);
    const last = share <= smallest;
    const point = step === undefined ? undefined : pointAt(step.state, points, limits.from);
    const off = point === undefined ? Number.POSITIVE_INFINITY : unbalanced(points.at(-1), point);
    if (step === undefined || point === undefined || (off > misfit / limits.refine && !last)) {
      if (last) break;
      share /= 2;
      continue;
    }
    if (off < misfit / limits.refine / 20) share = Math.min(1, share * 2);
    if (drop !== undefined) giveWay(drop);
    const sameWay =
      drop === undefined &&
      step.drop === undefined &&
      stuck === (step.stuck === true) &&
      current.release >= 1 === step.state.release > 1 - near;
    earlier = sameWay ? current : undefined;
    ({ state: current, history, drop, stuck } = { drop: undefined, stuck: false, ...step });
    points.push(point);
    if (current.strainShare > sharpest.state.strainShare) sharpest = { state: current, history };
    peel.rows.forEach(({ law }, row) => {
      const memory = history.memory[row];
      if (memory !== undefined && (memory.opening >= law.peak.opening || isSpent(law, memory))) giveWay(row);
    });
    if (step.armBroken) {
      events.push({ kind: 'arm', point: points.length - 1 });
      return { points, events, sharpest, end: 'arm' };
    }
  }
  return { points, events, sharpest, end: 'lost' };
}

/** Where the path is. */
interface Here {
  readonly current: PeelEquilibrium;
  readonly earlier: PeelEquilibrium | undefined;
  readonly drop: number | undefined;
  readonly stuck: boolean;
}

/** The next step in the way that the state calls for, `share` of the largest. */
function attempt(
  peel: PeelCase,
  history: PeelHistory,
  { current, earlier, drop, stuck }: Here,
  limits: PathLimits,
  share: number,
): PeelStep | undefined {
  const { length, release, displacement } = current;
  const part = share / limits.refine;
  const grown = (): PeelControl => {
    const stop = nextStop(peel, history, length, limits.to);
    return { length: Math.min(length + limits.growth * part, stop), release: 1 };
  };
  const root = Math.sqrt(Math.max(0, release));
  const held = limits.bondHolds === true;
  const raisedRoot = root + loadingStep * part * (held ? Math.max(1, root) : 1);
  const raised: PeelControl = { length, release: raisedRoot > 1 - near && !held ? 1 : raisedRoot ** 2 };
  if (drop !== undefined) {
    const lowered: PeelControl = { length, release: (root * (1 - loadingStep * part)) ** 2 };
    const closer: PeelControl = { length, displacement: displacement * (1 - pullingStep * part) };
    return stepDown(
      peel,
      history,
      current,
      drop,
      release < 0 ? [closer] : [release < 1 ? raised : grown(), lowered, closer],
    );
  }
  const still = (size: number) => stepStill(peel, history, current, displacement * (1 + pullingStep * size), earlier);
  if (stuck) return still(part);
  const onward = stepTowards(peel, history, current, release < 1 || held ? raised : grown(), earlier);
  if (onward !== undefined || held) return onward;
  // Longer steps too: a row that is about to bear may still have a little way to go.
  for (let size = part; size < 1; size *= 8) {
    const step = still(size);
    if (step !== undefined) return step;
  }
  return undefined;
}

function pointAt(state: PeelEquilibrium, before: readonly PathPoint[], from: number): PathPoint {
  const { displacement, load, length, byLoad, elastic, thread, strain, strainShare, zone, turn, z, at } = state;
  const size = z.length / at.length;
  return {
    displacement,
    load,
    length,
    byLoad,
    work: (before.at(-1)?.work ?? 0) + lastWork(before, { displacement, load }),
    elastic,
    bond: length - from,
    thread,
    strain,
    strainShare,
    zone,
    turn,
    ends: { front: z.slice(0, size), grips: z.slice(-size) },
  };
}

/** How far work and energies of a step miss each other, as a share of what moved. */
function unbalanced(before: PathPoint | undefined, after: PathPoint): number {
  if (before === undefined) return 0;
  const work = after.work - before.work;
  const elastic = after.elastic - before.elastic;
  const bond = after.bond - before.bond;
  const thread = after.thread - before.thread;
  const moved = Math.abs(work) + Math.abs(elastic) + Math.abs(bond) + Math.abs(thread);
  const rounding = 1e-6 * (after.elastic + after.thread + after.bond);
  return Math.max(0, Math.abs(work - elastic - bond - thread) - rounding) / moved;
}
