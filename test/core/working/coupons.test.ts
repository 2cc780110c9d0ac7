import { describe, expect, it } from 'vitest';
import {
  type ArmOptions,
  armOf,
  type Coupon,
  type CouponTest,
  predictCoupon,
  type SpecimenResult,
  showCoupon,
  simulateDcb,
  simulateEnf,
  simulatePeel,
  simulateWedge,
} from '../../../packages/core/src/fracture/index.js';
import { laminate, stiffness } from '../../../packages/core/src/laminate/index.js';
import { measuredBridgingLaw, type PenetrationInput } from '../../../packages/core/src/stitch/index.js';
import { type RuleName, startWorking } from '../../../packages/core/src/working/index.js';
import { cloth, couponOf, light, strong } from '../fracture/coupon/support.js';
import { expectNear, mm } from '../stitch/support.js';
import { misses } from './support.js';
import { ambiguous, named, worked } from './worked.js';

const armOfPlies = (plies: number) => armOf(laminate(Array.from({ length: plies }, () => cloth)));
const [thinner, thicker] = [armOfPlies(1), armOfPlies(3)];
const measured = measuredBridgingLaw(
  [
    { opening: 0, force: 0 },
    { opening: 0.1 * mm, force: 60 },
    { opening: 0.4 * mm, force: 0 },
  ],
  'threadAtCrack',
);

const { penetration } = couponOf('peel', light, 1).stitching ?? {};
const weakAnchors = { ...penetration, parameters: { anchorEfficiency: 0.3 } } as PenetrationInput;

/** A coupon of each kind and of each branch, with the rules that it must reach. */
const coupons: readonly (readonly [string, Coupon, readonly RuleName[]])[] = [
  ['a plain double cantilever', couponOf('dcb', undefined, 5), ['openingLoad', 'openingCompliance', 'readMean']],
  [
    'a stitched double cantilever',
    couponOf('dcb', light, 8),
    ['openingRows', 'areaRows', 'bridgingLength', 'rowsApart'],
  ],
  [
    'a measured stitch',
    couponOf('dcb', light, 8, { measured }),
    ['areaUnderPoints', 'steadyToughness', 'usableToughness'],
  ],
  ['arms that break', couponOf('dcb', strong, 4), ['rowsHold', 'armBends', 'armShare', 'nextToGive', 'armBreaks']],
  ['unlike arms', couponOf('dcb', light, 3, {}, { arms: [thicker, armOfPlies(6)] }), ['openingPair', 'readMean']],
  ['a plain end-notched flexure', couponOf('enf', undefined, 5), ['slidingPair', 'slidingLoad', 'slidingRows']],
  [
    'a stitched end-notched flexure',
    couponOf('enf', light, 5),
    ['toughnessAdded', 'lawAlongPath', 'rowsHold', 'slidingBends'],
  ],
  ['one with a short crack', couponOf('enf', undefined, 5, {}, { crackLength: 0.02 }), ['slidingBendsInBond']],
  ['one with two loads', couponOf('enf', undefined, 5, {}, { loadSpan: 0.04, friction: 0.2 }), ['slidingRows']],
  ['a plain peel', couponOf('peel', undefined, 1), ['peelLoad', 'peelRows', 'peelFrontRows', 'areaRows']],
  [
    'a stitched peel',
    couponOf('peel', light, 1, { penetration: weakAnchors }),
    ['peelRows', 'landingRows', 'nextToGive'],
  ],
  ['a peel of unlike arms', couponOf('peel', light, 1, {}, { arms: [thinner, thicker] }), ['peelUnlikeRows']],
  [
    'a plain edge opened by a wedge',
    couponOf('wedge', undefined, 3),
    ['splitWithoutStitches', 'splitMomentAlone', 'splitTip', 'armBends', 'armShare'],
  ],
  [
    'a stitched edge opened by a wedge',
    couponOf('wedge', strong, 3),
    ['splitStops', 'rowsHold', 'splitMoment', 'armBendsBetweenRows'],
  ],
  ['a mouth too narrow to split', couponOf('wedge', undefined, 8, {}, { opening: 0.001 * mm }), ['splitTip']],
];

