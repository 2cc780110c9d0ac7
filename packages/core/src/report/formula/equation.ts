import { parseExpression, symbolTex, symbolText } from '../../expression/index.js';
import type { UnitSystem } from '../../quantity/index.js';
import { symbols } from '../../working/index.js';
import type { Equation } from '../blocks.js';
import { type Numbers, printExpression, printQuantity, type Written } from './print.js';

/** A result as a chain of equal signs: the symbol; what it equals in symbols, with numbers put in, and as a number. */
export interface Chain {
  readonly left: Written;
  readonly right: readonly Written[];
}

/** Of a sum with more terms than this only the first and the last are put into the formula; the table beside it has them all. */
const mostTerms = 6;

/** The kind of a symbol; every symbol of a rule has one. */
export const kindOf = (identifier: string) => symbols[identifier]?.kind ?? 'number';

export function chainOf(equation: Equation, units: UnitSystem, digits: number): Chain {
  const { symbol, expression, terms, values } = equation;
  const numbers = (of: Readonly<Record<string, number>>): Numbers => ({ values: of, kinds: kindOf, units, digits });
  const result = printQuantity(values[symbol] ?? Number.NaN, kindOf(symbol), numbers(values));
  const left = { text: symbolText(symbol), tex: symbolTex(symbol) };
  if (expression === undefined) return { left, right: [result] };
  const node = parseExpression(expression);
  const inSymbols = printExpression(node);
  if (terms === undefined) {
    const put = printExpression(node, numbers(values));
    const right = put.text === result.text || put.text === '0' ? [inSymbols, result] : [inSymbols, put, result];
    return { left, right };
  }
  const bracketed = /[+-]/.test(expression.replace(/\([^()]*\)/g, ''));
  const sum = {
    text: `Σ ${bracketed ? `(${inSymbols.text})` : inSymbols.text}`,
    tex: `\\sum ${bracketed ? `\\left(${inSymbols.tex}\\right)` : inSymbols.tex}`,
  };
  const put = joined(terms.map((term) => printExpression(node, numbers({ ...values, ...term }))));
  return { left, right: put.text === '0' ? [sum, result] : [sum, put, result] };
}

/** Terms with plus signs between them; those of nothing but zero are left out. */
function joined(terms: readonly Written[]): Written {
  const kept = terms.filter(({ text }) => text !== '0');
  if (kept.length === 0) return { text: '0', tex: '0' };
  const shown: readonly Written[] =
    kept.length <= mostTerms
      ? kept
      : [...kept.slice(0, mostTerms - 2), { text: '…', tex: '\\dots' }, ...kept.slice(-1)];
  const signed = shown.map(({ text, tex }, i) => (i === 0 ? { text, tex } : { text: `+ ${text}`, tex: `+ ${tex}` }));
  return { text: signed.map(({ text }) => text).join(' '), tex: signed.map(({ tex }) => tex).join(' '), terms: signed };
}
