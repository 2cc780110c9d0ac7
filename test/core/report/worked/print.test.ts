import temml from 'temml';
import { describe, expect, it } from 'vitest';
import { parseExpression, symbolTex, symbolText } from '../../../../packages/core/src/expression/index.js';
import { type Numbers, printExpression } from '../../../../packages/core/src/report/formula/print.js';
import { rules, symbols } from '../../../../packages/core/src/working/index.js';

const inSymbols = (expression: string): string => printExpression(parseExpression(expression)).text;

const numbers = (values: Record<string, number>): Numbers => ({
  values,
  kinds: (identifier) => (identifier === 'theta' ? 'angle' : identifier.startsWith('t') ? 'length' : 'modulus'),
  units: 'metric',
  digits: 4,
});
const inNumbers = (expression: string, values: Record<string, number>): string =>
  printExpression(parseExpression(expression), numbers(values)).text;

describe('a symbol', () => {
  it.each([
    ['E1', 'E1', 'E_{1}'],
    ['nu12', 'ν12', '\\nu_{12}'],
    ['Qbar16', 'Q̄16', '\\bar{Q}_{16}'],
    ['eps0_x', 'ε⁰x', '\\varepsilon^{0}_{x}'],
    ['t_k', 'tk', 't_{k}'],
    ['Xt', 'Xt', 'X_{t}'],
    ['etaxyx', 'ηxy,x', '\\eta_{xy,x}'],
    ['theta', 'θ', '\\theta'],
  ])('%s is written %s, in LaTeX %s', (identifier, text, tex) => {
    expect(symbolText(identifier)).toBe(text);
    expect(symbolTex(identifier)).toBe(tex);
  });

  it('is written like no other symbol', () => {
    const names = Object.keys(symbols);
    for (const write of [symbolText, symbolTex]) {
      const written = names.map((name) => `${write(name)}`);
      expect(names.filter((_, i) => written.indexOf(written[i] ?? '') !== i)).toEqual([]);
    }
  });
});

describe('a formula in symbols', () => {
  it('keeps brackets that matter and drops those that do not', () => {
    expect(inSymbols('(U1)')).toBe('U1');
    expect(inSymbols('U1 - (U2 + U3)')).toBe('U1 - (U2 + U3)');
    expect(inSymbols('E1 / (E2 / t)')).toBe('E1 / (E2 / t)');
    expect(inSymbols('2*(E1 + E2) t^2')).toBe('2 (E1 + E2) t²');
    expect(inSymbols('(E1 t)^2')).toBe('(E1 t)²');
  });
});

describe('a formula in numbers', () => {
  it('puts a cross between factors and a unit behind each number', () => {
    expect(inNumbers('E1 t / 2', { E1: 10e9, t: 1e-3 })).toBe('10 GPa × 1 mm / 2');
  });

  it('puts brackets around negative numbers, and around what is raised to a power', () => {
    expect(inNumbers('E1 + E2 t', { E1: 1e9, E2: -2e9, t: 1e-3 })).toBe('1 GPa + (-2 GPa) × 1 mm');
    expect(inNumbers('E1 t^3', { E1: 1e9, t: 2e-3 })).toBe('1 GPa × (2 mm)³');
    expect(inNumbers('cos(2 theta)', { theta: -45 })).toBe('cos(2 × (-45°))');
  });

  it('leaves out terms that are zero, and says 0 when none is left', () => {
    expect(inNumbers('E1 - E2 t', { E1: 1e9, E2: 0, t: 1e-3 })).toBe('1 GPa');
    expect(inNumbers('E1 t - E2 t', { E1: 0, E2: 0, t: 1e-3 })).toBe('0');
    expect(inNumbers('E1 - E2', { E1: 0, E2: 3e9 })).toBe('-3 GPa');
  });

  it('keeps an angle of zero: its cosine is not', () => {
    expect(inNumbers('E1 cos(theta)', { E1: 1e9, theta: 0 })).toBe('1 GPa × cos(0°)');
  });
});

describe('the LaTeX', () => {
  const formulas = Object.entries(rules).flatMap(([name, { formulas, sums, form }]) => [
    ...Object.entries({ ...formulas, ...sums }).map(([symbol, expression]) => {
      const node = parseExpression(expression);
      return [name, `${symbolTex(symbol)} = ${printExpression(node).tex}`] as const;
    }),
    ...(form === undefined ? [] : [[name, form.tex] as const]),
  ]);

  it.each(formulas)('%s: %s becomes MathML', (_, tex) => {
    expect(temml.renderToString(tex, { throwOnError: true })).toMatch(/^<math.*<\/math>$/s);
  });
});
