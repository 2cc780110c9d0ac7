import { fail } from '../problem/index.js';
import { type Note, type SourceKey, uniqueNotes, uniqueSources } from '../provenance/index.js';
import { penetrationDensity } from './density.js';
import { hasUnderThread, type Legs, type StitchType } from './stitch-type.js';
import { bundleArea, fibreArea } from './thread.js';
import type { Pattern, Thread } from './types.js';

/** What is sewn: a pattern in a stitch type with its threads. */
export interface Seam {
  readonly pattern: Pattern;
  readonly type: StitchType;
  readonly needleThread: Thread;
  /** Bobbin, looper or second hand thread; the needle thread again when not given. */
  readonly underThread?: Thread;
}

/** Through-thickness thread at one side of the lock. */
export interface SideFraction {
  readonly legs: Legs;
  /** Area of fibre per area of laminate. */
  readonly fibre: number;
  /** Area of thread with the gaps between its fibres, per area of laminate. */
  readonly bundle: number;
}

/** Shares of the area that the thread takes up in the laminate: of its fibre alone, and with the gaps between its fibres. */
export interface ArealFraction {
  /** Those of the side of the lock that holds less fibre. */
  readonly fibre: number;
  readonly bundle: number;
  /** Between the needle face and the lock; between the lock and the under face. */
  readonly above: SideFraction;
  readonly below: SideFraction;
  readonly notes: readonly Note[];
  readonly sources: readonly SourceKey[];
}

/** The second thread of a seam and, where it was not given, the assumption made. */
export function underThreadOf(seam: Seam): { readonly thread: Thread; readonly notes: readonly Note[] } {
  if (!hasUnderThread(seam.type) || seam.underThread !== undefined) {
    return { thread: seam.underThread ?? seam.needleThread, notes: [] };
  }
  const text = `second thread taken to be the needle thread (${seam.needleThread.name}), none given`;
  return { thread: seam.needleThread, notes: [{ level: 'assumption', text }] };
}

/**
 * Areal fraction of through-thickness thread, c = N n A: passes per area N, legs per pass n, area of one leg A; summed over the threads.
 * On the basis of fibre area A = t/rho, and of bundle area A/phi. Legs at holes shared by crossing sets all count.
 * A balanced lockstitch has needle thread above the lock and bobbin thread below: both sides are given, the smaller leads.
 * @throws out-of-range see `checkPattern`, `checkThread`; bundles that would need more than the whole area
 * @source recalled, not re-read: stitch geometry as in docs/theory/stitch-geometry.md
 */
export function arealFraction(seam: Seam): ArealFraction {
  const N = penetrationDensity(seam.pattern);
  const under = underThreadOf(seam);
  const side = (legs: Legs): SideFraction => ({
    legs,
    fibre: N * (legs.needle * fibreArea(seam.needleThread) + legs.under * fibreArea(under.thread)),
    bundle: N * (legs.needle * bundleArea(seam.needleThread) + legs.under * bundleArea(under.thread)),
  });
  const above = side(seam.type.legsAbove);
  const below = side(seam.type.legsBelow);
  const fullest = Math.max(above.bundle, below.bundle);
  if (fullest >= 1) {
    fail({
      code: 'out-of-range',
      message: `areal fraction of thread bundles = ${fullest.toPrecision(3)}, must be below 1`,
      allowed: 'thread bundles that fill less than the whole area',
      hint: 'a wider pitch or row spacing, or a finer thread',
    });
  }
  const notes: Note[] = [...under.notes];
  if (above.fibre !== below.fibre) {
    const lesser = above.fibre < below.fibre ? 'above' : 'below';
    notes.push({
      level: 'assumption',
      text: `threads differ across the lock: areal fraction given for the side ${lesser} the lock, which holds less fibre`,
    });
  }
  const lesser = above.fibre <= below.fibre ? above : below;
  return {
    fibre: lesser.fibre,
    bundle: lesser.bundle,
    above,
    below,
    notes: uniqueNotes(notes),
    sources: uniqueSources(seam.type.sources),
  };
}
