import type { ConstantNode, FunctionNode, MathNode, OperatorNode, ParenthesisNode, SymbolNode } from 'mathjs';
import { symbolTex, symbolText } from '../../expression/index.js';
import { displayUnit, formatNumber, inDisplayUnit, type KindName, type UnitSystem } from '../../quantity/index.js';

/** Numbers that stand for the symbols of an expression. */
export interface Numbers {
  readonly values: Readonly<Record<string, number>>;
  readonly kinds: (identifier: string) => KindName;
  readonly units: UnitSystem;
  readonly digits: number;
}

/** A formula as plain text and in LaTeX. */
export interface Written {
  readonly text: string;
  readonly tex: string;
  /** A sum in its terms, each with its sign, where a line may break. */
  readonly terms?: readonly Written[];
}

/** How the pieces of an expression are written: as plain text or in LaTeX. */
interface Notation {
  readonly symbol: (identifier: string) => string;
  readonly quantity: (value: string, unit: string) => string;
  readonly divide: (over: string, under: string) => string;
  readonly power: (base: string, exponent: string) => string;
  readonly call: (name: string, args: readonly string[]) => string;
  readonly bracket: (inner: string) => string;
  /** Between factors: of symbols, of numbers. */
  readonly times: readonly [symbols: string, numbers: string];
  readonly minus: string;
  /** Whether a quotient groups what stands over and under it by itself. */
  readonly fractionGroups: boolean;
}

const superscripts: Readonly<Record<string, string>> = { '2': '²', '3': '³', '4': '⁴' };

const text: Notation = {
  symbol: symbolText,
  quantity: (value, unit) => {
    if (unit === '') return value;
    if (unit === '°') return `${value}°`;
    return unit.startsWith('10') ? `${value}·${unit}` : `${value} ${unit}`;
  },
  divide: (over, under) => `${over} / ${under}`,
  power: (base, exponent) =>
    superscripts[exponent] === undefined ? `${base}^${exponent}` : base + superscripts[exponent],
  call: (name, args) => {
    const root = name === 'sqrt' ? '√' : name;
    return `${root}(${args.join(', ')})`;
  },
  bracket: (inner) => `(${inner})`,
  times: [' ', ' × '],
  minus: '-',
  fractionGroups: false,
};

const texFunctions: Readonly<Record<string, string>> = {
  sin: '\\sin',
  cos: '\\cos',
  tan: '\\tan',
  exp: '\\exp',
  log: '\\ln',
  tanh: '\\tanh',
  cosh: '\\cosh',
  sinh: '\\sinh',
  min: '\\min',
  max: '\\max',
};

/** A number in LaTeX: an exponent of ten is raised. */
const texNumber = (value: string): string => value.replace(/e(-?\d+)$/, '\\cdot 10^{$1}');

/** A printed unit in LaTeX. */
const texUnit = (unit: string): string =>
  unit
    .replace(
      /[⁻⁰¹²³⁴⁵⁶⁷⁸⁹]+/g,
      (power) => `}^{${[...power].map((c) => (c === '⁻' ? '-' : '⁰¹²³⁴⁵⁶⁷⁸⁹'.indexOf(c))).join('')}}\\mathrm{`,
    )
    .replace(/·/g, '}\\,\\mathrm{')
    .replace(/µ/g, '\\text{µ}')
    .replace(/%/g, '\\%');

const tex: Notation = {
  symbol: symbolTex,
  quantity: (value, unit) => {
    if (unit === '') return texNumber(value);
    if (unit === '°') return `${value}^{\\circ}`;
    const joint = unit.startsWith('10') ? '\\cdot ' : '\\,';
    return `${texNumber(value)}${joint}${`\\mathrm{${texUnit(unit)}}`.replaceAll('\\mathrm{}', '')}`;
  },
  divide: (over, under) => `\\frac{${over}}{${under}}`,
  power: (base, exponent) => `{${base}}^{${exponent}}`,
  call: (name, args) => {
    if (name === 'sqrt') return `\\sqrt{${args.join(', ')}}`;
    if (name === 'abs') return `\\left|${args.join(', ')}\\right|`;
    return `${texFunctions[name] ?? `\\mathrm{${name}}`}\\left(${args.join(', ')}\\right)`;
  },
  bracket: (inner) => `\\left(${inner}\\right)`,
  times: ['\\,', ' \\times '],
  minus: '-',
  fractionGroups: true,
};

