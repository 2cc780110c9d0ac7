import { lettering } from './look/index.js';

/** Width of a character over the size of its lettering, in the widest of usual faces. */
const characterWidth = 0.61;

/** Room that a text takes, px. */
export function roomFor(text: string): number {
  return [...text].length * characterWidth * lettering;
}

/** How many characters stand in `room` px. */
export function charactersIn(room: number): number {
  return Math.max(1, Math.floor(room / (characterWidth * lettering)));
}

/** A text of at most `longest` characters, the last of them an ellipsis when something is left out. */
export function shortened(text: string, longest: number): string {
  const characters = [...text];
  if (characters.length <= longest) return text;
  return `${characters
    .slice(0, longest - 1)
    .join('')
    .trimEnd()}…`;
}

/** Lines of at most `longest` characters, broken at spaces, a longer word also inside. Never empty. */
export function brokenLines(text: string, longest: number): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(/\s+/)) {
    const together = line === '' ? word : `${line} ${word}`;
    if ([...together].length <= longest) {
      line = together;
      continue;
    }
    if (line !== '') lines.push(line);
    const rest = [...word];
    while (rest.length > longest) lines.push(rest.splice(0, longest).join(''));
    line = rest.join('');
  }
  return line === '' && lines.length > 0 ? lines : [...lines, line];
}

/**
 * Which of several labels are shown when each needs `gap` for itself: the one of the largest part first, then in their
 * order. Indices, ascending.
 */
export function withoutCollisions(labels: readonly { at: number; size: number }[], gap: number): number[] {
  const rank = (index: number): number => Number((labels[index]?.size ?? 0).toPrecision(9));
  const at = (index: number): number => labels[index]?.at ?? 0;
  const shown: number[] = [];
  for (const index of labels.map((_, i) => i).sort((a, b) => rank(b) - rank(a) || a - b)) {
    if (shown.every((other) => Math.abs(at(other) - at(index)) >= gap)) shown.push(index);
  }
  return shown.sort((a, b) => a - b);
}
