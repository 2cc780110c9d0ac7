import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { againstPrint } from '../../../packages/core/src/design/index.js';
import type { CouponChange, DensityPoint, SpecimenEvent } from '../../../packages/core/src/fracture/index.js';
import { adviceSentences } from '../../../packages/core/src/report/sections/coupons/changes.js';
import { checkBlocks, failureStrainOf } from '../../../packages/core/src/report/sections/coupons/checks.js';
import {
  densityFigure,
  limitStretches,
  noReturnWords,
} from '../../../packages/core/src/report/sections/coupons/density.js';
import { eventWords, peakState, recordBlocks } from '../../../packages/core/src/report/sections/coupons/record.js';
import { thinned } from '../../../packages/core/src/report/sections/coupons/thinned.js';
import { verdictSentences } from '../../../packages/core/src/report/sections/coupons/verdict.js';
import { shareWords } from '../../../packages/core/src/report/sections/shares.js';
import { changed, named, sharesOf, tableOf, wordsOf } from './coupon-support.js';

const open = named('open');
const peak = { median: 84, low: 62, high: 97, nominal: 80 };
const withVerdict = (verdict: typeof open.prediction.verdict, shares = sharesOf({ [verdict.first]: 1 })) =>
  changed(open, { verdict, shares, peakForce: peak });

describe('the verdict in a sentence', () => {
  it('names what breaks, at what load, and what would be next', () => {
    const one = withVerdict({ first: 'arm', load: 80, next: 'threadAtAnchor', margin: 1.3 });
    expect(verdictSentences(one, 'metric')).toBe(
      'The arms break at 84 N (62 to 97 N); the thread at its lock or bend would be next at 1.3 times that load. In all samples of the uncertain values the arms break.',
    );
    expect(verdictSentences(one, 'us')).toContain('The arms break at 18.9 lbf (13.9 to 21.8 lbf);');
  });

  it('tells the load of the limit from the highest load where they differ, and says when nothing else is in reach', () => {
    expect(verdictSentences(withVerdict({ first: 'bond', load: 40 }), 'metric')).toMatch(
      /^The bond gives way at 40 N; nothing else is in reach\. The highest load of the test is 84 N \(62 to 97 N\)\./,
    );
  });

  it('reads margins at and below 1', () => {
    const at = (margin: number) =>
      verdictSentences(withVerdict({ first: 'threadPullOut', load: 80, next: 'arm', margin }), 'metric');
    expect(at(1.004)).toContain('; the arms would give way at the same load.');
    expect(at(0.7)).toContain(
      "if the thread's hold in the laminate could not fail, the arms break at 0.7 of that load.",
    );
  });

  it('gives the share of the samples of each', () => {
    const shares = sharesOf({ threadAtCrack: 0.27, arm: 0.73 });
    const words = verdictSentences(withVerdict({ first: 'arm', load: 80 }, shares), 'metric');
    expect(words).toContain('the arms break in 73 %, the thread breaks at the crack in 27 %.');
  });

  it('leads with the majority of the samples where the middle values say something else', () => {
    const shares = sharesOf({ threadAtCrack: 0.06, arm: 0.94 });
    const words = (verdict: typeof open.prediction.verdict, own = shares) =>
      verdictSentences(withVerdict(verdict, own), 'metric');
    expect(words({ first: 'threadAtCrack', load: 80, next: 'arm', margin: 1.1 })).toBe(
      'In 94 % of the samples the arms break; with the middle values the thread at the crack gives way first. The highest load of the test is 84 N (62 to 97 N). Over the samples of the uncertain values: the arms break in 94 %, the thread breaks at the crack in 6 %.',
    );
    expect(words({ first: 'arm', load: 80 }, sharesOf({ bond: 0.6, arm: 0.4 }))).toMatch(
      /^In 60 % of the samples the bond gives way; with the middle values the arms give way first\./,
    );
    // Halves are no majority against the middle values.
    expect(words({ first: 'arm', load: 80 }, sharesOf({ bond: 0.5, arm: 0.5 }))).toMatch(/^The arms break at/);
  });

  it('gives shares below a percent as such, and percents that add up', () => {
    expect(shareWords([0.997, 0.003])).toEqual(['> 99 %', '< 1 %']);
    expect(shareWords([0.984, 0.016])).toEqual(['98 %', '2 %']);
    expect(shareWords([0.336, 0.332, 0.332])).toEqual(['34 %', '33 %', '33 %']);
    expect(shareWords([1, 0])).toEqual(['100 %', '0 %']);
    expect(shareWords([0.94, 0.06])).toEqual(['94 %', '6 %']);
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 50 }), { minLength: 1, maxLength: 5 }), (counts) => {
        const total = counts.reduce((sum, one) => sum + one, 0);
        const words = shareWords(counts.map((one) => one / total));
        if (words.some((word) => /[<>]/.test(word))) return;
        expect(words.reduce((sum, word) => sum + Number.parseInt(word, 10), 0)).toBe(100);
      }),
    );
  });

  it('tells of a wedged edge where the split stops, which rows break, and whether an arm does', () => {
    const edge = named('wedged');
    const { wedge } = edge.prediction;
    if (wedge === undefined) throw new Error('no wedge');
    const rows = wedge.rows.map((row, i) => ({ ...row, broken: i === 0 }));
    const splitLength = { median: 0.012, low: 0.01, high: 0.02, nominal: 0.011 };
    const change = { wedge: { ...wedge, rows, arrested: true, naturalLength: 0.03 }, splitLength, runsThrough: 0 };
    const held = verdictSentences(changed(edge, change), 'metric');
    expect(held).toMatch(/^The split stops 12 mm from the edge \(10 to 20 mm\)/);
    expect(held).toContain(`1 of ${rows.length} rows breaks; without rows it would split to 30 mm.`);
    expect(held).not.toContain('AN ARM BREAKS');
    expect(verdictSentences(changed(edge, { ...change, verdict: { first: 'arm', load: 5 } }), 'metric')).toContain(
      'AN ARM BREAKS',
    );
    const { specimen } = edge.model.coupon;
    if (specimen.kind !== 'wedge') throw new Error('no wedge');
    const { depth } = specimen;
    const deep = { median: depth, low: 0.02, high: depth, nominal: depth };
    const through = verdictSentences(changed(edge, { ...change, splitLength: deep, runsThrough: 0.7 }), 'metric');
    expect(through).toMatch(/^THE SPLIT RUNS THROUGH THE WHOLE DEPTH/);
    expect(through).toContain('It runs through the whole depth in 70 % of the samples.');
    expect(verdictSentences(changed(edge, { ...change, splitLength: deep, runsThrough: 1 }), 'metric')).toContain(
      'It runs through the whole depth in all samples.',
    );
    const some = { ...change, splitLength: { ...splitLength, high: depth }, runsThrough: 0.08 };
    expect(verdictSentences(changed(edge, some), 'metric')).toContain('(10 mm to the whole depth)');
    const arms = { ...change, runsThrough: 0, shares: sharesOf({ bond: 0.3, arm: 0.7 }) };
    expect(verdictSentences(changed(edge, arms), 'metric')).toContain('IN 70 % OF THE SAMPLES AN ARM BREAKS');
  });
});

