import { kindAt } from '../../design/index.js';
import type { Cell } from '../blocks.js';
import { amount } from '../sections/build.js';

/** The names that say what kind of quantity stands at a path; a target is of the kind of its quantity. */
export const kindPath = (path: string): readonly string[] =>
  (path.startsWith('target ') ? path.slice(7).replace(/\.value$/, '') : path).split('.');

/** A value of the JSON report as a cell: a number with the unit of its kind, a word as it is, a dash where there is none. */
export function valueCell(path: string, value: string | number | boolean | undefined): Cell {
  if (value === undefined) return '–';
  return typeof value === 'number' ? amount(value, kindAt(kindPath(path))) : String(value);
}

/** A change as a share of the value before. */
export const changeCell = (percent: number | undefined): Cell =>
  percent === undefined ? '' : amount(percent / 100, 'fraction', 3);

/** A change in percent with its sign. */
export function percentCell(percent: number | undefined): string {
  if (percent === undefined) return '';
  const digits = Math.abs(percent) >= 100 ? percent.toFixed(0) : String(Number(percent.toPrecision(3)));
  return `${percent > 0 ? '+' : ''}${digits} %`;
}
