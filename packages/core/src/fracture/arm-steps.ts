import type { Laminate, Stiffness } from '../laminate/index.js';
import type { Ply } from '../material/index.js';
import type { Working } from '../working/index.js';
import type { Arm, ArmOptions } from './types.js';

const entry = (m: Stiffness['A'], i: number, j: number): number => m[i]?.[j] ?? 0;

/** What the arm was worked out from besides its stiffness. */
interface ArmParts {
  readonly E3Of: (ply: Ply) => number;
  /** What the modulus of a ply through its thickness follows from where it is not given. */
  readonly acrossOf: (ply: Ply) => { readonly nu23: number; readonly G23: number };
  readonly curvatures?: NonNullable<Arm['failureStrain']>;
}

/** Takes down how a laminate becomes an arm. */
export function showArm(
  { plies, thickness: h }: Laminate,
  { A, B, D, a, b, d }: Pick<Stiffness, 'A' | 'B' | 'D' | 'a' | 'b' | 'd'>,
  { across = 'held', E3 }: ArmOptions,
  arm: Arm,
  { E3Of, acrossOf, curvatures }: ArmParts,
  working: Working,
): void {
  const stiff = { D_a: arm.bendingStiffness, A_a: arm.axialStiffness };
  if (across === 'held') {
    const inPlane = { A11: entry(A, 0, 0), A16: entry(A, 0, 2), A66: entry(A, 2, 2) };
    working.step('armHeldAcross', {
      ...inPlane,
      B11: entry(B, 0, 0),
      B16: entry(B, 0, 2),
      D11: entry(D, 0, 0),
      ...stiff,
    });
  } else {
    working.step('armFreeAcross', { a11: entry(a, 0, 0), b11: entry(b, 0, 0), d11: entry(d, 0, 0), ...stiff });
  }
  working.step('armShear', { S_a: arm.shearStiffness });
  if (E3 === undefined) {
    const assumed = plies.filter((ply) => ply.E3 === undefined);
    if (assumed.length > 0) {
      const materials = [...new Map(assumed.map((ply) => [ply.name, ply])).values()];
      const across = materials.map((ply) => ({ ...acrossOf(ply), E_zk: E3Of(ply) }));
      working.step('plyThrough', {}, across);
    }
    const rows = plies.map((ply) => {
      const [t_k, E_zk] = [ply.thickness, E3Of(ply)];
      return { t_k, E_zk, c_z: t_k / (h * E_zk) };
    });
    const c_z = rows.reduce((sum, row) => sum + row.c_z, 0);
    working.step('armThrough', { h, c_z, E_z: arm.E3 }, rows);
  }
  const { failureStrain: limit } = arm;
  if (limit === undefined || curvatures === undefined) return;
  const { tension: eps_t, compression: eps_c } = limit;
  const { tension: kappa_t, compression: kappa_c } = curvatures;
  working.step('armCurvatures', { kappa_t, kappa_c });
  working.step('armStrength', { h, kappa_t, eps_t, kappa_c, eps_c });
}
