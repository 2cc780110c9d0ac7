import type { StepValues, Working } from '../working/index.js';
import { armState } from './peel-energy.js';
import type { NaturalUnits } from './peel-model.js';
import type { SharpestState } from './peel-path.js';
import { hasLikeArms, type PeelSpecimen, type PreparedPeel } from './peel-specimen.js';
import { isSpent, noForce, rowForce } from './row-stages.js';
import { type HeldRow, showRowsHold } from './specimen/bend-steps.js';

/** Takes down what the rows hold in the state in which an arm comes nearest to breaking, and its sharpest bend there. */
export function showPeelBend(
  specimen: PeelSpecimen,
  prepared: PreparedPeel,
  { state, history }: SharpestState,
  working: Working,
): void {
  const { peel, units } = prepared;
  showRowsHold(heldInPeel(specimen, prepared, { state, history }), working);
  const steps = Float64Array.from(state.at.slice(1), (to, k) => to - (state.at[k] ?? 0));
  let found: { readonly arm: number; readonly values: StepValues; readonly beyond: number } | undefined;
  armState(peel, state.z, steps, ({ arm, at, M, angle, H, V, share }) => {
    if (share !== state.strainShare || found !== undefined) return;
    const [k, part] = at;
    const place = (state.at[k] ?? 0) + part * (steps[k] ?? 0);
    found = { arm, values: bendValues(units, { place: state.length - place, M, angle, H, V }), beyond: k + part };
  });
  if (found === undefined) return;
  const arm = specimen.arms[found.arm === 1 ? 1 : 0];
  const { values } = found;
  const { M_b = 0, theta_b, N_b = 0 } = values;
  const [h_w, D_w, A_w] = [arm.thickness, arm.bendingStiffness, arm.axialStiffness];
  const [eps_b, eps_N] = [(M_b * h_w) / (2 * D_w), N_b / A_w];
  const { tension: eps_t = 0, compression: eps_c = 0 } = arm.failureStrain ?? {};
  const bend = { ...values, h_w, D_w, A_w, eps_b, eps_N, eps_t, eps_c, x_a: state.strainShare };
  working.step('peelBends', { a: state.length * units.length, P: state.load * units.force * specimen.width, ...bend });
  if (!hasLikeArms(specimen)) return;
  // The force is that past the jump at the nearer point: beyond a row that of the next step.
  const [place] = peel.model.places;
  const next = Math.min(Math.floor(found.beyond) + 1, state.at.length - 1);
  const V_r = (state.z[next * peel.model.size + (place?.V ?? 0)] ?? 0) * units.force;
  const angle = ((theta_b ?? 0) * Math.PI) / 180;
  const [N_r, T_r] = [V_r * Math.sin(angle), V_r * Math.cos(angle)];
  const [D_1, A_1, S_1] = [arm.bendingStiffness, arm.axialStiffness, arm.shearStiffness];
  const G_e = 2 * (M_b ** 2 / (2 * D_1) + N_r + N_r ** 2 / (2 * A_1) + T_r ** 2 / (2 * S_1));
  working.step('peelBendEnergy', { M_b, theta_b: theta_b ?? 0, V_r, D_1, A_1, S_1, N_r, T_r, G_e });
}

/** Of the solution, natural units. */
interface Bend {
  readonly place: number;
  readonly M: number;
  readonly angle: number;
  readonly H: number;
  readonly V: number;
}

function bendValues({ force, length }: NaturalUnits, { place, M, angle, H, V }: Bend): StepValues {
  return {
    x_m: place * length,
    M_b: Math.abs(M) * force * length,
    theta_b: (angle * 180) / Math.PI,
    H_b: H * force,
    V_b: V * force,
    N_b: (H * Math.cos(angle) + V * Math.sin(angle)) * force,
  };
}

function heldInPeel(
  { rows: given, width }: PeelSpecimen,
  { peel, units, rows }: PreparedPeel,
  { state, history }: SharpestState,
): readonly HeldRow[] {
  const out = noForce();
  return peel.rows.flatMap(({ law, position }, i): HeldRow[] => {
    const [memory, start] = [history.memory[i], history.start[i]];
    if (memory === undefined || start === undefined || isSpent(law, memory)) return [];
    rowForce(law, memory, state.opening[i] ?? 0, out);
    const force = out.force * units.force * width;
    if (force === 0) return [];
    const penetrations = given[rows[i]?.index ?? 0]?.penetrations ?? 1;
    return [
      { position: position * units.length, opening: (state.opening[i] ?? 0) * units.length, penetrations, force },
    ];
  });
}
