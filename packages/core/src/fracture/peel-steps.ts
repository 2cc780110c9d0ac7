import type { StepValues, Working } from '../working/index.js';
import { emptySection, firstIntegral, sectionAt } from './elastica-section.js';
import { peelLoad, uprightLoad } from './peel-load.js';
import { type NaturalArm, type NaturalUnits, naturalArm } from './peel-model.js';
import type { PathPoint, PeelPath } from './peel-path.js';
import type { PeelMoment, PeelRecord } from './peel-record.js';
import { hasLikeArms, type PeelSpecimen, type PreparedPeel } from './peel-specimen.js';
import { openingLoad } from './specimen/beam-toughness.js';
import { openingPair, rootLength } from './specimen/opening-pair.js';
import { showOpeningPair } from './specimen/pair-steps.js';
import { showPieces } from './specimen/pulled-steps.js';
import { piecesOf } from './specimen/resistance.js';

/** A state with the crack length and displacement that the record has for it, SI. */
interface Seen {
  readonly a: number;
  readonly P: number;
  readonly Delta: number;
  readonly G_L: number;
  readonly point: PathPoint;
}

/** Takes down the arms of a peel, the load at which it would grow without stitches, and its record row by row. */
export function showPeel(
  specimen: PeelSpecimen,
  { units, rows }: PreparedPeel,
  { events, points }: PeelPath,
  { displacement, moments }: Pick<PeelRecord, 'displacement' | 'moments'>,
  working: Working,
): void {
  showStart(specimen, working);
  const { width } = specimen;
  const kindOf = (event: PeelPath['events'][number]) =>
    event.kind === 'row' ? (event.row === undefined ? undefined : rows[event.row]?.failure) : event.kind;
  for (const kind of new Set(events.flatMap((event) => kindOf(event) ?? []))) {
    const own = events
      .filter((event) => kindOf(event) === kind)
      .map(({ point }): Seen => {
        const at = points[point] as PathPoint;
        const [P, G_L] = [at.load * units.force * width, at.byLoad * units.force];
        return { a: at.length * units.length, P, Delta: displacement[point] ?? 0, G_L, point: at };
      });
    showStates(specimen, units, own, working.part('gaveWay', kind));
  }
  const pieces = piecesOf(moments);
  if (pieces.length === 0) return;
  const seen = pieces.map(({ from }) => seenOf(from));
  const growth = working.part('growth');
  showStates(specimen, units, seen, growth);
  showPieces(pieces, width, growth);
}

const seenOf = ({ crackLength: a, load: P, displacement: Delta, byLoad: G_L, point }: PeelMoment): Seen => ({
  a,
  P,
  Delta,
  G_L,
  point,
});

function showStart({ arms, width: b, crackLength: a_0, bondToughness: G_0 }: PeelSpecimen, working: Working): void {
  const pair = openingPair(arms);
  showOpeningPair(arms, pair, working);
  const [P_s, P_u] = [openingLoad(pair, b, G_0, a_0), uprightLoad(b, G_0)];
  const beam = { D_p: pair.bendingStiffness, chi: rootLength(pair) };
  working.step('peelLoad', { b, G_0, ...beam, a_0, P_s, P_u, P_0: peelLoad(P_s, P_u) });
}

/** Takes down some states: by what the arms are at the grips and, of like arms, at the front; those between two as such. */
function showStates(specimen: PeelSpecimen, units: NaturalUnits, states: readonly Seen[], working: Working): void {
  const [one, two] = specimen.arms;
  const solved = states.filter(({ point }) => point.ends !== undefined);
  if (solved.length > 0 && hasLikeArms(specimen)) {
    const arm = naturalArm(one, units);
    const stiff = { A_1: one.axialStiffness, S_1: one.shearStiffness };
    working.step(
      'peelRows',
      { b: specimen.width, ...stiff },
      solved.map((state) => atGrips(state, specimen.width)),
    );
    const front = solved.map((state) => atFront(state, arm, units));
    working.step('peelFrontRows', { D_1: one.bendingStiffness, ...stiff }, front);
  } else if (solved.length > 0) {
    const stiff = {
      A_1: one.axialStiffness,
      S_1: one.shearStiffness,
      A_2: two.axialStiffness,
      S_2: two.shearStiffness,
    };
    working.step(
      'peelUnlikeRows',
      stiff,
      solved.map((state) => atUnlikeGrips(state, units)),
    );
  }
  const landed = states.flatMap(({ point: { landing }, ...row }): StepValues[] =>
    landing === undefined
      ? []
      : [{ ...row, G_i: landing.before * units.force, G_j: landing.after * units.force, x_j: landing.place }],
  );
  if (landed.length > 0) working.step('landingRows', {}, landed);
}

const degrees = 180 / Math.PI;

/** Places in the values of an end: of two like arms, and of each of two unlike ones. */
const [angleOfLike, momentOfLike, forceOfLike] = [1, 2, 3] as const;
const [angleOfUnlike, alongOfUnlike, acrossOfUnlike, perArm] = [2, 4, 5, 6] as const;

function atGrips({ a, P, Delta, G_L, point }: Seen, width: number): StepValues {
  const angle = point.ends?.grips[angleOfLike] ?? 0;
  const P_w = P / width;
  return { a, P, Delta, P_w, theta_g: angle * degrees, N_g: P_w * Math.sin(angle), T_g: P_w * Math.cos(angle), G_L };
}

function atFront({ a, point }: Seen, { section: compliance }: NaturalArm, units: NaturalUnits): StepValues {
  const front = point.ends?.front ?? new Float64Array(4);
  const [angle, moment, V] = [front[angleOfLike] ?? 0, front[momentOfLike] ?? 0, front[forceOfLike] ?? 0];
  const section = emptySection();
  sectionAt(compliance, angle, 0, V, section);
  const V_0 = V * units.force;
  return {
    a,
    M_0: moment * units.force * units.length,
    theta_0: angle * degrees,
    V_0,
    G_b: compliance.bend * moment * moment * units.force,
    N_0: V_0 * Math.sin(angle),
    T_0: V_0 * Math.cos(angle),
    G_F: 2 * firstIntegral(compliance.bend, moment, 0, V, section) * units.force,
  };
}

function atUnlikeGrips({ a, P, Delta, G_L, point }: Seen, { force }: NaturalUnits): StepValues {
  const grips = point.ends?.grips ?? new Float64Array(2 * perArm);
  const of = (arm: 0 | 1) => {
    const at = (place: number) => grips[arm * perArm + place] ?? 0;
    const [angle, H, V] = [at(angleOfUnlike), at(alongOfUnlike) * force, at(acrossOfUnlike) * force];
    const [c, s] = [Math.cos(angle), Math.sin(angle)];
    return { theta: angle * degrees, H, V, N: H * c + V * s, T: V * c - H * s };
  };
  const [first, second] = [of(0), of(1)];
  const one = { theta_g: first.theta, H_g: first.H, V_g: first.V, N_g: first.N, T_g: first.T };
  const two = { theta_g2: second.theta, H_g2: second.H, V_g2: second.V, N_g2: second.N, T_g2: second.T };
  return { a, P, Delta, ...one, ...two, G_L };
}
