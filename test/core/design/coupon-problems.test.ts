import { designJsonSchema, renderProblems } from '@selvage/core';
import { describe, expect, it } from 'vitest';
import { file, modelOf, only, withText } from './coupon-support.js';
import { faultIn, problemsIn, textAt } from './faults.js';

const problems = (text: string) => problemsIn(() => modelOf(text));
const fault = (text: string) => faultIn(() => modelOf(text));

describe('problems of coupons point at the key at fault', () => {
  it.each([
    ['no type', 'type: dcb, title: Opened, ', '', 'missing-key', 'open'],
    ['a type that is none', 'type: dcb, title', 'type: dcbb, title', 'not-a-choice', 'dcbb'],
    ['a width without unit', 'width: 20 mm, length: 140 mm', 'width: 20, length: 140 mm', 'unit-missing', '20'],
    ['a toughness as a force', '300 J/m^2, firstRow', '300 N, firstRow', 'unit-mismatch', 'N'],
    ['no toughness of the bond', ', bondToughness: 300 J/m^2, firstRow', ', firstRow', 'missing-key', 'open'],
    [
      'a laminate that is not there',
      'arms: arm, stitching: seam, width: 20 mm, length',
      'arms: arn, stitching: seam, width: 20 mm, length',
      'unknown-name',
      'arn',
    ],
    ['one arm that is not there', '[thin, arm]', '[thick, arm]', 'unknown-name', 'thick'],
    ['three arms', '[thin, arm]', '[thin, arm, arm]', 'wrong-type', '[thin, arm, arm]'],
    [
      'a stitch plan that is not there',
      'stitching: seam, width: 20 mm, length',
      'stitching: seem, width: 20 mm, length',
      'unknown-name',
      'seem',
    ],
    [
      'a dcb without length',
      'length: 140 mm, crackLength: 40 mm, bondToughness: 300 J/m^2, firstRow',
      'crackLength: 40 mm, bondToughness: 300 J/m^2, firstRow',
      'missing-key',
      'open',
    ],
    ['an enf without span', 'span: 100 mm, ', '', 'missing-key', 'slide'],
    ['a peel without crack', 'crackLength: 50 mm, ', '', 'missing-key', 'torn'],
    ['a wedge without depth', 'depth: 60 mm, ', '', 'missing-key', 'wedged'],
    ['a span in a dcb', 'firstRow: 5 mm', 'span: 100 mm', 'contradiction', 'span'],
    ['friction in a peel', 'growth: along', 'friction: 0.3', 'contradiction', 'friction'],
    ['a length in an enf', 'span: 100 mm', 'span: 100 mm, length: 120 mm', 'contradiction', 'length'],
    ['an opening in an enf', 'overhang: 15 mm', 'opening: 1 mm', 'contradiction', 'opening'],
    [
      'an end of the test in a wedge',
      'depth: 60 mm',
      'depth: 60 mm, until: { displacement: 1 mm }',
      'contradiction',
      'until',
    ],
    ['a test of a wedge', 'depth: 60 mm', 'depth: 60 mm, test: { peakForce: 9 N }', 'contradiction', 'test'],
    [
      'rows in a coupon without stitches',
      'arms: thin, width',
      'arms: thin, firstRow: 5 mm, width',
      'contradiction',
      'firstRow',
    ],
    [
      'growth in a coupon without stitches',
      'arms: thin, width',
      'arms: thin, growth: along, width',
      'contradiction',
      'growth',
    ],
    [
      'a crack as long as the bond',
      'crackLength: 40 mm, bondToughness: 300 J/m^2, firstRow',
      'crackLength: 140 mm, bondToughness: 300 J/m^2, firstRow',
      'out-of-range',
      '140 mm',
    ],
    ['a crack beyond the load of an enf', 'crackLength: 35 mm', 'crackLength: 51 mm', 'out-of-range', '51 mm'],
    ['two loads wider than the span', 'overhang: 15 mm', 'loadSpan: 100 mm', 'out-of-range', '100 mm'],
    [
      'a test that ends before it begins',
      'until: { crackLength: 100 mm }',
      'until: { crackLength: 50 mm }',
      'out-of-range',
      '50 mm',
    ],
    [
      'a test that ends beyond the bond',
      'until: { crackLength: 100 mm }',
      'until: { crackLength: 150 mm }',
      'out-of-range',
      '150 mm',
    ],
    ['a first row beyond the bond', 'firstRow: 5 mm', 'firstRow: 100 mm', 'out-of-range', '100 mm'],
    ['stitches beyond the bond', 'stitchedLength: 40 mm', 'stitchedLength: 97 mm', 'out-of-range', '97 mm'],
    ['an edge row beyond the bond', 'depth: 60 mm', 'depth: 9 mm', 'out-of-range', 'edge'],
    [
      'a first row beside the offsets of edge rows',
      'depth: 60 mm',
      'depth: 60 mm, firstRow: 4 mm',
      'contradiction',
      'firstRow',
    ],
    ['a split along the edge rows', 'depth: 60 mm', 'depth: 60 mm, growth: along', 'contradiction', 'growth'],
    [
      'a field pattern at the very edge',
      'stitching: edge, ',
      'stitching: seam, firstRow: 0 mm, ',
      'out-of-range',
      '0 mm',
    ],
    [
      'a range that does not hold the value',
      '[200 J/m^2, 400 J/m^2]',
      '[310 J/m^2, 400 J/m^2]',
      'contradiction',
      '[310 J/m^2, 400 J/m^2]',
    ],
    [
      'a range upside down',
      '[200 J/m^2, 400 J/m^2]',
      '[400 J/m^2, 200 J/m^2]',
      'contradiction',
      '[400 J/m^2, 200 J/m^2]',
    ],
    ['one end of a range', '[200 J/m^2, 400 J/m^2]', '[200 J/m^2]', 'out-of-range', '[200 J/m^2]'],
    ['a test without a force', 'firstRow: 5 mm', 'test: { variation: 5 % }', 'missing-key', 'test'],
    ['a test with a bare force', 'firstRow: 5 mm', 'test: { peakForce: 60 }', 'unit-missing', '60'],
    ['a key that does not exist', 'firstRow: 5 mm', 'firstrow: 5 mm', 'unknown-key', 'firstrow'],
    ['a coefficient of friction of 3', 'overhang: 15 mm', 'friction: 3', 'out-of-range', '3'],
    ['a way to bend that is none', 'across: free', 'across: fre', 'not-a-choice', 'fre'],
    [
      'a thread whose modulus is not known',
      'stitching: seam, width: 20 mm, length',
      'stitching: loose, width: 20 mm, length',
      'missing-key',
      'loose',
    ],
  ])('%s', (_, from, to, code, at) => {
    expect(fault(withText(from, to))).toEqual([code, at]);
  });

  it('a wrong name comes with the nearest right one', () => {
    const text = withText('[thin, arm]', '[thim, arm]').replace('stitching: other', 'stitching: ohter');
    expect(problems(text).map(({ hint }) => hint)).toEqual(['did you mean `thin`?', 'did you mean `other`?']);
  });

  it('a thread without modulus is named, and where it is declared', () => {
    const [problem] = problems(
      withText('stitching: seam, width: 20 mm, length', 'stitching: loose, width: 20 mm, length'),
    );
    expect(problem?.message).toContain('thread `slack` of `stitching.loose` has no `modulus`');
    expect(textAt(problem?.also?.[0]?.where)).toContain('linearDensity: 75 tex');
  });

  it('laminates and stitch plans are of the file alone', () => {
    const text = withText('[thin, arm]', '[thim, arm]').replace('stitching: other', 'stitching: ohter');
    expect(problems(text).map(({ allowed }) => allowed)).toEqual([
      'laminate names of this file: arm, thin, whole',
      'stitch plan names of this file: seam, other, edge, loose',
    ]);
  });

  it('a row at the very edge is refused at its offset', () => {
    const [problem] = problems(withText('offset: 4 mm', 'offset: 0 mm'));
    expect([problem?.code, problem?.message, textAt(problem?.where)]).toEqual([
      'out-of-range',
      'distance from the edge = 0 mm is out of range',
      '0 mm',
    ]);
  });

  it('an edge row outside of the coupon is shown', () => {
    const [problem] = problems(withText('depth: 60 mm', 'depth: 9 mm'));
    expect(problem?.message).toBe('row 2 of `stitching.edge` lies 9 mm from the edge, the bond ends at 9 mm');
    expect(textAt(problem?.also?.[0]?.where)).toBe('9 mm');
  });

  it('all of a file at once, each once', () => {
    const text = withText('firstRow: 5 mm', 'span: 10 mm, test: { peakForce: 60 N }')
      .replace('crackLength: 35 mm', 'crackLength: 60 mm')
      .replace('stitching: other', 'stitching: loose')
      .replace('arms: thin, width', 'arms: absent, width')
      .replace('opening: 1 mm, ', '');
    const found = problems(text);
    expect(
      found.map(({ code }) => code),
      renderProblems(found),
    ).toEqual(['contradiction', 'out-of-range', 'missing-key', 'missing-key', 'unknown-name']);
  });

  it('in the units of the file', () => {
    const text = `units: us\n${withText('crackLength: 35 mm', 'crackLength: 3 in')}`;
    expect(problems(text)[0]?.message).toBe(
      'crackLength = 3 in, must end before the load at half the `span` at 1.969 in',
    );
  });

  it('a problem of the laminate or the stitch plan is told once, at its own place', () => {
    expect(fault(withText('"[0_4/90]s"', '"[0_4/90]x"'))[0]).toBe('orientation-code');
    expect(fault(withText('thread: slack, stitchType: 301', 'thread: slack2, stitchType: 301'))).toEqual([
      'unknown-name',
      'slack2',
    ]);
  });
});

describe('the JSON Schema', () => {
  interface Described {
    readonly description?: string;
    readonly enum?: readonly unknown[];
    readonly properties?: Readonly<Record<string, Described>>;
    readonly additionalProperties?: Described | boolean;
    readonly required?: readonly string[];
  }
  const coupon = ((designJsonSchema() as Described).properties?.coupons?.additionalProperties as Described) ?? {};

  it('knows coupons and what they cannot do without', () => {
    expect(coupon.required).toEqual(['type', 'arms', 'width', 'bondToughness']);
    expect(coupon.properties?.type?.enum).toEqual(['dcb', 'enf', 'peel', 'wedge']);
    expect(coupon.additionalProperties).toBe(false);
  });

  it('describes every key', () => {
    for (const [key, { description }] of Object.entries(coupon.properties ?? {})) expect(description, key).toBeTruthy();
  });
});

it('the file of these tests is sound', () => {
  expect(modelOf(file).coupons.map(({ name }) => name)).toEqual(['open', 'slide', 'torn', 'wedged', 'plain']);
  expect(modelOf(only('plain')).coupons).toHaveLength(1);
});
