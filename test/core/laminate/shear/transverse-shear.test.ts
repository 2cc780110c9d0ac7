import table from '@selvage/reference-data/examples/tables/transverse-shear.json' with { type: 'json' };
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { laminate, stiffness } from '../../../../packages/core/src/laminate/index.js';
import { plyShear, shearStiffnessOf, transverseShear } from '../../../../packages/core/src/laminate/shear/index.js';
import { corePly } from '../../../../packages/core/src/material/index.js';
import { anyLaminate, anyPly, expectNear, graphite, plyOf, problemCode, reversed, stackOf, turned } from '../plies.js';

/** A stack of total thickness 1. */
const unitStack = (code: string) => {
  const { plies } = stackOf(table.ply, code, 1);
  return laminate(plies.map((ply) => ({ ...ply, thickness: 1 / plies.length })));
};

const entries = ({ H }: ReturnType<typeof transverseShear>): number[] => H.flat();

describe('shear stiffness by equal energy beside the independent script', () => {
  it.each(table.laminates)('$stack', ({ stack, kx, ky, H11, H12, H22 }) => {
    const found = transverseShear(unitStack(stack));
    expectNear([found.kx, found.ky], [kx, ky], table.tolerance);
    expectNear(entries(found), [H11, H12, H12, H22], table.tolerance);
    expectNear([found.sums[0] * found.kx, found.sums[1] * found.ky], [H11, H22], table.tolerance);
  });

  it.each(table.sandwichBeams)('sandwich beam with Ef $Ef, Ec $Ec, tf $tf, tc $tc', (beam) => {
    // One-dimensional: without Poisson effect.
    const layer = (E: number, G: number, t: number) => plyOf({ E1: E, E2: E, G12: G, nu12: 0, G13: G, G23: G }, 0, t);
    const face = layer(beam.Ef, beam.Gf, beam.tf);
    const found = transverseShear(laminate([face, layer(beam.Ec, beam.Gc, beam.tc), face]));
    expectNear([found.H[0][0], found.H[1][1]], [beam.S, beam.S], table.tolerance);
    expectNear([found.kx], [beam.perSum], table.tolerance);
    const d = beam.tc + beam.tf;
    expectNear([(found.H[0][0] * beam.tc) / (beam.Gc * d * d)], [beam.perThinFace], table.tolerance);
    expectNear([found.H[0][0] / (beam.Gc * beam.tc)], [beam.perThickness], table.tolerance);
  });

  it('is 0.0045 to 0.13 of the plain sum for the sandwiches, far from 5/6', () => {
    for (const { perSum } of table.sandwichBeams) expect(perSum).toBeLessThan(0.13);
  });
});

describe('shear stiffness of any stack', () => {
  it('is 5/6 of G t for one homogeneous ply, however it is split and turned by right angles', () => {
    for (const angle of [0, 90]) {
      const ply = plyOf({ ...graphite, G13: 7e9, G23: 3e9 }, angle, 1e-3);
      const one = transverseShear(laminate([ply, { ...ply, thickness: 3e-3 }]));
      expectNear([one.kx, one.ky], [5 / 6, 5 / 6], 1e-12);
      expectNear(one.sums, angle === 0 ? [28e-3 * 1e9, 12e6] : [12e6, 28e6], 1e-12);
    }
  });

  it('is 5/6 of G t of one ply at any angle, its coupling included', () => {
    fc.assert(
      fc.property(anyPly, (given) => {
        const ply = { ...given, G13: 7e9, G23: 3e9 };
        const { H } = transverseShear(laminate([ply]));
        const [c, s] = [Math.cos((ply.angle * Math.PI) / 180), Math.sin((ply.angle * Math.PI) / 180)];
        const G = [c * c * 7e9 + s * s * 3e9, c * s * 4e9, c * s * 4e9, s * s * 7e9 + c * c * 3e9];
        expectNear(
          H.flat(),
          G.map((value) => (5 / 6) * value * ply.thickness),
          1e-9,
        );
      }),
    );
  });

  it('does not change when the stack is reversed', () => {
    fc.assert(
      fc.property(anyLaminate, (stack) => {
        expectNear(entries(transverseShear(reversed(stack))), entries(transverseShear(stack)), 1e-9);
      }),
    );
  });

  it('exchanges its directions when the stack is turned by a right angle', () => {
    fc.assert(
      fc.property(anyLaminate, (stack) => {
        const [[xx, xy], [, yy]] = transverseShear(stack).H;
        expectNear(entries(transverseShear(turned(stack, 90))), [yy, -xy, -xy, xx], 1e-9);
      }),
    );
  });

  it('changes the sign of its coupling alone when every angle does', () => {
    fc.assert(
      fc.property(anyLaminate, (stack) => {
        const [[xx, xy], [, yy]] = transverseShear(stack).H;
        const mirrored = laminate(stack.plies.map((ply) => ({ ...ply, angle: -ply.angle })));
        expectNear(entries(transverseShear(mirrored)), [xx, -xy, -xy, yy], 1e-9);
      }),
    );
  });

  it('is positive definite and grows with scale: H with the thickness, H with the shear moduli', () => {
    fc.assert(
      fc.property(anyLaminate, (stack) => {
        const { H } = transverseShear(stack);
        expect(H[0][0]).toBeGreaterThan(0);
        expect(H[0][0] * H[1][1] - H[0][1] ** 2).toBeGreaterThan(0);
        const thicker = laminate(stack.plies.map((ply) => ({ ...ply, thickness: 3 * ply.thickness })));
        expectNear(
          entries(transverseShear(thicker)),
          H.flat().map((value) => 3 * value),
          1e-9,
        );
        const stiffer = laminate(
          stack.plies.map((ply) => ({ ...ply, G13: 2 * plyShear(ply).G13, G23: 2 * plyShear(ply).G23 })),
        );
        expectNear(
          entries(transverseShear(stiffer)),
          H.flat().map((value) => 2 * value),
          1e-9,
        );
      }),
    );
  });

  it('names the sources of its theory', () => {
    expect(transverseShear(unitStack('[0/90]')).sources).toEqual(['whitney-1973', 'vlachoutsis-1992']);
  });

  it('refuses a stack whose stiffness is not positive definite', () => {
    const ply = plyOf({ ...graphite, G12: -1e9 }, 0, 1e-3);
    expect(problemCode(() => transverseShear(laminate([ply])))).toBe('not-admissible');
    expect(problemCode(() => stiffness(laminate([ply])))).toBe('not-admissible');
  });
});

