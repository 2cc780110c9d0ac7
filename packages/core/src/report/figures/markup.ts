import { fail } from '../../problem/index.js';

const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Characters that neither HTML nor XML admits, and that would steer a terminal. */
const controls = /\p{Cc}/gu;

/** Text with every control character (line breaks too) turned into a space. */
export function withoutControls(text: string): string {
  return text.replace(controls, ' ');
}

/** Text as it stands in the content or a quoted attribute of HTML and SVG; control characters become spaces. */
export function escapeMarkup(text: string): string {
  return withoutControls(text).replace(/[&<>"']/g, (character) => entities[character] ?? character);
}

/** A coordinate or length of a drawing: at most two decimals, never a negative zero. @throws not-computable when not finite */
export function coordinate(value: number): string {
  if (!Number.isFinite(value)) {
    fail({ code: 'not-computable', message: `a coordinate of a drawing is ${value}; it must be finite` });
  }
  return String(Math.round(value * 100) / 100 + 0);
}

type Attributes = Readonly<Record<string, string | number | undefined>>;

/** One SVG element; numbers are written as coordinates, `undefined` leaves the attribute out, children are markup. */
export function element(name: string, attributes: Attributes, ...children: readonly string[]): string {
  const written = Object.entries(attributes)
    .filter(([, value]) => value !== undefined)
    .map(([key, value]) => ` ${key}="${typeof value === 'number' ? coordinate(value) : escapeMarkup(value ?? '')}"`)
    .join('');
  return children.length === 0 ? `<${name}${written}/>` : `<${name}${written}>${children.join('')}</${name}>`;
}

/** A line of text at a point; `classes` are those of the figure style. */
export function label(text: string, x: number, y: number, classes = '', anchor?: 'middle' | 'end'): string {
  const name = classes === '' ? 'sv-text' : `sv-text ${classes}`;
  return element('text', { class: name, x, y, 'text-anchor': anchor }, escapeMarkup(text));
}

/** A straight line between two points. */
export function line(x1: number, y1: number, x2: number, y2: number, classes: string): string {
  return element('line', { class: classes, x1, y1, x2, y2 });
}
