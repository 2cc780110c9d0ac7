import type { Interval } from '../../stitch/index.js';
import { defined } from '../assemble/constituents.js';
import type { StitchGrowth } from './stitch-growth.js';
import type { StitchHolding, StitchLaw } from './stitch-holding.js';

/** What one stitch holds in the JSON document; null for what the design does not give enough for. */
export function holdingData(holding: StitchHolding): Record<string, unknown> {
  const { crack, opening, computedOpening, sliding, toughnessAdded, across, along } = holding;
  return {
    missing: holding.missing,
    edgeBand: holding.edgeBand,
    crackDepth: crack?.depth ?? null,
    interface: crack === undefined || crack.inside !== undefined ? null : crack.below,
    opening: opening === undefined ? null : lawData(opening),
    ...(computedOpening === undefined ? {} : { computedOpening: lawData(computedOpening) }),
    sliding: sliding === undefined ? null : lawData(sliding),
    toughnessAdded: toughnessAdded?.value ?? null,
    ...(toughnessAdded?.interval === undefined
      ? {}
      : { toughnessAddedInterval: intervalData(toughnessAdded.interval) }),
    across: across === undefined ? null : growthData(across),
    along: along === undefined ? null : growthData(along),
    notes: [...holding.notes, ...holding.growthNotes],
    sources: holding.sources,
  };
}

const intervalData = ({ median, low, high }: Interval) => ({ median, low, high });

function lawData({ law, interval }: StitchLaw): Record<string, unknown> {
  return {
    measured: law.measured ?? false,
    peakForce: law.peak.force,
    openingAtPeak: law.peak.opening,
    work: law.work,
    failure: law.failure,
    ...(interval === undefined
      ? {}
      : {
          peakForceInterval: intervalData(interval.peak),
          openingAtPeakInterval: intervalData(interval.opening),
          workInterval: intervalData(interval.work),
          shares: interval.failures,
        }),
    curve: { opening: law.opening, force: law.force },
  };
}

const growthData = ({ bridgingLength, zone, rowDistance, discreteness, ceiling, bandWidth }: StitchGrowth) =>
  defined({ bridgingLength, zone, rowDistance, discreteness: discreteness?.ratio, ceiling, bandWidth });
