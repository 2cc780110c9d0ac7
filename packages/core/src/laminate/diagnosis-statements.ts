import { formatQuantity, type UnitSystem } from '../quantity/index.js';
import type { Diagnosis } from './diagnosis-types.js';

type Verdict = Omit<Diagnosis, 'statements' | 'notes' | 'sources'>;

/** A ratio in words: three significant digits from 0.1 % on, `under 0.1 %` below. */
function percent(ratio: number): string {
  if (ratio === 0) return '0 %';
  return ratio < 0.001 ? 'under 0.1 %' : `${Number((100 * ratio).toPrecision(3))} %`;
}

/** The diagnosis of a stack as sentences without final stop, each with the number that it rests on. */
export function diagnosisStatements(d: Verdict, units: UnitSystem = 'metric'): string[] {
  return [
    symmetry(d),
    balance(d),
    direction(d),
    d.quasiIsotropic
      ? 'quasi-isotropic in plane: A is that of an isotropic sheet'
      : `not quasi-isotropic: A departs from that of an isotropic sheet by ${percent(d.measures.anisotropy)}`,
    d.homogenised
      ? 'homogenised: 12 D/t³ equals A/t, so bending does not depend on the order of the plies'
      : `not homogenised: 12 D/t³ departs from A/t by ${percent(d.measures.inhomogeneity)}`,
    bendTwist(d),
    tenPercent(d),
    ...(d.largestBlock === undefined ? [] : [block(d.largestBlock, units)]),
    `largest angle between neighbouring plies: ${plain(d.largestAngleJump)}°`,
  ];
}

function symmetry({ symmetric, antisymmetric, uncoupled, measures }: Verdict): string {
  if (symmetric) return 'symmetric: every ply has its mirror image, the coupling B is zero';
  const coupling = uncoupled
    ? 'the coupling B is zero all the same'
    : `the coupling B reaches ${percent(measures.coupling)} of what a laminate with all its stiffness in one half would have`;
  const unmirrored = `${percent(measures.unmirroredShare)} of the thickness lacks its mirror image`;
  return antisymmetric ? `antisymmetric: ${coupling}` : `not symmetric: ${unmirrored}, ${coupling}`;
}

function balance({ balanced, measures }: Verdict): string {
  if (balanced) return 'balanced: every off-axis ply has its opposite, A16 and A26 are zero';
  const share = `${percent(measures.unbalancedShare)} of the thickness is off axis without its opposite`;
  return `not balanced: ${share}, A16 and A26 reach ${percent(measures.shearCoupling)} of the larger of A11 and A22`;
}

function direction({ crossPly, anglePly, measures }: Verdict): string {
  if (crossPly) return 'cross-ply: all fibres run along 0° and 90°';
  const share = `fibres in ${percent(measures.offAxisShare)} of the thickness run along neither 0° nor 90°`;
  return anglePly ? 'angle-ply: all fibres run along one angle and its opposite' : `not cross-ply: ${share}`;
}

function bendTwist({ measures }: Verdict): string {
  return measures.bendTwist < 1e-6
    ? 'bending does not twist: D16 and D26 are zero'
    : `bending twists: D16 and D26 reach ${percent(measures.bendTwist)} of the larger of D11 and D22`;
}

function tenPercent({ tenPercentRule, directionShares, measures }: Verdict): string {
  const least = directionShares.find(({ share }) => share === measures.leastDirectionShare);
  const share = `the least, along ${plain(least?.angle ?? 0)}°, is ${percent(measures.leastDirectionShare)}`;
  return `ten-percent rule ${tenPercentRule ? 'kept' : 'missed'}: of the shares along 0°, 45°, -45° and 90° ${share}`;
}

function block({ count, thickness, angle }: NonNullable<Verdict['largestBlock']>, units: UnitSystem): string {
  const plies = count === 1 ? '1 ply' : `${count} plies`;
  return `largest block of one angle: ${plies} at ${plain(angle)}°, ${formatQuantity(thickness, 'length', { units })}`;
}

function plain(value: number): string {
  return String(Number(value.toPrecision(4)));
}
