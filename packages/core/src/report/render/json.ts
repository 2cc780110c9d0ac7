import { fail } from '../../problem/index.js';
import type { Report } from '../blocks.js';

const lineWidth = 110;

function isPlain(value: unknown): boolean {
  return value === null || typeof value !== 'object';
}

/** The JSON of a value; short lists of plain values (rows of a matrix) stay on one line. */
function written(value: unknown, path: string, indent: string): string | undefined {
  if (typeof value === 'number' && !Number.isFinite(value)) {
    fail({ code: 'not-computable', message: `${path} = ${value}; JSON holds finite numbers only` });
  }
  if (typeof value === 'object' && value !== null && 'toJSON' in value && typeof value.toJSON === 'function') {
    return written(value.toJSON(), path, indent);
  }
  if (isPlain(value)) return JSON.stringify(value);
  const inner = `${indent}  `;
  if (Array.isArray(value)) {
    const items = value.map((item, i) => written(item, `${path}[${i}]`, inner) ?? 'null');
    const short = `[${items.join(', ')}]`;
    if (items.length === 0 || (value.every(isPlain) && inner.length + short.length <= lineWidth)) return short;
    return `[\n${items.map((item) => inner + item).join(',\n')}\n${indent}]`;
  }
  const entries = Object.entries(value as object).flatMap(([key, item]) => {
    const text = written(item, path === '' ? key : `${path}.${key}`, inner);
    return text === undefined ? [] : [`${inner}${JSON.stringify(key)}: ${text}`];
  });
  return entries.length === 0 ? '{}' : `{\n${entries.join(',\n')}\n${indent}}`;
}

/**
 * The report's data as JSON, SI numbers, two spaces of indentation, a line end at the end.
 *
 * @throws not-computable when the data hold a NaN or infinite number; the message names its path
 */
export function renderJson(report: Report): string {
  return `${written(report.data, '', '') ?? '{}'}\n`;
}
