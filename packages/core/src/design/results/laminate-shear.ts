import type { TransverseShear } from '../../laminate/index.js';

/** Shear stiffness through the thickness in the JSON document: H in N/m with its factors and plain sums. */
export function transverseShearData({ H, kx, ky, sums }: TransverseShear): Record<string, unknown> {
  return { H: H.map((row) => [...row]), kx, ky, sums: [...sums] };
}
