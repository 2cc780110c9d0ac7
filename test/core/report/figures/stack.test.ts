import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type BandPly, stackFigure } from '../../../../packages/core/src/report/figures/index.js';
import { groupPlies } from '../../../../packages/core/src/report/figures/ply-groups.js';
import { spreadLabels } from '../../../../packages/core/src/report/figures/spread.js';
import { named, problemCode, readMarkup, type Tag } from '../markup.js';

const ud = (angle: number, thickness = 0.125e-3): BandPly => ({ name: 'ud', angle, thickness });
const draw = (plies: readonly BandPly[], units: 'metric' | 'us' = 'metric') =>
  stackFigure({ id: 'stack', title: 'A stack', plies, units });

/** Bands in the order of the plies: middle and height on the drawing. */
function bands(tags: readonly Tag[]): { middle: number; height: number }[] {
  return tags.flatMap((tag, i) => {
    if (tag.attributes.class !== 'sv-ply') return [];
    const middle = Number(/translate\(\S+ (\S+)\)/.exec(tag.attributes.transform ?? '')?.[1]);
    return [{ middle, height: Number(tags[i + 1]?.attributes.height) }];
  });
}

const anyPly = fc.record({
  name: fc.constantFrom('ud', 'cloth 300', 'a material with a name that is much too long'),
  angle: fc.integer({ min: -90, max: 90 }),
  thickness: fc.double({ min: 0.05e-3, max: 8e-3, noNaN: true }),
  kind: fc.constantFrom('ud', 'cloth', 'mat', 'core' as const),
}) as fc.Arbitrary<BandPly>;

describe('stackFigure', () => {
  it('draws band heights in proportion to thickness, the first ply lowest, without gaps', () => {
    fc.assert(
      fc.property(fc.array(anyPly, { minLength: 1, maxLength: 30 }), (plies) => {
        const drawn = bands(readMarkup(draw(plies).svg));
        expect(drawn).toHaveLength(plies.length);
        const total = plies.reduce((sum, ply) => sum + ply.thickness, 0);
        const height = drawn.reduce((sum, band) => sum + band.height, 0);
        plies.forEach((ply, i) => {
          const band = drawn[i]!;
          expect(Math.abs(band.height / height - ply.thickness / total) * height).toBeLessThan(0.2);
          const above = drawn[i + 1];
          if (above) expect(band.middle - band.height / 2 - above.middle - above.height / 2).toBeCloseTo(0, 1);
        });
      }),
    );
  });

  it('hatches each ply along its angle as seen from above', () => {
    const tags = readMarkup(draw([ud(0), ud(30), ud(-60), ud(90)]).svg);
    const turns = named(tags, 'pattern').map(
      (tag) => /rotate\((\S+)\)/.exec(tag.attributes.patternTransform ?? '')?.[1],
    );
    // The drawing's y points down, so a turn by +30 degrees is written -30.
    expect(turns.map(Number)).toEqual([0, -30, 60, -90]);
  });

  it('keeps labels apart and in the order of the plies however thin these are', () => {
    const plies = [ud(0, 8e-3), ud(45, 0.02e-3), ud(-45, 0.02e-3), ud(90, 0.02e-3), ud(0, 0.02e-3), ud(30, 8e-3)];
    const tags = readMarkup(draw(plies).svg);
    const labels = tags.flatMap((tag, i) =>
      tag.name === 'text' && tags[i + 1]?.name === 'tspan' ? [Number(tag.attributes.y)] : [],
    );
    expect(labels).toHaveLength(6);
    labels.slice(1).forEach((y, i) => {
      expect(labels[i]! - y).toBeGreaterThanOrEqual(16.99);
    });
  });

  it('says in words what it shows: total, layers, directions, thicknesses', () => {
    const { alt } = draw([ud(0), ud(0), { name: 'cloth', angle: 45, thickness: 0.3e-3, kind: 'cloth' }]);
    expect(alt).toBe(
      'Section through the thickness, 0.55 mm in 3 layers. From the tool side: layers 1–2: 2 × 0° ud, 0.125 mm each; layer 3: ±45° cloth, 0.3 mm.',
    );
    expect(draw([ud(0, 0.0254)], 'us').alt).toContain('1 in in 1 layer.');
  });

  it('gathers repeated sequences when the stack is long', () => {
    const plies = Array.from({ length: 40 }, (_, i) => ud(i % 2 === 0 ? 0 : 90));
    const { alt, text } = draw(plies);
    expect(alt).toContain('layers 1–40: 20 × (0°, 90°) ud, 0.125 mm each');
    expect(text).toContain('mid-plane');
  });

  it('marks the mid-plane in characters between layers or inside one', () => {
    expect(
      draw([ud(0), ud(90), ud(90), ud(0)])
        .text?.split('\n')
        .map((line) => line.trim()),
    ).toEqual([
      'bag side',
      '4  ------------  0°   ud  0.125 mm',
      '3  ||||||||||||  90°  ud  0.125 mm',
      '- - - - - -  mid-plane',
      '2  ||||||||||||  90°  ud  0.125 mm',
      '1  ------------  0°   ud  0.125 mm',
      'tool side, 0.5 mm in all',
    ]);
    expect(draw([ud(45), ud(-45), ud(45)]).text).toContain('2  \\\\\\\\\\\\\\\\\\\\\\\\  -45°  ud  0.125 mm  < mid');
  });

  it('escapes names', () => {
    const { svg } = draw([{ name: '<b>&"', angle: 0, thickness: 1e-3 }]);
    expect(() => readMarkup(svg)).not.toThrow();
    expect(svg).toContain('&lt;b&gt;&amp;&quot;');
  });

  it('refuses what it cannot draw: not-computable', () => {
    expect(problemCode(() => draw([]))).toBe('not-computable');
    expect(problemCode(() => draw([ud(0, 0)]))).toBe('not-computable');
    expect(problemCode(() => draw([ud(0, Number.NaN)]))).toBe('not-computable');
    expect(problemCode(() => draw([ud(Number.POSITIVE_INFINITY)]))).toBe('not-computable');
  });
});

describe('groupPlies', () => {
  it('loses no layer and keeps the order', () => {
    const short = fc.array(
      fc.constantFrom(0, 45, 90).map((angle) => ud(angle)),
      { maxLength: 24 },
    );
    fc.assert(
      fc.property(short, fc.integer({ min: 1, max: 4 }), (plies, longest) => {
        const groups = groupPlies(plies, longest);
        expect(groups.flatMap(({ period, repeats }) => Array.from({ length: repeats }, () => period).flat())).toEqual(
          plies,
        );
        for (const { first, last, period, repeats } of groups) expect(last - first + 1).toBe(period.length * repeats);
      }),
    );
  });
});

describe('spreadLabels', () => {
  const places = fc
    .array(fc.double({ min: 0, max: 300, noNaN: true }), { maxLength: 20 })
    .map((list) => list.sort((a, b) => a - b));

  it('keeps the gap', () => {
    fc.assert(
      fc.property(places, (wanted) => {
        const spread = spreadLabels(wanted, 17);
        expect(spread).toHaveLength(wanted.length);
        spread.slice(1).forEach((place, i) => {
          expect(place - spread[i]!).toBeGreaterThanOrEqual(17 - 1e-9);
        });
      }),
    );
  });

  it('leaves labels alone that are far enough apart, and shares the displacement of two that are not', () => {
    expect(spreadLabels([0, 20, 50], 17)).toEqual([0, 20, 50]);
    expect(spreadLabels([100, 100], 10)).toEqual([95, 105]);
  });
});
