import type { DesignInputs, InputChange } from '../../design/index.js';
import { type Evaluation, evaluateVariant } from '../evaluate.js';
import type { Evaluator } from './evaluator.js';

/** Candidates remembered, so that a breeding that comes back to one does not compute it again. */
const mostRemembered = 20_000;

/** Computes candidates as whole designs, one by one. */
export function designEvaluator(
  inputs: DesignInputs,
  genes: number,
  changesOf: (genome: Int32Array) => readonly InputChange[],
  quantities: readonly string[],
): Evaluator {
  const remembered = new Map<string, Evaluation>();
  const evaluated = (genome: Int32Array): Evaluation => {
    const key = genome.join();
    const before = remembered.get(key);
    if (before !== undefined) return before;
    const found = evaluateVariant(inputs, changesOf(genome), { quantities });
    if (remembered.size < mostRemembered) remembered.set(key, found);
    return found;
  };
  return {
    path: 'design',
    evaluate(genomes, count, values, computed) {
      let reason: string | undefined;
      for (let k = 0; k < count; k++) {
        const found = evaluated(genomes.subarray(k * genes, (k + 1) * genes));
        computed[k] = 'values' in found ? 1 : 0;
        if ('values' in found) values.set(found.values, k * quantities.length);
        else reason ??= found.problems[0]?.message;
      }
      return reason;
    },
  };
}
