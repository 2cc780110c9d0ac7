import { describe, expect, it } from 'vitest';
import { bearsOn, testWeights } from '../../../../packages/core/src/fracture/coupon/calibrate.js';
import {
  couponLaw,
  couponRows,
  patternMet,
  stitchedGrowth,
} from '../../../../packages/core/src/fracture/coupon/coupon-rows.js';
import { numbersAlong } from '../../../../packages/core/src/fracture/coupon/path-numbers.js';
import { readingNote, readToughness } from '../../../../packages/core/src/fracture/coupon/reading.js';
import { drawSamples, parametersWith } from '../../../../packages/core/src/fracture/coupon/samples.js';
import {
  changedCoupon,
  scalePattern,
  withDensity,
} from '../../../../packages/core/src/fracture/coupon/scale-coupon.js';
import type { Coupon, SpecimenEvent, SpecimenResult } from '../../../../packages/core/src/fracture/index.js';
import {
  bridgingLaw,
  type Pattern,
  penetrationDensity,
  specimenPriors,
  stitchType,
} from '../../../../packages/core/src/stitch/index.js';
import { codeOf } from '../support.js';
import { couponOf, light, strong } from './support.js';

const event = (kind: SpecimenEvent['kind'], displacement: number, byLoad: number): SpecimenEvent => ({
  kind,
  displacement,
  byLoad,
  load: 1,
  crackLength: 0.05,
});
const result = (events: readonly SpecimenEvent[], byLoad: readonly number[]) =>
  ({
    events,
    resistance: byLoad.map((value) => ({ growth: 0, byLoad: value, byArea: 0 })),
  }) as unknown as SpecimenResult;

describe('the toughness that a tester reads', () => {
  it('is the mean over the onsets from the first row that gives way, a jump counted once', () => {
    const events = [
      event('bond', 1, 300),
      event('threadAtCrack', 2, 900),
      event('threadAtCrack', 2, 5000),
      event('bond', 2.5, 700),
      event('threadAtCrack', 3, 1100),
    ];
    expect(readToughness(result(events, [300, 900]), true)).toEqual({ toughness: 1000, of: 'fullZone' });
  });

  it('ends with the arm that breaks, and says that it is a lower bound', () => {
    const reading = readToughness(result([event('bond', 1, 300), event('arm', 2, 800)], [300]), true);
    expect(reading).toEqual({ toughness: 800, of: 'armBreak' });
    expect(readingNote(reading).text).toContain('lower bound');
  });

  it('is the greatest seen while no row gives way', () => {
    const reading = readToughness(result([event('bond', 1, 300)], [300, 650, 640]), true);
    expect(reading).toEqual({ toughness: 650, of: 'greatest' });
    expect(readingNote(reading)).toMatchObject({ level: 'warning' });
  });

  it('is the mean over the growth without rows', () => {
    expect(readToughness(result([event('bond', 1, 300)], [300, 320]), false)).toEqual({
      toughness: 310,
      of: 'unbridged',
    });
  });

  it('is refused for a test that ends before the crack grows', () => {
    expect(codeOf(() => readToughness(result([], []), true))).toBe('not-computable');
  });
});

describe('samples', () => {
  it('have the same stitch, bond and arms whatever their number, for one seed', () => {
    expect(drawSamples({ samples: 20, seed: 3 })).toEqual(drawSamples({ samples: 50, seed: 3 }).slice(0, 20));
  });

  it('keep what is given, and leave out what yielding bends do not use', () => {
    const [draw] = drawSamples({ samples: 10 });
    const { penetration } = couponOf('peel', light, 2).stitching!;
    const kept = parametersWith(draw!.parameters, { ...penetration, parameters: { frictionStress: 1e6 } });
    expect(kept).toEqual({ ...draw!.parameters, frictionStress: 1e6 });
    expect(parametersWith(draw!.parameters, { ...penetration, bends: 'yielding' })).not.toHaveProperty('beddingIn');
  });

  it('scatter by the ranges that docs/theory/coupon-prediction.md lists', () => {
    expect(specimenPriors.bondToughnessFactor).toMatchObject({ value: 1, low: 0.8, high: 1.25 });
    expect(specimenPriors.armStrengthFactor).toMatchObject({ value: 1, low: 0.8, high: 1.25 });
    expect(specimenPriors.armStiffnessFactor).toMatchObject({ value: 1, low: 0.9, high: 1.11 });
    expect(specimenPriors.modelError.value).toBe(0.2);
    const below = drawSamples({ samples: 4000 }).filter(({ bondToughnessFactor }) => bondToughnessFactor < 0.8);
    expect(below.length / 4000).toBeCloseTo(0.05, 1.5);
  });

  it('along a path have peak, opening and work of the full law within a tenth', () => {
    const { penetration } = couponOf('enf', light, 8).stitching!;
    for (const angle of [15, 90]) {
      const all = drawSamples({ samples: 100 }).map(({ parameters }) => ({ ...penetration, parameters }));
      const fitted = numbersAlong(all, { angle });
      for (const i of [3, 17, 38, 66, 81]) {
        const { peak, work } = bridgingLaw({ ...all[i]!, path: { angle } });
        for (const [found, wanted] of [
          [fitted[i]!.force, peak.force],
          [fitted[i]!.opening, peak.opening],
          [fitted[i]!.work, work],
        ] as const) {
          expect(Math.abs(found / wanted - 1)).toBeLessThan(0.1);
        }
      }
    }
  });

  it('along a path are exact for a single penetration', () => {
    const { penetration } = couponOf('enf', light, 8).stitching!;
    const { peak, work } = bridgingLaw({ ...penetration, path: { angle: 90 } });
    const [found] = numbersAlong([penetration], { angle: 90 });
    expect(found!.force / peak.force).toBeCloseTo(1, 9);
    expect(found!.opening / peak.opening).toBeCloseTo(1, 9);
    expect(found!.work / work).toBeCloseTo(1, 9);
  });
});

