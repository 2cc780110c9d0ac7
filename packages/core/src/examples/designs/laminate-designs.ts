import { printOrientationCode } from '../../laminate/index.js';
import { type StackInputs, si, stackOf } from '../inputs.js';
import type {
  bimetalCurvature,
  laminateModuli,
  laminateResponse,
  prescribedStrain,
  thermalResponse,
} from '../laminate-kinds.js';
import { bimetalLayers } from '../laminate-kinds.js';
import { isotropicEntry, plyEntry } from './materials.js';
import { at, type DesignParts, type Entry, type Held, inUnit, matrixAt, vectorAt } from './parts.js';
import { perWidth } from './ply-designs.js';

const strainNames = ['eps0x', 'eps0y', 'gamma0xy'];
const curvatureNames = ['kappax', 'kappay', 'kappaxy'];

/** Material and laminate of equal plies. */
const stacked = ({ ply, angles, plyThickness }: StackInputs): Pick<DesignParts, 'materials' | 'laminates'> => ({
  materials: { ply: plyEntry(ply, plyThickness) },
  laminates: { stack: stackEntry(angles) },
});

/** A stack of plies of one material by its orientation code. */
export const stackEntry = (angles: readonly number[]): Entry => ({
  material: 'ply',
  stack: printOrientationCode(angles.map((angle) => ({ angle }))),
});

const matrices: Record<string, Held> = {
  ...matrixAt('A', 'laminates.stack.A'),
  ...matrixAt('B', 'laminates.stack.B'),
  ...matrixAt('D', 'laminates.stack.D'),
};

export const laminateStiffnessDesign = (inputs: StackInputs): DesignParts => ({ ...stacked(inputs), held: matrices });

export const laminateResponseDesign = (inputs: Parameters<typeof laminateResponse>[0]): DesignParts => {
  const faces = { top: 'top', mid: 'middle', bot: 'bottom' } as const;
  const states = inputs.angles.flatMap((_, k) =>
    Object.entries(faces).map(([short, face]) => {
      const [key, path] = [`ply${k + 1}.${short}`, `loads.pull.plies.${k}.${face}`];
      return {
        ...vectorAt([`${key}.sx`, `${key}.sy`, `${key}.txy`], `${path}.stress`),
        ...vectorAt([`${key}.epsx`, `${key}.epsy`, `${key}.gammaxy`], `${path}.strain`),
      };
    }),
  );
  return {
    ...stacked(inputs),
    loads: { pull: { laminate: 'stack', N: inputs.N, M: inputs.M } },
    held: Object.assign(
      { ...vectorAt(strainNames, 'loads.pull.strain'), ...vectorAt(curvatureNames, 'loads.pull.curvature') },
      ...states,
    ),
  };
};

const flat = { strain: [0, 0, 0], curvature: ['0 1/m', '0 1/m', '0 1/m'] };

export const thermalResponseDesign = (inputs: Parameters<typeof thermalResponse>[0]): DesignParts => {
  const { temperatureChange } = inputs;
  return {
    ...stacked(inputs),
    ours: ['The load case held, which keeps the laminate flat: its reactions, reversed, are the resultants of heat.'],
    loads: {
      free: { laminate: 'stack', temperatureChange },
      held: { laminate: 'stack', ...flat, temperatureChange },
    },
    held: {
      ...matrices,
      ...vectorAt(['NTx', 'NTy'], 'loads.held.N', -1),
      ...vectorAt(['MTx', 'MTy'], 'loads.held.M', -1),
      ...vectorAt(strainNames, 'loads.free.strain'),
      ...vectorAt(curvatureNames, 'loads.free.curvature'),
    },
  };
};

export const laminateExpansionDesign = (inputs: StackInputs): DesignParts => ({
  ...stacked(inputs),
  held: vectorAt(['alphax', 'alphay', 'alphaxy'], 'laminates.stack.expansion.thermal.strain'),
});

export const prescribedStrainDesign = (inputs: Parameters<typeof prescribedStrain>[0]): DesignParts => {
  const stresses = inputs.angles.map((angle, k) =>
    vectorAt([`sx_${angle}`, `sy_${angle}`], `loads.stretched.plies.${k}.middle.stress`),
  );
  return {
    ...stacked(inputs),
    loads: { stretched: { laminate: 'stack', strain: inputs.strain, curvature: inputs.curvature } },
    held: Object.assign({ ...matrices, ...vectorAt(['Nx', 'Ny'], 'loads.stretched.N') }, ...stresses),
  };
};

export const laminateModuliDesign = (inputs: Parameters<typeof laminateModuli>[0]): DesignParts => {
  const { angles, stress } = inputs;
  const stresses = angles.map((angle, k) =>
    vectorAt([`angle${angle}.sx`, `angle${angle}.sy`, `angle${angle}.txy`], `loads.stressed.plies.${k}.middle.stress`),
  );
  const constants = ['Ex', 'Ey', 'Gxy', 'nuxy', 'nuyx'].map(
    (name) => [name, at(`laminates.stack.inPlane.${name}`)] as const,
  );
  const size = (i: number): Held => ({ ...at(`loads.stressed.strain.${i}`), size: true });
  return {
    ...stacked(inputs),
    ours: ['The forces per width: the mean stresses of the source times the thickness of the laminate.'],
    loads: { stressed: { laminate: 'stack', N: perWidth(stress, stackOf(inputs).thickness) } },
    held: Object.assign(
      {
        ...Object.fromEntries(constants),
        epsx: at('loads.stressed.strain.0'),
        absEpsy: size(1),
        absGammaxy: size(2),
      },
      ...stresses,
    ),
  };
};

export const bimetalDesign = (inputs: Parameters<typeof bimetalCurvature>[0]): DesignParts => {
  const { alpha1, alpha2, temperatureChange, nu } = inputs;
  const [lower, upper] = bimetalLayers(inputs);
  const h = lower.thickness + upper.thickness;
  const layer = ({ E, thickness }: typeof lower, alpha: typeof alpha1): Entry =>
    isotropicEntry(E, nu, inUnit(thickness, 'mm'), { expansion: { alpha1: alpha, alpha2: alpha } });
  const apart = (si(alpha2, 'expansion') - si(alpha1, 'expansion')) * si(temperatureChange, 'temperatureChange');
  return {
    ours: ['Every number: the source gives the coefficient for equal layers of any thickness and modulus.'],
    materials: { lower: layer(lower, alpha1), upper: layer(upper, alpha2) },
    laminates: {
      strip: {
        stack: [
          { angle: 0, material: 'lower' },
          { angle: 0, material: 'upper' },
        ],
      },
    },
    loads: { heated: { laminate: 'strip', temperatureChange } },
    held: { coefficient: at('loads.heated.curvature.0', h / apart) },
  };
};
