import { describe, expect, it } from 'vitest';
import { type BentArmPoint, bentArm } from '../../../../packages/core/src/fracture/index.js';
import {
  bentRelease,
  heldOpenRelease,
  leverExcess,
} from '../../../../packages/core/src/fracture/specimen/large-displacement.js';
import { rootBetween } from '../../../../packages/core/src/numeric/index.js';
import { expectNear } from './support.js';

/** Length 1, EI 1. */
const bent = (force: number, along = 0, length = 1): readonly BentArmPoint[] =>
  bentArm({ arm: { bendingStiffness: 1 }, length, force: { along, away: force } }).points;
const last = (points: readonly BentArmPoint[]) => points.at(-1) as BentArmPoint;

/** The force that lifts the end of an arm, each of two like ones, by half an opening. */
function opened(share: number): { force: number; lever: number } {
  const force = rootBetween((P) => last(bent(P)).y - share / 2, 1e-3, 10);
  return { force, lever: last(bent(force)).x };
}

describe('the size of large displacements, against the elastica', () => {
  it('of straight levers: the true one is shorter than the crack', () => {
    // At the root M = P x, and the release is M²/2EI of each arm: straight P² a²/2EI.
    for (const share of [0.2, 0.4, 0.6, 0.8, 1]) expectNear(leverExcess(share), 1 / opened(share).lever ** 2, 0.006);
    expect(leverExcess(0.4)).toBeCloseTo(1.05, 2);
    expect(leverExcess(0.8)).toBeCloseTo(1.24, 2);
  });

  it('of arms held open: straight 9 EI y²/2a⁴', () => {
    for (const share of [0.2, 0.4, 0.6, 0.8]) {
      const { force, lever } = opened(share);
      expectNear(heldOpenRelease(share), ((force * lever) / ((3 * share) / 2)) ** 2, 0.008);
    }
  });

  it('of a bent beam whose supports push square to it: a fifth at 0.1 of the span', () => {
    // Half a beam from its middle; the arm is as long as it takes to reach the support at 1.
    const half = (R: number): readonly BentArmPoint[] => {
      let [length, angle] = [1, 0];
      let points = bent(R);
      for (let round = 0; round < 40; round++) {
        points = bent(R, -R * Math.tan(angle), length);
        angle = last(points).angle;
        length /= last(points).x;
      }
      return points;
    };
    for (const share of [0.05, 0.1]) {
      const lift = 2 * share;
      const R = rootBetween((force) => last(half(force)).y - lift, 1.5 * lift, 3.6 * lift);
      const points = half(R);
      // The crack ends at half the half span from the support, so as far from the middle.
      const i = points.findIndex(({ distance }) => distance >= 0.5);
      const [a, b] = [points[i - 1] as BentArmPoint, points[i] as BentArmPoint];
      const moment = a.moment + ((0.5 - a.distance) / (b.distance - a.distance)) * (b.moment - a.moment);
      expectNear(bentRelease(share), (moment / (R / 2)) ** 2, 0.01);
    }
  });
});
