import fc from 'fast-check';
import { Matrix as Dense, inverse } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import {
  constantsFromStiffness,
  reducedStiffness,
  stiffnessInvariants,
} from '../../../packages/core/src/material/index.js';
import { expectClose, turned } from './phases.js';

// The contract's minimal ply: a classic carbon set.
const constants = { E1: 181e9, E2: 10.3e9, G12: 7.17e9, nu12: 0.28 };
const anyConstants = fc.record({
  E1: fc.double({ min: 5e9, max: 300e9, noNaN: true }),
  E2: fc.double({ min: 1e9, max: 100e9, noNaN: true }),
  G12: fc.double({ min: 0.5e9, max: 50e9, noNaN: true }),
  nu12: fc.double({ min: 0.01, max: 0.2, noNaN: true }),
});

describe('plane-stress stiffness of a ply', () => {
  it('is the inverse of the compliance', () => {
    fc.assert(
      fc.property(anyConstants, ({ E1, E2, G12, nu12 }) => {
        const compliance = [
          [1 / E1, -nu12 / E1, 0],
          [-nu12 / E1, 1 / E2, 0],
          [0, 0, 1 / G12],
        ];
        const expected = inverse(new Dense(compliance));
        const [Q11, Q12, Q22, Q66] = reducedStiffness({ E1, E2, G12, nu12 });
        expectClose(Q11, expected.get(0, 0), 1e-10);
        expectClose(Q12, expected.get(0, 1), 1e-10);
        expectClose(Q22, expected.get(1, 1), 1e-10);
        expectClose(Q66, expected.get(2, 2), 1e-10);
      }),
    );
  });

  it('gives back the constants it was made from', () => {
    fc.assert(
      fc.property(anyConstants, (given) => {
        const back = constantsFromStiffness(reducedStiffness(given));
        for (const key of ['E1', 'E2', 'G12', 'nu12'] as const) expectClose(back[key], given[key], 1e-11);
      }),
    );
  });
});

describe('stiffness invariants', () => {
  const Q = reducedStiffness(constants);
  const { U1, U2, U3, U4, U5 } = stiffnessInvariants(Q);

  it('reproduce the stiffness at any angle', () => {
    fc.assert(
      fc.property(fc.double({ min: -180, max: 180, noNaN: true }), (angle) => {
        const two = Math.cos((2 * angle * Math.PI) / 180);
        const four = Math.cos((4 * angle * Math.PI) / 180);
        const Qbar = turned(Q, angle);
        const scale = 1e-12 * U1;
        expect(Math.abs(U1 + U2 * two + U3 * four - (Qbar[0]?.[0] ?? Number.NaN))).toBeLessThan(scale);
        expect(Math.abs(U4 - U3 * four - (Qbar[0]?.[1] ?? Number.NaN))).toBeLessThan(scale);
        expect(Math.abs(U5 - U3 * four - (Qbar[2]?.[2] ?? Number.NaN))).toBeLessThan(scale);
      }),
    );
  });

  it('have U5 = (U1 - U4)/2', () => {
    expectClose(U5, (U1 - U4) / 2);
  });
});
