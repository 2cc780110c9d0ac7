import {
  type Response,
  respond,
  type Sandwich,
  type ShearStressDistribution,
  solveLoad,
} from '../../laminate/index.js';
import { SelvageError } from '../../problem/index.js';
import { type Note, type SourceKey, uniqueNotes, uniqueSources } from '../../provenance/index.js';
import { defined } from '../assemble/constituents.js';
import { placed } from '../assemble/context.js';
import type { LaminateModel, LoadModel } from '../model.js';
import { type DesignSource, locate, parseSource } from '../source.js';
import { loadOf, strengthOptionsOf } from './load-of.js';
import { loadResidual, type Residual } from './load-residual.js';
import { loadedSandwich, loadedSandwichData } from './load-sandwich.js';
import { interlaminarShearData, interlaminarShearOf } from './load-shear.js';
import { type LoadStrength, loadStrength } from './load-strength.js';
import { envelopeData, failureData, pliesData, progressiveData, residualData } from './load-strength-data.js';

/** What a load case does to its laminate. */
export interface LoadResult extends LoadStrength {
  readonly model: LoadModel;
  readonly laminate: LaminateModel;
  readonly response: Response;
  /** Where there is heat or moisture. */
  readonly residual?: Residual;
  /** Under the shear forces of the load case, where it has them. */
  readonly interlaminarShear?: ShearStressDistribution;
  /** Where the laminate is a sandwich. */
  readonly sandwich?: Sandwich;
}

/**
 * The response of a laminate to one load case of the design.
 * @throws SelvageError with the place of the load case: `contradiction`, `not-computable`
 */
export function loadResult(model: LoadModel, laminate: LaminateModel, source: DesignSource): LoadResult {
  const stack = laminate.laminate;
  const load = loadOf(model);
  try {
    return placed(['loads', model.name], () => {
      const solved = solveLoad(stack, load);
      const strength = loadStrength(model, stack, load, solved);
      return {
        model,
        laminate,
        response: solved.residual === undefined ? solved.mechanical : respond(stack, load),
        ...strength,
        ...defined({
          residual: loadResidual(stack, load, solved, strength.failures, strengthOptionsOf(model)),
          interlaminarShear: interlaminarShearOf(model, stack),
          sandwich: loadedSandwich(model, load, stack),
        }),
      };
    });
  } catch (error) {
    if (!(error instanceof SelvageError)) throw error;
    throw new SelvageError(locate(error.problems, parseSource(source.text)));
  }
}

/** Everything that a load case says about one laminate, as parts with notes and sources. */
const parts = ({ response, failures, residual, progressive, envelope, interlaminarShear, sandwich }: LoadResult) =>
  [
    response,
    ...failures,
    residual?.curedShape,
    progressive,
    ...(envelope?.envelopes ?? []),
    interlaminarShear,
    sandwich,
  ].filter((part) => part !== undefined);

/** What a reader must know about the results of a load case. */
export const loadNotes = (result: LoadResult): Note[] =>
  uniqueNotes([...parts(result).flatMap(({ notes }) => notes), ...result.strengthNotes]);

/** Sources of every model that a load case used, and of what its notes say. */
export const loadSources = (result: LoadResult): SourceKey[] =>
  uniqueSources(
    ...parts(result).map(({ sources }) => sources),
    loadNotes(result).flatMap(({ source }) => source ?? []),
  );

/** The load's part of the JSON document. */
export function loadData(result: LoadResult): Record<string, unknown> {
  const { model, response, failures, residual, progressive, envelope, interlaminarShear, sandwich } = result;
  const { temperatureChange, temperatureGradient, moisture } = model;
  return {
    laminate: model.laminate,
    N: response.N,
    M: response.M,
    ...defined({ temperatureChange, temperatureGradient, moisture }),
    strain: response.strain,
    curvature: response.curvature,
    plies: pliesData(response),
    failure: failureData(failures),
    ...(progressive === undefined ? {} : { progressive: progressiveData(progressive) }),
    ...(envelope === undefined ? {} : { envelope: envelopeData(envelope) }),
    ...(residual === undefined ? {} : residualData(residual)),
    ...(model.shear === undefined ? {} : { shear: model.shear }),
    ...(interlaminarShear === undefined ? {} : { interlaminarShear: interlaminarShearData(interlaminarShear) }),
    ...(sandwich === undefined ? {} : { sandwich: loadedSandwichData(sandwich) }),
    notes: loadNotes(result),
    sources: loadSources(result),
  };
}
