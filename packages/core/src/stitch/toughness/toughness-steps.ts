import type { Working } from '../../working/index.js';
import { zonePriors } from '../priors.js';
import { armCeiling, armMoment, casesBeside, type Discreteness, pairStiffness, type ToughnessArm } from './lengths.js';
import type { Toughness, ToughnessInput } from './toughness-types.js';

/** Takes down the computed cases on either side of a distance of rows, and what they read. */
function showTestOverSteady({ ratio: r_s, testFactor }: Discreteness, working: Working): void {
  const [script, own] = casesBeside(r_s);
  if (testFactor === undefined || script === undefined || own === undefined) return;
  const rows = [script, own].map(({ from, to, low: f_k1, high: f_k2 }) => {
    return { r_i: from.r, r_j: to.r, f_i1: from.low, f_j1: to.low, f_i2: from.high, f_j2: to.high, f_k1, f_k2 };
  });
  working.step('casesBeside', { r_s }, rows);
  working.step('testOverSteady', {
    f_o1: script.low,
    f_p1: own.low,
    f_o2: script.high,
    f_p2: own.high,
    f_T1: testFactor.low,
    f_T2: testFactor.high,
  });
}

/** Takes down the toughness at which one of two arms breaks at the tip; nothing where the strains of one are not known. */
export function showArmBreaks([arm, otherArm]: readonly [ToughnessArm, ToughnessArm], working: Working): void {
  const [M_1, M_2] = [armMoment(arm), armMoment(otherArm)];
  const [one, two] = [arm.failureStrain, otherArm.failureStrain];
  const G_f = armCeiling(arm, otherArm);
  if (M_1 === undefined || M_2 === undefined || one === undefined || two === undefined || G_f === undefined) return;
  const { tension: eps_t1, compression: eps_c1 } = one;
  const { tension: eps_t2, compression: eps_c2 } = two;
  const strains = { eps_t1, eps_c1, eps_t2, eps_c2 };
  const least = { eps_a1: Math.min(eps_t1, eps_c1), eps_a2: Math.min(eps_t2, eps_c2) };
  const [D_1, D_2, D_m] = [arm.bendingStiffness, otherArm.bendingStiffness, pairStiffness(arm, otherArm)];
  const arms = { D_1, D_2, D_m, h_1: arm.thickness, h_2: otherArm.thickness, ...strains, ...least, M_1, M_2 };
  working.step('armBreaks', { ...arms, M_f: Math.min(M_1, M_2), G_f });
}

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
  const peak = { s_F: law.peak.opening, F_m: law.peak.force };
  working.step('bridgingLength', { D_1, D_2, D_m, N, ...peak, l_b, f_z1, f_z2, f_zn, ...lengths });
  if (rowDistance !== undefined && discreteness !== undefined) {
    const r_s = discreteness.ratio;
    working.step('rowsApart', { s_r: rowDistance, l_b, r_s });
    showTestOverSteady(discreteness, working);
  }
  if (G_f === undefined) return;
  showArmBreaks([arm, otherArm], working);
  if (found.usable !== undefined && G_ss !== undefined && G_0 > 0)
    working.step('usableToughness', { G_ss, G_f, G_u: found.usable });
}
