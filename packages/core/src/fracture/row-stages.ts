import { type Firmer, firmAgain } from './specimen/firm-again.js';
import type { RowLaw } from './specimen/row-law.js';

/** A stretch of a row's curve without sudden drops: openings, forces, and the area under the curve up to each. */
export interface RowStage {
  readonly opening: readonly number[];
  readonly force: readonly number[];
  readonly area: readonly number[];
  readonly from: number;
  readonly to: number;
  /** Whether the force drops at the end of the stage; it runs out at zero otherwise. */
  readonly drops: boolean;
  /** Stretches of the stage in which force over opening is above what it has been down to, see `RowLaw`. */
  readonly firmer: readonly Firmer[];
}

/** Force of a row on the arms against opening, stage after stage. */
export interface RowStages {
  readonly stages: readonly RowStage[];
  /** Opening up to which the row is elastic, force over opening there, and the area up to there. */
  readonly firm: { readonly opening: number; readonly stiffness: number; readonly area: number };
  readonly peak: { readonly force: number; readonly opening: number };
  /** Area under the whole curve. */
  readonly work: number;
}

/** A drop below this share of the greatest force is none. */
const rounding = 1e-9;

/**
 * The law of a row cut where its force drops suddenly, in other units.
 *
 * @param length unit of opening, m
 * @param force unit of force, N
 */
export function rowStages(law: RowLaw, length: number, force: number): RowStages {
  const points = [...law.opening].map((w, i) => ({
    w: w / length,
    f: (law.force[i] ?? 0) / force,
    area: (law.area[i] ?? 0) / (force * length),
  }));
  const top = Math.max(...points.map(({ f }) => f));
  const firmer = law.firmer.map(({ from, to }) => ({ from: from / length, to: to / length }));
  const stages: RowStage[] = [];
  let part: typeof points = [];
  const close = (drops: boolean): void => {
    if (part.length > 1) {
      const [from, to] = [part[0]?.w ?? 0, part.at(-1)?.w ?? 0];
      stages.push({
        opening: part.map(({ w }) => w),
        force: part.map(({ f }) => f),
        area: part.map(({ area }) => area),
        from,
        to,
        drops,
        firmer: firmer.filter((one) => one.from >= from && one.to <= to),
      });
    }
    part = [];
  };
  for (const point of points) {
    const before = part.at(-1);
    if (before !== undefined && before.w === point.w) {
      if (before.f - point.f <= rounding * top) continue;
      close(true);
    }
    part.push(point);
  }
  close((part.at(-1)?.f ?? 0) > rounding * top);
  return {
    stages,
    firm: {
      opening: law.firm / length,
      stiffness: (law.stiffness * length) / force,
      area: points[law.opening.indexOf(law.firm)]?.area ?? 0,
    },
    peak: { force: top, opening: law.peak / length },
    work: points.at(-1)?.area ?? 0,
  };
}

/** What a row has been through. */
export interface RowMemory {
  /** Number of the stage; that of the law's stages when nothing is left of it. */
  readonly stage: number;
  /** Largest opening so far. */
  readonly opening: number;
  /** On the way down a sudden drop: the force now, and the stiffness that keeps the row at its opening while its force is whatever is needed. */
  readonly clamp?: { readonly force: number; readonly stiffness: number };
}

export const untouched: RowMemory = { stage: 0, opening: 0 };

/** Stiffness of a row kept at its opening, in terms of its peak force over the opening there: it gives by this part of it. */
const firmness = 1e5;

/** Force of a row and its slope; what it would give back on unloading, and what it has lost for good. */
export interface RowForce {
  force: number;
  slope: number;
  held: number;
  lost: number;
}

export const noForce = (): RowForce => ({ force: 0, slope: 0, held: 0, lost: 0 });

export const isSpent = (law: RowStages, memory: RowMemory): boolean => memory.stage >= law.stages.length;

/**
 * The force of a row at an opening.
 *
 * Past the largest opening so far (where the row has become firmer again, past the start of that) the law holds; below it, a share of the row's elastic
 * force: its curve as far as that is elastic and a straight line from there. Past the end of a stage that drops the force stays, so that whoever looks for the drop finds it.
 *
 * @param opening below 0 where the faces are pressed together
 * @param out overwritten
 */
