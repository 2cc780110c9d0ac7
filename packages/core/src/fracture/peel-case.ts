import type { PeelDrive, PeelModel, PeelReading } from './peel-model.js';
import type { RowMemory, RowStages } from './row-stages.js';

/** A row of the specimen in natural units, from the grips. */
export interface PeelRow {
  readonly position: number;
  readonly law: RowStages;
}

/** Strain limits of an arm: outer fibre distance in natural units, failure strains. */
export interface StrainLimit {
  readonly half: number;
  readonly tension: number;
  readonly compression: number;
}

/** All that stays the same during a peel. */
export interface PeelCase {
  readonly model: PeelModel;
  readonly rows: readonly PeelRow[];
  readonly limits: readonly StrainLimit[];
  /** Points per bending length. */
  readonly fineness: number;
}

/** What has happened to the rows. `start` is undefined for a row the front has not passed. */
export interface PeelHistory {
  readonly memory: readonly RowMemory[];
  readonly start: readonly (number | undefined)[];
}

/** What sets a state: the opened length, and the energy release at the front or the distance of the grips. */
export type PeelControl = { readonly length: number } & PeelDrive;

/** The state of the arms at a control. */
export interface PeelEquilibrium extends PeelReading {
  readonly length: number;
  readonly at: readonly number[];
  readonly z: Float64Array;
  /** Opening of each row; 0 where it holds nothing. */
  readonly opening: readonly number[];
  /** Distance of the arms at the front. */
  readonly frontGap: number;
  /** Energy of arms, beds and rows that unloading would give back. */
  readonly elastic: number;
  /** Energy lost in the rows for good. */
  readonly thread: number;
  /** Largest surface strain, and the largest share of an arm's failure strain. */
  readonly strain: number;
  readonly strainShare: number;
  /** Distance from the front to the farthest row that pulls. */
  readonly zone: number;
  /** Largest turn of an arm at the front. */
  readonly turn: number;
}
