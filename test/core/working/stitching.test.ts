import { describe, expect, it } from 'vitest';
import {
  type BridgingInput,
  bridgingLaw,
  inPlaneKnockdown,
  measuredBridgingLaw,
  type Pattern,
  type PenetrationInput,
  type RodInput,
  type StitchPlan,
  showMeasured,
  stitchSummary,
  stitchType,
  stitchTypeIds,
  type ToughnessArm,
  toughness,
} from '../../../packages/core/src/stitch/index.js';
import type { RecordedStep, RuleName } from '../../../packages/core/src/working/index.js';
import { aramid, penetration, plain } from '../stitch/bridging/support.js';
import { expectNear, mm, polyester40 } from '../stitch/support.js';
import { misses } from './support.js';
import { ambiguous, named, worked } from './worked.js';

const polyester = { ...polyester40, tenacity: 0.55e6, modulus: 4.5e6 };
const field = { length: 60 * mm, width: 50 * mm };
const edge = { offset: 6 * mm, length: 83 * mm, pitch: 4 * mm };

const patterns: Readonly<Record<string, Pattern>> = {
  parallel: { kind: 'parallel', pitch: 4 * mm, rowSpacing: 5 * mm },
  staggered: { kind: 'staggered', pitch: 4 * mm, rowSpacing: 5 * mm },
  'staggered by a quarter': { kind: 'staggered', pitch: 9 * mm, rowSpacing: 3 * mm, shift: 0.25 },
  zigzag: { kind: 'zigzag', pitch: 3 * mm, swing: 2.5 * mm, rowSpacing: 5 * mm },
  'zigzag over its neighbours': { kind: 'zigzag', pitch: 3 * mm, swing: 7 * mm, rowSpacing: 4 * mm },
  crossing: { kind: 'crossing', pitch: 4 * mm, rowSpacing: 6 * mm, second: { pitch: 3 * mm, rowSpacing: 8 * mm } },
  'one edge row': { kind: 'rows', rows: [edge] },
  'three edge rows': {
    kind: 'rows',
    rows: [edge, { ...edge, offset: 11 * mm, stagger: 2 * mm }, { ...edge, offset: 15 * mm, pitch: 5 * mm }],
  },
  'edge rows in a band': { kind: 'rows', rows: [edge, { ...edge, offset: 11 * mm }], bandWidth: 14 * mm },
};

function plan(changes: Partial<StitchPlan> = {}): StitchPlan {
  const pattern = changes.pattern ?? (patterns.parallel as Pattern);
  return {
    type: '301',
    needleThread: aramid,
    underThread: polyester,
    dryThickness: 3 * mm,
    waste: 0.12,
    tails: 80 * mm,
    sewing: { rate: 5, setup: 20, handling: 300 },
    ...(pattern.kind === 'rows' ? {} : { field }),
    ...changes,
    pattern,
  };
}

