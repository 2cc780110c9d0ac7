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

/** The rows of a table as priors. The names are inferred, so that the published types spell them out and refer to no file of the workspace. */
const shelf = <Name extends string>(rows: Readonly<Record<Name, unknown>>) => rows as Readonly<Record<Name, Prior>>;

/** What the bridging law of one penetration needs besides thread and geometry. */
export const bridgingPriors = shelf(table.bridging);

/** What the bridging law of a rod needs besides its own numbers. */
export const rodPriors = shelf(table.rod);

/** What turns the bridging length scale into the length of a zone. */
export const zonePriors = shelf(table.zone);

/** What scatters in a test specimen besides its stitches. */
export const specimenPriors = shelf(table.specimen);

/** What the in-plane price of stitching needs. */
export const inPlanePriors = shelf(table.inPlane);

/** Toughness by a test with aligned rows over the steady toughness, against row distance over bridging length: five cases of an independent script, five of this library. */
export const testOverSteady = table.testOverSteady;
