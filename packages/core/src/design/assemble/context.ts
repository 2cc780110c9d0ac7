import { nearestHint, type Path, type Problem, SelvageError } from '../../problem/index.js';
import type { Provenance } from '../model.js';
import type { Design } from '../read.js';

/** What is carried through the assembly of one design: the design, what went wrong so far, what was used so far. */
export interface Context {
  readonly design: Design;
  readonly problems: Problem[];
  readonly used: Map<string, Provenance>;
}

export const newContext = (design: Design): Context => ({ design, problems: [], used: new Map() });

/** Own entry of a record, never something inherited such as `constructor`. */
export function own<Value>(record: Readonly<Record<string, Value>> | undefined, name: string): Value | undefined {
  return record !== undefined && Object.hasOwn(record, name) ? record[name] : undefined;
}

/** What only a design file declares, the library never. */
const ofFilesAlone: ReadonlySet<string> = new Set(['laminate', 'stitch plan']);

/** A problem for a name that is neither declared nor, where it has such things, in the library. */
export function unknownName(
  what: string,
  name: string,
  known: readonly string[],
  path: Path,
  within?: Problem['within'],
): Problem {
  return {
    code: 'unknown-name',
    message: `there is no ${what} \`${name}\``,
    allowed: `${what} names of this file${ofFilesAlone.has(what) ? '' : ' and of the library'}: ${known.length === 0 ? 'none' : listed(known)}`,
    ...nearestHint(name, known),
    path,
    ...(within === undefined ? {} : { within }),
  };
}

const mostListed = 12;
const listed = (names: readonly string[]): string =>
  names.length <= mostListed
    ? names.join(', ')
    : `${names.slice(0, mostListed).join(', ')} and ${names.length - mostListed} more`;

/** The key that a message begins with ("nu12 = 3 ...", "stagger of row 2 = 2 mm ..."), as a path inside the entry that holds it. */
function keyPath(message: string, entry: object): Path {
  const [, key = '', row] = /^(\w+)(?: of row (\d+))? = /.exec(message) ?? [];
  const rows: unknown = Object.hasOwn(entry, 'rows') ? (entry as { rows?: unknown }).rows : undefined;
  const held: unknown = Array.isArray(rows) && row !== undefined ? rows[Number(row) - 1] : undefined;
  if (typeof held === 'object' && held !== null && Object.hasOwn(held, key)) return ['rows', Number(row) - 1, key];
  return key !== '' && Object.hasOwn(entry, key) ? [key] : [];
}

/**
 * Runs a computation; problems it throws get the path of the entry at fault, and of the key in it that their message begins with.
 * @param entry the entry of the design file, when its keys have the names that the computation uses
 * @throws SelvageError the same problems, placed
 */
export function placed<Result>(path: Path, compute: () => Result, entry: object = {}): Result {
  try {
    return compute();
  } catch (error) {
    if (!(error instanceof SelvageError)) throw error;
    throw new SelvageError(
      error.problems.map((problem) => ({ path: [...path, ...keyPath(problem.message, entry)], ...problem })),
    );
  }
}

/**
 * Runs a computation; problems it throws are kept with the path of the entry they belong to.
 * @returns its result, or undefined when it failed
 */
export function attempt<Result>(
  context: Context,
  path: Path,
  compute: () => Result,
  entry: object = {},
): Result | undefined {
  try {
    return placed(path, compute, entry);
  } catch (error) {
    if (!(error instanceof SelvageError)) throw error;
    context.problems.push(...error.problems);
    return undefined;
  }
}

/** Remembers that a material or thread was used, once. */
export function use(context: Context, provenance: Provenance): void {
  const key = `${provenance.kind} ${provenance.name}`;
  if (!context.used.has(key)) context.used.set(key, provenance);
}
