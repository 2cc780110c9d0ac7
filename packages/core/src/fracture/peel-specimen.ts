import { inMillimetres, requirePositive } from '../stitch/index.js';
import { bedLength } from './bed.js';
import type { PeelCase, PeelRow } from './peel-case.js';
import { type NaturalUnits, naturalArm, naturalUnits } from './peel-model.js';
import type { PathLimits } from './peel-path.js';
import { symmetricPeel } from './peel-symmetric.js';
import { unequalPeel } from './peel-unequal.js';
import { rowStages } from './row-stages.js';
import { type BondLeft, endOfGrowth, requireRoom } from './specimen/bond-left.js';
import { checkArms, modelRows, requireInside } from './specimen/check.js';
import type { ModelRow } from './specimen/model.js';
import { planOf } from './specimen/plan.js';
import { checkRowsMet, mostRowsOf } from './specimen/row-limits.js';
import type { Specimen } from './specimen/types.js';
import type { Arm } from './types.js';

/**
 * A T-peel: two arms bonded from the front on, their free ends pulled apart by grips in which they may turn. Places from the grips, along the
 * arms as bonded. Rows behind the front at the start are taken as cut.
 */
export interface PeelSpecimen extends Specimen {
  /** From the grips to the end of the bond, m. */
  readonly length: number;
}

/** A specimen made ready in natural units, and what leads back to its own. */
export interface PreparedPeel {
  readonly peel: PeelCase;
  readonly limits: PathLimits;
  readonly units: NaturalUnits;
  readonly rows: readonly ModelRow[];
  readonly bond: BondLeft;
}

/** Largest steps of growth: to the distance of two rows, and to the whole growth. */
const perRow = 12;
const overall = 40;
/** Points to a bending length √(EI/P). */
const fineness = 3;

const alike = (a: Arm, b: Arm): boolean =>
  a.bendingStiffness === b.bendingStiffness &&
  a.axialStiffness === b.axialStiffness &&
  a.shearStiffness === b.shearStiffness &&
  a.E3 === b.E3 &&
  a.thickness === b.thickness &&
  a.failureStrain?.tension === b.failureStrain?.tension &&
  a.failureStrain?.compression === b.failureStrain?.compression;

export const hasLikeArms = ({ arms: [upper, lower] }: PeelSpecimen): boolean => alike(upper, lower);

/**
 * Checks a specimen and writes it in natural units.
 *
 * @throws out-of-range a size not above 0, a front or a row outside the bond, no room for growth, a curve that is not one, too many rows; not-admissible see `rowLaw`
 */
export function preparePeel(specimen: PeelSpecimen): PreparedPeel {
  const { arms, width, crackLength, length, bondToughness, refine = 1 } = specimen;
  checkArms(arms);
  requirePositive('width', width, inMillimetres);
  requirePositive('length', length, inMillimetres);
  requirePositive('bondToughness', bondToughness, (value) => `${value} J/m²`);
  requireInside('crackLength', crackLength, length, 'length');
  // The bonded part is taken as endless.
  const bond: BondLeft = { root: Math.max(...arms.map(bedLength)), length, name: 'length' };
  requireRoom(bond, crackLength);
  const plan = planOf(specimen, endOfGrowth(bond));
  const rows = modelRows(specimen.rows, length, 'length').filter(({ place }) => place >= crackLength);
  checkRowsMet(rows, plan.longest, specimen.mostRows ?? mostRowsOf.peel);
  const units = naturalUnits(arms[0], bondToughness);
  const [upper, lower] = [naturalArm(arms[0], units), naturalArm(arms[1], units)];
  const same = hasLikeArms(specimen);
  const peelRows: PeelRow[] = rows.map(({ place, law }) => ({
    position: place / units.length,
    law: rowStages(law, units.length, units.force * width),
  }));
  const to = plan.longest / units.length;
  const from = crackLength / units.length;
  return {
    peel: {
      model: same ? symmetricPeel(upper) : unequalPeel(upper, lower),
      rows: peelRows,
      limits: (same ? [arms[0]] : arms).map(({ thickness, failureStrain }) => ({
        half: thickness / (2 * units.length),
        tension: failureStrain?.tension ?? Number.POSITIVE_INFINITY,
        compression: failureStrain?.compression ?? Number.POSITIVE_INFINITY,
      })),
      fineness: fineness * refine,
    },
    limits: {
      from,
      to,
      growth: Math.min((to - from) / overall, spacing(peelRows, from, to) / perRow),
      displacement: plan.displacement / units.length,
      refine,
    },
    units,
    rows,
    bond,
  };
}

/** Mean distance of the rows that the front meets; the whole growth for fewer than two. */
function spacing(rows: readonly PeelRow[], from: number, to: number): number {
  const met = [...new Set(rows.map(({ position }) => position).filter((place) => place > from && place < to))];
  if (met.length < 2) return to - from;
  return (Math.max(...met) - Math.min(...met)) / (met.length - 1);
}
