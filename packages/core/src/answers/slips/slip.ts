import type { Model } from '../../design/index.js';
import type { KindName } from '../../quantity/index.js';
import type { Change } from '../propagate.js';
import type { Quantity } from '../quantities.js';

/** What slips of hand calculations are told apart. */
export type SlipName =
  | 'unit'
  | 'powerOfTen'
  | 'shearSign'
  | 'anglesNegated'
  | 'turnedBack'
  | 'orderReversed'
  | 'otherSide'
  | 'heightSubtracted'
  | 'angleFromY'
  | 'tensorShear'
  | 'faceOrAxes'
  | 'plyThickness'
  | 'halfStack'
  | 'fromToolFace'
  | 'ownInertia'
  | 'couplingIgnored'
  | 'singleInverse'
  | 'bendingForInPlane'
  | 'heatSign'
  | 'heatForgotten'
  | 'poisson'
  | 'radians'
  | 'sign';

/** A number that a slip gives in place of the right one, SI. */
export interface Slipped {
  readonly value: number;
  /** What fixes the slip further: the unit that was meant, the power of ten, the key of the quantity that was given instead. */
  readonly detail?: string;
}

/** The answer as far as a slip of reading or writing needs it. */
export interface Reading {
  readonly kind: KindName;
  /** SI value of 1 of the unit that was written. */
  readonly unit: number;
}

/** What a slip can be computed from. */
export interface Sheet {
  /** The right quantity of a key of the working. */
  readonly right: (key: string) => Quantity | undefined;
  /** Numbers of the working under a change of the model or of the formulas, by key; the same change is computed once. */
  readonly under: (way: ModelWay | FormulaWay) => (of: Quantity) => number | undefined;
  /** How many plies the laminate of a quantity has. */
  readonly plyCount: (of: Quantity) => number;
}

/** A slip that is another model: its working is computed anew. */
export interface ModelWay {
  readonly model: (model: Model) => Model | undefined;
}

/** A slip that some formulas or inputs of the working show. */
export interface FormulaWay {
  readonly change: Change;
}

/** A slip that is recognised by its numbers. */
export interface Slip {
  readonly name: SlipName;
  /** Slips of one family give the same number by symmetry; then the first stands for them. */
  readonly family?: string;
  /** How many digits an answer needs before the slip is read out of it. */
  readonly digits: number;
  /** Every number that the slip can lead to. */
  readonly numbers: (of: Quantity, sheet: Sheet, reading: Reading) => readonly Slipped[];
}
