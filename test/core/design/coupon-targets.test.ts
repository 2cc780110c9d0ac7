import { compute } from '@selvage/core';
import { describe, expect, it } from 'vitest';
import { asksForAdvice } from '../../../packages/core/src/design/results/coupons-data.js';
import { modelOf, only, resultsOf, withText } from './coupon-support.js';
import { problemsIn, textAt } from './faults.js';

const withTargets = (text: string, ...targets: readonly string[]): string =>
  `${text}targets:\n${targets.map((one) => `  - { quantity: coupons.${one} }\n`).join('')}`;
const problemOf = (text: string) => problemsIn(() => resultsOf(text))[0];

describe('a target on a quantity of a coupon that has no value', () => {
  // A stitched stretch of two rows has no room for a full zone.
  const short = only('open').replace('firstRow: 5 mm', 'firstRow: 5 mm, stitchedLength: 10 mm');

  it.each(['steady', 'steadyInterval.low'])('gives the reason that the coupon itself gives, for %s', (name) => {
    const quantity = `coupons.open.simulated.toughness.${name}`;
    const problem = problemOf(withTargets(short, `open.simulated.toughness.${name}, atLeast: 1 J/m^2`));
    const notes = resultsOf(short).coupons[0]?.prediction.notes.map(({ text }) => text);
    expect(problem?.message).toBe(`\`${quantity}\` has no value in this design`);
    expect(textAt(problem?.where)).toBe(quantity);
    expect(notes).toContain(problem?.hint);
    expect(problem?.hint).toMatch(/^no steady toughness/);
  });

  it.each([
    ['plain.simulated.gain, atLeast: 1', /no stitches that could gain/],
    ['plain.simulated.law.peak.force, atLeast: 1 N', /^it has no stitches/],
    ['wedged.simulated.toughness.specimen, atLeast: 1 J/m^2', /no toughness for an edge/i],
    ['wedged.simulated.verdict.margin, atLeast: 1', /nothing else is in reach/],
  ])('tells why, for %s', (target, words) => {
    expect(problemOf(withTargets(only('plain', 'wedged'), target))?.hint).toMatch(words);
  });
});

describe('a target on what is foretold', () => {
  it('is judged by the middle values, and has the median beside', () => {
    const text = withTargets(
      only('open', 'wedged'),
      'open.simulated.peakForce, atLeast: 1 N',
      'open.simulated.toughness.specimen, atLeast: 1 J/m^2',
      'wedged.simulated.splitLength, atMost: 60 mm',
      'open.simulated.peakForceInterval.low, atLeast: 0.1 N',
    );
    const { targets, coupons } = resultsOf(text);
    const [open, wedged] = coupons.map(({ prediction }) => prediction);
    expect(targets.map(({ value }) => value).slice(0, 3)).toEqual([
      open?.peakForce.nominal,
      open?.toughness?.specimen.nominal,
      wedged?.splitLength?.nominal,
    ]);
    expect(targets.map(({ median }) => median)).toEqual([
      open?.peakForce.median,
      open?.toughness?.specimen.median,
      wedged?.splitLength?.median,
      undefined,
    ]);
  });
});

describe('faults alone', () => {
  it('are looked for without advice, unless a target asks for it', () => {
    const text = only('open');
    const [found] = compute(modelOf(text), { faultsOnly: true }).coupons;
    expect(found?.prediction.changes).toEqual([]);
    expect(found?.prediction.densities).toEqual([]);
    expect(found?.prediction.peakForce).toEqual(resultsOf(text).coupons[0]?.prediction.peakForce);
    const asking = withTargets(text, 'open.simulated.changes.0.toughness, atLeast: 1 J/m^2');
    expect(compute(modelOf(asking), { faultsOnly: true }).targets).toEqual(resultsOf(asking).targets);
  });

  it('are the same as those of the whole', () => {
    const text = withTargets(only('plain'), 'plain.simulated.gain, atLeast: 1').replace(
      'length: 140 mm',
      'length: 40.2 mm',
    );
    const whole = problemsIn(() => compute(modelOf(text)));
    expect(problemsIn(() => compute(modelOf(text), { faultsOnly: true }))).toEqual(whole);
  });

  it.each([
    ['coupons.a.simulated.changes.0.toughness', true],
    ['coupons.a.simulated.densities.1.specimen.low', true],
    ['coupons.a.simulated.pointOfNoReturn', true],
    ['coupons.a.simulated.peakForce', false],
    ['coupons.changes.simulated.toughness.steady', false],
  ])('need advice for %s: %s', (path, expected) => {
    expect(asksForAdvice(path)).toBe(expected);
  });
});

describe('faults that show only when rows follow a curve', () => {
  // A drop within a stretch in which the curve has become stiffer again.
  const curve =
    'measured: { opening: [0 mm, 0.1 mm, 0.2 mm, 0.4 mm, 0.4 mm, 0.8 mm], force: [0 N, 50 N, 10 N, 60 N, 40 N, 0 N], failure: threadAtAnchor }';
  const text = withText(
    'rowSpacing: 6 mm }\n  other',
    `rowSpacing: 6 mm, bridging: { ${curve} } }\n  other`,
    only('open', 'slide'),
  );

  it('stand at the measured curve, once for all coupons with it', () => {
    const found = problemsIn(() => resultsOf(text));
    expect(found.map(({ path }) => path)).toEqual([['stitching', 'seam', 'bridging', 'measured']]);
    expect(found[0]?.message).toMatch(/^the measured curve /);
    expect(textAt(found[0]?.where)).toBe('measured');
    expect(textAt(found[0]?.also?.[0]?.where)).toContain('type: dcb');
  });
});
