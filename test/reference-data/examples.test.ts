import { readFileSync } from 'node:fs';
import strips from '@selvage/reference-data/examples/tables/strip-bending.json' with { type: 'json' };
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
      expect(['read', 'quoted', 'recalled', 'computed'], id).toContain(access);
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
    for (const [place, { printed, value, oracle, tolerance, band }] of rows) {
      expect(value, place).toBe(Number(printed));
      // Printed sums of series too short are a part in ten thousand off; their bands are wider.
      const allowed = band === undefined ? tolerance : Math.max(tolerance, 1e-4 * oracle);
      expect(Math.abs(value - oracle), place).toBeLessThanOrEqual(allowed * (1 + 1e-9));
    }
  });

  it('state the tolerance that the printed digits justify: half a unit when strict, one unit when loose', () => {
    for (const [place, { printed, tolerance, match }] of rows) {
      expect(tolerance / lastDigit(printed), place).toBeCloseTo(match === 'strict' ? 0.5 : 1, 6);
    }
  });
});

describe('the bands of theories that are simpler than those of their source', () => {
  /** What first-order theory misses in the worst strip of a span, by the independent script's own numbers. */
  const worst = (span: number): number =>
    Math.max(
      ...strips.strips
        .flatMap((strip) => strip.rows as { span: number; exact: number; firstOrder?: number }[])
        .flatMap((row) =>
          row.span === span && row.firstOrder !== undefined ? [Math.abs(row.firstOrder / row.exact - 1)] : [],
        ),
    );
  const banded = examples.flatMap(({ id, source, inputs, values }) =>
    Object.entries(values).flatMap(([key, { band }]) =>
      band === undefined ? [] : [{ id, key, source, band, span: Number(/\d+$/.exec(key)?.[0] ?? inputs.slenderness) }],
    ),
  );

  it('are no wider than the worst strip of the same span and a twentieth, rounded up; series too short add 1e-4', () => {
    expect(banded.length).toBeGreaterThan(0);
    for (const { id, key, source, band, span } of banded) {
      const least = 1.05 * worst(span) + (source === 'zenkour-2007' ? 1e-4 : 0);
      expect(band, `${id} ${key}`).toBeGreaterThanOrEqual(least);
      expect(band, `${id} ${key}`).toBeLessThan(1.2 * least);
    }
  });

  it('stand with the exact values that the tables of strips hold too', () => {
    const { rows } = strips.strips.find(({ stack }) => stack === '[0/90/0]')!;
    const { values } = examples.find(({ id }) => id === 'strip-deflection-cross-ply')!;
    for (const [key, { oracle }] of Object.entries(values)) {
      expect(rows.find(({ span }) => `w${span}` === key)?.exact).toBe(oracle);
    }
  });
});
