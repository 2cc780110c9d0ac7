import { describe, expect, it } from 'vitest';
import { diagnosis, laminate } from '../../../packages/core/src/laminate/index.js';
import { graphite, plyOf, problemCode, stackOf } from './plies.js';

const of = (code: string) => diagnosis(stackOf(graphite, code, 0.25e-3));
const cloth = { E1: 60e9, E2: 60e9, G12: 4e9, nu12: 0.05 };
const mat = { E1: 10e9, E2: 10e9, G12: 10e9 / 2.6, nu12: 0.3 };
const core = { E1: 80e6, E2: 80e6, G12: 80e6 / 2.6, nu12: 0.3, core: true };

describe('symmetry', () => {
  it('holds for mirrored stacks, and B is then exactly zero', () => {
    for (const code of ['[0/±45/90]s', '[0/90~]s', '[30/0/-20]2s', '[0]']) {
      const d = of(code);
      expect([d.symmetric, d.antisymmetric, d.uncoupled, d.measures.coupling]).toEqual([true, false, true, 0]);
    }
  });

  it('is missed by a share of the thickness, with the coupling in words', () => {
    const d = of('[0/90/0/0]');
    expect(d.symmetric).toBe(false);
    expect(d.measures.unmirroredShare).toBe(0.5);
    expect(d.statements[0]).toMatch(/^not symmetric: 50 % of the thickness.*B reaches \d+(\.\d+)? %/);
  });

  it('of coupling [0/90] is 2 (Q11 - Q22)/(2 (Q11 + Q22)) of the stack with one rigid half', () => {
    // By hand: B11 = -(Q11 - Q22) h²/8, A11 = (Q11 + Q22) h/2, the measure is B/(A h/4); Q of clt.json CLT-01.
    const [Q11, Q22] = [181811138844, 10346158729.8];
    expect(of('[0/90]').measures.coupling / ((Q11 - Q22) / (Q11 + Q22))).toBeCloseTo(1, 10);
  });

  it('is judged ply by ply: opposite angles in mirrored places make it antisymmetric', () => {
    expect(of('[30/-30]')).toMatchObject({ symmetric: false, antisymmetric: true, anglePly: true, balanced: true });
    expect(of('[0/90]2')).toMatchObject({ symmetric: false, antisymmetric: true, crossPly: true });
    expect(of('[0/30]')).toMatchObject({ symmetric: false, antisymmetric: false });
  });

  it('sees different thicknesses, materials and expansions', () => {
    const ply = plyOf(graphite, 0, 1e-3);
    const others = [
      { ...ply, thickness: 1.1e-3 },
      { ...ply, E2: 9e9 },
      { ...ply, expansion: { alpha1: 0, alpha2: 30e-6 } },
    ];
    for (const other of others) expect(diagnosis(laminate([ply, other])).symmetric).toBe(false);
  });

  it('takes a fibre to have no head or tail', () => {
    expect(diagnosis(laminate([plyOf(graphite, 90, 1e-3), plyOf(graphite, -90, 1e-3)])).symmetric).toBe(true);
  });
});

describe('balance', () => {
  it('holds where every off-axis ply has its opposite, wherever that is', () => {
    expect(of('[45/0/30/-45/90/-30]')).toMatchObject({ balanced: true });
    expect(of('[45/0/30/-45/90/-30]').measures.shearCoupling).toBeLessThan(1e-12);
  });

  it('is missed by the thickness left over and by A16 and A26', () => {
    const d = of('[45/45/-45/0]');
    expect(d.balanced).toBe(false);
    expect(d.measures.unbalancedShare).toBeCloseTo(0.25, 12);
    expect(d.statements[1]).toMatch(/^not balanced: 25 % .* A16 and A26 reach/);
  });

  it('holds for balanced cloth at 45 degrees by itself', () => {
    expect(diagnosis(laminate([plyOf(cloth, 45, 0.3e-3)]))).toMatchObject({ balanced: true, anglePly: true });
  });
});

