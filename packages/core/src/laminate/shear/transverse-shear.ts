import { fail } from '../../problem/index.js';
import { type Note, type SourceKey, uniqueNotes, uniqueSources } from '../../provenance/index.js';
import type { Laminate } from '../types.js';
import { inverse2, type Matrix2 } from './matrix2.js';
import { plyShear, shearStiffnessOf } from './ply-shear.js';
import { cylindrical, flowAt, shearFlow, stressOf } from './shear-flow.js';
import { isTwistCoupled } from './twist-coupling.js';

/** Shear stiffness of a laminate through its thickness: V = H γ with V = (Vx, Vy) and γ = (γxz, γyz). */
export interface TransverseShear {
  /** N/m, symmetric. */
  readonly H: Matrix2;
  /** H11 and H22 over the plain sums: 5/6 for one homogeneous ply, 0.005 to 0.03 for a sandwich. */
  readonly kx: number;
  readonly ky: number;
  /** Σ Gxz t and Σ Gyz t, N/m. */
  readonly sums: readonly [x: number, y: number];
  readonly notes: readonly Note[];
  readonly sources: readonly SourceKey[];
}

/** Abscissas and weights of three Gauss points on 0 to 1: exact for the fourth power that the flow squared holds. */
const gauss = [
  [(1 - Math.sqrt(0.6)) / 2, 5 / 18],
  [0.5, 8 / 18],
  [(1 + Math.sqrt(0.6)) / 2, 5 / 18],
] as const;

/**
 * Shear stiffness of a laminate through its thickness, by equal energy.
 *
 * H⁻¹ = ∫ fᵀ G⁻¹ f dz, with f the shear stress under unit forces by equilibrium of the stack (`shearStressDistribution`) and G
 * the shear stiffness of each ply in laminate axes: a unit of shear force stores the same energy in the laminate as in the plate of
 * first-order theory. It supposes that of the six changes of moment only ∂Mx/∂x = Vx and ∂My/∂y = Vy act. That is exact for one
 * homogeneous ply and near for cross-plies along and across. It is no tensor otherwise: H of a layered stack turned by an angle, also of
 * a symmetric cross-ply, is not H turned, but up to a tenth and more off, since then Mxy changes too.
 *
 * @param laminate plies from the tool side; G13 and G23 where known, else assumed (a note says how)
 * @returns H in N/m and its factors against Σ G t
 * @throws not-admissible as `stiffness`; not-computable when H leaves the range of numbers
 * @source Whitney 1973; Vlachoutsis 1992
 */
export function transverseShear(laminate: Laminate): TransverseShear {
  let [c11, c12, c22, sumX, sumY] = [0, 0, 0, 0, 0];
  const flows = shearFlow(laminate);
  laminate.plies.forEach((ply, k) => {
    const flow = flows[k];
    if (flow === undefined) return;
    const [Gxz, Gxyz, Gyz] = shearStiffnessOf(ply);
    sumX += Gxz * ply.thickness;
    sumY += Gyz * ply.thickness;
    const [[sxx, sxy], [, syy]] = inverse2(Gxz, Gxyz, Gyz);
    for (const [at, weight] of gauss) {
      const F = flowAt(flow, at * ply.thickness);
      const [[xx, yx], [xy, yy]] = [stressOf(F, cylindrical(1, 0)), stressOf(F, cylindrical(0, 1))];
      const w = weight * ply.thickness;
      c11 += w * (sxx * xx * xx + 2 * sxy * xx * yx + syy * yx * yx);
      c22 += w * (sxx * xy * xy + 2 * sxy * xy * yy + syy * yy * yy);
      c12 += w * (sxx * xx * xy + sxy * (xx * yy + yx * xy) + syy * yx * yy);
    }
  });
  const H = inverse2(c11, c12, c22);
  if (!Number.isFinite(H[0][0] + H[0][1] + H[1][1])) {
    fail({
      code: 'not-computable',
      message: 'the shear stiffness through the thickness is not a finite number',
      allowed: 'shear moduli whose products a number of 64 bits can hold',
    });
  }
  const [kx, ky] = [H[0][0] / sumX, H[1][1] / sumY];
  return {
    H,
    kx,
    ky,
    sums: [sumX, sumY],
    notes: uniqueNotes([
      ...laminate.notes,
      ...laminate.plies.flatMap((ply) => plyShear(ply).notes),
      ...layeredNotes(laminate, [kx, ky]),
    ]),
    sources: uniqueSources(laminate.sources, ['whitney-1973', 'vlachoutsis-1992']),
  };
}

/** Tells what H does not know of a layered stack that twists as it bends; one homogeneous ply, with 5/6, has a parabola whatever changes. */
function layeredNotes(laminate: Laminate, factors: readonly number[]): Note[] {
  if (factors.every((k) => Math.abs(k - 5 / 6) < 1e-9) || !isTwistCoupled(laminate)) return [];
  return [
    {
      level: 'assumption',
      text: 'The shear stiffness H supposes that Mx changes along x alone and My along y alone. Bending and twisting are coupled here, so Mxy changes as well: what shear adds to a deflection may be off by a tenth and more.',
      source: 'selvage-2026-derivation',
    },
  ];
}
