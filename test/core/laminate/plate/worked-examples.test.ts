import examples from '@selvage/reference-data/examples/plates.json' with { type: 'json' };
import { describe, expect, it } from 'vitest';
import { laminate, stiffness } from '../../../../packages/core/src/laminate/index.js';
import {
  ellipseBlister,
  plateBuckling,
  plateVibration,
  stripBlister,
} from '../../../../packages/core/src/laminate/plate/index.js';
import { type Matrix2, transverseShear } from '../../../../packages/core/src/laminate/shear/index.js';
import { plyOf } from '../plies.js';

const steel = (thickness: number) =>
  laminate([plyOf({ E1: 200e9, E2: 200e9, G12: 200e9 / 2.6, nu12: 0.3, density: 7800 }, 0, thickness)]);
const D = (stack: ReturnType<typeof steel>): number => stiffness(stack).D[0][0]!;

interface CrossPly {
  readonly stiffnessRatio: number;
  readonly G12: number;
  readonly G13: number;
  readonly G23: number;
  readonly nu12: number;
  readonly shearFactor: number;
  readonly bucklingSlenderness: number;
  readonly vibrationSlenderness: number;
}

/** What the library computes for each kind of example. */
const kinds: Record<string, (inputs: never) => Record<string, number>> = {
  'plate-frequencies': ({ stiffnessRatio, twistRatio }: { stiffnessRatio: number; twistRatio: number }) => {
    const nu12 = 0.25;
    const E2 = 1e9;
    const Q22 = E2 / (1 - (nu12 * nu12) / stiffnessRatio);
    const G12 = (Q22 * (twistRatio - nu12)) / 2;
    const stack = laminate([plyOf({ E1: stiffnessRatio * E2, E2, G12, nu12, density: 1000 }, 0, 1e-3)]);
    const D22 = stiffness(stack).D[1][1]!;
    const { modes } = plateVibration(stack, { a: 1, b: 1 }, { modes: 8, rotaryInertia: false });
    return Object.fromEntries(
      modes.map(({ m, n, thin }) => [`k${m}${n}`, (2 * Math.PI * thin) / (Math.PI ** 2 * Math.sqrt(D22))]),
    );
  },
  'plate-buckling-aspect': ({ aspects }: { aspects: number[] }) => {
    const stack = steel(1e-3);
    return Object.fromEntries(
      aspects.map((aspect) => {
        const { thin } = plateBuckling(stack, { a: aspect * 0.5, b: 0.5 }, { Nx: -1 });
        return [`k${aspect}`, (-thin.Nx * 0.25) / (Math.PI ** 2 * D(stack))];
      }),
    );
  },
  'cross-ply-plate': (given: CrossPly) => {
    const material = { E1: given.stiffnessRatio, E2: 1, ...given, density: 1 };
    const stack = laminate([0, 90, 90, 0].map((angle) => plyOf(material, angle, 0.25)));
    const [x, y] = transverseShear(stack).sums;
    const H: Matrix2 = [
      [given.shearFactor * x, 0],
      [0, given.shearFactor * y],
    ];
    const a = given.bucklingSlenderness;
    const buckling = plateBuckling(stack, { a, b: a }, { Nx: -1, H });
    const s = given.vibrationSlenderness;
    const omega = (rotaryInertia: boolean) => plateVibration(stack, { a: s, b: s }, { H, rotaryInertia }).modes[0]!;
    return {
      NThin: -buckling.thin.Nx * a * a,
      NFirstOrder: -buckling.withShear.Nx * a * a,
      omegaThin: 2 * Math.PI * omega(true).thin * s * s,
      omegaFirstOrder: 2 * Math.PI * omega(true).withShear * s * s,
      omegaThinNoRotary: 2 * Math.PI * omega(false).thin * s * s,
    };
  },
  'clamped-circle': () => {
    const [stack, R] = [steel(1e-3), 0.1];
    const { N } = ellipseBlister(stack, { a: R, b: R, strain: [-1e-3, -1e-3, 0] });
    return { k: (-N[0] * R * R) / D(stack) };
  },
  'strip-blister': () => {
    const [stack, h, l] = [steel(1e-3), 1e-3, 0.05];
    const { criticalN, criticalStrain } = stripBlister(stack, { length: l });
    return { kN: (-criticalN * l * l) / D(stack), kStrain: -criticalStrain * (l / h) ** 2 };
  },
};

describe.each(examples)('$source, $where ($access): $title', (example) => {
  const computed = kinds[example.kind]!(example.inputs as never);

  it.each(Object.entries(example.values))('%s is as printed and as the independent script has it', (key, value) => {
    expect(Math.abs(computed[key]! - value!.value)).toBeLessThanOrEqual(value!.tolerance * (1 + 1e-9));
    expect(Math.abs(computed[key]! / value!.oracle - 1)).toBeLessThan(1e-6);
  });

  it('has the further numbers of the independent script', () => {
    for (const [key, value] of Object.entries(example.fullPrecision ?? {})) {
      expect(Math.abs(computed[key]! / (value as number) - 1), key).toBeLessThan(1e-6);
    }
  });
});
