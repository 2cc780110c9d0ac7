import { describe, expect, it } from 'vitest';
import { type Laminate, laminate, stiffness } from '../../../../packages/core/src/laminate/index.js';
import { cylindricalBending, shearStressDistribution } from '../../../../packages/core/src/laminate/shear/index.js';
import { graphite, plyOf } from '../plies.js';

const single = (angle: number): Laminate => laminate([plyOf({ ...graphite, G13: 7e9, G23: 3e9 }, angle, 1e-3)]);

/** The angle of a single ply, up to 5 degrees, at which a measure that grows with the angle has the value. */
function angleFor(value: number, measure: (stack: Laminate) => number): number {
  let [low, high] = [0, 5];
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (measure(single(middle)) > value) high = middle;
    else low = middle;
  }
  return high;
}

describe('the coupling of bending and twisting that is worth a note', () => {
  it('in a strip is one that would let it bend a hundredth more if it were free to twist', () => {
    const more = (stack: Laminate): number => {
      const { D } = stiffness(stack);
      const r = D[0][2]! ** 2 / (D[0][0]! * D[2][2]!);
      return r / (1 - r);
    };
    const notes = (value: number) =>
      cylindricalBending(single(angleFor(value, more)), { span: 0.1, pressure: 1 }).notes.length;
    expect([notes(0.00998), notes(0.01002)]).toEqual([0, 1]);
  });

  it('under shear forces is one with D16² of a hundredth of D11 D66, or D26² of D22 D66', () => {
    const share = (stack: Laminate): number => {
      const { D } = stiffness(stack);
      return Math.max(D[0][2]! ** 2 / D[0][0]!, D[1][2]! ** 2 / D[1][1]!) / D[2][2]!;
    };
    for (const load of [{ Vx: 1 }, { Vy: 1 }]) {
      const notes = (value: number) => shearStressDistribution(single(angleFor(value, share)), load).notes.length;
      expect([notes(0.00998), notes(0.01002)]).toEqual([0, 1]);
    }
  });
});