const show = (coupon: Coupon, tests: readonly { coupon: Coupon; test: CouponTest }[] = []) =>
  worked((working) => showCoupon(coupon, working, tests)).steps;

describe('the working of a coupon', () => {
  it.each(coupons)('%s: every formula gives its number', (_name, coupon, rules) => {
    const steps = show(coupon);
    expect(misses(steps)).toEqual([]);
    const used = steps.map(({ rule }) => rule);
    for (const rule of rules) expect(used).toContain(rule);
    for (const { values, rows = [] } of steps) {
      for (const value of [values, ...rows].flatMap((one) => Object.values(one)))
        expect(Number.isFinite(value)).toBe(true);
    }
  });

  it.each(coupons.filter(([, { specimen }]) => specimen.kind !== 'wedge'))(
    '%s: its numbers are those of the prediction',
    (_name, coupon) => {
      const steps = show(coupon);
      const { toughness, verdict, result } = predictCoupon(coupon, { samples: 20, advice: false });
      const read = steps.find(({ part }) => part[0] === 'reading');
      expect(read?.values.G_R).toBe(toughness?.specimen.nominal);
      expect(named(steps, 'greatestLoad').values.P_max).toBe(result?.peakForce);
      const bent = steps.find(({ part, values }) => part[0] === 'sharpestBend' && values.x_a !== undefined);
      if (result?.armShare !== undefined) expectNear(bent?.values.x_a ?? 0, result.armShare);
      const next = steps.find(({ rule }) => rule === 'nextToGive');
      expect(next?.values.f_n).toBe(verdict.margin);
      expect(next?.part.slice(-2)).toEqual(next === undefined ? undefined : [verdict.first, verdict.next]);
      const areas = named(steps, 'areaRows').rows?.map(({ G_A }) => G_A);
      const byArea = result?.resistance.map((point) => point.byArea) ?? [];
      expect(byArea.slice(0, areas?.length)).toEqual(areas);
    },
  );
});

describe('the keys of the working of a coupon', () => {
  it.each(coupons)('%s: a symbol of a part names one number', (_name, coupon) => {
    expect(ambiguous(show(coupon))).toEqual([]);
  });
});

describe('what the working of a stitched coupon must show', () => {
  it('an arm of a peel breaks at the hindmost row, whose moment follows from the load', () => {
    const steps = show(couponOf('peel', strong, 1));
    const { x_a, x_m = 0 } = named(steps, 'peelBends').values;
    expectNear(x_a ?? 0, 1, 1e-4);
    const rows = named(steps, 'rowsHold').rows ?? [];
    expectNear(x_m, Math.min(...rows.map(({ x_r = Number.NaN }) => x_r)), 1e-9);
    const [{ G_L = 0 } = {}] = named(steps, 'peelRows', 'gaveWay', 'arm').rows ?? [];
    expectNear(named(steps, 'peelBendEnergy').values.G_e ?? 0, G_L, 1e-4);
  });

  it('an edge stops splitting where the tip opens as moment and shear force of statics say', () => {
    const { specimen, ...rest } = couponOf('wedge', strong, 3);
    const steps = show({ specimen, ...rest });
    const { w_c = 0, w_t = 0, G_t = 0 } = named(steps, 'splitTip').values;
    // Rows ahead of the tip hold it too.
    expectNear(w_c, w_t, 0.02);
    expectNear(G_t, specimen.bondToughness, 1e-6);
  });

  it('tells the stitch at the middle of what is known by the medians that are no likeliest values', () => {
    const steps = show(couponOf('dcb', light, 5));
    const { x_M } = named(steps, 'medianAboveLikeliest', 'stitch', 'beddingIn').values;
    // The median of a triangle that falls from 0 to 0.5: (1 - x/0.5)² = 1/2.
    expectNear(x_M ?? 0, 0.5 * (1 - Math.SQRT1_2));
    expect(named(steps, 'beddingIn', 'stitch').values.f_b).toBe(x_M);
  });

  it('has the warnings of the simulation', () => {
    const coupon = couponOf('dcb', strong, 4);
    const { working, notes } = startWorking();
    showCoupon(coupon, working);
    const texts = notes.flatMap((one) => one.notes.map(({ text }) => text));
    const { result } = predictCoupon(coupon, { samples: 20, advice: false });
    expect(texts).toEqual(expect.arrayContaining((result?.notes ?? []).map(({ text }) => text)));
  });
});

