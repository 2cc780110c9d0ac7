import { type Note, uniqueNotes } from '../../provenance/index.js';
import { formatNumber, formatQuantity, type UnitSystem } from '../../quantity/index.js';
import type { SearchCandidate, SearchLimit, SearchResult } from '../../study/index.js';
import type { Block, Cell, Report } from '../blocks.js';
import { amount, heading, listOf, table } from '../sections/build.js';
import { frontFigure } from './search-figure.js';
import { counted, methodText, searchProgress, shareNote } from './search-progress.js';

/** A count that JSON can hold: beyond 2^53 as text. */
const plainCount = (count: bigint): number | string =>
  count <= BigInt(Number.MAX_SAFE_INTEGER) ? Number(count) : String(count);

/** What was searched, in facts. */
function facts(found: SearchResult): Block {
  const { problem, state, front } = found;
  const { size, evaluator, goals } = problem;
  const { evaluated, failed, missed, leaders } = state.tally;
  const items = [
    { label: 'Combinations', value: counted(size.combinations) },
    {
      label: 'Candidates',
      value: size.candidates === undefined ? 'too many rules to count' : counted(size.candidates),
      remark: 'different from each other and within the rules of the stack',
    },
    ...(size.duplicates === undefined
      ? []
      : [
          {
            label: 'Duplicates left out',
            value: counted(size.duplicates),
            remark: 'the same candidate written another way',
          },
        ]),
    { label: 'Method', value: methodText(found) },
    {
      label: 'Evaluated',
      value: counted(evaluated),
      remark: evaluator.path === 'kernel' ? 'as laminates' : 'as whole designs',
    },
    ...(failed > 0
      ? [
          {
            label: 'Cannot be computed',
            value: counted(failed),
            ...(state.tally.reason && { remark: state.tally.reason }),
          },
        ]
      : []),
    ...(goals.limits.length > 0 ? [{ label: 'Miss a limit', value: counted(missed) }] : []),
    leaders.steps.length > 1
      ? { label: 'On the front', value: counted(front), remark: 'no other is better in one aim and worse in none' }
      : { label: 'Best ones kept', value: counted(front) },
  ];
  return { kind: 'facts', items };
}

/** The rows of some candidates: inputs, quantities, room on the front. */
function candidateTable(
  id: string,
  caption: string,
  { problem, written, writtenInputs }: SearchResult,
  list: readonly SearchCandidate[],
): Block {
  const { goals } = problem;
  const several = goals.aims.length > 1;
  const named = (path: string): string => {
    const aim = goals.aims.find((one) => one.path === path);
    return aim === undefined ? path : `${path} (${aim.sense === 1 ? 'small' : 'large'})`;
  };
  const kinds = goals.quantities.map(
    (path) => [...goals.aims, ...goals.limits].find((one) => one.path === path)?.kind ?? 'number',
  );
  const values = (numbers: readonly number[]): Cell[] => numbers.map((value, i) => amount(value, kinds[i] ?? 'number'));
  const inputs = list[0]?.inputs ?? [];
  const asWritten: Cell[][] =
    written === undefined
      ? []
      : [
          [
            'as written',
            ...writtenInputs.map((value) => (value === null ? '–' : String(value))),
            ...values(written),
            ...(several ? ['–'] : []),
          ],
        ];
  const rows = list.map((one, i): Cell[] => [
    String(i + 1),
    ...one.inputs.map(({ value }) => String(value)),
    ...values(one.values),
    ...(several ? [one.crowding === null ? 'end' : formatNumber(one.crowding, 3)] : []),
  ]);
  return table(
    id,
    caption,
    [
      { label: 'No.' },
      ...inputs.map(({ path }) => ({ label: path })),
      ...goals.quantities.map((path, i) => ({ label: named(path), kind: kinds[i] ?? 'number' })),
      ...(several ? [{ label: 'Room' }] : []),
    ],
    [...asWritten, ...rows],
  );
}

function limitText({ atLeast, atMost, kind }: SearchLimit, units: UnitSystem): string {
  const show = (value: number): string => formatQuantity(value, kind, { units });
  if (atLeast !== undefined && atMost !== undefined) return `${show(atLeast)} to ${show(atMost)}`;
  return atLeast !== undefined ? `at least ${show(atLeast)}` : `at most ${show(atMost ?? 0)}`;
}

/** How far each candidate is from each limit. */
function marginTable({ problem }: SearchResult, list: readonly SearchCandidate[], units: UnitSystem): Block[] {
  const { limits } = problem.goals;
  if (limits.length === 0 || list.length === 0) return [];
  const rows = limits.map((limit, i): Cell[] => [
    limit.path,
    limitText(limit, units),
    limit.of === 'target' ? 'target' : 'search',
    ...list.map(({ limits: margins }) => amount(margins[i]?.margin ?? 0, limit.kind, 3)),
  ]);
  return [
    table(
      'search-margins',
      'Distance of each candidate to the nearer limit; below zero it is missed',
      [
        { label: 'Quantity' },
        { label: 'Limit' },
        { label: 'Set by' },
        ...list.map((_, i) => ({ label: `No. ${i + 1}` })),
      ],
      rows,
    ),
  ];
}

