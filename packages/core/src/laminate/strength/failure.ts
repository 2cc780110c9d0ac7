import { choice } from '../../problem/index.js';
import { type Note, type SourceKey, uniqueNotes, uniqueSources } from '../../provenance/index.js';
import type { Working } from '../../working/index.js';
import type { Load } from '../load.js';
import type { Laminate } from '../types.js';
import { dependsOnNaming, inRenamedAxes, namingNotes, renamed } from './cloth-naming.js';
import { type Criterion, failureCriteria, type StrengthOptions } from './criterion.js';
import { criterionNotes, criterionSources } from './criterion-models.js';
import { faceStress, unstressed } from './face-stress.js';
import { showFirstPly, showLoadAlone } from './failure-steps.js';
import { laminateStrength } from './laminate-strength.js';
import { type FailureMode, noMode } from './mode.js';
import { type SolvedLoad, solveLoad } from './solved-load.js';
import { brokenByResidual } from './strength-ratio.js';
import { type Face, type PlyFailure, plyFailures, weakest } from './weakest.js';

/** Where a laminate fails first. */
export interface FirstFailure extends FailureMode {
  /** Multiplier of the mechanical load; 0 when residual stress alone breaks a ply; undefined when no load would. */
  readonly ratio: number | undefined;
  /** Counted from 1 at the tool side. The three are undefined together with the ratio. */
  readonly ply: number | undefined;
  readonly name: string | undefined;
  readonly face: Face | undefined;
}

/** First-ply failure of a laminate. */
export interface LaminateFailure extends FirstFailure {
  readonly criterion: Criterion;
  /** The same for the mechanical load alone, where there is residual stress. */
  readonly withoutResidual?: FirstFailure;
  /** Every ply that has strengths, from the tool side on. */
  readonly perPly: readonly PlyFailure[];
  readonly notes: readonly Note[];
  readonly sources: readonly SourceKey[];
}

/**
 * First-ply failure of a laminate under a load.
 *
 * σ = σ_res + R σ_mech at both faces of every ply; R is the least strength ratio. Forces and prescribed deformations make
 * σ_mech; heat and moisture make σ_res, which is not multiplied.
 *
 * A cloth has fibres along 1 and along 2 and names its modes by warp and weft. A mat, that is any ply isotropic in its plane, is
 * judged in the weakest of all directions of its axes. Puck judges the unidirectional plies only. Each says so in a note.
 *
 * @param laminate plies with strengths; a core without them is left out, with a note
 * @param load as {@link respond} takes it
 * @param criterion one of {@link failureCriteria}
 * @param options choices that the criterion leaves open
 * @returns the ratio with ply, face and mode; 1 means that the load as given just breaks the first ply
 * @throws not-computable when a ply has no strengths; not-a-choice for an unknown criterion; out-of-range as
 *   {@link strengthConstants}; as {@link respond}
 * @source Jones 1999, ch. 4.7; sources of the criterion
 */
export function failure(
  laminate: Laminate,
  load: Load,
  criterion: Criterion,
  options: StrengthOptions = {},
): LaminateFailure {
  return failureUnder(laminate, solveLoad(laminate, load), criterion, options);
}

/**
 * {@link failure} from responses that are solved already, so that several criteria cost one solution.
 * @param working takes the steps down, when given: of the faces in parts as `plies.2.top.tsaiWu`, of the load without heat and moisture in `loadAlone`
 */
export function failureUnder(
  laminate: Laminate,
  { mechanical, residual }: SolvedLoad,
  criterion: Criterion,
  options: StrengthOptions = {},
  working?: Working,
): LaminateFailure {
  choice('criterion', criterion, failureCriteria);
  const strength = laminateStrength(laminate, criterion, options, working);
  const s = faceStress(mechanical);
  const none = unstressed(laminate);

  const shown = working && { working, residual: residual !== undefined };
  const rest = residual === undefined ? none : faceStress(residual);
  const perPly = plyFailures(laminate, criterion, strength, s, rest, shown);
  const first = firstFailure(perPly);
  if (working !== undefined) showFirstPly(criterion, perPly, first, working);
  const naming = (): Note[] => {
    const other = renamed(laminate);
    const [t, u] = [inRenamedAxes(laminate, s), inRenamedAxes(laminate, rest)];
    const plies = plyFailures(other, criterion, laminateStrength(other, criterion, options), t, u);
    return namingNotes(criterion, 'first', first.ratio, firstFailure(plies).ratio);
  };
  const withoutResidual = residual === undefined ? undefined : plyFailures(laminate, criterion, strength, s, none);
  const alone = withoutResidual && firstFailure(withoutResidual);
  if (working !== undefined && alone !== undefined) {
    showLoadAlone({ criterion, strength, stress: s, plies: withoutResidual, first: alone }, working.part('loadAlone'));
  }
  return {
    criterion,
    ...first,
    ...(alone === undefined ? {} : { withoutResidual: alone }),
    perPly,
    notes: uniqueNotes([
      ...criterionNotes(criterion, options),
      ...strength.notes,
      ...(dependsOnNaming(laminate, criterion) ? naming() : []),
      ...(residual === undefined ? [] : [notMultiplied]),
      ...(first.ratio === 0 ? [brokenByResidual] : []),
      ...(first.ratio === undefined ? [unloaded] : []),
      ...mechanical.notes,
      ...(residual?.notes ?? []),
    ]),
    sources: uniqueSources(mechanical.sources, criterionSources[criterion]),
  };
}

/** Says what the ratio does not multiply. */
export const notMultiplied: Note = {
  level: 'assumption',
  text: 'Stress from heat and moisture stays as it is; the strength ratio multiplies the mechanical load only.',
};

/** Says why there is no ratio. */
export const unloaded: Note = {
  level: 'warning',
  text: 'The load puts no mechanical stress on any ply that has strengths, so there is no strength ratio.',
};

function firstFailure(plies: readonly PlyFailure[]): FirstFailure {
  const found = weakest(plies);
  if (found === undefined) return { ratio: undefined, ply: undefined, name: undefined, face: undefined, ...noMode };
  const { ratio, ply, name, face, modeKey, mode, fractureAngle } = found;
  return { ratio, ply, name, face, modeKey, mode, ...(fractureAngle === undefined ? {} : { fractureAngle }) };
}
