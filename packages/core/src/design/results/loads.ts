import { type Load, type Response, respond } from '../../laminate/index.js';
import { SelvageError } from '../../problem/index.js';
import { defined } from '../assemble/constituents.js';
import type { LaminateModel, LoadModel } from '../model.js';
import { type DesignSource, locate, parseSource } from '../source.js';

export interface LoadResult {
  readonly model: LoadModel;
  readonly response: Response;
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
  try {
    return { model, response: respond(laminate.laminate, loadOf(model)) };
  } catch (error) {
    if (!(error instanceof SelvageError)) throw error;
    const problems = error.problems.map((problem) => ({ ...problem, path: ['loads', model.name], atKey: true }));
    throw new SelvageError(locate(problems, parseSource(source.text)));
  }
}

/** The load's part of the JSON document. */
export function loadData({ model, response }: LoadResult): Record<string, unknown> {
  return {
    laminate: model.laminate,
    N: response.N,
    M: response.M,
    ...(model.temperatureChange === undefined ? {} : { temperatureChange: model.temperatureChange }),
    strain: response.strain,
    curvature: response.curvature,
    plies: response.plies.map(({ name, angle, top, middle, bottom }) => ({ name, angle, top, middle, bottom })),
    notes: response.notes,
    sources: response.sources,
  };
}
