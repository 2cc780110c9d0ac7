import { engineeringConstants, laminate, stiffness } from '../laminate/index.js';
import {
  halpinTsaiEta,
  type MicromechanicsModel,
  type Ply,
  plyFromConstituents,
  ruleOfMixtures,
} from '../material/index.js';
import { type Given, isotropicPly, si } from './inputs.js';
import type { ComputedValues } from './types.js';

interface Phases {
  readonly Vf: number;
  readonly Ef: Given;
  readonly Em: Given;
  readonly nuf?: number;
  readonly num?: number;
  readonly alphaf?: Given;
  readonly alpham?: Given;
}

/** The ply of isotropic fibre and resin. Masses do not enter its stiffness; an example without Poisson ratios has 0. */
function plyOf(phases: Phases, model: MicromechanicsModel = {}): Ply {
  const { nuf = 0, num = 0, alphaf, alpham } = phases;
  const fibre = isotropicPly(si(phases.Ef, 'modulus'), nuf, 1);
  const alpha1 = alphaf === undefined ? undefined : si(alphaf, 'expansion');
  const alpha = alpham === undefined ? undefined : si(alpham, 'expansion');
  return plyFromConstituents({
    fibre: {
      name: 'fibre',
      E1: fibre.E1,
      E2: fibre.E2,
      G12: fibre.G12,
      nu12: nuf,
      density: 1,
      sources: [],
      ...(alpha1 === undefined ? {} : { alpha1 }),
    },
    resin: {
      name: 'resin',
      E: si(phases.Em, 'modulus'),
      nu: num,
      density: 1,
      sources: [],
      ...(alpha === undefined ? {} : { alpha }),
    },
    arealMass: 1,
    fibreVolumeFraction: phases.Vf,
    model,
  });
}

/** Constants of a ply by the rule of mixtures, the inverse rule and, where xi is given, Halpin-Tsai. */
export function micromechanics(inputs: Phases & { xiE2?: number; xiG12?: number }): ComputedValues {
  const { Vf, nuf, num, xiE2, xiG12 } = inputs;
  const [Ef, Em] = [si(inputs.Ef, 'modulus'), si(inputs.Em, 'modulus')];
  const series = plyOf(inputs, { E2: 'inverse', G12: 'inverse' });
  const stiffnesses = {
    E1: series.E1,
    E2InverseRule: series.E2,
    fibreLoadShare: ruleOfMixtures(Ef, 0, Vf) / ruleOfMixtures(Ef, Em, Vf),
  };
  if (nuf === undefined || num === undefined) return stiffnesses;
  const [Gf, Gm] = [isotropicPly(Ef, nuf, 1).G12, isotropicPly(Em, num, 1).G12];
  const shear = {
    nu12: series.nu12,
    nu21: engineeringConstants(stiffness(laminate([series]))).inPlane.nuyx,
    Gf,
    Gm,
    G12InverseRule: series.G12,
  };
  if (xiE2 === undefined || xiG12 === undefined) return { ...stiffnesses, ...shear };
  const halpin = plyOf(inputs, { xiE2, xiG12 });
  return {
    ...stiffnesses,
    ...shear,
    etaE2: halpinTsaiEta(Ef, Em, xiE2),
    E2HalpinTsai: halpin.E2,
    etaG12: halpinTsaiEta(Gf, Gm, xiG12),
    G12HalpinTsai: halpin.G12,
  };
}

interface Hybrid {
  readonly fibres: readonly { readonly E: Given; readonly Vf: number }[];
  readonly Em: Given;
  readonly Vm: number;
}

/** Modulus along the fibres of several kinds in one resin, one kind mixed in after the other. */
export function hybridMicromechanics({ fibres, Em, Vm }: Hybrid): ComputedValues {
  let volume = Vm;
  let E1 = si(Em, 'modulus');
  for (const { E, Vf } of fibres) {
    volume += Vf;
    E1 = ruleOfMixtures(si(E, 'modulus'), E1, Vf / volume);
  }
  return { E1 };
}

/** Thermal expansion of a ply of isotropic fibre and resin. */
export function expansionMicromechanics(inputs: Phases): ComputedValues {
  return { ...plyOf(inputs).expansion };
}
