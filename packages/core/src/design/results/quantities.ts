import type { KindName } from '../../quantity/index.js';

/** The kind of a number in the JSON report by the last name of its path. */
const byName: Readonly<Record<string, KindName>> = {
  thickness: 'length',
  addedThickness: 'length',
  dryThickness: 'length',
  zToolSide: 'length',
  zBagSide: 'length',
  gap: 'length',
  arealMass: 'arealMass',
  fibreArealMass: 'arealMass',
  resinArealMass: 'arealMass',
  addedArealMass: 'arealMass',
  threadMassPerArea: 'arealMass',
  density: 'density',
  fibreVolumeFraction: 'fraction',
  E1: 'modulus',
  E2: 'modulus',
  G12: 'modulus',
  Ex: 'modulus',
  Ey: 'modulus',
  Gxy: 'modulus',
  A: 'forcePerLength',
  B: 'couplingStiffness',
  D: 'bendingStiffness',
  N: 'forcePerLength',
  M: 'momentPerLength',
  strain: 'strain',
  strain12: 'strain',
  curvature: 'curvature',
  stress: 'stress',
  stress12: 'stress',
  angle: 'angle',
  penetrationDensity: 'perArea',
  holeDensity: 'perArea',
  arealFraction: 'fraction',
  arealFractionAbove: 'fraction',
  arealFractionBelow: 'fraction',
  bundleArealFraction: 'fraction',
  netWidth: 'fraction',
  threadLengthPerArea: 'lengthPerArea',
  threadLengthPerRowLength: 'lengthPerLength',
  threadLengthPerStitch: 'length',
  threadMassPerRowLength: 'massPerLength',
  rowLengthPerArea: 'lengthPerArea',
  threadDiameter: 'length',
  underThreadDiameter: 'length',
  bundleDiameter: 'length',
  needleDiameter: 'length',
  holeWidth: 'length',
  meanRun: 'length',
  nearestNeighbour: 'length',
  sewingTime: 'time',
};

/** Groups whose members are pure numbers, whatever their names mean elsewhere. */
const pureNumbers: ReadonlySet<string> = new Set(['laminationParameters', 'measures']);

/** What kind of quantity stands at a path of the JSON report; a plain number when its name says nothing else. */
export function kindAt(path: readonly string[]): KindName {
  if (path.some((part) => pureNumbers.has(part))) return 'number';
  for (let i = path.length - 1; i >= 0; i--) {
    const part = path[i] ?? '';
    if (/^\d+$/.test(part)) continue;
    return byName[part] ?? 'number';
  }
  return 'number';
}
