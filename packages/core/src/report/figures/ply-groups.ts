import { formatQuantity, type UnitSystem } from '../../quantity/index.js';
import { type BandPly, directionLabel } from './ply-band.js';

/** Neighbouring layers that one label of a drawing speaks for: the layers of `period`, `repeats` times over. */
export interface PlyGroup {
  /** Index of the first layer and of the last. */
  readonly first: number;
  readonly last: number;
  readonly period: readonly BandPly[];
  readonly repeats: number;
}

const key = (ply: BandPly): string => JSON.stringify([ply.name, directionLabel(ply), ply.thickness, ply.kind ?? 'ud']);

/** How often the first `length` keys from `start` follow one another without a break. */
function repeatsFrom(keys: readonly string[], start: number, length: number): number {
  let count = 1;
  while (
    start + (count + 1) * length <= keys.length &&
    keys.slice(start, start + length).every((name, i) => name === keys[start + count * length + i])
  ) {
    count++;
  }
  return count;
}

/**
 * Groups equal neighbours, and with `longestPeriod` above 1 also repeated sequences such as 0/90/0/90, taking at each
 * layer the grouping that covers most layers with the shortest period.
 */
export function groupPlies(plies: readonly BandPly[], longestPeriod = 1): PlyGroup[] {
  const keys = plies.map(key);
  const groups: PlyGroup[] = [];
  for (let first = 0; first < plies.length; ) {
    let length = 1;
    let repeats = repeatsFrom(keys, first, 1);
    for (let period = 2; period <= longestPeriod; period++) {
      const count = repeatsFrom(keys, first, period);
      if (count > 1 && count * period > length * repeats) {
        length = period;
        repeats = count;
      }
    }
    groups.push({ first, last: first + length * repeats - 1, period: plies.slice(first, first + length), repeats });
    first += length * repeats;
  }
  return groups;
}

/** "3" or "3–6": the numbers of a group's layers, counted from 1 at the tool side. */
export function numbersOf({ first, last }: PlyGroup): string {
  return last === first ? String(first + 1) : `${first + 1}–${last + 1}`;
}

/** "2 × ±45°", "5 × (0°, 90°)", "": the direction of a group's layers. */
export function groupDirection(group: PlyGroup): string {
  const directions = group.period.map(directionLabel);
  const words = directions.filter((direction) => direction !== '').join(', ');
  if (group.repeats === 1) return words;
  return group.period.length === 1 ? `${group.repeats} × ${words}`.trimEnd() : `${group.repeats} × (${words})`;
}

/** The material names of a group, each once. */
export function groupNames(group: PlyGroup): string {
  return [...new Set(group.period.map((ply) => ply.name))].join(', ');
}

/** "layers 3–6: 4 × 0° ud tape, 0.125 mm each": a group in words. */
export function groupSentence(group: PlyGroup, units: UnitSystem): string {
  const several = group.last > group.first;
  const each = group.period.map((ply) => formatQuantity(ply.thickness, 'length', { units, digits: 3 }));
  const thickness = [...new Set(each)].join(' and ');
  const layers = `${several ? 'layers' : 'layer'} ${numbersOf(group)}:`;
  return [layers, groupDirection(group), `${groupNames(group)},`, several ? `${thickness} each` : thickness]
    .filter((word) => word !== '')
    .join(' ');
}
