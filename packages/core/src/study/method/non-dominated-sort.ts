import { type Candidates, constrainedDomination } from './domination.js';
import { numbersBelow } from './rows.js';

/**
 * The fronts of a set of candidates: those that nothing dominates, those that nothing dominates once the first are gone, and so on.
 *
 * Counts who is dominated how often, then takes front after front away. Every pair is compared at most twice and only counts are kept, so
 * that work grows with the square of the number and memory with the number (the lists of the dominated in the paper grow with the square).
 *
 * @param count candidates
 * @returns the candidates of each front, in rising order
 * @source Deb, Pratap, Agarwal & Meyarivan 2002, section III A
 */
export function nonDominatedSort(candidates: Candidates, count: number): readonly (readonly number[])[] {
  const dominators = new Int32Array(count);
  for (let i = 0; i < count; i++) {
    for (let j = i + 1; j < count; j++) {
      const order = constrainedDomination(candidates, i, j);
      if (order !== 0) {
        const worse = order < 0 ? j : i;
        dominators[worse] = (dominators[worse] ?? 0) + 1;
      }
    }
  }
  const fronts: number[][] = [];
  let left = [...numbersBelow(count)];
  while (left.length > 0) {
    const front = left.filter((i) => dominators[i] === 0);
    left = left.filter((i) => dominators[i] !== 0);
    for (const i of left) {
      for (const better of front) {
        if (constrainedDomination(candidates, better, i) < 0) dominators[i] = (dominators[i] ?? 0) - 1;
      }
    }
    fronts.push(front);
  }
  return fronts;
}
