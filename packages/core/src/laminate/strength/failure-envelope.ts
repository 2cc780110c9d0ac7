import { cosDegrees, sinDegrees } from '../../numeric/index.js';
import { choice, fail } from '../../problem/index.js';
import { type Note, type SourceKey, uniqueNotes, uniqueSources } from '../../provenance/index.js';
import type { Load } from '../load.js';
import { type Response, respond } from '../respond.js';
import type { Laminate, Vector3 } from '../types.js';
import { type Criterion, failureCriteria, type StrengthOptions } from './criterion.js';
import { criterionNotes, criterionSources } from './criterion-models.js';
import { faceStress, unstressed } from './face-stress.js';
import { notMultiplied } from './failure.js';
import { laminateStrength } from './laminate-strength.js';
import type { FailureMode } from './mode.js';
import { splitLoad } from './split-load.js';
import { brokenByResidual } from './strength-ratio.js';
import type { Face } from './weakest.js';
import { type WeakestFace, weakestAlong } from './weakest-direction.js';

/** The six components of a load, in the order x, y, xy of forces and of moments. */
export const loadComponents = ['Nx', 'Ny', 'Nxy', 'Mx', 'My', 'Mxy'] as const;

/** A force or moment per width that an envelope varies. */
export type LoadComponent = (typeof loadComponents)[number];

/** What {@link failureEnvelope} draws; heat and moisture act at every point alike. */
export interface EnvelopeOptions
  extends StrengthOptions,
    Pick<Load, 'temperatureChange' | 'temperatureGradient' | 'moisture'> {
  readonly components: readonly [LoadComponent, LoadComponent];
  readonly criterion: Criterion;
  /** Directions around the circle, a multiple of 4 from 4 to 3600; 72 when not given. */
  readonly count?: number;
}

/** A point of an envelope, and what fails there. */
export interface EnvelopePoint extends FailureMode {
  /** The first and the second component, N/m (N) or N (M). */
  readonly x: number;
  readonly y: number;
  /** Counted from 1 at the tool side. */
  readonly ply: number;
  readonly name: string;
  readonly face: Face;
}

/** Loads of first-ply failure in the plane of two components. */
export interface FailureEnvelope {
  readonly criterion: Criterion;
  readonly components: readonly [LoadComponent, LoadComponent];
  /** Counter-clockwise from the positive first axis; the last point repeats the first. */
  readonly points: readonly EnvelopePoint[];
  readonly notes: readonly Note[];
  readonly sources: readonly SourceKey[];
}

/**
 * Envelope of first-ply failure in two load components, all others zero.
 *
 * For each direction the strength ratio gives the point directly. Directions are even in the plane where each component is
 * divided by its own strength, so that N and M mix; the four half-axes are always among them.
 *
 * @param laminate plies with strengths; a core without them is left out, with a note
 * @returns a closed polygon, N/m or N
 * @throws contradiction when both components are one; not-a-choice for unknown names; out-of-range for the count;
 *   not-computable when a ply has no strengths; as {@link respond}
 * @source Jones 1999, ch. 4.7; sources of the criterion
 */
export function failureEnvelope(laminate: Laminate, options: EnvelopeOptions): FailureEnvelope {
  choice('criterion', options.criterion, failureCriteria);
  return envelopeOf(laminate, solvePlane(laminate, options.components, options), options);
}

/** The responses that an envelope combines: to each of its two components alone at 1 N/m or 1 N, to heat and moisture. */
export interface SolvedPlane {
  readonly components: readonly [LoadComponent, LoadComponent];
  readonly units: readonly [Response, Response];
  readonly residual: Response | undefined;
}

/** Solves what {@link envelopeOf} combines, once for any number of criteria. @throws as {@link failureEnvelope} */
export function solvePlane(
  laminate: Laminate,
  components: readonly [LoadComponent, LoadComponent],
  surroundings: Pick<Load, 'temperatureChange' | 'temperatureGradient' | 'moisture'>,
): SolvedPlane {
  const [first, second] = components;
  for (const name of components) choice('component', name, loadComponents);
  if (first === second) {
    fail({ code: 'contradiction', message: `both components are ${first}`, allowed: 'two different components' });
  }
  const { temperatureChange = 0, temperatureGradient = 0, moisture = 0 } = surroundings;
  const { residual } = splitLoad({ temperatureChange, temperatureGradient, moisture });
  return {
    components,
    units: [respond(laminate, unitLoad(first)), respond(laminate, unitLoad(second))],
    residual: residual === undefined ? undefined : respond(laminate, residual),
  };
}

/** {@link failureEnvelope} from responses that are solved already. */
export function envelopeOf(
  laminate: Laminate,
  { components, units, residual }: SolvedPlane,
  options: Omit<EnvelopeOptions, 'components'>,
): FailureEnvelope {
  const { criterion } = options;
  const [first, second] = components;
  const count = checkedCount(options.count ?? 72);
  const strength = laminateStrength(laminate, criterion, options);
  const [sx, sy] = [faceStress(units[0]), faceStress(units[1])];
  const cured = residual === undefined ? unstressed(laminate) : faceStress(residual);

  const at = (x: number, y: number): WeakestFace | undefined =>
    weakestAlong(laminate, criterion, strength, [sx, sy, cured], x, y);
  const size = (name: LoadComponent, x: number, y: number): number =>
    Math.max(at(x, y)?.ratio ?? stressless(name), at(-x, -y)?.ratio ?? stressless(name));
  const [width, height] = [size(first, 1, 0), size(second, 0, 1)];

  const points = Array.from({ length: count }, (_, i): EnvelopePoint => {
    const x = width * cosDegrees((360 * i) / count);
    const y = height * sinDegrees((360 * i) / count);
    const broken = width === 0 || height === 0;
    const found = (broken ? at(1, 0) : at(x, y)) ?? stressless(first);
    const ratio = broken ? 0 : (found.ratio ?? 0);
    const { ply, name, face, modeKey, mode, fractureAngle } = found;
    const angle = fractureAngle === undefined ? {} : { fractureAngle };
    return { x: ratio * x + 0, y: ratio * y + 0, ply, name, face, modeKey, mode, ...angle };
  });
  const start = points[0];
  return {
    criterion,
    components,
    points: start === undefined ? points : [...points, start],
    notes: uniqueNotes([
      ...criterionNotes(criterion, options),
      ...strength.notes,
      ...(residual === undefined ? [] : [notMultiplied]),
      ...(width === 0 ? [brokenByResidual] : []),
      ...units.flatMap(({ notes }) => notes),
      ...(residual?.notes ?? []),
    ]),
    sources: uniqueSources(...units.map(({ sources }) => sources), criterionSources[criterion]),
  };
}

/** One component at 1 N/m or 1 N. */
function unitLoad(name: LoadComponent): Load {
  const of = (x: LoadComponent, y: LoadComponent, xy: LoadComponent): Vector3 => [
    Number(name === x),
    Number(name === y),
    Number(name === xy),
  ];
  return { N: of('Nx', 'Ny', 'Nxy'), M: of('Mx', 'My', 'Mxy') };
}

function checkedCount(count: number): number {
  if (Number.isInteger(count) && count % 4 === 0 && count >= 4 && count <= 3600) return count;
  return fail({ code: 'out-of-range', message: `count is ${count}`, allowed: 'a multiple of 4 from 4 to 3600' });
}

function stressless(name: LoadComponent): never {
  return fail({
    code: 'not-computable',
    message: `${name} stresses no ply that has strengths, so the envelope is not closed`,
    allowed: 'two components that each stress some ply',
  });
}
