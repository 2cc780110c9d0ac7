import {
  type BridgingModel,
  type BridgingParameters,
  type BridgingSide,
  type PenetrationInput,
  stitchType,
  type Thread,
} from '../../../../packages/core/src/stitch/index.js';
import { mm, tex } from '../support.js';

/** Invented demonstration thread: 75 tex para-aramid with strength and stiffness. */
export const aramid: Thread = {
  name: 'aramid 75',
  linearDensity: 75 * tex,
  density: 1440,
  tenacity: 1.7e6,
  modulus: 50e6,
};

/** Parameters all given, so that nothing is assumed; siteScatter 0 lets the weakest site alone give way. */
export const plain: BridgingParameters = {
  frictionStress: 7e6,
  sewnEfficiency: 0.85,
  anchorEfficiency: 0.6,
  tenacityFactor: 1,
  modulusFactor: 1,
  packing: 0.65,
  beddingIn: 0,
  siteScatter: 0,
  bearingPressure: 200e6,
  bearingWidth: 0.92,
  bendRadius: 1.5,
  faceConfinement: 1.8,
  bendFriction: 0.3,
  floatGrip: 0.5,
};

/** A crack at mid-thickness through a modified lockstitch of the demonstration thread. */
export function penetration(changes: Partial<PenetrationInput> = {}): PenetrationInput {
  return { type: stitchType('301-modified'), needleThread: aramid, thickness: 3 * mm, parameters: plain, ...changes };
}

/** A leg held at its end: invented, of the size of a sewing thread. */
export const side: BridgingSide = {
  depth: 1.5 * mm,
  axialStiffness: 7500,
  slipResistance: 1.2e4,
  lateralResistance: 8e4,
  anchorStrength: 150,
  anchorCompliance: 0,
};

export function modelOf(
  first: Partial<BridgingSide> = {},
  second: Partial<BridgingSide> = {},
  rest: Partial<BridgingModel> = {},
): BridgingModel {
  return {
    sides: [
      { ...side, ...first },
      { ...side, ...second },
    ],
    crackStrength: 210,
    siteScatter: 0,
    ...rest,
  };
}
