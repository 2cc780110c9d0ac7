import type { Working } from '../../working/index.js';
import type { Legs } from '../stitch-type.js';
import type { Thread } from '../types.js';
import type { BridgingParameters } from './bridging-parameters.js';
import type { BridgingSide } from './bridging-sides.js';
import { type Bundle, bundledStrands } from './bundle.js';
import { anchorLimit } from './failure-sites.js';

/** Takes down the legs of a hole as one bundle. */
export function showBundle(
  legs: Legs,
  threads: { readonly needle: Thread; readonly under: Thread },
  parameters: BridgingParameters,
  bundle: Bundle,
  working: Working,
): void {
  const strands = bundledStrands(legs, threads, parameters);
  const rows = strands.map(({ thread, legs: n_l, packing, diameter, breakingStrain }) => ({
    n_l,
    t_t: thread.linearDensity,
    rho_t: thread.density,
    phi_t: packing,
    E_t: thread.modulus ?? 0,
    sigma_t: thread.tenacity ?? 0,
    d_t: diameter,
    eps_l: breakingStrain,
  }));
  const shared = {
    f_E: parameters.modulusFactor,
    f_F: parameters.tenacityFactor,
    tau_l: parameters.frictionStress,
    p_0: parameters.bearingPressure,
    f_w: parameters.bearingWidth,
    n_L: bundle.legs,
    d_l: bundle.legDiameter,
    EA_l: bundle.axialStiffness,
    F_t: bundle.strength,
    q_l: bundle.slipResistance,
    q_n: bundle.lateralResistance,
  };
  const [only] = rows;
  if (rows.length === 1 && only !== undefined) {
    const { n_l: _, d_t: __, eps_l: ___, ...thread } = only;
    working.step('legsOfOneThread', { ...thread, ...shared });
    return;
  }
  const terms = strands.map(({ thread, legs: n, modulus, diameter: d }, i) => ({
    ...rows[i],
    n_L: n,
    EA_l: n * thread.linearDensity * modulus,
    d_L: n * d,
    d_Q: n * d * d,
  }));
  const total = (of: 'd_L' | 'd_Q') => terms.reduce((sum, row) => sum + row[of], 0);
  const eps_F = Math.min(...strands.map(({ breakingStrain }) => breakingStrain));
  working.step('legsOfTwoThreads', { ...shared, eps_F, d_L: total('d_L'), d_Q: total('d_Q') }, terms);
}

/** Takes down what holds the end of a leg: the anchor's strength, how it gives way, and at what force at the crack. */
export function showSide(
  side: BridgingSide,
  bundle: Bundle,
  parameters: BridgingParameters,
  end: 'surface' | 'lock' | 'none',
  room: number,
  working: Working,
): void {
  const { depth: l_s, slipResistance: q_l, anchorStrength: F_a, anchorCompliance: C_a, bend } = side;
  const { legDiameter: d_l, legs: n_L } = bundle;
  if (end !== 'none')
    working.step('strengthAtAnchor', { eta_a: parameters.anchorEfficiency, F_t: bundle.strength, F_a });
  if (end === 'surface' && bend === undefined) working.step('beddingIn', { f_b: parameters.beddingIn, d_l, F_a, C_a });
  if (bend !== undefined) {
    working.step('yieldingBend', {
      p_0: parameters.bearingPressure,
      f_c: parameters.faceConfinement,
      f_w: parameters.bearingWidth,
      n_L,
      d_l,
      f_R: parameters.bendRadius,
      R_b: room,
      q_b: bend.resistance ?? 0,
      F_b0: bend.from,
      F_b1: bend.to,
      C_b: bend.compliance,
    });
    if (bend.float !== undefined) {
      const { frictionStress: tau_l, floatGrip: f_g, bendFriction: mu_b } = parameters;
      working.step('floatBehindBend', { mu_b, x_b: bend.passed, tau_l, f_g, n_L, d_l, q_f: bend.float.slipResistance });
    }
  }
  if (end === 'none') working.step('sideSlips', { q_l, l_s, F_s: anchorLimit(side) });
  else working.step('sideGivesWay', { F_a, q_l, l_s, F_s: anchorLimit(side) });
}
