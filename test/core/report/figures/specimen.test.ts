import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type SpecimenFigureInput, specimenFigure } from '../../../../packages/core/src/report/figures/index.js';
import { named, problemCode, readMarkup, type Tag } from '../markup.js';
import { outside, overlaps } from '../text-boxes.js';

const mm = 1e-3;
const rows = (from: number, spacing: number, count: number): number[] =>
  Array.from({ length: count }, (_, i) => from + i * spacing);

const dcb: SpecimenFigureInput = {
  id: 'beam',
  title: 'Beam',
  kind: 'dcb',
  thickness: [2 * mm, 3 * mm],
  length: 140 * mm,
  crackLength: 50 * mm,
  rows: [55, 60, 66, 90].map((place) => place * mm),
  units: 'metric',
};
const enf: SpecimenFigureInput = { ...dcb, kind: 'enf', length: 120 * mm, span: 100 * mm, crackLength: 30 * mm };
const peel: SpecimenFigureInput = { ...dcb, kind: 'peel', thickness: [0.6 * mm, 0.6 * mm], length: 120 * mm };
const wedge: SpecimenFigureInput = {
  ...dcb,
  kind: 'wedge',
  length: 80 * mm,
  crackLength: 18 * mm,
  opening: 3 * mm,
  rows: [8, 14, 20].map((place) => place * mm),
};

const tagsOf = (input: SpecimenFigureInput): Tag[] => readMarkup(specimenFigure(input).svg);
const number = (tag: Tag | undefined, key: string): number => Number(tag?.attributes[key]);
/** Where along the drawing the bond begins and ends: it is drawn from the crack to its end. */
function bondOf(tags: readonly Tag[]) {
  const [bond] = named(tags, 'line', 'sv-bond');
  return { from: number(bond, 'x1'), to: number(bond, 'x2'), y: number(bond, 'y1') };
}
const rowsOf = (tags: readonly Tag[]) => named(tags, 'line', 'sv-row').map((tag) => number(tag, 'x1'));
const factorOf = (svg: string): number => Number(/thickness(?: and mouth)? drawn (\d+) times</.exec(svg)?.[1] ?? 1);

