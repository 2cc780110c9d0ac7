import { fail } from '../../problem/index.js';
import type { Note } from '../../provenance/index.js';
import type { Working } from '../../working/index.js';
import type { SpecimenResult } from '../types.js';

/** What a tester would report. */
export interface Reading {
  /** J/m² */
  readonly toughness: number;
  /** Of what: growth with a full bridged zone, the greatest value seen, or up to where an arm broke. */
  readonly of: 'fullZone' | 'greatest' | 'armBreak' | 'unbridged';
}

/**
 * Toughness of a specimen as a tester reports it, from the loads.
 *
 * The bridged zone is full when its first row gives way. From then on each row that gives way sets growth off: the mean of the toughness by load at
 * these onsets, those of one jump counted once. An arm that breaks ends the test: its value is the last onset, a lower bound. While the zone never
 * gets full: the greatest value. Without rows: the mean over the growth.
 *
 * @param working takes down the values that are read
 * @throws not-computable a test that ends before the crack grows
 */
export function readToughness({ events, resistance }: SpecimenResult, bridged: boolean, working?: Working): Reading {
  const onsets: number[] = [];
  let last = Number.NEGATIVE_INFINITY;
  let broke = false;
  for (const { kind, displacement, byLoad } of events) {
    if (kind === 'bond') continue;
    if (kind === 'arm') broke = true;
    if (displacement > last) onsets.push(byLoad);
    last = displacement;
  }
  if (onsets.length > 0) return { toughness: mean(onsets, working), of: broke ? 'armBreak' : 'fullZone' };
  const grown = resistance.map(({ byLoad }) => byLoad);
  if (!bridged && grown.length > 0) return { toughness: mean(grown, working), of: 'unbridged' };
  const seen = [...grown, ...events.map(({ byLoad }) => byLoad)];
  if (seen.length === 0) {
    fail({
      code: 'not-computable',
      message: 'the test ends before the crack grows: there is no toughness to read',
      hint: 'pull further, or leave out the displacement at the end',
    });
  }
  const most = Math.max(...seen);
  working?.step(
    'readGreatest',
    { G_R: most },
    seen.map((G_L) => ({ G_L })),
  );
  return { toughness: most, of: bridged ? 'greatest' : 'unbridged' };
}

function mean(values: readonly number[], working: Working | undefined): number {
  const sum = values.reduce((total, value) => total + value, 0);
  const G_R = sum / values.length;
  working?.step(
    'readMean',
    { G_S: sum, n_o: values.length, G_R },
    values.map((G_L) => ({ G_L, G_S: G_L })),
  );
  return G_R;
}

const words: Readonly<Record<Reading['of'], Note>> = {
  fullZone: {
    level: 'assumption',
    text: 'Toughness of the coupon as a tester reads it: the mean, by the loads, of the onsets of growth from the first row that gives way.',
  },
  unbridged: {
    level: 'assumption',
    text: 'Toughness of the coupon as a tester reads it: the mean, by the loads, over the growth.',
  },
  greatest: {
    level: 'warning',
    text: 'No row gives way before the test ends, so the bridged zone never gets full: toughness is the greatest value that the loads show.',
  },
  armBreak: {
    level: 'warning',
    text: 'An arm breaks and ends the test: toughness is what was read until then, a lower bound of what the stitches could give.',
  },
};

/** What the reader must know of a reading. */
export function readingNote({ of }: Reading): Note {
  return words[of];
}
