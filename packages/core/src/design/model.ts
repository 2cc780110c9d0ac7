import type { ArmOptions, Coupon, CouponTest } from '../fracture/index.js';
import type { Laminate } from '../laminate/index.js';
import type { Fabric, Fibre, Ply, PlyConsistency, Resin } from '../material/index.js';
import type { Access, Basis, Note, SourceKey } from '../provenance/index.js';
import type { UnitSystem } from '../quantity/index.js';
import type { BridgingLaw, BridgingParameters, PenetrationInput, StitchPlan, StitchSummary } from '../stitch/index.js';
import type { BlisterEntry, FreeEdgeEntry, LoadEntry, PanelEntry, TargetEntry } from './schema/design.js';
import type { DesignSource } from './source.js';

/** A material or thread that a design uses, with where its numbers come from. */
export interface Provenance {
  readonly name: string;
  readonly kind: 'fibre' | 'resin' | 'ply' | 'fabric' | 'core' | 'thread';
  readonly label?: string;
  /** Free text of the design file. */
  readonly source?: string;
  readonly basis?: Basis | Access;
  readonly note?: string;
  /** The library entry that gave its values, and their sources. */
  readonly library?: string;
  readonly sources: readonly SourceKey[];
  /** Values that the design file gives itself although a library entry has them. */
  readonly overridden: readonly string[];
  /** Cautions and assumed values of the library entry. */
  readonly notes: readonly Note[];
}

/** One entry of a stack as written: a ply, or a fabric that becomes several plies. */
export interface StackEntry {
  readonly material: string;
  readonly angle: number;
  /** In the mirrored half of a symmetric stack. */
  readonly mirrored: boolean;
}

/** How the thickness comes about: of plies given with theirs, by the fibre fraction in a bag, by the gap of a closed tool. */
export type Process =
  | { readonly kind: 'given' }
  | { readonly kind: 'bag'; readonly fibreVolumeFraction?: number }
  | { readonly kind: 'closedTool'; readonly gap: number; readonly fibreVolumeFraction: number };

/** A laminate of a design, with what was asked of it. */
export interface LaminateModel {
  readonly name: string;
  readonly title?: string;
  readonly note?: string;
  /** As written in the file, when it was a code. */
  readonly code?: string;
  readonly entries: readonly StackEntry[];
  readonly process: Process;
  readonly laminate: Laminate;
  /** Checks that the design asks for. */
  readonly freeEdge?: FreeEdgeEntry;
  readonly panel?: PanelEntry;
  readonly blister?: BlisterEntry;
  /** Thickness of the fibres alone, m; absent when a ply other than a core has no known fibre volume fraction. */
  readonly solidFibreThickness?: number;
}

/** A stitch plan of a design, with what follows from it by geometry and the law of its stitches. */
export interface StitchingModel {
  readonly name: string;
  readonly title?: string;
  readonly note?: string;
  readonly laminate?: string;
  /** Of the dry stack, where its thickness follows from it. */
  readonly dryFibreVolumeFraction?: number;
  readonly plan: StitchPlan;
  readonly summary: StitchSummary;
  readonly bridging: StitchBridgingModel;
}

/** What a design knows of how one stitch holds a crack. */
export interface StitchBridgingModel {
  /** Measured or chosen; the priors' where not given. */
  readonly parameters: Partial<BridgingParameters>;
  readonly anchors?: PenetrationInput['anchors'];
  readonly bends?: PenetrationInput['bends'];
  /** Lean of the legs, degrees. */
  readonly legAngle?: number;
  /** A measured single-stitch curve in place of the computed law. */
  readonly measured?: BridgingLaw;
  /** Coefficient of variation between the measured stitches. */
  readonly measuredVariation?: number;
}

/** A coupon of the design, ready to be simulated. */
export interface CouponModel {
  readonly name: string;
  readonly title?: string;
  readonly note?: string;
  readonly coupon: Coupon;
  /** Names of the laminates of the arms. */
  readonly arms: readonly [string, string];
  /** How each laminate becomes its arm. */
  readonly armOptions: readonly [ArmOptions, ArmOptions];
  /** Name of the stitch plan. */
  readonly stitching?: string;
  /** Results of tests of this coupon. */
  readonly test?: CouponTest;
  /** Of the arms and of the coupon itself. */
  readonly notes: readonly Note[];
  readonly sources: readonly SourceKey[];
}

/** A fabric at one fibre fraction, with the laminates in which it has that. */
export interface CuredFabricModel {
  readonly laminates: readonly string[];
  readonly fabric: Fabric;
}

/** A fabric of the stacks; one cured state for each fibre fraction. */
export interface FabricModel {
  readonly kind: 'fabric';
  readonly name: string;
  readonly cured: readonly CuredFabricModel[];
}

/** A ply given by its constants whose constituents are named, compared with them. */
export interface ListedPlyModel {
  readonly kind: 'ply';
  readonly name: string;
  readonly listed: Ply;
  readonly fibre: Fibre;
  readonly resin: Resin;
  readonly fibreVolumeFraction: number;
  readonly architecture: 'ud' | 'woven';
  readonly warpShare?: number;
  /** Who names the constituents: the design file, or the row of the library. */
  readonly namedBy: 'design' | 'library';
  readonly found: PlyConsistency;
}

/** A material of the stacks that is made of fibre and resin, or said to be. */
export type MaterialModel = FabricModel | ListedPlyModel;

/** A load case of a design, with its name. */
export interface LoadModel extends LoadEntry {
  readonly name: string;
}

/** A design with every name resolved and every derived part computed: what reports and studies work on. */
export interface Model {
  readonly title: string;
  readonly units: UnitSystem;
  readonly notes: readonly string[];
  readonly provenance: readonly Provenance[];
  readonly materials: readonly MaterialModel[];
  readonly laminates: readonly LaminateModel[];
  readonly stitching: readonly StitchingModel[];
  readonly coupons: readonly CouponModel[];
  readonly loads: readonly LoadModel[];
  readonly targets: readonly TargetEntry[];
  /** For problems that show only when something is computed. */
  readonly source: DesignSource;
}
