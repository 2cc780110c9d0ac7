import { displayUnit, type UnitSystem } from '../../quantity/index.js';
import type { Block } from '../blocks.js';
import { cellText, isQuantity } from './cell.js';
import { padEnd, widthOf, wordsOf, wrap } from './wrap.js';

type Facts = Extract<Block, { kind: 'facts' }>;

/** Narrower than this a remark goes below its value. */
const leastRemark = 16;

/** Facts in columns: label, value, remark; `dim` marks the units. */
export function factLines(facts: Facts, units: UnitSystem, width: number, dim: (text: string) => string): string[] {
  const labelWidth = Math.min(Math.max(0, ...facts.items.map(({ label }) => widthOf(label))), Math.floor(width / 2));
  const values = facts.items.map(({ value }) => wordsOf(cellText(value, units)).join(' '));
  const valueWidth = Math.min(Math.max(0, ...values.map(widthOf)), Math.floor(width / 3));
  return facts.items.flatMap((item, i) => {
    const value = values[i] ?? '';
    const labels = wrap(item.label, labelWidth);
    const lead = `${padEnd(labels.at(-1) ?? '', labelWidth)}  `;
    const beside = `${lead}${padEnd(value, valueWidth)}  `;
    const fits = widthOf(value) <= valueWidth && width - widthOf(beside) >= leastRemark;
    const remark = item.remark ?? '';
    const [first = '', ...rest] =
      remark !== '' && fits
        ? wrap(remark, width, beside)
        : [...wrap(value, width, lead), ...(remark === '' ? [] : wrap(remark, width, '    '))];
    const unit = isQuantity(item.value) ? displayUnit(item.value.kind, units) : '';
    const number = unit !== '' && value.endsWith(unit) ? value.slice(0, -unit.length) : undefined;
    const painted =
      number !== undefined && first.startsWith(lead + value)
        ? lead + number + dim(unit) + first.slice(lead.length + value.length)
        : first;
    return [...labels.slice(0, -1), painted, ...rest];
  });
}
