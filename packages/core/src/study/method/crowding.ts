/**
 * How far the neighbours of each member of a front lie apart: the sum over the objectives of the distance between the neighbour before and
 * the neighbour after, as a share of the range of the front.
 *
 * Infinity for the ends of the front in any objective. Members alike in an objective stand in the order given; an objective in which all are alike
 * counts nothing.
 *
 * @param objectives flat, a row of `width` per candidate
 * @param members the rows that make up the front
 * @returns one number per member, 0 or more
 * @source Deb, Pratap, Agarwal & Meyarivan 2002, section III B
 */
export function crowdingDistance(
  objectives: ArrayLike<number>,
  width: number,
  members: readonly number[],
): Float64Array {
  const distance = new Float64Array(members.length);
  for (let k = 0; k < width; k++) {
    const value = (place: number): number => objectives[(members[place] ?? 0) * width + k] ?? 0;
    const order = members.map((_, place) => place).sort((a, b) => value(a) - value(b) || a - b);
    const [first, last] = [order[0] ?? 0, order.at(-1) ?? 0];
    const range = value(last) - value(first);
    if (!(range > 0)) continue;
    for (let p = 1; p < order.length - 1; p++) {
      const place = order[p] ?? 0;
      distance[place] = (distance[place] ?? 0) + (value(order[p + 1] ?? 0) - value(order[p - 1] ?? 0)) / range;
    }
    distance[first] = Number.POSITIVE_INFINITY;
    distance[last] = Number.POSITIVE_INFINITY;
  }
  return distance;
}