const patterns: readonly Pattern[] = [
  { kind: 'parallel', pitch: 3e-3, rowSpacing: 5e-3 },
  { kind: 'staggered', pitch: 3e-3, rowSpacing: 5e-3, shift: 0.3 },
  { kind: 'zigzag', pitch: 3e-3, rowSpacing: 5e-3, swing: 2e-3 },
  {
    kind: 'crossing',
    pitch: 3e-3,
    rowSpacing: 5e-3,
    second: { pitch: 4e-3, rowSpacing: 6e-3 },
    offset: { x: 1e-3, y: 0 },
  },
  {
    kind: 'rows',
    rows: [5e-3, 9e-3].map((offset) => ({ offset, length: 0.3, pitch: 3e-3, stagger: 1e-3 })),
    bandWidth: 8e-3,
  },
];

describe('another number of stitches', () => {
  it.each(patterns.map((pattern) => [pattern.kind, pattern] as const))(
    'per area is met by every pattern: %s',
    (_, pattern) => {
      const N = penetrationDensity(pattern);
      for (const factor of [0.5, 2]) {
        const side = factor ** -0.5;
        if (pattern.kind === 'zigzag')
          expect(scalePattern(pattern, side, side)).toMatchObject({ swing: pattern.swing });
        // Edge rows close with a whole number of stitches.
        const close = pattern.kind === 'rows' ? 1 : 9;
        expect(penetrationDensity(scalePattern(pattern, side, side)) / (N * factor)).toBeCloseTo(1, close);
      }
    },
  );

  it.each(patterns.map((pattern) => [pattern.kind, pattern] as const))(
    'leaves the first row where it is: %s',
    (_, pattern) => {
      // An origin before the stretch: the first row is not that at the origin.
      const coupon = couponOf('dcb', light, 8, {
        pattern,
        from: 0.055,
        origin: pattern.kind === 'rows' ? 0.052 : 0.0431,
      });
      const first = (one: Coupon) => couponRows(one, couponLaw('dcb', one.stitching!))[0]!.position;
      for (const name of ['pitch', 'rowSpacing'] as const) {
        for (const growth of ['across', 'along'] as const) {
          const one = { ...coupon, stitching: { ...coupon.stitching!, growth } };
          expect(first(changedCoupon(one, name, 0.8))).toBeCloseTo(first(one), 9);
        }
      }
      expect(first(withDensity(coupon, 3))).toBeCloseTo(first(coupon), 9);
    },
  );

  it('keeps stitch, first row and stretch', () => {
    const coupon = couponOf('peel', light, 2);
    const { stitching, specimen } = withDensity(coupon, 4);
    expect(stitching).toMatchObject({ ...coupon.stitching, pattern: { pitch: 1.5e-3, rowSpacing: 2.5e-3 } });
    expect(specimen).toBe(coupon.specimen);
  });
});

