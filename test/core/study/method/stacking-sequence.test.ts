import { describe, expect, it } from 'vitest';
import { laminate, plateBuckling } from '../../../../packages/core/src/laminate/index.js';
import {
  type EvaluateGenomes,
  genomesFrom,
  nsga2Front,
  startNsga2,
  stepNsga2,
} from '../../../../packages/core/src/study/index.js';
import { plyOf } from '../../laminate/plies.js';
import { expectNear } from '../../stitch/support.js';

/*
 * Greatest buckling load of a simply supported plate: Le Riche and Haftka 1993, AIAA Journal 31(5), 951-956. Plate, material, stacks, load cases and
 * printed loads are recalled, not re-read. Print also limits strain and like plies on each other, which is left out here: the optimum to be found is
 * that of going through all 3^12 stacks.
 */
const inch = 0.0254;
const psi = 6894.757293168;
const [a, b, t] = [20 * inch, 5 * inch, 0.005 * inch];
const [E1, E2, G12, nu12] = [18.5e6 * psi, 1.89e6 * psi, 0.93e6 * psi, 0.3];
const ratios = [0.125, 0.25, 0.5];
/** Stacks of two plies from the outside in, 12 on either side of the middle: 0₂, ±45, 90₂. */
const angles = [
  [0, 0],
  [45, -45],
  [90, 90],
] as const;
const stacks = 12;
const counts = new Array<number>(stacks).fill(angles.length);

/** Q of a stack in axes of the plate: 11, 12, 22, 66. Those of +45 and -45 are equal. */
const stackQ = (() => {
  const rest = 1 - nu12 * nu12 * (E2 / E1);
  const [Q11, Q22, Q12, Q66] = [E1 / rest, E2 / rest, (nu12 * E2) / rest, G12];
  const [mean, half] = [(Q11 + Q22 + 2 * Q12) / 4, (Q11 + Q22 - 2 * Q12) / 4];
  return [
    [Q11, Q12, Q22, Q66],
    [mean + Q66, mean - Q66, mean + Q66, half],
    [Q22, Q12, Q11, Q66],
  ] as const;
})();

/** ∫ z² dz over the two places of a stack, one on either side of the middle. */
const place = Array.from({ length: stacks }, (_, k) => {
  const [outer, inner] = [(stacks - k) * 2 * t, (stacks - k - 1) * 2 * t];
  return (2 * (outer ** 3 - inner ** 3)) / 3;
});

/** Buckling load Nx of a specially orthotropic plate in N/m: π² [D11 (m/a)⁴ + 2 (D12 + 2 D66)(m/a)²(n/b)² + D22 (n/b)⁴]/[(m/a)² + r (n/b)²], the least. */
function bucklingLoad(genomes: Int32Array, at: number, ratio: number): number {
  let [D11, D12, D22, D66] = [0, 0, 0, 0];
  for (let k = 0; k < stacks; k++) {
    const Q = stackQ[genomes[at + k]!]!;
    D11 += Q[0] * place[k]!;
    D12 += Q[1] * place[k]!;
    D22 += Q[2] * place[k]!;
    D66 += Q[3] * place[k]!;
  }
  let least = Number.POSITIVE_INFINITY;
  for (let m = 1; m <= 10; m++) {
    for (let n = 1; n <= 3; n++) {
      const [x, y] = [(m / a) ** 2, (n / b) ** 2];
      const load = (Math.PI ** 2 * (D11 * x * x + 2 * (D12 + 2 * D66) * x * y + D22 * y * y)) / (x + ratio * y);
      if (load < least) least = load;
    }
  }
  return least;
}

const evaluateFor =
  (ratio: number): EvaluateGenomes =>
  (genomes, count, objectives) => {
    for (let i = 0; i < count; i++) objectives[i] = -bucklingLoad(genomes, i * stacks, ratio);
  };

/** The greatest load of all stacks. */
const optimum = (ratio: number): number => {
  const size = angles.length ** stacks;
  const genomes = genomesFrom(counts, 0, size);
  let most = 0;
  for (let i = 0; i < size; i++) most = Math.max(most, bucklingLoad(genomes, i * stacks, ratio));
  return most;
};

describe('the stacking sequence for the greatest buckling load', () => {
  it('is evaluated as the library evaluates a plate', () => {
    const genomes = Int32Array.from([1, 1, 1, 1, 1, 0, 0, 1, 0, 2, 2, 0, 2, 1, 0, 2, 1, 0, 2, 1, 0, 2, 1, 0]);
    for (const at of [0, 12]) {
      const half = Array.from(genomes.subarray(at, at + stacks)).flatMap((gene) => [...angles[gene]!]);
      const plies = [...half, ...half.toReversed()].map((angle) => plyOf({ E1, E2, G12, nu12 }, angle, t));
      for (const ratio of ratios) {
        const { thin } = plateBuckling(laminate(plies), { a, b }, { Nx: -1, Ny: -ratio });
        expectNear(thin.multiplier, bucklingLoad(genomes, at, ratio), 1e-10);
      }
    }
  });

  it.each([
    ['(±45)₅ 0₄ ±45 0₄ 90₂ 0₂', 0.125, '111110010020', 14659.58],
    ['(±45)₅ 0₄ 90₂ 0₄ ±45 0₂', 0.125, '111110020010', 14610.85],
    ['(±45)₂ 90₂ (±45)₃ 0₂ ±45 0₄ ±45 0₂', 0.25, '112111010010', 12743.45],
    ['±45 90₂ (±45)₄ 0₂ ±45 0₄ ±45 0₂', 0.25, '121111010010', 12725.26],
    ['90₂ (±45)₅ 0₂ ±45 0₄ ±45 0₂', 0.25, '211111010010', 12674.85],
    ['90₂ (±45)₂ 90₂ ±45 90₂ (±45)₆', 0.5, '211212111111', 9998.19],
  ] as const)('has the printed load with [%s]s and Ny/Nx = %d', (_, ratio, genes, load) => {
    const found = bucklingLoad(Int32Array.from(genes, Number), 0, ratio) / (psi * inch);
    // Printed to a hundredth of a pound per inch; the last row is cut off rather than rounded.
    expect(Math.abs(found - load)).toBeLessThan(0.01);
  });

  it.each(ratios)('is found by the search for Ny/Nx = %d, from several seeds', (ratio) => {
    const wanted = optimum(ratio);
    for (const seed of [1, 2, 3, 4, 5]) {
      let state = startNsga2(counts, 1, { population: 100, seed });
      const best = () => -(nsga2Front(state).objectives[0] ?? 0);
      // 20 000 are 3.8 % of all stacks; 2300 to 2800 are needed on average. Two stacks may bear the same load but for rounding.
      while (state.evaluations < 20_000 && best() < wanted * (1 - 1e-12)) state = stepNsga2(state, evaluateFor(ratio));
      expectNear(best(), wanted);
    }
  });
});
