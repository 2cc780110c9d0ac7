import edge from '@selvage/reference-data/examples/edge.json' with { type: 'json' };
import laminates from '@selvage/reference-data/examples/laminates.json' with { type: 'json' };
import plates from '@selvage/reference-data/examples/plates.json' with { type: 'json' };
import { describe, expect, it } from 'vitest';
import { type StackInputs, si, siVector, stackOf } from '../../packages/core/src/examples/inputs.js';
import { compute } from '../../packages/core/src/examples/kinds.js';
import { respond, stiffness } from '../../packages/core/src/laminate/index.js';
import { toSI } from '../../packages/core/src/quantity/index.js';

/**
 * What the independent script gives beyond the printed values of an example: inverse stiffness, and states in ply axes.
 * Each list of numbers is compared at 1e-9 of its largest one.
 */
const example = (id: string) =>
  laminates.find((one) => one.id === id) as unknown as { inputs: never; fullPrecision: unknown };

function expectAlike(found: readonly number[], expected: readonly number[], place: string): void {
  const scale = Math.max(...expected.map(Math.abs));
  expect(found.length, place).toBe(expected.length);
  found.forEach((value, i) => {
    expect(Math.abs(value - expected[i]!), `${place} ${i}`).toBeLessThanOrEqual(1e-9 * scale);
  });
}

describe('the independent script in full precision', () => {
  it('has the same inverse of A, B and D for [0/30/-45], the coupling block included', () => {
    const { inputs, fullPrecision } = example('stiffness-three-plies-carbon');
    const { abdInverse } = fullPrecision as { abdInverse: number[][] };
    const { a, b, d } = stiffness(stackOf(inputs));
    for (const i of [0, 1, 2]) {
      expectAlike(a[i]!, abdInverse[i]!.slice(0, 3), `a row ${i}`);
      expectAlike(b[i]!, abdInverse[i]!.slice(3), `b row ${i}`);
      expectAlike(d[i]!, abdInverse[i + 3]!.slice(3), `d row ${i}`);
    }
  });

  it('has the same stress and strain at the faces and the middle of every ply, in laminate and in ply axes', () => {
    const { inputs, fullPrecision } = example('response-three-plies-carbon');
    const { plies } = fullPrecision as { plies: Record<string, { z: number } & Record<string, number[]>> };
    const given: StackInputs & { N: [string, string, string]; M: [string, string, string] } = inputs;
    const response = respond(stackOf(given), {
      N: siVector(given.N, 'forcePerLength'),
      M: siVector(given.M, 'momentPerLength'),
    });
    const points = response.plies.flatMap(({ angle, top, middle, bottom }, k) =>
      [['top', top] as const, ['mid', middle] as const, ['bot', bottom] as const].map(
        ([face, point]) => [`ply${k + 1}(${angle}).${face}`, point] as const,
      ),
    );
    expect(points.map(([place]) => place)).toEqual(Object.keys(plies));
    for (const [place, point] of points) {
      const script = plies[place]!;
      expect(point.z, place).toBeCloseTo(script.z, 15);
      expectAlike(point.strain, script.eps_xy!, `${place} strain`);
      expectAlike(point.stress, script.sigma_xy_Pa!, `${place} stress`);
      expectAlike(point.strain12, script.eps_12!, `${place} strain12`);
      expectAlike(point.stress12, script.sigma_12_Pa!, `${place} stress12`);
    }
  });

  it('has the same residual stresses in the cooled [0/90]', () => {
    const { inputs, fullPrecision } = example('thermal-response-cross-ply-carbon');
    const { stressPa } = fullPrecision as { stressPa: Record<string, number[]> };
    const given: StackInputs & { temperatureChange: string } = inputs;
    const { plies } = respond(stackOf(given), { temperatureChange: si(given.temperatureChange, 'temperatureChange') });
    for (const { angle, top, middle, bottom } of plies) {
      expectAlike(top.stress, stressPa[`${angle}.top`]!, `${angle} top`);
      expectAlike(middle.stress, stressPa[`${angle}.mid`]!, `${angle} middle`);
      expectAlike(bottom.stress, stressPa[`${angle}.bot`]!, `${angle} bottom`);
    }
  });

  it('has the same bending stiffness of [30/-30/0]s, which is not free of bend-twist coupling', () => {
    const { inputs, fullPrecision } = example('stiffness-angle-ply-carbon');
    const { A, D } = fullPrecision as { A: number[][]; D: number[][] };
    const s = stiffness(stackOf(inputs));
    for (const i of [0, 1, 2]) {
      expectAlike(s.A[i]!, A[i]!, `A row ${i}`);
      expectAlike(s.D[i]!, D[i]!, `D row ${i}`);
    }
  });

  it('has the same first frequencies of a square [0/90/90/0] plate, with shear and without rotary inertia', () => {
    for (const one of plates.filter(({ kind }) => kind === 'cross-ply-plate')) {
      const computed = compute(one);
      for (const [key, value] of Object.entries(one.fullPrecision ?? {})) {
        expect(Math.abs(computed[key]! / value - 1), `${one.id} ${key}`).toBeLessThan(one.oracleTolerance);
      }
    }
  });

  it('has the same moduli of a laminate before and after its edge parts', () => {
    for (const one of edge) {
      const { unit, ...moduli } = one.fullPrecision;
      const computed = compute(one);
      for (const [key, value] of Object.entries(moduli)) {
        expect(Math.abs(computed[key]! / toSI(value, unit) - 1), key).toBeLessThan(one.oracleTolerance);
      }
    }
  });
});
