import { readdirSync, readFileSync } from 'node:fs';
import {
  assemble,
  compute,
  designJsonSchema,
  type RenderFormat,
  readDesign,
  render,
  report,
  starterDesign,
} from '@selvage/core';
import { Ajv } from 'ajv';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';

const folder = new URL('../../../docs/examples/', import.meta.url);
const files = readdirSync(folder).filter((name) => name.endsWith('.yaml'));
const text = (name: string): string => readFileSync(new URL(name, folder), 'utf8');
const formats: RenderFormat[] = ['text', 'markdown', 'html', 'json', 'csv'];

describe.each([...files.map((name) => [name, text(name)] as const), ['the starter design', starterDesign] as const])(
  '%s',
  (_, source) => {
    const results = compute(assemble(readDesign(source)));
    const whole = report(results);

    it.each(formats)('is reported as %s in both unit systems', (format) => {
      for (const units of ['metric', 'us'] as const) {
        const printed = render(whole, format, { units });
        expect(printed.length).toBeGreaterThan(500);
        expect(printed).not.toMatch(/\bNaN\b|\bInfinity\b|undefined|\[object/);
      }
    });
    it('fits the JSON Schema that editors use', () => {
      const validate = new Ajv({ strict: false, allErrors: true }).compile(designJsonSchema());
      expect(validate(parse(source)) || validate.errors).toBe(true);
    });
    it('names its sources: each once, each in the bibliography', () => {
      const keys = results.sources;
      expect(new Set(keys).size).toBe(keys.length);
      const entries = (results.data as { sources: { citation?: string }[] }).sources;
      for (const entry of entries) expect(entry.citation).toBeTruthy();
    });
    it('gives the same bits whenever it is computed', () => {
      expect(JSON.stringify(compute(assemble(readDesign(source))).data)).toBe(JSON.stringify(results.data));
    });
  },
);

describe('render', () => {
  it('refuses a format that there is none of', () => {
    const whole = report(assemble(readDesign(starterDesign)));
    expect(() => render(whole, 'pdf' as RenderFormat)).toThrow('no format `pdf`');
  });
});

describe('the JSON document has the keys of its contract', () => {
  const data = JSON.parse(render(report(assemble(readDesign(text('minimal.yaml')))), 'json'));
  it('at the top', () => {
    expect(Object.keys(data).sort()).toEqual(
      [
        'blade',
        'coupons',
        'format',
        'laminates',
        'loads',
        'materials',
        'sources',
        'stitching',
        'targets',
        'title',
      ].sort(),
    );
    expect(data).toMatchObject({ format: 1, title: 'Minimal' });
  });
  it('of a laminate', () => {
    const { skin } = data.laminates;
    for (const key of [
      'thickness',
      'arealMass',
      'plies',
      'A',
      'B',
      'D',
      'a',
      'b',
      'd',
      'inPlane',
      'flexural',
      'diagnosis',
      'notes',
      'sources',
    ])
      expect(skin, key).toHaveProperty(key);
    for (const key of ['A', 'B', 'D', 'a', 'b', 'd'])
      expect(skin[key].map((row: number[]) => row.length)).toEqual([3, 3, 3]);
    for (const set of [skin.inPlane, skin.flexural])
      expect(Object.keys(set)).toEqual(['Ex', 'Ey', 'Gxy', 'nuxy', 'nuyx', 'etaxyx', 'etaxyy']);
    expect(skin.diagnosis).toMatchObject({ symmetric: true, balanced: true, quasiIsotropic: true });
    expect(skin.plies.map((ply: { angle: number }) => ply.angle)).toEqual([0, 45, -45, 90, 90, -45, 45, 0]);
  });
  it('of a stitch plan', () => {
    // 1 / (4 mm x 5.5 mm); 2 legs of 75 tex at 1440 kg/m^3 in each penetration
    const density = 1 / (4e-3 * 5.5e-3);
    expect(data.stitching.rows.penetrationDensity).toBeCloseTo(density, 6);
    expect(data.stitching.rows.arealFraction).toBeCloseTo((density * 2 * 75e-6) / 1440, 12);
    expect(data.stitching.rows).toHaveProperty('threadLengthPerArea');
    expect(data.stitching.rows).toHaveProperty('threadMassPerArea');
  });
  it('of a load case', () => {
    const { pull } = data.loads;
    expect(pull.strain).toHaveLength(3);
    expect(pull.curvature).toHaveLength(3);
    for (const face of ['top', 'bottom'])
      expect(Object.keys(pull.plies[0][face])).toEqual(expect.arrayContaining(['stress12', 'strain12']));
  });
  it('of first-ply failure: at the ratio of maximum stress the load just uses up one strength', () => {
    const criteria = ['maxStress', 'maxStrain', 'tsaiHill', 'tsaiWu', 'hashin', 'puck'];
    const { failure } = data.loads.pull;
    expect(Object.keys(failure)).toEqual(criteria);
    for (const name of criteria) {
      expect(Object.keys(failure[name])).toEqual(expect.arrayContaining(['ratio', 'ply', 'face', 'mode']));
    }
    const { ratio, ply, face } = failure.maxStress;
    const scaled = text('minimal.yaml').replace('100 kN/m', `${100 * ratio} kN/m`);
    const again = compute(assemble(readDesign(scaled))).loads[0]!.response.plies;
    const limits = [1500e6, 40e6, 68e6]; // tension along, tension across and shear strength of minimal.yaml; compression is stronger
    const use = (stress: readonly number[]): number =>
      Math.max(...limits.map((limit, i) => Math.abs(stress[i]!) / limit));
    const failed = again[ply - 1]![face as 'top' | 'bottom'].stress12;
    expect(use(failed)).toBeCloseTo(1, 9);
  });
  it('strain = a N + b M and curvature = bᵀ N + d M for a load without temperature', () => {
    const { laminates, loads } = JSON.parse(
      render(report(assemble(readDesign(text('shingle-640-three-rows.yaml')))), 'json'),
    );
    const { b, d } = laminates.edge;
    const M = [40, 0, 0];
    const times = (m: number[][]): number[] =>
      m.map((row) => row.reduce((sum, value, j) => sum + value * (M[j] ?? 0), 0));
    for (let i = 0; i < 3; i++) {
      expect(loads.prying.curvature[i]).toBeCloseTo(times(d)[i] ?? 0, 9);
      expect(loads.prying.strain[i]).toBeCloseTo(times(b)[i] ?? 0, 9);
    }
  });
});

describe('targets', () => {
  const judged = (limit: string) =>
    compute(assemble(readDesign(text('minimal.yaml').replace('atMost: 1.2 mm', limit)))).targets[0];
  it('are met at their limit and missed beyond it', () => {
    expect(judged('atMost: 1 mm')).toMatchObject({ met: true, hard: true });
    expect(judged('atMost: 0.99 mm')).toMatchObject({ met: false });
    expect(judged('atLeast: 1.01 mm, priority: soft')).toMatchObject({ met: false, hard: false });
    expect(judged('within: [0.9 mm, 1.2 mm]')).toMatchObject({ met: true, relativeMargin: expect.closeTo(1 / 9, 9) });
  });
  it.each([
    ['atMost: 1', 'unit-missing'],
    ['atMost: 1 MPa', 'unit-mismatch'],
    ['priority: hard', 'contradiction'],
    ['atLeast: 2 mm, atMost: 1 mm', 'contradiction'],
  ])('with limits that cannot be read are refused: %s', (limit, code) => {
    expect(() => judged(limit)).toThrow(
      expect.objectContaining({
        problems: [expect.objectContaining({ code, where: expect.objectContaining({ line: expect.any(Number) }) })],
      }),
    );
  });
  it('on lamination parameters are pure numbers', () => {
    const design = text('minimal.yaml').replace(
      'laminates.skin.thickness, atMost: 1.2 mm',
      'laminates.skin.laminationParameters.A.0, within: [-0.01, 0.01]',
    );
    expect(compute(assemble(readDesign(design))).targets[0]).toMatchObject({ met: true, kind: 'number' });
  });
  it('on a quantity that is not there name the nearest', () => {
    const design = readDesign(text('minimal.yaml').replace('laminates.skin.thickness', 'laminates.skin.thicknes'));
    expect(() => compute(assemble(design))).toThrow(
      expect.objectContaining({
        problems: [expect.objectContaining({ code: 'unknown-name', hint: 'did you mean `thickness`?' })],
      }),
    );
  });
});
