import type { SpecimenEvent } from '../types.js';
import type { Model, State } from './model.js';
import type { Settled } from './settle.js';

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
): SpecimenEvent[] {
  const { load, displacement } = jump ? from : state;
  const rows = passings.flatMap(({ row, crackLength }): SpecimenEvent[] => {
    const one = model.rows[row];
    return one === undefined ? [] : [{ kind: one.failure, load, displacement, crackLength, row: one.index }];
  });
  const grows = state.crackLength > from.crackLength && (jump || !grew);
  if (!grows) return rows;
  const before = rows.filter(({ crackLength }) => crackLength <= from.crackLength);
  const bond: SpecimenEvent = {
    kind: 'bond',
    load: from.load,
    displacement: from.displacement,
    crackLength: from.crackLength,
  };
  return [...before, bond, ...rows.slice(before.length)];
}
