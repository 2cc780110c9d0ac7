import { element, escapeMarkup } from './markup.js';

/**
 * Styles of every figure. Colours are custom properties of the page; the fallbacks make a figure that stands alone
 * readable on white. Line styles and hatching carry the meaning, colour only repeats it.
 */
const style = `
.sv-figure{display:block;width:100%;height:auto;font-family:system-ui,sans-serif;font-variant-numeric:tabular-nums}
.sv-text{font-size:13px;fill:var(--sv-ink,#1c2230)}
.sv-small{font-size:12px}
.sv-strong{font-weight:600}
.sv-muted{fill:var(--sv-muted,#59606d)}
.sv-halo{paint-order:stroke;stroke:var(--sv-paper,#fff);stroke-width:4px;stroke-linejoin:round}
.sv-hair,.sv-axis,.sv-ink,.sv-cool,.sv-warm,.sv-outline{fill:none}
.sv-hair{stroke:var(--sv-hair,#cfd3db);stroke-width:1}
.sv-axis{stroke:var(--sv-muted,#59606d);stroke-width:1}
.sv-ink{stroke:var(--sv-ink,#1c2230);stroke-width:1.2}
.sv-outline{stroke:var(--sv-ink,#1c2230);stroke-width:1}
.sv-cool{stroke:var(--sv-cool,#2f4486)}
.sv-warm{stroke:var(--sv-warm,#a23a2c)}
.sv-thin{stroke-width:1}
.sv-thick{stroke-width:2.2;stroke-linejoin:round;stroke-linecap:round}
.sv-centre{stroke-dasharray:12 3 2 3}
.sv-stitched{stroke-dasharray:7 5}
.sv-dotted{stroke-dasharray:0.1 5}
.sv-dashdot{stroke-dasharray:10 5 0.1 5}
.sv-cloth{fill:var(--sv-cloth,#f3f2ee)}
.sv-paper{fill:var(--sv-paper,#fff)}
.sv-hole{fill:var(--sv-paper,#fff);stroke:var(--sv-ink,#1c2230);stroke-width:1}
.sv-edge{stroke:var(--sv-ink,#1c2230);stroke-width:3}
.sv-gap{stroke:var(--sv-paper,#fff);stroke-width:3.6}
.sv-dot{fill:var(--sv-muted,#59606d)}
.sv-tip{fill:var(--sv-muted,#59606d)}
`;

/** No drawing is shown wider than this, px. */
const largest = 720;

export interface Frame {
  /** Of the figure; prefixes every id inside. */
  readonly id: string;
  readonly title: string;
  readonly description: string;
  readonly width: number;
  readonly height: number;
  /** Narrower than this the page lets the drawing scroll instead of shrinking its lettering; px. */
  readonly minWidth: number;
  readonly definitions?: readonly string[];
}

/** A whole SVG document that names and describes itself, scales with its container up to its own size, and needs nothing else. */
export function frame(settings: Frame, ...content: readonly string[]): string {
  const { id, width, height, minWidth } = settings;
  const definitions = settings.definitions ?? [];
  return element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      class: 'sv-figure',
      viewBox: `0 0 ${Math.ceil(width)} ${Math.ceil(height)}`,
      style: `max-width:${Math.min(largest, Math.ceil(width))}px;min-width:${Math.ceil(minWidth)}px`,
      role: 'img',
      'aria-labelledby': `${id}-title ${id}-desc`,
    },
    element('title', { id: `${id}-title` }, escapeMarkup(settings.title)),
    element('desc', { id: `${id}-desc` }, escapeMarkup(settings.description)),
    `<style>${style}</style>`,
    ...(definitions.length === 0 ? [] : [element('defs', {}, ...definitions)]),
    ...content,
  );
}
