/** Marks by terminal colours; each leaves its text as it is when the reader wants none. */
export interface Paint {
  readonly bold: (text: string) => string;
  readonly dim: (text: string) => string;
  readonly yellow: (text: string) => string;
}

const introducer = '\u001b[';

const marked =
  (on: number, off: number) =>
  (text: string): string =>
    text === '' ? '' : `${introducer}${on}m${text}${introducer}${off}m`;

const plain = (text: string): string => text;

export function paintFor(colour: boolean): Paint {
  return colour
    ? { bold: marked(1, 22), dim: marked(2, 22), yellow: marked(33, 39) }
    : { bold: plain, dim: plain, yellow: plain };
}
