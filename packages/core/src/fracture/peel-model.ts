import type { BoundaryValueProblem } from '../numeric/index.js';
import { type Bed, bedOf } from './bed.js';
import type { SectionCompliance } from './elastica-section.js';
import { type RowForce, type RowMemory, type RowStages, rowForce } from './row-stages.js';
import type { Arm } from './types.js';

/**
 * The units in which a peel is solved, so that all unknowns are of the size of 1: forces per width in units of the bond's toughness, lengths
 * in units of √(EI/G), the radius to which that toughness bends an arm but for √2.
 */
export interface NaturalUnits {
  /** m */
  readonly length: number;
  /** N/m */
  readonly force: number;
}

/** An arm with its bed in natural units. */
export interface NaturalArm {
  readonly section: SectionCompliance;
  readonly bed: Bed;
}

export const naturalUnits = (arm: Arm, toughness: number): NaturalUnits => ({
  length: Math.sqrt(arm.bendingStiffness / toughness),
  force: toughness,
});

export function naturalArm(arm: Arm, { length, force }: NaturalUnits): NaturalArm {
  const bed = bedOf(arm);
  return {
    section: {
      bend: (force * length * length) / arm.bendingStiffness,
      stretch: force / arm.axialStiffness,
      shear: force / arm.shearStiffness,
    },
    bed: {
      liftByMoment: force * bed.liftByMoment,
      liftByForce: (force * bed.liftByForce) / length,
      turnByMoment: force * length * bed.turnByMoment,
    },
  };
}

/** A row that holds the arms together: its law, its past, and the distance of its ends when the front passed it. */
export interface HoldingRow {
  readonly law: RowStages;
  readonly memory: RowMemory;
  readonly start: number;
}

/** Rows at the points of the mesh, the front first. */
export type Holding = readonly (readonly HoldingRow[])[];

/** What sets a state: the energy release at the front in units of the bond's toughness, or the distance of the grips. */
export type PeelDrive = { readonly release: number } | { readonly displacement: number };

/** What a solved state says at its ends. */
export interface PeelReading {
  /** Energy release at the front; below 0 where the front is pressed shut. */
  readonly release: number;
  readonly load: number;
  /** Distance of the grips. */
  readonly displacement: number;
  /** Energy release by the first integral at the grips: what the load amounts to. */
  readonly byLoad: number;
  /** Energy of the beds. */
  readonly bedEnergy: number;
}

/** The arms as a boundary-value problem from the front to the grips. */
export interface PeelModel {
  readonly size: number;
  readonly arms: readonly NaturalArm[];
  problem(drive: PeelDrive, holding: Holding): BoundaryValueProblem;
  /** Distance between the two arms at a point, from the values there. */
  gap(z: Float64Array, point: number): number;
  reading(z: Float64Array): PeelReading;
  /** Linear bending of unstitched arms of a length, to start from. */
  guess(release: number, length: number, at: readonly number[]): Float64Array;
  /** Places in a point's values: height, angle, moment, and force along x (where there is one) and y, of each arm. */
  readonly places: readonly {
    readonly y: number;
    readonly angle: number;
    readonly moment: number;
    readonly H?: number;
    readonly V: number;
  }[];
}

/** Sums the forces of the rows at one point. */
export function pull(rows: readonly HoldingRow[], gap: number, out: RowForce, one: RowForce): void {
  out.force = 0;
  out.slope = 0;
  out.held = 0;
  out.lost = 0;
  for (const row of rows) {
    rowForce(row.law, row.memory, gap - row.start, one);
    out.force += one.force;
    out.slope += one.slope;
    out.held += one.held;
    out.lost += one.lost;
  }
}
