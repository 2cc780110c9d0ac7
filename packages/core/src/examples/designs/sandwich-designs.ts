import type { wrinklingDeepCore } from '../sandwich-kinds.js';
import { isotropicEntry } from './materials.js';
import { at, type DesignParts } from './parts.js';

const face = { E: 70e9, thickness: '0.5 mm' } as const;
const core = { E: 100e6, G: 40e6 } as const;

/** A sandwich of isotropic faces and core, whose stresses are divided by the moduli again. */
const sandwich = (nu: number, more: { readonly G?: string } = {}): Pick<DesignParts, 'materials' | 'laminates'> => ({
  materials: {
    face: isotropicEntry(face.E, 0, face.thickness),
    core: { kind: 'core', E: '100 MPa', nu, ...more, thickness: '20 mm', density: '100 kg/m^3', basis: 'assumed' },
  },
  laminates: { sandwich: { letters: { f: 'face', c: 'core' }, stack: '[0f/0c/0f]' } },
});

const wrinkling = 'laminates.sandwich.sandwich.tool.x';

export const wrinklingCoefficientDesign = (): DesignParts => ({
  ours: ['Every number: the coefficient is that of any face on any core.'],
  ...sandwich(0.25, { G: '40 MPa' }),
  held: { c: at(`${wrinkling}.wrinklingStressInTheory`, 1 / Math.cbrt(face.E * core.E * core.G)) },
});

export const wrinklingDeepCoreDesign = ({ nu }: Parameters<typeof wrinklingDeepCore>[0]): DesignParts => ({
  ours: ['Every number but the Poisson ratio of the core: the coefficient is that of any face on any deep core.'],
  ...sandwich(nu),
  held: { B1: at(`${wrinkling}.wrinklingStressDeepCore`, 1 / Math.cbrt(face.E * core.E ** 2)) },
});
