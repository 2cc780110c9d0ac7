import { describe, expect, it } from 'vitest';
import { drawByWeight } from '../../../../packages/core/src/fracture/coupon/draw-by-weight.js';
import {
  drawSamples,
  middleOf,
  middleOfPriors,
  withOther,
} from '../../../../packages/core/src/fracture/coupon/samples.js';

const draws = drawSamples({ samples: 4000, seed: 5 });

describe('the middle of what is known', () => {
  it('without tests is the median of every prior, as the samples have it', () => {
    const { parameters } = middleOfPriors();
    for (const [name, value] of Object.entries(parameters)) {
      const below = draws.filter((draw) => draw.parameters[name as keyof typeof parameters] < value).length;
      expect(Math.abs(below / draws.length - 0.5), name).toBeLessThan(0.025);
    }
  });

  it('of a triangle from 0 with its mode there is (1 - √½) of its range', () => {
    expect(middleOfPriors().parameters.beddingIn).toBeCloseTo(0.5 * (1 - Math.SQRT1_2), 12);
  });

  it('of weighted samples is their weighted geometric mean, the arithmetic one where 0 occurs', () => {
    const [a, b] = draws as [(typeof draws)[number], (typeof draws)[number]];
    const middle = middleOf([a, b], [3, 1]);
    expect(middle.armStrengthFactor).toBeCloseTo(a.armStrengthFactor ** 0.75 * b.armStrengthFactor ** 0.25, 12);
    expect(middle.parameters.beddingIn).toBeCloseTo((3 * a.parameters.beddingIn + b.parameters.beddingIn) / 4, 12);
    expect(middle.bondPlace).toBeCloseTo((3 * a.bondPlace! + b.bondPlace!) / 4, 12);
  });
});

describe('samples of other arms or another bond', () => {
  const correlation = (one: readonly number[], other: readonly number[]) => {
    const centred = (values: readonly number[]) => {
      const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
      return values.map((value) => value - mean);
    };
    const [x, y] = [centred(one.map(Math.log)), centred(other.map(Math.log))];
    const dot = (p: readonly number[], q: readonly number[]) => p.reduce((sum, value, i) => sum + value * q[i]!, 0);
    return dot(x, y) / Math.sqrt(dot(x, x) * dot(y, y));
  };

  it('scatter apart from the own ones, and the rest with them', () => {
    const other = withOther(draws, { arms: true, bond: false });
    for (const name of ['armStrengthFactor', 'armStiffnessFactor', 'bondToughnessFactor'] as const) {
      const found = correlation(
        draws.map((draw) => draw[name]),
        other.map((draw) => draw[name]),
      );
      if (name === 'bondToughnessFactor') expect(found).toBeCloseTo(1, 12);
      else expect(Math.abs(found)).toBeLessThan(0.06);
    }
    expect(other.map(({ parameters }) => parameters)).toEqual(draws.map(({ parameters }) => parameters));
    const bond = withOther(draws, { arms: false, bond: true });
    expect(bond[0]).toMatchObject({
      ...draws[0],
      bondToughnessFactor: draws[2000]!.bondToughnessFactor,
      bondPlace: draws[2000]!.bondPlace,
    });
  });
});

describe('samples that stand for all', () => {
  it('are as many of each as it weighs', () => {
    const chosen = drawByWeight([1, 0, 3, 2, 0, 0], 6);
    expect(chosen).toEqual([0, 2, 2, 2, 3, 3]);
  });

  it('are evenly spaced where all weigh alike, and no more than there are', () => {
    expect(drawByWeight(Array(1000).fill(0.25), 4)).toEqual([125, 375, 625, 875]);
    expect(drawByWeight([1, 1], 60)).toEqual([0, 1]);
  });
});
