import { describe, expect, it } from 'vitest';
import { predictCoupon } from '../../../packages/core/src/fracture/index.js';
import { couponOf, modelOf, only, resultsOf, withText } from './coupon-support.js';
import { problemsIn, textAt } from './faults.js';

const verdicts = ['bond', 'threadAtCrack', 'threadAtAnchor', 'threadPullOut', 'arm'];

// biome-ignore lint/suspicious/noExplicitAny: a JSON document has no type
const dataOf = (name: string, text: string = only(name)): any =>
  JSON.parse(JSON.stringify(resultsOf(text).data)).coupons[name];

const predicted = (name: string, text: string = only(name)) =>
  resultsOf(text).coupons.find(({ model }) => model.name === name)!.prediction;

/** A peel of like arms that is soon over. */
const short = only('torn')
  .replace('[thin, arm]', '[arm, arm]')
  .replace('stitchedLength: 40 mm', 'stitchedLength: 8 mm')
  .replace('crackLength: 100 mm', 'crackLength: 64 mm');

describe('the JSON document holds what the library foretells', () => {
  it.each([
    ['open', only('open')],
    ['slide', only('slide')],
    ['torn', short],
    ['plain', only('plain')],
  ])('of %s, under the names of the contract', (name, text) => {
    const found = predicted(name, text);
    const { simulated, ...rest } = dataOf(name, text);
    const { nominal, ...range } = found.peakForce;
    expect(simulated).toMatchObject({
      peakForce: nominal,
      peakForceInterval: range,
      verdict: { first: found.verdict.first, load: found.verdict.load },
      shares: found.shares,
    });
    const { specimen, steady, ceiling } = found.toughness!;
    expect(simulated.toughness).toEqual({
      specimen: specimen.nominal,
      steady: steady?.nominal ?? null,
      ceiling: ceiling ?? null,
      interval: { median: specimen.median, low: specimen.low, high: specimen.high },
      steadyInterval: steady === undefined ? null : { median: steady.median, low: steady.low, high: steady.high },
    });
    expect(verdicts).toContain(simulated.verdict.first);
    expect(simulated.verdict.next).toBe(found.verdict.next ?? null);
    expect(simulated.verdict.margin).toBe(found.verdict.margin ?? null);
    expect(simulated.onset).toEqual(found.onset ?? null);
    expect(rest).toMatchObject({ type: found.coupon.specimen.kind, arms: couponOf(name, text).arms });
    expect(rest.stitching).toBe(couponOf(name).stitching ?? null);
  });

  it.each(['slide', 'plain', 'wedged'])('of %s, as the library foretells it for the coupon of the file', (name) => {
    expect(predicted(name)).toEqual(predictCoupon(couponOf(name).coupon));
  });

  it('of the course of a test', () => {
    const { result } = predicted('open');
    const { states, events, resistance, energyError } = dataOf('open').simulated;
    expect(states).toHaveLength(result!.states.length);
    const last = result!.states.at(-1)!;
    const { displacement, load, crackLength, released = 0 } = last;
    expect(states.at(-1)).toEqual({ displacement, load, crackLength, released });
    expect(states[0].released).toBe(0);
    expect(released).toBeGreaterThan(0);
    expect(events).toEqual(JSON.parse(JSON.stringify(result!.events)));
    expect(resistance).toEqual(result!.resistance);
    expect(energyError).toBe(result!.energyError);
  });

  it('of the stitch: its law, its rows, and what more or fewer of it would do', () => {
    const found = predicted('open');
    const { simulated } = dataOf('open');
    expect(simulated.law).toMatchObject({
      opening: found.law!.opening,
      force: found.law!.force,
      failure: found.law!.failure,
      measured: false,
    });
    expect(simulated.rows).toEqual(found.rows.map(({ position, penetrations }) => ({ position, penetrations })));
    expect(simulated.penetrationDensity).toBe(found.penetrationDensity);
    expect(simulated.changes).toEqual(JSON.parse(JSON.stringify(found.changes)));
    expect(simulated.densities.map((one: { specimen: object }) => one.specimen)).toEqual(
      found.densities.map(({ specimen }) => specimen),
    );
    expect(simulated.zone).toEqual(found.zone ?? null);
    expect(simulated.discreteness).toBe(found.discreteness ?? null);
    expect(simulated.pointOfNoReturn).toBe(found.pointOfNoReturn ?? null);
  });

  it('of an edge that is held open: where the split stops, no toughness', () => {
    const found = predicted('wedged');
    const { simulated } = dataOf('wedged');
    expect(simulated).toMatchObject({
      peakForce: found.peakForce.nominal,
      splitLength: found.splitLength!.nominal,
      splitLengthInterval: { median: found.splitLength!.median },
      arrested: found.wedge!.arrested,
      naturalLength: found.wedge!.naturalLength,
      toughness: null,
      verdict: { first: found.verdict.first },
    });
    expect(simulated).not.toHaveProperty('states');
  });

  it('without stitches nothing is said of them', () => {
    expect(dataOf('plain')).toMatchObject({
      stitching: null,
      simulated: { law: null, rows: [], penetrationDensity: null },
    });
    // The layer across at the crack face of the upper arm breaks; fibres do not, and 300 J/m² of bond is all there is.
    const fibres = withText('arms: thin, width', 'breaking: fibres, arms: thin, width', only('plain'));
    expect([dataOf('plain'), dataOf('plain', fibres)].map(({ simulated }) => simulated.verdict.first)).toEqual([
      'arm',
      'bond',
    ]);
    expect(dataOf('plain').simulated.toughness.steady).toBeCloseTo(300, 6);
  });

  it('has every number finite, and the notes and sources of all parts', () => {
    const results = resultsOf(only('open', 'plain'));
    const walk = (value: unknown, path: string): void => {
      if (typeof value === 'number') expect(Number.isFinite(value), path).toBe(true);
      else if (typeof value === 'object' && value !== null)
        for (const [key, part] of Object.entries(value)) walk(part, `${path}.${key}`);
    };
    walk(results.data.coupons, 'coupons');
    for (const { model, prediction } of results.coupons) {
      const { notes, sources } = (
        results.data.coupons as Record<string, { notes: { text: string }[]; sources: string[] }>
      )[model.name]!;
      const texts = notes.map(({ text }) => text);
      for (const { text } of [...model.notes, ...prediction.notes]) expect(texts).toContain(text);
      expect(sources).toEqual(expect.arrayContaining([...model.sources, ...prediction.sources]));
      expect(results.sources).toEqual(expect.arrayContaining(sources));
    }
  });

  it('is empty where a design has no coupons', () => {
    expect(resultsOf(only().replace('coupons:\n', '')).data.coupons).toEqual({});
  });
});

