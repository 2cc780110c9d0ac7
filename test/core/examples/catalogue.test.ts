import { describe, expect, it } from 'vitest';
import { exampleCatalogue, exampleIds, exampleOf, findExamples } from '../../../packages/core/src/examples/index.js';
import { sourceName } from '../../../packages/core/src/examples/source-name.js';
import { bibliography } from '../../../packages/core/src/material/index.js';

describe('the catalogue of examples', () => {
  const catalogue = exampleCatalogue();

  it('lists every example once', () => {
    expect(catalogue.map(({ id }) => id).toSorted()).toEqual([...exampleIds].toSorted());
  });

  it('counts the values and finds the worst of them, in units of the last digit printed', () => {
    const { values, worst } = catalogue.find(({ id }) => id === 'fibre-mass-fraction-glass')!;
    // Of density 1950 between 1300 and 2540: Vf = 650/1240 and Wf = Vf 2540/1950, beside 0.68.
    expect(values).toBe(1);
    expect(worst).toBeCloseTo(((650 / 1240) * (2540 / 1950) - 0.68) / 0.01, 9);
  });

  it('has no digits to compare where the source goes further than plate theory', () => {
    expect(catalogue.filter(({ worst }) => worst === undefined).map(({ subject }) => subject)).toEqual(
      Array(7).fill('deflection'),
    );
  });

  it('says which examples no publication prints', () => {
    for (const { id, independent } of catalogue) expect(independent).toBe(exampleOf(id).access === 'computed');
  });
});

describe('a search of the examples', () => {
  it('takes an id as it is', () => {
    expect(findExamples('bimetal-curvature')).toEqual(['bimetal-curvature']);
  });

  it('gives a subject and nothing else', () => {
    expect(findExamples('edge')).toEqual(['edge-delamination-onset']);
    expect(findExamples('Sandwich')).toHaveLength(3);
  });

  it('finds words of titles, of sources and of their keys, whatever their case', () => {
    expect(findExamples('bimetal')).toEqual(['bimetal-curvature']);
    expect(findExamples('megson')).toEqual(['max-stress-ply-45']);
    expect(findExamples('Timoshenko')).toContain('clamped-circle');
    expect(findExamples('obrien-1982')).toEqual(['edge-delamination-onset']);
    expect(findExamples('theory of elastic stability')).toEqual(findExamples('timoshenko-gere-1961'));
  });

  it.each(['', ' ', 'zzz'])('finds nothing for `%s` and says what could be asked', (word) => {
    expect(() => findExamples(word)).toThrow(
      expect.objectContaining({
        problems: [expect.objectContaining({ code: 'unknown-name', allowed: expect.stringContaining('blister') })],
      }),
    );
  });

  it.each([
    ['strenght', 'strength'],
    ['timoshenco', 'timoshenko'],
    ['bimetal-curvatur', 'bimetal-curvature'],
  ])('offers for `%s` the nearest spelling', (word, meant) => {
    expect(() => findExamples(word)).toThrow(
      expect.objectContaining({ problems: [expect.objectContaining({ hint: `did you mean \`${meant}\`?` })] }),
    );
  });
});

describe('the short name of a source', () => {
  it.each([
    ['kaw-2006', 'Kaw 2006'],
    ['tsai-hahn-1980', 'Tsai and Hahn 1980'],
    ['chai-babcock-knauss-1981', 'Chai, Babcock and Knauss 1981'],
    ['schaffer-1999', 'Schaffer and others 1999'],
    ['obrien-1982', "O'Brien 1982"],
    ['callister', 'Callister'],
    ['iso-12215-5', 'iso-12215-5'],
  ])('of %s is %s', (key, name) => {
    expect(sourceName(key)).toBe(name);
  });

  it('tells the sources of the examples apart', () => {
    const keys = [...new Set(exampleIds.map((id) => exampleOf(id).source))];
    for (const key of keys) expect(bibliography).toHaveProperty([key]);
    expect(new Set(keys.map(sourceName)).size).toBe(keys.length);
  });
});
