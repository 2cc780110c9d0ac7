import { describe, expect, it } from 'vitest';
import { measuredBridgingLaw, measuredInterval, toughness } from '../../../../packages/core/src/stitch/index.js';
import { codesOf, expectNear, mm } from '../support.js';

/** Invented. */
const law = measuredBridgingLaw(
  [
    { opening: 0, force: 0 },
    { opening: 0.2 * mm, force: 100 },
    { opening: 1 * mm, force: 0 },
  ],
  'threadAtAnchor',
);

describe('the range of a measured law', () => {
  it('holds nine in ten of a lognormal with the given coefficient of variation around it', () => {
    const { work, peak, opening, failures, notes } = measuredInterval(law, 0.2);
    // Quantiles of such a lognormal by its own moments: standard deviation over mean, from 20 000 equal shares of the range of nine in ten.
    const s = Math.log(work.high / work.median) / 1.6448536;
    const n = 20_000;
    let [mean, square, sum] = [0, 0, 0];
    for (let i = 0; i < n; i++) {
      const z = -6 + (12 * (i + 0.5)) / n;
      const weight = Math.exp((-z * z) / 2);
      [mean, square, sum] = [mean + weight * Math.exp(s * z), square + weight * Math.exp(2 * s * z), sum + weight];
    }
    mean /= sum;
    expectNear(Math.sqrt(square / sum - mean * mean) / mean, 0.2, 1e-4);
    expectNear(work.median, 50e-3);
    expectNear(work.low * work.high, work.median ** 2);
    expectNear(peak.high / 100, work.high / work.median);
    expect(opening).toEqual({ median: 0.2 * mm, low: 0.2 * mm, high: 0.2 * mm });
    expect(failures).toEqual({ threadAtAnchor: 1, threadAtCrack: 0, threadPullOut: 0 });
    expect(notes.map((note) => note.text)).toEqual([
      'law of the stitch as measured, not computed',
      'range of nine in ten stitches from the scatter of the measured curves, 20 %',
    ]);
  });

  it('is the law without scatter, and its work goes into toughness as any', () => {
    const { work } = measuredInterval(law, 0);
    expect(work).toEqual({ median: law.work, low: law.work, high: law.work });
    expectNear(toughness({ law, penetrationDensity: 1e5, bondToughness: 0 }).steady!, 1e5 * work.median);
  });

  it('is refused with a scatter below 0, above 1 or none', () => {
    for (const variation of [-0.1, 1.1, Number.NaN]) {
      expect(codesOf(() => measuredInterval(law, variation))).toEqual(['out-of-range']);
    }
  });
});
