import { describe, expect, it } from 'vitest';
import { type PolarCurve, polarFigure } from '../../../../packages/core/src/report/figures/index.js';
import { named, problemCode, readMarkup } from '../markup.js';
import { angles, offAxis } from '../render/sample.js';

const curve = (label: string, values: readonly number[]): PolarCurve => ({ label, values, kind: 'modulus' });
const Ex = curve(
  'Ex',
  angles.map((angle) => offAxis(angle).Ex),
);
const Gxy = curve(
  'Gxy',
  angles.map((angle) => offAxis(angle).Gxy),
);
const draw = (curves: readonly PolarCurve[], over: readonly number[] = angles, units: 'metric' | 'us' = 'metric') =>
  polarFigure({ id: 'polar', title: 'Moduli', angles: over, curves, units });

/** The points a path passes through: the last pair of each command. */
function points(path: string): { radius: number; angle: number }[] {
  return [...path.matchAll(/[MC]([^MCZ]*)/g)].map(([, numbers = '']) => {
    const [x = 0, y = 0] = numbers.trim().split(/[ ,]+/).map(Number).slice(-2);
    return { radius: Math.hypot(x, y), angle: (Math.atan2(-y, x) * 180) / Math.PI };
  });
}

/** Degrees between two directions. */
const apart = (a: number, b: number): number => Math.abs(((((a - b) % 360) + 540) % 360) - 180);

/** The point of a path nearest to a direction. */
const at = (path: string, angle: number) =>
  points(path).reduce((best, point) => (apart(point.angle, angle) < apart(best.angle, angle) ? point : best));

const paths = (svg: string): string[] =>
  named(readMarkup(svg), 'path', 'sv-curve').map((tag) => tag.attributes.d ?? '');

describe('polarFigure', () => {
  it('passes through every value at its angle, counter-clockwise from x', () => {
    const [path = ''] = paths(draw([Ex, Gxy]).svg);
    const scale = at(path, 0).radius / Ex.values[0]!;
    angles.forEach((angle, i) => {
      const point = at(path, angle);
      expect(apart(point.angle, angle)).toBeLessThan(0.1);
      expect(point.radius).toBeCloseTo(Ex.values[i]! * scale, 1);
    });
  });

  it('draws both curves to one scale, inside the outermost ring', () => {
    const { svg } = draw([Ex, Gxy]);
    const [first = '', second = ''] = paths(svg);
    expect(at(second, 45).radius / at(first, 0).radius).toBeCloseTo(Gxy.values[9]! / Ex.values[0]!, 3);
    const outer = Math.max(...named(readMarkup(svg), 'circle').map((ring) => Number(ring.attributes.r)));
    expect(Math.max(...points(first).map(({ radius }) => radius))).toBeLessThanOrEqual(outer + 0.01);
    expect(svg).toContain('40 GPa');
  });

  it('completes a half turn to the full circle', () => {
    const half = angles.filter((angle) => angle < 180);
    const of = (whole: PolarCurve, count: number): PolarCurve => ({ ...whole, values: whole.values.slice(0, count) });
    expect(paths(draw([of(Ex, 36)], half).svg)).toEqual(paths(draw([Ex]).svg));
    expect(paths(draw([of(Ex, 37)], [...half, 180]).svg)).toEqual(paths(draw([Ex]).svg));
  });

  it('tells the curves apart by their strokes', () => {
    const strokes = named(readMarkup(draw([Ex, Gxy]).svg), 'path', 'sv-curve').map((tag) => tag.attributes.class);
    expect(strokes[0]).not.toContain('sv-stitched');
    expect(strokes[1]).toContain('sv-stitched');
  });

  it('says in words where a modulus is least and greatest', () => {
    const { alt } = draw([
      curve(
        'Ex',
        angles.map((angle) => (angle === 90 ? 10e9 : angle === 0 ? 40e9 : 20e9)),
      ),
    ]);
    expect(alt).toBe(
      'Polar plot over the directions in the plane. Ex is least at 90° with 10 GPa and greatest at 0° with 40 GPa.',
    );
    expect(
      draw([
        curve(
          'E',
          angles.map(() => 7e9),
        ),
      ]).alt,
    ).toContain('E is 7 GPa in every direction.');
  });

  it('is a table from 0 to 90 degrees in characters, and to 165 when the laminate is skew', () => {
    const column = (text = ''): string[] =>
      text
        .split('\n')
        .slice(2)
        .map((line) => line.trim().split(/ +/)[0] ?? '');
    expect(column(draw([Ex, Gxy]).text)).toEqual(['0', '15', '30', '45', '60', '75', '90']);
    const skew = curve(
      'Ex',
      angles.map((angle) => offAxis(angle - 20).Ex),
    );
    expect(column(draw([skew]).text).at(-1)).toBe('165');
    expect(draw([Ex]).text?.split('\n')[2]?.trim()).toMatch(/^0 +38$/);
  });

  it('refuses curves it cannot draw', () => {
    expect(problemCode(() => draw([]))).toBe('out-of-range');
    expect(problemCode(() => draw([Ex, Ex, Ex, Ex, Ex]))).toBe('out-of-range');
    expect(problemCode(() => draw([Ex, { ...Gxy, kind: 'stress' }]))).toBe('unit-mismatch');
    expect(problemCode(() => draw([curve('E', [1])]))).toBe('contradiction');
    expect(
      problemCode(() =>
        draw([
          curve(
            'E',
            angles.map(() => Number.NaN),
          ),
        ]),
      ),
    ).toBe('not-computable');
    expect(
      problemCode(() =>
        draw([
          curve(
            'E',
            angles.map(() => -1),
          ),
        ]),
      ),
    ).toBe('not-computable');
    expect(
      problemCode(() =>
        draw([
          curve(
            'E',
            angles.map(() => 0),
          ),
        ]),
      ),
    ).toBe('not-computable');
  });

  it('refuses angles with gaps, out of order, or short of a half turn: out-of-range', () => {
    const over = (list: readonly number[]) => () =>
      draw(
        [
          curve(
            'E',
            list.map(() => 1e9),
          ),
        ],
        list,
      );
    expect(problemCode(over(angles.filter((angle) => angle !== 45)))).toBe('out-of-range');
    expect(problemCode(over([...angles].reverse()))).toBe('out-of-range');
    expect(problemCode(over(angles.filter((angle) => angle <= 90)))).toBe('out-of-range');
    expect(problemCode(over([]))).toBe('out-of-range');
  });
});
