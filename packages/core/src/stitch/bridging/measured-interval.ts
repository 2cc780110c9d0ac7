import { fail } from '../../problem/index.js';
import type { BridgingFailure, BridgingLaw, Interval } from '../bridging-types.js';
import { specimenPriors } from '../priors.js';
import { logDeviation, z95 } from '../sample-prior.js';
import type { BridgingInterval } from './bridging-interval.js';

/** What stitches scatter by where the repeats of a measured curve do not say: √(e^(s²) - 1) of the prior. */
export const usualVariation = Math.sqrt(Math.expm1(logDeviation(specimenPriors.measuredFactor) ** 2));

/** A measured law with all its forces multiplied. */
export const scaledLaw = (law: BridgingLaw, factor: number): BridgingLaw => ({
  ...law,
  force: law.force.map((force) => force * factor),
  peak: { ...law.peak, force: law.peak.force * factor },
  work: law.work * factor,
});

/**
 * The range of a measured law from the scatter of its repeats: forces scatter together, openings stay; lognormal with the measured law as
 * median, s^2 = ln(1 + variation^2), ends e^(-+1.645 s).
 * @param variation coefficient of variation between stitches of the peak force or the work, whichever scatters more, 0 to 1; that of the prior when not given
 * @returns median and the range of nine in ten stitches, N, m, J
 * @throws out-of-range variation not in 0 to 1
 */
export function measuredInterval(law: BridgingLaw, variation: number = usualVariation): BridgingInterval {
  if (!(variation >= 0 && variation <= 1)) {
    fail({
      code: 'out-of-range',
      message: `variation = ${variation} of a measured law, must lie in 0 to 1`,
      allowed: '0 to 1: standard deviation over mean of the repeats',
    });
  }
  const factor = Math.exp(z95 * Math.sqrt(Math.log1p(variation * variation)));
  const around = (median: number): Interval => ({ median, low: median / factor, high: median * factor });
  const { force, opening } = law.peak;
  const share = (failure: BridgingFailure) => (law.failure === failure ? 1 : 0);
  const percent = Number((100 * variation).toPrecision(3));
  const text = `range of nine in ten stitches from the scatter of the measured curves, ${percent} %`;
  return {
    peak: around(force),
    opening: { median: opening, low: opening, high: opening },
    work: around(law.work),
    failures: {
      threadAtCrack: share('threadAtCrack'),
      threadAtAnchor: share('threadAtAnchor'),
      threadPullOut: share('threadPullOut'),
    },
    notes: [...law.notes, { level: 'assumption', text }],
    sources: law.sources,
  };
}
