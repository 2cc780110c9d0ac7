import needles from '@selvage/reference-data/needles.json' with { type: 'json' };
import type { Note, SourceKey } from '../provenance/index.js';
import { requirePositive } from './check.js';
import { checkThread, threadDiameter } from './thread.js';
import type { Thread } from './types.js';

const sizes = [
  needles['thread-15-25-tex'],
  needles['thread-30-45-tex'],
  needles['thread-60-90-tex'],
  needles['thread-130-180-tex'],
].map(({ values }) => ({ tex: values.linearDensity, number: values.needleNumber }));

/** Needle sizes for a thread. */
export interface NeedleRange {
  /** Metric numbers: blade diameter in hundredths of a millimetre. */
  readonly from: number;
  readonly to: number;
  readonly notes: readonly Note[];
  readonly sources: readonly SourceKey[];
}

/**
 * Usual metric needle numbers for a thread, by its size (common practice, no source).
 * Between two sizes of the table: from the largest number of the finer to the smallest of the coarser.
 * @throws out-of-range see {@link checkThread}
 * @source reference-data/needles.json
 */
export function needleFor(thread: Thread): NeedleRange {
  checkThread(thread);
  const tex = thread.linearDensity * 1e6;
  // A size at the border of a range belongs to it, whatever its last bit.
  const slack = 1e-9 * tex;
  const sources = ['common-practice'];
  const finer = sizes.findLast((size) => size.tex.low <= tex + slack);
  const coarser = sizes.find((size) => size.tex.high >= tex - slack);
  if (finer !== undefined && coarser !== undefined) {
    const within = finer === coarser;
    return {
      from: within ? finer.number.low : finer.number.high,
      to: within ? finer.number.high : coarser.number.low,
      notes: [],
      sources,
    };
  }
  const nearest = finer ?? coarser ?? sizes[0];
  const [least, most] = [sizes[0]?.tex.low, sizes.at(-1)?.tex.high];
  return {
    from: nearest?.number.low ?? 0,
    to: nearest?.number.high ?? 0,
    notes: [
      {
        level: 'warning',
        text: `thread of ${Number(tex.toPrecision(4))} tex lies outside the needle table, ${least} to ${most} tex: needle of the nearest size named (common practice, no source)`,
        source: 'common-practice',
      },
    ],
    sources,
  };
}

/** Unit of the metric numbers of needles, m. */
export const needleUnit = 1e-5;

/**
 * Blade diameter of a needle, m: its metric number is the diameter in hundredths of a millimetre.
 * @throws out-of-range number not above 0
 */
export function needleDiameter(number: number): number {
  requirePositive('needle number', number);
  return number * needleUnit;
}

/**
 * Needle diameter over the width of the thread beside it, two strands side by side: d_needle/(2 d).
 * The thread passes the stack doubled, down and up beside the blade; 1.6 to 2.2 is usual (common practice, no source).
 * @throws out-of-range needle number not above 0, see {@link checkThread}
 */
export function needleRatio(number: number, thread: Thread): number {
  return needleDiameter(number) / (2 * threadDiameter(thread));
}
