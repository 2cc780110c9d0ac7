interface Point {
  readonly x: number;
  readonly y: number;
}

/** Distance from a straight line, as a share of the drawing, that no reader sees. */
const invisible = 1e-3;

/** The points that a line through all of them needs to look the same (Ramer, Douglas and Peucker), ends included. */
export function thinned(points: readonly Point[]): Point[] {
  const span = (pick: (point: Point) => number): number => {
    const values = points.map(pick);
    return Math.max(...values) - Math.min(...values) || 1;
  };
  if (points.length < 3) return [...points];
  const [width, height] = [span(({ x }) => x), span(({ y }) => y)];
  const kept = new Set([0, points.length - 1]);
  const stretches: [number, number][] = [[0, points.length - 1]];
  for (let stretch = stretches.pop(); stretch !== undefined; stretch = stretches.pop()) {
    const [from, to] = stretch;
    const [a, b] = [points[from] as Point, points[to] as Point];
    const [dx, dy] = [(b.x - a.x) / width, (b.y - a.y) / height];
    const length = Math.hypot(dx, dy);
    let [farthest, most] = [from, invisible];
    for (let i = from + 1; i < to; i++) {
      const point = points[i] as Point;
      const [px, py] = [(point.x - a.x) / width, (point.y - a.y) / height];
      const along = length === 0 ? 0 : Math.max(0, Math.min(1, (px * dx + py * dy) / length ** 2));
      const distance = Math.hypot(px - along * dx, py - along * dy);
      if (distance > most) [farthest, most] = [i, distance];
    }
    if (farthest === from) continue;
    kept.add(farthest);
    stretches.push([from, farthest], [farthest, to]);
  }
  return [...kept].sort((a, b) => a - b).map((i) => points[i] as Point);
}
