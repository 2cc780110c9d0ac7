import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type ChartInput, chartFigure } from '../../../../packages/core/src/report/figures/index.js';
import { idsOf, named, problemCode, readMarkup, type Tag } from '../markup.js';

const line = (label: string, ...points: readonly (readonly [number, number])[]) => ({
  label,
  points: points.map(([x, y]) => ({ x, y })),
});

const base: ChartInput = {
  id: 'chart',
  title: 'Load against strain',
  x: { label: 'strain', kind: 'strain' },
  y: { label: 'load', kind: 'forcePerLength' },
  series: [line('test', [0, 0], [4e-3, 200e3], [4e-3, 160e3], [9e-3, 390e3])],
  units: 'metric',
};
const draw = (change: Partial<ChartInput> = {}) => chartFigure({ ...base, ...change });
const tagsOf = (change: Partial<ChartInput> = {}): Tag[] => readMarkup(draw(change).svg);

interface Place {
  readonly x: number;
  readonly y: number;
}

const curves = (tags: readonly Tag[]): { d: string; places: Place[] }[] =>
  named(tags, 'path', 'sv-curve').map((tag) => {
    const d = tag.attributes.d ?? '';
    const places = d.split(/[MLZ]/).filter((part) => part !== '');
    return {
      d,
      places: places.map((part) => {
        const [x = Number.NaN, y = Number.NaN] = part.split(' ').map(Number);
        return { x, y };
      }),
    };
  });

/** Numbers at the ticks with their places: those of x stand in one line below, those of y in one column. */
function ticks(tags: readonly Tag[], axis: 'x' | 'y'): { value: number; at: number }[] {
  const anchor = axis === 'x' ? 'middle' : 'end';
  const across = axis === 'x' ? 'y' : 'x';
  const numbers = named(tags, 'text').filter(
    (tag) => tag.attributes['text-anchor'] === anchor && /^-?[\d.]+(e-?\d+)?$/.test(tag.text),
  );
  const row = numbers[0]?.attributes[across];
  return numbers
    .filter((tag) => tag.attributes[across] === row || axis === 'y')
    .map((tag) => ({ value: Number(tag.text), at: Number(tag.attributes[axis]) - (axis === 'y' ? 4.5 : 0) }));
}

/** Reads a place on the drawing back by the first and the last number of each axis. */
function reader(tags: readonly Tag[]): (place: Place) => Place {
  const read = (axis: 'x' | 'y', at: number): number => {
    const list = ticks(tags, axis);
    const [first, last] = [list[0]!, list.at(-1)!];
    return first.value + ((at - first.at) / (last.at - first.at)) * (last.value - first.value);
  };
  return ({ x, y }) => ({ x: read('x', x), y: read('y', y) });
}

const words = (tags: readonly Tag[]): string[] => named(tags, 'text').map((tag) => tag.text);

/** The plot: its sides are the outermost ends of all hairlines. */
function plotOf(tags: readonly Tag[]) {
  const hairs = named(tags, 'line', 'sv-hair').map(({ attributes }) => attributes);
  const xs = hairs.flatMap(({ x1, x2 }) => [Number(x1), Number(x2)]);
  const ys = hairs.flatMap(({ y1, y2 }) => [Number(y1), Number(y2)]);
  return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
}

const envelope: ChartInput = {
  ...base,
  title: 'Failure envelope',
  x: { label: 'Nx', kind: 'forcePerLength' },
  y: { label: 'Ny', kind: 'forcePerLength' },
  series: ['maximum stress', 'Hashin', 'Puck', 'Tsai-Wu'].map((label, i) => ({
    ...line(label, [(5 + i) * 1e5, 2e5], [(5 + i) * 1e5, -2e5], [-3e5, -2e5], [-3e5, (2 + i) * 1e5]),
    closed: true,
  })),
  marks: [
    { label: 'load', x: 1e5, y: 1e5 },
    { label: 'a load with a name of a good many words', x: 8e5, y: -2e5 },
  ],
};

const profile: ChartInput = {
  ...base,
  x: { label: 'stress', kind: 'stress' },
  y: { label: 'z', kind: 'length' },
  series: [line('along x', [-300e6, -0.5e-3], [-100e6, -0.25e-3], [20e6, -0.25e-3], [60e6, 0.5e-3])],
  bands: [
    { label: '0°', from: -0.5e-3, to: -0.25e-3 },
    { label: '90°', from: -0.25e-3, to: 0.5e-3 },
  ],
};

