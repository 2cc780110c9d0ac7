import type {
  CuredShape,
  FirstFailure,
  LaminateFailure,
  ProgressiveFailure,
  ProgressiveStep,
  Response,
} from '../../laminate/index.js';
import type { LoadEnvelope } from './load-envelope.js';
import type { Residual } from './load-residual.js';

const first = ({ ratio, ply, face, mode }: FirstFailure) => ({
  ratio: ratio ?? null,
  ply: ply ?? null,
  face: face ?? null,
  mode,
});

/** Ratio, ply (from 1 at the tool side), face and mode by criterion; null where the load breaks nothing. */
export function failureData(failures: readonly LaminateFailure[]): Record<string, unknown> {
  return Object.fromEntries(
    failures.map((one) => [
      one.criterion,
      {
        ...first(one),
        ...(one.withoutResidual === undefined ? {} : { ratioWithoutResidual: one.withoutResidual.ratio ?? null }),
      },
    ]),
  );
}

/** The plies of a response from the tool side on. */
export const pliesData = ({ plies }: Response) =>
  plies.map(({ name, angle, top, middle, bottom }) => ({ name, angle, top, middle, bottom }));

/** Stress, strength and shape of heat and moisture alone. */
export function residualData({ response, failures, curedShape }: Residual): Record<string, unknown> {
  const { N, M, strain, curvature } = response;
  return {
    residual: { N, M, strain, curvature, plies: pliesData(response), failure: failureData(failures) },
    curedShape: curedShapeData(curedShape),
  };
}

function curedShapeData({ kind, curvature, principal, direction, riseOfThickness }: CuredShape) {
  return { shape: kind, curvature, principal, direction, riseOfThickness: riseOfThickness ?? null };
}

const pointData = ({ strain, curvature }: ProgressiveStep['before']) => ({ strain, curvature });

const stepData = ({ ratio, cascade, plies, before, after, stiffnessShare, inPlane }: ProgressiveStep) => ({
  ratio,
  cascade,
  plies,
  before: pointData(before),
  after: pointData(after),
  stiffnessShare,
  inPlane,
});

/** Failure from the first ply to the last; strain counts from the cured, unloaded laminate. */
export function progressiveData(found: ProgressiveFailure): Record<string, unknown> {
  const { criterion, discount, factor, collapse, firstPly, lastPly, collapsed, steps, curve } = found;
  return {
    criterion,
    discount,
    remainingStiffness: factor,
    collapse,
    firstPly: stepData(firstPly),
    lastPly: stepData(lastPly),
    collapsed,
    steps: steps.map(stepData),
    curve,
  };
}

/** Closed polygons [x, y, ply, mode] in the plane of two components, N/m or N, by criterion. */
export function envelopeData({ components, load, envelopes }: LoadEnvelope): Record<string, unknown> {
  return {
    components,
    load: [load.x, load.y],
    criteria: Object.fromEntries(
      envelopes.map(({ criterion, points }) => [criterion, points.map(({ x, y, ply, mode }) => [x, y, ply, mode])]),
    ),
  };
}
