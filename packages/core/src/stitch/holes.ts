import needles from '@selvage/reference-data/needles.json' with { type: 'json' };
import type { Note } from '../provenance/index.js';
import { inMillimetres, requirePositive } from './check.js';
import { courses } from './density.js';
import { nearestNeighbour } from './nearest-neighbour.js';
import { needleDiameter, needleRatio } from './needle.js';
import { rowsMetAcross } from './rows-met.js';
import type { StitchType } from './stitch-type.js';
import { bundleArea } from './thread.js';
import type { Pattern, Thread } from './types.js';

const least = needles['practical-lower-bounds'].values;
const most = needles['practical-upper-bounds'].values;

/** Usual needle over doubled thread (common practice, no source). */
const usualRatio = { low: 1.6, high: 2.2 };

/** Hole over thread bundle when neither hole nor needle is known: the middle of 1 to 1.5 (recalled, not re-read). */
export const holeOverBundle = 1.25;

export interface HoleInput {
  readonly pattern: Pattern;
  readonly type: StitchType;
  readonly needleThread: Thread;
  readonly dryThickness: number;
  /** Metric needle number. */
  readonly needleNumber?: number;
  /** Measured width of the hole or resin pocket, m. */
  readonly holeWidth?: number;
}

export interface Holes {
  /** Width of one hole across the fibres, m. */
  readonly width: number;
  /** Distance of the holes in one straight line along the row, m. */
  readonly alongRow: number;
  /** Share of the width left along a row of holes, 1 - d/p; 0 when they touch. */
  readonly netWidth: number;
  readonly notes: readonly Note[];
}

/**
 * Width of the holes, what they leave along a row, and the practical limits that needle and pattern cross.
 *
 * Hole width d: as given, else the needle's diameter, else 1.25 times the round bundle of the legs. Net width 1 - d/p is the worst case of every
 * fibre cut; in a zigzag whose sub-rows lie at least a hole apart, p is the 2 p along a sub-row.
 * @throws out-of-range needle number or hole width not above 0; see `checkPattern`, `checkThread`
 * @source limits: reference-data/needles.json, common practice, no source
 */
export function holes(input: HoleInput): Holes {
  const { pattern, needleNumber } = input;
  const { width, notes } = holeWidth(input);
  const pitch = Math.min(...courses(pattern).map((course) => course.pitch));
  const alongRow = pattern.kind === 'zigzag' && pattern.swing >= width ? 2 * pitch : pitch;
  const needle = needleNumber === undefined ? [] : needleNotes(needleNumber, input);
  return {
    width,
    alongRow,
    netWidth: Math.max(0, 1 - width / alongRow),
    notes: [...notes, ...needle, ...spacingNotes(pattern, width), ...upperNotes(input)],
  };
}

function holeWidth({ needleThread, type, needleNumber, holeWidth }: HoleInput): Pick<Holes, 'width' | 'notes'> {
  if (holeWidth !== undefined) {
    requirePositive('holeWidth', holeWidth, inMillimetres);
    return { width: holeWidth, notes: [] };
  }
  if (needleNumber !== undefined) {
    const text = 'hole taken as wide as the needle, no width given';
    return { width: needleDiameter(needleNumber), notes: [{ level: 'assumption', text }] };
  }
  const bundle = Math.sqrt((4 * type.legsAbove.needle * bundleArea(needleThread)) / Math.PI);
  const text = `hole taken ${holeOverBundle} times as wide as the thread in it, no width and no needle given`;
  return { width: holeOverBundle * bundle, notes: [{ level: 'assumption', text, source: 'common-practice' }] };
}

const practice = (text: string): Note => ({
  level: 'warning',
  text: `${text} (common practice, no source)`,
  source: 'common-practice',
});

function needleNotes(needleNumber: number, { pattern, needleThread }: HoleInput): Note[] {
  const notes: Note[] = [];
  const diameter = needleDiameter(needleNumber);
  const run = Math.min(...courses(pattern).map((course) => course.run));
  const factor = least.pitchOverNeedleDiameter.value;
  if (run < factor * diameter) {
    const limit = inMillimetres(factor * diameter);
    notes.push(
      practice(
        `holes ${inMillimetres(run)} apart along the row, at least ${factor} needle diameters = ${limit} are usual`,
      ),
    );
  }
  const ratio = needleRatio(needleNumber, needleThread);
  if (ratio < usualRatio.low || ratio > usualRatio.high) {
    notes.push(
      practice(
        `needle is ${ratio.toFixed(2)} times as wide as the doubled thread, ${usualRatio.low} to ${usualRatio.high} is usual`,
      ),
    );
  }
  return notes;
}

interface Range {
  readonly low: number;
  readonly high: number;
}
const rangeInMillimetres = ({ low, high }: Range) => `${low} to ${high} mm`;

function spacingNotes(pattern: Pattern, width: number): Note[] {
  const notes: Note[] = [];
  const mm = (length: number) => length * 1000;
  const pitch = Math.min(...courses(pattern).map((course) => course.run));
  if (mm(pitch) < least.pitch.high) {
    notes.push(
      practice(`pitch = ${inMillimetres(pitch)}, the usual lower bound is ${rangeInMillimetres(least.pitch)}`),
    );
  }
  const rowSpacing = closestRows(pattern);
  if (rowSpacing !== undefined && mm(rowSpacing) < least.rowSpacing.high) {
    const usual = rangeInMillimetres(least.rowSpacing);
    notes.push(practice(`rows ${inMillimetres(rowSpacing)} apart, the usual lower bound is ${usual}`));
  }
  const neighbour = nearestNeighbour(pattern).distance;
  if (neighbour < width) {
    const text = `holes ${inMillimetres(width)} wide stand ${inMillimetres(neighbour)} apart and run into each other`;
    notes.push({ level: 'warning', text });
  }
  const offset = pattern.kind === 'rows' ? pattern.rows[0]?.offset : undefined;
  const edge = Math.max(least.edgeDistance.value / 1000, least.edgeDistanceOverHoleDiameter.value * width);
  if (offset !== undefined && offset < edge) {
    notes.push(
      practice(
        `first row ${inMillimetres(offset)} from the edge, at least ${inMillimetres(edge)} is usual: ${least.edgeDistance.value} mm and ${least.edgeDistanceOverHoleDiameter.value} hole widths`,
      ),
    );
  }
  return notes;
}

function closestRows(pattern: Pattern): number | undefined {
  if (pattern.kind === 'rows') return rowsMetAcross(pattern)?.narrowest;
  return pattern.kind === 'crossing' ? Math.min(pattern.rowSpacing, pattern.second.rowSpacing) : pattern.rowSpacing;
}

function upperNotes({ type, dryThickness }: HoleInput): Note[] {
  const isLockstitch = type.number?.startsWith('3') ?? false;
  if (!isLockstitch || dryThickness * 1000 <= most.thickness.low) return [];
  const usual = rangeInMillimetres(most.thickness);
  return [practice(`dry stack of ${inMillimetres(dryThickness)}, a lockstitch usually reaches ${usual}`)];
}

/** Warns of an areal fraction beyond the usual. */
export function fractionNotes(fraction: number): Note[] {
  if (fraction <= most.arealFraction.low) return [];
  const percent = (value: number) => `${Number((value * 100).toPrecision(3))} %`;
  return [
    practice(
      `areal fraction of thread = ${percent(fraction)}, above ${percent(most.arealFraction.low)} to ${percent(most.arealFraction.high)} in-plane losses dominate`,
    ),
  ];
}
