import { solveBoundaryValue } from '../numeric/index.js';
import type { PeelCase, PeelControl, PeelEquilibrium, PeelHistory } from './peel-case.js';
import { armState, rowState } from './peel-energy.js';
import { along, bringTo, carriedOver } from './peel-guess.js';
import { peelMesh } from './peel-mesh.js';
import type { Holding, HoldingRow, PeelModel } from './peel-model.js';
import { isSpent } from './row-stages.js';

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
  const present: { index: number; distance: number }[] = [];
  for (let index = 0; index < peel.rows.length; index++) {
    if (held(peel, history, index) === undefined) continue;
    present.push({ index, distance: Math.max(0, length - (peel.rows[index]?.position ?? 0)) });
  }
  const bend = bendingLength(model, near?.load ?? 0);
  const mesh = peelMesh(length, present, Math.min(bend, length / 3), peel.fineness);
  const holding: Holding = mesh.rows.map((indices) => {
    const here: HoldingRow[] = [];
    for (const index of indices) {
      const one = held(peel, history, index);
      if (one !== undefined) here.push(one);
    }
    return here;
  });
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
  holding.forEach((here, point) => {
    for (const row of here) if (row.memory.clamp !== undefined) bringTo(model, guess, mesh.at, point, row);
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
  const rows = rowState(peel, history, holding, mesh.at, z);
  // What was asked for is known without rounding.
  return {
    release: 'release' in control ? control.release : reading.release,
    displacement: 'displacement' in control ? control.displacement : reading.displacement,
    load: reading.load,
    byLoad: reading.byLoad,
    bedEnergy: reading.bedEnergy,
    length,
    at: mesh.at,
    z,
    opening,
    frontGap: model.gap(z, 0),
    elastic: arms.energy + reading.bedEnergy + rows.held,
    thread: rows.thread,
    zone: rows.zone,
    turn: model.places.reduce((most, { angle }) => Math.max(most, Math.abs(z[angle] ?? 0)), 0),
    strain: arms.strain,
    strainShare: arms.share,
  };
}

/** A row that the front has passed and that is not spent, with its past. */
function held({ rows }: PeelCase, { memory, start }: PeelHistory, index: number): HoldingRow | undefined {
  const law = rows[index]?.law;
  const past = memory[index];
  const from = start[index];
  if (law === undefined || past === undefined || from === undefined || isSpent(law, past)) return undefined;
  return { law, memory: past, start: from };
}
