import { describe, expect, it } from 'vitest';
import { barsFigure } from '../../../../packages/core/src/report/figures/index.js';
import { problemsIn } from '../../design/faults.js';

const bars = [
  { label: 'materials.cloth.fibreVolumeFraction', value: -1 },
  { label: 'materials.cloth.arealMass', value: 0.5 },
  { label: 'still', value: 0 },
];
const figure = barsFigure({ id: 'b', title: 'T', axis: 'percent', bars });

/** Places of the bars, in their order. */
const boxes = [...figure.svg.matchAll(/<rect class="([^"]+)" x="([\d.]+)" y="([\d.]+)" width="([\d.]+)"/g)].map(
  (found) => ({
    classes: found[1]!,
    x: Number(found[2]),
    y: Number(found[3]),
    width: Number(found[4]),
  }),
);

describe('bars from a common zero', () => {
  it('are as long as their values, to the left where negative', () => {
    const [minus, plus, still] = boxes;
    expect(minus!.width / plus!.width).toBeCloseTo(2, 2);
    expect(minus!.x + minus!.width).toBeCloseTo(plus!.x, 1);
    expect(still!.width).toBe(0.5);
    expect(minus!.classes).not.toBe(plus!.classes);
  });

  it('stand one below the other, each with its name and without touching', () => {
    const places = boxes.map(({ y }) => y);
    places.slice(1).forEach((y, i) => {
      expect(y - places[i]!).toBeGreaterThanOrEqual(10);
    });
    for (const { label } of bars) expect(figure.svg).toContain(label.slice(0, 30));
  });

  it('say the same in words and in characters', () => {
    expect(figure.alt).toContain('materials.cloth.arealMass 0.5');
    const [first, second] = figure.text!.split('\n');
    expect(first!.match(/#/g)).toHaveLength(18);
    expect(second!.match(/#/g)).toHaveLength(9);
    expect(first!.indexOf('|')).toBe(second!.indexOf('|'));
  });

  it('refuse none, too many and numbers that are none', () => {
    const code = (some: typeof bars) =>
      problemsIn(() => barsFigure({ id: 'b', title: 'T', axis: 'a', bars: some }))[0]!.code;
    expect(code([])).toBe('out-of-range');
    expect(code(Array.from({ length: 31 }, () => bars[0]!))).toBe('out-of-range');
    expect(code([{ label: 'x', value: Number.NaN }])).toBe('not-computable');
  });
});
