import { distance } from 'fastest-levenshtein';

/** Edits from one word to the other; letters in the wrong order count as one edit, not two. */
function spellingDistance(a: string, b: string): number {
  const d = distance(a, b);
  return d === 2 && [...a].sort().join('') === [...b].sort().join('') ? 1 : d;
}

/** Without what people write in different ways. */
const plain = (word: string): string => word.toLowerCase().replace(/[-_\s]/g, '') || word;

/**
 * The word of `known` closest in spelling to `word`, or undefined when none is close enough to be what was meant
 * (more than a third of its letters differ). Case, hyphens and spaces are ignored.
 */
export function nearest(word: string, known: Iterable<string>): string | undefined {
  let best: string | undefined;
  let bestDistance = Number.POSITIVE_INFINITY;
  for (const candidate of known) {
    const d = spellingDistance(plain(word), plain(candidate));
    if (d < bestDistance) {
      best = candidate;
      bestDistance = d;
    }
  }
  const limit = Math.max(1, Math.ceil(word.length / 3));
  return bestDistance <= limit ? best : undefined;
}

/** A hint naming the nearest known word, ready to spread into a problem. */
export function nearestHint(word: string, known: Iterable<string>): { hint?: string } {
  const found = nearest(word, known);
  return found === undefined ? {} : { hint: `did you mean \`${found}\`?` };
}
