import { displayUnit, type UnitSystem } from '../../quantity/index.js';
import type { Block, Cell } from '../blocks.js';
import { escapeMarkup as e, scrollsOnPhone } from '../figures/index.js';
import { cellText, decimalPadding, headUnit, isNumeric, isQuantity } from './cell.js';
import { paperClasses, shortText } from './html-columns.js';
import { stepHtml } from './html-step.js';

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

/** A path of the design file may break after its dots. */
const breakable = (text: string): string => e(text).replace(/\.(?=[A-Za-z])/g, '.<wbr>');

function tableHtml(table: Of<'table'>, { units, numbers }: HtmlPage): string {
  const numeric = table.columns.map((column, i) => isNumeric(column, table.rows, i));
  const texts = table.rows.map((row) => row.map((cell, i) => cellText(cell, units, table.columns[i])));
  const short = table.columns.map((_, i) => texts.every((row) => (row[i] ?? '').length <= shortText));
  // Words among numbers stand where these do, but may be broken.
  const kind = (i: number, text = ''): string =>
    numeric[i] ? ` class="number${text.length > shortText ? ' words' : ''}"` : short[i] ? ' class="short"' : '';
  const heads = table.columns.map((column, i) => {
    const unit = headUnit(column, units);
    // An empty corner heads nothing, and an empty cell names no row.
    if (column.label === '' && unit === '') return '<td></td>';
    return `<th scope="col"${kind(i)}>${breakable(column.label)}${unit === '' ? '' : ` <span class="unit">${e(unit)}</span>`}</th>`;
  });
  const padding = numeric.map((is, i) => (is ? decimalPadding(texts.map((row) => row[i] ?? '')) : []));
  const rows = texts.map((row, r) => {
    const cells = row.map((text, i) => {
      const pad = padding[i]?.[r] ?? '';
      const link = i === 0 ? table.rowLinks?.[r] : undefined;
      const shown = link === undefined ? breakable(text) : `<a href="#${e(link)}">${breakable(text)}</a>`;
      const content = shown + (pad === '' ? '' : `<span class="pad" aria-hidden="true">${pad}</span>`);
      return i === 0 && text !== ''
        ? `<th scope="row"${kind(i)}>${content}</th>`
        : `<td${kind(i, text)}>${content}</td>`;
    });
    return `<tr>${cells.join('')}</tr>`;
  });
  const id = `table-${e(table.id)}`;
  const classes = paperClasses(
    table.columns.map(({ label }, i) => ({
      head: label,
      texts: texts.map((row) => row[i] ?? ''),
      numeric: numeric[i] ?? false,
    })),
  );
  return [
    `<div class="${classes}" id="${id}" role="region" aria-labelledby="${id}-caption" tabindex="0">`,
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
  // What scrolls must be reached by the keyboard; what never does would only be one more stop.
  const focus = scrollsOnPhone(figure.svg) ? ` role="group" aria-labelledby="${id}-caption" tabindex="0"` : '';
  return [
    `<figure id="${id}">`,
    `<div class="canvas"${focus}>${figure.svg}</div>`,
    `<figcaption id="${id}-caption"><span class="mark">Figure ${numbers.get(id) ?? ''}</span> ${e(figure.caption)}</figcaption>`,
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
  return `<div class="notes" role="note" aria-label="Notes">\n<ul>\n${items.join('\n')}\n</ul>\n</div>`;
}

/** Words about a source, with a link to its entry where the page lists it. */
const sourceLink = (key: string, text: string, { listedSources }: HtmlPage): string =>
  listedSources.has(key) ? `<a class="source" href="#source-${e(key)}">${e(text)}</a>` : e(text);

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
    case 'step':
      return stepHtml(block, page.units, (key, text) => sourceLink(key, text, page));
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
