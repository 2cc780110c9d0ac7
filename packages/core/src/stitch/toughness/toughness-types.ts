import type { Note, SourceKey } from '../../provenance/index.js';
import type { BridgingLaw } from '../bridging-types.js';
import type { BridgingZone, Discreteness, ToughnessArm } from './lengths.js';

/** A stitched laminate against a crack in one plane. SI units. */
export interface ToughnessInput {
  /** Of one penetration, computed or measured. */
  readonly law: Pick<BridgingLaw, 'peak' | 'work' | 'measured' | 'notes' | 'sources'>;
  /** 1/m^2 */
  readonly penetrationDensity: number;
  /** Of the laminate without stitches, in the same mode as the law, J/m^2. */
  readonly bondToughness: number;
  /** The arm beside the crack and, where it differs, the other one; only for opening. */
  readonly arm?: ToughnessArm;
  readonly otherArm?: ToughnessArm;
  /** Distance between rows that the crack meets in turn, m; needs an arm. */
  readonly rowDistance?: number;
  /** How far a crack can grow among stitches: of the specimen, or the width of an edge band, m; needs an arm. */
  readonly length?: number;
}

/** Toughness of a stitched laminate; J/m^2 and m. */
export interface Toughness {
  readonly bond: number;
  /** N W. */
  readonly increment: number;
  /** G0 + N W with the zone fully developed; absent where the zone may not fit into the length given. */
  readonly steady?: number;
  readonly bridgingLength?: number;
  readonly zone?: BridgingZone;
  readonly discreteness?: Discreteness;
  /** Toughness at which an arm breaks at the tip; with rows behind the tip a test reads more before an arm breaks, often by 5 to 10 %. */
  readonly ceiling?: number;
  /** The lesser of steady value and ceiling; absent like the steady value. */
  readonly usable?: number;
  readonly notes: readonly Note[];
  readonly sources: readonly SourceKey[];
}
