import {
  type CuredShape,
  curedShape,
  failureCriteria,
  failureUnder,
  type Laminate,
  type LaminateFailure,
  type Load,
  type Response,
  respond,
  type SolvedLoad,
} from '../../laminate/index.js';
import { isHeld, surroundingsOf } from './load-of.js';

/** What heat and moisture do by themselves. */
export interface Residual {
  /** With prescribed deformations held at zero. */
  readonly response: Response;
  /** By how much heat and moisture may be multiplied until they alone break a ply; empty without strengths. */
  readonly failures: readonly LaminateFailure[];
  /** The shape of the laminate when nothing holds it. */
  readonly curedShape: CuredShape;
}

/** Stress, strength and shape of heat and moisture alone; undefined when there is neither. */
export function loadResidual(
  laminate: Laminate,
  load: Load,
  { residual }: SolvedLoad,
  judged: readonly LaminateFailure[],
  options: Parameters<typeof failureUnder>[3],
): Residual | undefined {
  if (residual === undefined) return undefined;
  const free = isHeld(load) ? respond(laminate, surroundingsOf(load)) : residual;
  const alone = { mechanical: residual, residual: undefined };
  const criteria = failureCriteria.filter((criterion) => judged.some((one) => one.criterion === criterion));
  return {
    response: residual,
    failures: criteria.map((criterion) => failureUnder(laminate, alone, criterion, options)),
    curedShape: curedShape(free, laminate.thickness),
  };
}
