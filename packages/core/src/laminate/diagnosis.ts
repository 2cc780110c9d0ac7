import { stiffnessInvariants } from '../material/index.js';
import type { Note } from '../provenance/index.js';
import { diagnosisStatements } from './diagnosis-statements.js';
import type { Diagnosis, DiagnosisMeasures } from './diagnosis-types.js';
import { isCloth } from './fibre-directions.js';
import { entry, largest } from './matrix3.js';
import { type StackPattern, stackPattern } from './stack-pattern.js';
import { stiffness } from './stiffness.js';
import type { Laminate, Matrix3, Stiffness } from './types.js';

/** Properties judged by stiffness hold when they are missed by less than this. */
const tolerance = 1e-6;

/**
 * Tells what kind of laminate a stack makes, and by how much it misses being each other kind.
 *
 * Symmetry and balance are judged ply by ply (`symmetric`, `balanced`) and from B, A16 and A26 (`uncoupled`, the measures);
 * the rest from A and D, with a tolerance of 1e-6.
 *
 * @throws not-admissible as `stiffness`
 * @source Jones 1999, ch. 4 (the kinds); ten-percent rule: common practice, no source
 */
export function diagnosis(laminate: Laminate): Diagnosis {
  const s = stiffness(laminate);
  const pattern = stackPattern(laminate);
  const measures = measure(s, pattern);
  const symmetric = pattern.unmirroredShare === 0;
  const verdict = {
    symmetric,
    antisymmetric: pattern.antisymmetric && !symmetric,
    uncoupled: measures.coupling < tolerance,
    balanced: pattern.unbalancedShare === 0,
    crossPly: pattern.offAxisShare === 0 && pattern.largestBlock !== undefined,
    anglePly: pattern.anglePly,
    quasiIsotropic: measures.anisotropy < tolerance,
    homogenised: measures.inhomogeneity < tolerance,
    tenPercentRule: measures.leastDirectionShare >= 0.1 - 1e-9,
    measures,
    directionShares: pattern.directionShares,
    ...(pattern.largestBlock === undefined ? {} : { largestBlock: pattern.largestBlock }),
    largestAngleJump: pattern.largestAngleJump,
  };
  return {
    ...verdict,
    statements: diagnosisStatements(verdict),
    notes: laminate.plies.some(isCloth) ? [...s.notes, clothNote] : s.notes,
    sources: s.sources,
  };
}

const clothNote: Note = {
  level: 'assumption',
  text: 'A ply whose smaller modulus is at least half of the larger counts as cloth, with fibres along and across.',
};

function measure({ A, B, D, thickness: t }: Stiffness, pattern: StackPattern): DiagnosisMeasures {
  return {
    coupling: largest(B) / ((largest(A) * t) / 4),
    shearCoupling: shear(A),
    bendTwist: shear(D),
    anisotropy: anisotropy(A),
    inhomogeneity: inhomogeneity(A, D, t),
    unmirroredShare: pattern.unmirroredShare,
    unbalancedShare: pattern.unbalancedShare,
    offAxisShare: pattern.offAxisShare,
    leastDirectionShare: Math.min(...pattern.directionShares.map(({ share }) => share)),
  };
}

function shear(m: Matrix3): number {
  return Math.max(Math.abs(entry(m, 0, 2)), Math.abs(entry(m, 1, 2))) / Math.max(entry(m, 0, 0), entry(m, 1, 1));
}

function anisotropy(A: Matrix3): number {
  const { U1, U4, U5 } = stiffnessInvariants([entry(A, 0, 0), entry(A, 0, 1), entry(A, 1, 1), entry(A, 2, 2)]);
  const isotropic = [U1, U4, 0, U4, U1, 0, 0, 0, U5];
  return Math.max(...A.flat().map((value, i) => Math.abs(value - (isotropic[i] ?? 0)))) / U1;
}

function inhomogeneity(A: Matrix3, D: Matrix3, t: number): number {
  const bending = D.flat().map((value) => (12 * value) / t ** 3);
  return Math.max(...A.flat().map((value, i) => Math.abs((bending[i] ?? 0) - value / t))) / (largest(A) / t);
}
