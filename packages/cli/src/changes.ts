type Leaf = { readonly value: string | number | boolean; readonly scale: number };

/** What is shown of a change: where, from, to, and by how much if both are numbers. */
export interface Change {
  readonly path: string;
  readonly from: string | number | boolean;
  readonly to: string | number | boolean;
  /** Percent of the old value; absent for words and for a change from zero. */
  readonly percent?: number;
}

/** Below this part of the largest number beside it, a difference is round-off of the arithmetic. */
const roundOff = 1e-9;

const largest = (value: unknown): number =>
  typeof value === 'number' ? Math.abs(value) : Array.isArray(value) ? Math.max(0, ...value.map(largest)) : 0;

/** Every number and word of a document with its path; the entries of an array share the scale of its largest number. */
function leaves(value: unknown, path: string, scale: number, into: Map<string, Leaf>): Map<string, Leaf> {
  if (Array.isArray(value)) {
    const common = Math.max(scale, largest(value));
    for (const [i, entry] of value.entries()) leaves(entry, `${path}[${i}]`, common, into);
  } else if (typeof value === 'object' && value !== null) {
    for (const [key, entry] of Object.entries(value)) leaves(entry, path === '' ? key : `${path}.${key}`, 0, into);
  } else if (typeof value === 'number' || typeof value === 'string' || typeof value === 'boolean') {
    into.set(path, { value, scale: Math.max(scale, largest(value)) });
  }
  return into;
}

/** The kind of place a path is, whatever its indices: numbers of one kind share their scale. */
const kindOf = (path: string): string => path.replace(/\[\d+\]/g, '[]');

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
  /^[^[]*\b(thickness|arealMass|inPlane\.E[xy]|inPlane\.Gxy|flexural\.Ex|failure\.\w+\.ratio|(firstPly|lastPly)\.ratio|multiplier|deflection|frequency|ratio|onset\w+|penetrationDensity|arealFraction|threadMassPerArea|threadLengthPerArea|sewingTime|armStrain|peakForce|margin)$/;

/** The numbers and words of a document; the list of targets by their quantities, since places in a list say nothing. */
function document(data: unknown): Map<string, Leaf> {
  if (typeof data !== 'object' || data === null) return leaves(data, '', 0, new Map());
  const { targets, sources: _, ...rest } = data as { targets?: unknown; sources?: unknown };
  const into = leaves(rest, '', 0, new Map());
  for (const target of Array.isArray(targets) ? targets : []) {
    const { quantity, value, met } = target as { quantity?: unknown; value?: unknown; met?: unknown };
    leaves({ value, met: met === true ? 'met' : 'NOT MET' }, `target ${String(quantity)}`, 0, into);
  }
  return into;
}

const rank = ({ path }: Change): number => (path.startsWith('target ') ? 0 : headline.test(path) ? 1 : 2);
const size = ({ percent }: Change): number => (percent === undefined ? Number.POSITIVE_INFINITY : Math.abs(percent));

/**
 * The values that differ between two reports' data: targets first, then what a designer looks at first, then the rest; words before
 * numbers, numbers by their relative change. Remarks and round-off are left out.
 */
export function changesBetween(before: unknown, after: unknown): Change[] {
  const [old, now] = [document(before), document(after)];
  const scaleOf = scales(old, now);
  const changes: Change[] = [];
  for (const [path, { value: to }] of now) {
    const was = old.get(path);
    if (was === undefined || was.value === to || /\b(notes|sources)\[/.test(path)) continue;
    const from = was.value;
    if (typeof from === 'number' && typeof to === 'number') {
      if (Math.abs(to - from) <= roundOff * (scaleOf.get(kindOf(path)) ?? 0)) continue;
      changes.push({ path, from, to, ...(from === 0 ? {} : { percent: (100 * (to - from)) / Math.abs(from) }) });
    } else changes.push({ path, from, to });
  }
  return changes.sort((a, b) => rank(a) - rank(b) || (size(a) === size(b) ? 0 : size(b) - size(a)));
}

/** Targets and headlines; the rest only where there are none of these. */
const leading = (changes: readonly Change[]): readonly Change[] => {
  const first = changes.filter((change) => rank(change) < 2);
  return first.length === 0 ? changes : first;
};

const shown = (value: string | number | boolean): string =>
  typeof value === 'number' ? String(Number(value.toPrecision(4))) : String(value);

/** The first changes of the list in lines of text. */
export function changeLines(changes: readonly Change[], atMost = 12): string {
  if (changes.length === 0) return 'no result changed\n';
  const listed = leading(changes).slice(0, atMost);
  const width = Math.max(...listed.map(({ path }) => path.length));
  const lines = listed.map(({ path, from, to, percent }) => {
    const by = percent === undefined ? '' : `  (${percent > 0 ? '+' : ''}${Number(percent.toPrecision(3))} %)`;
    return `  ${path.padEnd(width)}  ${shown(from)} -> ${shown(to)}${by}\n`;
  });
  const rest = changes.length - listed.length;
  return `changed (SI units):\n${lines.join('')}${rest > 0 ? `  and ${rest} more\n` : ''}`;
}
