import type { Note, SourceKey } from '../../provenance/index.js';
import type { EngineeringConstants, Vector3 } from '../types.js';
import type { Criterion, StrengthOptions } from './criterion.js';
import type { Damage, Discount } from './discount.js';
import type { FailureMode } from './mode.js';
import type { Face } from './weakest.js';

/** How {@link progressiveFailure} is to go about it. */
export interface ProgressiveOptions extends StrengthOptions {
  readonly criterion: Criterion;
  /** `matrix` when not given. */
  readonly discount?: Discount;
  /** Share of stiffness that is left, 1e-6 to less than 1; 0.01 when not given. */
  readonly factor?: number;
  /** Share of the stiffness against the load below which the laminate has failed, 0 to 1; 0.1 when not given. */
  readonly collapse?: number;
}

/** A point of the load-strain curve: multiplier of the load, mid-plane strain and curvature (1/m). */
export interface CurvePoint {
  readonly ratio: number;
  readonly strain: Vector3;
  readonly curvature: Vector3;
}

/** A ply that fails in a step, and what becomes of it. */
export interface StepPly extends Pick<FailureMode, 'modeKey' | 'mode'> {
  /** Counted from 1 at the tool side. */
  readonly ply: number;
  readonly name: string;
  readonly angle: number;
  readonly face: Face;
  readonly becomes: Damage;
}

/** One step: the plies that fail at a load, and what is left. */
export interface ProgressiveStep {
  /** Multiplier of the mechanical load; never falls from step to step. */
  readonly ratio: number;
  /** True when the step follows from the one before without more load. */
  readonly cascade: boolean;
  readonly plies: readonly StepPly[];
  /** Deformation at this load before and after the loss of stiffness; the jump between them is at constant load. */
  readonly before: CurvePoint;
  readonly after: CurvePoint;
  /** Stiffness against the load after the step, as a share of the whole laminate's. */
  readonly stiffnessShare: number;
  /** Constants of what is left, Pa. */
  readonly inPlane: EngineeringConstants;
}

/** Failure of a laminate from its first ply to its last. */
export interface ProgressiveFailure {
  readonly criterion: Criterion;
  readonly discount: Discount;
  readonly factor: number;
  readonly collapse: number;
  readonly firstPly: ProgressiveStep;
  /** The step that ends it; its ratio is the greatest load carried. */
  readonly lastPly: ProgressiveStep;
  /** False when plies ran out before the stiffness did. */
  readonly collapsed: boolean;
  readonly steps: readonly ProgressiveStep[];
  /** From zero load to collapse; two points with the same ratio are a jump of strain. */
  readonly curve: readonly CurvePoint[];
  readonly notes: readonly Note[];
  readonly sources: readonly SourceKey[];
}
