import type { Note, SourceKey } from '../provenance/index.js';

/** Force in one penetration against the opening (or sliding) of the crack at it: straight lines between points, zero beyond the last. */
export interface BridgingCurve {
  /** m, starts at 0, never falls; two points at one opening are a sudden drop. */
  readonly opening: readonly number[];
  /** N, not negative. */
  readonly force: readonly number[];
}

/** What of a penetration gives way: the thread in the plane of the crack, the thread at its lock or loop, or its hold on the laminate. */
export type BridgingFailure = 'threadAtCrack' | 'threadAtAnchor' | 'threadPullOut';

/** A median with the range that holds nine of ten samples of the uncertain parameters. */
export interface Interval {
  readonly median: number;
  readonly low: number;
  readonly high: number;
}

/** The bridging law of one penetration. */
export interface BridgingLaw extends BridgingCurve {
  /** N and m. */
  readonly peak: { readonly force: number; readonly opening: number };
  /** Area under the curve, J. */
  readonly work: number;
  readonly failure: BridgingFailure;
  /** True for a measured curve, absent for a computed law. */
  readonly measured?: true;
  readonly notes: readonly Note[];
  readonly sources: readonly SourceKey[];
}
