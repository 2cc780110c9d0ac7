import { cosDegrees, sinDegrees } from '../numeric/index.js';
import { fail } from '../problem/index.js';
import { inMillimetres, requirePositive } from './check.js';
import { checkPattern } from './check-pattern.js';
import { penetrationDensity } from './density.js';
import { closeRow } from './edge-rows.js';
import type { Field, FieldPattern, Pattern, Penetration, RowsPattern } from './types.js';

/** A repeating rectangle of holes: width a along the rows, height b across them. */
interface Cell {
  readonly a: number;
  readonly b: number;
  readonly holes: readonly { readonly x: number; readonly y: number; readonly row: number }[];
  /** Rows in the height of one cell. */
  readonly rows: number;
}

/** A cell with its place in the field: turned by an angle, then moved. */
interface HoleSet {
  readonly cell: Cell;
  readonly cos: number;
  readonly sin: number;
  readonly x: number;
  readonly y: number;
}

/** Holes listed at most at once: enough for square metres, few enough to hold in memory. */
const mostHoles = 2_000_000;

/** A border hole belongs to the field by its exact place; rounding below this share of a cell does not move it. */
const border = 1e-9;

const straightCell = (pitch: number, rowSpacing: number): Cell => ({
  a: pitch,
  b: rowSpacing,
  holes: [{ x: 0, y: 0, row: 0 }],
  rows: 1,
});

function holeSets(pattern: FieldPattern): readonly HoleSet[] {
  const { pitch: p, rowSpacing: s } = pattern;
  const asIs = { cos: 1, sin: 0, x: 0, y: 0 };
  switch (pattern.kind) {
    case 'parallel':
      return [{ cell: straightCell(p, s), ...asIs }];
    case 'staggered': {
      const holes = [
        { x: 0, y: 0, row: 0 },
        { x: (pattern.shift ?? 0.5) * p, y: s, row: 1 },
      ];
      return [{ cell: { a: p, b: 2 * s, holes, rows: 2 }, ...asIs }];
    }
    case 'zigzag': {
      const half = pattern.swing / 2;
      const holes = [
        { x: 0, y: -half, row: 0 },
        { x: p, y: half, row: 0 },
      ];
      return [{ cell: { a: 2 * p, b: s, holes, rows: 1 }, ...asIs }];
    }
    case 'crossing': {
      const second = straightCell(pattern.second.pitch, pattern.second.rowSpacing);
      const angle = pattern.angle ?? 90;
      const place = { x: pattern.offset?.x ?? 0, y: pattern.offset?.y ?? 0 };
      return [
        { cell: straightCell(p, s), ...asIs },
        { cell: second, cos: cosDegrees(angle), sin: sinDegrees(angle), ...place },
      ];
    }
  }
}

/** The range of cells of a set that can reach into the field. */
function reach({ cell, cos, sin, x, y }: HoleSet, field: Required<Field>) {
  const corners = [0, field.length].flatMap((dx) =>
    [0, field.width].map((dy) => ({ x: field.x + dx - x, y: field.y + dy - y })),
  );
  const along = corners.map((corner) => (cos * corner.x + sin * corner.y) / cell.a);
  const across = corners.map((corner) => (-sin * corner.x + cos * corner.y) / cell.b);
  return {
    i: [Math.floor(Math.min(...along)) - 1, Math.ceil(Math.max(...along)) + 1],
    j: [Math.floor(Math.min(...across)) - 2, Math.ceil(Math.max(...across)) + 2],
  } as const;
}

function inSet(holeSet: HoleSet, set: 0 | 1, field: Required<Field>): Penetration[] {
  const { cell, cos, sin } = holeSet;
  const slack = border * Math.min(cell.a, cell.b);
  const inside = (value: number, size: number) => value >= -slack && value < size - slack;
  const { i, j } = reach(holeSet, field);
  const found: Penetration[] = [];
  for (let m = j[0]; m <= j[1]; m++) {
    for (const hole of cell.holes) {
      for (let k = i[0]; k <= i[1]; k++) {
        const along = k * cell.a + hole.x;
        const across = m * cell.b + hole.y;
        const x = holeSet.x + cos * along - sin * across;
        const y = holeSet.y + sin * along + cos * across;
        if (inside(x - field.x, field.length) && inside(y - field.y, field.width)) {
          found.push({ x, y, row: m * cell.rows + hole.row, set });
        }
      }
    }
  }
  return found;
}

