import { figureStyle, leastLettering, lettering, widest } from './look/index.js';
import { element, escapeMarkup } from './markup.js';

export interface Frame {
  /** Of the figure; prefixes every id inside. */
  readonly id: string;
  readonly title: string;
  readonly description: string;
  readonly width: number;
  readonly height: number;
  readonly definitions?: readonly string[];
}

/**
 * A whole SVG document that names and describes itself and needs nothing else. It scales with its container up to its own
 * size, and down only as far as its letters can be read.
 */
export function frame(settings: Frame, ...content: readonly string[]): string {
  const { id, width, height } = settings;
  const least = Math.ceil((width * leastLettering) / lettering);
  const definitions = settings.definitions ?? [];
  return element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      class: 'sv-figure',
      viewBox: `0 0 ${Math.ceil(width)} ${Math.ceil(height)}`,
      style: `max-width:${Math.min(widest, Math.ceil(width))}px;min-width:${least}px`,
      role: 'img',
      'aria-labelledby': `${id}-title ${id}-desc`,
    },
    element('title', { id: `${id}-title` }, escapeMarkup(settings.title)),
    element('desc', { id: `${id}-desc` }, escapeMarkup(settings.description)),
    `<style>${figureStyle}</style>`,
    ...(definitions.length === 0 ? [] : [element('defs', {}, ...definitions)]),
    ...content,
  );
}

/** The narrowest telephone that a page is made for, less its margins, px. */
const phone = 320;

/** Whether a drawing is wider than the column of a telephone, where its letters stay readable only if it scrolls. */
export function scrollsOnPhone(svg: string): boolean {
  return Number(/min-width:(\d+)px/.exec(svg)?.[1] ?? 0) > phone;
}
