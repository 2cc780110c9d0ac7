import type { Arm, CouponSpecimen } from '../../fracture/index.js';
import type { Path, Problem } from '../../problem/index.js';
import { formatQuantity } from '../../quantity/index.js';
import type { Design } from '../read.js';
import type { CouponEntry } from '../schema/design.js';
import { defined } from './constituents.js';

/** A length in words, in the units of the design. */
export type Show = (length: number) => string;

export const lengthsOf =
  ({ units = 'metric' }: Design): Show =>
  (length) =>
    formatQuantity(length, 'length', { units });

/** Where the growth of a coupon ends at the latest, m, in words, and the key that says so. */
interface End {
  readonly place: number;
  readonly words: string;
}

/** Up to where a crack can be; the coupon has the keys of its type. */
function crackEnd({ type, length = 0, span = 0, loadSpan = 0, depth = 0 }: CouponEntry): End {
  if (type === 'wedge') return { place: depth, words: '`depth`' };
  if (type !== 'enf') return { place: length, words: '`length`' };
  return loadSpan === 0
    ? { place: span / 2, words: 'the load at half the `span`' }
    : { place: (span + loadSpan) / 2, words: 'the load that is farther away' };
}

/** End of the bond, m from where places count. */
export function bondEnd({ type, length = 0, span = 0, overhang = 0, depth = 0 }: CouponEntry): number {
  if (type === 'wedge') return depth;
  return type === 'enf' ? span + overhang : length;
}

/** Cracks and loads that lie outside of the coupon. */
export function placeProblems(entry: CouponEntry, path: Path, show: Show): Problem[] {
  const { crackLength, span = 0, loadSpan = 0, until } = entry;
  if (entry.type === 'enf' && loadSpan >= span) {
    return [
      {
        code: 'out-of-range',
        message: `loadSpan = ${show(loadSpan)}, must be below the span of ${show(span)}`,
        allowed: `above 0, below ${show(span)}`,
        path: [...path, 'loadSpan'],
      },
    ];
  }
  const end = crackEnd(entry);
  const problems: Problem[] = [];
  const beyond = (value: number, key: readonly string[]): void => {
    if (value < end.place) return;
    problems.push({
      code: 'out-of-range',
      message: `${key.join('.')} = ${show(value)}, must end before ${end.words} at ${show(end.place)}`,
      allowed: `above 0, below ${show(end.place)}`,
      path: [...path, ...key],
    });
  };
  if (crackLength !== undefined) beyond(crackLength, ['crackLength']);
  if (until?.crackLength === undefined) return problems;
  beyond(until.crackLength, ['until', 'crackLength']);
  if (crackLength !== undefined && until.crackLength <= crackLength) {
    problems.push({
      code: 'out-of-range',
      message: `until.crackLength = ${show(until.crackLength)}, must be above the ${show(crackLength)} at the start`,
      allowed: `above ${show(crackLength)}, below ${show(end.place)}`,
      path: [...path, 'until', 'crackLength'],
    });
  }
  return problems;
}

/** What is pulled: the coupon has the keys of its type and no others. */
export function specimenOf(entry: CouponEntry, arms: readonly [Arm, Arm]): CouponSpecimen {
  const { type, width, bondToughness, crackLength, length, span, loadSpan, overhang, friction, opening, depth } = entry;
  const until = entry.until === undefined ? undefined : defined(entry.until);
  return defined({
    kind: type,
    arms,
    width,
    bondToughness,
    ...{ crackLength, length, span, loadSpan, overhang, friction, opening, depth, until },
  }) as CouponSpecimen;
}
