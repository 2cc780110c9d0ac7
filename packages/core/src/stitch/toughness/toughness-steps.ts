import type { Working } from '../../working/index.js';
import { testOverSteady, zonePriors } from '../priors.js';
import { armMoment, pairStiffness } from './lengths.js';
import type { Toughness, ToughnessInput } from './toughness-types.js';

/** Takes down what stitches add to the toughness, and what stands in its way. */
export function showToughness(input: ToughnessInput, found: Toughness, working: Working): void {
  const { law, penetrationDensity: N, arm, otherArm = arm, rowDistance } = input;
  const { bond: G_0, increment: G_st, steady: G_ss, bridgingLength: l_b, zone, discreteness, ceiling: G_f } = found;
  // With arms and without a bond only the lengths are asked for.
  if (arm === undefined || G_0 > 0) working.step('toughnessAdded', { N, W: law.work, G_st });
  if (G_ss !== undefined && G_0 > 0) working.step('steadyToughness', { G_0, G_st, G_ss });
  if (arm === undefined || otherArm === undefined || l_b === undefined || zone === undefined) return;
  const [D_1, D_2, D_m] = [arm.bendingStiffness, otherArm.bendingStiffness, pairStiffness(arm, otherArm)];
  const { low: f_z1, high: f_z2 } = zonePriors.zoneOverLength;
  const f_zn = law.measured === true ? 1 : zonePriors.zoneShortfall.high;
  const lengths = { l_z1: zone.low, l_z2: zone.high, l_zn: zone.needed };
  const peak = { w_p: law.peak.opening, F_p: law.peak.force };
  working.step('bridgingLength', { D_1, D_2, D_m, N, ...peak, l_b, f_z1, f_z2, f_zn, ...lengths });
  if (rowDistance !== undefined && discreteness !== undefined) {
    const r_s = discreteness.ratio;
    working.step('rowsApart', { s_r: rowDistance, l_b, r_s });
    const { factor: f_k, exponent: m_k } = testOverSteady.fit;
    if (discreteness.testFactor) working.step('testOverSteady', { f_k, r_s, m_k, f_T: discreteness.testFactor.fit });
  }
  if (G_f === undefined) return;
  const moments = [arm, otherArm].map(armMoment);
  const [M_1, M_2] = moments;
  const [eps_a1, eps_a2] = [arm, otherArm].map(
    ({ failureStrain: limit }) => limit && Math.min(limit.tension, limit.compression),
  );
  if (M_1 !== undefined && M_2 !== undefined && eps_a1 !== undefined && eps_a2 !== undefined) {
    const arms = { D_1, D_2, D_m, h_1: arm.thickness, h_2: otherArm.thickness, eps_a1, eps_a2, M_1, M_2 };
    working.step('armBreaks', { ...arms, M_f: Math.min(M_1, M_2), G_f });
  }
  if (found.usable !== undefined && G_ss !== undefined && G_0 > 0)
    working.step('usableToughness', { G_ss, G_f, G_u: found.usable });
}
