import { nearestHint, type Path, type Problem } from '../problem/index.js';
import { problemOf } from './schema/fields.js';

/** The part of a zod issue that is read here. */
export interface SchemaIssue {
  readonly code: string;
  readonly path: readonly PropertyKey[];
  readonly message: string;
  readonly keys?: readonly string[];
  readonly values?: readonly unknown[];
  readonly params?: Record<string, unknown> | undefined;
  readonly discriminator?: string;
  readonly origin?: string;
  readonly minimum?: number | bigint;
  readonly maximum?: number | bigint;
}

/** A path in words: `materials.ud` or `ply 2 of laminates.edge.stack`. */
function inWords(path: Path, whole: string): string {
  if (path.length === 0) return whole;
  const last = path[path.length - 1];
  return typeof last === 'number' ? `entry ${last + 1} of ${path.slice(0, -1).join('.')}` : `\`${path.join('.')}\``;
}

function valueAt(data: unknown, path: Path): unknown {
  let value = data;
  for (const part of path) {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, part)) return undefined;
    value = (value as Record<string | number, unknown>)[part];
  }
  return value;
}

const kindOf = (value: unknown): string => {
  if (value === null) return 'nothing';
  if (Array.isArray(value)) return 'a list';
  if (typeof value === 'object') return 'a mapping';
  return typeof value === 'string'
    ? `the text \`${value.length > 40 ? `${value.slice(0, 40)}…` : value}\``
    : `${typeof value} \`${String(value)}\``;
};

function missing(path: Path, allowed: string, whole: string): Problem {
  const key = String(path[path.length - 1]);
  const parent = path.slice(0, -1);
  return {
    code: 'missing-key',
    message: `missing \`${key}\` in ${inWords(parent, whole)}`,
    allowed,
    path: parent,
    atKey: true,
  };
}

/** Turns one issue of the schema into problems; `data` is the document as read, `whole` says what it is. */
export function translate(issue: SchemaIssue, data: unknown, whole = 'the design'): Problem[] {
  const path = issue.path.map((part) => (typeof part === 'symbol' ? String(part) : part));
  const own = problemOf(issue);
  if (own !== undefined) return [{ ...own, path }];
  if (issue.code === 'unrecognized_keys') {
    return (issue.keys ?? []).map((key) => ({
      code: 'unknown-key' as const,
      message: `unknown key \`${key}\` in ${inWords(path, whole)}`,
      allowed: issue.message,
      ...nearestHint(key, issue.message.split(', ')),
      path: [...path, key],
      atKey: true,
    }));
  }
  const value = valueAt(data, path);
  if (issue.code === 'invalid_union' && issue.discriminator !== undefined)
    return [discriminator(issue, path, value, whole)];
  if (value === undefined) return [missing(path, issue.message, whole)];
  if (issue.code === 'invalid_key') {
    return [
      {
        code: 'wrong-type',
        message: `\`${String(path[path.length - 1])}\` cannot be a name`,
        allowed: 'a letter, then letters, digits, - or _ (at most 61)',
        path,
        atKey: true,
      },
    ];
  }
  const fixed = Array.isArray(value) && issue.origin === 'array' && !issue.message.startsWith('Too ');
  if (fixed && (issue.code === 'too_small' || issue.code === 'too_big')) {
    return [
      {
        code: 'out-of-range',
        message: `${inWords(path, whole)} has ${value.length} ${value.length === 1 ? 'entry' : 'entries'}`,
        allowed: issue.message,
        path,
      },
    ];
  }
  if (issue.code === 'too_small' || issue.code === 'too_big') {
    const bound = issue.code === 'too_small' ? `at least ${issue.minimum}` : `at most ${issue.maximum}`;
    return [
      {
        code: 'out-of-range',
        message: `${inWords(path, whole)} has the wrong size`,
        allowed: Array.isArray(value) ? `${bound} entries` : `${bound} characters`,
        path,
      },
    ];
  }
  return [{ code: 'wrong-type', message: `${inWords(path, whole)} is ${kindOf(value)}`, allowed: issue.message, path }];
}

function discriminator(issue: SchemaIssue, path: Path, value: unknown, whole: string): Problem {
  const key = issue.discriminator ?? 'kind';
  const parent = path[path.length - 1] === key ? path.slice(0, -1) : path;
  const holder = parent === path ? value : undefined;
  const given =
    parent === path && typeof holder === 'object' && holder !== null ? (holder as Record<string, unknown>)[key] : value;
  if (parent === path && (typeof holder !== 'object' || holder === null)) {
    return {
      code: 'wrong-type',
      message: `${inWords(path, whole)} is ${kindOf(value)}`,
      allowed: `a mapping with \`${key}\``,
      path,
    };
  }
  if (given === undefined) return { ...missing([...parent, key], issue.message, whole) };
  return {
    code: 'not-a-choice',
    message: `${key} \`${String(given)}\` of ${inWords(parent, whole)} is not known`,
    allowed: issue.message,
    ...nearestHint(String(given), issue.message.split(', ')),
    path: [...parent, key],
  };
}

/** An unknown key that is near a missing one is the same mistake: one problem says both. */
export function mergeMisspelled(problems: readonly Problem[]): Problem[] {
  const hintedKeys = new Set(
    problems
      .filter((problem) => problem.code === 'unknown-key' && problem.hint !== undefined)
      .map(
        (problem) =>
          `${(problem.path ?? []).slice(0, -1).join('\u0000')}\u0000${/`([^`]*)`/.exec(problem.hint ?? '')?.[1] ?? ''}`,
      ),
  );
  return problems.filter((problem) => {
    if (problem.code !== 'missing-key') return true;
    const key = /`([^`]*)`/.exec(problem.message)?.[1] ?? '';
    return !hintedKeys.has(`${(problem.path ?? []).join('\u0000')}\u0000${key}`);
  });
}
