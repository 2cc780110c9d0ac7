import { type DesignInputs, type InputValue, inputList, type Results } from '../design/index.js';
import { type Difference, differencesBetween, valuesOf } from './differences.js';
import { pathsTo } from './paths.js';

/** A design with what was computed of it. */
export interface ComparedDesign {
  /** For readers: the file's name or the title. */
  readonly name: string;
  readonly inputs: DesignInputs;
  readonly results: Results;
}

/** An input that is not the same in all designs; one value per design as written, absent where a design does not have it. */
export interface DifferingInput {
  readonly path: string;
  readonly values: readonly (InputValue | undefined)[];
}

/** A result that moved: its value in every design, absent where a design does not have it, with the difference from the first. */
export interface MovedQuantity {
  readonly path: string;
  readonly rank: Difference['rank'];
  readonly values: readonly (string | number | boolean | undefined)[];
  /** Change from the first design; absent where nothing moved, for words, for a first value of zero, and for the first itself. */
  readonly percent: readonly (number | undefined)[];
}

/** Designs side by side: what was put in differently, and which results moved. */
export interface Comparison {
  readonly designs: readonly ComparedDesign[];
  readonly inputs: readonly DifferingInput[];
  readonly quantities: readonly MovedQuantity[];
}

/** Words for readers, and sections that no result follows from. */
const aside = /^(notes|title|tolerances|search)(\.|$)|\.(note|title|label|source|basis)$/;

/** The uppermost part of a path that a design does not have at all. */
const missingPart = (path: string, holders: ReadonlySet<string>): string =>
  pathsTo(path).find((part) => !holders.has(part)) ?? path;

/** Inputs that differ; a part that some design does not have at all is one row, "given" where it is there. */
function differingInputs(designs: readonly ComparedDesign[]): DifferingInput[] {
  const lists = designs.map(({ inputs }) => new Map(inputList(inputs).map(({ path, value }) => [path, value])));
  const holders = lists.map((list) => new Set([...list.keys()].flatMap(pathsTo)));
  const rows = new Map<string, readonly (InputValue | undefined)[]>();
  for (const path of new Set(lists.flatMap((list) => [...list.keys()]))) {
    const values = lists.map((list) => list.get(path));
    if (aside.test(path) || values.every((value) => value === values[0])) continue;
    const missing = lists.flatMap((list, i) => (list.has(path) ? [] : [missingPart(path, holders[i] ?? new Set())]));
    const part = missing.reduce((short, one) => (one.length < short.length ? one : short), path);
    if (part === path) rows.set(path, values);
    else
      rows.set(
        part,
        holders.map((own) => (own.has(part) ? 'given' : undefined)),
      );
  }
  return [...rows].map(([path, values]) => ({ path, values }));
}

/**
 * Two or more designs side by side, the first as the baseline: inputs that differ and results that moved, the most important first.
 */
export function compare(designs: readonly ComparedDesign[]): Comparison {
  const [base, ...others] = designs;
  const found = others.map((other) => differencesBetween(base?.results.data, other.results.data));
  const documents = designs.map(({ results }) => valuesOf(results.data));
  const rows = new Map<string, { rank: Difference['rank']; place: number; percent: (number | undefined)[] }>();
  for (const [i, list] of found.entries()) {
    for (const [place, { path, percent, rank }] of list.entries()) {
      const row = rows.get(path) ?? { rank, place, percent: designs.map(() => undefined) };
      row.percent[i + 1] = percent;
      rows.set(path, { ...row, place: Math.min(row.place, place) });
    }
  }
  const order = [...rows].sort(([, a], [, b]) => a.rank - b.rank || a.place - b.place);
  return {
    designs,
    inputs: differingInputs(designs),
    quantities: order.map(([path, { rank, percent }]) => ({
      path,
      rank,
      values: documents.map((document) => document.get(path)),
      percent,
    })),
  };
}
