import type { CouponResult } from '../../../design/index.js';
import type { SpecimenEvent, SpecimenResult, SpecimenState, Verdict } from '../../../fracture/index.js';
import type { UnitSystem } from '../../../quantity/index.js';
import type { Block, Cell } from '../../blocks.js';
import { type ChartMark, type ChartSeries, chartFigure } from '../../figures/index.js';
import { amount, listOf, table } from '../build.js';
import { thinned } from './thinned.js';
import { digits, isAlike } from './words.js';

/** More events than this are counted, not listed. */
const mostEvents = 20;
/** More names than this no reader takes in. */
const mostNames = 6;

const rowWords: Readonly<Record<Exclude<Verdict, 'bond' | 'arm'>, string>> = {
  threadAtCrack: 'thread breaks at the crack',
  threadAtAnchor: 'thread breaks at its lock or bend',
  threadPullOut: 'thread pulls out',
};

/** What happens, in the words of the table of events. */
export function eventWords({ kind, row }: SpecimenEvent): string {
  if (kind === 'bond') return 'bond grows';
  if (kind === 'arm') return 'arm breaks';
  return `row ${(row ?? 0) + 1}: ${rowWords[kind]}`;
}

/** The name of an event on the drawing. */
const shortWords = ({ kind, row }: SpecimenEvent): string =>
  kind === 'bond' ? 'bond grows' : kind === 'arm' ? 'arm breaks' : `row ${(row ?? 0) + 1}`;

const isRow = ({ kind }: SpecimenEvent): boolean => kind !== 'bond' && kind !== 'arm';

/** The state of the highest load. */
export function peakState({ states }: SpecimenResult): SpecimenState | undefined {
  return states.reduce<SpecimenState | undefined>(
    (most, one) => (most === undefined || one.load > most.load ? one : most),
    undefined,
  );
}

/** Events worth a name, the weightiest first: what breaks the arm, the first of each kind, then rows as they come. */
function namedEvents(events: readonly SpecimenEvent[]): SpecimenEvent[] {
  const firsts = events.filter((one, i) => events.findIndex(({ kind }) => kind === one.kind) === i);
  const weight = ({ kind }: SpecimenEvent): number => (kind === 'arm' ? 0 : kind === 'bond' ? 2 : 1);
  const others = events.filter((one) => isRow(one) && !firsts.includes(one));
  return [...firsts.sort((a, b) => weight(a) - weight(b)), ...others].slice(0, mostNames);
}

function signs(events: readonly SpecimenEvent[], label: string): ChartSeries[] {
  if (events.length === 0) return [];
  return [{ label, points: events.map(({ displacement, load }) => ({ x: displacement, y: load })), apart: 'signs' }];
}

/** Load against displacement with everything that happens on the way. */
function recordFigure(result: SpecimenResult, name: string, id: string, units: UnitSystem): Block {
  const { states, events } = result;
  const peak = peakState(result);
  const at = ({ displacement, load }: SpecimenEvent | SpecimenState) => ({ x: displacement, y: load });
  const named = namedEvents(events);
  const isPeak = (event: SpecimenEvent): boolean =>
    peak !== undefined && isAlike(event.load, peak.load) && isAlike(event.displacement, peak.displacement);
  const marks: ChartMark[] = [
    ...(peak === undefined || named.some(isPeak) ? [] : [{ label: 'peak', ...at(peak) }]),
    ...named.map((event) => ({
      label: isPeak(event) ? `peak: ${shortWords(event)}` : shortWords(event),
      ...at(event),
      spare: true as const,
    })),
  ];
  return chartFigure({
    id: `${id}-record`,
    title: `Load against displacement, coupon ${name}`,
    x: { label: 'displacement', kind: 'length' },
    y: { label: 'load', kind: 'force' },
    series: [
      { label: 'load', points: thinned(states.map(at)) },
      ...signs(
        events.filter(({ kind }) => kind === 'bond'),
        'bond grows',
      ),
      ...signs(events.filter(isRow), 'a row gives way'),
      ...signs(
        events.filter(({ kind }) => kind === 'arm'),
        'arm breaks',
      ),
    ],
    marks,
    units,
    summary: `${events.length} events, with the middle values of the parameters. The table of events tells their order.`,
  });
}

function eventsTable({ events }: SpecimenResult, id: string): Block[] {
  if (events.length === 0) return [];
  const shown = events.slice(0, mostEvents);
  const arm = events.slice(mostEvents).find(({ kind }) => kind === 'arm');
  const rows = [...shown, ...(arm === undefined ? [] : [arm])].map((event): Cell[] => [
    eventWords(event),
    amount(event.load, 'force', digits),
    amount(event.displacement, 'length', digits),
    amount(event.crackLength, 'length'),
  ]);
  const more = events.length - rows.length;
  return [
    table(
      `${id}-events`,
      'What happens, in order; loads and places at the moment, with the middle values of the parameters',
      [
        { label: 'Event' },
        { label: 'Load', kind: 'force' },
        { label: 'Displacement', kind: 'length' },
        { label: 'Crack length', kind: 'length' },
      ],
      rows,
    ),
    ...listOf(more > 0 ? [`and ${more} more events`] : []),
  ];
}

/** The test as a machine would record it; absent for a wedged edge. */
export function recordBlocks({ model, prediction }: CouponResult, id: string, units: UnitSystem): Block[] {
  const { result } = prediction;
  if (result === undefined || result.states.length === 0) return [];
  return [recordFigure(result, model.name, id, units), ...eventsTable(result, id)];
}
