import type { Load, ProgressiveOptions, StrengthOptions } from '../../laminate/index.js';
import { defined } from '../assemble/constituents.js';
import type { LoadModel } from '../model.js';

/** The load as the laminate floor takes it. */
export function loadOf(model: LoadModel): Load {
  const { N, M, strain, curvature, temperatureChange, temperatureGradient, moisture } = model;
  return defined({ N, M, strain, curvature, temperatureChange, temperatureGradient, moisture }) as Load;
}

/** The part of a load that is heat and moisture, with nothing that holds the laminate. */
export function surroundingsOf({
  temperatureChange,
  temperatureGradient,
  moisture,
}: Load): Pick<Load, 'temperatureChange' | 'temperatureGradient' | 'moisture'> {
  return defined({ temperatureChange, temperatureGradient, moisture });
}

/** Whether a load has a force, moment or deformation other than 0. */
export const isMechanical = ({ N = nothing, M = nothing, strain = nothing, curvature = nothing }: Load): boolean =>
  [...N, ...M, ...strain, ...curvature].some((value) => value !== null && value !== 0);

const nothing = [null, null, null] as const;

/** Whether a load prescribes a deformation, zero or not. */
export const isHeld = ({ strain = nothing, curvature = nothing }: Load): boolean =>
  [...strain, ...curvature].some((value) => value !== null);

/** What the design chooses of the failure layer by layer, by Hashin when it names no criterion. */
export function progressiveOptionsOf(model: LoadModel): ProgressiveOptions {
  const { criterion = 'hashin', discount, remainingStiffness, collapse } = model.strength ?? {};
  return { criterion, ...strengthOptionsOf(model), ...defined({ discount, factor: remainingStiffness, collapse }) };
}

/** What the design chooses of the criteria. */
export function strengthOptionsOf({ strength = {} }: LoadModel): StrengthOptions {
  const { tsaiHill, F12star, transverseShearStrength, hashinAlpha, puck } = strength;
  return defined({
    variant: tsaiHill,
    F12star,
    transverseShearStrength,
    alpha: hashinAlpha,
    puck: typeof puck === 'object' ? { plus: puck[0] ?? 0, minus: puck[1] ?? 0 } : puck,
  });
}
