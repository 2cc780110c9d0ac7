import {
  assemble,
  compute,
  type Design,
  type DesignInputs,
  type InputChange,
  judgeTargets,
  type Model,
  numbersAt,
  quantityAt,
  type TargetResult,
  variant,
} from '../design/index.js';
import { type Problem, SelvageError } from '../problem/index.js';

/** What a variant of a design comes to: a number for each quantity asked for, or why there is none. */
export type Evaluation = Evaluated | { readonly problems: readonly Problem[] };

/** The quantities and targets of one variant of a design. */
export interface Evaluated {
  /** SI, in the order of the quantities. */
  readonly values: readonly number[];
  readonly targets: readonly TargetResult[];
}

/** Parts of a design that a study asks for. */
export interface Wanted {
  /** Dotted paths of numbers in the JSON report. */
  readonly quantities: readonly string[];
  /** Whether the targets are judged too; their parts of the design are then computed as well. */
  readonly targets?: boolean;
}

/** Numbers of a design that was read. @throws SelvageError what is wrong with the design, with a quantity or with a target */
export function evaluateDesign(design: Design, { quantities, targets = false }: Wanted): Evaluated {
  const model = assemble(design);
  const judged = targets ? model.targets : [];
  const data = numbersAt(model, [...quantities, ...judged.map(({ quantity }) => quantity)]);
  return {
    values: quantities.map((quantity) => numberOf(model, data, quantity)),
    targets: judgeTargets(judged, data, model),
  };
}

/** A number of a part of the document; one that is not there is looked for in the whole, which knows the names that there are. */
function numberOf(model: Model, data: unknown, quantity: string): number {
  try {
    return quantityAt(data, quantity).value;
  } catch (error) {
    if (!(error instanceof SelvageError)) throw error;
    return quantityAt(compute(model).data, quantity).value;
  }
}

/** Numbers of a variant of a design; a variant that cannot be computed says why, for a study goes on without it. */
export function evaluateVariant(inputs: DesignInputs, changes: readonly InputChange[], wanted: Wanted): Evaluation {
  try {
    return evaluateDesign(variant(inputs, changes), wanted);
  } catch (error) {
    if (!(error instanceof SelvageError)) throw error;
    return { problems: error.problems };
  }
}
