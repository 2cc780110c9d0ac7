import { describe, expect, it } from 'vitest';
import { couponLaw, couponRows } from '../../../../packages/core/src/fracture/coupon/coupon-rows.js';
import { knownOf } from '../../../../packages/core/src/fracture/coupon/known.js';
import { type PulledSpecimen, pullCoupon } from '../../../../packages/core/src/fracture/coupon/pull-coupon.js';
import { readToughness } from '../../../../packages/core/src/fracture/coupon/reading.js';
import { drawSamples } from '../../../../packages/core/src/fracture/coupon/samples.js';
import { withDensity } from '../../../../packages/core/src/fracture/coupon/scale-coupon.js';
import {
  type Coupon,
  type CouponPrediction,
  predictCoupon,
  simulateWedge,
} from '../../../../packages/core/src/fracture/index.js';
import { bridgingInterval, measuredBridgingLaw } from '../../../../packages/core/src/stitch/index.js';
import { numbersIn } from '../peel-support.js';
import { codeOf } from '../support.js';
import { atMedians, couponOf, light, strong } from './support.js';

const quick = { advice: false } as const;
const notesOf = ({ notes }: CouponPrediction) => notes.map(({ text }) => text).join('\n');
const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);

function pulled(coupon: Coupon) {
  const law = coupon.stitching && couponLaw(coupon.specimen.kind, coupon.stitching);
  const rows = couponRows(coupon, law);
  return pullCoupon(coupon.specimen as PulledSpecimen, rows);
}

const peel = couponOf('peel', light, 2);
const middle = atMedians(peel);
const whole = predictCoupon(peel);
const near = (value: number) => expect.closeTo(value, 6);

