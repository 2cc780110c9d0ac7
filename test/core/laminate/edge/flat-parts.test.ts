import { describe, expect, it } from 'vitest';
import { edgeDelamination, flatEdgeRelease } from '../../../../packages/core/src/laminate/edge/index.js';
import { stiffness } from '../../../../packages/core/src/laminate/index.js';
import { expectNear, graphite, problemCode, stackOf } from '../plies.js';

describe('the release of flat parts, by the formula as printed', () => {
  const modulus = (code: string): number => {
    const part = stackOf(graphite, code, 2e-4);
    const [[A11 = 0, A12 = 0, A16 = 0], [, A22 = 0, A26 = 0], [, , A66 = 0]] = stiffness(part).A;
    const det = A22 * A66 - A26 * A26;
    return (A11 - (A12 * A12 * A66 - 2 * A12 * A16 * A26 + A16 * A16 * A22) / det) / part.thickness;
  };

  it('is t (E - E*)/2 per square of strain, with moduli of A alone weighed by thickness, from either interface of a pair', () => {
    const stack = stackOf(graphite, '[0/90/45/-45]s', 2e-4);
    const [E, parted] = [modulus('[0/90/45/-45]s'), (modulus('[0/90]') + modulus('[45/-45]s')) / 2];
    for (const below of [2, 6]) {
      const found = flatEdgeRelease(stack, below);
      expectNear([found.modulus, found.partedModulus], [E, parted], 1e-9);
      expectNear([found.perSquare], [(stack.thickness * (E - parted)) / 2], 1e-9);
    }
  });

  it('has two halves at the mid-plane', () => {
    const found = flatEdgeRelease(stackOf(graphite, '[0/90/45/-45]s', 2e-4), 4);
    expectNear([found.partedModulus], [modulus('[0/90/45/-45]')], 1e-9);
  });

  it.each(['[30/-30/90]s', '[0/30/0/90]s', '[90/0]s'])(
    'is two fronts of the free parts of %s, whose outer parts do not bend',
    (code) => {
      const stack = stackOf(graphite, code, 2e-4);
      const below = stack.plies.length / 2 - 1;
      const { pair } = edgeDelamination(stack).interfaces[below - 1]!;
      expectNear([2 * pair!.perSquare], [flatEdgeRelease(stack, below).perSquare], 1e-8);
    },
  );

  it.each([
    ['[45/-45/0/90]s', 3],
    ['[45/90/-45/0]s', 2],
  ] as const)('is less than that of the free parts of %s, whose outer part bends', (code, below) => {
    const stack = stackOf(graphite, code, 2e-4);
    const { pair } = edgeDelamination(stack).interfaces[below - 1]!;
    expect(pair!.touches).toBe(false);
    expect(2 * pair!.perSquare).toBeGreaterThan(1.02 * flatEdgeRelease(stack, below).perSquare);
  });

  it('is refused where there is no interface and for an unsymmetric laminate', () => {
    const stack = stackOf(graphite, '[0/90]s', 2e-4);
    for (const below of [0, 4, 1.5, Number.NaN]) {
      expect(problemCode(() => flatEdgeRelease(stack, below))).toBe('out-of-range');
    }
    expect(problemCode(() => flatEdgeRelease(stackOf(graphite, '[0/90]', 2e-4), 1))).toBe('not-admissible');
  });
});
