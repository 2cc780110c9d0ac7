/** A stretch of candidates: from `from` up to, not including, `to`. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

/**
 * Candidates of a piece: of this thread while others wait for it to answer, some milliseconds; of this thread alone, until it looks up; of another thread, a tenth of a second. In small
 * pieces a laminate takes a little longer.
 */
const sizes = {
  kernel: { own: 8192, alone: 32_768, other: 131_072 },
  design: { own: 2, alone: 8, other: 32 },
};

/** Cuts pieces off stretches from the front, for this thread and others of a crew. */
export function cutter(stretches: readonly Stretch[], path: keyof typeof sizes, crew: number) {
  const { own, alone, other } = sizes[path];
  const rest = [...stretches];
  let left = stretches.reduce((sum, { from, to }) => sum + to - from, 0);
  const cut = (most: number): Stretch | undefined => {
    const first = rest[0];
    if (first === undefined) return undefined;
    const to = Math.min(first.to, first.from + most);
    if (to === first.to) rest.shift();
    else rest[0] = { from: to, to: first.to };
    left -= to - first.from;
    return { from: first.from, to };
  };
  return {
    own: () => cut(crew === 1 ? alone : own),
    /** Smaller towards the end, so that all come to it together. */
    other: () => cut(Math.max(own, Math.min(other, Math.ceil(left / (2 * crew))))),
  };
}
