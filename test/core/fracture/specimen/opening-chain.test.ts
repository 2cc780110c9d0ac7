import { describe, expect, it } from 'vitest';
import type { Chain } from '../../../../packages/core/src/fracture/specimen/chain.js';
import { openingChain } from '../../../../packages/core/src/fracture/specimen/opening-chain.js';
import { openingPair } from '../../../../packages/core/src/fracture/specimen/opening-pair.js';
import { factorBanded, solveBanded } from '../../../../packages/core/src/numeric/index.js';
import { armOf, cloth, expectNear, mm } from './support.js';

const arm = armOf(cloth);
const rows = [20, 24, 31, 40, 41, 52, 60, 75].map((place) => place * mm);
const chain = (): Chain => openingChain(openingPair([arm, arm]), 20 * mm, 100 * mm, rows);

/** Openings of the rows and of the load line under 10 N, springs beside some rows. */
function openings(
  of: Chain,
  crackLength: number,
  spent: number,
): { readonly load: number; readonly rows: Float64Array } {
  const { unknowns, loaded, first, next } = of.lay(crackLength, spent);
  const K = of.K.slice();
  for (let j = Math.max(first, 3); j < rows.length; j++) K[4 * of.row[j]!] = K[4 * of.row[j]!]! + 1e5;
  expect(factorBanded(K, unknowns, 3)).toBe(0);
  const u = new Float64Array(unknowns + 3);
  u[loaded] = 10;
  solveBanded(K, unknowns, 3, u);
  const found = Float64Array.from(rows, (_, j) => (j < first ? 0 : u[of.row[j]!]!));
  of.fill(found, 10, u[loaded]!, u[next]!);
  return { load: u[loaded]!, rows: found };
}

describe('the chain of opening arms', () => {
  it('laid anew for a crack that grows, jumps and goes back is the one laid for that crack alone', () => {
    const kept = chain();
    for (const [a, spent] of [
      [30, 0],
      [30.5, 0],
      [40, 1],
      [40.2, 1],
      [39.7, 0],
      [66, 3],
      [66, 2],
      [25, 0],
      [80, 3],
    ] as const) {
      const fresh = chain();
      const one = kept.lay(a * mm, spent);
      const other = fresh.lay(a * mm, spent);
      expect(one).toEqual(other);
      expect(kept.row.slice(spent)).toEqual(fresh.row.slice(spent));
      const end = 4 * one.unknowns;
      expect(kept.load).toEqual(fresh.load);
      kept.K.subarray(0, end).forEach((value, i) => {
        expect(Math.abs(value - fresh.K[i]!)).toBeLessThanOrEqual(1e-12 * Math.abs(value));
      });
    }
  });

  it('without the points of rows that hold nothing opens the same there', () => {
    for (const a of [36, 58]) {
      const whole = openings(chain(), a * mm, 0);
      for (const spent of [1, 2, 3]) {
        const less = openings(chain(), a * mm, spent);
        expectNear(less.load, whole.load, 1e-9);
        for (let j = 0; j < 4; j++) expectNear(less.rows[j]!, whole.rows[j]!, 1e-8);
      }
    }
  });
});
