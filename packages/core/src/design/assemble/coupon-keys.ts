import type { Path, Problem } from '../../problem/index.js';
import type { CouponEntry } from '../schema/design.js';

type Type = CouponEntry['type'];
type Key = keyof CouponEntry;

/** What a type of coupon cannot do without, and what it is. */
const neededBy: Readonly<Record<Type, readonly (readonly [key: Key, what: string])[]>> = {
  dcb: [
    ['length', 'the length from the loads to the end of the bond'],
    ['crackLength', 'the crack at the start, from the loads'],
  ],
  peel: [
    ['length', 'the length from the grips to the end of the bond'],
    ['crackLength', 'the crack at the start, from the grips'],
  ],
  enf: [
    ['span', 'the distance of the supports'],
    ['crackLength', 'the crack at the start, from the support at the cracked end'],
  ],
  wedge: [
    ['opening', 'the opening at which the edge is held'],
    ['depth', 'the depth of the bond from the edge'],
  ],
};

/** Keys that belong to some types only. */
const owners: readonly (readonly [key: Key, types: readonly Type[]])[] = [
  ['length', ['dcb', 'peel']],
  ['span', ['enf']],
  ['loadSpan', ['enf']],
  ['overhang', ['enf']],
  ['friction', ['enf']],
  ['opening', ['wedge']],
  ['depth', ['wedge']],
  ['until', ['dcb', 'enf', 'peel']],
  ['test', ['dcb', 'enf', 'peel']],
];

const ofStitches: readonly Key[] = ['growth', 'firstRow', 'stitchedLength'];

/** What is missing for the type of the coupon, and what has no place in it. */
export function keyProblems(entry: CouponEntry, path: Path): Problem[] {
  const given = (key: Key): boolean => entry[key] !== undefined;
  const missing = neededBy[entry.type].filter(([key]) => !given(key));
  const foreign = owners.filter(([key, types]) => given(key) && !types.includes(entry.type));
  const idle = entry.stitching === undefined ? ofStitches.filter(given) : [];
  return [
    ...missing.map(([key, what]) => ({
      code: 'missing-key' as const,
      message: `missing \`${key}\` in \`${path.join('.')}\`, a coupon of type ${entry.type}`,
      allowed: what,
      path,
      atKey: true,
    })),
    ...foreign.map(([key, types]) => ({
      code: 'contradiction' as const,
      message: `\`${key}\` is for ${types.join(' and ')}, this coupon is of type ${entry.type}`,
      allowed: `\`${key}\` only with \`type: ${types.join('` or `type: ')}\``,
      path: [...path, key],
      atKey: true,
    })),
    ...idle.map((key) => ({
      code: 'contradiction' as const,
      message: `\`${key}\` is given, but the coupon is not stitched`,
      allowed: `\`${key}\` only beside \`stitching\``,
      path: [...path, key],
      atKey: true,
    })),
    ...rangeProblems(entry, path),
  ];
}

function rangeProblems({ bondToughness, bondToughnessRange }: CouponEntry, path: Path): Problem[] {
  if (bondToughnessRange === undefined) return [];
  const [low, high] = bondToughnessRange;
  if (low < high && low <= bondToughness && bondToughness <= high) return [];
  return [
    {
      code: 'contradiction',
      message:
        low < high ? '`bondToughnessRange` does not hold `bondToughness`' : '`bondToughnessRange` is not a range',
      allowed: '[lower, upper], the first below the second and `bondToughness` between them',
      path: [...path, 'bondToughnessRange'],
      also: [{ label: 'bondToughness', path: [...path, 'bondToughness'] }],
    },
  ];
}
