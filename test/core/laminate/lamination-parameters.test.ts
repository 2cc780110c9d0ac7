import { describe, expect, it } from 'vitest';
import { laminate, laminationParameters } from '../../../packages/core/src/laminate/index.js';
import { expectNear, graphite, plyOf, stackOf } from './plies.js';

const of = (code: string) => laminationParameters(stackOf(graphite, code, 0.2e-3));

describe('lamination parameters', () => {
  // Tsai & Hahn 1980: the parameters are cos 2θ, sin 2θ, cos 4θ, sin 4θ averaged; these corners follow by hand (I12).
  it('of [0], [90], [±45] and pi/n stacks are the corners of their domain', () => {
    expectNear(of('[0]').A, [1, 0, 1, 0], 1e-15);
    expectNear(of('[90]').A, [-1, 0, 1, 0], 1e-15);
    expectNear(of('[±45]').A, [0, 0, -1, 0], 1e-15);
    expectNear(of('[0/60/-60]').A, [0, 0, 0, 0], 1e-15, 1);
    expectNear(of('[0/±45/90]').A, [0, 0, 0, 0], 1e-15, 1);
  });

  it('of [0/90]s in bending are 3/4, 0, 1, 0', () => {
    expectNear(of('[0/90]s').D, [0.75, 0, 1, 0], 1e-14);
    expectNear(of('[0/90]s').B, [0, 0, 0, 0], 0, 1);
  });

  it('of [90/0] in coupling are (4/h²) (h²/8)(1 - -1) = 1', () => {
    expectNear(of('[90/0]').B, [1, 0, 0, 0], 1e-14);
  });

  it('warn where the plies are of different materials', () => {
    const mixed = laminate([plyOf(graphite, 0, 1e-3), plyOf({ ...graphite, E1: 40e9 }, 0, 1e-3)]);
    expect(laminationParameters(mixed).notes.map((note) => note.level)).toEqual(['warning']);
    expect(of('[0/90]').notes).toEqual([]);
  });
});
