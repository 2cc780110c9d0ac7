import type { Arm, BridgingRow } from '../types.js';

/** What the specimens have in common. SI units. */
export interface Specimen {
  /** The first arm is the one under the loads. */
  readonly arms: readonly [Arm, Arm];
  /** m */
  readonly width: number;
  /** Toughness of the bond without rows, J/m², in the mode of the specimen. */
  readonly bondToughness: number;
  readonly rows: readonly BridgingRow[];
  /** Crack length at the start, m. */
  readonly crackLength: number;
  /** Where the test ends at the latest. */
  readonly until?: { readonly displacement?: number; readonly crackLength?: number };
  /** Divides the largest steps, 1 or more; 1 when not given. For a check of what the steps do. */
  readonly refine?: number;
  /** Rows that the crack may meet, which keeps a simulation to seconds; when not given 600 in a double cantilever beam, 300 in bending, 250 at a wedge, 150 in a peel. */
  readonly mostRows?: number;
}

/** A double cantilever beam. Places from the load line. */
export interface DcbSpecimen extends Specimen {
  /** From the load line to the end of the bond, m. */
  readonly length: number;
}

/** An end-notched flexure specimen. Places from the left support, over which the crack starts. */
export interface EnfSpecimen extends Specimen {
  /** Distance of the supports, m. */
  readonly span: number;
  /** Length of bond beyond the right support, m; 0 when not given. */
  readonly overhang?: number;
  /** Distance of the two loads about the middle, m; a single load when not given. */
  readonly loadSpan?: number;
  /** Coefficient of friction of the crack faces; 0 when not given. */
  readonly friction?: number;
}

/** An edge that a wedge opens. Places from the edge. */
export interface WedgeEdge extends Omit<Specimen, 'crackLength' | 'until'> {
  /** Opening of the mouth that debris holds, m. */
  readonly opening: number;
  /** Bonded depth of the blade from the edge, m. */
  readonly depth: number;
  /** Crack length at which to begin, m; a tenth of what would be the first obstacle when not given. */
  readonly crackLength?: number;
}
