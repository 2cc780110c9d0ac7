import { kindAt } from '../../design/index.js';
import { formatQuantity, type UnitSystem } from '../../quantity/index.js';
import type { Difference } from '../../study/index.js';
import { kindPath, percentCell } from './cells.js';

/** Targets and what a designer looks at first; the rest only where there are none of these. */
const leading = (differences: readonly Difference[]): readonly Difference[] => {
  const first = differences.filter(({ rank }) => rank < 2);
  return first.length === 0 ? differences : first;
};

/** How differences are listed. */
export interface ChangesTextOptions {
  readonly units?: UnitSystem;
  /** Lines at most; 12 when not given. */
  readonly atMost?: number;
}

/** The first differences of a list, one a line, in the reader's units; nothing for none. */
export function changesText(
  differences: readonly Difference[],
  { units = 'metric', atMost = 12 }: ChangesTextOptions = {},
): string {
  if (differences.length === 0) return '';
  const shown = (path: string, value: Difference['from']): string =>
    typeof value === 'number' ? formatQuantity(value, kindAt(kindPath(path)), { units }) : String(value);
  const listed = leading(differences).slice(0, atMost);
  const width = Math.max(...listed.map(({ path }) => path.length));
  const lines = listed.map(({ path, from, to, percent }) => {
    const by = percent === undefined ? '' : `  (${percentCell(percent)})`;
    return `  ${path.padEnd(width)}  ${shown(path, from)} -> ${shown(path, to)}${by}\n`;
  });
  const rest = differences.length - listed.length;
  return `${lines.join('')}${rest > 0 ? `  and ${rest} more\n` : ''}`;
}
