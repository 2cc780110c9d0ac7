import { fail } from '../../problem/index.js';
import type { Note } from '../../provenance/index.js';
import { inMillimetres } from '../../stitch/index.js';

/** Bond that has to be left ahead of the tip at the end: there the model takes the bond as endless. */
export interface BondLeft {
  /** Length in which the arms give way at their root, m. */
  readonly root: number;
  /** Where the bond ends, and what that is called, m. */
  readonly length: number;
  readonly name: 'length' | 'depth';
}

/** Root lengths of bond that are left. */
const roots = 4;

/** Where growth has to end, m. */
export const endOfGrowth = ({ root, length }: BondLeft): number => length - roots * root;

/** Stops where a bond is too short for its arms, or a crack leaves no room to grow. @throws out-of-range */
export function requireRoom(bond: BondLeft, crackLength: number): void {
  const reserve = roots * bond.root;
  const least = inMillimetres(roundUp(crackLength + reserve));
  if (endOfGrowth(bond) > crackLength) return;
  const given = `${bond.name} = ${inMillimetres(bond.length)}`;
  const crack = crackLength > 0 ? ` beyond a crack of ${inMillimetres(crackLength)}` : '';
  fail({
    code: 'out-of-range',
    message: `${given}, must be above ${least}: arms this thick and stiff need ${inMillimetres(reserve)} of sound bond${crack}, ${roots} times the length in which their root gives way`,
    allowed: `above ${least}`,
    hint: crackLength > 0 ? 'a longer bond, a shorter crack, or thinner arms' : 'a deeper bond, or thinner arms',
  });
}

/** To four digits, so that what is shown is enough. */
function roundUp(length: number): number {
  const unit = 10 ** (Math.floor(Math.log10(length)) - 3);
  return Math.ceil(length / unit) * unit;
}

/** Says why a test ends before the end of the bond. */
export function bondLeftNote(bond: BondLeft, crackLength: number): readonly Note[] {
  if (crackLength < endOfGrowth(bond) * (1 - 1e-9)) return [];
  const left = inMillimetres(bond.length - crackLength);
  const text = `The test ends with ${left} of bond left, ${roots} root lengths of the arms: closer to its end the bond is no longer long.`;
  return [{ level: 'assumption', text }];
}
