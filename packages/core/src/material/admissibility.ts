import type { Problem } from '../problem/index.js';
import { between, finite, positive } from './check.js';
import type { Ply } from './types.js';

/** The elastic constants that must fit together; moduli in Pa. */
export type ElasticConstants = Pick<Ply, 'E1' | 'E2' | 'G12' | 'nu12' | 'G13' | 'G23' | 'nu23'>;

/**
 * Everything that makes a set of constants thermodynamically impossible, empty when they can exist:
 * E1, E2, G12, G13, G23 > 0; |nu12| < sqrt(E1/E2); and where nu23 is given, for a ply alike in 2 and 3,
 * -1 < nu23 < 1 - 2 nu12^2 E2/E1.
 * @param constants Pa.
 * @returns Problems with code `not-admissible`, each naming the bound that is broken.
 * @source Jones 1999, sec. 2.4 (recalled, not re-read).
 */
export function admissibility(constants: ElasticConstants): Problem[] {
  const { E1, E2, G12, nu12, G13, G23, nu23 } = constants;
  const modulus = (name: string, value: number) => positive(name, value, 'Pa', 'not-admissible');
  const moduli = [
    modulus('E1', E1),
    modulus('E2', E2),
    modulus('G12', G12),
    G13 === undefined ? undefined : modulus('G13', G13),
    G23 === undefined ? undefined : modulus('G23', G23),
    finite('nu12', nu12),
  ].filter((problem) => problem !== undefined);
  if (moduli.length > 0) return moduli;
  const bound = Math.sqrt(E1 / E2);
  const inPlane = between('nu12', nu12, -bound, bound, 'not-admissible');
  if (inPlane !== undefined) {
    return [
      { ...inPlane, hint: 'the bound is sqrt(E1/E2); nu12 is the contraction across the fibre per strain along it' },
    ];
  }
  if (nu23 === undefined) return [];
  const across = between('nu23', nu23, -1, 1 - (2 * nu12 * nu12 * E2) / E1, 'not-admissible');
  return across === undefined ? [] : [{ ...across, hint: 'the upper bound is 1 - 2 nu12^2 E2/E1' }];
}