/**
 * The exact places of all passes of the needle along edge rows: those of each closed row (see `closeRow`) with x along the row's own length.
 * @param pattern rows along x
 * @returns in order of row and x
 * @throws out-of-range see `checkPattern`; more than two million holes
 */
export function penetrations(pattern: RowsPattern): readonly Penetration[];
/**
 * The exact places of all passes of the needle in a field: those of the endless pattern inside the rectangle, its lower and left sides
 * included, so that fields laid side by side share no hole and miss none; the pitch is not adjusted. A hole sewn by both sets of a crossing
 * pattern is listed for each.
 * @param pattern rows along x
 * @param field rectangle, m
 * @returns in order of set, row and x (of turned sets: place along the row)
 * @throws out-of-range see `checkPattern`; a field side not above 0; more than two million holes
 */
export function penetrations(pattern: FieldPattern, field: Field): readonly Penetration[];
export function penetrations(pattern: Pattern, field?: Field): readonly Penetration[] {
  checkPattern(pattern);
  if (pattern.kind === 'rows') return rowPenetrations(pattern);
  const { length, width, x = 0, y = 0 } = field ?? { length: 0, width: 0 };
  requirePositive('field length', length, inMillimetres);
  requirePositive('field width', width, inMillimetres);
  const expected = penetrationDensity(pattern) * length * width;
  if (expected > mostHoles) {
    fail({
      code: 'out-of-range',
      message: `field of ${inMillimetres(length)} x ${inMillimetres(width)} holds about ${Math.round(expected)} holes, must be at most ${mostHoles}`,
      allowed: `at most ${mostHoles} holes`,
      hint: 'the density needs no field',
    });
  }
  const rectangle = { length, width, x, y };
  return holeSets(pattern).flatMap((holeSet, set) => {
    const found = inSet(holeSet, set === 0 ? 0 : 1, rectangle);
    return pattern.kind === 'zigzag' ? found.sort((a, b) => a.row - b.row || a.x - b.x) : found;
  });
}

function rowPenetrations(pattern: RowsPattern): Penetration[] {
  return pattern.rows.flatMap((row, index) => {
    const { penetrations, pitch, start } = closeRow(row);
    return Array.from({ length: penetrations }, (_, k): Penetration => {
      return { x: start + k * pitch, y: row.offset, row: index, set: 0 };
    });
  });
}

/** What a field holds. */
export interface FieldCount {
  /** Passes of the needle. */
  readonly penetrations: number;
  /** Distinct holes: a hole shared by two crossing sets counts once. */
  readonly holes: number;
  /** Passes and rows of each set. */
  readonly sets: readonly { readonly penetrations: number; readonly rows: number }[];
}

/**
 * Counts the passes, holes and rows of a field pattern in a rectangle, by the border rule of {@link penetrations}.
 * @throws out-of-range see {@link penetrations}
 */
export function countInField(pattern: FieldPattern, field: Field): FieldCount {
  const all = penetrations(pattern, field);
  const sets = (pattern.kind === 'crossing' ? [0, 1] : [0]).map((set) => {
    const own = all.filter((hole) => hole.set === set);
    return { penetrations: own.length, rows: new Set(own.map((hole) => hole.row)).size };
  });
  return { penetrations: all.length, holes: pattern.kind === 'crossing' ? distinct(all, pattern) : all.length, sets };
}

/** Each hole of the second set is shared when the nearest hole of the first set's grid is the same. */
function distinct(all: readonly Penetration[], pattern: FieldPattern & { readonly kind: 'crossing' }): number {
  const { pitch: p, rowSpacing: s } = pattern;
  const sameHole = 1e-6 * Math.min(p, s, pattern.second.pitch, pattern.second.rowSpacing);
  const offGrid = (value: number, step: number) => value - Math.round(value / step) * step;
  const shared = all.filter(({ set, x, y }) => set === 1 && Math.hypot(offGrid(x, p), offGrid(y, s)) <= sameHole);
  return all.length - shared.length;
}
