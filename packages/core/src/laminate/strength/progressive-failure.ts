import { choice, fail } from '../../problem/index.js';
import { type Note, uniqueNotes, uniqueSources } from '../../provenance/index.js';
import type { StepValues, Working } from '../../working/index.js';
import { engineeringConstants } from '../engineering-constants.js';
import type { Load } from '../load.js';
import { stiffness } from '../stiffness.js';
import type { Laminate, Vector3 } from '../types.js';
import { dependsOnNaming, namingNotes, renamed } from './cloth-naming.js';
import { failureCriteria } from './criterion.js';
import { criterionNotes, criterionSources } from './criterion-models.js';
import { type DamageState, damageState, remainingFailures } from './damage-state.js';
import { type Damage, type Discount, discounts } from './discount.js';
import { notMultiplied } from './failure.js';
import { type LaminateStrength, laminateStrength } from './laminate-strength.js';
import type { Lay } from './lay.js';
import { breaksFibres } from './mode.js';
import { checkedLoad, checkedShare } from './progressive-checks.js';
import type {
  CurvePoint,
  ProgressiveFailure,
  ProgressiveOptions,
  ProgressiveStep,
  StepPly,
} from './progressive-types.js';
import { brokenByResidual } from './strength-ratio.js';
import { type PlyFailure, weakest } from './weakest.js';

/** Plies whose ratios differ by less than this fail in one step. */
const together = 1 + 1e-9;

/**
 * Progressive failure by ply discount, from first-ply to last-ply failure, under a load that is raised and never lowered.
 *
 * Step by step the weakest ply is found (with all others at its ratio), loses stiffness, and the load is spread anew. A ply that
 * fails at the load already reached fails at once: a cascade. The end, last-ply failure, is where the stiffness against the
 * load falls below the share `collapse` of the whole laminate's, or where no ply is left to fail. The stiffness against
 * the load is its square over the work that it does, (N·e + M·k)⁻¹ relative to the start.
 *
 * @param laminate plies with strengths; a core without them stays as it is; by Puck, cloth and mat are judged by maximum stress
 * @param load forces, heat, moisture; a prescribed deformation may only hold at zero
 * @param options `criterion`; `discount`: `matrix` (E2, G12, ν12 times `factor` when the matrix fails, E1, E2, G12 when the
 *   fibres do; a cloth has fibres both ways: its weft breaks as its warp does, and sheared it keeps E1 and E2; a mat always
 *   loses all) or `total` (E1, E2, G12 whatever fails), `matrix` when not given; `factor` 1e-6 to less than 1, 0.01 when not
 *   given; `collapse` more than 0 to less than 1, 0.1 when not given; the criterion's own choices
 * @param working takes the steps down, when given: in the parts `progressive.1` and so on
 * @returns steps, and the load-strain curve, strain counted from the cured, unloaded, whole laminate
 * @throws not-computable when a ply has no strengths, a deformation is prescribed, or the load stresses no ply;
 *   not-a-choice; out-of-range; as {@link respond}
 * @source Hahn & Tsai 1974; Jones 1999, ch. 4.7; the end by stiffness is ours
 */
export function progressiveFailure(
  laminate: Laminate,
  load: Load,
  options: ProgressiveOptions,
  working?: Working,
): ProgressiveFailure {
  const found = follow(laminate, load, options, working);
  if (!dependsOnNaming(laminate, found.criterion)) return found;
  const other = follow(renamed(laminate), load, options);
  const naming = namingNotes(found.criterion, 'last', found.lastPly.ratio, other.lastPly.ratio);
  return { ...found, notes: uniqueNotes([...found.notes, ...naming]) };
}

