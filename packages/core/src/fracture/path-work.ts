/** Load against the way of the grips. */
interface Pulled {
  readonly displacement: number;
  readonly load: number;
}

/**
 * Work of the last step: the integral of the polynomial through it and up to two states before, as far back as the grips went the same way in
 * steps not too unlike; the trapezoid at least.
 */
export function lastWork(before: readonly Pulled[], now: Pulled): number {
  const [c = nothing, b, a] = [before.at(-1), before.at(-2), before.at(-3)];
  const h = now.displacement - c.displacement;
  const plain = ((now.load + c.load) / 2) * h;
  if (b === undefined || !even(b, c, now)) return plain;
  const bend = second(b, c, now);
  const curved = plain - (bend * h ** 3) / 6;
  if (a === undefined || !even(a, b, c)) return curved;
  const third = (bend - second(a, b, c)) / (now.displacement - a.displacement);
  return curved - third * (h ** 4 / 12 + ((c.displacement - b.displacement) * h ** 3) / 6);
}

/**
 * Work from the start up to each state: between two states that of the cubic through them and their neighbours, on either side as far as the grips went
 * the same way there.
 */
export function workAlong(path: readonly Pulled[]): number[] {
  let sum = 0;
  return path.map((now, i) => {
    const before = path[i - 1] ?? nothing;
    const earlier = path[i - 2];
    const next = path[i + 1];
    const h = now.displacement - before.displacement;
    const left = earlier !== undefined && even(earlier, before, now) ? second(earlier, before, now) : undefined;
    const right = i > 0 && next !== undefined && even(before, now, next) ? second(before, now, next) : undefined;
    let bend = left ?? right ?? 0;
    if (left !== undefined && right !== undefined && earlier !== undefined && next !== undefined) {
      const third = (right - left) / (next.displacement - earlier.displacement);
      const middle = (before.displacement + now.displacement) / 2;
      bend += third * (3 * middle - earlier.displacement - before.displacement - now.displacement);
    }
    sum += ((now.load + before.load) / 2) * h - (bend * h ** 3) / 6;
    return sum;
  });
}

const nothing: Pulled = { displacement: 0, load: 0 };

/** Whether three states follow each other one way in steps not too unlike. */
function even(a: Pulled, b: Pulled, c: Pulled): boolean {
  const ratio = (b.displacement - a.displacement) / (c.displacement - b.displacement);
  return ratio > 0.3 && ratio < 3;
}

/** Second divided difference of load by displacement. */
function second(a: Pulled, b: Pulled, c: Pulled): number {
  const [g, h] = [b.displacement - a.displacement, c.displacement - b.displacement];
  return ((c.load - b.load) / h - (b.load - a.load) / g) / (g + h);
}