describe('chartFigure', () => {
  it('draws points that are no line as signs, or each on a stem of its own from x = 0', () => {
    const points = line('G', [2e-3, 1e3], [3e-3, 2e3], [2.5e-3, 4e3]);
    const stems = tagsOf({ series: [{ ...points, apart: 'stems' }] });
    const signs = tagsOf({ series: [{ ...points, apart: 'signs' }] });
    for (const tags of [stems, signs]) {
      expect(named(tags, 'path', 'sv-curve')).toEqual([]);
      expect(named(tags, 'path', 'sv-sign').length).toBeGreaterThanOrEqual(3);
    }
    expect(named(signs, 'path', 'sv-stem')).toEqual([]);
    const drawn = named(stems, 'path', 'sv-stem').map((tag) => (tag.attributes.d ?? '').split(/[ML ]/).filter(Boolean));
    expect(drawn).toHaveLength(3);
    const zero = ticks(stems, 'x').find(({ value }) => value === 0)!.at;
    for (const [x0, y0, , y1] of drawn) {
      expect(Number(x0)).toBeCloseTo(zero, 1);
      expect(y0).toBe(y1);
    }
    expect(draw({ series: [{ ...points, apart: 'signs' }] }).text?.match(/\*/g)).toHaveLength(4);
  });

  it('places every point where the numbers of its axes say, in the units of the reader', () => {
    const places = (units: 'metric' | 'us') => {
      const tags = tagsOf({ units });
      return curves(tags)[0]!.places.map(reader(tags));
    };
    // 1 lbf/in is 4.4482216152605 N over 25.4 mm, by the definitions of the pound-force and the inch.
    const perUnit = { metric: 1e3, us: 4.4482216152605 / 25.4e-3 };
    for (const units of ['metric', 'us'] as const) {
      const read = places(units);
      expect(read).toHaveLength(4);
      base.series[0]!.points.forEach((point, i) => {
        expect(read[i]!.x).toBeCloseTo(point.x * 1e6, -0.5);
        expect(read[i]!.y / (point.y / perUnit[units] || 1)).toBeCloseTo(point.y === 0 ? 0 : 1, 2);
      });
    }
  });

  it('numbers its axes evenly and roundly over all values', () => {
    const tags = tagsOf();
    expect(ticks(tags, 'y').map(({ value }) => value)).toEqual([0, 100, 200, 300, 400]);
    expect(ticks(tags, 'x').map(({ value }) => value)).toEqual([0, 2000, 4000, 6000, 8000, 10000]);
    for (const axis of ['x', 'y'] as const) {
      const steps = ticks(tags, axis).map(({ at }) => at);
      const step = steps[1]! - steps[0]!;
      steps.forEach((at, i) => {
        expect(Math.abs(at - steps[0]! - i * step)).toBeLessThan(0.05);
      });
    }
    expect(words(tags)).toContain('load, N/mm');
    expect(words(tags)).toContain('strain, 10⁻⁶');
    expect(words(tagsOf({ units: 'us' }))).toContain('load, lbf/in');
  });

  it('takes in a zero that is near and leaves out one that is far', () => {
    const low = (least: number): number =>
      ticks(tagsOf({ series: [line('one', [0, least * 1e3], [1e-3, 500e3])] }), 'y')[0]!.value;
    expect(low(90)).toBe(0);
    expect(low(450)).toBe(450);
  });

  it('draws lines through zero where it lies inside, and none where it does not', () => {
    expect(named(tagsOf(envelope), 'line', 'sv-zero')).toHaveLength(2);
    expect(named(tagsOf(), 'line', 'sv-zero')).toHaveLength(0);
    const tags = tagsOf(envelope);
    const upright = named(tags, 'line', 'sv-zero').find(({ attributes }) => attributes.x1 === attributes.x2);
    expect(reader(tags)({ x: Number(upright?.attributes.x1), y: 0 }).x).toBeCloseTo(0, 0);
  });

  it('counts directions in parts of a right angle', () => {
    const tags = tagsOf({
      x: { label: 'angle', kind: 'angle' },
      series: [line('one', [-90, 1], [90, 2])],
    });
    expect(ticks(tags, 'x').map(({ value }) => value)).toEqual([-90, -60, -30, 0, 30, 60, 90]);
    expect(words(tags)).toContain('angle, °');
  });

  it('gives very large and very small numbers a power of ten with the unit', () => {
    const tags = tagsOf({
      x: { label: 'gap', kind: 'length' },
      y: { label: 'count', kind: 'number' },
      series: [line('one', [1e-9, 0], [4e-9, 2.5e12])],
    });
    expect(words(tags)).toContain('gap, 10⁻⁶ mm');
    expect(words(tags)).toContain('count, 10¹²');
    expect(ticks(tags, 'x').at(-1)?.value).toBe(4);
    expect(ticks(tags, 'y').at(-1)?.value).toBe(2.5);
    expect(words(tagsOf({ series: [line('one', [0, 0], [2e3, 1])] }))).toContain('strain, 10⁹ × 10⁻⁶');
  });

  it('closes the lines that are closed, once', () => {
    const closed = curves(tagsOf(envelope));
    expect(closed).toHaveLength(4);
    for (const { d, places } of closed) {
      expect(d.endsWith('Z')).toBe(true);
      expect(places).toHaveLength(4);
    }
    expect(curves(tagsOf())[0]!.d.endsWith('Z')).toBe(false);
    const [first] = envelope.series;
    const twice = { ...first!, points: [...first!.points, first!.points[0]!] };
    expect(curves(tagsOf({ ...envelope, series: [twice, ...envelope.series.slice(1)] }))[0]!.d).toBe(closed[0]!.d);
    const { alt } = draw({ ...envelope, series: [{ label: 'round', points: twice.points }] });
    expect(alt).not.toContain('greatest');
  });

  it('tells six series apart by stroke and by sign, and shows both in the legend', () => {
    const series = Array.from({ length: 6 }, (_, i) => ({ ...line(`series ${i}`, [0, i], [1, i + 1]), marks: true }));
    const tags = tagsOf({ series });
    const styled = named(tags, 'style')[0]?.text ?? '';
    const said = (name: string, property: string): string =>
      new RegExp(`\\.${name}\\{[^}]*${property}:([^;}]*)`).exec(styled)?.[1] ?? '';
    const strokes = (hook: string, property: string): string[] =>
      named(tags, 'path', hook).map(({ attributes }) =>
        (attributes.class ?? '')
          .split(' ')
          .map((name) => said(name, property))
          .join(''),
      );
    for (const property of ['stroke-dasharray', 'stroke']) {
      expect(new Set(strokes('sv-curve', property)).size).toBe(6);
      expect(strokes('sv-sample', property)).toEqual(strokes('sv-curve', property));
    }
    const signs = named(tags, 'path', 'sv-sign').map(({ attributes }) => attributes.d?.replace(/^M\S+ [-\d.]+/, ''));
    expect(new Set(signs).size).toBe(6);
    // Two points and one entry of the legend for each.
    expect(signs).toHaveLength(18);
    for (const { label } of series) expect(words(tags)).toContain(label);
  });

  it('tells lines that run in the same place by signs that take turns along them', () => {
    const signsOf = (...series: ChartInput['series']) => {
      const signs = named(tagsOf({ series }), 'path', 'sv-sign').map(({ attributes }) => {
        const [, x = '', y = '', shape = ''] = /^M([-\d.]+) ([-\d.]+)m(.*)$/.exec(attributes.d ?? '') ?? [];
        return { x: Number(x), y: Number(y), shape };
      });
      // The last of each shape stands in the legend.
      const shapes = [...new Set(signs.map(({ shape }) => shape))];
      return shapes.map((shape) => signs.filter((sign) => sign.shape === shape).slice(0, -1));
    };
    const one = line('one', [0, 0], [1, 1]);
    const more = line('more', [0, 0], [0.3, 0.3], [0.9, 0.9], [1, 1], [0.5, 1]);
    for (const series of [
      [one, one, one],
      [one, more],
      [more, one],
    ]) {
      const groups = signsOf(...series);
      expect(groups).toHaveLength(series.length);
      for (const group of groups) expect(group.length).toBeGreaterThan(1);
      const all = groups.flat();
      all.forEach((a, i) => {
        for (const b of all.slice(i + 1)) expect(Math.hypot(a.x - b.x, a.y - b.y)).toBeGreaterThan(10);
      });
    }
    expect(signsOf(one, line('half', [0, 0], [0.45, 0.45], [1, 0.2]))).toEqual([]);
    expect(signsOf(one, line('across', [0, 1], [1, 0]))).toEqual([]);
    expect(signsOf(one, line('across', [0, 1], [1, 0]), one)).toHaveLength(2);
    // Signs stand only where the lines lie on each other: left of the middle.
    const aside = line('aside', [0, 0], [0.5, 0.5], [0.5, 0.4], [1, 0.4], [1, 0]);
    const [whole = [], part = []] = signsOf(line('half', [0, 0], [0.5, 0.5]), aside);
    const { left, right } = plotOf(tagsOf({ series: [aside] }));
    for (const { x } of [...whole, ...part]) expect(x).toBeLessThan((left + right) / 2 + 2);
  });

  it('lets a sign be seen through another at the same point', () => {
    const same = ['one', 'two'].map((label) => ({ ...line(label, [0, 0], [1, 1]), marks: true }));
    const filled = named(tagsOf({ series: same }), 'path', 'sv-sign').map(({ attributes }) =>
      attributes.class?.includes('sv-paper'),
    );
    // Two of each, then one of each in the legend.
    expect(filled).toEqual([true, true, false, false, true, true]);
  });

  it('puts signs at the points only where asked for, and always where a series is a single place', () => {
    expect(named(tagsOf(), 'path', 'sv-sign')).toHaveLength(0);
    const tags = tagsOf({ series: [line('one', [2e-3, 5e3])] });
    expect(named(tags, 'path', 'sv-sign')).toHaveLength(2);
    expect(curves(tags)).toHaveLength(0);
    const equal = tagsOf({ series: [line('one', [2e-3, 5e3], [2e-3, 9e3])] });
    expect(curves(equal)[0]!.places[0]!.x).toBe(curves(equal)[0]!.places[1]!.x);
    expect(reader(equal)(curves(equal)[0]!.places[0]!).x).toBeCloseTo(2000, -0.5);
    expect(problemCode(() => draw({ series: [line('zero', [0, 0])] }))).toBeUndefined();
  });

  it('draws bands behind, between their heights, every other one filled, with their names beside the plot', () => {
    const tags = tagsOf(profile);
    const rects = named(tags, 'rect', 'sv-band').map(({ attributes }) => attributes);
    const at = reader(tags);
    const heights = rects.map(({ y, height }) => [
      at({ x: 0, y: Number(y) + Number(height) }).y,
      at({ x: 0, y: Number(y) }).y,
    ]);
    for (const [i, [low, high]] of [
      [-0.5, -0.25],
      [-0.25, 0.5],
    ].entries()) {
      expect(heights[i]![0]).toBeCloseTo(low!, 2);
      expect(heights[i]![1]).toBeCloseTo(high!, 2);
    }
    expect(rects[0]?.class).not.toBe(rects[1]?.class);
    const first = tags.findIndex((tag) => tag.attributes.class?.includes('sv-band'));
    expect(first).toBeLessThan(tags.findIndex((tag) => tag.attributes.class?.includes('sv-curve')));
    const { right } = plotOf(tags);
    for (const name of ['0°', '90°']) {
      const tag = named(tags, 'text').find(({ text }) => text === name);
      expect(Number(tag?.attributes.x)).toBeGreaterThan(right);
    }
    expect(ticks(tags, 'y').map(({ value }) => value)).toEqual([-0.5, -0.4, -0.2, 0, 0.2, 0.4, 0.5]);
  });

  it('leaves out names of bands that would touch, thinner ones first', () => {
    const thin = (i: number) => ({ label: `ply ${i}`, from: i * 1e-4, to: (i + 1) * 1e-4 });
    const bands = [
      ...Array.from({ length: 20 }, (_, i) => thin(i)),
      { label: 'core', from: 20e-4, to: 80e-4 },
      ...Array.from({ length: 20 }, (_, i) => thin(80 + i)),
    ];
    const tags = tagsOf({ ...profile, series: [line('one', [0, 0], [1e6, 1e-2])], bands });
    const names = named(tags, 'text').filter(({ text }) => /^ply|core/.test(text));
    expect(names.map(({ text }) => text)).toContain('core');
    expect(names.length).toBeGreaterThan(4);
    const places = names.map(({ attributes }) => Number(attributes.y)).sort((a, b) => a - b);
    places.slice(1).forEach((place, i) => {
      expect(place - places[i]!).toBeGreaterThanOrEqual(13.98);
    });
  });

  it('marks a point with its name beside it and inside the plot, whole words to a line', () => {
    const tags = tagsOf(envelope);
    const { left, right, top, bottom } = plotOf(tags);
    const lettering = named(tags, 'text', 'sv-halo');
    expect(lettering.map(({ text }) => text).join(' ')).toBe('load a load with a name of a good many words');
    for (const { text, attributes } of lettering) {
      const wide = 7.93 * text.length;
      const x = Number(attributes.x);
      const from =
        attributes['text-anchor'] === 'end' ? x - wide : attributes['text-anchor'] === 'middle' ? x - wide / 2 : x;
      expect(from).toBeGreaterThanOrEqual(left);
      expect(from + wide).toBeLessThanOrEqual(right);
      expect(Number(attributes.y) - 10).toBeGreaterThanOrEqual(top);
      expect(Number(attributes.y)).toBeLessThanOrEqual(bottom);
    }
    const [ring] = named(tags, 'circle', 'sv-hole');
    const at = reader(tags)({ x: Number(ring?.attributes.cx), y: Number(ring?.attributes.cy) });
    expect(at.x).toBeCloseTo(100, -0.5);
    expect(at.y).toBeCloseTo(100, -0.5);
  });

  it('says in words what is on the axes, the extremes of every series, the marks, the bands and the summary', () => {
    expect(draw({ summary: 'The load drops once.' }).alt).toBe(
      'Chart with load from 0 to 400 N/mm upward and strain from 0 to 10000·10⁻⁶ to the right. test: from 0 to 9000·10⁻⁶ to the right, from 0 to 390 N/mm upward (least at 0, greatest at 9000·10⁻⁶). The load drops once.',
    );
    expect(draw(envelope).alt).toContain('Puck: from -300 to 700 N/mm to the right, from -200 to 400 N/mm upward. ');
    expect(draw(envelope).alt).toContain('Marked: load at 100 N/mm, 100 N/mm.');
    expect(draw(profile).alt).toContain(
      'from -300 to 60 MPa to the right (least at -0.5 mm, greatest at 0.5 mm). Bands: 0°, 90°.',
    );
  });

  it('is a chart in characters with the ends of its axes, a character for each series and a letter for each mark', () => {
    const { text = '' } = draw({
      series: [line('rise', [0, 0], [10e-3, 400e3])],
      marks: [{ label: 'end', x: 10e-3, y: 0 }],
    });
    const lines = text.split('\n');
    expect(lines[0]).toBe('load, N/mm');
    expect(lines[1]).toMatch(/^400 \| +\*+$/);
    expect(lines[18]).toMatch(/^ {2}0 \|\*+ +A$/);
    expect(lines[20]).toMatch(/^ {5}0 +10000$/);
    expect(lines[21]).toMatch(/^ +strain, 10⁻⁶$/);
    expect(lines.at(-1)).toBe('* rise   A end');
    // One cell in every column: the line rises from corner to corner of 64 columns and 18 rows.
    const columns = lines.slice(1, 19).map((row) => [...row.slice(5)].flatMap((cell, i) => (cell === '*' ? [i] : [])));
    expect(columns.reverse().flat()).toEqual(Array.from({ length: 64 }, (_, i) => i));
    columns.forEach((row, i) => {
      for (const column of row) expect(Math.abs(column - (i * 63) / 17)).toBeLessThanOrEqual(63 / 17);
    });
  });

  it('shows in characters every one of series that coincide, zero lines, and the names of bands', () => {
    const same = ['one', 'two', 'three'].map((label) => line(label, [0, 0], [1, 1]));
    for (const character of '*ox') expect(draw({ series: same }).text).toContain(character);
    expect(draw(envelope).text).toMatch(/^ *0 \|-+/m);
    expect(draw(profile).text).toMatch(/ {2}90°$/m);
  });

  it('escapes names, and lets none steer a terminal', () => {
    const odd = '<b>&"\n\u001b[31m';
    const { svg, text = '' } = draw({
      ...profile,
      series: [{ ...profile.series[0]!, label: odd }],
      marks: [{ label: odd, x: 0, y: 0 }],
      bands: [{ label: odd, from: 0, to: 1e-3 }],
      x: { label: odd, kind: 'stress' },
    });
    expect(() => readMarkup(svg)).not.toThrow();
    expect(text).not.toContain('\u001b');
    expect(text.split('\n')).toHaveLength(1 + 18 + 2 + 1 + 1 + 1);
  });

  it('refuses no series, more than six, and a series without points: out-of-range', () => {
    expect(problemCode(() => draw({ series: [] }))).toBe('out-of-range');
    expect(problemCode(() => draw({ series: Array.from({ length: 7 }, () => base.series[0]!) }))).toBe('out-of-range');
    expect(problemCode(() => draw({ series: [{ label: 'none', points: [] }] }))).toBe('out-of-range');
  });

  it('refuses numbers that have no place: not-computable', () => {
    for (const value of [Number.NaN, Number.POSITIVE_INFINITY, -1e308]) {
      expect(problemCode(() => draw({ series: [line('one', [0, value])] }))).toBe('not-computable');
      expect(problemCode(() => draw({ series: [line('one', [value, 0])] }))).toBe('not-computable');
      expect(problemCode(() => draw({ marks: [{ label: 'load', x: value, y: 0 }] }))).toBe('not-computable');
      expect(problemCode(() => draw({ bands: [{ label: 'ply', from: 0, to: value }] }))).toBe('not-computable');
    }
  });

  const size = fc.integer({ min: -40, max: 40 });
  const number = fc.tuple(fc.double({ min: -1, max: 1, noNaN: true }), size).map(([a, power]) => a * 10 ** power);
  const near = fc.tuple(number, fc.double({ min: 0, max: 1e-9, noNaN: true })).map(([a, b]) => a * (1 + b));
  const point = fc.record({ x: fc.oneof(number, near), y: fc.oneof(number, near) });
  const label = fc.string({ maxLength: 90 });
  const anyChart = fc.record({
    id: fc.constant('any'),
    title: label,
    x: fc.record({ label, kind: fc.constantFrom('strain', 'angle', 'number', 'temperature' as const) }),
    y: fc.record({ label, kind: fc.constantFrom('length', 'stress', 'bendingStiffness' as const) }),
    series: fc.array(
      fc.record({
        label,
        points: fc.array(point, { minLength: 1, maxLength: 6 }),
        marks: fc.boolean(),
        closed: fc.boolean(),
      }),
      { minLength: 1, maxLength: 6 },
    ),
    marks: fc.array(fc.record({ label, x: number, y: number }), { maxLength: 3 }),
    bands: fc.array(fc.record({ label, from: number, to: number }), { maxLength: 8 }),
    units: fc.constantFrom('metric', 'us' as const),
  }) as fc.Arbitrary<ChartInput>;

  it('draws any finite numbers well formed, inside its frame and inside a terminal, the same every time', () => {
    fc.assert(
      fc.property(anyChart, (input) => {
        const { svg, text = '' } = chartFigure(input);
        const tags = readMarkup(svg);
        expect(/NaN|Infinity|undefined/.exec(svg.replace(/<(text|title|desc)[^>]*>[^<]*/g, ''))).toBeNull();
        const { left, right, top, bottom } = plotOf(tags);
        for (const { x, y } of curves(tags).flatMap(({ places }) => places)) {
          expect(x >= left - 0.01 && x <= right + 0.01 && y >= top - 0.01 && y <= bottom + 0.01).toBe(true);
        }
        const [, , width = 0, height = 0] = (tags[0]?.attributes.viewBox ?? '').split(' ').map(Number);
        for (const { attributes } of named(tags, 'text')) {
          expect(Number(attributes.x)).toBeGreaterThan(0);
          expect(Number(attributes.x)).toBeLessThan(width);
          expect(Number(attributes.y)).toBeLessThan(height);
        }
        for (const row of text.split('\n')) expect([...row].length).toBeLessThanOrEqual(76);
        const ids = idsOf(tags);
        expect(new Set(ids).size).toBe(ids.length);
        expect(ids.every((id) => id.startsWith('any-'))).toBe(true);
        expect(chartFigure(input)).toEqual(chartFigure(structuredClone(input)));
      }),
    );
  });
});
