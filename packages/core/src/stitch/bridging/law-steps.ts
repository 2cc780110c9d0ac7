import { sinCosDegrees } from '../../numeric/index.js';
import type { StepValues, Working } from '../../working/index.js';
import type { BridgingCurve, BridgingLaw } from '../bridging-types.js';
import type { BridgingPath } from './bridging-input.js';
import type { BridgingModel, BridgingSide } from './bridging-sides.js';
import { anchorLimit, type GivingWay, givingWay, type PullOut } from './failure-sites.js';
import { openingWork, sideWork } from './opening-law.js';
import type { BridgingState } from './path-law.js';
import { bedOf, deflected } from './ploughing.js';
import { drawnOut, openingAt, stretchWork } from './slip.js';
import { bendFree, cornerWork, floatGives, floatWork } from './yielding-bend.js';

/** Takes down which site of a stitch gives way, at what force, what both sides let out until then, and the work of one that opens straight. */
export function showGivingWay(model: BridgingModel, working: Working): void {
  const way = givingWay(model);
  showSites(model, way, working);
  showOpening(model, way, working);
}

function showSites(
  { sides, crackStrength: F_c, siteScatter: s_v }: BridgingModel,
  way: GivingWay,
  working: Working,
): void {
  const sites = { F_c, F_s1: anchorLimit(sides[0]), F_s2: anchorLimit(sides[1]), F_p: way.force };
  working.step('weakestSite', sites);
  const shares = { x_c: way.crackShare, x_1: way.pullOut[0].share, x_2: way.pullOut[1].share };
  if (s_v > 0) working.step('sharesOfSites', { ...sites, s_v, m_w: way.exponent, ...shares });
  else working.step('sharesWithoutScatter', { ...sites, ...shares });
}

function showOpening(model: BridgingModel, way: GivingWay, working: Working): void {
  const [first, second] = ([0, 1] as const).map((i) => {
    const side = model.sides[i];
    showSideOpening(side, way.force, way.pullOut[i], working.part('sides', i + 1));
    return { length: drawnOut(side, way.force), work: sideWork(side, way, i) };
  }) as [SideOpening, SideOpening];
  working.step('bothSides', { e_1: first.length, e_2: second.length, w_p: openingAt(model, way.force) });
  working.step('workOpening', { W_1: first.work, W_2: second.work, W_c: openingWork(model, way) });
}

interface SideOpening {
  readonly length: number;
  readonly work: number;
}

function showSideOpening(side: BridgingSide, F_p: number, pulled: PullOut, working: Working): void {
  const { depth: l_s, axialStiffness: EA_l, slipResistance: q_l, anchorCompliance: C_a, bend } = side;
  const W_e = stretchWork(side, F_p);
  const pull = { x_s: pulled.share, q_p: pulled.resistance, W_q: (pulled.share * pulled.resistance * l_s ** 2) / 2 };
  const all = { F_p, EA_l, q_l, l_s, e_s: drawnOut(side, F_p), W_e, ...pull, W_s: W_e + pull.W_q };
  if (F_p <= q_l * l_s) {
    working.step('slipOfSide', all);
    return;
  }
  if (bend === undefined) {
    working.step('stretchOfSide', { ...all, C_a });
    return;
  }
  const F_b = F_p - q_l * l_s;
  const e_b = bendFree(bend, F_b);
  const { from: F_b0, to: F_b1, compliance: C_b, passed: x_b, float } = bend;
  const W_f = floatWork(bend, F_b);
  const W_b = cornerWork(bend, F_b);
  working.step('bendOfSide', { F_p, q_l, l_s, F_b, F_b0, F_b1, C_b, e_b, W_b });
  const e_f = floatGives(bend, F_b);
  if (float !== undefined) {
    const F_f = x_b * F_b;
    const slips = F_f <= float.slipResistance * float.length;
    const { slipResistance: q_f, length: l_f } = float;
    working.step(slips ? 'floatSlips' : 'floatStretches', {
      x_b,
      F_b,
      F_f,
      q_f,
      EA_l,
      ...(slips ? {} : { l_f }),
      e_f,
      W_f,
    });
  }
  working.step('stretchWithBend', { ...all, C_a, e_b, e_f, W_b, W_f });
}

/** Takes down the work of a law, the area under its chords, beside that in closed form. */
export function showWork(W: number, W_c: number, working: Working): void {
  working.step('areaUnderLaw', { W_c, W_x: W_c - W, W });
}

/** Takes down the work of a measured law, piece by piece of its curve. */
export function showMeasured(
  { opening, force, work: W }: BridgingCurve & { readonly work: number },
  working: Working,
): void {
  const rows: StepValues[] = opening.slice(1).map((w_j, i) => {
    const [w_i, F_i, F_j] = [opening[i] ?? 0, force[i] ?? 0, force[i + 1] ?? 0];
    return { w_i, F_i, w_j, F_j, W: ((F_j + F_i) * (w_j - w_i)) / 2 };
  });
  working.step('areaUnderPoints', { W }, rows);
}

/** Takes down how the thread lies across a crack that does not open straight, as it gives way, and the law along the path. */
export function showPath(
  model: BridgingModel,
  way: GivingWay,
  law: Pick<BridgingLaw, 'peak' | 'work'> & { readonly states: readonly BridgingState[] },
  path: BridgingPath,
  working: Working,
): void {
  const B_n = bedOf(model);
  const [q_n1, q_n2] = [model.sides[0].lateralResistance, model.sides[1].lateralResistance];
  working.step('bedOfThread', { q_n1, q_n2, B_n });
  const gaveWay = law.states.find(({ tension }) => tension === way.force);
  if (gaveWay !== undefined) {
    const { opening: w_b, sliding: u_b, normal: F_n, shear: F_u } = gaveWay;
    const { angle: theta_r, drawn: s_d } = deflected(B_n, way.force, w_b, u_b);
    const theta_t = (theta_r * 180) / Math.PI;
    if (w_b === 0 && u_b >= way.force * B_n) working.step('threadInCrack', { F_p: way.force, B_n, u_b, s_d });
    else working.step('threadAcrossCrack', { F_p: way.force, B_n, theta_t, theta_r, w_b, u_b, s_d });
    if ('angle' in path) {
      const { angle } = path;
      const { cos, sin } = sinCosDegrees(angle);
      const F_d = F_n * cos + F_u * sin;
      working.step('forcesOnCrack', { F_p: way.force, theta_t, F_n, F_u, alpha_p: angle, F_d });
    }
  }
  working.step('lawAlongPath', { F_m: law.peak.force, s_F: law.peak.opening, W: law.work });
}