describe('what the working of a plain coupon must show', () => {
  const bondLoad = ({ events }: SpecimenResult): number =>
    events.find(({ kind }) => kind === 'bond')?.load ?? Number.NaN;
  const of = <Kind extends Coupon['specimen']['kind']>(kind: Kind, changes: object = {}) => {
    const coupon = couponOf(kind, undefined, 5, {}, changes);
    return { coupon, specimen: coupon.specimen as Extract<Coupon['specimen'], { kind: Kind }>, steps: show(coupon) };
  };

  it('a double cantilever grows at the load of the closed form, and opens as its compliance says', () => {
    const { specimen, steps } = of('dcb');
    const result = simulateDcb({ ...specimen, rows: [] });
    const { P_0 = 0 } = named(steps, 'openingLoad').values;
    expectNear(bondLoad(result), P_0, 1e-6);
    const [{ Delta = 0, G_L = 0 } = {}] = named(steps, 'openingRows', 'gaveWay', 'bond').rows ?? [];
    expectNear(Delta, P_0 * (named(steps, 'openingCompliance').values.C_n ?? 0), 1e-6);
    expectNear(G_L, specimen.bondToughness, 1e-6);
  });

  it('a double cantilever of thick arms reads nearly 12 P² a²/(b² E h³)', () => {
    const { specimen, steps } = of('dcb', { crackLength: 0.09, length: 0.2 });
    const [{ P = 0, a = 0, G_L = 0 } = {}] = named(steps, 'openingRows', 'gaveWay', 'bond').rows ?? [];
    const [{ bendingStiffness, thickness }] = specimen.arms;
    const E = (12 * bendingStiffness) / thickness ** 3;
    const G = (12 * P * P * a * a) / (specimen.width ** 2 * E * thickness ** 3);
    expect(G_L / G).toBeGreaterThan(1);
    expect(G_L / G).toBeLessThan(1.08);
  });

  it('an end-notched flexure grows at the load of the closed form', () => {
    const { specimen, steps } = of('enf');
    expectNear(bondLoad(simulateEnf({ ...specimen, rows: [] })), named(steps, 'slidingLoad').values.P_0 ?? 0, 1e-6);
  });

  it('a peel sets free just the toughness of its bond at the front while it grows, and reads the same from its load', () => {
    const { specimen, steps } = of('peel', { arms: [thinner, thinner] });
    const grips = named(steps, 'peelRows', 'growth').rows ?? [];
    const front = named(steps, 'peelFrontRows', 'growth').rows ?? [];
    expect(front.length).toBeGreaterThan(10);
    for (const { G_F = 0 } of front) expectNear(G_F, specimen.bondToughness, 1e-6);
    for (const { G_L = 0 } of grips) expectNear(G_L, specimen.bondToughness, 1e-4);
    const { P_0 = 0 } = named(steps, 'peelLoad').values;
    expect(Math.abs(bondLoad(simulatePeel({ ...specimen, rows: [] })) / P_0 - 1)).toBeLessThan(0.05);
  });

  it('an edge splits without stitches to where the tip sets free the toughness of the bond, by both ways', () => {
    const { specimen, steps } = of('wedge');
    const { a_s, G_ns = 0 } = named(steps, 'splitWithoutStitches').values;
    const result = simulateWedge({ ...specimen, rows: [] });
    expect(a_s).toBe(result.naturalLength);
    expectNear(G_ns, specimen.bondToughness, 1e-6);
    expectNear(named(steps, 'splitTip').values.G_t ?? 0, specimen.bondToughness, 1e-3);
  });
});

