import { choice } from '../../problem/index.js';

/** The failure criteria, in the order in which a report lists them. */
export const failureCriteria = ['maxStress', 'maxStrain', 'tsaiHill', 'tsaiWu', 'hashin', 'puck'] as const;

/** A failure criterion by its name; see {@link failureCriteria}. */
export type Criterion = (typeof failureCriteria)[number];

/** Which strengths Tsai-Hill takes: by the sign of each stress, always the tensile ones, or X of the cross term by the sign of σ2. */
export const tsaiHillVariants = ['sign', 'tensile', 'crossTerm'] as const;

/** Which strengths Tsai-Hill takes: by the sign of each stress, always the tensile ones, or X of the cross term by the sign of σ2. */
export type TsaiHillVariant = (typeof tsaiHillVariants)[number];

/** Inclinations p⊥∥ of Puck's curve at σ2 = 0, toward tension (`plus`) and compression (`minus`). */
export interface PuckInclination {
  readonly plus: number;
  readonly minus: number;
}

/** The pairs that the criterion's authors recommend. */
export const puckInclinations = {
  carbon: { plus: 0.35, minus: 0.3 },
  glass: { plus: 0.3, minus: 0.25 },
} as const satisfies Record<string, PuckInclination>;

/** What a criterion leaves to choose; each one reads its own and ignores the rest. */
export interface StrengthOptions {
  /** Tsai-Hill; `sign` when not given. */
  readonly variant?: TsaiHillVariant;
  /** Tsai-Wu: F12 / √(F11 F22), between -1 and 1, both excluded; -1/2 when not given. */
  readonly F12star?: number;
  /** Hashin: strength in shear across the fibre, Pa; Yc/2 when not given. */
  readonly transverseShearStrength?: number;
  /** Hashin: share of shear in the tension of fibres, 0 to 1; 1 when not given. */
  readonly alpha?: number;
  /** Puck: `carbon` (0.35, 0.30) when not given, `glass` (0.30, 0.25), or a pair of one's own. */
  readonly puck?: keyof typeof puckInclinations | PuckInclination;
}

/** The pair that the options choose. @throws not-a-choice for another name */
export function puckInclination({ puck = 'carbon' }: StrengthOptions): PuckInclination {
  if (typeof puck === 'object') return puck;
  return puckInclinations[choice('puck', puck, Object.keys(puckInclinations) as (keyof typeof puckInclinations)[])];
}
