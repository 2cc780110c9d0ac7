import { fail } from '../../problem/index.js';
import { type Note, type SourceKey, uniqueNotes, uniqueSources } from '../../provenance/index.js';
import { demandThree } from '../load.js';
import type { Laminate } from '../types.js';
import { cylindrical, flowAt, type MomentGradient, type PlyFlow, shearFlow, stressOf } from './shear-flow.js';
import { isTwistCoupled } from './twist-coupling.js';

/** Shear forces per length of edge, N/m: Vx = ∂Mx/∂x + ∂Mxy/∂y on the faces across x, Vy = ∂Mxy/∂x + ∂My/∂y on those across y. */
export interface ShearForces {
  readonly Vx?: number;
  readonly Vy?: number;
}

/** Shear stress at one height, Pa, positive with the force. */
export interface ShearStressPoint {
  /** Ply from the tool side, counted from 1. */
  readonly ply: number;
  /** m from the mid-plane. */
  readonly z: number;
  readonly tauXz: number;
  readonly tauYz: number;
}

/** Where the magnitude of a shear stress is largest; the stress with its sign, Pa. */
export interface ShearStressPeak {
  readonly stress: number;
  readonly z: number;
  readonly ply: number;
}

/** Shear stress through the thickness. */
export interface ShearStressDistribution {
  /** From the tool side on, each ply with both its faces. */
  readonly points: readonly ShearStressPoint[];
  readonly peakXz: ShearStressPeak;
  readonly peakYz: ShearStressPeak;
  readonly notes: readonly Note[];
  readonly sources: readonly SourceKey[];
}

type Component = (flow: PlyFlow, s: number) => number;

/**
 * Shear stress through the thickness of a laminate by equilibrium of its ply stresses.
 *
 * ∂τxz/∂z = -∂σx/∂x - ∂τxy/∂y and likewise τyz: zero at both faces, continuous across interfaces, ∫ τ dz = V. Stresses depend on how all
 * three moments change; for forces alone cylindrical bending about x and y in turn is supposed (∂Mx/∂x = Vx, ∂My/∂y = Vy). That is
 * near for cross-ply stacks; an angle-ply strip held from twisting differs by tens of per cent and wants its gradient given. The peaks are
 * those of the parabolas, not of the points alone. Not within a thickness of edges and loads.
 *
 * @param load shear forces, or the change of the moments Mx, My, Mxy along x and y, N/m; what is not given is 0
 * @param pointsPerPly whole, 2 or more, evenly from the lower to the upper face of each ply; 3 when not given
 * @returns Pa
 * @throws wrong-type when one of the two lists of a change of moments has not three numbers; not-a-number when a force is not finite; not-computable when a stress is not; out-of-range for the number of points;
 *   not-admissible as `stiffness`
 * @source Whitney 1973; Vlachoutsis 1992
 */
export function shearStressDistribution(
  laminate: Laminate,
  load: ShearForces | MomentGradient,
  pointsPerPly = 3,
): ShearStressDistribution {
  const gradient = isGradient(load) ? load : cylindrical(load.Vx ?? 0, load.Vy ?? 0);
  demandThree('alongX', gradient.alongX);
  demandThree('alongY', gradient.alongY);
  if (![...gradient.alongX, ...gradient.alongY].every(Number.isFinite)) {
    fail({
      code: 'not-a-number',
      message: `a shear force or change of moment is not finite: ${Object.values(load).flat().join(', ')}`,
      allowed: 'finite forces per length, N/m',
    });
  }
  if (!(Number.isInteger(pointsPerPly) && pointsPerPly >= 2)) {
    fail({ code: 'out-of-range', message: `pointsPerPly is ${pointsPerPly}`, allowed: 'a whole number, 2 or more' });
  }
  const component =
    (i: 0 | 1): Component =>
    (flow, s) =>
      stressOf(flowAt(flow, s), gradient)[i];
  const [xz, yz] = [component(0), component(1)];
  const flows = shearFlow(laminate);
  const points = flows.flatMap((flow, k) =>
    Array.from({ length: pointsPerPly }, (_, i): ShearStressPoint => {
      const s = (flow.thickness * i) / (pointsPerPly - 1);
      const [tauXz, tauYz] = stressOf(flowAt(flow, s), gradient);
      return { ply: k + 1, z: flow.lower + s, tauXz, tauYz };
    }),
  );
  const peaks = { peakXz: peak(flows, xz), peakYz: peak(flows, yz) };
  if (!points.every(({ tauXz, tauYz }) => Number.isFinite(tauXz) && Number.isFinite(tauYz))) {
    fail({
      code: 'not-computable',
      message: 'the shear stress through the thickness is not a finite number',
      allowed: 'forces whose stresses a number of 64 bits can hold',
    });
  }
  return {
    points,
    ...peaks,
    notes: isGradient(load) ? laminate.notes : uniqueNotes([...laminate.notes, ...twistNotes(laminate)]),
    sources: uniqueSources(laminate.sources, ['whitney-1973', 'vlachoutsis-1992']),
  };
}

/** Either list alone is no pair of shear forces, but half of a change of moments. */
const isGradient = (load: ShearForces | MomentGradient): load is MomentGradient => 'alongX' in load || 'alongY' in load;

function twistNotes(laminate: Laminate): Note[] {
  if (!isTwistCoupled(laminate)) return [];
  return [
    {
      level: 'assumption',
      text: 'Shear forces do not say how the twisting moment changes along the laminate; it is supposed not to. Bending and twisting are coupled here: in a strip held from twisting the shear stress differs, by a tenth and more.',
    },
  ];
}

/** The largest magnitude over the faces of the plies and the vertices of their parabolas. */
function peak(flows: readonly PlyFlow[], component: Component): ShearStressPeak {
  let found: ShearStressPeak = { stress: 0, z: 0, ply: 1 };
  flows.forEach((flow, k) => {
    const t = flow.thickness;
    const [first, middle, last] = [component(flow, 0), component(flow, t / 2), component(flow, t)];
    const vertex = ((t / 2) * (0.75 * first - middle + 0.25 * last)) / (0.5 * first - middle + 0.5 * last);
    for (const s of [0, t, ...(vertex > 0 && vertex < t ? [vertex] : [])]) {
      const stress = component(flow, s);
      if (Math.abs(stress) > Math.abs(found.stress)) found = { stress, z: flow.lower + s, ply: k + 1 };
    }
  });
  return found;
}
