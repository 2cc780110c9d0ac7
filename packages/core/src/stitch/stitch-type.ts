import { fail, nearestHint } from '../problem/index.js';
import type { SourceKey } from '../provenance/index.js';

/** How much of one thread goes into one stitch: `run` times the distance between holes plus `depth` times the dry thickness. */
export interface ThreadShare {
  readonly run: number;
  readonly depth: number;
}

/** Strands of each thread that cross a plane at one hole. */
export interface Legs {
  readonly needle: number;
  readonly under: number;
}

/** The geometry of a stitch. One stitch = one pass of the needle = one hole. */
export interface StitchGeometry {
  /** In words. */
  readonly title: string;
  /** Stitch type number of ISO 4915, where it is certain. */
  readonly number?: string;
  readonly needle: ThreadShare;
  /** Bobbin, looper or second needle thread. */
  readonly under: ThreadShare;
  /** Strands above and below the place where the two threads lock. */
  readonly legsAbove: Legs;
  readonly legsBelow: Legs;
  /** Depth of the lock under the needle side as a share of the thickness; 1 when nothing locks inside. */
  readonly lockDepth: number;
  /** What holds the ends of a leg. */
  readonly anchor: string;
  readonly sources: readonly SourceKey[];
}

/** A stitch type by name. */
export interface StitchType extends StitchGeometry {
  readonly id: StitchTypeId;
}

const twoNeedle: Legs = { needle: 2, under: 0 };
const twoUnder: Legs = { needle: 0, under: 2 };
const noThread: ThreadShare = { run: 0, depth: 0 };
const machine = ['iso-4915', 'common-practice'] as const;
const hand = ['common-practice'] as const;

/**
 * The stitch types known here. Consumption is that of straight, taut, rectangular thread paths on an uncompressed dry stack;
 * class numbers are those of ISO 4915 (recalled, not re-read), the constants the usual ones of sewing engineering (recalled, not re-read),
 * each derivable from the thread path in docs/theory/stitch-geometry.md.
 */
const table = {
  '101': {
    title: 'single-thread chain stitch',
    number: '101',
    needle: { run: 3, depth: 2 },
    under: noThread,
    legsAbove: twoNeedle,
    legsBelow: twoNeedle,
    lockDepth: 1,
    anchor:
      'needle side: bend over the surface; under side: loop held by the next loop of the same thread; unravels from its end',
    sources: machine,
  },
  '301': {
    title: 'lockstitch, balanced: threads lock at mid-thickness',
    number: '301',
    needle: { run: 1, depth: 1 },
    under: { run: 1, depth: 1 },
    legsAbove: twoNeedle,
    legsBelow: twoUnder,
    lockDepth: 0.5,
    anchor: 'surface bend on each face and the lock inside the stack',
    sources: machine,
  },
  '301-modified': {
    title: 'modified lockstitch: lock pulled to the under face, needle thread through the whole thickness',
    number: '301',
    needle: { run: 1, depth: 2 },
    under: { run: 1, depth: 0 },
    legsAbove: twoNeedle,
    legsBelow: twoNeedle,
    lockDepth: 1,
    anchor: 'surface bend on the needle face, bobbin thread lying through the loop on the under face',
    sources: machine,
  },
  '304': {
    title: 'zigzag lockstitch, balanced',
    number: '304',
    needle: { run: 1, depth: 1 },
    under: { run: 1, depth: 1 },
    legsAbove: twoNeedle,
    legsBelow: twoUnder,
    lockDepth: 0.5,
    anchor: 'surface bend on each face and the lock inside the stack',
    sources: machine,
  },
  '401': {
    title: 'double-thread chain stitch',
    number: '401',
    needle: { run: 1, depth: 2 },
    under: { run: 3, depth: 0 },
    legsAbove: twoNeedle,
    legsBelow: twoNeedle,
    lockDepth: 1,
    anchor: 'needle side: bend over the surface; under side: needle loop held by the looper thread',
    sources: machine,
  },
  running: {
    title: 'running stitch by hand, one thread passing down and up in turn',
    needle: { run: 1, depth: 1 },
    under: noThread,
    legsAbove: { needle: 1, under: 0 },
    legsBelow: { needle: 1, under: 0 },
    lockDepth: 1,
    anchor: 'surface bend on both faces',
    sources: hand,
  },
  saddle: {
    title: 'saddle stitch by hand, two threads passing every hole from opposite sides',
    needle: { run: 1, depth: 1 },
    under: { run: 1, depth: 1 },
    legsAbove: { needle: 1, under: 1 },
    legsBelow: { needle: 1, under: 1 },
    lockDepth: 1,
    anchor: 'surface bend on both faces, each face covered without gaps',
    sources: hand,
  },
} as const satisfies Record<string, StitchGeometry>;

/** A type of stitch by its id; machine stitches carry their class number. */
export type StitchTypeId = keyof typeof table;

export const stitchTypeIds = Object.keys(table) as readonly StitchTypeId[];

/** All stitch types. */
export const stitchTypes: readonly StitchType[] = stitchTypeIds.map((id) => ({ id, ...table[id] }));

/**
 * The stitch type with an id or, for the machine stitches, the number written as a number (301).
 * @throws not-a-choice no such stitch type
 */
export function stitchType(id: string | number): StitchType {
  const key = String(id);
  const found = stitchTypes.find((type) => type.id === key);
  return (
    found ??
    fail({
      code: 'not-a-choice',
      message: `stitch type ${key} is not known`,
      allowed: stitchTypeIds.join(', '),
      ...nearestHint(key, stitchTypeIds),
    })
  );
}

/** True when the type sews with a second thread. */
export function hasUnderThread(type: StitchType): boolean {
  return type.under.run > 0 || type.under.depth > 0;
}

/**
 * The same stitch with several strands of thread in the needle: a doubled hand thread has `strands` = 2.
 * Needle legs and needle thread multiply.
 * @param strands whole number, 1 or more
 * @throws out-of-range strands not a whole number above 0
 */
export function withStrands(type: StitchType, strands: number): StitchType {
  if (!(Number.isInteger(strands) && strands >= 1)) {
    fail({
      code: 'out-of-range',
      message: `strands = ${strands}, must be a whole number above 0`,
      allowed: '1, 2, 3 ...',
    });
  }
  const legs = ({ needle, under }: Legs): Legs => ({ needle: needle * strands, under });
  return {
    ...type,
    needle: { run: type.needle.run * strands, depth: type.needle.depth * strands },
    legsAbove: legs(type.legsAbove),
    legsBelow: legs(type.legsBelow),
  };
}