describe('the advice', () => {
  const change = (
    name: CouponChange['name'],
    factor: number,
    peakForce: number,
    toughness: number,
    first: CouponChange['first'],
  ): CouponChange => ({
    name,
    factor,
    elasticity: { peakForce: 1, toughness: 1 },
    peakForce,
    toughness,
    first,
  });
  const base = changed(open, {
    verdict: { first: 'arm', load: 80 },
    peakForce: peak,
    toughness: { specimen: { median: 1000, low: 900, high: 1100, nominal: 1000 } },
  }).prediction;

  it('names the change that moves what gives way first, and those that gain most, over the middle values', () => {
    const changes = [change('pitch', 0.8, 81, 1100, 'arm'), change('armThickness', 1.25, 120, 1050, 'threadAtCrack')];
    const sentences = adviceSentences({ ...base, changes }, 'metric');
    expect(sentences).toEqual([
      'What gives way first is moved by thicker arms (arm thickness 25 % more): then the thread at the crack.',
      'Most peak force is gained by thicker arms (arm thickness 25 % more): 1.5 times, to 120 N.',
      'Most toughness is gained by a finer pitch (pitch 20 % less): 1.1 times, to 1100 J/m².',
    ]);
  });

  it('says when no change moves or gains anything', () => {
    const sentences = adviceSentences({ ...base, changes: [change('pitch', 0.8, 80, 1000, 'arm')] }, 'metric');
    expect(sentences).toEqual([
      'None of these changes moves what gives way first: the arms.',
      'None of them raises the peak force noticeably.',
      'None of them raises the toughness noticeably.',
    ]);
    expect(adviceSentences({ ...base, changes: [] }, 'metric')).toEqual([]);
  });
});

