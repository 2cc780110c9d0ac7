import type { YieldingBend } from './yielding-bend.js';

/** The thread on one side of the crack plane. SI units. */
export interface BridgingSide {
  /** From the crack plane to the anchor or the free end, m. */
  readonly depth: number;
  /** EA, N. */
  readonly axialStiffness: number;
  /** q, N/m. */
  readonly slipResistance: number;
  /** Force per length against ploughing sideways, N/m. */
  readonly lateralResistance: number;
  /** Force at the anchor that breaks the thread there, N; 0 for a free end. */
  readonly anchorStrength: number;
  /** How far the anchor gives way per force at it, m/N. */
  readonly anchorCompliance: number;
  /** A bend that yields, besides. */
  readonly bend?: YieldingBend;
}

/** One penetration as the bridging law sees it. */
export interface BridgingModel {
  readonly sides: readonly [BridgingSide, BridgingSide];
  /** Force that breaks the thread in the plane of the crack, N. */
  readonly crackStrength: number;
  /** Coefficient of variation of the strength of a site. */
  readonly siteScatter: number;
}
