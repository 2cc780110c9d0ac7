import { fail } from '../../problem/index.js';
import { type Note, type SourceKey, uniqueNotes, uniqueSources } from '../../provenance/index.js';
import type { Working } from '../../working/index.js';
import type { BridgingLaw } from '../bridging-types.js';
import { assumptions, furtherSources } from './assumptions.js';
import type { BridgingInput, BridgingPath } from './bridging-input.js';
import { bridgingModel } from './bridging-model.js';
import type { BridgingModel } from './bridging-sides.js';
import { checkModel } from './check-model.js';
import { areaUnder, peakOf } from './curve.js';
import { type GivingWay, givingWay } from './failure-sites.js';
import { showGivingWay, showPath, showWork } from './law-steps.js';
import { openingCurve, openingWork } from './opening-law.js';
import { type BridgingState, type CrackMovement, curveAlong, followPath, straightPath } from './path-law.js';

/** The law along a path other than pure opening: `opening` is the length of the path, `force` the force along it; their area is the work of both tractions. */
export interface PathLaw extends BridgingLaw {
  readonly states: readonly BridgingState[];
}

const openingSources: readonly SourceKey[] = ['jain-mai-1994', 'tong-mouritz-bannister-2002', 'common-practice'];
const slidingSources: readonly SourceKey[] = [...openingSources, 'cox-1999', 'massabo-cox-1999'];

/**
 * Force against opening (or along another path) of one penetration, from the thread's yarn data; of a rod, from its own.
 *
 * Slip with constant friction q from the crack plane outward, w = sum F^2/(2 EA q); stretch of the full length once slip has reached the anchor,
 * (F h - q h^2/2)/EA; rupture in the crack plane at eta_s F_t or at an anchor at eta_a F_t + q h; after an anchor breaks, or where there is none,
 * pull-out F = q (h - slip). Bends that yield: `yieldingBend`. Sliding: the thread as a string in a bed that yields, see `deflected`. Not covered: bending of rods, snubbing,
 * friction between crack faces, unloading.
 * @param working takes down the steps
 * @returns force in N against opening in m; along another path the force along it against its length, with the states
 * @throws out-of-range angle not in 0 to 90 degrees; a history that is empty, not finite or falls; neither anchor nor friction; see {@link bridgingModel}
 * @throws missing-key thread without tenacity or modulus
 * @source Jain and Mai 1994, shear-lag with constant friction; sliding after Cox 1999; algebra in docs/theory/bridging.md
 */
export function bridgingLaw(input: BridgingInput & { readonly path: BridgingPath }, working?: Working): PathLaw;
export function bridgingLaw(input: BridgingInput, working?: Working): BridgingLaw;
export function bridgingLaw(input: BridgingInput, working?: Working): BridgingLaw | PathLaw {
  const { model, notes } = bridgingModel(input, working);
  if (working !== undefined) showGivingWay(model, working);
  const law = lawOf(model, input.path, [...notes, ...assumptions(input)], working);
  working?.notes(law.notes);
  const more = furtherSources(input);
  return more.length === 0 ? law : { ...law, sources: uniqueSources(law.sources, more) };
}

/**
 * The law of a penetration whose sides are given directly: a pin, or a thread described by its own numbers. See {@link bridgingLaw}.
 * @throws out-of-range as {@link bridgingLaw}; a side's depth, stiffness, bed or the strength in the plane not above 0, another number below 0, any not finite
 */
export function lawOf(
  model: BridgingModel,
  path?: BridgingPath,
  notes: readonly Note[] = [],
  working?: Working,
): BridgingLaw | PathLaw {
  checkModel(model);
  const way = givingWay(model);
  if (!(way.force > 0)) {
    fail({
      code: 'out-of-range',
      message: 'friction = 0 for a thread without anchor, which holds nothing',
      allowed: 'friction above 0, or an anchor at the end of each leg',
    });
  }
  if (path === undefined) {
    const curve = openingCurve(model, way);
    const { force } = way;
    const at = curve.opening[curve.force.indexOf(force)] ?? 0;
    const work = areaUnder(curve);
    if (working !== undefined) showWork(work, openingWork(model, way), working);
    // Field by field: a spread takes longer than the whole curve.
    return {
      opening: curve.opening,
      force: curve.force,
      peak: { force, opening: at },
      work,
      failure: way.failure,
      notes: uniqueNotes(notes),
      sources: openingSources,
    };
  }
  const states = followPath(model, movements(model, path, way), way);
  const curve = curveAlong(states);
  const [peak, work] = [peakOf(curve), areaUnder(curve)];
  if (working !== undefined) showPath(model, way, { peak, work, states }, path, working);
  return {
    ...curve,
    peak,
    work,
    failure: way.failure,
    states,
    notes: uniqueNotes([...notes, ...pathNotes(model, states, way)]),
    sources: slidingSources,
  };
}

function movements(model: BridgingModel, path: BridgingPath, way: GivingWay): readonly CrackMovement[] {
  if ('angle' in path) {
    if (!(path.angle >= 0 && path.angle <= 90)) {
      fail({
        code: 'out-of-range',
        message: `angle = ${path.angle} degrees, must lie in 0 to 90`,
        allowed: '0 (opening) to 90 (sliding) degrees',
      });
    }
    return straightPath(model, path.angle, way);
  }
  let last: CrackMovement = { opening: 0, sliding: 0 };
  for (const next of path.history) {
    for (const name of ['opening', 'sliding'] as const) {
      if (!(Number.isFinite(next[name]) && next[name] >= last[name])) {
        fail({
          code: 'out-of-range',
          message: `${name} = ${next[name]} m in the history comes after ${last[name]} m, must not fall`,
          allowed: 'finite values from 0 on that never fall; unloading is not covered',
        });
      }
    }
    last = next;
  }
  if (last.opening === 0 && last.sliding === 0) {
    fail({ code: 'out-of-range', message: 'history without movement', allowed: 'at least one movement above 0' });
  }
  return path.history;
}

function pathNotes({ sides }: BridgingModel, states: readonly BridgingState[], way: GivingWay): readonly Note[] {
  const notes: Note[] = [];
  const breaks = states.findIndex(({ tension }) => tension >= way.force);
  const whole = breaks < 0 ? states : states.slice(0, breaks + 1);
  const deep = whole.some(({ tension, angle }) =>
    sides.some((side) => (tension / side.lateralResistance) * Math.sin(angle) > side.depth),
  );
  if (deep) {
    const text =
      'before it gives way the thread bends over more than its depth: outside the range of the bed model in sliding';
    notes.push({ level: 'warning', text, source: 'cox-1999' });
  }
  if ((states.at(-1)?.tension ?? 0) > 1e-6 * way.force) {
    notes.push({ level: 'assumption', text: 'the path ends while the thread still holds: work up to there' });
  }
  return notes;
}
