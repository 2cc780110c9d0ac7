import type { Access, SourceKey } from '../provenance/index.js';

/** A number as a source prints it, and the same of an independent script in full. */
export interface PrintedValue {
  readonly printed: string;
  readonly value: number;
  /** Of the print; empty for a plain number. `tolerance` and `oracle` are in the same unit. */
  readonly unit: string;
  /** Absolute: what the printed digits justify. */
  readonly tolerance: number;
  readonly match: 'strict' | 'loose';
  readonly oracle: number;
  /**
   * Relative: how far the library may lie off, since its theory is simpler than the source's. Printed and oracle are then
   * both of the source's theory; without a band the printed digits decide.
   */
  readonly band?: number;
}

/** A number that was recalled but does not follow from the inputs, so it does not count as published. */
export interface NotReproduced {
  readonly key: string;
  readonly printed: string;
  readonly unit: string;
  readonly oracle: number;
}

/** A worked example as reference-data/examples holds it; `kind` fixes what `inputs` and `values` mean. */
export interface WorkedExample {
  readonly id: string;
  readonly title: string;
  readonly source: SourceKey;
  /** Example, table or page in the source. */
  readonly where: string;
  readonly access: Access;
  readonly confidence: 'high' | 'medium' | 'low';
  readonly kind: string;
  readonly inputs: Readonly<Record<string, unknown>>;
  readonly values: Readonly<Record<string, PrintedValue>>;
  readonly notReproduced?: readonly NotReproduced[];
  /** Relative, how closely the oracle's digits allow it to be met: 1e-9 when not given. */
  readonly oracleTolerance?: number;
  readonly note?: string;
}

/** What the library computes for an example: SI numbers (angles in degrees) by the keys of the example's values. */
export type ComputedValues = Readonly<Record<string, number>>;