export function rowForce(law: RowStages, memory: RowMemory, opening: number, out: RowForce): void {
  const stage = law.stages[memory.stage];
  out.force = 0;
  out.slope = 0;
  out.held = 0;
  if (stage === undefined) {
    out.lost = law.work;
    return;
  }
  const { firm } = law;
  const { clamp } = memory;
  if (clamp !== undefined) {
    out.force = clamp.force + clamp.stiffness * (opening - memory.opening);
    out.slope = clamp.stiffness;
    out.held = heldWhileDropping(law, stage, opening, out.force);
    out.lost = (stage.area.at(-1) ?? 0) - out.held;
    return;
  }
  const reach = Math.max(opening, memory.opening);
  const start = firmAgain(stage.firmer, Math.min(reach, stage.to));
  const most = start < Math.min(reach, stage.to) ? start : reach;
  onStage(stage, most, out);
  const left = most > firm.opening ? out.force / (most * firm.stiffness) : 1;
  const before = out.lost;
  out.lost = most > firm.opening ? before - left * elasticEnergy(law, most) : 0;
  if (opening > most) {
    const { lost } = out;
    onStage(stage, opening, out);
    out.held = out.lost - lost;
    out.lost = lost;
    return;
  }
  if (opening < most) elastic(law, opening, left, out);
  out.held = left * elasticEnergy(law, opening);
}

/** Energy that a row would give back while its force goes down a drop: at the end a straight line's; at the start of one that has become firmer again, less. */
function heldWhileDropping(law: RowStages, stage: RowStage, opening: number, force: number): number {
  const straight = (F: number) => (F / (opening * law.firm.stiffness)) * elasticEnergy(law, opening);
  const from = firmAgain(stage.firmer, stage.to);
  if (from === stage.to) return straight(force);
  const out = noForce();
  onStage(stage, from, out);
  const least = (out.force / from) * opening;
  if (force <= least) return straight(force);
  const below = (out.force / (from * law.firm.stiffness)) * elasticEnergy(law, from);
  const top = stage.force.at(-1) ?? 0;
  const whole = below + (stage.area.at(-1) ?? 0) - out.lost;
  return straight(least) + ((whole - straight(least)) * (force - least)) / (top - least);
}

/** A share of the elastic force and slope. Pressed together, the faces hold against each other as stiffly as the row does at first. */
function elastic({ stages, firm }: RowStages, opening: number, share: number, out: RowForce): void {
  const [first] = stages;
  if (opening > firm.opening || first === undefined) {
    out.force = share * firm.stiffness * opening;
    out.slope = share * firm.stiffness;
    return;
  }
  const { lost } = out;
  onStage(first, Math.max(0, opening), out);
  out.slope *= share;
  out.force = opening < 0 ? out.slope * opening : share * out.force;
  out.lost = lost;
}

/** Area under the elastic curve. */
function elasticEnergy({ stages, firm }: RowStages, opening: number): number {
  if (opening > firm.opening) return firm.area + (firm.stiffness * (opening ** 2 - firm.opening ** 2)) / 2;
  const out = noForce();
  const [first] = stages;
  if (first === undefined) return 0;
  onStage(first, Math.max(0, opening), out);
  return opening < 0 ? (out.slope * opening ** 2) / 2 : out.lost;
}

/** The memory after an opening that is now the largest; unchanged where it is not, and while the row is kept at its opening. */
export function remember(law: RowStages, memory: RowMemory, opening: number): RowMemory {
  const stage = law.stages[memory.stage];
  if (stage === undefined || memory.clamp !== undefined || opening <= memory.opening) return memory;
  return { stage: opening >= stage.to && !stage.drops ? law.stages.length : memory.stage, opening };
}

/** The memory of a row whose force is at the end of a stage that drops, from where it goes down. */
export function clamped(law: RowStages, memory: RowMemory, opening: number): RowMemory {
  const stiffness = (firmness * law.peak.force) / law.peak.opening;
  return { ...memory, opening, clamp: { force: law.stages[memory.stage]?.force.at(-1) ?? 0, stiffness } };
}

/** Force at which a drop ends. */
export const afterDrop = (law: RowStages, { stage }: RowMemory): number => law.stages[stage + 1]?.force[0] ?? 0;

/** The memory once the drop is over. */
export const dropped = (law: RowStages, { stage, opening }: RowMemory): RowMemory => ({
  stage: stage + 1,
  opening: law.stages[stage + 1]?.from ?? opening,
});

/** Force, slope and area of a stage at an opening; the area goes to `lost`. */
function onStage({ opening, force, area, from, to, drops }: RowStage, at: number, out: RowForce): void {
  if (at >= to) {
    out.force = drops ? (force.at(-1) ?? 0) : 0;
    out.slope = 0;
    out.lost = (area.at(-1) ?? 0) + out.force * (at - to);
    return;
  }
  let i = 1;
  while (i < opening.length - 1 && (opening[i] ?? 0) <= at) i++;
  const w0 = opening[i - 1] ?? 0;
  const f0 = force[i - 1] ?? 0;
  const past = Math.max(at, from) - w0;
  out.slope = ((force[i] ?? 0) - f0) / ((opening[i] ?? 0) - w0);
  out.force = f0 + out.slope * past;
  out.lost = (area[i - 1] ?? 0) + ((f0 + out.force) / 2) * past;
}
