import { emptySection, sectionAt } from './elastica-section.js';
import type { PeelCase, PeelHistory } from './peel-case.js';
import { type Holding, pull } from './peel-model.js';
import { isSpent, noForce } from './row-stages.js';

/** An arm at a place of the mesh: after this share of step k from the front. */
interface ArmSection {
  readonly arm: number;
  readonly at: readonly [k: number, share: number];
  readonly M: number;
  readonly angle: number;
  readonly H: number;
  readonly V: number;
  /** Of the failure strain, so far the most. */
  readonly share: number;
}

/**
 * Energy of bending, stretch and shear, by Simpson's rule, and the surface strains.
 * @param visit called for every place that is looked at
 */
export function armState(
  { model, limits }: PeelCase,
  z: Float64Array,
  steps: Float64Array,
  visit?: (section: ArmSection) => void,
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
      visit?.({ arm: a, at: [k, 0], M: M0, angle: t0, H, V, share });
      const slope0 = section.dM;
      const e1 = density(M1, t1, H, V);
      visit?.({ arm: a, at: [k, 1], M: M1, angle: t1, H, V, share });
      const slope1 = section.dM;
      const Mm = (M0 + M1) / 2 + (h / 8) * (slope0 - slope1);
      const tm = (t0 + t1) / 2 + (h / 8) * bend * (M0 - M1);
      const em = density(Mm, tm, H, V);
      visit?.({ arm: a, at: [k, 0.5], M: Mm, angle: tm, H, V, share });
      energy += (h / 6) * (e0 + 4 * em + e1);
    });
  });
  return { energy: energy * (2 / arms.length), strain, share };
}

/** Energy that rows would give back and that they have lost, spent ones with it, and the reach of those that pull. */
export function rowState(
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
