import { demand, finite, positive, within } from './check.js';

const demandPhases = (Pf: number, Pm: number, Vf: number): void =>
  demand(
    positive('fibre property', Pf, ''),
    positive('resin property', Pm, ''),
    within('fibre volume fraction', Vf, 0, 1),
  );

/**
 * Phases in parallel: P = Pf Vf + Pm (1 - Vf). Gives E1 and nu12.
 * @param Pf Property of the fibre, any unit.
 * @param Pm The same property of the resin.
 * @param Vf Fibre volume fraction, 0 to 1.
 * @throws out-of-range Vf outside 0 to 1; not-a-number for a phase that is not finite.
 * @source Jones 1999, ch. 3 (recalled, not re-read).
 */
export function ruleOfMixtures(Pf: number, Pm: number, Vf: number): number {
  demand(finite('fibre property', Pf), finite('resin property', Pm), within('fibre volume fraction', Vf, 0, 1));
  return Pf * Vf + Pm * (1 - Vf);
}

/**
 * Phases in series: 1/P = Vf/Pf + (1 - Vf)/Pm. The lowest estimate of E2 and G12.
 * @param Pf Modulus of the fibre, Pa, more than 0.
 * @param Pm Modulus of the resin, Pa, more than 0.
 * @param Vf Fibre volume fraction, 0 to 1.
 * @throws out-of-range
 * @source Jones 1999, ch. 3 (recalled, not re-read).
 */
export function inverseRule(Pf: number, Pm: number, Vf: number): number {
  demandPhases(Pf, Pm, Vf);
  return 1 / (Vf / Pf + (1 - Vf) / Pm);
}

/**
 * The reduced contrast of the Halpin-Tsai equation: eta = (Pf/Pm - 1) / (Pf/Pm + xi).
 * @param xi Measure of reinforcement, 0 or more.
 * @source Halpin & Kardos 1976 (recalled, not re-read).
 */
export const halpinTsaiEta = (Pf: number, Pm: number, xi: number): number => (Pf / Pm - 1) / (Pf / Pm + xi);

/**
 * Halpin-Tsai: P = Pm (1 + xi eta Vf) / (1 - eta Vf), between the inverse rule (xi = 0) and the rule of mixtures
 * (xi to infinity). Usual xi: 2 for E2, 1 for G12 of round fibres in a square array.
 * @param Pf Modulus of the fibre, Pa, more than 0.
 * @param Pm Modulus of the resin, Pa, more than 0.
 * @param Vf Fibre volume fraction, 0 to 1.
 * @param xi Measure of reinforcement, 0 or more, finite.
 * @throws out-of-range
 * @source Halpin & Kardos 1976; Jones 1999, ch. 3 (recalled, not re-read).
 */
export function halpinTsai(Pf: number, Pm: number, Vf: number, xi: number): number {
  demandPhases(Pf, Pm, Vf);
  demand(within('xi', xi, 0, Number.POSITIVE_INFINITY));
  const eta = halpinTsaiEta(Pf, Pm, xi);
  return (Pm * (1 + xi * eta * Vf)) / (1 - eta * Vf);
}

/**
 * Chamis's square-root form: P = Pm / (1 - sqrt(Vf) (1 - Pm/Pf)), for E2 and G12.
 * @param Pf Modulus of the fibre across its axis, or its shear modulus, Pa, more than 0.
 * @param Pm Modulus of the resin, Pa, more than 0.
 * @param Vf Fibre volume fraction, 0 to 1.
 * @throws out-of-range
 * @source Chamis 1984 (recalled, not re-read).
 */
export function chamis(Pf: number, Pm: number, Vf: number): number {
  demandPhases(Pf, Pm, Vf);
  return Pm / (1 - Math.sqrt(Vf) * (1 - Pm / Pf));
}
