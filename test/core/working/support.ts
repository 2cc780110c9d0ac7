import { all, create, type EvalFunction, type FactoryFunctionMap } from 'mathjs';
import { type RecordedStep, rules } from '../../../packages/core/src/working/index.js';

const math = create(all as FactoryFunctionMap);
const degrees = Math.PI / 180;

/** The functions that the formulas call, angles in degrees. */
export const functions = {
  sin: (angle: number) => Math.sin(angle * degrees),
  cos: (angle: number) => Math.cos(angle * degrees),
  tan: (angle: number) => Math.tan(angle * degrees),
  acos: (cosine: number) => Math.acos(cosine) / degrees,
  atan: (slope: number) => Math.atan(slope) / degrees,
};

const compiled = new Map<string, EvalFunction>();
const parsed = new Map<string, math.MathNode>();

/** The value of a formula for the numbers of a step, by mathjs: nothing of the computation is used. */
export function resultOf(expression: string, values: Readonly<Record<string, number>>): number {
  const formula = compiled.get(expression) ?? math.compile(expression);
  compiled.set(expression, formula);
  return formula.evaluate(new Map<string, unknown>(Object.entries({ ...functions, ...values }))) as number;
}

/** The symbols that an expression names, functions and the number π left out. */
export function symbolsOf(expression: string): string[] {
  const names = new Set<string>();
  math.parse(expression).traverse((node, path) => {
    if (math.isSymbolNode(node) && path !== 'fn' && node.name !== 'pi') names.add(node.name);
  });
  return [...names];
}

/** How large a formula's terms are: the size against which rounding is judged where terms cancel. */
export function sizeOf(expression: string, values: Readonly<Record<string, number>>): number {
  const positive = Object.fromEntries(Object.entries(values).map(([name, value]) => [name, Math.abs(value)]));
  const size = (node: math.MathNode): number => {
    if (math.isParenthesisNode(node)) return size(node.content);
    if (math.isOperatorNode(node)) {
      const parts = node.args.map((arg) => size(arg as math.MathNode));
      const [left = 0, right] = parts;
      if (right === undefined) return left;
      if (node.op === '+' || node.op === '-') return left + right;
      if (node.op === '*') return left * right;
      if (node.op === '/') return left / Math.abs(resultOf((node.args[1] as math.MathNode).toString(), values));
      return left ** right;
    }
    if (math.isFunctionNode(node) && (node.fn.toString() === 'sin' || node.fn.toString() === 'cos')) return 1;
    return Math.abs(resultOf(node.toString(), math.isSymbolNode(node) ? positive : values));
  };
  const tree = parsed.get(expression) ?? math.parse(expression);
  parsed.set(expression, tree);
  return size(tree);
}

/** A formula of a step that does not give the number that was written down. */
export interface Miss {
  readonly step: string;
  readonly symbol: string;
  readonly written: number;
  readonly formula: number;
}

/**
 * Every number of the steps that its formula, evaluated by another program from the numbers beside it, does not give.
 * @param tolerance relative to the size of the formula's terms
 */
export function misses(steps: readonly RecordedStep[], tolerance = 1e-11): Miss[] {
  return steps.flatMap(({ part, rule, values, rows }) => {
    const found: Miss[] = [];
    const name = `${part.join('.')} ${rule}`;
    const compare = (symbol: string, expression: string, numbers: Readonly<Record<string, number>>): void => {
      const written = numbers[symbol] ?? Number.NaN;
      const formula = resultOf(expression, numbers);
      if (!(Math.abs(written - formula) <= tolerance * sizeOf(expression, numbers))) {
        found.push({ step: name, symbol, written, formula });
      }
    };
    for (const [symbol, expression] of Object.entries(rules[rule].formulas ?? {})) compare(symbol, expression, values);
    for (const [symbol, expression] of Object.entries(rules[rule].sums ?? {})) {
      for (const row of rows ?? []) compare(symbol, expression, { ...values, ...row });
      const sum = (rows ?? []).reduce((total, row) => total + (row[symbol] ?? Number.NaN), 0);
      const size = (rows ?? []).reduce((total, row) => total + Math.abs(row[symbol] ?? 0), 0);
      const written = values[symbol] ?? Number.NaN;
      if (!(Math.abs(written - sum) <= tolerance * size)) found.push({ step: name, symbol, written, formula: sum });
    }
    for (const [symbol, expression] of Object.entries(rules[rule].each ?? {})) {
      for (const row of rows ?? [{}]) compare(symbol, expression, { ...values, ...row });
    }
    return found;
  });
}
