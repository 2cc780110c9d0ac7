import type { Working } from '../../working/index.js';
import type { Load } from '../load.js';
import { type Response, respond } from '../respond.js';
import type { Laminate } from '../types.js';
import { splitLoad } from './split-load.js';

/** The responses that a strength calculation needs: solved once, judged by any number of criteria. */
export interface SolvedLoad {
  /** To forces and prescribed deformations alone: what the strength ratio multiplies. */
  readonly mechanical: Response;
  /** To heat and moisture alone, prescribed deformations held at zero; undefined when there is neither. */
  readonly residual: Response | undefined;
}

/**
 * Both parts of the response of a laminate to a load; they add up to the response to the whole.
 * @param working takes down the response to heat and moisture alone in the part `residual`, when given
 * @throws as {@link respond}
 */
export function solveLoad(laminate: Laminate, load: Load, working?: Working): SolvedLoad {
  const { mechanical, residual } = splitLoad(load);
  return {
    mechanical: respond(laminate, mechanical),
    residual: residual === undefined ? undefined : respond(laminate, residual, working?.part('residual')),
  };
}