/** A printed number and a printed unit in LaTeX; either may be empty. */
export const quantityTex = (number: string, unit: string): string =>
  number === '' ? tex.quantity('', unit).replace(/^\\,/, '') : tex.quantity(number, unit);

/** A quantity with its unit, the way a formula shows it. */
function shown(value: number, kind: KindName, { units, digits }: Numbers, notation: Notation): string {
  const unit = displayUnit(kind, units);
  const number = formatNumber(inDisplayUnit(value, kind, units), digits);
  return notation.quantity(number, unit);
}

/** Printed pieces and whether they need brackets beside a product or under a power. */
interface Piece {
  readonly text: string;
  /** sum: has a + or - outside brackets; negative: a number below zero; quantity: a number with a unit; ratio: one with a unit per unit; fraction: one over the other; atom: none of these. */
  readonly form: 'atom' | 'quantity' | 'ratio' | 'fraction' | 'negative' | 'product' | 'quotient' | 'sum';
  /** True when it is nothing but zero, so that a sum can leave it out. */
  readonly zero: boolean;
  /** True when a number stands in it. */
  readonly numeric: boolean;
  /** The terms of a sum, each with its sign. */
  readonly terms?: readonly string[];
}

const is = <N extends MathNode>(node: MathNode, type: string): node is N => node.type === type;

