import { reducedStiffness } from '../material/index.js';
import type { Working } from '../working/index.js';
import type { FreeStrain } from './free-strain.js';
import type { SixComponents } from './load.js';
import { packed } from './matrix3.js';
import { componentsAt, componentsOf, vectorAs } from './named.js';
import type { Laminate, PlyPoint, Stiffness, Vector3 } from './types.js';

interface MidPlane {
  readonly strain: Vector3;
  readonly curvature: Vector3;
}

const midPlane = ({ strain, curvature }: MidPlane): Record<string, number> => ({
  ...vectorAs(['eps0_x', 'eps0_y', 'gamma0_xy'], strain),
  ...vectorAs(['kappa_x', 'kappa_y', 'kappa_xy'], curvature),
});

/** Takes down how strain and curvature follow from forces, or forces from what was given as deformation. */
export function showDeformation(
  s: Stiffness,
  found: MidPlane & { readonly N: Vector3; readonly M: Vector3 },
  free: FreeStrain,
  known: SixComponents,
  working: Working,
): void {
  const hindered = {
    ...vectorAs(['N_Tx', 'N_Ty', 'N_Txy'], free.N),
    ...vectorAs(['M_Tx', 'M_Ty', 'M_Txy'], free.M),
  };
  const values = {
    ...midPlane(found),
    ...vectorAs(['N_x', 'N_y', 'N_xy'], found.N),
    ...vectorAs(['M_x', 'M_y', 'M_xy'], found.M),
  };
  if (known.deformation.some((value) => value !== null)) {
    const stiff = { ...symmetric('A', s), ...symmetric('B', s), ...symmetric('D', s) };
    working.step('mixedDeformation', { ...stiff, ...values, ...hindered });
    working.step('forces', { ...stiff, ...values, ...hindered });
    return;
  }
  const compliant = { ...symmetric('a', s), ...componentsOf('b', s.b), ...symmetric('d', s) };
  if (free.acts) working.step('deformationUnderHeat', { ...compliant, ...values, ...hindered });
  else working.step('deformation', { ...compliant, ...values });
}

const symmetric = (name: 'A' | 'B' | 'D' | 'a' | 'd', s: Stiffness): Record<string, number> =>
  componentsAt(name, packed(s[name]));

/** Takes down strain and stress at one height of a ply. */
export function showPoint(
  point: PlyPoint,
  ply: Laminate['plies'][number],
  deformed: MidPlane,
  freed: { readonly free1: number; readonly free2: number; readonly given: Record<string, number> } | undefined,
  working: Working,
): void {
  const { z } = point;
  const theta = ply.angle;
  const [Q11, Q12, Q22, Q66] = reducedStiffness(ply);
  const inPlane = vectorAs(['eps_x', 'eps_y', 'gamma_xy'], point.strain);
  const inPly = vectorAs(['eps1', 'eps2', 'gamma12'], point.strain12);
  const stress = vectorAs(['sigma1', 'sigma2', 'tau12'], point.stress12);
  const Q = { Q11, Q12, Q22, Q66 };

  working.step('strainAtHeight', { z, ...midPlane(deformed), ...inPlane });
  working.step('strainInPlyAxes', { theta, ...inPlane, ...inPly });
  if (freed === undefined) {
    working.step('stressInPlyAxes', { ...Q, ...inPly, ...stress });
  } else {
    const { free1, free2, given } = freed;
    working.step('freeStrain', { z, ...given, free1, free2 });
    working.step('stressOfMechanicalStrain', { ...Q, ...inPly, free1, free2, ...stress });
  }
  working.step('stressInLaminateAxes', {
    theta,
    ...stress,
    ...vectorAs(['sigma_x', 'sigma_y', 'tau_xy'], point.stress),
  });
}
