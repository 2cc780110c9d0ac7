import { isMap, isScalar, type Node, parse, type Scalar } from 'yaml';
import type { Path } from '../problem/index.js';
import type { SourceDocument } from './source.js';

/** A value as written: text, a number, true or false, or nothing. */
export type InputValue = string | number | boolean | null;

/** Text to be put in place of a stretch of the file. */
interface Edit {
  readonly from: number;
  readonly to: number;
  readonly text: string;
}

/** Whether text without quotes is read as a value, within braces too. */
function isRead(text: string, value: InputValue): boolean {
  try {
    return [`k: ${text}\n`, `{ k: ${text}, l: 1 }`].every((one) => parse(one).k === value);
  } catch {
    return false;
  }
}

/** A value as YAML on one line, in quotes where the text before it had them or where it needs them. */
function scalarText(value: InputValue, before?: Scalar): string {
  if (typeof value !== 'string') return String(value);
  if (before?.type === 'QUOTE_SINGLE' && !/[\n\r']/.test(value)) return `'${value}'`;
  const bare = before?.type !== 'QUOTE_DOUBLE' && !/[\n\r]/.test(value) && isRead(value, value);
  return bare ? value : JSON.stringify(value);
}

function replacement({ text }: SourceDocument, node: Scalar, value: InputValue): Edit | undefined {
  const [from, to] = node.range ?? [0, 0];
  if (from === to) return { from, to, text: ` ${scalarText(value)}` };
  const old = text.slice(from, to);
  const end = /^[|>]/.test(old) ? (/(\r?\n)*$/.exec(old)?.[0] ?? '') : '';
  return { from, to, text: `${scalarText(value, node)}${end}` };
}

/** A key that the file leaves out, after the last one beside it. */
function addition({ text }: SourceDocument, map: Node | undefined, key: string, value: InputValue): Edit | undefined {
  if (!isMap(map)) return undefined;
  const [first, last] = [map.items[0], map.items.at(-1)];
  const end = (last?.value as Node | null | undefined)?.range?.[1];
  const start = (first?.key as Node | undefined)?.range?.[0];
  if (end === undefined || start === undefined) return undefined;
  const pair = `${key}: ${scalarText(value)}`;
  if (map.flow === true) return { from: end, to: end, text: `, ${pair}` };
  const indent = ' '.repeat(start - text.lastIndexOf('\n', start - 1) - 1);
  const lineEnd = text.includes('\r\n') ? '\r\n' : '\n';
  if (text[end - 1] === '\n') return { from: end, to: end, text: `${indent}${pair}${lineEnd}` };
  const next = text.indexOf('\n', end);
  const at = next < 0 ? text.length : next + 1;
  return { from: at, to: at, text: `${next < 0 ? lineEnd : ''}${indent}${pair}${lineEnd}` };
}

/**
 * The text of a file with one value changed or added; everything else stays to the byte.
 * @returns undefined where the value does not stand by itself in the text
 */
export function editedText(source: SourceDocument, keys: Path, value: InputValue): string | undefined {
  const { document, text } = source;
  const node = document.getIn(keys, true) as Node | undefined;
  const edit = isScalar(node)
    ? replacement(source, node, value)
    : node === undefined
      ? addition(source, document.getIn(keys.slice(0, -1), true) as Node | undefined, String(keys.at(-1)), value)
      : undefined;
  return edit === undefined ? undefined : `${text.slice(0, edit.from)}${edit.text}${text.slice(edit.to)}`;
}
