import { type FreeExpansion, type Laminate, moistureExpansionOf, thermalExpansionOf } from '../../laminate/index.js';
import { defined } from '../assemble/constituents.js';

/** How an unloaded laminate answers to heat and to moisture; each where all its plies have the coefficients. */
export interface LaminateExpansion {
  readonly thermal?: FreeExpansion;
  readonly moisture?: FreeExpansion;
}

/** Expansion of a laminate by heat and moisture; undefined when it has neither. */
export function expansionOf(laminate: Laminate): LaminateExpansion | undefined {
  const { plies } = laminate;
  const thermal = plies.every((ply) => ply.expansion !== undefined) ? thermalExpansionOf(laminate) : undefined;
  const moisture = plies.every((ply) => ply.moistureExpansion !== undefined)
    ? moistureExpansionOf(laminate)
    : undefined;
  if (thermal === undefined && moisture === undefined) return undefined;
  return defined({ thermal, moisture });
}

const expansionPart = ({ strain, curvature }: FreeExpansion) => ({ strain: [...strain], curvature: [...curvature] });

/** The same in the JSON document: strain and curvature, 1/m, per kelvin and per mass fraction of moisture. */
export function expansionData({ thermal, moisture }: LaminateExpansion): Record<string, unknown> {
  return {
    ...(thermal === undefined ? {} : { thermal: expansionPart(thermal) }),
    ...(moisture === undefined ? {} : { moisture: expansionPart(moisture) }),
  };
}