function follow(laminate: Laminate, load: Load, options: ProgressiveOptions, working?: Working): ProgressiveFailure {
  const criterion = choice('criterion', options.criterion, failureCriteria);
  const discount = choice('discount', options.discount ?? 'matrix', discounts);
  const factor = checkedShare('factor', options.factor ?? 0.01, 1e-6);
  const collapse = checkedShare('collapse', options.collapse ?? 0.1, Number.MIN_VALUE);
  const strength = withCloth(laminate, laminateStrength(laminate, criterion, options), options);
  const split = checkedLoad(load);

  const damage = laminate.plies.map((): Damage => 'whole');
  const start = damageState(laminate, split, damage, factor);
  if (!(start.work > 0)) stressless();
  const steps: ProgressiveStep[] = [];
  const curve: CurvePoint[] = [pointAt(start, start, 0)];
  let state = start;
  let reached = 0;
  let share = 1;

  while (share >= collapse) {
    const plies = remainingFailures(state, damage, criterion, strength);
    const next = weakest(plies)?.ratio;
    if (next === undefined) break;
    const cascade = steps.length > 0 && next <= reached * together;
    const R_before = reached;
    reached = Math.max(reached, next);
    const failing = plies.filter(({ ratio }) => ratio !== undefined && ratio <= next * together);
    const before = pointAt(start, state, reached);
    const changed = failing.map((ply) => discountOf(ply, damage[ply.ply - 1] ?? 'whole', discount));
    for (const { ply, becomes } of changed) damage[ply - 1] = becomes;
    state = damageState(laminate, split, damage, factor);
    share = start.work / state.work;
    const after = pointAt(start, state, reached);
    const part = working?.part('progressive', steps.length + 1);
    if (part !== undefined) {
      const found = { R_before, R_ply: next, R_now: reached, W_whole: start.work, W_now: state.work, s_left: share };
      part.step(
        'progressiveStep',
        found,
        changed.map(({ ply }) => leftOf(ply, state)),
      );
    }
    if (!cascade) curve.push(before);
    if (share >= collapse) curve.push(after);
    steps.push({
      ratio: reached,
      cascade,
      plies: changed,
      before,
      after,
      stiffnessShare: share,
      inPlane: engineeringConstants(stiffness(state.laminate)).inPlane,
    });
  }

  const first = steps[0];
  if (first === undefined) return stressless();
  const notes: Note[] = [
    ...criterionNotes(criterion, options),
    ...strength.notes,
    discountNote(discount, factor),
    ...layNotes(strength, discount),
    ...(split.residual === undefined ? [] : [notMultiplied]),
    ...(first.ratio === 0 ? [brokenByResidual] : []),
    ...(share >= collapse ? [neverCollapses] : []),
    ...laminate.notes,
  ];
  return {
    criterion,
    discount,
    factor,
    collapse,
    firstPly: first,
    lastPly: steps.at(-1) ?? first,
    collapsed: share < collapse,
    steps,
    curve,
    notes: uniqueNotes(notes),
    sources: uniqueSources(laminate.sources, ['jones-1999', 'hahn-tsai-1974'], criterionSources[criterion]),
  };
}

/** What a failing ply keeps of its constants. */
function leftOf(n_ply: number, { laminate }: DamageState): StepValues {
  const { E1 = 0, E2 = 0, G12 = 0, nu12 = 0 } = laminate.plies[n_ply - 1] ?? {};
  return { n_ply, E1, E2, G12, nu12 };
}

/** What becomes of a failing ply. */
function discountOf(failing: PlyFailure, was: Damage, discount: Discount): StepPly {
  const { ply, name, angle, face, modeKey, mode } = failing;
  const lost = discount === 'total' || was === 'cracked' || breaksFibres(modeKey);
  return { ply, name, angle, face, modeKey, mode, becomes: lost ? 'failed' : 'cracked' };
}

/** Deformation at a load ratio, less what cure had made of the whole laminate. */
function pointAt(start: DamageState, { mechanical, residual }: DamageState, ratio: number): CurvePoint {
  const sum = (key: 'strain' | 'curvature'): Vector3 => {
    const one = (i: 0 | 1 | 2): number => ratio * mechanical[key][i] + (residual[key][i] - start.residual[key][i]);
    return [one(0), one(1), one(2)];
  };
  return { ratio, strain: sum('strain'), curvature: sum('curvature') };
}

const discountNote = (discount: Discount, factor: number): Note => ({
  level: 'assumption',
  text:
    discount === 'total'
      ? `Ply discount: a ply that fails keeps ${factor} of E1, E2 and G12 in the whole of its area.`
      : `Ply discount: a ply whose matrix fails keeps ${factor} of E2, G12 and nu12, one whose fibres fail ${factor} of E1, E2 and G12, in the whole of its area.`,
  source: 'hahn-tsai-1974',
});

/** What the loss of a cloth or a mat is. */
function layNotes({ lays, constants }: LaminateStrength, discount: Discount): Note[] {
  if (discount === 'total') return [];
  const has = (lay: Lay): boolean => lays.some((one, k) => one === lay && constants[k] !== undefined);
  const texts = [
    ...(has('cloth')
      ? [
          'A cloth whose matrix shears keeps E1 and E2; one whose warp or weft breaks has failed as one whose fibres fail.',
        ]
      : []),
    ...(has('mat') ? ['A mat that breaks, in whatever way, has failed as a ply whose fibres fail.'] : []),
  ];
  return texts.map((text) => ({ level: 'assumption', text }));
}

/** By Puck, what it leaves out is judged by maximum stress: a cloth that never broke would carry any load. */
function withCloth(laminate: Laminate, strength: LaminateStrength, options: ProgressiveOptions): LaminateStrength {
  if (!strength.partly) return strength;
  const { constants, notes } = laminateStrength(laminate, 'maxStress', options);
  const byStress: Note = {
    level: 'assumption',
    text: 'Layer by layer, cloth and mat fail by maximum stress in place of Puck.',
  };
  return { ...strength, constants, notes: [...strength.notes, ...notes, byStress] };
}

const neverCollapses: Note = {
  level: 'warning',
  text: 'No ply is left that a higher load would break, yet the laminate kept its stiffness: the last ratio is not the end of what it carries.',
};

function stressless(): never {
  return fail({
    code: 'not-computable',
    message:
      'the load puts no mechanical stress on any ply that has strengths, so nothing fails however far it is raised',
    allowed: 'a load with a force or moment other than 0',
  });
}
