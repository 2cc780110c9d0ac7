import { describe, expect, it } from 'vitest';
import {
  assemble,
  designInputs,
  inputAt,
  inputList,
  readDesign,
  variant,
  variantText,
} from '../../../packages/core/src/design/index.js';
import { problemsIn } from '../design/faults.js';
import { plate } from './designs.js';

const inputs = designInputs(plate);

const problemOf = (run: () => unknown) => problemsIn(run)[0]!;

describe('the inputs of a design file', () => {
  it('are found by their dotted paths as written', () => {
    expect(inputAt(inputs, 'stitching.rows.pitch')).toBe('4 mm');
    expect(inputAt(inputs, 'targets.0.atMost')).toBe('2 mm');
    expect(inputList(inputs)).toContainEqual({ path: 'materials.cloth.fibreVolumeFraction', value: '50 %' });
  });

  it('change in a variant and nowhere else', () => {
    const { stitching } = variant(inputs, [{ path: 'stitching.rows.pitch', value: '3 mm' }]);
    expect(stitching?.rows?.pitch).toBeCloseTo(3e-3, 15);
    expect(stitching?.rows?.rowSpacing).toBeCloseTo(5e-3, 15);
    expect(inputAt(inputs, 'stitching.rows.pitch')).toBe('4 mm');
  });

  it('may be ones that the file leaves out', () => {
    const made = variant(inputs, [{ path: 'stitching.rows.needle', value: 110 }]);
    expect(made.stitching?.rows?.needle).toBe(110);
  });

  it('give the text of a variant with comments and layout, which reads as the variant', () => {
    const changes = [
      { path: 'materials.cloth.fibreVolumeFraction', value: '55 %' },
      { path: 'stitching.rows.needle', value: 110 },
    ];
    const text = variantText(inputs, changes);
    expect(text).toContain('# a comment that stays');
    expect(text).toMatch(/fibreVolumeFraction: 55 % +# as laid up/);
    const { source: _, ...read } = readDesign(text);
    const { source: __, ...made } = variant(inputs, changes);
    expect(read).toEqual(made);
    expect(() => assemble(readDesign(text))).not.toThrow();
  });

  it('leave every other byte of the text as it is', () => {
    const text = `${plate.trimEnd()}\r\nnotes:\r\n  - 'it''s [so]'\r\n  - "b"`.replaceAll(/\r?\n/g, '\r\n');
    const written = designInputs(text);
    const linesOf = (one: string) => one.split('\r\n');
    const changed = (path: string, value: string | number) => {
      const after = linesOf(variantText(written, [{ path, value }]));
      expect(after).toHaveLength(linesOf(text).length);
      return linesOf(text).flatMap((line, i) => (line === after[i] ? [] : [after[i]?.trim()]));
    };
    expect(changed('materials.cloth.fibreVolumeFraction', '55 %')).toEqual([
      expect.stringMatching(/^fibreVolumeFraction: 55 % +# as laid up$/),
    ]);
    expect(changed('title', 'a: b # c')).toEqual(['title: "a: b # c"']);
    expect(changed('notes.0', "so, it's")).toEqual([`- "so, it's"`]);
    expect(changed('notes.0', 'so')).toEqual([`- 'so'`]);
    expect(changed('notes.1', 'c "d"')).toEqual(['- "c \\"d\\""']);
    expect(changed('notes.1', 110)).toEqual(['- 110']);
    expect(changed('stitching.rows.needle', 110)).toEqual([expect.stringMatching(/mm, needle: 110/)]);
  });

  it('that the file leaves out get a line of their own', () => {
    const text = variantText(inputs, [{ path: 'materials.cloth.note', value: 'x, y' }]);
    const before = plate.split('\n');
    const added = text.split('\n').filter((line) => !before.includes(line));
    expect(added).toEqual(['    note: "x, y"']);
    expect(text.split('\n')).toHaveLength(before.length + 1);
  });

  it('that are not there are named with the nearest right spelling', () => {
    const problem = problemOf(() => inputAt(inputs, 'stitching.rows.pich'));
    expect(problem).toMatchObject({ code: 'unknown-name', hint: 'did you mean `pitch`?', path: ['stitching', 'rows'] });
    expect(problemOf(() => inputAt(inputs, 'stiching.rows.pitch')).hint).toBe('did you mean `stitching`?');
    expect(problemOf(() => variant(inputs, [{ path: 'stitching.row.pitch', value: 1 }])).code).toBe('unknown-name');
    expect(problemOf(() => variant(inputs, [{ path: 'stitching.rows.pich', value: '1 mm' }])).code).toBe('unknown-key');
    expect(problemOf(() => variantText(inputs, [{ path: 'title.x', value: 1 }])).code).toBe('unknown-name');
  });

  it('in a section that is not there ask for the section', () => {
    const change = { path: 'materials.cloth.strengths.Xt', value: '1 GPa' };
    expect(problemOf(() => variant(inputs, [change])).message).toBe(
      'the design file has no `materials.cloth.strengths`, so no `materials.cloth.strengths.Xt`',
    );
  });

  it('are single values, not sections', () => {
    expect(problemOf(() => inputAt(inputs, 'stitching.rows')).code).toBe('unknown-name');
  });

  it('refuse a value that the design file would refuse, at the line of the input', () => {
    const problem = problemOf(() => variant(inputs, [{ path: 'stitching.rows.pitch', value: '3 N' }]));
    expect(problem).toMatchObject({ code: 'unit-mismatch', where: { line: 15 } });
  });

  it('that come by an alias cannot be rewritten in place', () => {
    const aliased = designInputs(plate.replace('pitch: 4 mm, rowSpacing: 5 mm', 'pitch: &p 4 mm, rowSpacing: *p'));
    const change = { path: 'stitching.rows.rowSpacing', value: '6 mm' };
    expect(problemOf(() => variantText(aliased, [change])).code).toBe('contradiction');
    const anchored = { path: 'stitching.rows.pitch', value: '6 mm' };
    expect(problemOf(() => variantText(aliased, [anchored])).code).toBe('contradiction');
    expect(variant(aliased, [change]).stitching?.rows?.rowSpacing).toBeCloseTo(6e-3, 15);
  });

  it('of a broken file are not there: its problems are thrown', () => {
    expect(problemOf(() => designInputs('format: 2')).code).toBe('missing-key');
  });
});
