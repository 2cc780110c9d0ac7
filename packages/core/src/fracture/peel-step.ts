import { rootBetween } from '../numeric/index.js';
import type { PeelCase, PeelControl, PeelEquilibrium, PeelHistory } from './peel-case.js';
import { equilibrium } from './peel-state.js';
import { afterDrop, clamped, dropped, type RowMemory, type RowStages, remember, untouched } from './row-stages.js';

/** A step done: the state, and what has become of the rows. */
export interface PeelStep {
  readonly state: PeelEquilibrium;
  readonly history: PeelHistory;
  /** The row that is on its way down a sudden drop of its force. */
  readonly drop?: number;
  /** Whether an arm has reached its failure strain. */
  readonly armBroken: boolean;
  /** Whether the front stands still while the grips move. */
  readonly stuck?: boolean;
}

/** Accuracy of a place where something gives way. */
const near = 1e-6;

/**
 * Raises the release at the front, or moves the front on; stops where a row or an arm reaches its limit.
 *
 * @param earlier the state before, where it was left in the same way
 */
export function stepTowards(
  peel: PeelCase,
  history: PeelHistory,
  from: PeelEquilibrium,
  target: PeelControl,
  earlier: PeelEquilibrium | undefined,
): PeelStep | undefined {
  const state = equilibrium(peel, history, target, from, earlier);
  if (state === undefined) return undefined;
  if (excess(peel, history, state).by <= 0) return done(peel, history, state);
  const found = search(peel, history, from, state, (one) => excess(peel, history, one).by);
  if (found === undefined) return undefined;
  const { row } = excess(peel, history, found);
  const after = done(peel, history, found);
  return row === undefined ? { ...after, armBroken: true } : startDrop(peel, after, row);
}

/**
 * Moves the grips apart while the front stands still, for where a row close behind the front bears the load and the release at the front goes down;
 * stops where that comes back to the bond's toughness, or a row or an arm reaches its limit.
 *
 * @returns undefined where the release would go up from the bond's toughness: the front does not stand still then
 */
export function stepStill(
  peel: PeelCase,
  history: PeelHistory,
  from: PeelEquilibrium,
  displacement: number,
  earlier: PeelEquilibrium | undefined,
): PeelStep | undefined {
  const { length } = from;
  const state = equilibrium(peel, history, { length, displacement }, from, earlier);
  if (state === undefined || (from.release >= 1 && state.release >= 1)) return undefined;
  const full = from.release >= 1;
  const over = (one: PeelEquilibrium): number => {
    const { by } = excess(peel, history, one);
    return full ? by : Math.max(by, one.release - 1);
  };
  if (over(state) <= 0) return { ...done(peel, history, state), stuck: true };
  const found = search(peel, history, from, state, over, true);
  if (found === undefined) return undefined;
  const { row, by } = excess(peel, history, found);
  if (!full && by < found.release - 1) {
    const free = equilibrium(peel, history, { length, release: 1 }, found);
    return free && done(peel, history, free);
  }
  const after = done(peel, history, found);
  return row === undefined ? { ...after, armBroken: true } : startDrop(peel, after, row);
}

/** Keeps a row at its opening from here on, while its force goes down. */
export function startDrop(peel: PeelCase, { state, history }: Omit<PeelStep, 'armBroken'>, row: number): PeelStep {
  const kept = withRow(peel, history, row, (law, memory) => clamped(law, memory, state.opening[row] ?? 0));
  return { state, history: kept, drop: row, armBroken: false };
}

/**
 * Lets the force of a row that is kept at its opening go down: the front moves on under full release, the release changes, or the grips come closer,
 * whichever does it.
 *
 * @param targets what to try, in order
 */
