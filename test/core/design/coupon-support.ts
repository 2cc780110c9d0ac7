import { assemble, compute, type Model, type Results, readDesign } from '@selvage/core';
import { expect } from 'vitest';

/** Coupons of one stitched laminate; all values invented. */
export const file = `format: 1
title: T
materials:
  ud: { kind: ply, E1: 38 GPa, E2: 10 GPa, G12: 4 GPa, nu12: 0.28, thickness: 0.25 mm, strengths: { Xt: 900 MPa, Xc: 600 MPa, Yt: 40 MPa, Yc: 130 MPa, S: 60 MPa } }
threads:
  t75: { linearDensity: 75 tex, density: 1440 kg/m^3, tenacity: 1.7 N/tex, modulus: 50 N/tex }
  slack: { linearDensity: 75 tex, density: 1440 kg/m^3, tenacity: 1.7 N/tex }
laminates:
  arm: { material: ud, stack: "[0_4/90]s" }
  thin: { material: ud, stack: "[0_6/90]" }
  whole: { material: ud, stack: "[(0_4/90)s]2" }
stitching:
  seam: { laminate: whole, thread: t75, stitchType: 301, pattern: parallel, pitch: 4 mm, rowSpacing: 6 mm }
  other: { laminate: arm, thread: t75, stitchType: 301, pattern: zigzag, pitch: 4 mm, rowSpacing: 10 mm, bight: 4 mm }
  edge: { thread: t75, stitchType: 301, pattern: edgeRows, pitch: 4 mm, dryThickness: 6 mm, rows: [{ offset: 4 mm, length: 800 mm }, { offset: 9 mm, length: 790 mm }] }
  loose: { thread: slack, stitchType: 301, pattern: parallel, pitch: 4 mm, rowSpacing: 6 mm, dryThickness: 6 mm }
coupons:
  open: { type: dcb, title: Opened, arms: arm, stitching: seam, width: 20 mm, length: 140 mm, crackLength: 40 mm, bondToughness: 300 J/m^2, firstRow: 5 mm }
  slide: { type: enf, arms: arm, stitching: seam, width: 20 mm, span: 100 mm, overhang: 15 mm, crackLength: 35 mm, bondToughness: 900 J/m^2 }
  torn: { type: peel, arms: [thin, arm], stitching: other, growth: along, width: 20 mm, length: 150 mm, crackLength: 50 mm, bondToughness: 300 J/m^2, bondToughnessRange: [200 J/m^2, 400 J/m^2], stitchedLength: 40 mm, across: free, breaking: fibres, until: { crackLength: 100 mm } }
  wedged: { type: wedge, arms: arm, stitching: edge, width: 100 mm, opening: 1 mm, depth: 60 mm, bondToughness: 300 J/m^2 }
  plain: { type: dcb, arms: thin, width: 20 mm, length: 140 mm, crackLength: 40 mm, bondToughness: 300 J/m^2 }
`;

/** The file with a piece of its text replaced. */
export const withText = (from: string, to: string, of: string = file): string => {
  expect(of).toContain(from);
  return of.replace(from, to);
};

/** The file with only those coupons. */
export const only = (...names: readonly string[]): string =>
  file
    .split('\n')
    .filter(
      (line) =>
        !/^ {2}\w+: \{ type: (dcb|enf|peel|wedge)/.test(line) || names.includes(line.trim().split(':')[0] ?? ''),
    )
    .join('\n');

export const modelOf = (text: string = file): Model => assemble(readDesign(text));

const computed = new Map<string, Results>();
export const resultsOf = (text: string): Results => {
  const found = computed.get(text) ?? compute(modelOf(text));
  computed.set(text, found);
  return found;
};

export const couponOf = (name: string, text: string = file) => {
  const found = modelOf(text).coupons.find((one) => one.name === name);
  if (found === undefined) throw new Error(`no coupon ${name}`);
  return found;
};
