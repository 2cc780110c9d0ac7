import type { BridgingCurve, BridgingLaw } from '../bridging-types.js';

/** Area under a curve of straight lines, J. */
export function areaUnder({ opening, force }: BridgingCurve): number {
  let area = 0;
  for (let i = 1; i < opening.length; i++) {
    area += (((force[i] ?? 0) + (force[i - 1] ?? 0)) * ((opening[i] ?? 0) - (opening[i - 1] ?? 0))) / 2;
  }
  return area;
}

/** The greatest force of a curve and where it is first reached. */
export function peakOf({ opening, force }: BridgingCurve): BridgingLaw['peak'] {
  let at = 0;
  for (let i = 1; i < force.length; i++) if ((force[i] ?? 0) > (force[at] ?? 0)) at = i;
  return { force: force[at] ?? 0, opening: opening[at] ?? 0 };
}