describe('results of tests', () => {
  const tested = (text: string) => text.replace('firstRow: 5 mm', 'firstRow: 5 mm, test: { peakForce: 70 N }');

  it('narrow the ranges of every coupon with the same stitch', () => {
    const text = tested(only('open', 'slide'));
    const test = { coupon: couponOf('open').coupon, test: { peakForce: 70 } };
    expect(dataOf('open', text).test).toEqual({ peakForce: 70 });
    expect(predicted('slide', text)).toEqual(predictCoupon(couponOf('slide').coupon, { tests: [test] }));
    for (const name of ['open', 'slide']) {
      expect(dataOf(name, text).simulated.calibrated).toBe(true);
      expect(dataOf(name).simulated.calibrated).toBe(false);
    }
    const { low, high } = dataOf('open', text).simulated.peakForceInterval;
    const before = dataOf('open').simulated.peakForceInterval;
    expect(high - low).toBeLessThan(before.high - before.low);
  });

  it('of another stitch say nothing', () => {
    const twin =
      '  seam: { laminate: whole, thread: t75, stitchType: 301, pattern: parallel, pitch: 4 mm, rowSpacing: 6 mm }\n';
    const slide = (from: string, to: string) => {
      const other = twin.replace('seam', 'twin').replace(from, to);
      const text = withText(twin, twin + other, tested(only('open', 'slide')));
      return dataOf('slide', text.replace(/(slide.*)stitching: seam/, '$1stitching: twin')).simulated.calibrated;
    };
    expect(slide('pitch: 4 mm', 'pitch: 5 mm')).toBe(true);
    expect(slide('stitchType: 301', 'stitchType: 401')).toBe(false);
    expect(slide('6 mm', '6 mm, bridging: { friction: 5 MPa }')).toBe(false);
  });
});