describe('the prediction of a stitched peel', () => {
  it('has the simulation with the medians of the priors at its middle', () => {
    const result = pulled(middle);
    expect(whole.result!.peakForce).toBeCloseTo(result.peakForce, 6);
    expect(whole.result!.events.map(({ kind }) => kind)).toEqual(result.events.map(({ kind }) => kind));
    expect(whole.rows).toHaveLength(10);
    expect(whole.verdict).toMatchObject({
      ...result.verdict,
      load: near(result.verdict.load),
      margin: near(result.verdict.margin!),
    });
    expect(whole.peakForce.nominal).toBe(whole.result!.peakForce);
    expect(whole.toughness!.specimen.nominal).toBe(readToughness(whole.result!, true).toughness);
    expect(whole.onset).toEqual({
      load: near(result.events[0]!.load),
      displacement: near(result.events[0]!.displacement),
    });
    expect(whole.penetrationDensity).toBeCloseTo(1 / (3e-3 * 5e-3), 6);
    expect(whole.law!.peak.opening).toBeCloseTo(couponLaw('peel', middle.stitching!).peak.opening, 12);
    expect(notesOf(whole)).toContain('bedding-in of surface bends 0.146 diameters');
  });

  it.each([
    ['a peel', peel],
    ['a double cantilever beam', couponOf('dcb', light, 8)],
    ['a bent specimen', couponOf('enf', light, 8)],
    ['one limited by its arms', couponOf('peel', strong, 3)],
  ])('has its middle value well inside its own range, near the median: %s', (_, coupon) => {
    const { peakForce, toughness } = predictCoupon(coupon, quick);
    for (const { nominal, low, high, median } of [peakForce, toughness!.specimen]) {
      expect(nominal).toBeGreaterThan(low);
      expect(nominal).toBeLessThan(high);
      expect(Math.abs(Math.log(nominal / median))).toBeLessThan(0.3 * Math.log(high / low));
    }
  });

  it('keeps parameters that are given', () => {
    const { penetration } = peel.stitching!;
    const given = couponOf('peel', light, 2, { penetration: { ...penetration, parameters: { beddingIn: 0 } } });
    const law = couponLaw('peel', atMedians(given).stitching!);
    expect(predictCoupon(given, quick).law!.peak.opening).toBeCloseTo(law.peak.opening, 12);
    expect(law.peak.opening).toBeLessThan(whole.law!.peak.opening);
  });

  it('says what limits: the same name as the simulation, a load, what is next and shares that add up to 1', () => {
    expect(whole.verdict).toMatchObject({ first: 'threadAtCrack', next: 'arm' });
    expect(whole.verdict.load).toBe(whole.peakForce.nominal);
    expect(sum(Object.values(whole.shares))).toBeCloseTo(1, 9);
    expect(whole.shares.threadAtCrack).toBeGreaterThan(0.5);
    expect(whole.shares.arm).toBeGreaterThan(0);
  });

  it('is the same for the same seed, another for another, and the same nominal for both', () => {
    const [one, two] = [1, 1].map((seed) => predictCoupon(peel, { ...quick, seed }));
    expect(one).toEqual(two);
    const other = predictCoupon(peel, { ...quick, seed: 2 });
    expect(other.peakForce.median).not.toBe(one!.peakForce.median);
    expect(other.peakForce.nominal).toBe(one!.peakForce.nominal);
    expect(Math.abs(other.peakForce.median / one!.peakForce.median - 1)).toBeLessThan(0.05);
  });

  it('has finite numbers throughout', () => {
    const { coupon: _, ...rest } = whole;
    for (const value of numbersIn(rest)) expect(Number.isFinite(value)).toBe(true);
  });

  it('has the range of its law as bridgingInterval has it, but for the draw', () => {
    const { penetration } = peel.stitching!;
    const wanted = bridgingInterval(penetration, { samples: 4000, seed: 9 });
    for (const name of ['peak', 'opening', 'work'] as const) {
      for (const end of ['low', 'median', 'high'] as const) {
        expect(Math.abs(whole.bridging![name][end] / wanted[name][end] - 1)).toBeLessThan(0.08);
      }
    }
  });

  it('has no steady value where the zone may not fit, one where the law is measured and the zone shorter, and says why', () => {
    expect(whole.toughness?.steady).toBeUndefined();
    expect(notesOf(whole)).toContain('no steady toughness');
    expect(whole.zone?.needed).toBeCloseTo(4 * whole.zone!.high, 12);
    const law = couponLaw('peel', peel.stitching!);
    const measured = measuredBridgingLaw(
      law.opening.map((opening, i) => ({ opening, force: law.force[i]! })),
      'threadAtCrack',
    );
    const known = predictCoupon(couponOf('peel', light, 2, { measured }), quick);
    expect(known.toughness?.steady?.nominal).toBeCloseTo(300 + known.penetrationDensity! * measured.work, 6);
    expect(known.zone?.needed).toBeCloseTo(known.zone!.high, 12);
    // A measured stitch scatters less than one of which only the yarn is known.
    expect(known.toughness!.specimen.high / known.toughness!.specimen.low).toBeLessThan(
      whole.toughness!.specimen.high / whole.toughness!.specimen.low,
    );
  });

  it('warns of a pattern that meets the crack nowhere, and is as without stitches', () => {
    const far = couponOf('peel', light, 2, { from: 0.0455, to: 0.0495 });
    const found = predictCoupon(far, quick);
    expect(found.rows).toEqual([]);
    expect(notesOf(found)).toContain('No row of the pattern');
    expect(found.toughness?.specimen).toEqual(predictCoupon(couponOf('peel', undefined, 2), quick).toughness?.specimen);
  });
});

