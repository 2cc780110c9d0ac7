import { cosDegrees, sinDegrees } from '../../numeric/index.js';
import type { Vector3 } from '../types.js';
import type { Criterion } from './criterion.js';
import { ratioFunctions } from './criterion-models.js';
import type { StrengthConstants } from './strength-constants.js';

/** The axes in which a mat fails first: its ratio, and both stresses in them. */
export interface WeakestAxes {
  readonly ratio: number;
  readonly stress: Vector3;
  readonly residual: Vector3;
  /** From axis 1 as the stresses were given, degrees. */
  readonly direction: number;
}

const noStress: Vector3 = [0, 0, 0];

/** Degrees between the directions that are tried before the search closes in. */
const step = 5;
const narrow = 1e-4;
const golden = (Math.sqrt(5) - 1) / 2;
/** Directions that are not the weakest of the coarse search by more than this cannot become so. */
const hopeless = 1.5;

/**
 * The least strength ratio of a mat over all directions of its axes, whatever the angle it was laid at.
 *
 * σ1,2 = m ± d cos 2θ, τ = -d sin 2θ from the principal axes of the mechanical stress, the residual stress turned with them.
 * Every 5° is tried, and from each least one of these golden section closes in. A criterion is the least of smooth limits, so that
 * it is smooth where it is least: the ratio is good to 1e-9. Without residual stress the principal axes and those at 45° to them
 * are among the directions tried, and what is least there is exact. The ratio is 0 when the residual stress alone breaks the mat
 * in any direction.
 *
 * @param limit a ratio far above it need not be told apart, as with `RatioFunction`
 */
export function weakestAxes(
  criterion: Criterion,
  [s1, s2, s12]: Vector3,
  [r1, r2, r12]: Vector3,
  c: StrengthConstants,
  limit: number,
): WeakestAxes {
  const ratioOf = ratioFunctions[criterion];
  const [mean, half] = [(s1 + s2) / 2, (s1 - s2) / 2];
  const d = Math.hypot(half, s12);
  const [cos, sin] = d === 0 ? [1, 0] : [half / d, s12 / d];
  const principal = (Math.atan2(sin, cos) * 90) / Math.PI;
  const [restMean, restHalf] = [(r1 + r2) / 2, (r1 - r2) / 2];
  // The residual stress in the principal axes of the mechanical one.
  const [q, t] = [restHalf * cos + r12 * sin, r12 * cos - restHalf * sin];

  const at = (theta: number): WeakestAxes => {
    const [co, si] = [cosDegrees(2 * theta), sinDegrees(2 * theta)];
    const [a, b, e, f] = [d * co, -d * si, q * co + t * si, t * co - q * si];
    const stress: Vector3 = [mean + a, mean - a, b];
    const residual: Vector3 = [restMean + e, restMean - e, f];
    const ratio = ratioOf(...stress, ...residual, c, Number.POSITIVE_INFINITY);
    return { ratio, stress, residual, direction: principal + theta };
  };

  // Seen from a principal axis both senses of turning are alike unless the residual stress says otherwise.
  const even = q === 0 && t === 0;
  if (!even) {
    const alone = weakestAxes(criterion, [r1, r2, r12], noStress, c, Number.POSITIVE_INFINITY);
    if (alone.ratio <= 1) return { ...alone, ratio: 0, stress: noStress, residual: alone.stress };
  }
  const tried = Array.from({ length: (even ? 90 : 180) / step + 1 }, (_, i) => at(i * step));
  let weakest = tried.reduce((least, one) => (one.ratio < least.ratio ? one : least));
  const worth = hopeless * Math.min(weakest.ratio, limit);
  for (const [i, { ratio }] of tried.entries()) {
    const [before, after] = [tried[i - 1]?.ratio ?? ratio, tried[i + 1]?.ratio ?? ratio];
    if (!(ratio <= before && ratio <= after && ratio <= worth && ratio > 0)) continue;
    const found = closeIn(at, (i - 1) * step, (i + 1) * step);
    if (found.ratio < weakest.ratio) weakest = found;
  }
  return weakest;
}

/** The least between two directions, degrees, by golden section. */
function closeIn(at: (theta: number) => WeakestAxes, from: number, to: number): WeakestAxes {
  let [low, high] = [from, to];
  let [left, right] = [at(high - golden * (high - low)), at(low + golden * (high - low))];
  while (high - low > narrow) {
    if (left.ratio <= right.ratio) {
      high = low + golden * (high - low);
      right = left;
      left = at(high - golden * (high - low));
    } else {
      low = high - golden * (high - low);
      left = right;
      right = at(low + golden * (high - low));
    }
  }
  return left.ratio <= right.ratio ? left : right;
}