describe('the point of no return', () => {
  const at = (pointOfNoReturn: number | undefined, first: 'arm' | 'bond' = 'bond') => {
    const { pointOfNoReturn: _none, ...prediction } = open.prediction;
    const shares = sharesOf({ [first]: 1, arm: 0.06 });
    const own = { ...prediction, penetrationDensity: 5e4, verdict: { first, load: 1 }, shares };
    return noReturnWords(
      { ...open, prediction: pointOfNoReturn === undefined ? own : { ...own, pointOfNoReturn } },
      'metric',
    );
  };

  it('is told with the share of it that the coupon has', () => {
    expect(at(10e4)).toEqual([
      'Point of no return: beyond about 10 penetrations per cm² (middle values) more stitches break the arms before the thread; the toughness that a tester reads no longer rises. This coupon has 50 % of it; at its own density the arms break in 6 % of the samples.',
    ]);
    expect(at(4.1234e4)[0]).toContain('beyond about 4.1 penetrations');
    expect(at(4e4)[0]).toContain('This coupon is beyond it; at its own density');
  });

  it('is said to be missing, and why', () => {
    expect(at(undefined)[0]).toContain('no density of these stitches that can be sewn breaks the arms; at its own');
    expect(at(undefined, 'arm')[0]).toContain(
      'with the middle values the arms break with far fewer of these stitches too',
    );
    expect(noReturnWords(named('bare'), 'metric')).toEqual([]);
  });

  const point = (penetrationDensity: number, first: DensityPoint['first'], median: number): DensityPoint => ({
    penetrationDensity,
    first,
    specimen: { median, low: median / 2, high: median * 2 },
    armShare: first === 'arm' ? 1 : 0,
  });

  it('bounds the stretches in which arms limit; other stretches meet halfway', () => {
    const points = [point(1e4, 'bond', 1), point(2e4, 'threadAtCrack', 2), point(4e4, 'arm', 3), point(6e4, 'arm', 3)];
    expect(limitStretches(points, 2.5e4)).toEqual([
      { label: 'bond', from: 1e4, to: 1.5e4 },
      { label: 'thread at crack', from: 1.5e4, to: 2.5e4 },
      { label: 'arm (plies)', from: 2.5e4, to: 6e4 },
    ]);
    expect(limitStretches(points)[1]?.to).toBe(3e4);
  });

  it('and the coupon itself are marked on the median', () => {
    const densities = [point(4e4, 'arm', 300), point(1e4, 'bond', 100), point(2e4, 'bond', 200)];
    const one = changed(open, { densities, penetrationDensity: 2e4, pointOfNoReturn: 3e4 });
    const [figure] = densityFigure(one, 'id', 'metric');
    const alt = figure?.kind === 'figure' ? figure.alt : '';
    expect(alt).toContain('Marked: this coupon at 2 1/cm², 200 J/m².');
    expect(alt).toContain('Marked: point of no return at 3 1/cm², 250 J/m².');
    expect(alt).not.toContain('steady, median');
  });
});

