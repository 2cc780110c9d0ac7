/**
 * Numbers of the samples that stand for all, each for as much weight: evenly spaced along the sum of the weights.
 * @param count how many at most; not more than there are
 */
export function drawByWeight(weights: readonly number[], count: number): readonly number[] {
  const many = Math.min(count, weights.length);
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const chosen: number[] = [];
  let before = 0;
  weights.forEach((weight, i) => {
    before += weight;
    // The middles of equal parts; a heavy sample may stand in several.
    while (chosen.length < many && (chosen.length + 0.5) * total < before * many) chosen.push(i);
  });
  return chosen;
}
