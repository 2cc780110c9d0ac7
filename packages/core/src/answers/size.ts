import type { KindName } from '../quantity/index.js';
import { holderOf } from '../working/index.js';
import type { Quantity } from './quantities.js';

/** Below this share of the size of its neighbours a number is as good as zero. */
const negligible = 1e-7;

/** Kinds of the bending of a laminate: of which kind of its stretching, times which power of its thickness, they are. */
const kindScale: Partial<Record<KindName, { readonly of: KindName; readonly power: number }>> = {
  curvature: { of: 'strain', power: -1 },
  couplingStiffness: { of: 'forcePerLength', power: 1 },
  momentPerLength: { of: 'forcePerLength', power: 1 },
  couplingCompliance: { of: 'stretchCompliance', power: -1 },
};

/**
 * The size below which a quantity is as good as zero: a ten-millionth of the largest number of its kind in the same laminate or load. A coupling or
 * a curvature can be rounding in all its components, so theirs follows from stiffness or strain and the thickness.
 */
export function negligibleSizes(quantities: Iterable<Quantity>): (of: Quantity) => number {
  const largest = new Map<string, number>();
  let thickness = 0;
  for (const one of quantities) {
    const key = `${holderOf(one)} ${one.kind}`;
    largest.set(key, Math.max(largest.get(key) ?? 0, Math.abs(one.value)));
    if (one.symbol === 'h') thickness = Math.max(thickness, one.value);
  }
  return (of) => {
    const size = (kind: KindName): number => largest.get(`${holderOf(of)} ${kind}`) ?? 0;
    const { of: other, power } = kindScale[of.kind] ?? { of: of.kind, power: 0 };
    const own = of.kind === 'number' ? 1 : size(of.kind);
    return negligible * Math.max(own, size(other) * thickness ** power);
  };
}