describe('the prediction of an unstitched coupon', () => {
  const plain = predictCoupon(couponOf('dcb', undefined, 8));

  it('is its bond, with the scatter of the bond', () => {
    const { specimen, steady } = plain.toughness!;
    expect(specimen.nominal).toBeCloseTo(300, 3);
    expect(steady?.nominal).toBe(300);
    expect(Math.abs(specimen.low / 240 - 1)).toBeLessThan(0.02);
    expect(Math.abs(specimen.high / 375 - 1)).toBeLessThan(0.02);
    expect(plain.shares.bond).toBe(1);
    expect([plain.law, plain.bridging, plain.zone, plain.penetrationDensity, plain.pointOfNoReturn]).toEqual(
      Array(5).fill(undefined),
    );
    expect(plain.densities).toEqual([]);
  });

  it('has a peak force as the root of the bond and of the stiffness', () => {
    const { peakForce } = plain;
    // Factors of nine in ten: √1.25 by the bond alone, a little more with the stiffness of the arms.
    expect(peakForce.high / peakForce.median).toBeGreaterThan(Math.sqrt(1.25));
    expect(peakForce.high / peakForce.median).toBeLessThan(Math.sqrt(1.25 * 1.11));
    const names = plain.changes.map(({ name }) => name);
    expect(names).toEqual(['armThickness', 'bondToughness']);
    expect(plain.changes[1]?.elasticity).toMatchObject({
      toughness: expect.closeTo(1, 6),
      peakForce: expect.closeTo(0.5, 6),
    });
    // P (a + χ) = b √(2 G D): 3/2 of the thickness less what χ grows with it.
    expect(Math.abs(plain.changes[0]!.elasticity.peakForce - 1.45)).toBeLessThan(0.05);
  });

  it('keeps to a range of the bond where one is given', () => {
    const coupon = { ...couponOf('dcb', undefined, 8), bondToughnessRange: { low: 290, high: 320 } };
    const { specimen } = predictCoupon(coupon, quick).toughness!;
    expect(specimen.low).toBeGreaterThan(290);
    expect(specimen.high).toBeLessThan(320);
  });
});

describe('what limits', () => {
  it('is the arm where threads are strong, which makes the reading a lower bound', () => {
    const found = predictCoupon(couponOf('peel', strong, 3), quick);
    expect(found.verdict).toMatchObject({ first: 'arm', next: 'threadAtCrack' });
    expect(found.shares.arm).toBeGreaterThan(0.9);
    expect(notesOf(found)).toContain('lower bound');
    expect(Math.abs(found.toughness!.specimen.nominal / found.toughness!.ceiling! - 1)).toBeLessThan(0.1);
  });
});

describe('changes', () => {
  it.each(whole.changes.map((change) => [change.name, change] as const))(
    'by one simulation each: %s',
    (name, change) => {
      // The change for itself, not by what the prediction uses.
      const { specimen, stitching } = middle;
      const { penetration, pattern } = stitching!;
      const [arm] = specimen.arms;
      const f = change.factor;
      const thick = {
        ...arm,
        thickness: arm.thickness * f,
        bendingStiffness: arm.bendingStiffness * f ** 3,
        axialStiffness: arm.axialStiffness * f,
        shearStiffness: arm.shearStiffness * f,
      };
      const thread = { ...light, linearDensity: light.linearDensity * f };
      const changed = {
        pitch: { specimen, stitching: { ...stitching, pattern: { ...pattern, pitch: 3e-3 * f } } },
        rowSpacing: { specimen, stitching: { ...stitching, pattern: { ...pattern, rowSpacing: 5e-3 * f } } },
        threadLinearDensity: {
          specimen,
          stitching: { ...stitching, penetration: { ...penetration, needleThread: thread } },
        },
        anchorEfficiency: {
          specimen,
          stitching: {
            ...stitching,
            penetration: {
              ...penetration,
              parameters: { ...penetration.parameters, anchorEfficiency: penetration.parameters!.sewnEfficiency! },
            },
          },
        },
        armThickness: {
          specimen: { ...specimen, arms: [thick, thick] },
          stitching: { ...stitching, penetration: { ...penetration, thickness: penetration.thickness * f } },
        },
        bondToughness: { specimen: { ...specimen, bondToughness: 375 }, stitching },
      }[name] as Coupon;
      const result = pulled(changed);
      expect(change.peakForce).toBeCloseTo(result.peakForce, 6);
      expect(change.toughness).toBeCloseTo(readToughness(result, true).toughness, 4);
      expect(change.first).toBe(result.verdict.first);
      const slope = (after: number, before: number) => Math.log(after / before) / Math.log(f);
      expect(change.elasticity.peakForce).toBeCloseTo(slope(result.peakForce, whole.peakForce.nominal), 6);
      expect(change.elasticity.toughness).toBeCloseTo(slope(change.toughness, whole.toughness!.specimen.nominal), 9);
    },
  );

  it('have the factors that are agreed', () => {
    expect(whole.changes.map(({ name, factor }) => [name, Number(factor.toFixed(6))])).toEqual([
      ['pitch', 0.8],
      ['rowSpacing', 0.8],
      ['threadLinearDensity', 1.5],
      // Medians of the triangles: 0.6 + √(0.35 × 0.2/2) over 0.6.
      ['anchorEfficiency', 1.311805],
      ['armThickness', 1.25],
      ['bondToughness', 1.25],
    ]);
  });

  it('are left out, with densities and the point of no return, where no advice is wanted', () => {
    const { changes, densities, pointOfNoReturn } = predictCoupon(peel, quick);
    expect([changes, densities, pointOfNoReturn]).toEqual([[], [], undefined]);
  });

  it('of a measured stitch are those of pattern, arms and bond', () => {
    const measured = { ...couponLaw('peel', peel.stitching!), measured: true as const };
    const { changes } = predictCoupon(couponOf('peel', light, 2, { measured }));
    expect(changes.map(({ name }) => name)).toEqual(['pitch', 'rowSpacing', 'armThickness', 'bondToughness']);
  });

  it('of an anchor as strong as the thread in the plane stop at the whole thread', () => {
    const { penetration } = peel.stitching!;
    const parameters = { anchorEfficiency: 0.9, sewnEfficiency: 0.9 };
    const { changes } = predictCoupon(couponOf('peel', light, 2, { penetration: { ...penetration, parameters } }));
    expect(changes.find(({ name }) => name === 'anchorEfficiency')?.factor).toBeCloseTo(1 / 0.9, 12);
  });
});

