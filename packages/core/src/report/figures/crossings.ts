/** A point of a line that runs from left to right. */
export interface LinePoint {
  readonly x: number;
  readonly y: number;
}

/** Nearer than this share of the largest value two lines are drawn in one place. */
const together = 5e-3;

const ascending = (points: readonly LinePoint[]): boolean =>
  points.length > 1 && points.every(({ x }, i) => i === 0 || x > (points[i - 1]?.x ?? 0));

/** Heights of a line at ascending places inside it, between its points on the straight. */
function heightsAt(line: readonly LinePoint[], places: readonly number[]): number[] {
  let i = 1;
  return places.map((x) => {
    while (i < line.length - 1 && (line[i]?.x ?? 0) < x) i++;
    const [a, b] = [line[i - 1], line[i]];
    if (a === undefined || b === undefined) return 0;
    return a.y + ((b.y - a.y) * (x - a.x)) / (b.x - a.x);
  });
}

/**
 * Where two lines cross, from left to right; touching without crossing does not count. Undefined where one lies on the other
 * wherever both are, and empty for a line that turns back.
 */
export function crossings(one: readonly LinePoint[], other: readonly LinePoint[]): LinePoint[] | undefined {
  if (!ascending(one) || !ascending(other)) return [];
  const from = Math.max(one[0]?.x ?? 0, other[0]?.x ?? 0);
  const to = Math.min(one.at(-1)?.x ?? 0, other.at(-1)?.x ?? 0);
  if (!(to > from)) return [];
  const inside = [...one, ...other].map(({ x }) => x).filter((x) => x > from && x < to);
  const places = [...new Set([from, ...inside, to])].sort((a, b) => a - b);
  const [first, second] = [heightsAt(one, places), heightsAt(other, places)];
  const found: LinePoint[] = [];
  const near = together * [...first, ...second].reduce((most, y) => Math.max(most, Math.abs(y)), 0);
  let last: { index: number; gap: number } | undefined;
  places.forEach((x, i) => {
    const [a = 0, b = 0] = [first[i], second[i]];
    const gap = a - b;
    if (Math.abs(gap) <= near) return;
    if (last !== undefined && last.gap > 0 !== gap > 0) {
      // Where they lie together in between, the crossing is where that begins.
      const next = last.index + 1;
      const start = places[last.index] ?? x;
      const share = last.gap / (last.gap - gap);
      found.push(
        next < i
          ? { x: places[next] ?? x, y: first[next] ?? a }
          : { x: start + share * (x - start), y: (first[last.index] ?? a) + share * (a - (first[last.index] ?? a)) },
      );
    }
    last = { index: i, gap };
  });
  return last === undefined ? undefined : found;
}

/** More places than this are counted, and only the first and the last told. */
const mostPlaces = 3;

/** What crosses what, in sentences: every pair of named lines that meets. */
export function crossingWords(
  lines: readonly { readonly label: string; readonly points: readonly LinePoint[] }[],
  placeWords: (place: LinePoint) => string,
): string[] {
  return lines.flatMap((one, i) =>
    lines.slice(i + 1).flatMap((other) => {
      const found = crossings(one.points, other.points);
      const pair = `${one.label} and ${other.label}`;
      if (found === undefined) return [`${pair} lie on each other.`];
      const [first, last] = [found[0], found.at(-1)];
      if (first === undefined || last === undefined) return [];
      if (found.length > mostPlaces) {
        return [`${pair} cross ${found.length} times, first at ${placeWords(first)}, last at ${placeWords(last)}.`];
      }
      return [`${pair} cross at ${found.map(placeWords).join(', and at ')}.`];
    }),
  );
}