describe('the working of stitch geometry', () => {
  const cases = Object.keys(patterns).flatMap((name) => stitchTypeIds.map((type) => [name, type] as const));

  it.each(cases)(
    '%s in type %s: every formula gives its number, and the numbers are those of the summary',
    (name, type) => {
      const given = plan({ pattern: patterns[name] as Pattern, type });
      const { result, steps } = worked((working) => stitchSummary(given, working));
      expect(misses(steps)).toEqual([]);
      expect(result).toEqual(stitchSummary(given));
      const written: Record<string, number> = Object.assign({}, ...steps.map(({ values }) => values));
      expect(written).toMatchObject({
        N: result.penetrationDensity,
        l_R: result.rowLengthPerArea,
        m: result.meanRun,
        d_B: result.bundleDiameter,
        l_t: result.threadLengthPerStitch,
        l_tA: result.threadLengthPerArea,
        m_tA: result.threadMassPerArea,
        h_t: result.addedThickness,
        d_h: result.holeWidth,
        x_n: result.netWidth,
        d_nn: result.nearestNeighbour,
        n_st: result.stitches,
        t_s: result.sewingTime,
      });
      expect(written.c_f).toBe(result.arealFraction);
      expect(ambiguous(steps)).toEqual([]);
    },
  );

  it('counts 5 stitches per square centimetre for a pitch of 4 mm in rows 5 mm apart', () => {
    const { steps } = worked((working) => stitchSummary(plan(), working));
    expectNear(named(steps, 'densityOfRows').values.N ?? 0, 5e4);
  });

  it('takes a needle of number 90 to be 0.9 mm thick', () => {
    const { steps } = worked((working) => stitchSummary(plan({ needleNumber: 90 }), working));
    expect(misses(steps)).toEqual([]);
    expectNear(named(steps, 'needleDiameter').values.d_N ?? 0, 0.9 * mm);
    expect(steps.map(({ rule }) => rule)).toContain('holeAsNeedle');
  });

  it('names no source of a hole that is given, and leaves out totals without a field', () => {
    const { field: _, ...endless } = plan({ needleNumber: 90, holeWidth: 0.7 * mm });
    const { steps } = worked((working) => stitchSummary(endless, working));
    const used = steps.map(({ rule }) => rule);
    expect(misses(steps)).toEqual([]);
    for (const rule of ['holeAsNeedle', 'holeOfBundle', 'threadsOfPart', 'sewingTime'])
      expect(used).not.toContain(rule);
  });
});

/** Area under a curve by the rule of the trapezium, written anew. */
const area = ({ opening, force }: { readonly opening: readonly number[]; readonly force: readonly number[] }): number =>
  opening.slice(1).reduce((sum, to, i) => {
    const [from = 0, before = 0, after = 0] = [opening[i], force[i], force[i + 1]];
    return sum + (to - from) * (before + 0.5 * (after - before));
  }, 0);

const bends = (changes: Partial<PenetrationInput> = {}): PenetrationInput => {
  const { beddingIn: _, ...parameters } = plain;
  return penetration({ bends: 'yielding', pitch: 4 * mm, parameters, ...changes });
};
const rod: RodInput = {
  kind: 'rod',
  diameter: 0.28 * mm,
  modulus: 120e9,
  strength: 1.5e9,
  embedded: [1.5 * mm, 1.2 * mm],
  lean: 10,
};
const two = stitchType('301');
const scattered = { ...plain, siteScatter: 0.15 };

