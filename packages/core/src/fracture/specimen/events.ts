import type { SpecimenEvent } from '../types.js';
import type { Model, State } from './model.js';
import type { Settled } from './settle.js';

/** An event before toughness is worked out from it. */
export interface Happening extends Omit<SpecimenEvent, 'byLoad'> {
  /** Crack length that a tester sees with the load: in a jump that before it, m. */
  readonly from: number;
}

/**
 * What happened in a step: growth that begins or jumps, with the load at which it did, and rows past their greatest force. In a jump all of it
 * happens at the load before.
 */
export function eventsOf(
  model: Model,
  from: State,
  { state, passings }: Settled,
  jump: boolean,
  grew: boolean,
): Happening[] {
  const { load, displacement } = jump ? from : state;
  const rows = passings.flatMap(({ row, crackLength }): Happening[] => {
    const one = model.rows[row];
    const seen = jump ? from.crackLength : crackLength;
    return one === undefined
      ? []
      : [{ kind: one.failure, load, displacement, crackLength, row: one.index, from: seen }];
  });
  const grows = state.crackLength > from.crackLength && (jump || !grew);
  if (!grows) return rows;
  const before = rows.filter(({ crackLength }) => crackLength <= from.crackLength);
  const bond: Happening = {
    kind: 'bond',
    load: from.load,
    displacement: from.displacement,
    crackLength: from.crackLength,
    from: from.crackLength,
  };
  return [...before, bond, ...rows.slice(before.length)];
}
