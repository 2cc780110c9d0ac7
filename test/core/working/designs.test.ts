import { readdirSync, readFileSync } from 'node:fs';
import { assemble, readDesign, workedSteps } from '@selvage/core';
import { describe, expect, it } from 'vitest';
import { type RuleName, rules, symbols } from '../../../packages/core/src/working/index.js';
import { misses, symbolsOf } from './support.js';

const folder = new URL('../../../docs/examples/', import.meta.url);
const designs = readdirSync(folder).filter((name) => name.endsWith('.yaml'));
const workings = new Map(
  designs.map((name) => [name, workedSteps(assemble(readDesign(readFileSync(new URL(name, folder), 'utf8'))))]),
);

describe('the working of a design', () => {
  it.each(designs)('%s: every formula gives the number that was written down', (name) => {
    const steps = workings.get(name) ?? [];
    expect(steps.length).toBeGreaterThan(0);
    expect(misses(steps)).toEqual([]);
  });

  it.each(designs)('%s: every number is finite', (name) => {
    for (const { part, rule, values, rows = [] } of workings.get(name) ?? []) {
      for (const [symbol, value] of [values, ...rows].flatMap((numbers) => Object.entries(numbers))) {
        expect(Number.isFinite(value), `${part.join('.')} ${rule} ${symbol}`).toBe(true);
      }
    }
  });

  it('inverts the stiffness: their product is the unit matrix', () => {
    const order = ['11', '12', '16', '12', '22', '26', '16', '26', '66'];
    const full = ['11', '12', '16', '21', '22', '26', '61', '62', '66'];
    for (const { rule, values } of [...workings.values()].flat()) {
      if (rule !== 'inverse') continue;
      const at = (name: string, indices: string[], i: number, j: number): number =>
        values[name + (indices[3 * i + j] ?? '')] ?? Number.NaN;
      const stiff = (i: number, j: number): number =>
        i < 3 ? at(j < 3 ? 'A' : 'B', order, i, j % 3) : at(j < 3 ? 'B' : 'D', order, i % 3, j % 3);
      const compliant = (i: number, j: number): number => {
        if (i < 3) return j < 3 ? at('a', order, i, j) : at('b', full, i, j % 3);
        return j < 3 ? at('b', full, j, i % 3) : at('d', order, i % 3, j % 3);
      };
      for (let i = 0; i < 6; i++) {
        for (let j = 0; j < 6; j++) {
          const terms = [0, 1, 2, 3, 4, 5].map((k) => stiff(i, k) * compliant(k, j));
          const size = terms.reduce((sum, term) => sum + Math.abs(term), 0);
          const product = terms.reduce((sum, term) => sum + term, 0);
          expect(Math.abs(product - (i === j ? 1 : 0))).toBeLessThanOrEqual(1e-9 * Math.max(1, size));
        }
      }
    }
  });
});

/** Rules that no example design reaches, by the test that does. */
const usedElsewhere: Readonly<Record<string, readonly RuleName[]>> = {
  'stitching.test.ts': [
    'legsOfTwoThreads',
    'sideSlips',
    'legsAboveLock',
    'legsBelowLock',
    'rodInHole',
    'yieldingBend',
    'floatBehindBend',
    'sharesWithoutScatter',
    'slipOfSide',
    'bendOfSide',
    'floatSlips',
    'floatStretches',
    'stretchWithBend',
    'threadInCrack',
  ],
  'materials.test.ts': [
    'acrossInverse',
    'acrossChamis',
    'shearInverse',
    'shearChamis',
    'warpMoisture',
    'weftMoisture',
    'matEighths',
  ],
  'strength.test.ts': [
    'matAxes',
    'maxStressBroken',
    'maxStrainBroken',
    'tsaiHillBroken',
    'tsaiWuBroken',
    'hashinFibreOnly',
    'hashinMatrixOnly',
    'hashinBroken',
    'puckB',
    'puckFibreOnly',
    'puckBetweenOnly',
    'puckBroken',
  ],
  'coupons.test.ts': [
    'armFreeAcross',
    'middleOfTests',
    'middleOfTestsInRange',
    'armsAtMiddle',
    'strengthAtMiddle',
    'bondAtMiddle',
    'bondBelowLikeliest',
    'bondAboveLikeliest',
    'armBendsBetweenRows',
    'slidingBendsInBond',
    'peelUnlikeRows',
  ],
};

describe('a symbol', () => {
  it('means one thing in all rules', async () => {
    const folder = new URL('../../../packages/core/src/working/rules/', import.meta.url);
    const tables = await Promise.all(
      readdirSync(folder).map(async (file) => {
        const found = (await import(/* @vite-ignore */ new URL(file, folder).href)) as Record<string, object>;
        return Object.entries(found).filter(([name]) => name.endsWith('Symbols'));
      }),
    );
    const meanings = new Map<string, Set<string>>();
    for (const [symbol, meaning] of tables.flat().flatMap(([, table]) => Object.entries(table))) {
      meanings.set(symbol, (meanings.get(symbol) ?? new Set()).add(JSON.stringify(meaning)));
    }
    expect(meanings.size).toBeGreaterThan(100);
    expect([...meanings].filter(([, all]) => all.size > 1)).toEqual([]);
  });
});

describe('the rules', () => {
  const all = Object.entries(rules);

  it.each(all)('%s: every symbol has a meaning and a kind', (_, rule) => {
    const named = Object.entries({ ...rule.formulas, ...rule.sums, ...rule.each }).flatMap(([symbol, expression]) => [
      symbol,
      ...symbolsOf(expression),
    ]);
    for (const symbol of [...named, ...(rule.results ?? [])]) expect(Object.keys(symbols), symbol).toContain(symbol);
  });

  it('each is used by one of the example designs or by the test named', () => {
    const used = new Set([
      ...[...workings.values()].flat().map(({ rule }) => rule),
      ...Object.values(usedElsewhere).flat(),
    ]);
    expect(all.map(([name]) => name).filter((name) => !used.has(name as keyof typeof rules))).toEqual([]);
  });
});
