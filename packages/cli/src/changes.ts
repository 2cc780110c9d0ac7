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

/** The values that differ between two reports' data, changed words first, then numbers by their relative change. */
export function changesBetween(before: unknown, after: unknown): Change[] {
  const old = leaves(before, '', 0, new Map());
  const changes: Change[] = [];
  for (const [path, { value: to, scale }] of leaves(after, '', 0, new Map())) {
    const was = old.get(path);
    if (was === undefined || was.value === to) continue;
    const from = was.value;
    if (typeof from === 'number' && typeof to === 'number') {
      if (Math.abs(to - from) <= roundOff * Math.max(scale, was.scale)) continue;
      changes.push({ path, from, to, ...(from === 0 ? {} : { percent: (100 * (to - from)) / Math.abs(from) }) });
    } else changes.push({ path, from, to });
  }
  const size = ({ percent }: Change): number => (percent === undefined ? Number.POSITIVE_INFINITY : Math.abs(percent));
  return changes.sort((a, b) => (size(a) === size(b) ? 0 : size(b) - size(a)));
}

const shown = (value: string | number | boolean): string =>
  typeof value === 'number' ? String(Number(value.toPrecision(4))) : String(value);

/** The first changes of the list in lines of text. */
export function changeLines(changes: readonly Change[], atMost = 12): string {
  if (changes.length === 0) return 'no result changed\n';
  const listed = changes.slice(0, atMost);
  const width = Math.max(...listed.map(({ path }) => path.length));
  const lines = listed.map(({ path, from, to, percent }) => {
    const by = percent === undefined ? '' : `  (${percent > 0 ? '+' : ''}${Number(percent.toPrecision(3))} %)`;
    return `  ${path.padEnd(width)}  ${shown(from)} -> ${shown(to)}${by}\n`;
  });
  const rest = changes.length - listed.length;
  return `changed (SI units):\n${lines.join('')}${rest > 0 ? `  and ${rest} more\n` : ''}`;
}
