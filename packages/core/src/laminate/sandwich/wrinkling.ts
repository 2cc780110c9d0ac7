import { fail } from '../../problem/index.js';

/** Coefficient of face wrinkling by the energy of a core zone in which the waves die out linearly: 3/36^(1/3) = 0.909. */
export const wrinklingCoefficientInTheory = 3 / Math.cbrt(36);

/** The coefficient usual in design, for faces that are not perfectly flat. */
export const wrinklingCoefficientInDesign = 0.5;

/** Moduli that decide over wrinkling, Pa: of the face in bending, of the core through its thickness, of the core in shear. */
export interface WrinklingModuli {
  readonly Ef: number;
  readonly Ec: number;
  readonly Gc: number;
}

/**
 * Compression of a face at which it wrinkles on a core deeper than the waves reach: σ = c (Ef Ec Gc)^(1/3).
 *
 * @param moduli Pa, more than 0
 * @param coefficient 0.5 when not given; theory gives 0.909
 * @returns Pa, positive
 * @throws out-of-range when a modulus or the coefficient is not a finite number above 0
 * @source Hoff & Mautner 1945
 */
export function wrinklingStress(moduli: WrinklingModuli, coefficient = wrinklingCoefficientInDesign): number {
  demandPositive({ ...moduli, coefficient });
  return coefficient * Math.cbrt(moduli.Ef * moduli.Ec * moduli.Gc);
}

/**
 * Depth to which a wrinkling face moves the core: w = t (3/4 Ef Ec / Gc²)^(1/3), from the minimum of the same energy.
 *
 * @param thickness of the face, m
 * @returns m; beyond half the core's thickness the waves of both faces meet
 * @throws out-of-range as `wrinklingStress`
 * @source Hoff & Mautner 1945
 */
export function wrinklingDepth(moduli: WrinklingModuli, thickness: number): number {
  demandPositive({ ...moduli, thickness });
  return thickness * Math.cbrt((0.75 * moduli.Ef * moduli.Ec) / moduli.Gc ** 2);
}

/**
 * Wrinkling on an isotropic core of any depth as elastic half space: σ = B1 Ef^(1/3) Ec^(2/3), B1 = 3 (12 (3 - nu)² (1 + nu)²)^(-1/3).
 *
 * The perfect face, without a reduction for waviness: to compare with the coefficient of theory.
 *
 * @param Ef of the face, Pa @param Ec of the core, Pa @param nu Poisson ratio of the core, over -1 to 0.5
 * @returns Pa, positive
 * @throws out-of-range for a modulus that is not above 0 or a Poisson ratio outside its range
 * @source Allen 1969, ch. 8
 */
export function deepCoreWrinklingStress(Ef: number, Ec: number, nu: number): number {
  demandPositive({ Ef, Ec });
  if (!(nu > -1 && nu <= 0.5)) {
    fail({ code: 'out-of-range', message: `nu is ${nu}`, allowed: 'more than -1, at most 0.5' });
  }
  const B1 = 3 / Math.cbrt(12 * ((3 - nu) * (1 + nu)) ** 2);
  return B1 * Math.cbrt(Ef * Ec * Ec);
}

function demandPositive(values: Readonly<Record<string, number>>): void {
  for (const [name, value] of Object.entries(values)) {
    if (!(value > 0 && Number.isFinite(value))) {
      fail({ code: 'out-of-range', message: `${name} is ${value}`, allowed: 'a finite number above 0' });
    }
  }
}
