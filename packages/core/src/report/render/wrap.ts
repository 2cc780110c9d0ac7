import { withoutControls } from '../figures/index.js';

/** Characters of a text as a reader counts them: code points, a mark over a letter with its letter. */
export function widthOf(text: string): number {
  return [...text.replace(/\p{M}/gu, '')].length;
}

export function padEnd(text: string, width: number): string {
  return text + ' '.repeat(Math.max(0, width - widthOf(text)));
}

export function padStart(text: string, width: number): string {
  return ' '.repeat(Math.max(0, width - widthOf(text))) + text;
}

/** Words of a text; white space and control characters, which would steer a terminal, separate them. */
export function wordsOf(text: string): string[] {
  return withoutControls(text)
    .split(/ +/)
    .filter((word) => word !== '');
}

/** A word in pieces of at most `width`, cut after the last / , or - that fits, else wherever the line ends. */
function piecesOf(word: string, width: number): string[] {
  const pieces: string[] = [];
  let rest = [...word];
  while (rest.length > width) {
    const fitting = rest.slice(0, width);
    const sign = Math.max(...['/', ',', '-'].map((mark) => fitting.lastIndexOf(mark)));
    const cut = sign > 0 ? sign + 1 : width;
    pieces.push(rest.slice(0, cut).join(''));
    rest = rest.slice(cut);
  }
  return [...pieces, rest.join('')];
}

/**
 * Lines of at most `width` characters, broken at spaces, a word longer than a line also inside. The first line begins with
 * `lead`, the others with `hanging` spaces; for a word to be cut, a line has room for at least 8 characters.
 */
export function wrap(text: string, width: number, lead = '', hanging = widthOf(lead)): string[] {
  const room = Math.max(8, width - Math.max(hanging, widthOf(lead)));
  const lines: string[] = [];
  let line = lead;
  let empty = true;
  for (const word of wordsOf(text).flatMap((whole) => piecesOf(whole, room))) {
    if (!empty && widthOf(line) + 1 + widthOf(word) > width) {
      lines.push(line);
      line = ' '.repeat(hanging);
      empty = true;
    }
    line += empty ? word : ` ${word}`;
    empty = false;
  }
  return [...lines, line.trimEnd()];
}
