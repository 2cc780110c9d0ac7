import { describe, expect, it } from 'vitest';
import { numbersAt } from '../../../packages/core/src/design/index.js';
import { modelOf, only, resultsOf } from './coupon-support.js';
import { problemsIn } from './faults.js';

const bar = 'type: dcb, arms: arm, width: 20 mm, length: 140 mm, crackLength: 40 mm, bondToughness: 300 J/m^2';
const strip = 'type: enf, arms: arm, width: 20 mm, span: 100 mm, crackLength: 35 mm, bondToughness: 900 J/m^2';
const edge = 'type: wedge, arms: arm, width: 100 mm, opening: 1 mm, depth: 60 mm, bondToughness: 300 J/m^2';
const stitched = only('open', 'slide', 'wedged');

/** The gain of a coupon of the file beside one without stitches. */
const gainBeside = (name: string, plain: string): unknown => {
  const data = resultsOf(`${stitched}  like: { ${plain} }\n`).data.coupons as Record<
    string,
    { simulated: { gain: unknown } }
  >;
  return data[name]?.simulated.gain;
};

describe('the gain of stitches counts from the same coupon without them', () => {
  it('by the medians of the toughness, whatever the width and the units', () => {
    const results = resultsOf(`${stitched}  like: { ${bar.replace('20 mm', '35 mm').replace('40 mm', '4 cm')} }\n`);
    const median = (name: string) =>
      results.coupons.find(({ model }) => model.name === name)?.prediction.toughness?.specimen.median ?? 0;
    const gains = results.coupons.map(({ gain }) => gain);
    expect(gains[0]).toBeCloseTo(median('open') / median('like'), 12);
    expect(gains.slice(1)).toEqual([undefined, undefined, undefined]);
    expect(gainBeside('slide', strip)).toBeGreaterThan(0.5);
  });

  it('of a wedged edge by its split, as long as both have an end', () => {
    const results = resultsOf(`${stitched}  like: { ${edge} }\n`);
    const split = (name: string) =>
      results.coupons.find(({ model }) => model.name === name)?.prediction.splitLength?.median ?? 0;
    expect(gainBeside('wedged', edge)).toBeCloseTo(split('like') / split('wedged'), 12);
  });

  it.each([
    ['of another bond', 'open', bar.replace('300 J/m^2', '301 J/m^2')],
    ['of a bond with another range', 'open', `${bar}, bondToughnessRange: [250 J/m^2, 350 J/m^2]`],
    ['of another crack', 'open', bar.replace('crackLength: 40', 'crackLength: 41')],
    ['of other arms', 'open', bar.replace('arms: arm', 'arms: thin')],
    ['with arms that are free across', 'open', `${bar}, across: free`],
    ['whose arms break later', 'open', `${bar}, breaking: fibres`],
    ['that is peeled', 'open', bar.replace('dcb', 'peel')],
    ['of another span', 'slide', strip.replace('100 mm', '102 mm')],
    ['under two loads', 'slide', `${strip}, loadSpan: 20 mm`],
    ['that rubs', 'slide', `${strip}, friction: 0.3`],
    ['opened further', 'wedged', edge.replace('1 mm', '1.2 mm')],
    ['that is deeper', 'wedged', edge.replace('60 mm', '80 mm')],
  ])('and not from one %s', (_, name, plain) => {
    expect(gainBeside(name, plain)).toBeNull();
  });

  it('is a number that a target or a study can ask for, with what it counts from', () => {
    const path = 'coupons.open.simulated.gain';
    const text = `${stitched}  like: { ${bar} }\ntargets:\n  - { quantity: ${path}, atLeast: 1.5 }\n`;
    const [target] = resultsOf(text).targets;
    expect(target).toMatchObject({ kind: 'number', met: true });
    const part = numbersAt(modelOf(text), [path]).coupons as Record<string, { simulated: { gain: number } }>;
    expect(Object.keys(part)).toEqual(['open', 'like']);
    expect(part.open?.simulated.gain).toBe(target?.value);
  });

  it('says what is missing to a target on it', () => {
    const target = 'targets:\n  - { quantity: coupons.open.simulated.gain, atLeast: 1.5 }\n';
    const [problem] = problemsIn(() => resultsOf(`${only('open')}${target}`));
    expect(problem?.hint).toContain('no coupon like it without stitches');
  });
});