describe('more and fewer stitches', () => {
  it('give the design itself at its own density, more toughness with more, arms in the end', () => {
    const { densities, toughness, penetrationDensity: N = 0 } = whole;
    expect(densities).toHaveLength(9);
    expect(densities.map(({ penetrationDensity }) => Math.log2(penetrationDensity / N))).toEqual(
      [-2, -1.5, -1, -0.5, 0, 0.5, 1, 1.5, 2].map((power) => expect.closeTo(power, 9)),
    );
    const { nominal: _, ...interval } = toughness!.specimen;
    expect(densities[4]?.specimen.median).toBeCloseTo(interval.median, 6);
    expect(densities[4]?.specimen.high).toBeCloseTo(interval.high, 6);
    densities.slice(1).forEach(({ specimen }, i) => {
      expect(specimen.median).toBeGreaterThan(densities[i]!.specimen.median);
    });
    expect([densities[0]?.first, densities[8]?.first]).toEqual(['threadAtCrack', 'arm']);
  });

  it('break arms beyond the point of no return and not before, but for its two digits', () => {
    const factor = whole.pointOfNoReturn! / whole.penetrationDensity!;
    const breaks = (times: number) =>
      pulled(withDensity(middle, factor * times)).events.some(({ kind }) => kind === 'arm');
    expect([breaks(1 / 1.16), breaks(1.16)]).toEqual([false, true]);
    expect(Number(whole.pointOfNoReturn!.toPrecision(2))).toBe(whole.pointOfNoReturn);
  });

  it('have a point of no return where some half of the samples break their arms', () => {
    const { densities, pointOfNoReturn = 0 } = whole;
    const after = densities.findIndex(({ penetrationDensity }) => penetrationDensity > pointOfNoReturn);
    expect(densities[after - 2]!.armShare).toBeLessThan(0.5);
    expect(densities[after + 1]!.armShare).toBeGreaterThan(0.5);
    for (const { armShare, first } of densities) expect(first === 'arm').toBe(armShare > 0.5);
  });

  it('have the same point of no return wherever the origin of the pattern lies behind its first row', () => {
    const { from, to } = peel.stitching!;
    const shifted = couponOf('peel', light, 2, { origin: from - 5e-3 * 3, from, to });
    expect(predictCoupon(shifted).pointOfNoReturn).toBe(whole.pointOfNoReturn);
  });

  it('have no point of no return where so many cannot be sewn, and say so', () => {
    // A bundle of its own strength as thick as the holes are apart: nothing else about it is likely.
    const fluffy = { ...light, packing: 0.002 };
    const { penetration } = peel.stitching!;
    const found = predictCoupon(couponOf('peel', fluffy, 2, { penetration: { ...penetration, needleThread: fluffy } }));
    expect(found.pointOfNoReturn).toBeUndefined();
    expect(notesOf(found)).toContain('cannot be sewn');
  });

  it('have no point of no return where arms do not break', () => {
    const [arm] = peel.specimen.arms;
    const { failureStrain: _, ...endless } = arm;
    const found = predictCoupon({
      ...peel,
      specimen: { ...peel.specimen, arms: [endless, endless] } as Coupon['specimen'],
    });
    expect(found.pointOfNoReturn).toBeUndefined();
    expect(found.toughness?.ceiling).toBeUndefined();
    expect(found.shares.arm).toBe(0);
  });
});

