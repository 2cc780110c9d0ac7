import { solveBoundaryValue } from '../numeric/index.js';
import { emptySection, sectionAt } from './elastica-section.js';
import { peelMesh } from './peel-mesh.js';
import { type Holding, type HoldingRow, type PeelDrive, type PeelModel, type PeelReading, pull } from './peel-model.js';
import { isSpent, noForce, type RowMemory, type RowStages } from './row-stages.js';

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

/** Length over which a pulled arm bends. */
const bendingLength = (model: PeelModel, load: number): number =>
  Math.min(...model.arms.map(({ section }) => 1 / Math.sqrt(section.bend * Math.max(load, 1e-12))));

/**
 * Solves the arms for an opened length and a release at the front.
 *
 * @param near a state to start from; undefined for the first
 * @param other a second state on the same stretch: the start is then on the straight line through both
 * @returns undefined where Newton's method does not settle
 */
export function equilibrium(
  peel: PeelCase,
  history: PeelHistory,
  control: PeelControl,
  near: PeelEquilibrium | undefined,
  other?: PeelEquilibrium,
): PeelEquilibrium | undefined {
  const { model } = peel;
  const { length } = control;
  const present = peel.rows.flatMap(({ law, position }, index) => {
    const memory = history.memory[index];
    const started = history.start[index] !== undefined && memory !== undefined && !isSpent(law, memory);
    return started ? [{ index, distance: Math.max(0, length - position) }] : [];
  });
  const bend = bendingLength(model, near?.load ?? 0);
  const mesh = peelMesh(length, present, Math.min(bend, length / 3), peel.fineness);
  const holding: Holding = mesh.rows.map((indices) =>
    indices.flatMap((index) => {
      const [row, memory, start] = [peel.rows[index], history.memory[index], history.start[index]];
      return row === undefined || memory === undefined || start === undefined ? [] : [{ law: row.law, memory, start }];
    }),
  );
  const steps = new Float64Array(mesh.at.length - 1);
  for (let k = 0; k < steps.length; k++) steps[k] = (mesh.at[k + 1] ?? 0) - (mesh.at[k] ?? 0);
  const guess =
    near === undefined
      ? model.guess('release' in control ? control.release : 0, length, mesh.at)
      : carriedOver(model, near, length, mesh.at);
  if (near !== undefined && other !== undefined) {
    const t = along(other, near, control) - 1;
    const beyond = carriedOver(model, other, length, mesh.at);
    for (let i = 0; i < guess.length; i++) guess[i] = (1 + t) * (guess[i] ?? 0) - t * (beyond[i] ?? 0);
  }
  holding.forEach((rows, point) => {
    for (const row of rows) if (row.memory.clamp !== undefined) bringTo(model, guess, mesh.at, point, row);
  });
  const z = solveBoundaryValue(model.problem(control, holding), steps, guess);
  if (z === undefined) return undefined;

  const opening = peel.rows.map(() => 0);
  mesh.rows.forEach((indices, point) => {
    for (const index of indices) opening[index] = model.gap(z, point) - (history.start[index] ?? 0);
  });
  const reading = model.reading(z);
  if (!(reading.displacement >= 0 && Number.isFinite(reading.load))) return undefined;
  const arms = armState(peel, z, steps);
  const { held, thread, zone } = rowState(peel, history, holding, mesh.at, z);
  return {
    ...reading,
    ...control,
    at: mesh.at,
    z,
    opening,
    frontGap: model.gap(z, 0),
    elastic: arms.energy + reading.bedEnergy + held,
    thread,
    zone,
    turn: Math.max(...model.places.map(({ angle }) => Math.abs(z[angle] ?? 0))),
    strain: arms.strain,
    strainShare: arms.share,
  };
}

/** Where a control lies on the line from one state (0) to another (1); not farther than as far again. */
function along(from: PeelEquilibrium, to: PeelEquilibrium, control: PeelControl): number {
  let t = (control.length - from.length) / (to.length - from.length);
  if (to.length === from.length) {
    const root = Math.sqrt(from.release);
    t =
      'release' in control
        ? (Math.sqrt(control.release) - root) / (Math.sqrt(to.release) - root)
        : (control.displacement - from.displacement) / (to.displacement - from.displacement);
  }
  return Number.isFinite(t) ? Math.min(Math.max(t, 0), 2) : 1;
}

