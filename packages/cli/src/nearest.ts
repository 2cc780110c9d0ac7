/** Letters to insert, remove or exchange until one word is the other. */
function editDistance(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (const [i, letter] of [...a].entries()) {
    const next = [i + 1];
    for (const [j, other] of [...b].entries()) {
      const exchanged = (row[j] ?? 0) + (letter === other ? 0 : 1);
      next.push(Math.min(exchanged, (row[j + 1] ?? 0) + 1, (next[j] ?? 0) + 1));
    }
    row = next;
  }
  return row.at(-1) ?? 0;
}

/** The known word closest in spelling, or undefined when more than a third of the letters differ. */
export function nearest(word: string, known: readonly string[]): string | undefined {
  const distances = known.map((candidate) => editDistance(word.toLowerCase(), candidate.toLowerCase()));
  const best = Math.min(...distances);
  return best <= Math.max(1, Math.ceil(word.length / 3)) ? known[distances.indexOf(best)] : undefined;
}