describe('test results', () => {
  const at = (coupon: Coupon, peakForce: number) => [{ coupon, test: { peakForce, variation: 0.05 } }];
  const width = ({ low, high }: { low: number; high: number }) => Math.log(high / low);
  const free = predictCoupon(peel, quick);

  it('at the median narrow the range and keep the median', () => {
    const tested = predictCoupon(peel, { ...quick, tests: at(peel, free.peakForce.median) });
    expect(tested.calibrated).toBe(true);
    expect(width(tested.peakForce)).toBeLessThan(0.95 * width(free.peakForce));
    expect(Math.abs(tested.peakForce.median / free.peakForce.median - 1)).toBeLessThan(0.02);
    expect(Math.abs(tested.peakForce.nominal / free.peakForce.nominal - 1)).toBeLessThan(0.05);
  });

  it('elsewhere move the median toward them, and nothing beyond', () => {
    for (const factor of [0.8, 1.25]) {
      const wanted = factor * free.peakForce.median;
      const tested = predictCoupon(peel, { ...quick, tests: at(peel, wanted) });
      const moved = Math.log(tested.peakForce.median / free.peakForce.median) / Math.log(factor);
      expect(moved).toBeGreaterThan(0.1);
      expect(moved).toBeLessThan(1);
    }
  });

  it('narrow another coupon with the same stitch, not one with another', () => {
    const dcb = couponOf('dcb', light, 8);
    const before = predictCoupon(dcb, quick);
    const after = predictCoupon(dcb, { ...quick, tests: at(peel, free.peakForce.median) });
    expect(after.calibrated).toBe(true);
    expect(width(after.toughness!.specimen)).toBeLessThan(0.97 * width(before.toughness!.specimen));
    const other = couponOf('dcb', strong, 8);
    expect(predictCoupon(other, { ...quick, tests: at(peel, 50) })).toEqual(predictCoupon(other, quick));
  });

  it('move the middle values with the medians, and all that belongs to them', () => {
    const tested = predictCoupon(peel, { ...quick, tests: at(peel, 1.3 * free.peakForce.median) });
    const [moved, median] = [
      Math.log(tested.peakForce.nominal / free.peakForce.nominal),
      Math.log(tested.peakForce.median / free.peakForce.median),
    ];
    expect(median).toBeGreaterThan(0.03);
    expect(Math.abs(moved - median)).toBeLessThan(0.5 * median);
    expect(tested.result!.peakForce).toBe(tested.peakForce.nominal);
    expect(tested.verdict).toBe(tested.result!.verdict);
    expect(tested.law!.work).toBeGreaterThan(free.law!.work);
    expect(tested.bridging!.work.median).toBeGreaterThan(free.bridging!.work.median);
    // The sample in the middle of the weights: neither end of the tested range.
    expect(tested.peakForce.nominal).toBeGreaterThan(tested.peakForce.low);
    expect(tested.peakForce.nominal).toBeLessThan(tested.peakForce.high);
  });

  it('far outside all samples are left out, and by how much they are off is said', () => {
    const tested = predictCoupon(peel, { ...quick, tests: at(peel, 10 * free.peakForce.median) });
    expect(notesOf(tested)).toContain('10 times the median foretold');
    expect(tested.calibrated).toBeUndefined();
    expect(tested.peakForce).toEqual(free.peakForce);
    expect(tested.notes.find(({ text }) => text.startsWith('Tests contradict'))?.level).toBe('warning');
  });

  it('say nothing of arms of another laminate', () => {
    // Limited by its arms: the test tells of their strength.
    const armed = couponOf('peel', strong, 3);
    const force = 1.3 * predictCoupon(armed, quick).peakForce.median;
    const moved = (plies: number) => {
      const other = couponOf('peel', strong, plies);
      const [before, after] = [
        predictCoupon(other, quick),
        predictCoupon(other, { ...quick, tests: at(armed, force) }),
      ];
      expect(after.calibrated).toBe(true);
      return Math.log(after.peakForce.median / before.peakForce.median);
    };
    expect(moved(3)).toBeGreaterThan(0.1);
    expect(Math.abs(moved(4))).toBeLessThan(0.04);
  });

  it('of an unstitched coupon tell of the same bond among stitches, not of another', () => {
    const bare = couponOf('dcb', undefined, 8);
    const force = 0.6 * predictCoupon(bare, quick).peakForce.median;
    const stitched = couponOf('dcb', light, 8);
    const [before, after] = [
      predictCoupon(stitched, quick),
      predictCoupon(stitched, { ...quick, tests: at(bare, force) }),
    ];
    expect(after.calibrated).toBe(true);
    expect(after.toughness!.specimen.median).toBeLessThan(0.995 * before.toughness!.specimen.median);
    expect(after.onset!.load).toBeLessThan(0.99 * before.onset!.load);
    const tougher = couponOf('dcb', light, 8, {}, { bondToughness: 400 });
    expect(predictCoupon(tougher, { ...quick, tests: at(bare, force) })).toEqual(predictCoupon(tougher, quick));
  });

  it('of a coupon with the same stitch and another bond tell nothing of the bond', () => {
    // The bond makes most of what it reads.
    const tough = couponOf('dcb', light, 8, {}, { bondToughness: 3000 });
    const draws = drawSamples({});
    const tests = at(tough, 0.6 * predictCoupon(tough, quick).peakForce.median);
    const factor = (coupon: Coupon) => knownOf(coupon, tests, draws).middle.bondToughnessFactor;
    expect(factor(tough)).toBeLessThan(0.985);
    expect(Math.abs(factor(couponOf('dcb', light, 8)) - 1)).toBeLessThan(0.008);
  });
});

