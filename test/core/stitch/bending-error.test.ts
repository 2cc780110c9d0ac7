import { readFileSync } from 'node:fs';
import { assemble, readDesign } from '@selvage/core';
import { expect, it } from 'vitest';
import { couponLaw, couponRows } from '../../../packages/core/src/fracture/coupon/coupon-rows.js';
import { simulateWedge } from '../../../packages/core/src/fracture/index.js';
import { mm } from './support.js';

const read = (file: string) => readFileSync(new URL(`../../../docs/${file}`, import.meta.url), 'utf8');
const example = read('examples/shingle-edge-coupons.yaml');

/** Where the wedged edge of the example stops, and the work of one of its stitches, with other bends. */
function stone(bridging: string): { readonly split: number; readonly work: number } {
  const rows = 'stagger: 2 mm }]\n';
  expect(example).toContain(rows);
  const model = assemble(readDesign(example.replace(rows, `${rows}    bridging: ${bridging}\n`)));
  const { coupon } = model.coupons.find(({ name }) => name === 'stone')!;
  if (coupon.specimen.kind !== 'wedge') throw new Error('no wedge');
  const law = couponLaw('wedge', coupon.stitching!);
  const { splitLength } = simulateWedge({ ...coupon.specimen, rows: couponRows(coupon, law) });
  return { split: splitLength, work: law.work };
}

it('rigid bends err on the safe side for the work of a stitch, on the unsafe side for a split that a wedge holds open', () => {
  const [rigid, yielding, soft] = ['{ bends: rigid }', '{ bends: yielding }', '{ beddingIn: 0.25 }'].map(stone);
  expect(rigid!.work).toBeLessThan(Math.min(yielding!.work, soft!.work));
  expect(rigid!.split).toBeLessThan(Math.min(yielding!.split, soft!.split));
  const splits = [rigid, yielding, soft].map((one) => `${(one!.split / mm).toFixed(2)} mm`);
  const page = read('theory/bridging.md');
  expect(page).toContain('on the unsafe side for an edge that a wedge opens');
  expect(page).toContain(
    `${splits[0]} with rigid bends, ${splits[1]} with yielding ones and ${splits[2]} with a bedding-in of 0.25`,
  );
});
