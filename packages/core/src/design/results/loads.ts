import {
  type Criterion,
  failure,
  failureCriteria,
  type LaminateFailure,
  type Load,
  type Response,
  respond,
} from '../../laminate/index.js';
import { SelvageError } from '../../problem/index.js';
import { uniqueNotes, uniqueSources } from '../../provenance/index.js';
import { defined } from '../assemble/constituents.js';
import { placed } from '../assemble/context.js';
import type { LaminateModel, LoadModel } from '../model.js';
import { type DesignSource, locate, parseSource } from '../source.js';

export interface LoadResult {
  readonly model: LoadModel;
  readonly response: Response;
  /** First-ply failure by every criterion; empty when a ply other than a core has no strengths. */
  readonly failures: readonly LaminateFailure[];
}

/** The load as the laminate floor takes it. */
function loadOf(model: LoadModel): Load {
  const { N, M, strain, curvature, temperatureChange, temperatureGradient, moisture } = model;
  return defined({ N, M, strain, curvature, temperatureChange, temperatureGradient, moisture }) as Load;
}

/**
 * The response of a laminate to one load case of the design.
 * @throws SelvageError with the place of the load case: `contradiction`, `not-computable`
 */
export function loadResult(model: LoadModel, laminate: LaminateModel, source: DesignSource): LoadResult {
  const { plies } = laminate.laminate;
  const strong = plies.some((ply) => ply.strengths !== undefined);
  const known = strong && plies.every((ply) => ply.core === true || ply.strengths !== undefined);
  const load = loadOf(model);
  try {
    return placed(['loads', model.name], () => ({
      model,
      response: respond(laminate.laminate, load),
      failures: known ? failureCriteria.map((criterion) => failure(laminate.laminate, load, criterion)) : [],
    }));
  } catch (error) {
    if (!(error instanceof SelvageError)) throw error;
    throw new SelvageError(locate(error.problems, parseSource(source.text)));
  }
}

/** Ratio, ply (from 1 at the tool side), face and mode by criterion; null where the load breaks nothing. */
function failureData(failures: readonly LaminateFailure[]): Partial<Record<Criterion, unknown>> {
  return Object.fromEntries(
    failures.map(({ criterion, ratio, ply, face, mode, withoutResidual }) => [
      criterion,
      {
        ratio: ratio ?? null,
        ply: ply ?? null,
        face: face ?? null,
        mode,
        ...(withoutResidual === undefined ? {} : { ratioWithoutResidual: withoutResidual.ratio ?? null }),
      },
    ]),
  );
}

/** The load's part of the JSON document. */
export function loadData({ model, response, failures }: LoadResult): Record<string, unknown> {
  return {
    laminate: model.laminate,
    N: response.N,
    M: response.M,
    ...(model.temperatureChange === undefined ? {} : { temperatureChange: model.temperatureChange }),
    strain: response.strain,
    curvature: response.curvature,
    plies: response.plies.map(({ name, angle, top, middle, bottom }) => ({ name, angle, top, middle, bottom })),
    failure: failureData(failures),
    notes: uniqueNotes([...response.notes, ...failures.flatMap((one) => one.notes)]),
    sources: uniqueSources(response.sources, ...failures.map((one) => one.sources)),
  };
}
