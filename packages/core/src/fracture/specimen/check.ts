import { fail } from '../../problem/index.js';
import { inMillimetres, requirePositive } from '../../stitch/index.js';
import type { Arm, BridgingRow } from '../types.js';
import type { ModelRow } from './model.js';
import { rowLaw } from './row-law.js';

/** Stops unless a place lies strictly between 0 and an end. @throws out-of-range */
export function requireInside(name: string, place: number, end: number, of: string): void {
  if (place > 0 && place < end) return;
  fail({
    code: 'out-of-range',
    message: `${name} = ${inMillimetres(place)}, must be above 0 and below ${of} of ${inMillimetres(end)}`,
    allowed: `above 0, below ${inMillimetres(end)}`,
  });
}

/** Stops unless both arms are beams. @throws out-of-range */
export function checkArms(arms: readonly [Arm, Arm]): void {
  arms.forEach((arm, i) => {
    const of = (what: string) => `${what} of arm ${i + 1}`;
    requirePositive(of('thickness'), arm.thickness, inMillimetres);
    requirePositive(of('bendingStiffness'), arm.bendingStiffness, (value) => `${value} N m`);
    requirePositive(of('axialStiffness'), arm.axialStiffness, (value) => `${value} N/m`);
    requirePositive(of('shearStiffness'), arm.shearStiffness, (value) => `${value} N/m`);
    requirePositive(of('E3'), arm.E3, (value) => `${value} Pa`);
    if (arm.failureStrain === undefined) return;
    requirePositive(of('failure strain in tension'), arm.failureStrain.tension);
    requirePositive(of('failure strain in compression'), arm.failureStrain.compression);
  });
}

/** The rows as springs, in order of their place; rows without force are left out. @throws out-of-range, not-admissible see `rowLaw` */
export function modelRows(rows: readonly BridgingRow[], length: number, of: string): ModelRow[] {
  const made = rows.flatMap((row, index): ModelRow[] => {
    const name = `row ${index + 1}`;
    requireInside(`position of ${name}`, row.position, length, of);
    requirePositive(`penetrations of ${name}`, row.penetrations);
    const law = rowLaw(row, name);
    return law === undefined ? [] : [{ place: row.position, law, failure: row.failure, index }];
  });
  return made.sort((a, b) => a.place - b.place);
}

/** The least strain at which a surface of an arm breaks: bending puts one surface in tension, the other in compression. */
export function breakingStrain({ failureStrain }: Arm): number {
  return failureStrain === undefined
    ? Number.POSITIVE_INFINITY
    : Math.min(failureStrain.tension, failureStrain.compression);
}

/** Stops unless a coefficient of friction is one. @throws out-of-range */
export function requireFriction(friction: number): void {
  if (friction >= 0 && friction <= 2) return;
  fail({ code: 'out-of-range', message: `friction = ${friction}, must be 0 to 2`, allowed: '0 to 2' });
}

/** Stops unless steps can be divided by a number. @throws out-of-range */
export function requireRefine(refine: number): void {
  if (refine >= 1 && refine <= 100) return;
  fail({ code: 'out-of-range', message: `refine = ${refine}, must be 1 to 100`, allowed: '1 to 100' });
}
