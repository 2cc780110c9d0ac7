import { describe, expect, it } from 'vitest';
import { type StitchFigureInput, stitchFigure } from '../../../../packages/core/src/report/figures/index.js';
import { named, problemCode, readMarkup } from '../markup.js';
import { pattern } from '../render/sample.js';

const input: StitchFigureInput = {
  id: 'rows',
  title: 'Rows',
  ...pattern,
  edge: 'bottom',
  rowSpacing: 5e-3,
  needleDiameter: 1.1e-3,
  units: 'metric',
};

/** Holes inside the field (the legend shows one more), and the drawing's px per metre. */
function read(svg: string) {
  const tags = readMarkup(svg);
  const field = named(tags, 'rect', 'sv-cloth')[0]?.attributes ?? {};
  const scale = Number(field.width) / input.field.width;
  const holes = named(tags, 'circle', 'sv-hole')
    .slice(0, input.penetrations.length)
    .map(({ attributes: { cx, cy, r } }) => ({
      x: (Number(cx) - Number(field.x)) / scale,
      y: (Number(field.y) + Number(field.height) - Number(cy)) / scale,
      diameter: (2 * Number(r)) / scale,
    }));
  return { tags, scale, holes, field };
}

describe('stitchFigure', () => {
  it('puts every hole in its place and to scale', () => {
    const { holes } = read(stitchFigure(input).svg);
    expect(holes).toHaveLength(input.penetrations.length);
    holes.forEach((hole, i) => {
      expect(hole.x).toBeCloseTo(input.penetrations[i]!.x, 5);
      expect(hole.y).toBeCloseTo(input.penetrations[i]!.y, 5);
      expect(hole.diameter).toBeCloseTo(1.1e-3, 5);
    });
  });

  it('draws width and height to the same scale, with a bar of 10 mm or 0.5 in', () => {
    const { svg } = stitchFigure(input);
    const { scale, field } = read(svg);
    expect(Number(field.height) / input.field.height).toBeCloseTo(scale, 0);
    const bar = (drawing: string): number => {
      const [, from, to] = /M(\S+) \S+H(\S+)M/.exec(drawing) ?? [];
      return (Number(to) - Number(from)) / scale;
    };
    expect(bar(svg)).toBeCloseTo(0.01, 5);
    expect(svg).toContain('>10 mm<');
    const inches = stitchFigure({ ...input, units: 'us' }).svg;
    expect(bar(inches)).toBeCloseTo(0.0127, 5);
    expect(inches).toContain('>0.5 in<');
  });

  it('draws thread on top solid and thread below dashed', () => {
    const { tags } = read(stitchFigure(input).svg);
    const runs = (part: string) =>
      named(tags, 'line', part).filter((tag) => (tag.attributes.class ?? '').includes('sv-thick'));
    const count = (face: string): number => input.threads.filter((thread) => thread.face === face).length;
    // One more of each in the legend.
    expect(runs('sv-madder')).toHaveLength(count('top') + 1);
    expect(runs('sv-stitched')).toHaveLength(count('bottom') + 1);
  });

  it('names pitch, spacing and edge distance in the drawing and in words', () => {
    const { svg, alt } = stitchFigure(input);
    for (const words of ['>pitch 4 mm<', '>5 mm<', '>6 mm<', '>edge of the part<', '>hole 1.1 mm<', '>row 3<'])
      expect(svg).toContain(words);
    expect(alt).toBe(
      'Stitch pattern seen from above over a field of 32 mm by 22 mm along the edge: 23 needle holes of 1.1 mm in 3 rows, 6 mm, 11 mm, 17 mm from the edge, pitch 4 mm; 15 thread runs lie on the top face and 12 on the bottom face.',
    );
  });

  it('draws thread on both faces of a run side by side, whichever way it is sewn', () => {
    const [from, to] = [
      { x: 2e-3, y: 6e-3 },
      { x: 6e-3, y: 6e-3 },
    ];
    const threads = [
      { from, to, face: 'top' as const },
      { from: to, to: from, face: 'bottom' as const },
    ];
    const { svg, text } = stitchFigure({ ...input, threads });
    const { tags, field, scale } = read(svg);
    const height = (part: string): number => Number(named(tags, 'line', part)[0]?.attributes.y1);
    const row = Number(field.y) + Number(field.height) - 6e-3 * scale;
    expect(height('sv-madder') - row).toBeCloseTo(-2.6, 1);
    expect(height('sv-stitched') - row).toBeCloseTo(2.6, 1);
    expect(text).toContain('o=');
  });

  it('keeps a crossing set of rows out of row names, dimensions and counts of rows', () => {
    const crossing = input.penetrations.map(({ x, y }) => ({ x: y, y: x, row: 0, set: 1 }));
    const { alt, svg } = stitchFigure({ ...input, penetrations: [...input.penetrations, ...crossing] });
    expect(alt).toContain('46 needle holes of 1.1 mm in 3 rows crossed by others,');
    expect(svg).not.toContain('>row 4<');
    expect(svg).toContain('>6 mm<');
  });

  it('draws a single row away from an edge, and an empty field', () => {
    const row = input.penetrations.filter((hole) => hole.row === 0);
    const { edge: _edge, rowSpacing: _spacing, ...plain } = input;
    const { svg, alt } = stitchFigure({ ...plain, penetrations: row });
    expect(svg).not.toContain('edge of the part');
    expect(alt).toContain('in 1 row, pitch 4 mm;');
    expect(stitchFigure({ ...plain, penetrations: [], threads: [] }).alt).toContain('0 needle holes');
  });

  it('shows rows in characters, the one nearest the edge lowest', () => {
    const lines = (stitchFigure(input).text ?? '').split('\n');
    expect(lines[0]).toMatch(/^y 17 mm {2}-+o\.+o-+o/);
    expect(lines[2]).toMatch(/^y 6 mm/);
    expect(lines[3]).toMatch(/^edge\s+#+$/);
    expect(lines.slice(0, 3).map((line) => [...line].filter((c) => c === 'o').length)).toEqual([8, 7, 8]);
  });

  it('shows a zigzag in characters: every hole at its own height, the thread climbing between them', () => {
    const holes = [0, 1, 2, 3].map((k) => ({ x: 2e-3 + 4e-3 * k, y: k % 2 === 0 ? 2e-3 : 5e-3, row: 0 }));
    const threads = holes.slice(1).map((to, k) => ({ from: holes[k] ?? to, to, face: 'top' as const }));
    const { edge: _edge, rowSpacing: _spacing, ...plain } = input;
    const lines = (stitchFigure({ ...plain, penetrations: holes, threads }).text ?? '').split('\n');
    const shapes = lines.map((line) => line.replace(/^(?:y \d mm)? */, '').replace(/ +/g, ''));
    expect(shapes.slice(0, 3)).toEqual(['oo', '/\\/', 'oo']);
  });

  it('shows both sets of crossing rows in characters', () => {
    const crossing = [0, 1, 2].map((k) => ({ x: 8e-3, y: 2e-3 + 5e-3 * k, row: 0, set: 1 }));
    const threads = crossing.slice(1).map((to, k) => ({ from: crossing[k] ?? to, to, face: 'top' as const }));
    const { text = '' } = stitchFigure({ ...input, penetrations: crossing, threads });
    expect(text.split('\n').filter((line) => /^ +\|$/.test(line))).toHaveLength(2);
    expect(text.split('\n').filter((line) => /^ +o$/.test(line))).toHaveLength(3);
  });

  it('refuses sizes and places that cannot be drawn: not-computable', () => {
    const change = (changed: Partial<StitchFigureInput>) => () => stitchFigure({ ...input, ...changed });
    expect(problemCode(change({ field: { width: 0, height: 1 } }))).toBe('not-computable');
    expect(problemCode(change({ pitch: Number.NaN }))).toBe('not-computable');
    expect(problemCode(change({ needleDiameter: -1 }))).toBe('not-computable');
    expect(problemCode(change({ penetrations: [{ x: Number.NaN, y: 0, row: 0 }] }))).toBe('not-computable');
  });
});