/** One stitch for each branch of the law, with the rules that only it reaches. */
const stitches: readonly (readonly [string, BridgingInput, readonly RuleName[]])[] = [
  [
    'bends that do not give way',
    penetration(),
    ['legsFaceToFace', 'legsOfOneThread', 'beddingIn', 'sharesWithoutScatter'],
  ],
  [
    'bends that bed in',
    penetration({ parameters: { ...scattered, beddingIn: 0.3 } }),
    ['stretchOfSide', 'sharesOfSites'],
  ],
  ['a crack above the lock', penetration({ type: two, crackDepth: 0.7 * mm }), ['legsAboveLock']],
  ['a crack below the lock', penetration({ type: two, crackDepth: 2.4 * mm }), ['legsBelowLock']],
  ['a crack in the lock', penetration({ type: two, underThread: polyester }), ['legsAtLock', 'lockSite']],
  [
    'two unlike threads in one hole',
    penetration({ type: stitchType('saddle'), underThread: polyester }),
    ['legsOfTwoThreads'],
  ],
  [
    'one leg that breaks in the crack',
    penetration({ type: stitchType('running'), parameters: { ...plain, sewnEfficiency: 0.4 } }),
    ['crackSite'],
  ],
  ['a leg that pulls out', penetration({ anchors: { underFace: 'none' } }), ['slipOfSide']],
  [
    'friction that keeps all from the anchors',
    penetration({ thickness: 9 * mm, parameters: { ...scattered, frictionStress: 40e6 } }),
    ['slipOfSide'],
  ],
  ['no friction', penetration({ parameters: { ...plain, frictionStress: 0 } }), ['stretchOfSide']],
  ['bends that yield', bends(), ['yieldingBend', 'floatBehindBend', 'bendOfSide', 'floatStretches', 'stretchWithBend']],
  ['bends that yield, long floats', bends({ pitch: 40 * mm }), ['floatSlips']],
  ['bends that yield, no pitch given', (({ pitch: _, ...rest }) => rest)(bends()), ['yieldingBend', 'stretchWithBend']],
  [
    'bends that yield but find no more room',
    bends({ thickness: 1 * mm, parameters: { bearingPressure: 40e6 } }),
    ['bendOfSide'],
  ],
  ['legs that lean', { ...penetration(), path: { angle: 15 } }, ['threadAcrossCrack', 'forcesOnCrack', 'lawAlongPath']],
  [
    'sliding',
    { ...penetration({ parameters: scattered }), path: { angle: 90 } },
    ['threadAcrossCrack', 'lawAlongPath'],
  ],
  [
    'sliding until the thread lies in the crack',
    { ...penetration({ thickness: 12 * mm, parameters: { ...plain, beddingIn: 5 } }), path: { angle: 90 } },
    ['threadInCrack'],
  ],
  [
    'a given history',
    {
      ...penetration(),
      path: {
        history: [
          { opening: 0.1 * mm, sliding: 0 },
          { opening: 0.1 * mm, sliding: 2 * mm },
        ],
      },
    },
    ['threadAcrossCrack'],
  ],
  [
    'a history too short to break it',
    { ...penetration(), path: { history: [{ opening: 0.01 * mm, sliding: 0 }] } },
    ['lawAlongPath'],
  ],
  ['a rod', rod, ['rodInHole', 'sideSlips']],
];

describe('the working of one stitch', () => {
  it.each(stitches)('%s: every formula gives its number', (_, input, rules) => {
    const { result, steps } = worked((working) => bridgingLaw(input, working));
    expect(misses(steps)).toEqual([]);
    expect(ambiguous(steps)).toEqual([]);
    const used = steps.map(({ rule }) => rule);
    for (const rule of rules) expect(used).toContain(rule);
    const plainly = bridgingLaw(input);
    expect(result).toEqual(plainly);
    const last = steps.at(-1)?.values ?? {};
    expectNear(last.W ?? 0, area(plainly), 1e-12);
    if (input.path === undefined) {
      expect(named(steps, 'weakestSite').values.F_p).toBe(plainly.peak.force);
      expectNear(named(steps, 'bothSides').values.w_p ?? 0, plainly.peak.opening);
      // What the chords of the drawn law lose is small: nothing is hidden in it.
      expect(Math.abs(last.W_x ?? 1)).toBeLessThan(5e-4 * (last.W ?? 0));
    } else {
      expect(last).toMatchObject({ F_m: Math.max(...plainly.force), s_F: plainly.peak.opening });
    }
  });

  const followed = stitches.filter(
    ([name, { path }]) => path !== undefined && name !== 'a history too short to break it',
  );

  it.each(followed)('%s: as much thread is drawn out as both sides let out', (_, input) => {
    const { steps } = worked((working) => bridgingLaw(input, working));
    const across = steps.find(({ rule }) => rule === 'threadAcrossCrack' || rule === 'threadInCrack');
    expectNear(across?.values.s_d ?? 0, named(steps, 'bothSides').values.w_p ?? 0, 1e-9);
  });

  it('splits the stitches between the sites, all of the weakest where nothing scatters', () => {
    const shares = ({ values }: RecordedStep) => [values.x_c, values.x_1, values.x_2].map((x = Number.NaN) => x);
    const alone = worked((working) => bridgingLaw(penetration({ crackDepth: 1 * mm }), working)).steps;
    expect(shares(named(alone, 'sharesWithoutScatter'))).toEqual([0, 1, 0]);
    const all = worked((working) => bridgingLaw(penetration({ parameters: scattered }), working)).steps;
    expectNear(
      shares(named(all, 'sharesOfSites')).reduce((sum, x) => sum + x, 0),
      1,
    );
  });

  it('sums the pieces of a measured curve', () => {
    const points = [
      { opening: 0, force: 0 },
      { opening: 0.1 * mm, force: 120 },
      { opening: 0.1 * mm, force: 20 },
      { opening: 0.5 * mm, force: 0 },
    ];
    const { steps } = worked((working) => showMeasured(measuredBridgingLaw(points, 'threadAtCrack'), working));
    expect(misses(steps)).toEqual([]);
    // Two triangles: 120 N over 0.1 mm and 20 N over 0.4 mm.
    expectNear(named(steps, 'areaUnderPoints').values.W ?? 0, 10e-3);
  });
});

