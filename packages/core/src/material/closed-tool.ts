import { fail } from '../problem/index.js';
import type { Working } from '../working/index.js';
import { demand, positive, shown, within } from './check.js';
import { fibreFractionLimits } from './fibre-content.js';

/** What fills a closed tool. Metres. */
export interface GapFilling {
  /** Sum of w / rho_f over all reinforcements (see `solidFibreThickness`), more than 0. */
  readonly fibreThickness: number;
  /** Distance between the tool faces, more than 0. */
  readonly gap: number;
  /** Cores and plies of given thickness, which do not compress; 0 when not given. */
  readonly fixedThickness?: number;
}

const mm = (metres: number): string => `${shown(Number((metres * 1e3).toPrecision(3)))} mm`;
const usualFraction = 0.55;

/**
 * The one fibre fraction that all reinforcements take when the tool fixes the thickness:
 * Vf = fibreThickness / (gap - fixedThickness).
 * @param working takes the step down, when given.
 * @returns Fibre volume fraction, 0.1 to 0.75.
 * @throws not-computable when cores and fixed plies already fill the gap.
 * @throws out-of-range when the fraction would lie outside 0.1 to 0.75.
 */
export function fibreVolumeFractionInGap(
  { fibreThickness, gap, fixedThickness = 0 }: GapFilling,
  working?: Working,
): number {
  demand(
    positive('fibre thickness', fibreThickness, 'm'),
    positive('closed tool gap', gap, 'm'),
    within('fixed thickness', fixedThickness, 0, Number.POSITIVE_INFINITY, 'm'),
  );
  const { lowest, highest } = fibreFractionLimits;
  const hint = `a gap of ${mm(fixedThickness + fibreThickness / usualFraction)} would give ${usualFraction}`;
  if (fixedThickness >= gap) {
    fail({
      code: 'not-computable',
      message: `closed tool gap ${mm(gap)} is filled by ${mm(fixedThickness)} of core and fixed plies`,
      allowed: `a gap of more than ${mm(fixedThickness)}`,
      hint,
    });
  }
  const Vf = fibreThickness / (gap - fixedThickness);
  if (Vf < lowest || Vf > highest) {
    fail({
      code: 'out-of-range',
      message: `closed tool gap ${mm(gap)} leaves fibre fraction ${Vf.toPrecision(2)}, allowed ${lowest} to ${highest}`,
      allowed: `a gap of ${mm(fixedThickness + fibreThickness / highest)} to ${mm(fixedThickness + fibreThickness / lowest)}`,
      hint,
    });
  }
  working?.step('closedTool', { t_solid: fibreThickness, t_gap: gap, t_fixed: fixedThickness, V_f: Vf });
  return Vf;
}
