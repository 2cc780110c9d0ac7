import { requireNotNegative, requirePositive } from '../check.js';
import type { BridgingModel } from './bridging-sides.js';
import type { YieldingBend } from './yielding-bend.js';

const mayBeZero = ['slipResistance', 'anchorStrength', 'anchorCompliance'] as const;
const aboveZero = ['depth', 'axialStiffness', 'lateralResistance'] as const;

/** Stops where a model holds impossible numbers. @throws out-of-range */
export function checkModel({ sides, crackStrength, siteScatter }: BridgingModel): void {
  for (const side of sides) {
    for (const name of mayBeZero) requireNotNegative(name, side[name]);
    for (const name of aboveZero) requirePositive(name, side[name]);
    if (side.bend !== undefined) checkBend(side.bend);
  }
  requirePositive('crackStrength', crackStrength);
  requireNotNegative('siteScatter', siteScatter);
}

function checkBend({ from, to, compliance, passed, float }: YieldingBend): void {
  requireNotNegative('from of a bend', from);
  requireNotNegative('to of a bend beyond from', to - from);
  requireNotNegative('compliance of a bend', compliance);
  requirePositive('passed of a bend', passed);
  if (float === undefined) return;
  requirePositive('length of the float', float.length);
  requirePositive('axialStiffness of the float', float.axialStiffness);
  requireNotNegative('slipResistance of the float', float.slipResistance);
}
