import { fibreVolumeFractionFromMassFraction } from '../../material/index.js';
import type { expansionMicromechanics, micromechanics } from '../constituent-kinds.js';
import { isotropicPly, si } from '../inputs.js';
import {
  type curedPly,
  densitiesOf,
  fractionFromDensity,
  type massFractionFromDensity,
  type plyThickness,
} from '../thickness-kinds.js';
import { at, type DesignParts, digits, type Entry, type Held, inUnit } from './parts.js';
import { single } from './ply-designs.js';

const massIsOurs = 'Densities and areal mass: they enter the mass, not the constants of the ply.';
const assumedMass = {
  basis: 'assumed',
  note: 'The density is not of the source; no value of the source depends on it.',
};

type Phases = Parameters<typeof micromechanics>[0];

/** A ply of isotropic fibre and resin in a fabric. */
function plyOf(inputs: Phases, models: Entry): DesignParts['materials'] {
  const { Vf, Ef, Em, nuf = 0, num = 0, alphaf, alpham } = inputs;
  return {
    fibre: {
      kind: 'fibre',
      E1: Ef,
      E2: Ef,
      G12: inUnit(isotropicPly(si(Ef, 'modulus'), nuf, 1).G12, 'GPa'),
      nu12: nuf,
      density: '2500 kg/m^3',
      ...(alphaf === undefined ? {} : { alpha1: alphaf }),
      ...assumedMass,
    },
    resin: {
      kind: 'resin',
      E: Em,
      nu: num,
      density: '1200 kg/m^3',
      ...(alpham === undefined ? {} : { alpha: alpham }),
      ...assumedMass,
    },
    ply: {
      kind: 'fabric',
      architecture: 'ud',
      fibre: 'fibre',
      resin: 'resin',
      arealMass: '300 g/m^2',
      fibreVolumeFraction: Vf,
      ...models,
    },
  };
}

const cured = 'materials.ply.cured.0';

export const micromechanicsDesign = (inputs: Phases): DesignParts => {
  const { nuf, num, xiE2, xiG12 } = inputs;
  const models = `${cured}.models.fibre`;
  const halpin = xiE2 === undefined || xiG12 === undefined;
  const poisson = nuf === undefined || num === undefined;
  return {
    ours: [
      massIsOurs,
      'The shear modulus of the fibre, E/(2 (1 + nu)): the source takes it as isotropic.',
      ...(poisson ? ['The Poisson ratios, 0: the source gives none, and its values do not depend on them.'] : []),
    ],
    materials: plyOf(inputs, halpin ? { transverseModel: 'inverse' } : { xi: { E2: xiE2, G12: xiG12 } }),
    laminates: { ply: single(0) },
    held: {
      E1: at(`${cured}.plies.0.E1`),
      E2InverseRule: at(`${models}.inverse.E2`),
      ...(poisson ? {} : { nu12: at(`${cured}.plies.0.nu12`), G12InverseRule: at(`${models}.inverse.G12`) }),
      ...(halpin
        ? {}
        : { E2HalpinTsai: at(`${models}.halpin-tsai.E2`), G12HalpinTsai: at(`${models}.halpin-tsai.G12`) }),
    },
  };
};

export const expansionMicromechanicsDesign = (inputs: Parameters<typeof expansionMicromechanics>[0]): DesignParts => ({
  ours: [massIsOurs, 'The shear modulus of the fibre, E/(2 (1 + nu)): the source takes it as isotropic.'],
  materials: plyOf(inputs, {}),
  laminates: { ply: single(0) },
  held: { alpha1: at(`${cured}.plies.0.alpha1`), alpha2: at(`${cured}.plies.0.alpha2`) },
});

const modulusIsOurs =
  'Moduli and Poisson ratios of fibre and resin: they enter neither thickness nor mass. Do not use the stiffness.';
const assumedModuli = {
  basis: 'assumed',
  note: 'Moduli and Poisson ratio are not of the source; thickness and mass do not depend on them.',
};

const massFraction: Held = { terms: [{ at: `${cured}.resinMassFraction`, times: -1 }], plus: 1 };

/** A ply of which only the mass is known. */
function ofMass(
  { fibreDensity, resinDensity }: Parameters<typeof densitiesOf>[0],
  arealMass: unknown,
  fibreVolumeFraction: number,
): Pick<DesignParts, 'materials' | 'laminates'> {
  return {
    materials: {
      fibre: {
        kind: 'fibre',
        E1: '100 GPa',
        E2: '100 GPa',
        G12: '40 GPa',
        nu12: 0.25,
        density: fibreDensity,
        ...assumedModuli,
      },
      resin: { kind: 'resin', E: '3 GPa', nu: 0.35, density: resinDensity, ...assumedModuli },
      ply: { kind: 'fabric', architecture: 'ud', fibre: 'fibre', resin: 'resin', arealMass, fibreVolumeFraction },
    },
    laminates: { ply: single(0) },
  };
}

const thickness = { thickness: at(`${cured}.thickness`) };
const density = { density: at(`${cured}.density`) };

export const plyThicknessDesign = (inputs: Parameters<typeof plyThickness>[0]): DesignParts => {
  const Vf = fibreVolumeFractionFromMassFraction(1 - inputs.resinMassFraction, densitiesOf(inputs));
  return {
    ours: [
      modulusIsOurs,
      `The fibre volume fraction: it follows from the resin mass fraction of the source, ${inputs.resinMassFraction}.`,
    ],
    ...ofMass(inputs, inputs.fibreArealMass, digits(Vf)),
    held: { Vf: at(`${cured}.fibreVolumeFraction`), ...thickness, ...density },
  };
};

const anyArealMass = '300 g/m^2';
const arealMassIsOurs = 'The areal mass of the fibre: the values of the source are per volume.';

export const massFractionDesign = (inputs: Parameters<typeof massFractionFromDensity>[0]): DesignParts => ({
  ours: [
    modulusIsOurs,
    arealMassIsOurs,
    `The fibre volume fraction: it follows from the density of the laminate in the source, ${inputs.density}.`,
  ],
  ...ofMass(inputs, anyArealMass, digits(fractionFromDensity(inputs))),
  held: { Wf: massFraction },
});

export const curedPlyDesign = (inputs: Parameters<typeof curedPly>[0]): DesignParts => ({
  ours: [modulusIsOurs, ...(inputs.arealMass === undefined ? [arealMassIsOurs] : [])],
  ...ofMass(inputs, inputs.arealMass ?? anyArealMass, inputs.Vf),
  held: {
    ...density,
    Wf: massFraction,
    ...(inputs.arealMass === undefined ? {} : { ...thickness, arealMass: at(`${cured}.arealMass`) }),
  },
});
