import {
  armOf,
  type Coupon,
  type CouponSpecimen,
  type CouponStitching,
} from '../../../../packages/core/src/fracture/index.js';
import { laminate } from '../../../../packages/core/src/laminate/index.js';
import type { Ply } from '../../../../packages/core/src/material/index.js';
import { bridgingPriors, stitchType, type Thread } from '../../../../packages/core/src/stitch/index.js';

/** Invented within usual ranges: a woven glass ply of 0.45 mm, as in the peel tests. */
export const cloth: Ply = {
  name: 'glass cloth',
  angle: 0,
  thickness: 0.45e-3,
  E1: 24.5e9,
  E2: 23.8e9,
  G12: 4.7e9,
  nu12: 0.11,
  strengths: { Xt: 433e6, Xc: 377e6, Yt: 386e6, Yc: 335e6, S: 84e6 },
  notes: [],
  sources: [],
};
export const light: Thread = {
  name: 'polyester 40',
  linearDensity: 40e-6,
  density: 1380,
  tenacity: 0.55e6,
  modulus: 4.5e6,
};
export const strong: Thread = {
  name: 'aramid 75',
  linearDensity: 75e-6,
  density: 1440,
  tenacity: 1.9e6,
  modulus: 50e6,
};

type Kind = CouponSpecimen['kind'];

/** A coupon with so many plies on each side; straight rows 5 mm apart, holes 3 mm apart, unless said otherwise. */
export function couponOf(
  kind: Kind,
  thread: Thread | undefined,
  plies: number,
  stitching: Partial<CouponStitching> = {},
  specimen: object = {},
): Coupon {
  const half = laminate(Array.from({ length: plies }, () => cloth));
  const { notes: _, sources: __, ...arm } = armOf(half);
  const from = { peel: 0.045, dcb: 0.055, enf: 0.035, wedge: 0.004 }[kind];
  return {
    specimen: { ...specimenOf(kind), arms: [arm, arm], ...specimen } as unknown as CouponSpecimen,
    ...(thread && {
      stitching: {
        pattern: { kind: 'parallel', pitch: 3e-3, rowSpacing: 5e-3 },
        growth: 'across',
        from,
        to: from + 0.05,
        origin: from,
        penetration: { type: stitchType('301'), needleThread: thread, thickness: 2 * half.thickness },
        ...stitching,
      },
    }),
  };
}

function specimenOf(kind: Kind): object {
  switch (kind) {
    case 'peel':
      return pulled(kind, 0.04);
    case 'dcb':
      return pulled(kind, 0.05);
    case 'enf':
      return { kind, width: 0.025, bondToughness: 800, crackLength: 0.03, span: 0.12, overhang: 0.01 };
    case 'wedge':
      return { kind, width: 0.1, bondToughness: 300, opening: 2e-3, depth: 0.06 };
  }
}

const pulled = (kind: Kind, crackLength: number) => ({
  kind,
  width: 0.025,
  bondToughness: 300,
  crackLength,
  length: crackLength + 0.08,
  until: { crackLength: crackLength + 0.06 },
});

/** Half of the area of a triangle on either side, by the lengths of its legs; the value of a lognormal is its median. */
function median({ value, low, high, distribution }: (typeof bridgingPriors)[keyof typeof bridgingPriors]): number {
  if (distribution === 'lognormal') return value;
  const width = high - low;
  return value - low > width / 2
    ? low + Math.sqrt((width * (value - low)) / 2)
    : high - Math.sqrt((width * (high - value)) / 2);
}

/** The coupon with every parameter of its stitch that is not given at the median of its prior. */
export function atMedians(coupon: Coupon): Coupon {
  const { stitching } = coupon;
  if (stitching === undefined) return coupon;
  const { penetration } = stitching;
  const medians = Object.entries(bridgingPriors).map(([name, prior]) => [name, median(prior)]);
  const parameters = { ...Object.fromEntries(medians), ...penetration.parameters };
  return { ...coupon, stitching: { ...stitching, penetration: { ...penetration, parameters } } };
}
