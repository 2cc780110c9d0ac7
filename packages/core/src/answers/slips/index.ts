import { formulaSlips } from './formulas.js';
import { modelSlips } from './models.js';
import { plainSign, readingSlips } from './readings.js';
import { siblingSlips } from './siblings.js';
import type { Slip, SlipName } from './slip.js';

export type { FormulaWay, ModelWay, Reading, Sheet, Slip, SlipName, Slipped } from './slip.js';

/** The common ones first, by what teachers see; there is no count behind it. */
const order: readonly SlipName[] = [
  'unit',
  'powerOfTen',
  'shearSign',
  'anglesNegated',
  'turnedBack',
  'orderReversed',
  'otherSide',
  'heightSubtracted',
  'tensorShear',
  'ownInertia',
  'fromToolFace',
  'halfStack',
  'plyThickness',
  'couplingIgnored',
  'heatForgotten',
  'heatSign',
  'faceOrAxes',
  'bendingForInPlane',
  'poisson',
  'angleFromY',
  'singleInverse',
  'radians',
  'sign',
];

/** Every slip that is recognised; one name may stand several times, for the ways that lead to it. */
export const slips: readonly Slip[] = [
  ...readingSlips,
  ...modelSlips,
  ...formulaSlips,
  ...siblingSlips,
  plainSign,
].sort((one, other) => order.indexOf(one.name) - order.indexOf(other.name));
