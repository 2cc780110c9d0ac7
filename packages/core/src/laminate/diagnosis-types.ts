import type { Note, SourceKey } from '../provenance/index.js';
import type { Block, StackPattern } from './stack-pattern.js';

/** By how much each property of a {@link Diagnosis} is missed; 0 where it holds exactly. All are plain ratios. */
export interface DiagnosisMeasures {
  /** max |B| / (max |A| t/4): 1 would be a laminate with all of its stiffness in one half. */
  readonly coupling: number;
  /** max |A16|, |A26| over the larger of A11 and A22. */
  readonly shearCoupling: number;
  /** max |D16|, |D26| over the larger of D11 and D22. */
  readonly bendTwist: number;
  /** max |A - A of the isotropic sheet with the same invariants|, over its A11. */
  readonly anisotropy: number;
  /** max |12 D/t³ - A/t| over max |A/t|. */
  readonly inhomogeneity: number;
  /** Share of the thickness whose mirror image is another ply. */
  readonly unmirroredShare: number;
  /** Share of the thickness off axis without its opposite. */
  readonly unbalancedShare: number;
  /** Share of the thickness with fibres along neither 0 nor 90. */
  readonly offAxisShare: number;
  /** The least of the shares along 0, 45, -45 and 90 degrees, of the thickness without cores. */
  readonly leastDirectionShare: number;
}

/** What kind of laminate a stack makes. */
export interface Diagnosis {
  /** Every ply has its mirror image. */
  readonly symmetric: boolean;
  /** Not symmetric, and the mirror image of every ply has the opposite angle (or 90 for 0). */
  readonly antisymmetric: boolean;
  /** B is zero within the tolerance, whatever the order of the plies. */
  readonly uncoupled: boolean;
  /** Every off-axis ply has its opposite. */
  readonly balanced: boolean;
  readonly crossPly: boolean;
  readonly anglePly: boolean;
  /** A is that of an isotropic sheet; bending is not judged by this. */
  readonly quasiIsotropic: boolean;
  /** 12 D/t³ equals A/t: the order of the plies does not matter in bending; B is judged apart. */
  readonly homogenised: boolean;
  /** At least a tenth of the thickness along each of 0, 45, -45 and 90 degrees. */
  readonly tenPercentRule: boolean;
  readonly measures: DiagnosisMeasures;
  readonly directionShares: StackPattern['directionShares'];
  readonly largestBlock?: Block;
  /** degrees, 0 to 90 */
  readonly largestAngleJump: number;
  /** The same in words, with the numbers. */
  readonly statements: readonly string[];
  readonly notes: readonly Note[];
  readonly sources: readonly SourceKey[];
}
