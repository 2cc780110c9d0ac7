import { pathsTo } from './paths.js';

type Leaf = { readonly value: string | number | boolean; readonly scale: number };

/** What differs between two documents at one place: where, from, to, and by how much if both are numbers. */
export interface Difference {
  readonly path: string;
  readonly from: string | number | boolean;
  readonly to: string | number | boolean;
  /** Percent of the old value; absent for words and for a change from zero. */
  readonly percent?: number;
  /** 0 a target, 1 what a designer looks at first, 2 anything else. */
  readonly rank: 0 | 1 | 2;
}

/** Below this part of the largest number beside it, a difference is round-off of the arithmetic. */
const roundOff = 1e-9;

const largest = (value: unknown): number =>
  typeof value === 'number' ? Math.abs(value) : Array.isArray(value) ? Math.max(0, ...value.map(largest)) : 0;

/** Every number and word of a document with its dotted path; the entries of an array share the scale of its largest number. */
function leaves(value: unknown, path: string, scale: number, into: Map<string, Leaf>): Map<string, Leaf> {
  const below = (key: string | number) => (path === '' ? String(key) : `${path}.${key}`);
  if (Array.isArray(value)) {
    const common = Math.max(scale, largest(value));
    for (const [i, entry] of value.entries()) leaves(entry, below(i), common, into);
  } else if (typeof value === 'object' && value !== null) {
    for (const [key, entry] of Object.entries(value)) leaves(entry, below(key), 0, into);
  } else if (typeof value === 'number' || typeof value === 'string' || typeof value === 'boolean') {
    into.set(path, { value, scale: Math.max(scale, largest(value)) });
  }
  return into;
}

/** The kind of place a path is, whatever its indices: numbers of one kind share their scale. */
const kindOf = (path: string): string => path.replace(/\.\d+(?=\.|$)/g, '.*');

/** The largest number of each kind of place. */
function scales(...documents: readonly ReadonlyMap<string, Leaf>[]): Map<string, number> {
  const found = new Map<string, number>();
  for (const document of documents) {
    for (const [path, { scale }] of document) found.set(kindOf(path), Math.max(scale, found.get(kindOf(path)) ?? 0));
  }
  return found;
}

/** What a designer looks at first, by the last names of a path; no places inside lists. */
const headline =
  /^(?!.*\.\d+\.)[^[]*\b(thickness|arealMass|inPlane\.E[xy]|inPlane\.Gxy|flexural\.Ex|failure\.\w+\.ratio|(firstPly|lastPly)\.ratio|multiplier|deflection|frequency|ratio|onset\w+|penetrationDensity|arealFraction|threadMassPerArea|threadLengthPerArea|sewingTime|armStrain|peakForce|margin|verdict\.(first|next)|toughness\.(specimen|steady)|splitLength)$/;

/** How the target of a quantity is called among the differences. */
const targetPath = (quantity: string): string => `target ${quantity}`;

/** The value at each place of a JSON report, places as in {@link Difference}. */
export const valuesOf = (data: unknown): ReadonlyMap<string, Leaf['value']> =>
  new Map([...document(data)].map(([path, { value }]) => [path, value]));

/** The numbers and words of a JSON report; the list of targets by their quantities, since places in a list say nothing. */
function document(data: unknown): Map<string, Leaf> {
  if (typeof data !== 'object' || data === null) return leaves(data, '', 0, new Map());
  const { targets, sources: _, ...rest } = data as { targets?: unknown; sources?: unknown };
  const into = leaves(rest, '', 0, new Map());
  for (const target of Array.isArray(targets) ? targets : []) {
    const { quantity, value, met } = target as { quantity?: unknown; value?: unknown; met?: unknown };
    const path = targetPath(String(quantity));
    leaves({ value, met: met === true ? 'met' : 'NOT MET' }, path, 0, into);
  }
  return into;
}

const rankOf = (path: string): Difference['rank'] => (path.startsWith('target ') ? 0 : headline.test(path) ? 1 : 2);
const size = ({ percent }: Difference): number =>
  percent === undefined ? Number.POSITIVE_INFINITY : Math.abs(percent);

/** Targets first, then what a designer looks at first, then the rest; words before numbers, numbers by their relative change. */
const byImportance = (a: Difference, b: Difference): number =>
  a.rank - b.rank || (size(a) === size(b) ? 0 : size(b) - size(a));

/**
 * The values that differ between the JSON reports of two designs, the most important first (`byImportance`). Remarks and round-off are left out, and what only
 * one of them has.
 */
export function differencesBetween(before: unknown, after: unknown): Difference[] {
  const [old, now] = [document(before), document(after)];
  const scaleOf = scales(old, now);
  const found: Difference[] = [];
  for (const [path, { value: to }] of now) {
    const was = old.get(path);
    if (was === undefined || was.value === to || /\b(notes|sources|title)(\.|$)/.test(path)) continue;
    const from = was.value;
    const rank = rankOf(path);
    if (typeof from === 'number' && typeof to === 'number') {
      const noise = roundOff * (scaleOf.get(kindOf(path)) ?? 0);
      if (Math.abs(to - from) <= noise) continue;
      const [a, b] = [from, to].map((value) => (Math.abs(value) <= noise ? 0 : value)) as [number, number];
      found.push({ path, from: a, to: b, rank, ...(a === 0 ? {} : { percent: (100 * (b - a)) / Math.abs(a) }) });
    } else found.push({ path, from, to, rank });
  }
  return found.sort(byImportance);
}

/** The uppermost parts of one JSON report that another does not have: `stitching.edge-rows`, `target laminates.skin.thickness`. */
export function partsOnlyIn(one: unknown, other: unknown): string[] {
  const known = new Set([...document(other).keys()].flatMap(pathsTo));
  const parts = [...document(one).keys()]
    .filter((path) => !/\b(notes|sources)(\.|$)/.test(path))
    .flatMap((path) => pathsTo(path).find((part) => !known.has(part)) ?? [])
    // Longer and shorter lists are no parts.
    .filter((part) => !/\.\d+$/.test(part));
  return [...new Set(parts)].map((part) => part.replace(/^(target .+)\.(value|met)$/, '$1'));
}
