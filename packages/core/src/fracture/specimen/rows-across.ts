import { fail } from '../../problem/index.js';
import {
  type BridgingCurve,
  type BridgingFailure,
  checkPattern,
  closeRow,
  inMillimetres,
  type Pattern,
  penetrations,
  requirePositive,
} from '../../stitch/index.js';
import type { BridgingRow } from '../types.js';

/** A stitch pattern met by a crack. */
export interface RowsAcross {
  readonly pattern: Pattern;
  /** The crack grows across the rows of the pattern (its front parallel to them) or along them. */
  readonly growth: 'across' | 'along';
  /** Width of the front, m. */
  readonly width: number;
  /** Stretch in which rows are wanted, m from the load line; `from` belongs to it, `to` does not. */
  readonly from: number;
  readonly to: number;
  /** Place of the pattern's origin, m from the load line; 0 when not given. */
  readonly origin?: number;
  readonly curve: BridgingCurve;
  readonly failure: BridgingFailure;
}

/** Lines of holes a period apart, penetrations per length of front. */
interface Lines {
  readonly period: number;
  readonly phase: number;
  readonly perLength: number;
}

/** Rows closer than this to each other, m, are one. */
const same = 1e-9;

/**
 * The rows that a straight crack front meets in a stitch pattern, each with its penetrations across the width, on average, so not always a whole number.
 *
 * Across the rows: parallel and staggered, lines s apart with b/p each; zigzag, two sub-rows v apart with b/(2 p) each; crossing at 90 degrees, also lines at
 * multiples of p2 with b/s2. Along the rows: lines p apart with b/s; staggered by f, two of b/(2 s), f p apart. A second set at another
 * angle meets a front hole by hole: each a row of one penetration. Edge rows: across, each row with its closed pitch; along, hole by hole
 * for the rows within the width.
 *
 * @returns in order of position
 * @throws out-of-range see `checkPattern`; a width not above 0, a stretch that is none, or more rows than 100 000
 */
export function rowsAcross(input: RowsAcross): BridgingRow[] {
  const { pattern, growth, width, from, to, origin = 0, curve, failure } = input;
  checkPattern(pattern);
  requirePositive('width', width, inMillimetres);
  if (!(Number.isFinite(origin) && to > from && to - from < 1e3 && from > -1e3)) {
    fail({
      code: 'out-of-range',
      message: `rows wanted from ${inMillimetres(from)} to ${inMillimetres(to)}, must be a stretch of the specimen`,
      allowed: 'from below to, both finite',
    });
  }
  const found: { position: number; penetrations: number }[] = [];
  for (const { period, phase, perLength } of growth === 'across' ? linesAcross(pattern) : linesAlong(pattern)) {
    const first = Math.ceil((from - origin - phase) / period - 1e-9);
    const last = Math.ceil((to - origin - phase) / period - 1e-9);
    demandFew(last - first);
    for (let n = first; n < last; n++) {
      found.push({ position: origin + phase + n * period, penetrations: perLength * width });
    }
  }
  for (const place of single(pattern, growth, { width, from: from - origin, to: to - origin })) {
    found.push({ position: origin + place, penetrations: 1 });
  }
  if (pattern.kind === 'rows' && growth === 'across') {
    for (const row of pattern.rows) {
      const position = origin + row.offset;
      if (position >= from && position < to) found.push({ position, penetrations: width / closeRow(row).pitch });
    }
  }
  found.sort((a, b) => a.position - b.position);
  const merged: { position: number; penetrations: number }[] = [];
  for (const one of found) {
    const last = merged.at(-1);
    if (last !== undefined && one.position - last.position <= same) last.penetrations += one.penetrations;
    else merged.push({ ...one });
  }
  return merged.map((one) => ({ ...one, curve, failure }));
}

function linesAcross(pattern: Pattern): Lines[] {
  if (pattern.kind === 'rows') return [];
  const { pitch: p, rowSpacing: s } = pattern;
  const own = { period: s, phase: 0, perLength: 1 / p };
  if (pattern.kind === 'zigzag')
    return [-1, 1].map((side) => ({ ...own, phase: (side * pattern.swing) / 2, perLength: 1 / (2 * p) }));
  if (pattern.kind !== 'crossing' || !square(pattern)) return [own];
  const { pitch, rowSpacing } = pattern.second;
  return [own, { period: pitch, phase: pattern.offset?.y ?? 0, perLength: 1 / rowSpacing }];
}

function linesAlong(pattern: Pattern): Lines[] {
  if (pattern.kind === 'rows') return [];
  const { pitch: p, rowSpacing: s } = pattern;
  const own = { period: p, phase: 0, perLength: 1 / s };
  if (pattern.kind === 'staggered') {
    return [0, pattern.shift ?? 0.5].map((share) => ({ period: p, phase: share * p, perLength: 1 / (2 * s) }));
  }
  if (pattern.kind !== 'crossing' || !square(pattern)) return [own];
  const { pitch, rowSpacing } = pattern.second;
  return [own, { period: rowSpacing, phase: pattern.offset?.x ?? 0, perLength: 1 / pitch }];
}

function square(pattern: { readonly angle?: number }): boolean {
  return (pattern.angle ?? 90) === 90;
}

/** Places along the growth of holes that a front meets one by one. */
function single(
  pattern: Pattern,
  growth: 'across' | 'along',
  { width, from, to }: { width: number; from: number; to: number },
): number[] {
  if (pattern.kind === 'rows') {
    if (growth === 'across') return [];
    return penetrations(pattern)
      .filter(({ x, y }) => y < width && x >= from && x < to)
      .map(({ x }) => x);
  }
  if (pattern.kind !== 'crossing' || square(pattern)) return [];
  const across = { x: 0, y: from, length: width, width: to - from };
  const along = { x: from, y: 0, length: to - from, width };
  return penetrations(pattern, growth === 'across' ? across : along)
    .filter(({ set }) => set === 1)
    .map(({ x, y }) => (growth === 'across' ? y : x));
}

function demandFew(rows: number): void {
  if (rows <= 100_000) return;
  fail({ code: 'out-of-range', message: `rows = ${rows}, must be at most 100000`, allowed: 'at most 100000 rows' });
}
