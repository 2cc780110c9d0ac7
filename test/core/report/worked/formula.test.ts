import { readdirSync, readFileSync } from 'node:fs';
import { assemble, readDesign, workedSteps } from '@selvage/core';
import { all, create, type FactoryFunctionMap } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { kinds } from '../../../../packages/core/src/quantity/index.js';
import { chainOf, kindOf } from '../../../../packages/core/src/report/formula/index.js';
import { foldSteps } from '../../../../packages/core/src/report/worked/fold.js';
import { stepBlocks } from '../../../../packages/core/src/report/worked/step-block.js';
import { functions, sizeOf } from '../../working/support.js';

const folder = new URL('../../../../docs/examples/', import.meta.url);
const designs = readdirSync(folder).filter((name) => name.endsWith('.yaml'));
const stepsOf = (name: string) =>
  foldSteps(workedSteps(assemble(readDesign(readFileSync(new URL(name, folder), 'utf8')))));

const math = create(all as FactoryFunctionMap);
math.createUnit('tex', '1e-6 kg/m');

/** The calculator's own max and min refuse a plain 0 beside a quantity. */
const among =
  (better: 'larger' | 'smaller') =>
  (...all: unknown[]): unknown =>
    all.reduce((first, second) => {
      const of = (one: unknown, other: unknown) =>
        one === 0 && typeof other !== 'number' ? math.multiply(0, other as never) : one;
      const [a, b] = [of(first, second), of(second, first)];
      return math[better](a as never, b as never) ? a : b;
    });
const calculator = { ...functions, max: among('larger'), min: among('smaller') };

const digitsOf = (raised: string): string =>
  [...raised].map((c) => (c === '⁻' ? '-' : '⁰¹²³⁴⁵⁶⁷⁸⁹'.indexOf(c))).join('');
const raised = '[⁻⁰¹²³⁴⁵⁶⁷⁸⁹]';
const named = `[A-Za-zµ%][A-Za-zµ·]*${raised}*`;
const unit = `(?:10${raised}+(?:/${named})?|1/\\([^()]*\\)|1/${named}|${named}(?:/(?:\\([^()]*\\)|${named}))*)`;
const quantity = new RegExp(`(\\d[\\d.]*(?:e-?\\d+)?)(?:[ ·](${unit})|(°)(?!C))?`, 'g');

const powers = (text: string): string =>
  text.replace(new RegExp(`${raised}+`, 'g'), (power) => `^(${digitsOf(power)})`).replace(/·/g, '*');

/** What a reader would type into a calculator that knows units: a number binds to its unit more firmly than anything else. */
const typed = (printed: string): string =>
  powers(
    printed.replace(quantity, (_, number: string, of: string | undefined, degrees: string | undefined) => {
      if (degrees !== undefined) return number;
      if (of === undefined) return number;
      return `(${number} * ${powers(of).replace('%', '0.01').replace('min', 'minute').replace(/µ/g, 'u')})`;
    }),
  )
    .replace(/×/g, '*')
    .replace(/√/g, 'sqrt')
    .replace(/π/g, 'pi');

describe('the numbers put into a formula', () => {
  it.each(designs)('%s: typed into a calculator with units they give the result', (name) => {
    let compared = 0;
    for (const step of stepsOf(name)) {
      for (const block of stepBlocks(step, 1, 15, [])) {
        if (block.kind !== 'step') continue;
        for (const equation of block.equations) {
          const { right } = chainOf(equation, 'metric', 15);
          const put = right[1]?.text ?? '';
          const { expression } = equation;
          if (expression === undefined) continue;
          const value = equation.values[equation.symbol] ?? Number.NaN;
          if (right.length < 3 || put.includes('…')) continue;
          const { si } = kinds[kindOf(equation.symbol)];
          const given = math.evaluate(`(${typed(put)}) / (${si === '' || si === 'deg' ? 1 : si})`, {
            ...calculator,
          }) as number;
          const size = (equation.terms ?? [equation.values]).reduce(
            (sum, term) => sum + sizeOf(expression, { ...equation.values, ...term }),
            0,
          );
          expect(Math.abs(given - value), `${block.part} ${equation.symbol} = ${put}`).toBeLessThanOrEqual(
            1e-12 * size,
          );
          compared++;
        }
      }
    }
    expect(compared).toBeGreaterThan(5);
  });
});
