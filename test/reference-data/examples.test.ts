import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parseUnit } from '../../packages/core/src/quantity/index.js';
import { examples, sources } from './tables.js';

const rows = examples.flatMap((example) =>
  Object.entries(example.values).map(([key, row]) => [`${example.id} ${key}`, row] as const),
);

/** The weight of the last printed digit: 1e6 for "181.8e7". */
function lastDigit(printed: string): number {
  const [mantissa = '', exponent = '0'] = printed.toLowerCase().split('e');
  const decimals = mantissa.split('.')[1]?.length ?? 0;
  return 10 ** (Number(exponent) - decimals);
}

/** Every text among the inputs, at any depth, that begins with a number. */
function quantities(input: unknown): string[] {
  if (typeof input === 'string') return /^[-\d]/.test(input) ? [input] : [];
  if (typeof input !== 'object' || input === null) return [];
  return Object.values(input).flatMap(quantities);
}

describe('the worked examples', () => {
  it('have ids of their own, a source, a place and a confidence', () => {
    expect(new Set(examples.map((example) => example.id)).size).toBe(examples.length);
    for (const { id, title, source, where, access, confidence, values } of examples) {
      expect(sources[source], id).toBeDefined();
      expect(title.length * where.length, id).toBeGreaterThan(0);
      expect(['read', 'recalled', 'computed'], id).toContain(access);
      expect(['high', 'medium', 'low'], id).toContain(confidence);
      expect(Object.keys(values).length, id).toBeGreaterThan(0);
    }
  });

  it('are of kinds that the description of the data explains', () => {
    const readme = readFileSync(new URL('../../reference-data/README.md', import.meta.url), 'utf8');
    for (const { kind } of examples) expect(readme, kind).toContain(`| \`${kind}\` |`);
  });

  it('use units that the quantity reader knows', () => {
    for (const [place, row] of rows) expect(parseUnit(row.unit), `${place} in ${row.unit}`).toBeDefined();
    for (const { id, inputs } of examples) {
      for (const text of quantities(inputs))
        expect(parseUnit(text.replace(/^\S+\s*/, '')), `${id}: ${text}`).toBeDefined();
    }
  });

  it('state numbers that are the printed text and agree with the independent calculation', () => {
    for (const [place, { printed, value, oracle, tolerance }] of rows) {
      expect(value, place).toBe(Number(printed));
      expect(Math.abs(value - oracle), place).toBeLessThanOrEqual(tolerance * (1 + 1e-9));
    }
  });

  it('state the tolerance that the printed digits justify: half a unit when strict, one unit when loose', () => {
    for (const [place, { printed, tolerance, match }] of rows) {
      expect(tolerance / lastDigit(printed), place).toBeCloseTo(match === 'strict' ? 0.5 : 1, 6);
    }
  });
});