function printer(notation: Notation, numbers: Numbers | undefined): (node: MathNode) => Piece {
  const bracketed = (piece: Piece, forms: readonly Piece['form'][]): string =>
    forms.includes(piece.form) ? notation.bracket(piece.text) : piece.text;

  const symbol = (identifier: string): Piece => {
    const value = numbers?.values[identifier];
    if (numbers === undefined || value === undefined) {
      return { text: notation.symbol(identifier), form: 'atom', zero: false, numeric: false };
    }
    const kind = numbers.kinds(identifier);
    const printed = shown(value, kind, numbers, notation);
    const unit = displayUnit(kind, numbers.units);
    const whole = unit.includes('/') ? 'ratio' : unit === '' ? 'atom' : 'quantity';
    const form = value < 0 ? 'negative' : whole;
    return { text: printed, form, zero: value === 0 && kind !== 'angle', numeric: true };
  };

  const addends = (node: MathNode, sign: 1 | -1): { readonly sign: 1 | -1; readonly piece: Piece }[] => {
    if (is<OperatorNode>(node, 'OperatorNode') && node.args.length === 2 && (node.op === '+' || node.op === '-')) {
      const [left, right] = node.args as [MathNode, MathNode];
      return [...addends(left, sign), ...addends(right, node.op === '+' ? sign : sign === 1 ? -1 : 1)];
    }
    if (is<OperatorNode>(node, 'OperatorNode') && node.args.length === 1 && node.op === '-') {
      return addends(node.args[0] as MathNode, sign === 1 ? -1 : 1);
    }
    return [{ sign, piece: print(node) }];
  };

  const sum = (node: MathNode): Piece => {
    const all = addends(node, 1);
    const kept = numbers === undefined ? all : all.filter(({ piece }) => !piece.zero);
    if (kept.length === 0) return { text: '0', form: 'atom', zero: true, numeric: true };
    const words = kept.map(({ sign, piece }, i) => {
      const inner = bracketed(piece, i === 0 && sign === 1 ? ['sum'] : ['sum', 'negative']);
      if (i === 0) return sign === 1 ? inner : `${notation.minus}${inner}`;
      return ` ${sign === 1 ? '+' : notation.minus} ${inner}`;
    });
    const only = kept.length === 1 ? kept[0] : undefined;
    const form = only === undefined ? 'sum' : only.sign === -1 ? 'negative' : only.piece.form;
    const numeric = kept.some(({ piece }) => piece.numeric);
    return { text: words.join(''), form, zero: false, numeric, terms: words.map((word) => word.trim()) };
  };

  const factors = (node: MathNode): MathNode[] =>
    is<OperatorNode>(node, 'OperatorNode') && node.op === '*'
      ? node.args.flatMap((arg) => factors(arg as MathNode))
      : [node];

  const product = (node: MathNode): Piece => {
    const pieces = factors(node).map(print);
    if (numbers !== undefined && pieces.some(({ zero }) => zero)) {
      return { text: notation.quantity('0', ''), form: 'atom', zero: true, numeric: true };
    }
    const words = pieces.map((piece, i) =>
      bracketed(piece, i === 0 ? ['sum', 'negative'] : ['sum', 'negative', 'quotient']),
    );
    const joined = words.reduce((done, word, i) => {
      if (i === 0) return word;
      const constants = /\d$/.test(done) && /^\d/.test(word);
      return `${done}${notation.times[numbers !== undefined || constants ? 1 : 0]}${word}`;
    }, '');
    return { text: joined, form: 'product', zero: false, numeric: pieces.some(({ numeric }) => numeric) };
  };

  const operator = (node: OperatorNode): Piece => {
    const [left, right] = node.args as unknown as readonly [MathNode, MathNode | undefined];
    if (right === undefined || node.op === '+' || node.op === '-') return sum(node);
    if (node.op === '*') return product(node);
    if (node.op === '/') {
      const over = print(left);
      const under = print(right);
      if (numbers !== undefined && over.zero) return { ...over, text: '0' };
      const grouped = notation.fractionGroups;
      const top = grouped ? over.text : bracketed(over, ['sum']);
      const bottom = grouped ? under.text : bracketed(under, ['sum', 'product', 'quotient', 'negative', 'ratio']);
      return {
        text: notation.divide(top, bottom),
        form: grouped ? 'fraction' : 'quotient',
        zero: false,
        numeric: over.numeric || under.numeric,
      };
    }
    const base = print(left);
    if (numbers !== undefined && base.zero) return { ...base, text: '0' };
    const raised = bracketed(base, ['sum', 'product', 'quotient', 'fraction', 'negative', 'quantity', 'ratio']);
    const exponent = print(right);
    const above = notation.fractionGroups
      ? exponent.text
      : bracketed(exponent, ['sum', 'product', 'quotient', 'negative']);
    return { text: notation.power(raised, above), form: 'atom', zero: false, numeric: base.numeric };
  };

  const print = (node: MathNode): Piece => {
    if (is<ConstantNode>(node, 'ConstantNode')) {
      return { text: notation.quantity(String(node.value), ''), form: 'atom', zero: node.value === 0, numeric: false };
    }
    if (is<SymbolNode>(node, 'SymbolNode')) return symbol(node.name);
    // Brackets follow from the tree, so that those around a single number go.
    if (is<ParenthesisNode>(node, 'ParenthesisNode')) return print(node.content);
    if (is<FunctionNode>(node, 'FunctionNode')) {
      const args = node.args.map(print);
      return {
        text: notation.call(
          node.fn.toString(),
          args.map((arg) => arg.text),
        ),
        form: 'atom',
        zero: false,
        numeric: args.some(({ numeric }) => numeric),
      };
    }
    if (is<OperatorNode>(node, 'OperatorNode')) return operator(node);
    throw new Error(`a formula holds a ${node.type}, which is not printed`);
  };

  return print;
}

/** An expression in symbols, or with numbers and units in their place: as plain text and in LaTeX. */
export function printExpression(node: MathNode, numbers?: Numbers): Written {
  const [inText, inTex] = [printer(text, numbers)(node), printer(tex, numbers)(node)];
  const terms = (inText.terms ?? []).map((term, i) => ({ text: term, tex: inTex.terms?.[i] ?? '' }));
  return { text: inText.text, tex: inTex.text, ...(terms.length > 1 ? { terms } : {}) };
}

/** One quantity with its unit, as plain text and in LaTeX. */
export function printQuantity(value: number, kind: KindName, numbers: Numbers): Written {
  return { text: shown(value, kind, numbers, text), tex: shown(value, kind, numbers, tex) };
}
