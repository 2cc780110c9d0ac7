import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { strengthRatio } from '../../../../packages/core/src/laminate/strength/index.js';
import { anyStrongPly, exposure } from './materials.js';

/**
 * Stresses at which two ways to break are 0.3 % apart, built from the printed criteria: the greater one must be named.
 */
const near = 0.997;
const sides = [
  [1, near],
  [near, 1],
] as const;
const signs = [1, -1] as const;
const share = fc.double({ min: 0.1, max: 0.9, noNaN: true });

describe('the mode of a stress that two ways nearly share', () => {
  it('is that of the greater share of a strength, for maximum stress', () => {
    fc.assert(
      fc.property(anyStrongPly, (ply) => {
        const { Xt, Xc, Yt, Yc, S } = ply.strengths;
        const mode = (...stress: [number, number, number]) => strengthRatio(ply, stress, 'maxStress').modeKey;
        for (const [f, g] of sides) {
          const fibre = f > g;
          for (const sign of signs) {
            const [X, Y] = sign > 0 ? [Xt, Yt] : [-Xc, -Yc];
            const [along, across] =
              sign > 0 ? ['fibreTension', 'transverseTension'] : ['fibreCompression', 'transverseCompression'];
            expect(mode(f * X, g * Y, 0)).toBe(fibre ? along : across);
            expect(mode(f * X, 0, sign * g * S)).toBe(fibre ? along : 'shear');
            expect(mode(0, f * Y, sign * g * S)).toBe(fibre ? across : 'shear');
          }
        }
      }),
    );
  });

  it('is that of the greater share of a limit strain, for maximum strain', () => {
    fc.assert(
      fc.property(anyStrongPly, (ply) => {
        const { Xt, Xc, Yt, Yc } = ply.strengths;
        const nu21 = (ply.nu12 * ply.E2) / ply.E1;
        for (const [f, g] of sides) {
          for (const [X, Y, along, across] of [
            [Xt, Yt, 'fibreTension', 'transverseTension'],
            [-Xc, -Yc, 'fibreCompression', 'transverseCompression'],
          ] as const) {
            // E1 ε1 = s1 - nu12 s2 and E2 ε2 = s2 - nu21 s1, solved for the stresses.
            const [p, q] = [f * X, g * Y];
            const room = 1 - ply.nu12 * nu21;
            const stress = [(p + ply.nu12 * q) / room, (q + nu21 * p) / room, 0] as const;
            expect(strengthRatio(ply, stress, 'maxStrain').modeKey).toBe(f > g ? along : across);
          }
        }
      }),
    );
  });

  it('is that of the greater polynomial of Hashin, with shear in both', () => {
    fc.assert(
      fc.property(anyStrongPly, share, share, (ply, t, alpha) => {
        const { Xt, Xc, Yt, Yc, S } = ply.strengths;
        const ST = 0.4 * Yc;
        const shear = t * t;
        for (const [F, G] of sides) {
          const along = [
            { a: Xt * Math.sqrt(F - alpha * shear), key: 'fibreTension' },
            { a: -Xc * Math.sqrt(F), key: 'fibreCompression' },
          ];
          // (b/2ST)² + ((Yc/2ST)² - 1) b/Yc + shear = G, its negative root.
          const [A, B, C] = [1 / (4 * ST * ST), Yc / (4 * ST * ST) - 1 / Yc, shear - G];
          const across = [
            { b: Yt * Math.sqrt(G - shear), key: 'matrixTension' },
            { b: (-B - Math.sqrt(B * B - 4 * A * C)) / (2 * A), key: 'matrixCompression' },
          ];
          for (const one of along) {
            for (const other of across) {
              const { modeKey } = strengthRatio(ply, [one.a, other.b, t * S], 'hashin', {
                transverseShearStrength: ST,
                alpha,
              });
              expect(modeKey).toBe(F > G ? one.key : other.key);
            }
          }
        }
      }),
    );
  });

  it('is that of the greater effort of Puck, in each of its modes', () => {
    fc.assert(
      fc.property(anyStrongPly, fc.double({ min: 1, max: 179, noNaN: true }), (ply, degrees) => {
        const { Xt, Xc, Yt, Yc, S } = ply.strengths;
        const [cos, sin] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
        const direction = [0, cos >= 0 ? Yt * cos : Yc * cos, S * sin] as const;
        // The effort between fibres is a multiple of the stress.
        const by = 1 / exposure('puck', direction, ply);
        for (const [f, g] of sides) {
          for (const [a, along] of [
            [f * Xt, 'fibreTension'],
            [-f * Xc, 'fibreCompression'],
          ] as const) {
            const { modeKey } = strengthRatio(ply, [a, g * by * direction[1], g * by * direction[2]], 'puck');
            if (f > g) expect(modeKey).toBe(along);
            else expect(modeKey).toMatch(cos >= 0 ? /^puckA$/ : /^puck[BC]$/);
          }
        }
      }),
    );
  });

  it('is that of the matrix at a tie: the fibres are held to be whole', () => {
    fc.assert(
      fc.property(anyStrongPly, (ply) => {
        const { Xt, Yt } = ply.strengths;
        expect(strengthRatio(ply, [Xt, Yt, 0], 'maxStress').modeKey).toBe('transverseTension');
        expect(strengthRatio(ply, [Xt, Yt, 0], 'hashin').modeKey).toBe('matrixTension');
        expect(strengthRatio(ply, [Xt, Yt, 0], 'puck').modeKey).toBe('puckA');
      }),
    );
  });
});
