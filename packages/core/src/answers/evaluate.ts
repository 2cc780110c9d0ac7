import type { ConstantNode, FunctionNode, MathNode, OperatorNode, ParenthesisNode, SymbolNode } from 'mathjs';
import { parseExpression } from '../expression/index.js';
import { sinCosDegrees } from '../numeric/index.js';

const functions: Readonly<Record<string, (...values: number[]) => number>> = {
  sqrt: Math.sqrt,
  sin: (angle = 0) => sinCosDegrees(angle).sin,
  cos: (angle = 0) => sinCosDegrees(angle).cos,
  tan: (angle = 0) => sinCosDegrees(angle).sin / sinCosDegrees(angle).cos,
  acos: (cosine = 0) => (Math.acos(cosine) * 180) / Math.PI,
  atan: (slope = 0) => (Math.atan(slope) * 180) / Math.PI,
  floor: Math.floor,
  round: Math.round,
  exp: Math.exp,
  log: Math.log,
  sinh: Math.sinh,
  cosh: Math.cosh,
  tanh: Math.tanh,
  min: Math.min,
  max: Math.max,
  abs: Math.abs,
};

const operators: Readonly<Record<string, (left: number, right: number) => number>> = {
  '+': (left, right) => left + right,
  '-': (left, right) => left - right,
  '*': (left, right) => left * right,
  '/': (left, right) => left / right,
  '^': (left, right) => left ** right,
};

const is = <N extends MathNode>(node: MathNode, type: string): node is N => node.type === type;

/**
 * The value of an expression of a rule, angles in degrees.
 * Plain numbers only: the evaluation of mathjs would bring its matrices and big numbers along.
 * @param numberOf the number of a symbol
 */
export function evaluate(expression: string, numberOf: (symbol: string) => number): number {
  const result = (node: MathNode): number => {
    if (is<ConstantNode>(node, 'ConstantNode')) return Number(node.value);
    if (is<SymbolNode>(node, 'SymbolNode')) return node.name === 'pi' ? Math.PI : numberOf(node.name);
    if (is<ParenthesisNode>(node, 'ParenthesisNode')) return result(node.content);
    if (is<FunctionNode>(node, 'FunctionNode')) {
      return (functions[node.fn.toString()] ?? (() => Number.NaN))(...node.args.map(result));
    }
    if (is<OperatorNode>(node, 'OperatorNode')) {
      const [left = Number.NaN, right] = node.args.map((arg) => result(arg as MathNode));
      return right === undefined ? -left : (operators[node.op]?.(left, right) ?? Number.NaN);
    }
    return Number.NaN;
  };
  return result(parseExpression(expression));
}
