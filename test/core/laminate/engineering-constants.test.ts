import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  engineeringConstants,
  laminate,
  offAxisConstants,
  type Stiffness,
  stiffness,
} from '../../../packages/core/src/laminate/index.js';
import { anyLaminate, evenly, expectNear, graphite, plyOf, problemCode, stackOf, turned } from './plies.js';

const list = (c: object): number[] => Object.values(c);

describe('engineering constants', () => {
  it('of a 60 degree lamina are the published ones (Kaw 2006, sec. 2.7, recalled, not re-read; clt.json CLT-03)', () => {
    const { inPlane, flexural } = engineeringConstants(stiffness(stackOf(graphite, '[60]', 1e-3)));
    expect(inPlane.Ex / 12.4181224337e9).toBeCloseTo(1, 9);
    expect(inPlane.nuxy / 0.0978260362901).toBeCloseTo(1, 9);
    expect(inPlane.Ey / 28.7801147545e9).toBeCloseTo(1, 9);
    expect(inPlane.Gxy / 8.7606235586e9).toBeCloseTo(1, 9);
    // The book's m_x = -S16 E1 and m_y = -S26 E1; here the shear strain per axial strain.
    expect(((-inPlane.etaxyx / inPlane.Ex) * 181e9) / 5.85311368164).toBeCloseTo(1, 9);
    expect(((-inPlane.etaxyy / inPlane.Ey) * 181e9) / 8.49936558302).toBeCloseTo(1, 9);
    expectNear(list(flexural).slice(0, 3), list(inPlane).slice(0, 3), 1e-12);
    expectNear(list(flexural).slice(3), list(inPlane).slice(3), 1e-12);
  });

  it('free and restrained are the same where B is zero', () => {
    const c = engineeringConstants(stiffness(stackOf(graphite, '[0/30/90]s', 0.2e-3)));
    expectNear(list(c.inPlaneRestrained), list(c.inPlane), 1e-12);
    expectNear(list(c.flexuralRestrained), list(c.flexural), 1e-12);
  });

  it('free to bend are softer than restrained where B is not zero', () => {
    const c = engineeringConstants(stiffness(stackOf(graphite, '[0/90]', 0.2e-3)));
    expect(c.inPlane.Ex).toBeLessThan(c.inPlaneRestrained.Ex);
    expect(c.flexural.Ex).toBeLessThan(c.flexuralRestrained.Ex);
  });

  it('restrained of a free [0/90] are (Q11 + Q22)/2 less the Poisson part', () => {
    // A of [0/90] is its mean stiffness, so Ex = M - Q12²/M with M = (Q11 + Q22)/2.
    const [Q11, Q12, Q22] = [181811138844, 2896924444.35, 10346158729.8]; // clt.json CLT-01
    const M = (Q11 + Q22) / 2;
    const { inPlaneRestrained } = engineeringConstants(stiffness(stackOf(graphite, '[0/90]', 0.2e-3)));
    expect(inPlaneRestrained.Ex / (M - Q12 ** 2 / M)).toBeCloseTo(1, 10);
  });

  it('refuse a stiffness that is not positive definite', () => {
    const s = stiffness(stackOf(graphite, '[0]', 1e-3));
    const broken: Stiffness = { ...s, A: [[-1, 0, 0], s.A[1], s.A[2]] };
    expect(problemCode(() => engineeringConstants(broken))).toBe('not-admissible');
  });
});

describe('constants along a direction', () => {
  it('are those of the laminate turned the other way', () => {
    fc.assert(
      fc.property(anyLaminate, evenly(-180, 180), (each, angle) => {
        const along = offAxisConstants(stiffness(each), angle);
        const { inPlane } = engineeringConstants(stiffness(turned(each, -angle)));
        expectNear(list(along).slice(0, 3), list(inPlane).slice(0, 3), 1e-9);
        expectNear(list(along).slice(3), list(inPlane).slice(3), 1e-9, 1);
      }),
      { numRuns: 50 },
    );
  });

  it('along the fibre of a 30 degree ply are E1, E2, G12 and nu12 without shear coupling', () => {
    const s = stiffness(laminate([plyOf(graphite, 30, 1e-3)]));
    const { Ex, Ey, Gxy, nuxy, etaxyx } = offAxisConstants(s, 30);
    expectNear([Ex, Ey, Gxy], [graphite.E1, graphite.E2, graphite.G12], 1e-12);
    expect(nuxy).toBeCloseTo(0.28, 12);
    expect(etaxyx).toBeCloseTo(0, 12);
  });

  it('need a finite direction', () => {
    const s = stiffness(stackOf(graphite, '[0]', 1e-3));
    expect(problemCode(() => offAxisConstants(s, Number.NaN))).toBe('not-a-number');
  });
});
