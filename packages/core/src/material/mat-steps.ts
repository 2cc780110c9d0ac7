import type { Working } from '../working/index.js';
import { type ReducedStiffness, stiffnessInvariants } from './reduced-stiffness.js';
import type { MatModel, Ply } from './types.js';

/** What a mat is found to be. */
interface MatConstants {
  readonly E: number;
  readonly nu12: number;
  readonly G12: number;
  readonly shear: number | undefined;
  readonly alpha: number | undefined;
  readonly beta: number | undefined;
}

/** Takes down the constants of a mat from those of its strands as a unidirectional ply. */
export function showMat(ud: Ply, model: MatModel, Q: ReducedStiffness, found: MatConstants, working: Working): void {
  const { E, nu12, G12, shear, alpha, beta } = found;
  const constants = { E1: E, E2: E, nu12, G12 };
  if (model === 'tsai-pagano') working.step('matEighths', { E_ud1: ud.E1, E_ud2: ud.E2, ...constants });
  else {
    const { U1, U4, U5 } = stiffnessInvariants(Q);
    working.step('matInvariants', { U1, U4, U5, ...constants });
  }
  const { G13: G_ud13, G23: G_ud23, expansion, moistureExpansion } = ud;
  if (shear !== undefined && G_ud13 !== undefined && G_ud23 !== undefined) {
    working.step('matShear', { G_ud13, G_ud23, G13: shear, G23: shear });
  }
  const [Q11, Q12, Q22] = Q;
  if (alpha !== undefined && expansion !== undefined) {
    const strands = { alpha_ud1: expansion.alpha1, alpha_ud2: expansion.alpha2 };
    working.step('matExpansion', { Q11, Q12, Q22, ...strands, alpha1: alpha, alpha2: alpha });
  }
  if (beta !== undefined && moistureExpansion !== undefined) {
    const strands = { beta_ud1: moistureExpansion.beta1, beta_ud2: moistureExpansion.beta2 };
    working.step('matSwelling', { Q11, Q12, Q22, ...strands, beta1: beta, beta2: beta });
  }
}
