import { create, type MathJsInstance, type MathNode, parseDependencies } from 'mathjs';

let instance: MathJsInstance | undefined;
const parsed = new Map<string, MathNode>();

/** The tree of an expression of a rule, by mathjs; the brackets that were written stay. */
export function parseExpression(expression: string): MathNode {
  instance ??= create({ ...parseDependencies });
  let node = parsed.get(expression);
  if (node === undefined) {
    node = instance.parse(expression);
    parsed.set(expression, node);
  }
  return node;
}