describe('the working of a coupon that tests narrow', () => {
  const coupon = couponOf('dcb', light, 8);
  const bond = coupon.specimen.bondToughness;
  const test = { peakForce: 1.1 * predictCoupon(coupon, { samples: 20, advice: false }).peakForce.nominal };

  it.each([
    ['with the bond as given', coupon, 'bondAtMiddle'],
    [
      'with the bond in a range about it',
      { ...coupon, bondToughnessRange: { low: 0.4 * bond, high: 2 * bond } },
      'bondAboveLikeliest',
    ],
    [
      'with the bond at the top of its range',
      { ...coupon, bondToughnessRange: { low: 0.4 * bond, high: bond } },
      'bondBelowLikeliest',
    ],
  ] as const)('shows the middle that the prediction takes, %s', (_name, one, rule) => {
    const tests = [{ coupon: one, test }];
    const steps = show(one, tests);
    expect(misses(steps)).toEqual([]);
    const { toughness, calibrated } = predictCoupon(one, { tests, advice: false });
    expect(calibrated).toBe(true);
    expect(steps.find(({ part }) => part[0] === 'reading')?.values.G_R).toBe(toughness?.specimen.nominal);
    const { f_D = 0 } = named(steps, 'armsAtMiddle').values;
    expect(Math.abs(f_D - 1)).toBeLessThan(0.1);
    const { D_1 } = named(steps, 'armsAtMiddle').values;
    expect(named(steps, 'openingPair').values.D_1).toBe(D_1);
    expect(named(steps, 'openingLoad').values.G_0).toBe(named(steps, rule).values.G_0);
  });

  it('keeps the middle of the priors where a test contradicts them', () => {
    const steps = show(coupon, [{ coupon, test: { peakForce: 1e6, variation: 0.01 } }]);
    expect(steps.map(({ rule }) => rule)).not.toContain('middleOfTests');
  });
});

describe('the working of an arm', () => {
  const skew = laminate([0, 30, -30, 90].map((angle) => ({ ...cloth, name: 'ply', E2: 9e9, angle })));
  const options: readonly ArmOptions[] = [
    {},
    { across: 'free' },
    { crackFace: 'top', breaking: 'fibres' },
    { E3: 8e9 },
  ];

  it.each(options)('%o: every formula gives its number', (option) => {
    const { result, steps } = worked((working) => armOf(skew, option, working));
    expect(misses(steps)).toEqual([]);
    expect(result).toEqual(armOf(skew, option));
    const written: Record<string, number> = Object.assign({}, ...steps.map(({ values }) => values));
    expect(written).toMatchObject({ D_a: result.bendingStiffness, A_a: result.axialStiffness });
    expect(written.eps_t).toBe(result.failureStrain?.tension);
    expect(written.E_z).toBe(option.E3 === undefined ? result.E3 : undefined);
  });

  it('held across is stiffer than free, and both are near D11 of a laminate without coupling', () => {
    const plain = laminate(Array.from({ length: 4 }, () => cloth));
    const { D } = stiffness(plain);
    const of = (across: 'held' | 'free') => {
      const { steps } = worked((working) => armOf(plain, { across }, working));
      return named(steps, across === 'held' ? 'armHeldAcross' : 'armFreeAcross').values.D_a ?? 0;
    };
    expectNear(of('held'), D[0][0] ?? 0);
    expect(of('free')).toBeLessThan(of('held'));
    expect(of('free')).toBeGreaterThan(0.97 * of('held'));
  });
});