describe('an end-notched specimen', () => {
  const found = predictCoupon(couponOf('enf', light, 8), quick);

  it('slides its threads, and says that it was judged unsuitable', () => {
    const { peak } = couponLaw('enf', atMedians(found.coupon).stitching!);
    expect(found.law!.peak).toEqual({ force: near(peak.force), opening: near(peak.opening) });
    expect(found.notes.find(({ source }) => source === 'mouritz-jain-1999')?.level).toBe('warning');
    expect(found.discreteness).toBeUndefined();
    expect(found.toughness?.ceiling).toBeUndefined();
  });

  it('has no steady value while its zone never gets full', () => {
    expect(found.toughness?.steady).toBeUndefined();
    expect(found.zone).toBeUndefined();
    expect(notesOf(found)).toContain('no steady toughness in sliding');
    expect(found.verdict.first).toBe('bond');
  });

  it('warns of a measured curve that may be one of opening', () => {
    const measured = { ...couponLaw('peel', peel.stitching!), measured: true as const };
    expect(notesOf(predictCoupon(couponOf('enf', light, 8, { measured }), quick))).toContain(
      'taken as that of sliding',
    );
  });
});

describe('an edge that a wedge opens', () => {
  const coupon = couponOf('wedge', light, 4);
  const found = predictCoupon(coupon);

  it('is where the split stops, without toughness', () => {
    const rows = couponRows(coupon, couponLaw('wedge', atMedians(coupon).stitching!));
    const { kind: _, ...edge } = coupon.specimen as Extract<Coupon['specimen'], { kind: 'wedge' }>;
    const split = simulateWedge({ ...edge, rows });
    expect(found.wedge!.broken).toEqual(split.broken);
    expect(found.splitLength!.nominal).toBeCloseTo(split.splitLength, 9);
    expect(found.peakForce.nominal).toBeCloseTo(split.load, 6);
    expect(found.verdict).toEqual({ first: split.broken.at(-1)?.kind, load: found.peakForce.nominal });
    expect(found.runsThrough).toBe(0);
    expect([found.toughness, found.zone, found.result]).toEqual([undefined, undefined, undefined]);
    expect(notesOf(found)).toContain('No toughness for an edge');
  });

  it('has a range of simulated splits around it, and what limits them', () => {
    const { low, median, high } = found.splitLength!;
    expect(low).toBeLessThan(median);
    expect(median).toBeLessThan(high);
    expect(sum(Object.values(found.shares))).toBeCloseTo(1, 9);
  });

  it('that it splits through counts as the depth in as many samples as it does', () => {
    const through = (bondToughness: number, opening: number) =>
      predictCoupon(couponOf('wedge', light, 4, { to: 0.015 }, { bondToughness, depth: 0.03, opening }));
    const [never, some, most] = [through(800, 1.6e-3), through(100, 1.6e-3), through(40, 4e-3)];
    expect(never.runsThrough).toBe(0);
    expect(some.runsThrough).toBeGreaterThan(0.05);
    expect(some.runsThrough).toBeLessThan(0.95);
    expect(some.splitLength!.high).toBe(0.03);
    expect(notesOf(some)).toContain('through its whole depth');
    expect(most.wedge!.arrested).toBe(false);
    expect(most.runsThrough).toBeGreaterThan(0.9);
    expect(most.splitLength).toMatchObject({ nominal: 0.03, median: 0.03, high: 0.03 });
  });

  it('is narrowed by a peel with the same stitch', () => {
    const tests = [{ coupon: peel, test: { peakForce: whole.peakForce.median, variation: 0 } }];
    expect(predictCoupon(coupon, { tests }).calibrated).toBe(true);
  });

  it('without stitches stops at its natural length', () => {
    const bare = predictCoupon(couponOf('wedge', undefined, 4));
    expect(bare.verdict.first).toBe('bond');
    expect(bare.splitLength!.nominal / bare.wedge!.naturalLength).toBeCloseTo(1, 3);
  });

  it('is limited by an arm that breaks', () => {
    const [arm] = coupon.specimen.arms;
    const weak = { ...arm, failureStrain: { tension: 1e-3, compression: 1e-3 } };
    const broken = predictCoupon({
      ...coupon,
      specimen: { ...coupon.specimen, arms: [weak, weak] } as Coupon['specimen'],
    });
    expect(broken.verdict.first).toBe('arm');
    expect(broken.shares.arm).toBe(1);
  });
});

