import { type Coupon, type CouponPrediction, type PredictOptions, predictCoupon } from '../../fracture/index.js';
import { type Problem, SelvageError } from '../../problem/index.js';
import { type Note, type SourceKey, uniqueNotes, uniqueSources } from '../../provenance/index.js';
import { defined } from '../assemble/constituents.js';
import { placed } from '../assemble/context.js';
import type { CouponModel, Model } from '../model.js';
import { locate, parseSource } from '../source.js';
import { couponGain } from './coupon-gain.js';
import { remembered } from './remembered.js';

/** A coupon of the design with what is foretold of it. */
export interface CouponResult {
  readonly model: CouponModel;
  readonly prediction: CouponPrediction;
  /** Over the same coupon without stitches, where the design has it. */
  readonly gain?: number;
}

type Tests = NonNullable<PredictOptions['tests']>;

/** What of the coupons is wanted. */
export interface CouponOptions {
  /** False leaves out what changes and densities would do, which takes most of the time. */
  readonly advice?: boolean;
}

/**
 * What is foretold of every coupon of the design. Tests of one coupon narrow the ranges of all on which they bear, as `predictCoupon` judges.
 * @throws SelvageError with the place of the coupon, or of its key at fault: all that `predictCoupon` throws
 */
export function couponResults(
  { coupons, source }: Pick<Model, 'coupons' | 'source'>,
  options: CouponOptions = {},
): CouponResult[] {
  const tests = coupons.flatMap(({ coupon, test }) => (test === undefined ? [] : [{ coupon, test }]));
  const problems: Problem[] = [];
  const ofTests: Problem[] = [];
  const results = coupons.flatMap((model) => {
    const found = predict(model, tests, options);
    if (!('problems' in found)) return [{ model, prediction: found }];
    // What goes wrong in a tested coupon goes wrong in all that its test bears on: it is told of that coupon alone.
    const alone = tests.length === 0 ? found : predict(model, [], options);
    if ('problems' in alone) problems.push(...alone.problems);
    else ofTests.push(...found.problems);
    return [];
  });
  if (results.length < coupons.length) {
    throw new SelvageError(locate(problems.length > 0 ? problems : ofTests, parseSource(source.text)));
  }
  return results.map((one) => defined({ ...one, gain: couponGain(one, results) }));
}

function predict(
  model: CouponModel,
  tests: Tests,
  { advice = true }: CouponOptions,
): CouponPrediction | { readonly problems: readonly Problem[] } {
  const { name, coupon } = model;
  try {
    return placed(['coupons', name], () => predictionOf({ coupon, tests, advice }), coupon.specimen);
  } catch (error) {
    if (!(error instanceof SelvageError)) throw error;
    return { problems: error.problems.map((problem) => atMeasuredCurve(problem, model)) };
  }
}

/** A fault of the measured curve that shows only when rows follow it stands at the curve, not at the coupon. */
function atMeasuredCurve(problem: Problem, { name, stitching, coupon }: CouponModel): Problem {
  const row = /^curve of row \d+ /;
  if (stitching === undefined || coupon.stitching?.measured === undefined || !row.test(problem.message)) return problem;
  return {
    ...problem,
    message: problem.message.replace(row, 'the measured curve '),
    path: ['stitching', stitching, 'bridging', 'measured'],
    atKey: true,
    also: [{ label: `coupon ${name}`, path: ['coupons', name] }],
  };
}

/** Predictions of late. */
const predictionOf = remembered(
  ({ coupon, ...options }: { readonly coupon: Coupon; readonly tests: Tests; readonly advice: boolean }) =>
    predictCoupon(coupon, options),
  50,
);

/** What a reader must know about a coupon. */
export const couponNotes = ({ model, prediction }: CouponResult): Note[] =>
  uniqueNotes([...model.notes, ...prediction.notes]);

/** Sources of every model that a coupon used, and of what its notes say. */
export const couponSources = (result: CouponResult): SourceKey[] =>
  uniqueSources(
    result.model.sources,
    result.prediction.sources,
    couponNotes(result).flatMap(({ source }) => source ?? []),
  );
