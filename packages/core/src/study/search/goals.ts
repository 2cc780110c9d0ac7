import { type DesignInputs, kindAt, type SearchEntry } from '../../design/index.js';
import { fail, type Path } from '../../problem/index.js';
import { type KindName, parseQuantity } from '../../quantity/index.js';

/** A quantity to be made small or large. */
export interface Aim {
  readonly path: string;
  readonly kind: KindName;
  /** 1 to be made small, -1 to be made large. */
  readonly sense: 1 | -1;
  /** Its place among the quantities. */
  readonly quantity: number;
}

/** A limit that candidates keep to; SI. */
export interface Limit {
  readonly path: string;
  readonly kind: KindName;
  readonly atLeast?: number;
  readonly atMost?: number;
  /** Whether the search or a hard target of the design sets it. */
  readonly of: 'search' | 'target';
  readonly quantity: number;
}

/** What candidates are judged by. */
export interface Goals {
  readonly aims: readonly Aim[];
  readonly limits: readonly Limit[];
  /** Paths of all quantities of aims and limits, each once, and where the design file first names them. */
  readonly quantities: readonly string[];
  readonly places: readonly Path[];
}

type Given = string | number;

function limitOf(given: Given | undefined, kind: KindName, path: Path): number | undefined {
  if (given === undefined) return undefined;
  const parsed = parseQuantity(given, kind, path);
  return parsed.ok ? parsed.value : fail(parsed.problem);
}

/** Aims and limits of a search. @throws SelvageError with paths: `missing-key` no aim or no limit, `contradiction`, units that do not fit */
export function goalsOf({ design }: DesignInputs, search: SearchEntry): Goals {
  const quantities: string[] = [];
  const places: Path[] = [];
  const indexOf = (path: string, place: Path): number => {
    const known = quantities.indexOf(path);
    if (known >= 0) return known;
    places.push(place);
    return quantities.push(path) - 1;
  };
  const aims = (['minimise', 'maximise'] as const).flatMap((key) =>
    (search[key] ?? []).map((path, i): Aim => {
      const sense = key === 'minimise' ? 1 : -1;
      return { path, kind: kindAt(path.split('.')), sense, quantity: indexOf(path, ['search', key, i]) };
    }),
  );
  if (aims.length === 0) {
    fail({
      code: 'missing-key',
      message: 'the search has no aim',
      allowed: '`minimise` or `maximise` with a list of quantities, or both',
      path: ['search'],
      atKey: true,
    });
  }
  const twice = aims.find((aim, i) => aims.findIndex(({ path }) => path === aim.path) < i);
  if (twice !== undefined) {
    fail({
      code: 'contradiction',
      message: `\`${twice.path}\` is an aim twice`,
      allowed: 'each quantity once, to be made small or large',
      path: places[twice.quantity] ?? ['search'],
    });
  }
  const limit = (
    path: string,
    ends: readonly [Given | undefined, Given | undefined],
    at: LimitPlaces,
    of: Limit['of'],
  ): Limit => {
    const kind = kindAt(path.split('.'));
    const [atLeast, atMost] = [limitOf(ends[0], kind, at.low), limitOf(ends[1], kind, at.high)];
    if (atLeast === undefined && atMost === undefined) {
      fail({
        code: 'missing-key',
        message: `\`${path}\` has no limit`,
        allowed: '`atLeast`, `atMost` or both',
        path: at.entry,
      });
    }
    if (atLeast !== undefined && atMost !== undefined && atLeast > atMost) {
      fail({ code: 'contradiction', message: `the lower limit of \`${path}\` is above the upper one`, path: at.entry });
    }
    return {
      path,
      kind,
      ...(atLeast === undefined ? {} : { atLeast }),
      ...(atMost === undefined ? {} : { atMost }),
      of,
      quantity: indexOf(path, [...at.entry, 'quantity']),
    };
  };
  const own = (search.constraints ?? []).map(({ quantity, atLeast, atMost }, i) => {
    const entry = ['search', 'constraints', i];
    return limit(
      quantity,
      [atLeast, atMost],
      { entry, low: [...entry, 'atLeast'], high: [...entry, 'atMost'] },
      'search',
    );
  });
  const targets = search.targets === false ? [] : (design.targets ?? []);
  const hard = targets.flatMap((target, i): Limit[] => {
    if (target.priority === 'soft') return [];
    const entry = ['targets', i];
    if (target.within !== undefined && (target.atLeast !== undefined || target.atMost !== undefined)) {
      fail({
        code: 'contradiction',
        message: `target ${i + 1} needs its limits once`,
        allowed: '`atLeast`, `atMost`, both, or `within: [lower, upper]`',
        path: entry,
      });
    }
    const places =
      target.within === undefined
        ? { entry, low: [...entry, 'atLeast'], high: [...entry, 'atMost'] }
        : { entry, low: [...entry, 'within', 0], high: [...entry, 'within', 1] };
    return [limit(target.quantity, target.within ?? [target.atLeast, target.atMost], places, 'target')];
  });
  return { aims, limits: [...own, ...hard], quantities, places };
}

interface LimitPlaces {
  readonly entry: Path;
  readonly low: Path;
  readonly high: Path;
}

/** Violation of a candidate that cannot be computed. */
export const notComputed = 1e9;

/** A number with 40 bits of its mantissa left, about 12 digits: what differs by less counts as equal, so that rounding decides nothing. */
function rounded(x: number): number {
  const c = x * 8193;
  const high = c - (c - x);
  return Number.isFinite(high) ? high : x;
}

/**
 * Objectives, all to be made small, and violations from the quantities of candidates.
 *
 * A violation is the sum of what limits are missed by, each as a share of the limit (of 1 where the limit is 0).
 *
 * @param values flat, a row of all quantities per candidate
 * @param computed 1 per candidate that could be computed
 */
export function judge(
  { aims, limits, quantities }: Goals,
  count: number,
  values: Float64Array,
  computed: Uint8Array,
  objectives: Float64Array,
  violations: Float64Array,
): void {
  const width = quantities.length;
  for (let k = 0; k < count; k++) {
    const row = k * width;
    if (computed[k] === 0) {
      objectives.fill(0, k * aims.length, (k + 1) * aims.length);
      violations[k] = notComputed;
      continue;
    }
    for (let i = 0; i < aims.length; i++) {
      const aim = aims[i]!;
      objectives[k * aims.length + i] = rounded(aim.sense * values[row + aim.quantity]!) + 0;
    }
    let missed = 0;
    for (let i = 0; i < limits.length; i++) {
      const limit = limits[i]!;
      const value = values[row + limit.quantity]!;
      if (limit.atLeast !== undefined && value < limit.atLeast)
        missed += (limit.atLeast - value) / sizeOf(limit.atLeast);
      if (limit.atMost !== undefined && value > limit.atMost) missed += (value - limit.atMost) / sizeOf(limit.atMost);
    }
    violations[k] = Math.min(missed, notComputed);
  }
}

const sizeOf = (limit: number): number => (limit === 0 ? 1 : Math.abs(limit));
