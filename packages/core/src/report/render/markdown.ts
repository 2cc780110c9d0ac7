import type { UnitSystem } from '../../quantity/index.js';
import type { Block, Report } from '../blocks.js';
import { withoutControls } from '../figures/index.js';
import { cellText, headUnit, isNumeric } from './cell.js';
import { stepMarkdown } from './markdown-step.js';

/** Text that Markdown prints as it stands: on one line, its marks escaped. */
function e(text: string): string {
  return withoutControls(text)
    .trim()
    .replace(/[\\`*_[\]<>|~$]/g, '\\$&')
    .replace(/&(?=#?\w+;)/g, '&amp;')
    .replace(/^([#+-]|\d+[.)])(?=\s|$)/, (mark) => mark.replace(/[#+\-.)]/, '\\$&'));
}

function table(block: Extract<Block, { kind: 'table' }>, units: UnitSystem): string[] {
  const row = (cells: readonly string[]): string => `| ${cells.join(' | ')} |`;
  const heads = block.columns.map((column) => {
    const unit = headUnit(column, units);
    return unit === '' ? e(column.label) : `${e(column.label)} (${e(unit)})`;
  });
  return [
    `**${e(block.caption)}**`,
    '',
    row(heads),
    row(block.columns.map((column, i) => (isNumeric(column, block.rows, i) ? '---:' : ':---'))),
    ...block.rows.map((cells) => row(cells.map((cell, i) => e(cellText(cell, units, block.columns[i]))))),
  ];
}

/** A drawing in characters as a code block, its fence longer than any inside. */
function drawing(text: string): string[] {
  const longest = Math.max(2, ...[...text.matchAll(/`+/g)].map(([ticks]) => ticks.length));
  const fence = '`'.repeat(longest + 1);
  return ['', `${fence}text`, ...text.split('\n').map(withoutControls), fence];
}

function lines(block: Block, units: UnitSystem): string[] {
  switch (block.kind) {
    case 'heading':
      return [`${'#'.repeat(block.level)} ${e(block.text)}`];
    case 'paragraph':
      return [e(block.text)];
    case 'list':
      return block.items.map((item) => `- ${e(item)}`);
    case 'facts':
      return block.items.map(({ label, value, remark }) => {
        const words = `- ${e(label)}: **${e(cellText(value, units))}**`;
        return remark === undefined ? words : `${words} - ${e(remark)}`;
      });
    case 'table':
      return table(block, units);
    case 'figure':
      return [
        `> **Figure: ${e(block.caption)}**`,
        '>',
        `> ${e(block.alt)}`,
        ...(block.text === undefined ? [] : drawing(block.text)),
      ];
    case 'step':
      return stepMarkdown(block, units, e);
    case 'notes':
      return block.notes.map(({ level, text, source }) => {
        const name = level === 'warning' ? 'Warning' : 'Assumption';
        return `- **${name}:** ${e(text)}${source === undefined ? '' : ` (${e(source)})`}`;
      });
    case 'caution':
      return [`> **${e(block.title)}**`, '>', ...block.items.map((item) => `> - ${e(item)}`)];
    case 'sources':
      return block.entries.map(({ key, text, access }) => `- **${e(key)}** - ${e(text)} (${e(access)})`);
  }
}

/** The report as GitHub-flavoured Markdown; drawings appear as their description and, where there is one, in characters. */
export function renderMarkdown(report: Report, units: UnitSystem): string {
  const head = [`# ${e(report.title)}`, ...(report.subtitle === undefined ? [] : ['', e(report.subtitle)])];
  const parts = report.blocks.map((block) => lines(block, units)).filter((part) => part.length > 0);
  return `${[head, ...parts].map((part) => part.join('\n')).join('\n\n')}\n`;
}