export function stepDown(
  peel: PeelCase,
  history: PeelHistory,
  from: PeelEquilibrium,
  row: number,
  targets: readonly PeelControl[],
): PeelStep | undefined {
  const [law, memory] = [peel.rows[row]?.law, history.memory[row]];
  if (law === undefined || memory?.clamp === undefined) return undefined;
  const end = afterDrop(law, memory);
  const { clamp } = memory;
  for (const target of targets) {
    const state = equilibrium(peel, history, target, from);
    const force = state === undefined ? clamp.force : forceAt(state, row, memory, clamp);
    if (state === undefined || force >= clamp.force) continue;
    if (force > end) {
      const opening = state.opening[row] ?? memory.opening;
      const eased = withRow(peel, history, row, () => ({ ...memory, opening, clamp: { ...clamp, force } }));
      return { ...done(peel, eased, state), drop: row };
    }
    const still = 'displacement' in target;
    const found = search(peel, history, from, state, (one) => forceAt(one, row, memory, clamp) - end, still);
    return found && done(peel, withRow(peel, history, row, dropped), found);
  }
  return undefined;
}

const forceAt = (
  state: PeelEquilibrium,
  row: number,
  { opening }: RowMemory,
  { force, stiffness }: NonNullable<RowMemory['clamp']>,
): number => force + stiffness * ((state.opening[row] ?? 0) - opening);

/** Where the front next comes to a row, or to the end. */
export function nextStop(peel: PeelCase, { start }: PeelHistory, length: number, limit: number): number {
  let next = limit;
  peel.rows.forEach(({ position }, row) => {
    if (start[row] === undefined && position > length) next = Math.min(next, position);
  });
  return next;
}

/** What is over its limit most: a row at the end of a stage that drops, or (without a row) an arm. */
export function excess(
  peel: PeelCase,
  { memory }: PeelHistory,
  state: PeelEquilibrium,
): { readonly by: number; readonly row?: number } {
  let worst: { by: number; row?: number } = { by: state.strainShare - 1 };
  peel.rows.forEach(({ law }, row) => {
    const { stage: number = 0, clamp } = memory[row] ?? {};
    const stage = law.stages[number];
    if (stage?.drops !== true || clamp !== undefined) return;
    const by = (state.opening[row] ?? 0) / stage.to - 1;
    if (by > worst.by) worst = { by, row };
  });
  return worst;
}

/** Looks for the state between two, straight in length and in root of release (or in displacement), where a function of the state is zero. */
function search(
  peel: PeelCase,
  history: PeelHistory,
  from: PeelEquilibrium,
  to: PeelEquilibrium,
  of: (state: PeelEquilibrium) => number,
  byDisplacement = false,
): PeelEquilibrium | undefined {
  const states = new Map<number, PeelEquilibrium>([
    [0, from],
    [1, to],
  ]);
  const [r0, r1] = [Math.sqrt(from.release), Math.sqrt(to.release)];
  let lost = false;
  const between = (t: number): PeelControl => {
    const length = from.length + t * (to.length - from.length);
    if (byDisplacement) return { length, displacement: from.displacement + t * (to.displacement - from.displacement) };
    return { length, release: r0 === r1 ? to.release : (r0 + t * (r1 - r0)) ** 2 };
  };
  const value = (t: number): number => {
    let state = states.get(t);
    if (state === undefined) {
      state = equilibrium(peel, history, between(t), to, from);
    }
    if (state === undefined) {
      lost = true;
      return 0;
    }
    states.set(t, state);
    return of(state);
  };
  const at = rootBetween(value, 0, 1, near);
  return lost ? undefined : states.get(at);
}

/** Rows keep their largest opening; those that the front has reached start to hold. */
function done(peel: PeelCase, history: PeelHistory, state: PeelEquilibrium): PeelStep {
  const memory = peel.rows.map(({ law }, row) => {
    const past = history.memory[row] ?? untouched;
    return history.start[row] === undefined ? past : remember(law, past, state.opening[row] ?? 0);
  });
  const start = peel.rows.map(({ position }, row) => {
    const before = history.start[row];
    return before === undefined && state.release >= 1 && state.length >= position ? state.frontGap : before;
  });
  return { state, history: { memory, start }, armBroken: false };
}

function withRow(
  peel: PeelCase,
  history: PeelHistory,
  row: number,
  change: (law: RowStages, memory: RowMemory) => RowMemory,
): PeelHistory {
  const memory = history.memory.map((past, i) => {
    const law = peel.rows[i]?.law;
    return i === row && law !== undefined ? change(law, past) : past;
  });
  return { ...history, memory };
}
