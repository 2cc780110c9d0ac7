import { fail } from '../../problem/index.js';
import type { Note } from '../../provenance/index.js';
import type { StepValues, Working } from '../../working/index.js';
import type { SpecimenEvent, SpecimenResult } from '../types.js';

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
export function readToughness({ events, resistance, states }: Read, bridged: boolean, working?: Working): Reading {
  const onsets: SpecimenEvent[] = [];
  let last = Number.NEGATIVE_INFINITY;
  let broke = false;
  for (const event of events) {
    if (event.kind === 'bond') continue;
    if (event.kind === 'arm') broke = true;
    if (event.displacement > last) onsets.push(event);
    last = event.displacement;
  }
  const seenAt = ({ crackLength: a, load: P, byLoad: G_L }: SpecimenEvent): Seen => ({ a, P, G_L });
  if (onsets.length > 0) return { toughness: mean(onsets.map(seenAt), working), of: broke ? 'armBreak' : 'fullZone' };
  const start = states?.[0]?.crackLength ?? 0;
  const grown = resistance.map(({ growth, byLoad }): Seen => ({ a: start + growth, G_L: byLoad }));
  if (!bridged && grown.length > 0) return { toughness: mean(grown, working), of: 'unbridged' };
  const seen = [...grown, ...events.map(seenAt)];
  if (seen.length === 0) {
    fail({
      code: 'not-computable',
      message: 'the test ends before the crack grows: there is no toughness to read',
      hint: 'pull further, or leave out the displacement at the end',
    });
  }
  const most = Math.max(...seen.map(({ G_L }) => G_L));
  if (working !== undefined) working.step('readGreatest', { G_R: most }, inOrder(seen));
  return { toughness: most, of: bridged ? 'greatest' : 'unbridged' };
}

/** Of a result what is read. */
type Read = Pick<SpecimenResult, 'events' | 'resistance'> & Partial<Pick<SpecimenResult, 'states'>>;

/** Toughness by load at a crack length, and the load where it is that of an event. */
interface Seen {
  readonly a: number;
  readonly P?: number;
  readonly G_L: number;
}

/** In order of growth, each value once. */
function inOrder(seen: readonly Seen[]): StepValues[] {
  const sorted = [...seen].sort((one, other) => one.a - other.a || one.G_L - other.G_L);
  const near = (one: number, other: number): boolean => Math.abs(one - other) <= 1e-9 * Math.abs(other);
  return sorted
    .filter(({ a, G_L }, i) => {
      const before = sorted[i - 1];
      return before === undefined || !near(a, before.a) || !near(G_L, before.G_L);
    })
    .map(({ a, G_L }) => ({ a, G_L }));
}

function mean(values: readonly Seen[], working: Working | undefined): number {
  const sum = values.reduce((total, { G_L }) => total + G_L, 0);
  const G_R = sum / values.length;
  working?.step(
    'readMean',
    { G_S: sum, n_o: values.length, G_R },
    values.map((one) => ({ ...one, G_S: one.G_L })),
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
