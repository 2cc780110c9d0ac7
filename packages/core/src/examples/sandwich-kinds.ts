import { deepCoreWrinklingStress, wrinklingCoefficientInTheory, wrinklingStress } from '../laminate/index.js';
import type { ComputedValues } from './types.js';

/** Wrinkling stress with waves that die out linearly, over (Ef Ec Gc)^(1/3). */
export const wrinklingCoefficient = (): ComputedValues => ({
  c: wrinklingStress({ Ef: 1, Ec: 1, Gc: 1 }, wrinklingCoefficientInTheory),
});

/** Wrinkling stress on a deep isotropic core, over Ef^(1/3) Ec^(2/3). */
export const wrinklingDeepCore = ({ nu }: { nu: number }): ComputedValues => ({
  B1: deepCoreWrinklingStress(1, 1, nu),
});
