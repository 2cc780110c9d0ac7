import { displayUnit, type UnitSystem } from '../../quantity/index.js';
import type { Block, Cell } from '../blocks.js';
import { escapeMarkup as e } from '../figures/index.js';
import { cellText, decimalPadding, headUnit, isNumeric, isQuantity } from './cell.js';

/** What a block needs to know of the page around it. */
export interface HtmlPage {
  readonly units: UnitSystem;
  /** Number of the figure or table, counted from 1, by its id. */
  readonly numbers: ReadonlyMap<string, number>;
  /** Keys with an entry in a source list, to which notes may link. */
  readonly listedSources: ReadonlySet<string>;
}

type Of<K extends Block['kind']> = Extract<Block, { kind: K }>;

function valueHtml(cell: Cell, units: UnitSystem): string {
  const text = cellText(cell, units);
  const unit = isQuantity(cell) ? displayUnit(cell.kind, units) : '';
  if (unit === '' || !text.endsWith(unit)) return e(text);
  return `${e(text.slice(0, -unit.length))}<span class="unit">${e(unit)}</span>`;
}

/** Words longer than this take the rest of their line, a remark the next. */
const longValue = 14;

function factsHtml(facts: Of<'facts'>, { units }: HtmlPage): string {
  const items = facts.items.map(({ label, value, remark }) => {
    const more = remark === undefined ? '' : `<dd class="remark">${e(remark)}</dd>`;
    const long = !isQuantity(value) && value.length > longValue;
    return `<div${long ? ' class="long"' : ''}><dt>${e(label)}</dt><dd class="value">${valueHtml(value, units)}</dd>${more}</div>`;
  });
  return `<dl class="facts">\n${items.join('\n')}\n</dl>`;
}

/** Columns whose entries all are at most this long are not broken into lines. */
const shortText = 22;

function tableHtml(table: Of<'table'>, { units, numbers }: HtmlPage): string {
  const numeric = table.columns.map((column, i) => isNumeric(column, table.rows, i));
  const texts = table.rows.map((row) => row.map((cell, i) => cellText(cell, units, table.columns[i])));
  const short = table.columns.map((_, i) => texts.every((row) => (row[i] ?? '').length <= shortText));
  const kind = (i: number): string => (numeric[i] ? ' class="number"' : short[i] ? ' class="short"' : '');
  const heads = table.columns.map((column, i) => {
    const unit = headUnit(column, units);
    return `<th scope="col"${kind(i)}>${e(column.label)}${unit === '' ? '' : ` <span class="unit">${e(unit)}</span>`}</th>`;
  });
  const padding = numeric.map((is, i) => (is ? decimalPadding(texts.map((row) => row[i] ?? '')) : []));
  const rows = texts.map((row, r) => {
    const cells = row.map((text, i) => {
      const pad = padding[i]?.[r] ?? '';
      const content = e(text) + (pad === '' ? '' : `<span class="pad" aria-hidden="true">${pad}</span>`);
      return i === 0 ? `<th scope="row"${kind(i)}>${content}</th>` : `<td${kind(i)}>${content}</td>`;
    });
    return `<tr>${cells.join('')}</tr>`;
  });
  const id = `table-${e(table.id)}`;
  return [
    `<div class="table" id="${id}" role="region" aria-labelledby="${id}-caption" tabindex="0">`,
    '<table>',
    `<caption><span id="${id}-caption"><span class="mark">Table ${numbers.get(id) ?? ''}</span> ${e(table.caption)}</span></caption>`,
    `<thead><tr>${heads.join('')}</tr></thead>`,
    `<tbody>\n${rows.join('\n')}\n</tbody>`,
    '</table>',
    '</div>',
  ].join('\n');
}

function figureHtml(figure: Of<'figure'>, { numbers }: HtmlPage): string {
  const id = `figure-${e(figure.id)}`;
  return [
    `<figure id="${id}">`,
    `<div class="canvas">${figure.svg}</div>`,
    `<figcaption><span class="mark">Figure ${numbers.get(id) ?? ''}</span> ${e(figure.caption)}</figcaption>`,
    '</figure>',
  ].join('\n');
}

function notesHtml(notes: Of<'notes'>, { listedSources }: HtmlPage): string {
  const items = notes.notes.map(({ level, text, source }) => {
    const name = level === 'warning' ? 'Warning' : 'Assumption';
    const cited =
      source === undefined
        ? ''
        : listedSources.has(source)
          ? ` <a class="source" href="#source-${e(source)}">[${e(source)}]</a>`
          : ` <span class="source">[${e(source)}]</span>`;
    return `<li class="${level}"><strong>${name}</strong> ${e(text)}${cited}</li>`;
  });
  return `<aside class="notes" aria-label="Notes">\n<ul>\n${items.join('\n')}\n</ul>\n</aside>`;
}

/** One block as HTML; an empty string for an empty list of any kind. */
export function blockHtml(block: Block, page: HtmlPage): string {
  const items = (texts: readonly string[]): string =>
    `<ul>\n${texts.map((text) => `<li>${e(text)}</li>`).join('\n')}\n</ul>`;
  switch (block.kind) {
    case 'heading':
      return `<h${block.level} id="${e(block.id)}">${e(block.text)}</h${block.level}>`;
    case 'paragraph':
      return `<p>${e(block.text)}</p>`;
    case 'list':
      return block.items.length === 0 ? '' : items(block.items);
    case 'facts':
      return block.items.length === 0 ? '' : factsHtml(block, page);
    case 'table':
      return tableHtml(block, page);
    case 'figure':
      return figureHtml(block, page);
    case 'notes':
      return block.notes.length === 0 ? '' : notesHtml(block, page);
    case 'caution':
      return `<aside class="caution" aria-label="${e(block.title)}">\n<p class="title">${e(block.title)}</p>\n${items(block.items)}\n</aside>`;
    case 'sources': {
      const entries = block.entries.map(
        ({ key, text, access }) =>
          `<li id="source-${e(key)}"><span class="key">${e(key)}</span> ${e(text)} <span class="access">${e(access)}</span></li>`,
      );
      return entries.length === 0 ? '' : `<ul class="sources">\n${entries.join('\n')}\n</ul>`;
    }
  }
}
