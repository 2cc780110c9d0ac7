import { type Stored, stored } from './energy.js';
import type { Model, State } from './model.js';

/** Energy of one step, J. */
export interface StepEnergy {
  readonly work: number;
  readonly friction: number;
  /** What the work does not account for: set free in a jump, or the error of the step. */
  readonly off: number;
  readonly stored: Stored;
}

/** Work by the trapezium rule, against what has become elastic, gone into the bond and the threads, or been rubbed away. */
export function stepEnergy(model: Model, from: State, before: Stored, to: State): StepEnergy {
  const after = stored(model, to);
  const work = ((from.load + to.load) / 2) * (to.displacement - from.displacement);
  let friction = 0;
  to.rubbed.forEach(({ slid, force }, i) => {
    const last = from.rubbed[i];
    if (last !== undefined) friction += ((last.force + force) / 2) * (slid - last.slid);
  });
  const bond = model.bondWork === Number.POSITIVE_INFINITY ? 0 : model.bondWork * (to.crackLength - from.crackLength);
  const off = work - friction - bond - (after.elastic - before.elastic) - (after.thread - before.thread);
  return { work, friction, off, stored: after };
}
