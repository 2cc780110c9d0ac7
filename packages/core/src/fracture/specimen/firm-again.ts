/** A stretch of a row's curve in which it is stiffer, by force over opening, than it has been at `from`; it ends where it is down to that again. */
export interface Firmer {
  readonly from: number;
  readonly to: number;
}

const rounding = 1e-9;

/**
 * Stretches past the steepest line from the origin in which F/w is above its least so far: a thread that first yields or slips and then tightens.
 *
 * @param first number of the point from which on to look
 * @param dropInside told the opening of a sudden drop that leaves F/w above its least
 */
export function firmStretches(
  opening: ArrayLike<number>,
  force: ArrayLike<number>,
  first: number,
  dropInside: (opening: number) => void,
): readonly Firmer[] {
  const stretches: Firmer[] = [];
  const of = (list: ArrayLike<number>, i: number) => list[i] as number;
  let from: number | undefined;
  let least = of(force, first) / of(opening, first);
  for (let i = first + 1; i < opening.length; i++) {
    const [w, F] = [of(opening, i), of(force, i)];
    const [w0, F0] = [of(opening, i - 1), of(force, i - 1)];
    if (F > least * (1 + rounding) * w) {
      if (from !== undefined && w === w0 && F < F0) dropInside(w);
      from ??= w0;
      continue;
    }
    if (from !== undefined) {
      // Where the line between the points comes down to the least.
      const [over, under] = [F0 - least * w0, F - least * w];
      stretches.push({ from, to: w0 + ((w - w0) * over) / (over - under) });
      from = undefined;
    }
    least = Math.min(least, F / w);
  }
  if (from !== undefined) stretches.push({ from, to: of(opening, opening.length - 1) });
  return stretches;
}

/** Opening that decides how a row unloads when the largest so far has been m: m itself, in a firmer stretch its start. */
export function firmAgain(stretches: readonly Firmer[], m: number): number {
  for (const { from, to } of stretches) if (m > from && m <= to) return from;
  return m;
}
