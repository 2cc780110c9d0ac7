import { describe, expect, it } from 'vitest';
import { emptySection, firstIntegral, sectionAt } from '../../../packages/core/src/fracture/elastica-section.js';
import { workAlong } from '../../../packages/core/src/fracture/path-work.js';
import type { PeelHistory } from '../../../packages/core/src/fracture/peel-case.js';
import { peelMesh } from '../../../packages/core/src/fracture/peel-mesh.js';
import { preparePeel } from '../../../packages/core/src/fracture/peel-specimen.js';
import { equilibrium } from '../../../packages/core/src/fracture/peel-state.js';
import { noForce, remember, rowForce, untouched } from '../../../packages/core/src/fracture/row-stages.js';
import { breaking, coupon, rowsOf } from './peel-support.js';

/** Opened far past a row that holds as stiffly as at first: its curve goes up in one straight line. */
const line = { curve: { opening: [0, 1e-2, 1e-2], force: [0, 300, 0] }, failure: 'threadAtCrack' as const };

function at(fineness: number) {
  const { peel, units } = preparePeel(coupon({ rows: rowsOf(1, 0.055, 0.005, line) }));
  const history: PeelHistory = { memory: [untouched], start: [0] };
  let state: ReturnType<typeof equilibrium>;
  // The last again, for a mesh that goes by its own load.
  for (const release of [0.01, 0.1, 0.3, 0.6, 1, 1, 1]) {
    state = equilibrium({ ...peel, fineness }, history, { length: 0.06 / units.length, release }, state);
  }
  return { state: state!, model: peel.model };
}

describe('the equilibrium of bridged arms', () => {
  it('converges with the fourth power of the step', () => {
    const exact = at(48).state.load;
    const off = (fineness: number) => Math.abs(at(fineness).state.load / exact - 1);
    const order = Math.log2(off(2) / off(16)) / 3;
    expect(order).toBeGreaterThan(3.4);
    expect(order).toBeLessThan(4.6);
    // At the fineness that is used.
    expect(off(3)).toBeLessThan(1e-4);
  });

  it('keeps the first integral on both sides of a row, and loses at the row what its force does along the arm', () => {
    const { state, model } = at(16);
    const [one] = model.arms;
    const section = emptySection();
    const value = (k: number, i: number): number => state.z[4 * k + i]!;
    const points = state.at.length;
    const integral = (k: number, V: number): number => {
      sectionAt(one!.section, value(k, 1), 0, V, section);
      return firstIntegral(one!.section.bend, value(k, 2), 0, V, section);
    };
    const last = integral(points - 1, value(points - 1, 3));
    for (let k = 0; k < points; k++) {
      const behind = value(Math.min(k + 1, points - 1), 3);
      if (behind === value(points - 1, 3)) expect(integral(k, behind) / last).toBeCloseTo(1, 4);
      else expect(integral(k, behind)).toBeCloseTo(integral(0, value(0, 3)), 4);
    }
    expect(integral(0, value(0, 3))).toBeCloseTo(1 / 2, 4);
  });

  it('is the same from the release and from the displacement that goes with it', () => {
    const { peel, limits } = preparePeel(coupon());
    const none: PeelHistory = { memory: [], start: [] };
    const one = equilibrium(peel, none, { length: limits.from, release: 0.7 }, undefined)!;
    const back = equilibrium(peel, none, { length: limits.from, displacement: one.displacement }, one)!;
    expect(back.release).toBeCloseTo(0.7, 6);
    expect(back.load / one.load).toBeCloseTo(1, 6);
  });
});

describe('the mesh of an arm', () => {
  it('has a point at each row, rows at one place share one, and ends at the grips', () => {
    const rows = [
      { index: 0, distance: 0.7 },
      { index: 1, distance: 0 },
      { index: 2, distance: 0.7 },
    ];
    const mesh = peelMesh(9, rows, 0.9, 3);
    expect(mesh.rows[0]).toEqual([1]);
    expect(mesh.rows[mesh.at.indexOf(0.7)]).toEqual([0, 2]);
    expect(mesh.at.at(-1)).toBe(9);
    for (let i = 1; i < mesh.at.length; i++) expect(mesh.at[i]).toBeGreaterThan(mesh.at[i - 1]!);
  });
});

describe('a row', () => {
  const [row] = preparePeel(coupon({ rows: rowsOf(1, 0.055, 0.005, breaking()) })).peel.rows;
  const { law } = row!;
  const at = (opening: number, memory = untouched) => {
    const out = noForce();
    rowForce(law, memory, opening, out);
    return { ...out };
  };

  it('takes up the area under its curve', () => {
    const half = law.peak.opening / 2;
    let area = 0;
    for (let i = 0; i < 2000; i++) area += (at(((i + 0.5) / 2000) * half).force * half) / 2000;
    const { held, lost } = at(half);
    expect((held + lost) / area).toBeCloseTo(1, 4);
  });

  it('unloads in a straight line to nothing, and reloads along it', () => {
    const memory = remember(law, untouched, law.peak.opening / 2);
    const top = at(law.peak.opening / 2, memory);
    const middle = at(law.peak.opening / 4, memory);
    expect(middle.force / top.force).toBeCloseTo(1 / 2, 9);
    expect(middle.held / top.held).toBeCloseTo(1 / 4, 9);
    expect(middle.lost).toBeCloseTo(top.lost, 12);
    expect(at(0, memory).force).toBe(0);
  });
});

describe('the work along a path', () => {
  it('is exact for a cubic, also in uneven steps, and for what comes back', () => {
    const load = (d: number) => 2 + 3 * d - d ** 2 + 0.5 * d ** 3;
    const work = (d: number) => 2 * d + 1.5 * d ** 2 - d ** 3 / 3 + d ** 4 / 8;
    const forth = [0, 0.1, 0.3, 0.6, 1, 1.3, 1.5].map((displacement) => ({ displacement, load: load(displacement) }));
    const works = workAlong(forth);
    expect(works[4]! - works[2]!).toBeCloseTo(work(1) - work(0.3), 12);
    const round = [...forth, ...[...forth].reverse().slice(1)];
    expect(Math.abs(workAlong(round).at(-1)! - workAlong(round)[0]!)).toBeLessThan(2e-3);
  });
});
