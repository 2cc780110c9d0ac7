import type { RangeBlock } from './blocks.js';
import type { SearchProblem } from './problem.js';
import { remainingCandidates, type SearchState } from './state.js';

/** Candidates of a block: enough work that handing it out costs nothing beside it, little enough that a stop is soon. */
const blockSize = { kernel: 16_384, design: 32 };

/** The stretches that are left, in blocks. */
export function* rangeBlocks({ evaluator }: SearchProblem, state: SearchState): Generator<RangeBlock> {
  const size = blockSize[evaluator.path];
  for (const { from, to } of remainingCandidates(state)) {
    for (let at = from; at < to; at += size) yield { from: at, to: Math.min(to, at + size) };
  }
}

/** The genomes of a generation in blocks, in their order. */
export function genomeBlocks({ evaluator, layout }: SearchProblem, genomes: Int32Array): readonly Int32Array[] {
  const size = (evaluator.path === 'kernel' ? 1024 : 8) * layout.genes;
  return Array.from({ length: Math.ceil(genomes.length / size) }, (_, i) => genomes.slice(i * size, (i + 1) * size));
}
