import type { EllipsePath, EllipseRelease } from './ellipse-growth.js';

/** No growth is looked for beyond this multiple of the buckling strain. */
const farthest = 20;
/** Relative difference of G and toughness at which the search ends. */
const near = 1e-6;

/** One end of the stretch that holds the answer. */
interface End {
  readonly x: number;
  readonly f: number;
  readonly state?: EllipseRelease;
}

/**
 * The multiplier at which the larger energy release rate reaches the toughness, undefined beyond 20 times buckling.
 *
 * By false position on the square of the multiplier, in which G is nearly a straight line, with the kept end's value halved (Illinois rule).
 *
 * @param critical multiplier at buckling
 */
export function growthMultiplier(
  release: EllipsePath,
  critical: number,
  toughness: number,
): { readonly multiplier: number; readonly release: EllipseRelease } | undefined {
  const surplus = (state: EllipseRelease): number => Math.max(...state.G) / toughness - 1;
  let low: End = { x: critical ** 2, f: -1 };
  let high = low;
  for (let times = 1.5; high.f < 0; times *= 1.7) {
    if (times > 1.7 * farthest) return undefined;
    const multiplier = Math.min(times, farthest) * critical;
    low = high;
    const state = release(multiplier, low.state);
    high = { x: multiplier ** 2, f: surplus(state), state };
  }
  let kept: 'low' | 'high' | undefined;
  for (let step = 0; ; step++) {
    const x = (low.x * high.f - high.x * low.f) / (high.f - low.f);
    const state = release(Math.sqrt(x), low.state);
    const f = surplus(state);
    if (Math.abs(f) < near || step === 40) return { multiplier: Math.sqrt(x), release: state };
    if (f < 0) {
      low = { x, f, state };
      if (kept === 'high') high = { ...high, f: high.f / 2 };
      kept = 'high';
    } else {
      high = { x, f, state };
      if (kept === 'low') low = { ...low, f: low.f / 2 };
      kept = 'low';
    }
  }
}