/** What stands in the JSON document of one candidate. */
const candidateData = ({ problem }: SearchResult, one: SearchCandidate) => ({
  inputs: Object.fromEntries(one.inputs.map(({ path, value }) => [path, value])),
  quantities: Object.fromEntries(problem.goals.quantities.map((path, i) => [path, one.values[i] ?? null])),
  limits: one.limits.map(({ value, margin, met }, i) => ({
    quantity: problem.goals.limits[i]?.path,
    value,
    margin,
    met,
  })),
  room: one.crowding,
  ...(one.problem === undefined ? {} : { problem: one.problem }),
});

/**
 * The report of a search: what was searched, the front or the best candidates with their margins, and a figure of a front of two aims. Its data holds the state, from which the
 * search can be gone on with.
 */
export function searchReport(found: SearchResult, { units = 'metric' }: { readonly units?: UnitSystem } = {}): Report {
  const { problem, state, complete, front, candidates, closest } = found;
  const { goals, size, method, evaluator, inputs } = problem;
  const several = goals.aims.length > 1;
  const shown =
    candidates.length < front
      ? `${candidates.length} of ${front} candidates, spread over the front`
      : 'Every candidate of the front';
  const caption = several
    ? `${shown}; room is the distance of its neighbours as a share of the front`
    : 'The best candidates, the best first';
  const unfit = candidates.flatMap(({ problem: wrong }, i) =>
    wrong === undefined ? [] : [`No. ${i + 1} as a whole design: ${wrong}`],
  );
  const present = (text: string | undefined): string[] => (text === undefined ? [] : [text]);
  const warnings = [...present(searchProgress(found)), ...present(shareNote(found)), ...unfit];
  const remarks = [
    ...(several && candidates.length > 0
      ? [
          'Of candidates that are equal in every aim, to 12 digits, the first in the order of the choices stands for all.',
        ]
      : []),
  ];
  const notes = uniqueNotes([
    ...warnings.map((text): Note => ({ level: 'warning', text })),
    ...problem.notes,
    ...remarks.map((text): Note => ({ level: 'assumption', text })),
  ]);
  return {
    title: `Search: ${inputs.design.title}`,
    subtitle: `${goals.aims.map(({ path, sense }) => `${path} ${sense === 1 ? 'small' : 'large'}`).join(', ')}`,
    units,
    blocks: [
      heading(2, 'What was searched', 'searched'),
      facts(found),
      heading(2, several ? 'The front' : 'The best', 'front'),
      ...(candidates.length > 0
        ? [
            candidateTable('search-front', caption, found, candidates),
            ...frontFigure(found, units),
            ...marginTable(found, candidates, units),
          ]
        : nothing(found, units)),
      ...(notes.length > 0 ? [{ kind: 'notes' as const, notes }] : []),
    ],
    data: {
      format: 1,
      title: inputs.design.title,
      complete,
      missing: found.missing.map(({ from, to, shards = [] }) => ({
        from,
        to,
        shards: shards.map(([k, n]) => `${k}/${n}`),
      })),
      method,
      computed: evaluator.path,
      size: {
        combinations: plainCount(size.combinations),
        candidates: size.candidates === undefined ? null : plainCount(size.candidates),
        duplicates: size.duplicates === undefined ? null : plainCount(size.duplicates),
      },
      evaluated: state.tally.evaluated,
      failed: state.tally.failed,
      missed: state.tally.missed,
      aims: goals.aims.map(({ path, kind, sense }) => ({
        quantity: path,
        kind,
        aim: sense === 1 ? 'minimise' : 'maximise',
      })),
      limits: goals.limits.map(({ path, kind, atLeast, atMost, of }) => ({
        quantity: path,
        kind,
        ...(atLeast === undefined ? {} : { atLeast }),
        ...(atMost === undefined ? {} : { atMost }),
        of,
      })),
      front,
      candidates: candidates.map((one) => candidateData(found, one)),
      closest: closest === undefined ? null : candidateData(found, closest),
      notes,
      state,
    },
  };
}

/** Where no candidate keeps to all limits. */
function nothing(found: SearchResult, units: UnitSystem): Block[] {
  const { closest, problem } = found;
  const missed = closest?.limits.flatMap(({ met }, i) => (met ? [] : [problem.goals.limits[i]?.path ?? '']));
  const text = found.complete ? 'No candidate keeps to all limits.' : 'No candidate so far keeps to all limits.';
  return [
    {
      kind: 'caution',
      title: text,
      items:
        closest === undefined
          ? [found.state.tally.evaluated === 0 ? 'None was evaluated.' : 'None could be computed.']
          : [`The one that comes closest misses ${missed?.join(', ')}.`],
    },
    ...(closest === undefined
      ? listOf([])
      : [
          candidateTable('search-closest', 'The candidate that comes closest', found, [closest]),
          ...marginTable(found, [closest], units),
        ]),
  ];
}
