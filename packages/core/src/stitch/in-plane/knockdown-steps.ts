import type { Working } from '../../working/index.js';
import type { InPlaneParameters } from './estimate.js';
import { softening } from './formulas.js';
import type { InPlaneKnockdown, KnockdownInput } from './knockdown-types.js';

/** What the single values of the parameters make of hole and pocket; m and m^2. */
interface Sizes {
  readonly hole: number;
  readonly needle: number;
  readonly bundle: number;
  readonly along: number;
  readonly pocket: number;
}

/** Takes down the price in the plane by the single values of what is not known. */
export function showKnockdown(
  { ply, spacing: s_h, pitch: p_r, penetrationDensity: N, bundleDiameter: d_B, holeWidth }: KnockdownInput,
  p: InPlaneParameters,
  { hole: d_h, needle: d_K, bundle: A_B, along: l_h, pocket: A_P }: Sizes,
  found: InPlaneKnockdown,
  working: Working,
): void {
  const { pocketAspect: f_P, straighteningOverHole: f_S, cutShare: x_k } = p;
  if (holeWidth === undefined) working.step('pocketWidth', { f_h: p.holeOverBundle, d_B, d_h });
  const [x_f, phi_w] = [found.affectedWidth.value, found.waviness.value];
  working.step('disturbedWidth', { d_h, f_S, s_h, x_f, f_P, phi_w });
  const c_w = softening(ply, phi_w);
  const loaded = { E_L: ply.E1, G_L12: ply.G12, nu_L: ply.nu12 };
  working.step('softerFibres', { ...loaded, phi_w, c_w, x_f, k_E: found.modulus.value });
  const kinks = { gamma_y: p.yieldShearStrain, phi_0: p.misalignment, phi_w };
  const { lower, upper } = found.compression;
  working.step('kinkingFibres', { ...kinks, x_f, k_k: lower.value, k_C: upper.value });
  const bent = { k_B0: found.perforation.lower.value, k_B1: found.perforation.upper.value };
  working.step('cutFibres', { x_k, d_K, s_h, d_h, p_r, k_T: found.tension.value, ...bent });
  const shares = { x_t: found.displaced.lower, x_p: found.displaced.upper.value };
  const room = { k_t: found.crowding.lower, k_p: found.crowding.upper.value };
  working.step('crowding', { d_B, N, s_h, d_h, f_P, A_B, l_h, A_P, ...shares, ...room });
}
