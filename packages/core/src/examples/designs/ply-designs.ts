import { type Given, type GivenVector, si } from '../inputs.js';
import type {
  offAxisCompliance,
  offAxisExpansion,
  offAxisPlyConstants,
  offAxisStiffness,
  plyStiffness,
  quasiIsotropic,
} from '../ply-kinds.js';
import { plyEntry } from './materials.js';
import { at, type DesignParts, type Entry, type Held, inUnit, matrixAt, nameOf, vectorAt } from './parts.js';

/** Of a single ply, m: the source speaks of stress and of moduli, for which any thickness will do. */
const h = 1e-3;
export const anyThickness = '1 mm';
const thicknessIsOurs =
  'The thickness of the ply, 1 mm: stress times 1 mm is the force per width, and A over 1 mm the stiffness.';

/** A stress on a laminate of a thickness in m, as a force per width. */
export const perWidth = (stress: GivenVector, thickness = h): Given[] =>
  stress.map((one) => inUnit(si(one, 'stress') * thickness, 'N/mm'));

/** One ply at an angle as a laminate. */
export const single = (angle: number, material = 'ply'): Entry => ({ material, stack: `[${angle}]` });

const onAxisStiffness = (laminate: string): Record<string, Held> => {
  const { Q11, Q12, Q22, Q66 } = matrixAt('Q', `laminates.${laminate}.A`, 1 / h) as Record<
    'Q11' | 'Q12' | 'Q22' | 'Q66',
    Held
  >;
  return { Q11, Q12, Q22, Q66 };
};

export const plyStiffnessDesign = ({ ply, stress }: Parameters<typeof plyStiffness>[0]): DesignParts => ({
  ours: [thicknessIsOurs],
  materials: { ply: plyEntry(ply, anyThickness) },
  laminates: { ply: single(0) },
  loads: { stressed: { laminate: 'ply', N: perWidth(stress) } },
  held: {
    ...matrixAt('S', 'laminates.ply.a', h),
    ...onAxisStiffness('ply'),
    nu21: at('laminates.ply.inPlane.nuyx'),
    ...vectorAt(['eps1', 'eps2', 'gamma12'], 'loads.stressed.strain'),
  },
});

export const offAxisStiffnessDesign = ({ ply, angles }: Parameters<typeof offAxisStiffness>[0]): DesignParts => ({
  ours: [thicknessIsOurs],
  materials: { ply: plyEntry(ply, anyThickness) },
  laminates: {
    'on-axis': single(0),
    ...Object.fromEntries(angles.map((angle) => [`at${nameOf(angle)}`, single(angle)])),
  },
  held: {
    ...onAxisStiffness('on-axis'),
    ...Object.assign({}, ...angles.map((angle) => matrixAt(`${angle}.Qbar`, `laminates.at${nameOf(angle)}.A`, 1 / h))),
  },
});

export const offAxisComplianceDesign = ({ ply, angle }: Parameters<typeof offAxisCompliance>[0]): DesignParts => ({
  ours: [thicknessIsOurs],
  materials: { ply: plyEntry(ply, anyThickness) },
  laminates: { 'on-axis': single(0), turned: single(angle) },
  held: { ...matrixAt('S', 'laminates.on-axis.a', h), ...matrixAt('Sbar', 'laminates.turned.a', h) },
});

export const offAxisConstantsDesign = ({ ply, angle }: Parameters<typeof offAxisPlyConstants>[0]): DesignParts => {
  const E1 = si(ply.E1, 'modulus');
  const constants = ['Ex', 'Ey', 'Gxy', 'nuxy'].map((name) => [name, at(`laminates.turned.inPlane.${name}`)] as const);
  return {
    ours: [thicknessIsOurs],
    materials: { ply: plyEntry(ply, anyThickness) },
    laminates: { turned: single(angle) },
    held: {
      ...Object.fromEntries(constants),
      mx: at('laminates.turned.a.0.2', -h * E1),
      my: at('laminates.turned.a.1.2', -h * E1),
    },
  };
};

export const offAxisExpansionDesign = (inputs: Parameters<typeof offAxisExpansion>[0]): DesignParts => ({
  ours: [thicknessIsOurs],
  materials: { ply: plyEntry(inputs.ply, anyThickness) },
  laminates: { turned: single(inputs.angle) },
  loads: {
    free: { laminate: 'turned', temperatureChange: inputs.temperatureChange, moisture: inputs.moistureChange },
  },
  held: {
    ...vectorAt(['alphax', 'alphay', 'alphaxy'], 'laminates.turned.expansion.thermal.strain'),
    ...vectorAt(['betax', 'betay', 'betaxy'], 'laminates.turned.expansion.moisture.strain'),
    ...vectorAt(['eps1Free', 'eps2Free'], 'loads.free.plies.0.middle.strain12'),
  },
});

export const quasiIsotropicDesign = ({ ply }: Parameters<typeof quasiIsotropic>[0]): DesignParts => ({
  ours: ['The stack and its thickness: any laminate of three or more evenly turned directions has these constants.'],
  materials: { ply: plyEntry(ply, anyThickness) },
  laminates: { quasi: { material: 'ply', stack: '[0/±60]s' } },
  held: {
    E: at('laminates.quasi.inPlane.Ex'),
    nu: at('laminates.quasi.inPlane.nuxy'),
    G: at('laminates.quasi.inPlane.Gxy'),
  },
});
