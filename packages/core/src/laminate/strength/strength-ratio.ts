import { choice, fail } from '../../problem/index.js';
import type { Note, SourceKey } from '../../provenance/index.js';
import type { Vector3 } from '../types.js';
import { type Criterion, failureCriteria, type StrengthOptions } from './criterion.js';
import { criterionNotes, criterionSources, ratioFunctions } from './criterion-models.js';
import type { Lay } from './lay.js';
import { weakestAxes } from './mat-ratio.js';
import { type FailureMode, modeAt, noMode } from './mode.js';
import { type ShownPoint, showMatPoint, showPointFailure } from './point-steps.js';
import { type StrengthConstants, type StrengthPly, strengthConstants } from './strength-constants.js';

/** How far one point of a ply is from failing. */
export interface PointFailure extends FailureMode {
  /** Load multiplier to failure: 1 just fails; 0 when the residual stress alone does; undefined when no load would. */
  readonly ratio: number | undefined;
}

/** A {@link PointFailure} that stands for itself. */
export interface StrengthRatio extends PointFailure {
  readonly criterion: Criterion;
  readonly notes: readonly Note[];
  readonly sources: readonly SourceKey[];
}

export const noStress: Vector3 = [0, 0, 0];

/** The ratio and the mode at one point, without notes; the steps go where `shown` says. */
export function pointFailure(
  criterion: Criterion,
  s: Vector3,
  r: Vector3,
  c: StrengthConstants,
  lay: Lay = 'unidirectional',
  shown?: ShownPoint,
): PointFailure {
  if (lay === 'mat') {
    const weakest = weakestAxes(criterion, s, r, c, Number.POSITIVE_INFINITY);
    const { ratio, stress, residual } = weakest;
    if (shown !== undefined) showMatPoint(criterion, s, r, c, weakest, shown);
    return failureAt(criterion, ratio, stress, residual, c, lay);
  }
  const ratio = ratioFunctions[criterion](s[0], s[1], s[2], r[0], r[1], r[2], c, Number.POSITIVE_INFINITY);
  const found = failureAt(criterion, ratio, s, r, c, lay);
  if (shown !== undefined) showPointFailure(criterion, s, r, c, found, shown);
  return found;
}

function failureAt(
  criterion: Criterion,
  ratio: number,
  s: Vector3,
  r: Vector3,
  c: StrengthConstants,
  lay: Lay,
): PointFailure {
  if (!Number.isFinite(ratio)) return { ratio: undefined, ...noMode };
  const at: Vector3 = [r[0] + ratio * s[0], r[1] + ratio * s[1], r[2] + ratio * s[2]];
  return { ratio, ...modeAt(criterion, at, c, lay) };
}

/** What a ratio of 0 means. */
export const brokenByResidual: Note = {
  level: 'warning',
  text: 'The residual stress alone reaches the failure limit: no load is carried before first failure.',
};

/**
 * Strength ratio of a ply at one point: the multiplier R at which σ = residual + R stress fails.
 *
 * The residual stress is not multiplied. The ply is judged in the axes given and as unidirectional, also a cloth or a mat, whose lay
 * {@link failure} takes into account. For the equations see the criterion's own file and docs/theory/strength.md.
 *
 * @param ply E1, E2 and strengths, Pa; nu12
 * @param stress mechanical, in ply axes 1, 2, 12, Pa
 * @param criterion one of {@link failureCriteria}
 * @param options the criterion's choices, and `residual`: stress in ply axes that stays as it is, Pa; zero when not given
 * @returns the ratio (no unit), 0 or more, with the mode of failure
 * @throws not-computable when the ply has no strengths; not-a-number for stress that is not finite; not-a-choice,
 *   out-of-range for a criterion, option or strength that cannot be
 * @source Jones 1999, ch. 2.9; sources of the criterion
 */
export function strengthRatio(
  ply: Omit<StrengthPly, 'strengths'> & Partial<Pick<StrengthPly, 'strengths'>>,
  stress: Vector3,
  criterion: Criterion,
  options: StrengthOptions & { readonly residual?: Vector3 } = {},
): StrengthRatio {
  choice('criterion', criterion, failureCriteria);
  const { strengths } = ply;
  if (strengths === undefined) {
    return fail({
      code: 'not-computable',
      message: 'the ply has no strengths, so its strength ratio cannot be computed',
      allowed: 'a ply with Xt, Xc, Yt, Yc and S',
    });
  }
  const { residual = noStress } = options;
  for (const [name, values] of Object.entries({ stress, residual })) {
    const odd = values.find((value) => !Number.isFinite(value));
    if (odd !== undefined) {
      fail({ code: 'not-a-number', message: `${name} holds ${odd}`, allowed: 'finite numbers, Pa' });
    }
  }
  const found = pointFailure(criterion, stress, residual, strengthConstants({ ...ply, strengths }, criterion, options));
  return {
    criterion,
    ...found,
    notes: [...criterionNotes(criterion, options), ...(found.ratio === 0 ? [brokenByResidual] : [])],
    sources: criterionSources[criterion],
  };
}
