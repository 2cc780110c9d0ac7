import { type Block, type Report, report, type UnitSystem } from '@selvage/core';
import type { CouponResult, Results } from '../../../packages/core/src/design/index.js';
import type { CouponPrediction, Verdict } from '../../../packages/core/src/fracture/index.js';
import { only, resultsOf } from '../design/coupon-support.js';

/** Coupons of every type, stitched and not; all values invented. */
const text = `${only('open', 'slide', 'wedged')}  bare: { type: dcb, arms: arm, width: 20 mm, length: 140 mm, crackLength: 40 mm, bondToughness: 300 J/m^2 }
  peeled: { type: peel, arms: thin, note: peeled by hand, stitching: seam, width: 20 mm, length: 120 mm, crackLength: 50 mm, bondToughness: 300 J/m^2, firstRow: 4 mm }
  bare-edge: { type: wedge, arms: arm, width: 100 mm, opening: 1 mm, depth: 60 mm, bondToughness: 300 J/m^2 }
`;

export const results: Results = resultsOf(text);

export function named(name: string): CouponResult {
  const found = results.coupons.find(({ model }) => model.name === name);
  if (found === undefined) throw new Error(`no coupon ${name}`);
  return found;
}

/** The coupon with another prediction in some parts. */
export const changed = (one: CouponResult, change: Partial<CouponPrediction>): CouponResult => ({
  ...one,
  prediction: { ...one.prediction, ...change },
});

export const sharesOf = (some: Partial<Record<Verdict, number>>): Record<Verdict, number> => ({
  bond: 0,
  threadAtCrack: 0,
  threadAtAnchor: 0,
  threadPullOut: 0,
  arm: 0,
  ...some,
});

export const reportOf = (units: UnitSystem = 'metric'): Report => report(results, { units });

/** The blocks from a heading to the next section. */
export function section({ blocks }: Report, id: string): Block[] {
  const start = blocks.findIndex((block) => block.kind === 'heading' && block.id === id);
  if (start < 0) throw new Error(`no section ${id}`);
  const end = blocks.findIndex((block, i) => i > start && block.kind === 'heading' && block.level === 2);
  return blocks.slice(start, end);
}

type Table = Extract<Block, { kind: 'table' }>;

export function tableOf(blocks: readonly Block[], id: string): Table {
  const found = blocks.find((block) => block.kind === 'table' && block.id === id);
  if (found?.kind !== 'table') throw new Error(`no table ${id}`);
  return found;
}

/** Everything in words in some blocks. */
export const wordsOf = (blocks: readonly Block[]): string =>
  blocks
    .flatMap((block) => {
      if (block.kind === 'list') return block.items;
      if (block.kind === 'paragraph') return [block.text];
      if (block.kind === 'facts')
        return block.items.map(
          ({ label, value, remark = '' }) => `${label}: ${typeof value === 'string' ? value : ''} ${remark}`,
        );
      return [];
    })
    .join('\n');
