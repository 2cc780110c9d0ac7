import { describe, expect, it } from 'vitest';
import { type ChartInput, chartFigure } from '../../../../packages/core/src/report/figures/index.js';
import { named, problemCode, readMarkup } from '../markup.js';
import { outside, overlaps, textBoxes } from '../text-boxes.js';

const points = [0, 1, 2, 4].map((x) => ({ x: x * 1e4, y: 100 + 50 * x }));
const base: ChartInput = {
  id: 'density',
  title: 'Toughness against density',
  x: { label: 'penetrations', kind: 'perArea' },
  y: { label: 'toughness', kind: 'toughness' },
  series: [{ label: 'median', points, range: points.map(({ x, y }) => ({ x, low: y / 2, high: 2 * y })) }],
  columns: [
    { label: 'the thread', from: 0, to: 1.5e4 },
    { label: 'the arm', from: 1.5e4, to: 4e4 },
  ],
  units: 'metric',
};
const draw = (change: Partial<ChartInput> = {}) => chartFigure({ ...base, ...change });

describe('ranges and columns of a chart', () => {
  it('shades exactly between the low and the high values', () => {
    const tags = readMarkup(draw().svg);
    const [curve] = named(tags, 'path', 'sv-curve');
    const [range] = named(tags, 'path', 'sv-range');
    const places = (d = ''): number[][] =>
      [...d.matchAll(/[ML](\S+) ([^LZ]+)/g)].map(([, x, y]) => [Number(x), Number(y)]);
    const line = places(curve?.attributes.d);
    const area = places(range?.attributes.d);
    expect(area).toHaveLength(8);
    // Two places of the line give the scale; the range follows from its own numbers.
    const [[, y0 = 0] = [], , , [, y3 = 0] = []] = line;
    const scale = (y3 - y0) / (300 - 100);
    const height = (value: number): number => y0 + (value - 100) * scale;
    points.forEach(({ y }, i) => {
      expect(area[i]?.[0]).toBeCloseTo(line[i]?.[0] ?? 0, 1);
      expect(area[i]?.[1]).toBeCloseTo(height(y / 2), 0);
      expect(area[7 - i]?.[1]).toBeCloseTo(height(2 * y), 0);
    });
  });

  it('holds the whole range on its axis, and shades the sample of the series', () => {
    const { svg, alt } = draw();
    expect(alt).toContain('toughness from 0 to 600 J/m²');
    expect(alt).toContain('Shaded about median: between 50 and 600 J/m² in all.');
    expect(named(readMarkup(svg), 'rect', 'sv-shade')).toHaveLength(1);
    const plain = draw({ series: [{ label: 'median', points }] });
    expect(plain.alt).not.toContain('Shaded');
    expect(named(readMarkup(plain.svg), 'rect', 'sv-shade')).toHaveLength(0);
  });

  it('draws columns at their places, told by letters that a legend explains', () => {
    const { svg, alt, text } = draw();
    const tags = readMarkup(svg);
    const [one, two] = named(tags, 'rect', 'sv-column').map(({ attributes }) => attributes);
    const right = Number(one?.x) + Number(one?.width);
    expect(right).toBeCloseTo(Number(two?.x), 1);
    expect(Number(two?.width) / Number(one?.width)).toBeCloseTo(2.5 / 1.5, 2);
    const words = named(tags, 'text').map((tag) => tag.text);
    expect(words.filter((word) => word === 'a')).toHaveLength(2);
    expect(words).toContain('the arm');
    expect(alt).toContain('To the right in turn: the thread from 0 to 1.5 1/cm², the arm from 1.5 to 4 1/cm².');
    expect(text).toMatch(/\n +a +b *\n/);
    expect(text).toContain('a the thread   b the arm');
    expect(text).toContain('. ends of a range');
  });

  it('leaves out the letters of columns that are too narrow for them, not their names', () => {
    const narrow = Array.from({ length: 6 }, (_, i) => ({ label: `stretch ${i}`, from: i * 200, to: (i + 1) * 200 }));
    const { svg } = draw({ columns: [...narrow, { label: 'the rest', from: 1200, to: 4e4 }] });
    expect(overlaps(svg)).toEqual([]);
    const words = textBoxes(svg).map(({ text }) => text);
    for (const { label } of narrow) expect(words).toContain(label);
  });

  it('refuses a range or a column that is not finite: not-computable', () => {
    const range = [{ x: 0, low: Number.NaN, high: 1 }];
    expect(problemCode(() => draw({ series: [{ label: 'm', points, range }] }))).toBe('not-computable');
    const columns = [{ label: 'c', from: 0, to: Number.POSITIVE_INFINITY }];
    expect(problemCode(() => draw({ columns }))).toBe('not-computable');
  });
});

describe('spare names of marks', () => {
  const crowd = Array.from({ length: 30 }, (_, i) => ({
    label: `row ${i + 1}`,
    x: 2e4 + 300 * i,
    y: 200 + 2 * i,
    spare: true as const,
  }));

  it('are left out where they would touch, while every mark stays', () => {
    const { svg } = draw({ columns: [], marks: crowd });
    expect(overlaps(svg)).toEqual([]);
    expect(outside(svg)).toEqual([]);
    const tags = readMarkup(svg);
    expect(named(tags, 'g', 'sv-mark')).toHaveLength(30);
    const names = named(tags, 'text').filter(({ text }) => text.startsWith('row '));
    expect(names.length).toBeGreaterThan(0);
    expect(names.length).toBeLessThan(30);
  });

  it('stand where there is room', () => {
    const { svg } = draw({ marks: crowd.filter((_, i) => i === 0 || i === 29) });
    expect(svg).toContain('>row 1<');
    expect(svg).toContain('>row 30<');
  });
});
