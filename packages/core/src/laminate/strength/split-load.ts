import type { Components, Load } from '../load.js';

/** A load in the two parts of the strength calculation. */
export interface SplitLoad {
  /** What the strength ratio multiplies: forces and prescribed deformation. */
  readonly mechanical: Load;
  /** What it leaves alone: heat and moisture, with prescribed deformation held at zero; undefined when there is none. */
  readonly residual: Load | undefined;
}

/** Splits a load, so that the two responses add up to the response to the whole. */
export function splitLoad(load: Load): SplitLoad {
  const { temperatureChange = 0, temperatureGradient = 0, moisture = 0, ...mechanical } = load;
  const none = temperatureChange === 0 && temperatureGradient === 0 && moisture === 0;
  return {
    mechanical,
    residual: none ? undefined : { temperatureChange, temperatureGradient, moisture, ...held(load) },
  };
}

function held({ strain, curvature }: Load): Load {
  return {
    ...(strain === undefined ? {} : { strain: zeroed(strain) }),
    ...(curvature === undefined ? {} : { curvature: zeroed(curvature) }),
  };
}

function zeroed([x, y, xy]: Components): Components {
  const zero = (value: number | null): 0 | null => (value === null ? null : 0);
  return [zero(x), zero(y), zero(xy)];
}
