import bibliography from '@selvage/reference-data/bibliography.json' with { type: 'json' };
import examples from '@selvage/reference-data/examples/strength.json' with { type: 'json' };
import { describe, expect, it } from 'vitest';
import {
  type Given,
  type GivenVector,
  type PlyInputs,
  plyAt,
  si,
  siVector,
} from '../../../../packages/core/src/examples/inputs.js';
import { rotateStress } from '../../../../packages/core/src/laminate/axes.js';
import { laminate } from '../../../../packages/core/src/laminate/index.js';
import {
  type Discount,
  failure,
  progressiveFailure,
  strengthRatio,
  tsaiWuCoefficients,
} from '../../../../packages/core/src/laminate/strength/index.js';
import type { Strengths } from '../../../../packages/core/src/material/index.js';
import { toSI } from '../../../../packages/core/src/quantity/index.js';

interface Inputs {
  readonly ply: PlyInputs;
  readonly strengths: Record<keyof Strengths, Given>;
  readonly angle: number;
  readonly stress: GivenVector;
  readonly angles: readonly number[];
  readonly plyThickness: Given;
  readonly N: GivenVector;
  readonly discount: Discount;
  readonly factor: number;
}

const strengthsOf = ({ Xt, Xc, Yt, Yc, S }: Inputs['strengths']): Strengths => ({
  Xt: si(Xt, 'stress'),
  Xc: si(Xc, 'stress'),
  Yt: si(Yt, 'stress'),
  Yc: si(Yc, 'stress'),
  S: si(S, 'stress'),
});

function offAxisStrength({ ply, strengths, angle, stress }: Inputs) {
  const one = { ...plyAt(ply, angle, 1), strengths: strengthsOf(strengths) };
  const [s1, s2, t12] = rotateStress(siVector(stress, 'stress'), angle);
  const ratio = (criterion: 'maxStress' | 'tsaiHill' | 'tsaiWu') =>
    strengthRatio(one, [s1, s2, t12], criterion).ratio ?? Number.NaN;
  return { s1, s2, t12, maxStress: ratio('maxStress'), tsaiHill: ratio('tsaiHill'), tsaiWu: ratio('tsaiWu') };
}

function maxStressCheck({ strengths, angle, stress }: Inputs) {
  const { Xt, Yt, S } = strengthsOf(strengths);
  const [s1, s2, t12] = rotateStress(siVector(stress, 'stress'), angle);
  const share = (kept: [number, number, number]) =>
    1 / (strengthRatio({ E1: 1, E2: 1, nu12: 0, strengths: strengthsOf(strengths) }, kept, 'maxStress').ratio ?? 0);
  expect([Xt, Yt, S]).not.toContain(0);
  return { s1, s2, t12, share1: share([s1, 0, 0]), share2: share([0, s2, 0]), share12: share([0, 0, t12]) };
}

function plyDiscount({ ply, strengths, angles, plyThickness, N, discount, factor }: Inputs) {
  const thickness = si(plyThickness, 'length');
  const stack = laminate(
    angles.map((angle) => ({ ...plyAt(ply, angle, thickness), strengths: strengthsOf(strengths) })),
  );
  const load = { N: siVector(N, 'forcePerLength') };
  const { firstPly, lastPly } = progressiveFailure(stack, load, { criterion: 'tsaiWu', discount, factor });
  return {
    firstRatio: firstPly.ratio,
    firstStress: (firstPly.ratio * load.N[0]) / stack.thickness,
    ratio0: failure(stack, load, 'tsaiWu').perPly[0]?.ratio ?? Number.NaN,
    lastRatio: lastPly.ratio,
    lastStrain: lastPly.before.strain[0],
  };
}

const kinds: Record<string, (inputs: Inputs) => object> = {
  'off-axis-strength': offAxisStrength,
  'tsai-wu-coefficients': ({ strengths }) => tsaiWuCoefficients(strengthsOf(strengths)),
  'max-stress-check': maxStressCheck,
  'ply-discount': plyDiscount,
};

describe('the worked examples on strength', () => {
  it('name sources of the bibliography', () => {
    for (const { source } of examples) expect(Object.keys(bibliography)).toContain(source);
  });

  for (const { id, kind, inputs, values } of examples) {
    it(`are met: ${id}`, () => {
      const computed = kinds[kind]!(inputs as unknown as Inputs) as Record<string, number>;
      for (const [key, row] of Object.entries(values)) {
        const found = computed[key]! / toSI(1, row.unit);
        expect(Math.abs(found - row.value), `${key}: ${found} for ${row.printed}`).toBeLessThanOrEqual(
          row.tolerance * (1 + 1e-9),
        );
        // The script's numbers have seven digits.
        expect(Math.abs(found / row.oracle - 1), `${key}: ${found} for ${row.oracle}`).toBeLessThanOrEqual(2e-6);
      }
    });
  }

  it('of Tsai-Hill are 10.94 instead of 16.06 with tensile strengths only', () => {
    // Independent calculation (computed): reference value of the trap in the printed variants.
    const { inputs } = examples.find(({ id }) => id === 'off-axis-strength-carbon-60')! as unknown as {
      inputs: Inputs;
    };
    const one = { ...plyAt(inputs.ply, 60, 1), strengths: strengthsOf(inputs.strengths) };
    const stress = rotateStress(siVector(inputs.stress, 'stress'), 60);
    expect(strengthRatio(one, stress, 'tsaiHill', { variant: 'tensile' }).ratio).toBeCloseTo(10.94, 2);
    expect(strengthRatio(one, stress, 'tsaiHill', { variant: 'crossTerm' }).ratio).toBeCloseTo(16.06, 2);
  });
});