describe('targets understand the numbers of coupons', () => {
  const cases = [
    ['coupons.open.simulated.peakForce, atLeast: 1 N', 'force'],
    ['coupons.open.simulated.peakForceInterval.low, atLeast: 0.1 lbf', 'force'],
    ['coupons.open.simulated.toughness.specimen, atLeast: 300 J/m^2', 'toughness'],
    ['coupons.open.simulated.toughness.interval.low, atLeast: 1 in*lbf/in^2', 'toughness'],
    ['coupons.open.simulated.verdict.load, atLeast: 1 N', 'force'],
    ['coupons.open.simulated.shares.arm, atMost: 100 %', 'fraction'],
    ['coupons.open.simulated.onset.load, atLeast: 1 N', 'force'],
    ['coupons.open.simulated.onset.displacement, atLeast: 0.01 mm', 'length'],
    ['coupons.open.simulated.states.1.load, atLeast: 0 N', 'force'],
    ['coupons.open.simulated.states.1.crackLength, atLeast: 39 mm', 'length'],
    ['coupons.open.simulated.resistance.0.byLoad, atLeast: 1 J/m^2', 'toughness'],
    ['coupons.open.simulated.resistance.0.growth, atLeast: 0 mm', 'length'],
    ['coupons.open.simulated.changes.0.elasticity.toughness, atMost: 10', 'number'],
    ['coupons.open.simulated.changes.0.toughness, atLeast: 1 J/m^2', 'toughness'],
    ['coupons.open.simulated.changes.0.peakForce, atLeast: 1 N', 'force'],
    ['coupons.open.simulated.densities.0.specimen.median, atLeast: 1 J/m^2', 'toughness'],
    ['coupons.open.simulated.densities.0.penetrationDensity, atLeast: 0.01 1/cm^2', 'perArea'],
    ['coupons.open.simulated.law.peak.force, atLeast: 1 N', 'force'],
    ['coupons.open.simulated.law.opening.1, atLeast: 0 mm', 'length'],
    ['coupons.open.simulated.rows.0.position, within: [44.9 mm, 45.1 mm]', 'length'],
    ['coupons.open.simulated.energyError, atMost: 0.01', 'number'],
    ['coupons.wedged.simulated.splitLength, atMost: 60 mm', 'length'],
    ['coupons.wedged.simulated.splitLengthInterval.high, atMost: 61 mm', 'length'],
    ['coupons.plain.simulated.toughness.steady, within: [299.9 J/m^2, 300.1 J/m^2]', 'toughness'],
  ] as const;
  const lines = cases.map(([target]) => `  - { quantity: ${target} }\n`).join('');
  it.each(cases.map((one, i) => [...one, i] as const))('%s', (_, kind, i) => {
    expect(resultsOf(`${only('open', 'wedged', 'plain')}targets:\n${lines}`).targets[i]).toMatchObject({
      kind,
      met: true,
    });
  });

  it('a margin is a plain number, where there is one', () => {
    const text = `${only('plain')}targets:\n  - { quantity: coupons.plain.simulated.verdict.margin, atLeast: 1 }\n`;
    const { margin } = dataOf('plain').simulated.verdict;
    if (margin === null) expect(problemsIn(() => resultsOf(text))[0]?.message).toContain('has no value in this design');
    else expect(resultsOf(text).targets[0]).toMatchObject({ kind: 'number', value: margin });
  });
});

describe('what shows only when a coupon is simulated', () => {
  it('points at the key of the coupon, all coupons at once', () => {
    // Cracks so near to the end of the bond that none is left to hold the arms together.
    const text = only('open', 'plain')
      .replaceAll('length: 140 mm', 'length: 40.2 mm')
      .replace('firstRow: 5 mm', 'firstRow: 0.1 mm');
    const found = problemsIn(() => resultsOf(text));
    expect(found.map(({ code, path, where }) => [code, path, textAt(where)])).toEqual([
      ['out-of-range', ['coupons', 'open', 'length'], '40.2 mm'],
      ['out-of-range', ['coupons', 'plain', 'length'], '40.2 mm'],
    ]);
  });

  it('is told of the tested coupon alone, not of those on which its test bears', () => {
    const text = withText(
      'length: 140 mm, crackLength: 40 mm, bondToughness: 300 J/m^2 }',
      'length: 40.2 mm, crackLength: 40 mm, bondToughness: 300 J/m^2, test: { peakForce: 30 N } }',
      only('plain'),
    );
    const found = problemsIn(() =>
      resultsOf(
        `${text}  like: { type: dcb, arms: arm, width: 20 mm, length: 140 mm, crackLength: 40 mm, bondToughness: 300 J/m^2 }\n`,
      ),
    );
    expect(found.map(({ path }) => path)).toEqual([['coupons', 'plain', 'length']]);
  });
});

it('a coupon that has not changed is not foretold again', () => {
  const first = resultsOf(`${only('plain')}# one\n`).coupons[0]?.prediction;
  expect(resultsOf(`${only('plain')}# two\n`).coupons[0]?.prediction).toBe(first);
  expect(resultsOf(withText('300 J/m^2 }', '301 J/m^2 }', only('plain'))).coupons[0]?.prediction).not.toBe(first);
  expect(modelOf(only('plain')).coupons).toHaveLength(1);
});
