import { describe, expect, it } from 'vitest';
import type { PeelEquilibrium } from '../../../packages/core/src/fracture/peel-case.js';
import { preparePeel } from '../../../packages/core/src/fracture/peel-specimen.js';
import { equilibrium } from '../../../packages/core/src/fracture/peel-state.js';
import { untouched } from '../../../packages/core/src/fracture/row-stages.js';
import { arm, coupon, rowsOf } from './peel-support.js';

/** Two elastic springs behind the front; their curves are straight, so that only the mesh errs. */
const springs = rowsOf(2, 0.04, 0.006, {
  curve: { opening: [0, 0.05], force: [0, 50] },
  failure: 'threadAtCrack',
});

/** The front just about to move, on a mesh of some points to a bending length. */
function about(arms: readonly [ReturnType<typeof arm>, ReturnType<typeof arm>], fineness: number): PeelEquilibrium {
  const { peel, units } = preparePeel(coupon({ arms, crackLength: 0.03, rows: springs }));
  const fine = { ...peel, fineness };
  const history = { memory: springs.map(() => untouched), start: springs.map(() => 0) };
  let state: PeelEquilibrium | undefined;
  // Twice at the end: points are laid for the load of the state before.
  for (const root of [1e-4, 0.1, 0.25, 0.5, 0.75, 1, 1, 1]) {
    state = equilibrium(fine, history, { length: 0.05 / units.length, release: root ** 2 }, state);
  }
  return state ?? expect.fail('no equilibrium');
}

describe('the mesh of a peel', () => {
  it.each([
    ['alike', [arm(), arm()]],
    ['unlike', [arm(), arm(0.8e-3)]],
  ] as const)(
    'of arms %s tends to order 4 in load and displacement, with 5e-6 left at three points to a bending length',
    (_, arms) => {
      const exact = about(arms, 96);
      for (const of of ['load', 'displacement'] as const) {
        const errors = [3, 6, 12].map((fineness) => Math.abs(about(arms, fineness)[of] / exact[of] - 1));
        expect(errors[0]!, of).toBeLessThan(1e-5);
        const order = Math.log2(errors[0]! / errors[2]!) / 2;
        expect(order, of).toBeGreaterThan(3.4);
      }
    },
  );
});