/** Values of a near state on a new mesh: shapes keep their distance from the front, forces their place on the arm. */
function carriedOver(
  { size, places }: PeelModel,
  near: PeelEquilibrium,
  length: number,
  at: readonly number[],
): Float64Array {
  const z = new Float64Array(at.length * size);
  const last = near.at.length - 1;
  const onArm = new Set(places.flatMap(({ H, V }) => (H === undefined ? [V] : [H, V])));
  const read = (components: readonly number[], shift: number): void => {
    let k = 0;
    at.forEach((s, point) => {
      const from = Math.min(Math.max(s - shift, 0), near.at[last] ?? 0);
      while (k < last - 1 && (near.at[k + 1] ?? 0) < from) k++;
      const [s0, s1] = [near.at[k] ?? 0, near.at[k + 1] ?? 1];
      const t = (from - s0) / (s1 - s0);
      for (const i of components) {
        z[point * size + i] = (1 - t) * (near.z[k * size + i] ?? 0) + t * (near.z[(k + 1) * size + i] ?? 0);
      }
    });
  };
  const all = Array.from({ length: size }, (_, i) => i);
  read(
    all.filter((i) => !onArm.has(i)),
    0,
  );
  read([...onArm], length - near.length);
  return z;
}

/** Lifts the arms of a guess so that a row which is kept at its opening has that opening: a miss would seem a huge force. */
function bringTo(
  { size, places, gap }: PeelModel,
  z: Float64Array,
  at: readonly number[],
  point: number,
  { start, memory }: HoldingRow,
): void {
  const place = at[point] ?? 0;
  // The rows' line may lean: one lift leaves a little of the miss, four leave nothing.
  for (let round = 0; round < 4; round++) {
    const lift = (start + memory.opening - gap(z, point)) / 2;
    at.forEach((s, k) => {
      const share = place > 0 ? Math.min(1, s / place) : 1;
      for (const { y } of places) z[k * size + y] = (z[k * size + y] ?? 0) + share * lift;
    });
  }
}

/** Energy of bending, stretch and shear, by Simpson's rule, and the surface strains. */
function armState(
  { model, limits }: PeelCase,
  z: Float64Array,
  steps: Float64Array,
): { readonly energy: number; readonly strain: number; readonly share: number } {
  const { size, places, arms } = model;
  const section = emptySection();
  let [energy, strain, share] = [0, 0, 0];
  const value = (k: number, i: number | undefined): number => (i === undefined ? 0 : (z[k * size + i] ?? 0));
  places.forEach((place, a) => {
    const compliance = arms[a]?.section ?? { bend: 0, stretch: 0, shear: 0 };
    const limit = limits[a];
    const { bend, stretch } = compliance;
    const density = (M: number, angle: number, H: number, V: number): number => {
      sectionAt(compliance, angle, H, V, section);
      if (limit !== undefined) {
        const bent = Math.abs(bend * M) * limit.half;
        const axial = stretch * (H * Math.cos(angle) + V * Math.sin(angle));
        strain = Math.max(strain, bent + Math.abs(axial));
        share = Math.max(share, (bent + axial) / limit.tension, (bent - axial) / limit.compression);
      }
      return (bend * M * M) / 2 + section.energy;
    };
    steps.forEach((h, k) => {
      // The force is that past the jump at the nearer point.
      const [H, V] = [value(k + 1, place.H), value(k + 1, place.V)];
      const [M0, M1] = [value(k, place.moment), value(k + 1, place.moment)];
      const [t0, t1] = [value(k, place.angle), value(k + 1, place.angle)];
      const e0 = density(M0, t0, H, V);
      const slope0 = section.dM;
      const e1 = density(M1, t1, H, V);
      const slope1 = section.dM;
      const Mm = (M0 + M1) / 2 + (h / 8) * (slope0 - slope1);
      const em = density(Mm, (t0 + t1) / 2 + (h / 8) * bend * (M0 - M1), H, V);
      energy += (h / 6) * (e0 + 4 * em + e1);
    });
  });
  return { energy: energy * (2 / arms.length), strain, share };
}

/** Energy that rows would give back and that they have lost, spent ones with it, and the reach of those that pull. */
function rowState(
  { model, rows }: PeelCase,
  { memory }: PeelHistory,
  holding: Holding,
  at: readonly number[],
  z: Float64Array,
): { readonly held: number; readonly thread: number; readonly zone: number } {
  const sum = noForce();
  const one = noForce();
  let [held, thread, zone] = [0, 0, 0];
  rows.forEach(({ law }, index) => {
    const past = memory[index];
    if (past !== undefined && isSpent(law, past)) thread += law.work;
  });
  holding.forEach((here, point) => {
    if (here.length === 0) return;
    pull(here, model.gap(z, point), sum, one);
    held += sum.held;
    thread += sum.lost;
    if (sum.force > 0) zone = Math.max(zone, at[point] ?? 0);
  });
  return { held, thread, zone };
}
