import { describe, expect, it } from 'vitest';
import { designInputs } from '../../../packages/core/src/design/index.js';
import { parseVariation, sweep } from '../../../packages/core/src/study/index.js';
import { problemsIn } from '../design/faults.js';
import { plate } from './designs.js';

const inputs = designInputs(plate);
const density = 'stitching.rows.penetrationDensity';
const thickness = 'laminates.plate.thickness';

const codeOf = (run: () => unknown) => problemsIn(run)[0]!.code;

describe('a variation as typed', () => {
  it('is a range with its ends, written in their unit', () => {
    expect(parseVariation('stitching.rows.pitch=2mm..8mm:13').values).toHaveLength(13);
    expect(parseVariation('a.b=2 mm..3 mm:3')).toEqual({ path: 'a.b', values: ['2 mm', '2.5 mm', '3 mm'] });
    expect(parseVariation('a.b=2..3 mm:2').values).toEqual(['2 mm', '3 mm']);
    expect(parseVariation('a.b=-45..45:3').values).toEqual([-45, 0, 45]);
  });

  it('is a list of words or numbers', () => {
    expect(parseVariation('a.pattern=parallel, staggered').values).toEqual(['parallel', 'staggered']);
    expect(parseVariation('a.needle=90,110').values).toEqual([90, 110]);
  });

  it('has an exact zero', () => {
    expect(parseVariation('a.nu=-0.2..0.4:7').values[2]).toBe(0);
  });

  it('is refused where it is neither', () => {
    for (const text of [
      'pitch',
      'pitch=',
      '=1',
      'a=2mm..8cm:3',
      'a=2mm..8mm',
      'a=2mm..8mm:1',
      'a=2mm..8mm:2000',
      'a=x..8mm:3',
      'a=3mm,,4mm',
    ]) {
      expect(
        codeOf(() => parseVariation(text)),
        text,
      ).toBe('wrong-type');
    }
  });
});

describe('a sweep', () => {
  it('follows a closed form at every point: one penetration per pitch and row spacing', () => {
    const found = sweep(inputs, [parseVariation('stitching.rows.pitch=2mm..8mm:4')], [density]);
    const values = found.points.map(({ values }) => values![0]!);
    [2e-3, 4e-3, 6e-3, 8e-3].forEach((pitch, i) => {
      expect(values[i]! * pitch * 5e-3).toBeCloseTo(1, 12);
    });
    expect(found.quantities).toEqual([{ path: density, kind: 'perArea' }]);
  });

  it('over two inputs has a point for each pair, the first slowest', () => {
    const pitch = parseVariation('stitching.rows.pitch=2 mm..3 mm:2');
    const spacing = parseVariation('stitching.rows.rowSpacing=4 mm..6 mm:3');
    const { points } = sweep(inputs, [pitch, spacing], [density]);
    expect(points.map(({ inputs: [p, s] }) => `${p} x ${s}`)).toEqual([
      '2 mm x 4 mm',
      '2 mm x 5 mm',
      '2 mm x 6 mm',
      '3 mm x 4 mm',
      '3 mm x 5 mm',
      '3 mm x 6 mm',
    ]);
    expect(points[5]!.values![0]! * 3e-3 * 6e-3).toBeCloseTo(1, 12);
  });

  it('judges the targets at every point', () => {
    const found = sweep(inputs, [parseVariation('materials.cloth.fibreVolumeFraction=0.4..0.6:5')], [thickness]);
    for (const { values, met } of found.points) expect(met).toBe(values![0]! <= 2e-3);
    expect(new Set(found.points.map(({ met }) => met))).toEqual(new Set([true, false]));
  });

  it('keeps a point that cannot be computed, with the reason', () => {
    const { points } = sweep(inputs, [parseVariation('materials.cloth.fibreVolumeFraction=0.5,0.95')], [thickness]);
    expect(points[0]!.values).toHaveLength(1);
    expect(points[1]!.values).toBeUndefined();
    expect(points[1]!.problems![0]!.code).toBe('out-of-range');
  });

  const textsOf = (quantities: readonly string[], ...typed: readonly string[]) =>
    sweep(inputs, typed.map(parseVariation), quantities).notes.map(({ text }) => text);
  const pitches = 'stitching.rows.pitch=2mm..8mm:4';
  const contents = 'materials.cloth.fibreVolumeFraction=0.4..0.6:3';

  it('says when its input moves none of the quantities', () => {
    expect(textsOf([thickness], pitches)).toEqual([
      'stitching.rows.pitch does not move laminates.plate.thickness: the same at every point',
    ]);
    expect(textsOf([thickness, 'laminates.plate.inPlane.Ex'], pitches)).toEqual([
      'stitching.rows.pitch moves none of laminates.plate.thickness, laminates.plate.inPlane.Ex: the same at every point',
    ]);
  });

  it('names the quantities that stay while others move, and says nothing where all move', () => {
    expect(textsOf([density, thickness], pitches)).toEqual([
      'stitching.rows.pitch does not move laminates.plate.thickness: the same at every point',
    ]);
    expect(textsOf([density], pitches)).toEqual([]);
  });

  it('tells two inputs apart', () => {
    expect(textsOf([density, thickness], pitches, contents)).toEqual([
      'stitching.rows.pitch does not move laminates.plate.thickness: the same at every point',
      'materials.cloth.fibreVolumeFraction does not move stitching.rows.penetrationDensity: the same at every point',
    ]);
    expect(textsOf([density], pitches, contents)).toEqual([
      'materials.cloth.fibreVolumeFraction does not move stitching.rows.penetrationDensity: the same at every point',
    ]);
  });

  it('does not speak of an input of which one value alone could be computed', () => {
    expect(textsOf([density], 'materials.cloth.fibreVolumeFraction=0.5,0.95')).toEqual([]);
  });

  it('stops where no point can be computed', () => {
    const pitch = parseVariation('stitching.rows.pitch=2mm..8mm:3');
    expect(codeOf(() => sweep(inputs, [parseVariation('stitching.rows.pich=2mm..8mm:3')], [density]))).toBe(
      'unknown-key',
    );
    expect(codeOf(() => sweep(inputs, [parseVariation('stitching.row.pitch=2mm..8mm:3')], [density]))).toBe(
      'unknown-name',
    );
    expect(codeOf(() => sweep(inputs, [pitch], ['stitching.rows.densty']))).toBe('unknown-name');
    const negative = problemsIn(() => sweep(inputs, [parseVariation('stitching.rows.pitch=-1mm,0mm')], [density]));
    expect(negative[0]!.message).toContain('(tried stitching.rows.pitch = -1mm)');
  });

  it('takes one or two inputs, some quantity, and no more points than can be read', () => {
    const pitch = parseVariation('stitching.rows.pitch=2mm..8mm:200');
    const spacing = parseVariation('stitching.rows.rowSpacing=2mm..8mm:200');
    expect(codeOf(() => sweep(inputs, [], [density]))).toBe('out-of-range');
    expect(codeOf(() => sweep(inputs, [pitch, pitch], [density]))).toBe('out-of-range');
    expect(codeOf(() => sweep(inputs, [pitch, spacing, pitch], [density]))).toBe('out-of-range');
    expect(codeOf(() => sweep(inputs, [pitch], []))).toBe('out-of-range');
    expect(codeOf(() => sweep(inputs, [pitch, spacing], [density]))).toBe('out-of-range');
  });
});