describe('a prediction is refused', () => {
  it.each([
    ['samples that are none', { samples: 5 }],
    ['a seed that is none', { seed: 0.5 }],
    ['a test without force', { tests: [{ coupon: peel, test: { peakForce: 0 } }] }],
    ['a variation that is none', { tests: [{ coupon: peel, test: { peakForce: 20, variation: 2 } }] }],
  ])('for %s', (_, options) => {
    expect(codeOf(() => predictCoupon(peel, options))).toBe('out-of-range');
  });

  it('for a range of the bond that does not hold it', () => {
    for (const range of [
      { low: 310, high: 400 },
      { low: 100, high: 200 },
      { low: 0, high: 400 },
    ]) {
      expect(codeOf(() => predictCoupon({ ...peel, bondToughnessRange: range }))).toBe('out-of-range');
    }
  });

  it('for a test that ends before the crack grows', () => {
    const short = couponOf('peel', light, 2, {}, { until: { displacement: 1e-4 } });
    expect(codeOf(() => predictCoupon(short))).toBe('not-computable');
  });

  it('for a thread without modulus', () => {
    const { modulus: _, ...unknown } = light;
    expect(codeOf(() => predictCoupon(couponOf('peel', unknown, 2)))).toBe('missing-key');
  });

  it('for a row beyond the bond', () => {
    expect(codeOf(() => predictCoupon(couponOf('peel', light, 2, { to: 0.2 })))).toBe('out-of-range');
  });
});
