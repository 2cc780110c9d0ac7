import { describe, expect, it } from 'vitest';
import { assemble, compute, designInputs, variantText } from '../../../packages/core/src/design/index.js';
import { comparisonReport, render } from '../../../packages/core/src/report/index.js';
import { compare, differencesBetween, partsOnlyIn } from '../../../packages/core/src/study/index.js';
import { plate } from './designs.js';

const opened = (name: string, text: string) => {
  const inputs = designInputs(text);
  return { name, inputs, results: compute(assemble(inputs.design)) };
};
const base = designInputs(plate);
const changed = (...changes: [path: string, value: string][]) =>
  variantText(
    base,
    changes.map(([path, value]) => ({ path, value })),
  );

const plain = opened('plain', plate);
const finer = opened('finer', changed(['stitching.rows.pitch', '2 mm']));
const looser = opened(
  'looser',
  changed(['materials.cloth.fibreVolumeFraction', '45 %'], ['stitching.rows.pitch', '5 mm']),
);

describe('designs side by side', () => {
  const found = compare([plain, finer, looser]);
  const of = (path: string) => found.quantities.find((one) => one.path === path)!;

  it('show the inputs that differ, as written', () => {
    expect(found.inputs).toEqual([
      { path: 'materials.cloth.fibreVolumeFraction', values: ['50 %', '50 %', '45 %'] },
      { path: 'stitching.rows.pitch', values: ['4 mm', '2 mm', '5 mm'] },
    ]);
  });

  it('show what moved, by how many percent of the first', () => {
    const { values, percent } = of('stitching.rows.penetrationDensity');
    expect(values).toEqual([5e4, 1e5, 4e4].map((value) => expect.closeTo(value, 6)));
    expect(percent[0]).toBeUndefined();
    expect(percent[1]).toBeCloseTo(100, 9);
    expect(percent[2]).toBeCloseTo(-20, 9);
    // Thickness is areal mass over fibre density and fibre fraction.
    expect(of('laminates.plate.thickness').percent.map((one) => one && Number(one.toFixed(6)))).toEqual([
      undefined,
      undefined,
      Number((100 * (50 / 45 - 1)).toFixed(6)),
    ]);
  });

  it('begin with the targets, then what a designer looks at first', () => {
    const ranks = found.quantities.map(({ rank }) => rank);
    expect(ranks).toEqual([...ranks].sort());
    expect(found.quantities[0]!.path).toBe('target laminates.plate.thickness.met');
    expect(found.quantities[0]!.values).toEqual(['met', 'met', 'NOT MET']);
  });

  it('move in nothing against themselves', () => {
    const same = compare([plain, plain]);
    expect(same.inputs).toEqual([]);
    expect(same.quantities).toEqual([]);
    const text = render(comparisonReport(same), 'text');
    expect(text).toContain('No input differs.');
    expect(text).toContain('No result that they share moved.');
  });

  it('leave a place empty where a design has no such thing', () => {
    const without = opened('without', plate.replace(/\ntargets:[\s\S]*$/, '\n'));
    const { quantities, inputs } = compare([plain, without]);
    expect(quantities).toEqual([]);
    expect(inputs).toEqual([{ path: 'targets', values: ['given', undefined] }]);
  });

  it('name a part that one of them does not have at all once, and a single key by its value', () => {
    const more = plate
      .replace('rowSpacing: 5 mm', 'rowSpacing: 5 mm, needle: 110')
      .replace('laminates:', 'loads:\n  pull: { laminate: plate, N: [1 kN/m, 0 N/m, 0 N/m] }\nlaminates:');
    expect(compare([plain, opened('more', more)]).inputs).toEqual([
      { path: 'loads', values: [undefined, 'given'] },
      { path: 'stitching.rows.needle', values: [undefined, 110] },
    ]);
  });

  it('read in every form, with both curves in one frame', () => {
    const report = comparisonReport(found);
    const text = render(report, 'text');
    expect(text).toMatch(/stitching\.rows\.pitch +4 mm +2 mm +5 mm/);
    expect(text).toContain('11.1 %');
    const page = render(report, 'html');
    expect(page).toContain('<figure id="figure-compare-plate-polar">');
    for (const name of ['plain', 'finer', 'looser']) expect(page).toContain(name);
    const json = JSON.parse(render(report, 'json'));
    expect(json.quantities.length).toBe(found.quantities.length);
    expect(json.targets.map(({ name }: { name: string }) => name)).toEqual(['plain', 'finer', 'looser']);
    expect(render(report, 'csv')).toContain('stitching.rows.pitch');
  });
});

describe('differences', () => {
  it('count nothing in percent of round-off', () => {
    const of = (z: number) => ({ plies: [{ z: -1e-3 }, { z }, { z: 1e-3 }] });
    expect(differencesBetween(of(1e-19), of(-2e-4))).toEqual([{ path: 'plies.1.z', from: 0, to: -2e-4, rank: 2 }]);
  });

  it('name the parts that only one has, once', () => {
    const one = {
      stitching: { rows: { density: 1, notes: ['x'] } },
      laminates: { a: { t: 1, E: 2 } },
      targets: [{ quantity: 'q', value: 1, met: true }],
    };
    expect(partsOnlyIn(one, { laminates: { a: { t: 1 } } })).toEqual(['stitching', 'laminates.a.E', 'target q']);
    expect(partsOnlyIn(one, one)).toEqual([]);
  });

  it('leave out what is round-off beside its neighbours', () => {
    expect(differencesBetween({ A: [[1e8, 1e-9]] }, { A: [[1e8, -3e-9]] })).toEqual([]);
  });

  it('put words before numbers and large changes before small ones', () => {
    const before = { a: 1, b: 10, c: 'x' };
    expect(differencesBetween(before, { a: 1.5, b: 11, c: 'y' }).map(({ path }) => path)).toEqual(['c', 'a', 'b']);
  });
});