describe('directions', () => {
  it('along 0 and 90 only make a cross-ply', () => {
    expect(of('[0/90_2/0]').crossPly).toBe(true);
    expect(of('[0/90/30]').measures.offAxisShare).toBeCloseTo(1 / 3, 12);
    expect(diagnosis(laminate([plyOf(cloth, 0, 1e-3), plyOf(core, 0, 5e-3), plyOf(cloth, 90, 1e-3)])).crossPly).toBe(
      true,
    );
  });

  it('of cloth count half along and half across, and the result says so', () => {
    const d = diagnosis(laminate([plyOf(cloth, 0, 0.3e-3), plyOf(cloth, 45, 0.3e-3)]));
    expect(d.directionShares.map(({ share }) => share)).toEqual([0.25, 0.25, 0.25, 0.25]);
    expect(d.notes.map((note) => note.level)).toEqual(['assumption']);
    expect(d.tenPercentRule).toBe(true);
  });

  it('of a mat count a quarter each, a core counts for nothing', () => {
    const d = diagnosis(laminate([plyOf(mat, 0, 1e-3), plyOf(core, 0, 8e-3), plyOf(mat, 0, 1e-3)]));
    expect(d.directionShares.map(({ share }) => share)).toEqual([0.25, 0.25, 0.25, 0.25]);
    expect(d.largestBlock).toBeUndefined();
    expect(d.crossPly).toBe(false);
    expect(d.quasiIsotropic).toBe(true);
  });

  it('below a tenth of the thickness break the ten-percent rule, with the direction named', () => {
    const d = of('[0_8/±45/90]');
    expect(d.tenPercentRule).toBe(false);
    expect(d.statements.join()).toMatch(/ten-percent rule missed.*9\.09 %/);
    expect(of('[0_7/±45/90]').tenPercentRule).toBe(true);
  });
});

describe('stiffness alike in all directions', () => {
  it('in plane holds for pi/3 and pi/4 stacks in any order, not for [0/90] or one ply too many', () => {
    for (const code of ['[0/60/-60]', '[90/45/0/-45]s']) expect(of(code).quasiIsotropic).toBe(true);
    expect(of('[0/90]s').quasiIsotropic).toBe(false);
    const d = of('[0_2/±45/90]s');
    expect(d.quasiIsotropic).toBe(false);
    expect(d.statements[3]).toMatch(/departs from that of an isotropic sheet by [\d.]+ %/);
  });

  it('through the thickness holds for one angle and for repeated [0/90], not for [0/90]s', () => {
    expect(of('[30]4').homogenised).toBe(true);
    expect(of('[0/90]2')).toMatchObject({ homogenised: true, uncoupled: false });
    expect(of('[0/90]s').homogenised).toBe(false);
  });

  it('in an asymmetric stack with B of zero is told apart from symmetry', () => {
    // [a/b/b/a/b/a/a/b] is a known uncoupled unsymmetric order: both angles have the same first and second moments.
    const d = of('[30/-30/-30/30/-30/30/30/-30]');
    expect(d).toMatchObject({ symmetric: false, uncoupled: true, antisymmetric: true, homogenised: true });
    expect(d.statements[0]).toBe('antisymmetric: the coupling B is zero all the same');
  });
});

describe('neighbours', () => {
  it('of one angle form blocks, of which the thickest is reported', () => {
    expect(of('[0_2/90_3/0]').largestBlock).toEqual({ count: 3, thickness: 0.75e-3, angle: 90 });
    const parted = laminate([plyOf(graphite, 0, 1e-3), plyOf(core, 0, 5e-3), plyOf(graphite, 0, 1e-3)]);
    expect(diagnosis(parted).largestBlock).toMatchObject({ count: 1, angle: 0 });
  });

  it('differ by at most 90 degrees', () => {
    expect(of('[0/45/-45/-80]').largestAngleJump).toBe(90);
    expect(of('[80/-80]').largestAngleJump).toBe(20);
    expect(of('[0]').largestAngleJump).toBe(0);
  });
});

describe('a diagnosis', () => {
  it('is refused where the stiffness is', () => {
    expect(problemCode(() => diagnosis(laminate([plyOf({ ...graphite, nu12: 6 }, 0, 1e-3)])))).toBe('not-admissible');
  });
});