describe('the record', () => {
  const { result } = open.prediction;
  if (result === undefined) throw new Error('no result');

  it('has the events in words', () => {
    const event = (kind: SpecimenEvent['kind'], row?: number): SpecimenEvent => ({
      kind,
      load: 1,
      displacement: 1,
      crackLength: 1,
      byLoad: 1,
      ...(row === undefined ? {} : { row }),
    });
    expect(eventWords(event('bond'))).toBe('bond grows');
    expect(eventWords(event('arm'))).toBe('arm breaks');
    expect(eventWords(event('threadAtAnchor', 2))).toBe('row 3: thread breaks at its lock or bend');
  });

  it('lists at most twenty events and says how many more there are; an arm that breaks later is listed too', () => {
    const event = { kind: 'bond' as const, load: 5, displacement: 1e-3, crackLength: 0.05, byLoad: 300 };
    const events = [...Array.from({ length: 30 }, () => event), { ...event, kind: 'arm' as const }];
    const blocks = recordBlocks(changed(open, { result: { ...result, events } }), 'id', 'metric');
    expect(tableOf(blocks, 'id-events').rows).toHaveLength(21);
    expect(tableOf(blocks, 'id-events').rows.at(-1)?.[0]).toBe('arm breaks');
    expect(wordsOf(blocks)).toBe('and 10 more events');
    const few = recordBlocks(changed(open, { result: { ...result, events: events.slice(0, 3) } }), 'id', 'metric');
    expect(tableOf(few, 'id-events').rows).toHaveLength(3);
    expect(wordsOf(few)).toBe('');
  });

  it('takes the peak at the highest load', () => {
    expect(peakState(result)?.load).toBe(Math.max(...result.states.map(({ load }) => load)));
  });

  it('leaves out of a line only points that nobody would miss', () => {
    const points = Array.from({ length: 400 }, (_, i) => ({ x: i, y: i < 200 ? i * i : 40000 - 3 * (i - 200) }));
    const few = thinned(points);
    expect(few.length).toBeLessThan(60);
    expect([few[0], few.at(-1)]).toEqual([points[0], points.at(-1)]);
    for (const { x, y } of points) {
      const after = few.findIndex((point) => point.x >= x);
      const [a, b] = [few[Math.max(0, after - 1)], few[after]];
      if (a === undefined || b === undefined) throw new Error('outside');
      const line = b.x === a.x ? b.y : a.y + ((x - a.x) / (b.x - a.x)) * (b.y - a.y);
      // A thousandth of the drawing square to the line; the line climbs up to four times as steeply as wide.
      expect(Math.abs(line - y) / 40000).toBeLessThan(4e-3);
    }
    expect(thinned(points.slice(0, 2))).toEqual(points.slice(0, 2));
  });
});

describe('the checks', () => {
  it('set the strain at the peak against the least failure strain', () => {
    const limits = open.model.coupon.specimen.arms.flatMap(({ failureStrain }) =>
      failureStrain === undefined ? [] : [failureStrain.tension, failureStrain.compression],
    );
    expect(failureStrainOf(open)).toBe(Math.min(...limits));
    const [, facts] = checkBlocks(open, 'id', 'metric');
    const found = facts?.kind === 'facts' ? facts.items : [];
    const { result } = open.prediction;
    const strain = result && peakState(result)?.armStrain;
    expect(found[0]).toMatchObject({ label: 'Surface strain of the arms at the peak', value: { value: strain } });
    expect(found[0]?.remark).toMatch(/^they break at .*, [\d.]+ times that$/);
    expect(found.find(({ label }) => label === 'Energy balance')).toMatchObject({
      value: { value: result?.energyError },
    });
  });

  it('count on which side the predictions lay as the comparison with print does', () => {
    const page = readFileSync(new URL('../../../docs/validation-stitching.md', import.meta.url), 'utf8');
    const [, table = ''] = page.split('**Toughness, rigid bends: median and range of nine in ten**');
    const rows =
      table
        .split('**')[0]
        ?.split('\n')
        .filter((line) => line.includes('| mode I |')) ?? [];
    const errors = rows.map((line) => line.split('|').map((one) => one.trim()));
    const count = (column: number, sign: string) => errors.filter((row) => row[column]?.startsWith(sign)).length;
    expect(rows).toHaveLength(7);
    expect(againstPrint).toContain(`the steady value was foretold too low in ${count(9, '-')} of ${rows.length} cases`);
    expect(againstPrint).toContain(`the reading of a specimen too high in ${count(10, '+')} of ${rows.length}`);
  });

  it('say how far to trust the ranges: yarn data alone, a measured curve, no stitches, calibrated', () => {
    const words = (one: typeof open) => wordsOf(checkBlocks(one, 'id', 'metric'));
    expect(words(open)).toContain(
      'from yarn data alone expect a factor of 2 to 3 on what the stitches add; against print',
    );
    const { law } = open.prediction;
    if (law === undefined) throw new Error('no law');
    expect(words(changed(open, { law: { ...law, measured: true } }))).toContain('30 to 50 %');
    expect(words(named('bare'))).toContain("scatter of the bond's toughness");
    expect(words(open)).not.toContain('Calibrated');
    expect(words(changed(open, { calibrated: true }))).toContain('Calibrated: test results of the same stitch');
  });
});