describe('a changed coupon', () => {
  const coupon = couponOf('peel', light, 2, {
    penetration: { ...couponOf('peel', light, 2).stitching!.penetration, crackDepth: 0.7e-3, pitch: 3e-3 },
  });

  it('has arms that bend with the cube of their thickness, and a laminate as much thicker', () => {
    const { specimen, stitching } = changedCoupon(coupon, 'armThickness', 1.25);
    const [before, after] = [coupon.specimen.arms[0], specimen.arms[0]];
    expect(after.thickness / before.thickness).toBeCloseTo(1.25, 12);
    expect(after.bendingStiffness / before.bendingStiffness).toBeCloseTo(1.25 ** 3, 12);
    expect(after.axialStiffness / before.axialStiffness).toBeCloseTo(1.25, 12);
    expect(after.shearStiffness / before.shearStiffness).toBeCloseTo(1.25, 12);
    expect(after.failureStrain).toEqual(before.failureStrain);
    expect(stitching!.penetration.thickness).toBeCloseTo(1.25 * 1.8e-3, 12);
    expect(stitching!.penetration.crackDepth).toBeCloseTo(1.25 * 0.7e-3, 12);
  });

  it('has heavier threads, closer holes with a shorter float, a stronger anchor or a tougher bond', () => {
    const heavier = changedCoupon(coupon, 'threadLinearDensity', 1.5).stitching!.penetration;
    expect(heavier.needleThread.linearDensity).toBeCloseTo(60e-6, 12);
    const closer = changedCoupon(coupon, 'pitch', 0.8).stitching!;
    expect(closer.pattern).toMatchObject({ pitch: 0.8 * 3e-3, rowSpacing: 5e-3 });
    expect(closer.penetration.pitch).toBeCloseTo(2.4e-3, 12);
    expect(changedCoupon(coupon, 'rowSpacing', 0.8).stitching!.pattern).toMatchObject({
      pitch: 3e-3,
      rowSpacing: 4e-3,
    });
    expect(changedCoupon(coupon, 'anchorEfficiency', 1.5, 0.5).stitching!.penetration.parameters).toEqual({
      anchorEfficiency: 0.75,
    });
    expect(changedCoupon(coupon, 'bondToughness', 1.25).specimen.bondToughness).toBe(375);
  });
});

describe('the rows of a coupon', () => {
  it('are none without stitches', () => {
    expect(couponRows(couponOf('peel', undefined, 2), undefined)).toEqual([]);
  });

  it('of one edge row have no distance, and as many penetrations per front as its pitch gives', () => {
    const pattern: Pattern = { kind: 'rows', rows: [{ offset: 5e-3, length: 0.3, pitch: 3e-3 }] };
    expect(patternMet({ ...couponOf('dcb', light, 4).stitching!, pattern })).toEqual({
      density: 100 / (0.3 * 10e-3),
      perFront: 1 / 3e-3,
    });
  });

  it('leave room between the crack and where stitches or test end', () => {
    const { specimen, stitching } = couponOf('peel', light, 2);
    expect(stitchedGrowth(specimen, stitching!)).toBeCloseTo(0.05, 12);
    expect(stitchedGrowth(specimen, { ...stitching!, from: 0.02, to: 0.2 })).toBeCloseTo(0.06, 12);
    expect(stitchedGrowth(specimen, { ...stitching!, from: 0.15, to: 0.2 })).toBe(0);
  });
});

describe('the weight of a sample', () => {
  it('is exp(-(ln P/P_test)²/(2 (variation² + 0.2²))), the greatest 1', () => {
    const test = { peakForce: 100, variation: 0.15 };
    const weights = testWeights([{ test, peakForces: [100, 130, 70] }], 3);
    const s2 = 0.15 ** 2 + 0.2 ** 2;
    expect(weights[0]).toBe(1);
    expect(weights[1]).toBeCloseTo(Math.exp(-(Math.log(1.3) ** 2) / (2 * s2)), 12);
    expect(weights[2]).toBeCloseTo(Math.exp(-(Math.log(0.7) ** 2) / (2 * s2)), 12);
  });

  it('takes a variation of 0.1 where none is given, and the product of several tests', () => {
    const s2 = 0.1 ** 2 + 0.2 ** 2;
    const one = { test: { peakForce: 100 }, peakForces: [100, 120] };
    expect(testWeights([one, one], 2)[1]).toBeCloseTo(Math.exp(-(Math.log(1.2) ** 2) / s2), 12);
  });

  it('bears on coupons with the same stitch, or with the same bond where neither has one', () => {
    const [peel, dcb] = [couponOf('peel', light, 2), couponOf('dcb', light, 8)];
    expect(bearsOn(peel, dcb)).toBe(true);
    expect(bearsOn(peel, couponOf('peel', strong, 2))).toBe(false);
    expect(bearsOn(peel, couponOf('peel', undefined, 2))).toBe(false);
    expect(bearsOn(couponOf('peel', undefined, 2), peel)).toBe(true);
    // A bond that slides is another than one that opens, whatever its number.
    expect(bearsOn(couponOf('enf', undefined, 8), couponOf('dcb', light, 8, {}, { bondToughness: 800 }))).toBe(false);
    expect(bearsOn(couponOf('peel', undefined, 2), couponOf('dcb', undefined, 4))).toBe(true);
    expect(bearsOn(couponOf('wedge', light, 2), peel)).toBe(false);
    const other = { ...peel.stitching!.penetration, type: stitchType('304') };
    expect(bearsOn(peel, couponOf('peel', light, 2, { penetration: other }))).toBe(false);
  });
});