describe('specimenFigure', () => {
  it.each([
    ['a double cantilever beam', dcb],
    ['an end-notched flexure', enf],
    ['a peel', peel],
    ['a wedged edge', wedge],
  ])('puts the rows of %s at their places, to the scale of its bond', (_, input) => {
    const tags = tagsOf(input);
    const { from, to } = bondOf(tags);
    const scale = (to - from) / (input.length - input.crackLength);
    const expected = input.rows.filter((place) => input.kind !== 'peel' || place >= input.crackLength);
    const found = rowsOf(tags);
    expect(found).toHaveLength(expected.length);
    found.forEach((x, i) => {
      expect((x - from) / scale).toBeCloseTo((expected[i] ?? 0) - input.crackLength, 4);
    });
  });

  it('draws the starting crack, loads and supports of straight arms to the same scale', () => {
    const beam = tagsOf(dcb);
    const { from, to, y } = bondOf(beam);
    const scale = (to - from) / (90 * mm);
    const [crack] = named(beam, 'line', 'sv-crack');
    expect(number(crack, 'x2')).toBeCloseTo(from, 1);
    expect(number(crack, 'x2') - number(crack, 'x1')).toBeCloseTo(50 * mm * scale, 1);
    const loads = named(beam, 'line', 'sv-load');
    expect(loads.map((tag) => number(tag, 'x1'))).toEqual([number(crack, 'x1'), number(crack, 'x1')]);
    expect(Math.sign(number(loads[0], 'y2') - y)).toBe(-Math.sign(number(loads[1], 'y2') - y));

    const bar = tagsOf({ ...enf, loadSpan: 40 * mm });
    const at = bondOf(bar);
    const k = (at.to - at.from) / (90 * mm);
    const place = (x: number): number => (x - at.from) / k + 30 * mm;
    const arrows = named(bar, 'line', 'sv-load').map((tag) => place(number(tag, 'x1')));
    expect(arrows[0]).toBeCloseTo(30 * mm, 4);
    expect(arrows[1]).toBeCloseTo(70 * mm, 4);
    const feet = named(bar, 'path', 'sv-support').map((tag) =>
      place(Number(/^M(\S+) /.exec(tag.attributes.d ?? '')?.[1])),
    );
    expect(feet[0]).toBeCloseTo(0, 4);
    expect(feet[1]).toBeCloseTo(100 * mm, 4);
    const single = named(tagsOf(enf), 'line', 'sv-load');
    expect(single).toHaveLength(1);
  });

  it('draws thin arms thicker by a factor that it names', () => {
    const { svg } = specimenFigure(dcb);
    const tags = readMarkup(svg);
    const { from, to, y } = bondOf(tags);
    const scale = (to - from) / (90 * mm);
    const heights = named(tags, 'path', 'sv-arm').map((tag) =>
      Math.max(
        ...[...(tag.attributes.d ?? '').matchAll(/[ML](\S+) (-?[\d.]+)/g)].map(([, , at]) => Math.abs(Number(at) - y)),
      ),
    );
    expect(factorOf(svg)).toBeGreaterThan(0);
    heights.forEach((height, i) => {
      expect(height).toBeCloseTo((dcb.thickness[i] ?? 0) * scale * factorOf(svg), 1);
    });
    // Arms thick enough are drawn as they are.
    expect(specimenFigure({ ...dcb, thickness: [8 * mm, 8 * mm] }).svg).toContain('>to scale<');
  });

  it('keeps the length of the arms of a peel: a quarter circle and a straight part together', () => {
    const tags = tagsOf(peel);
    const { from, to, y } = bondOf(tags);
    const scale = (to - from) / (70 * mm);
    const [arm] = named(tags, 'path', 'sv-arm');
    const d = arm?.attributes.d ?? '';
    const [outer = 0, inner = 0] = [...d.matchAll(/A(\S+) /g)].map(([, radius]) => Number(radius));
    const [, turn = 0, tip = 0] = (/0 0 1 \S+ ([\d.]+)V([\d.]+)/.exec(d) ?? []).map(Number);
    const length = (Math.PI / 2) * ((outer + inner) / 2) + (turn - tip);
    expect(length / scale).toBeCloseTo(50 * mm, 4);
    expect(turn).toBeCloseTo(y - outer, 1);
  });

  it('holds the mouth of a wedged edge open by what it says', () => {
    const { svg } = specimenFigure(wedge);
    const tags = readMarkup(svg);
    const { from, to } = bondOf(tags);
    const scale = (to - from) / (62 * mm);
    const mouth = named(tags, 'path', 'sv-arm').map((tag) =>
      Number(/^M\S+ ([\d.]+)/.exec(tag.attributes.d ?? '')?.[1]),
    );
    expect((mouth[1] ?? 0) - (mouth[0] ?? 0)).toBeCloseTo(3 * mm * scale * factorOf(svg), 1);
  });

  it('writes its sizes in the units of the reader, in the drawing and in words', () => {
    const { svg, alt } = specimenFigure(dcb);
    for (const words of [
      '>starting crack 50 mm<',
      '>5 mm<',
      '>bond 90 mm<',
      '>upper 2 mm<',
      '>lower 3 mm<',
      '>rows 1 to 4<',
    ])
      expect(svg).toContain(words);
    expect(alt).toContain('upper arm 2 mm, lower arm 3 mm, starting crack 50 mm from the load line');
    expect(alt).toContain('4 rows of stitches from 55 mm to 90 mm from the load line, the first two 5 mm apart.');
    const us = specimenFigure({ ...enf, units: 'us' });
    expect(us.svg).toContain('>span 3.94 in<');
    expect(`${us.alt}${us.svg.replace(/<style>.*?<\/style>/s, '')}`).not.toMatch(/\d mm/);
  });

  it('leaves out of a peel the rows behind its front, which are cut', () => {
    expect(specimenFigure({ ...peel, rows: [40 * mm, 55 * mm] }).alt).toContain(
      'one row of stitches 55 mm from the grips',
    );
    expect(specimenFigure({ ...peel, rows: [] }).alt).toContain('no stitches');
  });

  it('shows the specimen in characters to scale, within 76 columns', () => {
    const lines = (specimenFigure(dcb).text ?? '').split('\n');
    const middle = lines[2] ?? '';
    // 140 mm on 60 steps: the crack takes 50/140 of them.
    expect(middle.search(/-/)).toBe(Math.round((50 / 140) * 60));
    expect([...middle].flatMap((c, i) => (c === '|' ? [i] : []))).toEqual(
      [55, 60, 66, 90].map((x) => Math.round((x / 140) * 60)),
    );
    for (const input of [dcb, enf, peel, wedge])
      for (const line of (specimenFigure(input).text ?? '').split('\n'))
        expect([...line].length).toBeLessThanOrEqual(76);
    expect(specimenFigure(peel).text).toMatch(/\^\n( {2}#\n){5}/);
  });

  it('never lets words touch each other or leave the frame', () => {
    const size = (min: number, max: number) => fc.double({ min: min * mm, max: max * mm, noNaN: true });
    const inputs = fc
      .record({
        kind: fc.constantFrom('dcb' as const, 'enf' as const, 'peel' as const, 'wedge' as const),
        thickness: fc.tuple(size(0.3, 4), size(0.3, 4)),
        length: size(60, 300),
        share: fc.double({ min: 0.12, max: 0.8, noNaN: true }),
        first: size(0, 20),
        spacing: size(1, 15),
        count: fc.integer({ min: 0, max: 60 }),
        loads: fc.double({ min: 0, max: 0.95, noNaN: true }),
        units: fc.constantFrom('metric' as const, 'us' as const),
      })
      .map(({ share, first, spacing, count, loads, ...rest }): SpecimenFigureInput => {
        const crackLength = share * rest.length;
        const span = 0.85 * rest.length;
        return {
          ...rest,
          id: 'any',
          title: 'Any',
          crackLength,
          rows: rows(crackLength + first, spacing, count).filter((place) => place <= rest.length),
          ...(rest.kind === 'enf' ? { span, loadSpan: loads * span } : {}),
          ...(rest.kind === 'wedge' ? { opening: 3 * mm } : {}),
        };
      });
    fc.assert(
      fc.property(inputs, (input) => {
        const { svg } = specimenFigure(input);
        expect(overlaps(svg)).toEqual([]);
        expect(outside(svg)).toEqual([]);
      }),
      { numRuns: 300 },
    );
  });

  it('refuses sizes and places that cannot be drawn: not-computable', () => {
    const change = (changed: Partial<SpecimenFigureInput>) => () => specimenFigure({ ...dcb, ...changed });
    expect(problemCode(change({ length: 0 }))).toBe('not-computable');
    expect(problemCode(change({ thickness: [Number.NaN, 1] }))).toBe('not-computable');
    expect(problemCode(change({ crackLength: 200 * mm }))).toBe('not-computable');
    expect(problemCode(change({ rows: [-1] }))).toBe('not-computable');
    expect(problemCode(change({ kind: 'wedge', opening: 0 }))).toBe('not-computable');
  });
});
