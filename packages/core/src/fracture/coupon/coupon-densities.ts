import type { Verdict } from '../types.js';
import type { AnchoredValue } from './anchored-model.js';
import { verdictShares } from './predicted-parts.js';
import type { FastSample } from './sample-coupon.js';
import type { DensityPoint } from './types.js';
import { weightedInterval } from './weighted.js';
import { fitsIn } from './zone-room.js';

/** Densities over that of the design. */
const factors = Array.from({ length: 9 }, (_, i) => 2 ** ((i - 4) / 2));

/** A sample with another number of the same penetrations per area, pitch and distance of rows scaled alike. */
export function denser(sample: FastSample, factor: number): FastSample {
  const { stitches } = sample.coupon;
  if (stitches === undefined) return sample;
  const { density, spacing, perFront } = stitches;
  const side = Math.sqrt(factor);
  const met = {
    density: density * factor,
    perFront: perFront * side,
    ...(spacing !== undefined && { spacing: spacing / side }),
  };
  return { ...sample, coupon: { ...sample.coupon, stitches: { ...stitches, ...met } } };
}

/** Toughness against the number of penetrations per area, from a quarter to four times that of the design. */
export function couponDensities(
  density: number,
  samples: readonly FastSample[],
  weights: readonly number[],
  model: (sample: FastSample) => AnchoredValue,
  room: { readonly length: number; readonly measured: boolean } | undefined,
): readonly DensityPoint[] {
  return factors.map((factor) => {
    const values = samples.map((sample) => model(denser(sample, factor)));
    const lengths = values.map(({ fast }) => fast.length);
    const steady = room && fitsIn(lengths, room) ? values.map(({ fast }) => fast.steady) : undefined;
    return {
      penetrationDensity: density * factor,
      ...(steady && { steady: weightedInterval(steady, weights) }),
      specimen: weightedInterval(
        values.map((value) => value.toughness),
        weights,
      ),
      ...limits(values, weights),
    };
  });
}

function limits(
  values: readonly AnchoredValue[],
  weights: readonly number[],
): Pick<DensityPoint, 'first' | 'armShare'> {
  const shares = verdictShares(
    values.map(({ first }) => first),
    weights,
  );
  const most = (Object.entries(shares) as [Verdict, number][]).reduce((best, one) => (one[1] > best[1] ? one : best));
  return { first: most[0], armShare: shares.arm };
}
