import { checkPattern } from './check-pattern.js';
import { penetrationDensity } from './density.js';
import { asRatio, commonMultiple } from './ratio.js';
import type { Pattern } from './types.js';

/** Lines of holes that a straight crack front meets one after the other. */
export interface RowsMet {
  /** Mean distance between lines, m. */
  readonly spacing: number;
  /** Smallest and largest distance between lines, m; the largest is the widest strip without holes. */
  readonly narrowest: number;
  readonly widest: number;
  /** Passes of the needle per length of front in one line, on average: N x spacing, 1/m. */
  readonly perFrontLength: number;
  /** False when the lines follow each other without a repeat that could be found, so that spacing is a mean and widest a bound. */
  readonly repeats: boolean;
}

/**
 * Lines of holes met by a crack front parallel to the rows that grows across them: the projection of the holes on y.
 * Parallel and staggered: s. Zigzag: v and s - v in turn. Crossing at 90 degrees: multiples of s1 and of p2 together;
 * at another angle the second set lies in between without order and is left out. Edge rows: the differences of their offsets.
 * @returns undefined for a single edge row
 * @throws out-of-range see `checkPattern`
 */
export function rowsMetAcross(pattern: Pattern): RowsMet | undefined {
  checkPattern(pattern);
  const N = penetrationDensity(pattern);
  if (pattern.kind === 'rows') {
    const offsets = pattern.rows.map((row) => row.offset);
    const gaps = offsets.slice(1).map((offset, i) => offset - (offsets[i] ?? 0));
    return gaps.length === 0 ? undefined : fromGaps(gaps, N, true);
  }
  const s = pattern.rowSpacing;
  switch (pattern.kind) {
    case 'parallel':
    case 'staggered':
      return union([{ period: s, phase: 0 }], N);
    case 'zigzag':
      return union(
        [-1, 1].map((side) => ({ period: s, phase: (side * pattern.swing) / 2 })),
        N,
      );
    case 'crossing':
      return crossed(pattern.angle, s, pattern.second.pitch, pattern.offset?.y ?? 0, N);
  }
}

/**
 * Lines of holes met by a crack front at right angles to the rows that grows along them: the projection of the holes on x.
 * Parallel and zigzag: p. Staggered by f p: f p and (1 - f) p in turn, so p/2 for one half. Crossing at 90 degrees: multiples of p1 and of s2.
 * Edge rows: the places of all rows together at their wanted pitches.
 * @throws out-of-range see `checkPattern`
 */
export function rowsMetAlong(pattern: Pattern): RowsMet {
  checkPattern(pattern);
  const N = penetrationDensity(pattern);
  if (pattern.kind === 'rows') {
    return union(
      pattern.rows.map((row) => ({ period: row.pitch, phase: row.stagger ?? 0 })),
      N,
    );
  }
  const p = pattern.pitch;
  switch (pattern.kind) {
    case 'parallel':
    case 'zigzag':
      return union([{ period: p, phase: 0 }], N);
    case 'staggered':
      return union(
        [0, pattern.shift ?? 0.5].map((share) => ({ period: p, phase: share * p })),
        N,
      );
    case 'crossing':
      return crossed(pattern.angle, p, pattern.second.rowSpacing, pattern.offset?.x ?? 0, N);
  }
}

function crossed(angle: number | undefined, first: number, second: number, phase: number, N: number): RowsMet {
  const own = { period: first, phase: 0 };
  if ((angle ?? 90) === 90) return union([own, { period: second, phase }], N);
  return { ...union([own], N), repeats: false };
}

/** Evenly spaced lines. */
interface Lines {
  readonly period: number;
  readonly phase: number;
}

/** Most lines of one family in a common repeat that is still looked for. */
const longestRepeat = 200;

function union(families: readonly Lines[], N: number): RowsMet {
  const period = commonPeriod(families.map((family) => family.period));
  if (period === undefined) {
    // Lines that never repeat come arbitrarily close and fill every gap of the closest family.
    const spacing = 1 / families.reduce((sum, family) => sum + 1 / family.period, 0);
    const widest = Math.min(...families.map((family) => family.period));
    return { spacing, narrowest: 0, widest, perFrontLength: N * spacing, repeats: false };
  }
  const places = families
    .flatMap((family) => {
      const count = Math.round(period / family.period);
      return Array.from({ length: count }, (_, k) => family.phase + k * family.period);
    })
    .map((place) => place - Math.floor(place / period) * period)
    .sort((a, b) => a - b);
  const first = places[0] ?? 0;
  const gaps = places.map((place, i) => (places[i + 1] ?? first + period) - place);
  return fromGaps(
    gaps.filter((gap) => gap > 1e-9 * period),
    N,
    true,
  );
}

function fromGaps(gaps: readonly number[], N: number, repeats: boolean): RowsMet {
  const spacing = gaps.reduce((sum, gap) => sum + gap, 0) / gaps.length;
  return {
    spacing,
    narrowest: Math.min(...gaps),
    widest: Math.max(...gaps),
    perFrontLength: N * spacing,
    repeats,
  };
}

/** The shortest length that is a whole multiple of every period; undefined when none is found. */
function commonPeriod(periods: readonly number[]): number | undefined {
  const unit = periods[0] ?? 0;
  let multiple = 1;
  for (const period of periods) {
    const ratio = asRatio(period / unit, longestRepeat);
    if (ratio === undefined) return undefined;
    // Every ratio in lowest terms and one of them 1: the common multiple is that of the numerators.
    multiple = commonMultiple(multiple, ratio.numerator);
    if (multiple > longestRepeat) return undefined;
  }
  return unit * multiple;
}
