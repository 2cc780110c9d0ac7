import { type Coupon, type CouponPrediction, type PredictOptions, predictCoupon } from '../../fracture/index.js';
import { type Problem, SelvageError } from '../../problem/index.js';
import { type Note, type SourceKey, uniqueNotes, uniqueSources } from '../../provenance/index.js';
import { placed } from '../assemble/context.js';
import type { CouponModel, Model } from '../model.js';
import { locate, parseSource } from '../source.js';
import { remembered } from './remembered.js';

/** A coupon of the design with what is foretold of it. */
export interface CouponResult {
  readonly model: CouponModel;
  readonly prediction: CouponPrediction;
}

type Tests = NonNullable<PredictOptions['tests']>;

/**
 * What is foretold of every coupon of the design. Tests of one coupon narrow the ranges of all on which they bear, as `predictCoupon` judges.
 * @throws SelvageError with the place of the coupon, or of its key at fault: all that `predictCoupon` throws
 */
export function couponResults({ coupons, source }: Pick<Model, 'coupons' | 'source'>): CouponResult[] {
  const tests = coupons.flatMap(({ coupon, test }) => (test === undefined ? [] : [{ coupon, test }]));
  const problems: Problem[] = [];
  const ofTests: Problem[] = [];
  const results = coupons.flatMap((model) => {
    const found = predict(model, tests);
    if (!('problems' in found)) return [{ model, prediction: found }];
    // What goes wrong in a tested coupon goes wrong in all that its test bears on: it is told of that coupon alone.
    const alone = tests.length === 0 ? found : predict(model, []);
    if ('problems' in alone) problems.push(...alone.problems);
    else ofTests.push(...found.problems);
    return [];
  });
  if (results.length < coupons.length) {
    throw new SelvageError(locate(problems.length > 0 ? problems : ofTests, parseSource(source.text)));
  }
  return results;
}

function predict(
  { name, coupon }: CouponModel,
  tests: Tests,
): CouponPrediction | { readonly problems: readonly Problem[] } {
  try {
    return placed(['coupons', name], () => predictionOf({ coupon, tests }), coupon.specimen);
  } catch (error) {
    if (!(error instanceof SelvageError)) throw error;
    return { problems: error.problems };
  }
}

/** Predictions of late. */
const predictionOf = remembered(
  ({ coupon, tests }: { readonly coupon: Coupon; readonly tests: Tests }) => predictCoupon(coupon, { tests }),
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
