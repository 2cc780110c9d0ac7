import type { SpecimenState } from '../types.js';
import type { Stored } from './energy.js';
import type { Model, State } from './model.js';

/** Energies summed up over a run, J. */
export interface Sums {
  work: number;
  friction: number;
  released: number;
  /** Errors of the steps so far, with their signs. */
  off: number;
}

/** A state as it is reported. */
export function recordOf(
  model: Model,
  state: State,
  { elastic, thread }: Stored,
  sums: Sums,
  firstCrack: number,
): SpecimenState {
  const { displacement, load, crackLength } = state;
  const growth = crackLength - firstCrack;
  return {
    displacement,
    load,
    crackLength,
    work: sums.work,
    elastic,
    bond: growth > 0 ? model.bondWork * growth : 0,
    thread,
    ...(model.chain.rubs.some(({ perLoad }) => perLoad > 0) && { friction: sums.friction }),
    ...(sums.released > 0 && { released: sums.released }),
    armStrain: model.strain(state),
  };
}

/** Length of crack from the farthest row that still holds to the tip, m. */
export function bridgedLength({ rows }: Model, { crackLength, largest }: State): number {
  let zone = 0;
  rows.forEach(({ place, law }, j) => {
    if (place < crackLength && (largest[j] as number) <= law.end) zone = Math.max(zone, crackLength - place);
  });
  return zone;
}

/** Deepest overlap of the faces at a row behind the tip, m. */
export function overlapAtRows({ rows }: Model, { crackLength, opening }: State): number {
  let deepest = 0;
  rows.forEach(({ place }, j) => {
    if (place < crackLength) deepest = Math.max(deepest, -(opening[j] as number));
  });
  return deepest;
}
