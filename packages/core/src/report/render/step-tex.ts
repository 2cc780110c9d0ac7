import type { Chain } from '../formula/index.js';
import { quantityTex } from '../formula/index.js';
import type { PrintedMatrix } from './step.js';

/** A chain of equal signs as rows of an aligned block. */
export const chainTex = ({ left, right }: Chain): string =>
  right.map(({ tex }, i) => `${i === 0 ? left.tex : ''} &= ${tex}`).join(' \\\\\n');

export function matrixTex({ name, unit, rows }: PrintedMatrix): string {
  const entries = rows.map((row) => row.map((entry) => quantityTex(entry, '')).join(' & ')).join(' \\\\ ');
  const after = unit === '' ? '' : `\\,${quantityTex('', unit)}`;
  return `\\mathbf{${name}} = \\begin{bmatrix} ${entries} \\end{bmatrix}${after}`;
}
