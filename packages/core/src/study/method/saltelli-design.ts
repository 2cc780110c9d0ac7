import { uniformRandom } from '../../numeric/index.js';
import { demandSeed, demandWhole } from './check.js';
import type { Distribution } from './distributions.js';
import { mostInputs, sampleRows } from './sampled-model.js';

/** Most points of a design. */
const mostPoints = 10_000_000;

/** Points that a design of so many samples and inputs has. @throws out-of-range */
export function saltelliPoints(samples: number, inputs: number): number {
  demandWhole('the number of inputs', inputs, 1, mostInputs);
  demandWhole('samples', samples, 10, Math.floor(mostPoints / (inputs + 2)));
  return samples * (inputs + 2);
}

/**
 * The points at which a model of independent inputs is to be evaluated for its Sobol indices.
 *
 * Two independent tables of samples A and B, then for each input i the table A with column i from B: N (k + 2) rows in this order.
 *
 * @param samples N, whole, 10 or more
 * @param seed whole
 * @returns flat, row-major, k numbers per row
 * @throws out-of-range
 * @source Saltelli et al. 2010, section 3
 */
export function saltelliDesign(distributions: readonly Distribution[], samples: number, seed: number): Float64Array {
  const k = distributions.length;
  const points = saltelliPoints(samples, k);
  demandSeed(seed);
  const both = sampleRows(distributions, 2 * samples, uniformRandom(seed));
  const out = new Float64Array(points * k);
  out.set(both);
  const size = samples * k;
  for (let i = 0; i < k; i++) {
    const at = (2 + i) * size;
    out.copyWithin(at, 0, size);
    for (let p = i; p < size; p += k) out[at + p] = out[size + p] ?? 0;
  }
  return out;
}