describe('shear stiffness beyond the range of numbers', () => {
  it('is refused', () => {
    const limp = laminate([plyOf({ ...graphite, G13: 1e-310, G23: 1e-310 }, 0, 1e-3)]);
    expect(problemCode(() => transverseShear(limp))).toBe('not-computable');
  });
});

describe('shear moduli through the thickness', () => {
  it('are those of the ply where it gives them, without a note', () => {
    const ply = plyOf({ ...graphite, G13: 5e9, G23: 3e9 }, 0, 1e-3);
    expect(plyShear(ply)).toEqual({ G13: 5e9, G23: 3e9, notes: [] });
    expect(shearStiffnessOf(ply)).toEqual([5e9, 0, 3e9]);
  });

  it('are assumed for a unidirectional ply: G13 = G12, G23 = E2/(2 (1 + nu23)) with its nu23 or 0.4, and said so', () => {
    const bare = plyShear(plyOf(graphite, 0, 1e-3));
    expectNear([bare.G13, bare.G23], [7.17e9, 10.3e9 / 2.8], 1e-12);
    expect(bare.notes).toEqual([
      {
        level: 'assumption',
        text: 'ply: shear through the thickness with G13 = G12 and G23 = E2/(2 (1 + an assumed 0.4)).',
      },
    ]);
    const known = plyShear(plyOf({ ...graphite, nu23: 0.5, G13: 6e9 }, 0, 1e-3));
    expectNear([known.G13, known.G23], [6e9, 10.3e9 / 3], 1e-12);
    expect(known.notes[0]?.text).toContain('G23 = E2/(2 (1 + 0.5))');
    expect(transverseShear(stackOf(graphite, '[0/90]s', 1e-4)).notes).toEqual(bare.notes);
  });

  it('are G12 for a cloth and for a mat, whose E2 is that of fibres, and G for a core', () => {
    const cloth = plyOf({ E1: 60e9, E2: 58e9, G12: 4e9, nu12: 0.05 }, 0, 1e-3);
    const mat = plyOf({ E1: 10e9, E2: 10e9, G12: 10e9 / 2.6, nu12: 0.3 }, 0, 1e-3);
    for (const ply of [cloth, mat]) expect(plyShear(ply).G23).toBe(ply.G12);
    const core = corePly({ E: 85e6, G: 28e6, nu: 0.35, thickness: 0.01, density: 80 });
    expect(plyShear(core)).toEqual({ G13: 28e6, G23: 28e6, notes: [] });
  });

  it('turn with the ply: 45 degrees gives the mean and half the difference', () => {
    const ply = plyOf({ ...graphite, G13: 5e9, G23: 3e9 }, 45, 1e-3);
    expectNear(shearStiffnessOf(ply), [4e9, 1e9, 4e9], 1e-12);
  });
});

describe('the shear stiffness of a laminate that is turned', () => {
  /** Largest entry by which H of the turned stack is off the turned H, over the largest entry. */
  const off = (code: string, angle: number): number => {
    const [[Hx, Hxy], [, Hy]] = transverseShear(unitStack(code)).H;
    const [c, s] = [Math.cos((angle * Math.PI) / 180), Math.sin((angle * Math.PI) / 180)];
    const tensor = [
      c * c * Hx + s * s * Hy - 2 * c * s * Hxy,
      c * s * (Hx - Hy) + (c * c - s * s) * Hxy,
      s * s * Hx + c * c * Hy + 2 * c * s * Hxy,
    ];
    const [[x, xy], [, y]] = transverseShear(turned(unitStack(code), angle)).H;
    return Math.max(...[x, xy, y].map((value, i) => Math.abs(value - tensor[i]!))) / Math.max(Hx, Hy);
  };

  it('turns as a tensor does for one homogeneous ply, and for any stack by a right angle', () => {
    for (const angle of [17, 45, 80]) expect(off('[0]', angle)).toBeLessThan(1e-9);
    expect(off('[0/90/90/0]', 90)).toBeLessThan(1e-9);
  });

  it('is no tensor for a layered stack, a symmetric cross-ply among them: a tenth and more', () => {
    expect(off('[0/90/90/0]', 45)).toBeGreaterThan(0.1);
    expect(off('[0/90/90/0]', 45)).toBeLessThan(0.2);
  });

  it('is noted where layers couple bending and twisting, not for one ply or along and across', () => {
    const noted = (code: string) =>
      transverseShear(stackOf(graphite, code, 1e-4)).notes.some(({ text }) => text.startsWith('The shear stiffness H'));
    expect(['[45/-45]s', '[30/-30/0]s'].map(noted)).toEqual([true, true]);
    expect(['[30]', '[0/90]s', '[0/90]'].map(noted)).toEqual([false, false, false]);
  });
});
