import { laminate, plateBuckling, plateVibration, stiffness, transverseShear } from '../laminate/index.js';
import { ply } from '../material/index.js';
import { isotropicPly } from './inputs.js';
import { type ModulusRatios, unitStack } from './ratio-inputs.js';
import type { ComputedValues } from './types.js';

interface StiffnessRatios {
  readonly stiffnessRatio: number;
  readonly twistRatio: number;
}

/** How many of the lowest modes are compared. */
export const plateModes = 8;

/** A ply of which D11/D22 and (D12 + 2 D66)/D22 are given; Pa. */
export function plyOfRatios({ stiffnessRatio, twistRatio }: StiffnessRatios) {
  const nu12 = 0.25; // any: only the sum D12 + 2 D66 matters
  const Q22 = 1e9;
  const E2 = Q22 * (1 - nu12 ** 2 / stiffnessRatio);
  return { E1: stiffnessRatio * E2, E2, G12: (Q22 * (twistRatio - nu12)) / 2, nu12, density: 1000 };
}

/** Natural frequencies of a thin square plate with D11/D22 and (D12 + 2 D66)/D22 given: omega b^2/pi^2 sqrt(arealMass/D22). */
export function plateFrequencies(inputs: StiffnessRatios): ComputedValues {
  const stack = laminate([ply({ ...plyOfRatios(inputs), thickness: 1e-3 })]);
  const D22 = stiffness(stack).D[1]?.[1] ?? Number.NaN;
  const { modes } = plateVibration(stack, { a: 1, b: 1 }, { modes: plateModes, rotaryInertia: false });
  return Object.fromEntries(
    modes.map(({ m, n, thin }) => [`k${m}${n}`, (2 * Math.PI * thin) / (Math.PI ** 2 * Math.sqrt(D22))]),
  );
}

/** Any will do: the buckling coefficient is of no material and of no size. */
export const panel = { E: 200e9, nu: 0.3, thickness: 1e-3, b: 0.5 } as const;

/** Buckling of isotropic plates pressed along a, for each a/b: N b^2/(pi^2 D). */
export function plateBucklingByAspect({ aspects }: { aspects: readonly number[] }): ComputedValues {
  const stack = laminate([isotropicPly(panel.E, panel.nu, panel.thickness)]);
  const D = stiffness(stack).D[0]?.[0] ?? Number.NaN;
  const { b } = panel;
  return Object.fromEntries(
    aspects.map((aspect) => {
      const { thin } = plateBuckling(stack, { a: aspect * b, b }, { Nx: -1 });
      return [`k${aspect}`, (-thin.Nx * b * b) / (Math.PI ** 2 * D)];
    }),
  );
}

interface CrossPlyPlate {
  /** E1/E2; shear moduli over E2. */
  readonly stiffnessRatio: number;
  readonly G12: number;
  readonly G13: number;
  readonly G23: number;
  readonly nu12: number;
  /** Of the sum of G t. */
  readonly shearFactor: number;
  /** Side over thickness. */
  readonly bucklingSlenderness: number;
  readonly vibrationSlenderness: number;
}

/** Square [0/90/90/0] plate: buckling load along x, N a^2/(E2 h^3), and first frequency, omega a^2/h sqrt(rho/E2). */
export function crossPlyPlate(inputs: CrossPlyPlate): ComputedValues {
  const { stiffnessRatio: E1, G12, G13, G23, nu12, shearFactor } = inputs;
  const material: ModulusRatios = { E1, E2: 1, G12, G13, G23, nu12 };
  const stack = unitStack(material, '[0/90/90/0]');
  const [x, y] = transverseShear(stack).sums;
  const H = [
    [shearFactor * x, 0],
    [0, shearFactor * y],
  ] as const;
  const a = inputs.bucklingSlenderness;
  const { thin, withShear } = plateBuckling(stack, { a, b: a }, { Nx: -1, H });
  const s = inputs.vibrationSlenderness;
  const first = (rotaryInertia: boolean): { thin: number; withShear: number } => {
    const [mode] = plateVibration(stack, { a: s, b: s }, { H, rotaryInertia }).modes;
    return { thin: mode?.thin ?? Number.NaN, withShear: mode?.withShear ?? Number.NaN };
  };
  const omega = (frequency: number): number => 2 * Math.PI * frequency * s * s;
  const inert = first(true);
  return {
    NThin: -thin.Nx * a * a,
    NFirstOrder: -withShear.Nx * a * a,
    omegaThin: omega(inert.thin),
    omegaFirstOrder: omega(inert.withShear),
    omegaThinNoRotary: omega(first(false).thin),
  };
}
