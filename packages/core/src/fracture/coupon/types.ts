import type { Note, SourceKey } from '../../provenance/index.js';
import type { BridgingInterval, BridgingLaw, Interval, Pattern, PenetrationInput } from '../../stitch/index.js';
import type { PeelSpecimen } from '../peel-specimen.js';
import type { DcbSpecimen, EnfSpecimen, WedgeEdge } from '../specimen/types.js';
import type { WedgeResult } from '../specimen/wedge.js';
import type { BridgingRow, SpecimenResult, Verdict } from '../types.js';

/** What is pulled and how, without its rows. */
export type CouponSpecimen =
  | ({ readonly kind: 'dcb' } & Omit<DcbSpecimen, 'rows'>)
  | ({ readonly kind: 'enf' } & Omit<EnfSpecimen, 'rows'>)
  | ({ readonly kind: 'peel' } & Omit<PeelSpecimen, 'rows'>)
  | ({ readonly kind: 'wedge' } & Omit<WedgeEdge, 'rows'>);

/** The stitches of a coupon. SI units; places from where the specimen counts. */
export interface CouponStitching {
  readonly pattern: Pattern;
  /** The crack grows across the rows of the pattern (its front parallel to them) or along them. */
  readonly growth: 'across' | 'along';
  /** The stitched stretch, m: `from` belongs to it, `to` does not. */
  readonly from: number;
  readonly to: number;
  /** Where the pattern's origin lies: its first row, or the edge that its rows follow, m. */
  readonly origin: number;
  /** Thread, type, laminate and what is known of the stitch. */
  readonly penetration: PenetrationInput;
  /** Lean of the legs from the through-thickness direction as the crack opens, degrees; 0 when not given. */
  readonly legAngle?: number;
  /** A measured single-stitch curve in place of the computed law. */
  readonly measured?: BridgingLaw;
  /** Coefficient of variation between the measured stitches; that of the prior when not given. */
  readonly measuredVariation?: number;
}

/** A test result of a coupon like this one; narrows the ranges of every coupon with the same stitch, or of the same bond where the tested one is unstitched. */
export interface CouponTest {
  /** N */
  readonly peakForce: number;
  /** Coefficient of variation of the mean of the tests; 0.1 when not given. */
  readonly variation?: number;
}

/** A test coupon whose result is foretold: specimen, stitches, and how well its bond is known. */
export interface Coupon {
  readonly specimen: CouponSpecimen;
  readonly stitching?: CouponStitching;
  /** Ends of the range of the bond's toughness, J/m²; from the priors of specimens when not given. */
  readonly bondToughnessRange?: { readonly low: number; readonly high: number };
}

/** A prediction: the simulation at the middle of what is known (medians of the priors, the bond as given; with tests the weighted middle of the samples), and median and nine in ten of the samples. */
export interface Estimated extends Interval {
  readonly nominal: number;
}

/** One thing that could be changed, and what it does. */
export interface CouponChange {
  /** What is changed, in words of the trade: 'finer pitch'. */
  readonly name: 'pitch' | 'rowSpacing' | 'threadLinearDensity' | 'anchorEfficiency' | 'armThickness' | 'bondToughness';
  /** The change that was simulated, as a factor on the input. */
  readonly factor: number;
  /** ln(with the change/as it is)/ln(factor), by the same two simulations. */
  readonly elasticity: { readonly peakForce: number; readonly toughness: number };
  /** With the change: N, J/m² and what limits then. */
  readonly peakForce: number;
  readonly toughness: number;
  readonly first: Verdict;
}

/** How the coupon would do with more or fewer penetrations of the same stitch. */
export interface DensityPoint {
  /** 1/m² */
  readonly penetrationDensity: number;
  /** J/m²; `steady` absent where the bridged zone may not fit. */
  readonly steady?: Interval;
  readonly specimen: Interval;
  /** Most likely thing that limits. */
  readonly first: Verdict;
  /** Share of the samples that the arms limit. */
  readonly armShare: number;
}

/** Everything foretold of a coupon. */
export interface CouponPrediction {
  readonly coupon: Coupon;
  readonly rows: readonly BridgingRow[];
  /** Absent without stitches. */
  readonly law?: BridgingLaw;
  /** Absent without stitches. */
  readonly bridging?: BridgingInterval;
  /** Penetrations per area of the pattern, 1/m². */
  readonly penetrationDensity?: number;
  /** At the middle of what is known, as law, rows and verdict are; absent for an edge that a wedge opens. */
  readonly result?: SpecimenResult;
  readonly wedge?: WedgeResult;
  /** Load and displacement at which the bond first gives way. */
  readonly onset?: { readonly load: number; readonly displacement: number };
  /** What limits the coupon, at what load, what would be next and by what factor of load. */
  readonly verdict: {
    readonly first: Verdict;
    readonly load: number;
    readonly next?: Verdict;
    readonly margin?: number;
  };
  /** Share of the samples in which each is what limits; they add up to 1. */
  readonly shares: Readonly<Record<Verdict, number>>;
  /** N; of a wedge the force that holds the mouth. */
  readonly peakForce: Estimated;
  /** J/m². `steady`: bond and stitches with a full zone, absent where it may not fit; `specimen`: what a tester would report from the loads. Absent for a wedge. */
  readonly toughness?: { readonly steady?: Estimated; readonly specimen: Estimated; readonly ceiling?: number };
  /** Where a wedged edge stops, m; its depth where it does not. */
  readonly splitLength?: Estimated;
  /** Share of the samples in which a wedged edge splits through its whole depth. */
  readonly runsThrough?: number;
  /** m */
  readonly zone?: { readonly computed: number; readonly low: number; readonly high: number; readonly needed: number };
  /** Row distance over bridging length. */
  readonly discreteness?: number;
  readonly changes: readonly CouponChange[];
  /** Penetrations per area beyond which more stitches only break the arms, 1/m², to two digits; absent where arms do not break, no stitch does it, or so many cannot be sewn. */
  readonly pointOfNoReturn?: number;
  readonly densities: readonly DensityPoint[];
  /** True where test results narrowed the ranges. */
  readonly calibrated?: true;
  readonly notes: readonly Note[];
  readonly sources: readonly SourceKey[];
}
