import { fail } from '../../problem/index.js';
import { type BridgingFailure, samplePrior, scaledLaw, usualVariation } from '../../stitch/index.js';
import type { Arm } from '../types.js';
import { couponLaw, pathOf, patternMet, stitchedGrowth } from './coupon-rows.js';
import { crackLever, type FastCoupon, leverOf } from './fast-model.js';
import { numbersAlong } from './path-numbers.js';
import type { PulledSpecimen } from './pull-coupon.js';
import { type Draw, parametersWith } from './samples.js';
import type { Coupon, CouponSpecimen, CouponStitching } from './types.js';

/** Bond toughness of a sample, J/m²: by its place in the range where one is given, else by its factor. */
function bondOf({ specimen, bondToughnessRange: range }: Coupon, draw: Draw): number {
  const { bondToughness: value } = specimen;
  const { bondPlace, bondToughnessFactor } = draw;
  if (range === undefined) return value * bondToughnessFactor;
  return bondPlace === undefined
    ? value
    : samplePrior({ ...range, value, distribution: 'triangular' }, () => bondPlace);
}

function armOf(arm: Arm, { armStiffnessFactor: stiffer, armStrengthFactor: stronger }: Draw): Arm {
  const { failureStrain } = arm;
  return {
    ...arm,
    bendingStiffness: arm.bendingStiffness * stiffer,
    axialStiffness: arm.axialStiffness * stiffer,
    shearStiffness: arm.shearStiffness * stiffer,
    ...(failureStrain && {
      failureStrain: { tension: failureStrain.tension * stronger, compression: failureStrain.compression * stronger },
    }),
  };
}

/** A coupon whose bond, arms and stitch are those of a sample. */
export function sampledCoupon<One extends Coupon>(coupon: One, draw: Draw): One {
  const { specimen, stitching } = coupon;
  const [upper, lower] = specimen.arms;
  const arms = [armOf(upper, draw), armOf(lower, draw)] as const;
  const drawn: CouponSpecimen = { ...specimen, arms, bondToughness: bondOf(coupon, draw) };
  if (stitching === undefined) return { ...coupon, specimen: drawn };
  const { penetration } = stitching;
  // As assumed, not as given: so the law says which were not measured.
  const assumed = parametersWith(draw.parameters, penetration);
  const measured = stitching.measured && scaledLaw(stitching.measured, measuredFactor(stitching, draw));
  return {
    ...coupon,
    specimen: drawn,
    stitching: { ...stitching, ...(measured && { measured }), penetration: { ...penetration, assumed } },
  };
}

/** Force of the stitches of a sample over that of the measured ones: lognormal, s² = ln(1 + variation²). */
function measuredFactor({ measuredVariation = usualVariation }: CouponStitching, { measuredDeviation }: Draw): number {
  return Math.exp(measuredDeviation * Math.sqrt(Math.log1p(measuredVariation ** 2)));
}

/** A sample as the fast model sees it, and what of its stitch gives way. */
export interface FastSample {
  readonly coupon: FastCoupon;
  readonly failure?: BridgingFailure;
}

/** All samples of a coupon as the fast model sees them; without rows those of an unstitched one. */
export function fastSamples(
  coupon: Coupon & { readonly specimen: PulledSpecimen },
  rows: readonly { readonly position: number }[],
  draws: readonly Draw[],
): readonly FastSample[] {
  const { specimen } = coupon;
  const stitching = rows.length > 0 ? coupon.stitching : undefined;
  const { stitching: _, ...bare } = coupon;
  const span = leverOf(specimen, rows);
  const growth = stitching ? stitchedGrowth(specimen, stitching) : 0;
  const met = stitching && patternMet(stitching);
  const stitches = stitching && stitchNumbers(specimen.kind, stitching, draws);
  return draws.map((draw, i) => {
    const { arms, bondToughness } = sampledCoupon(bare, draw).specimen;
    const base = {
      kind: specimen.kind,
      width: specimen.width,
      arms,
      bond: bondToughness,
      crack: crackLever(specimen),
      span,
      growth,
    };
    const one = stitches?.[i];
    if (met === undefined || one === undefined) return { coupon: base };
    const { failure, force, opening, work } = one;
    return { coupon: { ...base, stitches: { ...met, force, opening, work } }, failure };
  });
}

/** Peak, opening, work and failure of one penetration for each sample. */
export function stitchNumbers(
  kind: CouponSpecimen['kind'],
  stitching: CouponStitching,
  draws: readonly Draw[],
): readonly {
  readonly force: number;
  readonly opening: number;
  readonly work: number;
  readonly failure: BridgingFailure;
}[] {
  const { penetration, measured } = stitching;
  if (measured !== undefined) {
    const { peak, work, failure } = couponLaw(kind, stitching);
    return draws.map((draw) => {
      const factor = measuredFactor(stitching, draw);
      return { force: factor * peak.force, opening: peak.opening, work: factor * work, failure };
    });
  }
  const all = draws.map(({ parameters }) => ({ ...penetration, parameters: parametersWith(parameters, penetration) }));
  return numbersAlong(all, pathOf(kind, stitching));
}

/** Stops unless a range of the bond's toughness holds its value. @throws out-of-range */
export function checkBondRange({ specimen: { bondToughness }, bondToughnessRange: range }: Coupon): void {
  if (range === undefined) return;
  const { low, high } = range;
  if (low > 0 && low <= bondToughness && bondToughness <= high && Number.isFinite(high)) return;
  fail({
    code: 'out-of-range',
    message: `bondToughness = ${bondToughness} in a range of ${low} to ${high} J/m², must lie in it`,
    allowed: 'above 0, low <= value <= high',
  });
}
