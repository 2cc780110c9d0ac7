import table from '@selvage/reference-data/stitch-priors.json' with { type: 'json' };
import type { Access, Basis, SourceKey } from '../provenance/index.js';

/**
 * A parameter of the stitch models that is not known exactly, SI units.
 * `lognormal`: value is the median, low and high hold nine of ten samples; `triangular`: low and high are the ends, value the likeliest.
 */
export interface Prior {
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly distribution: 'lognormal' | 'triangular';
  readonly unit: string;
  readonly source: SourceKey;
  /** Table or page in the source. */
  readonly where: string;
  readonly basis: Basis;
  readonly access: Access;
  readonly confidence: 'high' | 'medium' | 'low';
  /** What it is, and the reason for value and range. */
  readonly note: string;
}

type Shelf<Name extends string> = Readonly<Record<Name, Prior>>;

/** What the bridging law of one penetration needs besides thread and geometry. */
export const bridgingPriors = table.bridging as Shelf<keyof typeof table.bridging>;

/** What the bridging law of a rod needs besides its own numbers. */
export const rodPriors = table.rod as Shelf<keyof typeof table.rod>;

/** What turns the bridging length scale into the length of a zone. */
export const zonePriors = table.zone as Shelf<keyof typeof table.zone>;

/** What scatters in a test specimen besides its stitches. */
export const specimenPriors = table.specimen as Shelf<keyof typeof table.specimen>;

/** What the in-plane price of stitching needs. */
export const inPlanePriors = table.inPlane as Shelf<keyof typeof table.inPlane>;

/** Toughness by a test with aligned rows over the steady toughness, against row distance over bridging length: five cases of an independent script, five of this library. */
export const testOverSteady = table.testOverSteady;