const arm: ToughnessArm = {
  bendingStiffness: 4,
  thickness: 1.25 * mm,
  failureStrain: { tension: 0.02, compression: 0.015 },
};

describe('the working of the toughness that stitches add', () => {
  const law = bridgingLaw(penetration());
  const base = { law, penetrationDensity: 5e4, bondToughness: 600 };

  it.each([
    ['no arm is given', base],
    [
      'arms and rows are given',
      { ...base, arm, otherArm: { ...arm, bendingStiffness: 9 }, rowDistance: 5 * mm, length: 200 * mm },
    ],
    ['the zone does not fit', { ...base, arm, length: 10 * mm }],
    ['rows are further apart than any computed case', { ...base, arm, rowDistance: 60 * mm }],
    ['an arm has no strength', { ...base, arm, otherArm: { bendingStiffness: 9, thickness: 2 * mm } }],
    ['the stitch was measured', { ...base, law: { ...law, measured: true as const }, arm }],
  ])('every formula gives its number where %s', (_, input) => {
    const { result, steps } = worked((working) => toughness(input, working));
    expect(misses(steps)).toEqual([]);
    expect(result).toEqual(toughness(input));
    expect(named(steps, 'toughnessAdded').values.G_st).toBe(result.increment);
    expect(steps.find(({ rule }) => rule === 'steadyToughness')?.values.G_ss).toBe(result.steady);
    expect(steps.find(({ rule }) => rule === 'bridgingLength')?.values.l_b).toBe(result.bridgingLength);
    const { low: f_T1, high: f_T2 } = result.discreteness?.testFactor ?? {};
    expect(steps.find(({ rule }) => rule === 'testOverSteady')?.values ?? {}).toMatchObject(
      f_T1 === undefined ? {} : { f_T1, f_T2 },
    );
    expect(ambiguous(steps)).toEqual([]);
  });
});

describe('the working of the price in the plane', () => {
  const base = {
    ply: { E1: 120e9, G12: 4.5e9, nu12: 0.3 },
    spacing: 5 * mm,
    pitch: 4 * mm,
    penetrationDensity: 5e4,
    bundleDiameter: 0.45 * mm,
  };

  it.each([
    ['nothing of the hole is known', base],
    ['hole and needle are known', { ...base, holeWidth: 0.6 * mm, needleDiameter: 0.9 * mm }],
    ['the disturbed strips meet', { ...base, spacing: 1 * mm, pitch: 1 * mm }],
  ])('every formula gives its number where %s', (_, input) => {
    const { result, steps } = worked((working) => inPlaneKnockdown(input, working));
    expect(misses(steps)).toEqual([]);
    expect(result).toEqual(inPlaneKnockdown(input));
    const written: Record<string, number> = Object.assign({}, ...steps.map(({ values }) => values));
    expect(written).toMatchObject({
      k_E: result.modulus.value,
      k_C: result.compression.upper.value,
      k_T: result.tension.value,
      k_p: result.crowding.upper.value,
    });
  });
});
