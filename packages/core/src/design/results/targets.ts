import { nearestHint, type Path, type Problem, SelvageError } from '../../problem/index.js';
import { type KindName, parseQuantity } from '../../quantity/index.js';
import type { Model } from '../model.js';
import type { TargetEntry } from '../schema/design.js';
import { locate, parseSource } from '../source.js';
import { medianBeside, whyNoValue } from './no-value.js';
import { kindAt } from './quantities.js';

/** A target with what came of it; value and limits in SI. */
export interface TargetResult {
  readonly quantity: string;
  readonly kind: KindName;
  readonly value: number;
  /** Of the samples, where the value is that of the middle values of a coupon. */
  readonly median?: number;
  readonly atLeast?: number;
  readonly atMost?: number;
  readonly hard: boolean;
  readonly met: boolean;
  /** Distance to the nearer limit, positive inside, in the unit of the value. */
  readonly margin: number;
  /** The margin as a fraction of that limit; absent when the limit is zero. */
  readonly relativeMargin?: number;
  readonly note?: string;
}

/** Follows a dotted path into the JSON document; also tells which names stood where it broke off. */
function follow(data: unknown, parts: readonly string[]): { value?: number; at: number; names: string[]; none?: true } {
  let value = data;
  for (const [i, part] of parts.entries()) {
    if (value === null) return { at: i, names: [], none: true };
    if (typeof value !== 'object') return { at: i, names: [] };
    if (!Object.hasOwn(value, part)) return { at: i, names: Object.keys(value) };
    value = (value as Record<string, unknown>)[part];
  }
  if (typeof value === 'number') return { value, at: parts.length, names: [] };
  if (value === null) return { at: parts.length, names: [], none: true };
  return { at: parts.length, names: typeof value === 'object' && value !== null ? Object.keys(value) : [] };
}

function limit(given: string | number, kind: KindName, path: Path, problems: Problem[]): number | undefined {
  const parsed = parseQuantity(given, kind, path);
  if (parsed.ok) return parsed.value;
  problems.push(parsed.problem);
  return undefined;
}

/**
 * A number of the JSON document by its dotted path, with what kind of quantity it is.
 * @throws SelvageError `unknown-name` no number there, with the names that there are and the nearest right spelling
 */
export function quantityAt(data: unknown, quantity: string): { readonly value: number; readonly kind: KindName } {
  const parts = quantity.split('.');
  const found = follow(data, parts);
  if (found.value === undefined) throw new SelvageError([missing(quantity, found, data)]);
  return { value: found.value, kind: kindAt(parts) };
}

function missing(quantity: string, found: ReturnType<typeof follow>, data: unknown): Problem {
  const parts = quantity.split('.');
  if (found.at === 3 && parts[0] === 'loads' && parts[2] === 'failure' && found.names.length === 0) {
    return {
      code: 'unknown-name',
      message: `the report has no \`${quantity}\`: a layer of the laminate has no strengths`,
      allowed: 'a laminate whose layers, cores aside, all have Xt, Xc, Yt, Yc and S',
    };
  }
  if (found.none) {
    return {
      code: 'unknown-name',
      message: `\`${quantity}\` has no value in this design`,
      allowed: 'a quantity that is not null in the JSON report',
      hint: whyNoValue(data, parts),
    };
  }
  const wrong = parts[found.at];
  const allowed =
    found.names.length === 0
      ? 'the path of a number in the JSON report'
      : `${found.at === 0 ? 'a path begins with' : `after \`${parts.slice(0, found.at).join('.')}\``}: ${found.names.slice(0, 30).join(', ')}`;
  return {
    code: 'unknown-name',
    message: wrong === undefined ? `\`${quantity}\` is not a number` : `the report has no \`${quantity}\``,
    allowed,
    ...(wrong === undefined ? {} : nearestHint(wrong, found.names)),
  };
}

/**
 * Targets of a design with what came of them.
 * @throws SelvageError with places in the file: a quantity or a limit that cannot be read
 */
export function judgeTargets(
  targets: readonly TargetEntry[],
  data: unknown,
  { source }: Pick<Model, 'source'>,
): TargetResult[] {
  const problems: Problem[] = [];
  const results = targets.flatMap((target, i) => targetResult(target, i, data, problems) ?? []);
  if (problems.length > 0) throw new SelvageError(locate(problems, parseSource(source.text)));
  return results;
}

/** Evaluates one target; its problems, if any, are added to the list and nothing is returned. */
function targetResult(
  target: TargetEntry,
  index: number,
  data: unknown,
  problems: Problem[],
): TargetResult | undefined {
  const path = ['targets', index];
  const parts = target.quantity.split('.');
  const found = follow(data, parts);
  if (found.value === undefined) {
    problems.push({ ...missing(target.quantity, found, data), path: [...path, 'quantity'] });
    return undefined;
  }
  const given = [target.atLeast, target.atMost, target.within].filter((one) => one !== undefined);
  if (given.length === 0 || (target.within !== undefined && given.length > 1)) {
    problems.push({
      code: 'contradiction',
      message: `target ${index + 1} needs its limits once`,
      allowed: '`atLeast`, `atMost`, both, or `within: [lower, upper]`',
      path,
    });
    return undefined;
  }
  const kind = kindAt(parts);
  const [lowText, highText] = target.within ?? [target.atLeast, target.atMost];
  const key = target.within === undefined ? undefined : 'within';
  const before = problems.length;
  const atLeast =
    lowText === undefined ? undefined : limit(lowText, kind, key ? [...path, key, 0] : [...path, 'atLeast'], problems);
  const atMost =
    highText === undefined ? undefined : limit(highText, kind, key ? [...path, key, 1] : [...path, 'atMost'], problems);
  if (problems.length > before) return undefined;
  if (atLeast !== undefined && atMost !== undefined && atLeast > atMost) {
    problems.push({
      code: 'contradiction',
      message: `the lower limit of target ${index + 1} is above the upper one`,
      path,
    });
    return undefined;
  }
  const median = medianBeside(data, target.quantity);
  return judge(
    {
      quantity: target.quantity,
      kind,
      value: found.value,
      ...(median === undefined ? {} : { median }),
      hard: target.priority !== 'soft',
      ...(target.note === undefined ? {} : { note: target.note }),
    },
    atLeast,
    atMost,
  );
}

function judge(
  target: Omit<TargetResult, 'met' | 'margin'>,
  atLeast: number | undefined,
  atMost: number | undefined,
): TargetResult {
  const margins = [
    ...(atLeast === undefined ? [] : [{ margin: target.value - atLeast, limit: atLeast }]),
    ...(atMost === undefined ? [] : [{ margin: atMost - target.value, limit: atMost }]),
  ].sort((a, b) => a.margin - b.margin);
  const nearest = margins[0] ?? { margin: 0, limit: 0 };
  return {
    ...target,
    ...(atLeast === undefined ? {} : { atLeast }),
    ...(atMost === undefined ? {} : { atMost }),
    met: nearest.margin >= 0,
    margin: nearest.margin,
    ...(nearest.limit === 0 ? {} : { relativeMargin: nearest.margin / Math.abs(nearest.limit) }),
  };
}
