/**
 * The value below which a share of the sorted numbers lies, with straight lines between neighbours.
 * @param sorted rising, at least one number
 * @param share 0 to 1; 0.5 is the median
 */
export function quantile(sorted: ArrayLike<number>, share: number): number {
  const place = share * (sorted.length - 1);
  const below = Math.floor(place);
  const first = sorted[below]!;
  const second = sorted[Math.min(below + 1, sorted.length - 1)]!;
  return first + (place - below) * (second - first);
}
