/** Shares that add up to 1 as whole percents that add up to 100 (largest remainders first). */
function wholePercents(shares: readonly number[]): number[] {
  const floors = shares.map((share) => Math.floor(100 * share + 1e-9));
  const left =
    Math.round(100 * shares.reduce((sum, share) => sum + share, 0)) - floors.reduce((sum, one) => sum + one, 0);
  const order = shares
    .map((share, i) => ({ i, rest: 100 * share - (floors[i] ?? 0) }))
    .sort((a, b) => b.rest - a.rest)
    .slice(0, Math.max(0, left));
  return floors.map((floor, i) => floor + (order.some((one) => one.i === i) ? 1 : 0));
}

/** Shares of one whole in words that agree with each other: "94 %", "< 1 %", "> 99 %". */
export function shareWords(shares: readonly number[]): string[] {
  const percents = wholePercents(shares);
  return shares.map((share, i) => {
    if (share > 0 && share < 0.01) return '< 1 %';
    if (share > 0.99 && share < 1) return '> 99 %';
    return `${percents[i]} %`;
  });
}
