import type { StepValues, Working } from '../../working/index.js';
import type { Arm } from '../types.js';
import { openingCompliance, openingLoad, slidingLoad, tipMoment } from './beam-toughness.js';
import type { Bending } from './bending.js';
import { bedStiffness, rootLength } from './opening-pair.js';
import type { SlidingPair } from './sliding-pair.js';

/** A crack at the start. */
interface Start<Pair> {
  readonly pair: Pair;
  readonly width: number;
  readonly crackLength: number;
  readonly bondToughness: number;
}

/** Takes down both arms as one beam of openings. */
export function showOpeningPair([one, two]: readonly [Arm, Arm], pair: Arm, working: Working): void {
  working.step('openingPair', {
    D_1: one.bendingStiffness,
    D_2: two.bendingStiffness,
    S_1: one.shearStiffness,
    S_2: two.shearStiffness,
    h_1: one.thickness,
    h_2: two.thickness,
    E_z1: one.E3,
    E_z2: two.E3,
    D_p: pair.bendingStiffness,
    S_p: pair.shearStiffness,
    h_p: pair.thickness,
    E_p: pair.E3,
    k_b: bedStiffness(pair),
    chi: rootLength(pair),
  });
}

/** Takes down at what load a double cantilever would grow without stitches, and how it gives way under it. */
export function showOpeningStart(
  { pair, width: b, crackLength: a_0, bondToughness: G_0 }: Start<Arm>,
  working: Working,
): void {
  const [D_p, chi] = [pair.bendingStiffness, rootLength(pair)];
  working.step('openingLoad', { b, G_0, D_p, a_0, chi, P_0: openingLoad(pair, b, G_0, a_0) });
  const C_n = openingCompliance(pair, a_0) / b;
  working.step('openingCompliance', { a_0, chi, D_p, k_b: bedStiffness(pair), b, C_n });
}

/** Takes down both arms as they bend as one and slide on each other. */
export function showSlidingPair([one, two]: readonly [Arm, Arm], pair: SlidingPair, working: Working): void {
  const arms: StepValues = {
    D_1: one.bendingStiffness,
    D_2: two.bendingStiffness,
    A_1: one.axialStiffness,
    A_2: two.axialStiffness,
    S_1: one.shearStiffness,
    S_2: two.shearStiffness,
    h_1: one.thickness,
    h_2: two.thickness,
  };
  const { D: D_u, H: H_p, axial: A_p, bonded: D_b, B: B_p, k: k_s, decay: omega } = pair;
  working.step('slidingPair', { ...arms, D_u, H_p, A_p, D_b, B_p, k_s, omega });
}

/** Takes down at what load a bent specimen would grow without stitches. */
export function showSlidingStart(
  { pair, bending, width: b, crackLength: a_0, bondToughness: G_0 }: Start<SlidingPair> & { readonly bending: Bending },
  working: Working,
): void {
  const { moment: m_a, slope: q_a } = tipMoment(pair, bending, a_0);
  const { D: D_u, bonded: D_b, decay: omega } = pair;
  const P_0 = slidingLoad(pair, bending, b, G_0, a_0);
  working.step('slidingLoad', { b, G_0, D_u, D_b, a_0, x_P: bending.loads[0]?.place ?? 0, m_a, q_a, omega, P_0 });
}
