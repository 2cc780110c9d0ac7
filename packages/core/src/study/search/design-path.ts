import type { DesignInputs, InputChange } from '../../design/index.js';
import { evaluateVariant } from '../evaluate.js';
import type { Evaluator } from './evaluator.js';

/** Computes candidates as whole designs, one by one. */
export function designEvaluator(
  inputs: DesignInputs,
  genes: number,
  changesOf: (genome: Int32Array) => readonly InputChange[],
  quantities: readonly string[],
): Evaluator {
  return {
    path: 'design',
    evaluate(genomes, count, values, computed) {
      let reason: string | undefined;
      for (let k = 0; k < count; k++) {
        const changes = changesOf(genomes.subarray(k * genes, (k + 1) * genes));
        const found = evaluateVariant(inputs, changes, { quantities });
        computed[k] = 'values' in found ? 1 : 0;
        if ('values' in found) values.set(found.values, k * quantities.length);
        else reason ??= found.problems[0]?.message;
      }
      return reason;
    },
  };
}
