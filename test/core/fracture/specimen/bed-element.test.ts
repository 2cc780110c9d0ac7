import { Matrix, solve } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import { bedStretch, type Ends, freeStretch } from '../../../../packages/core/src/fracture/specimen/bed-element.js';
import { expectNear } from './support.js';

/** Stiffness of a stretch by its four unknowns: lift and slope left, lift and slope right. */
function matrixOf({ symmetric: s, opposed: a }: Ends): Matrix {
  return new Matrix([
    [s[0] + a[0], -s[1] - a[1], s[0] - a[0], s[1] - a[1]],
    [-s[1] - a[1], s[2] + a[2], a[1] - s[1], a[2] - s[2]],
    [s[0] - a[0], a[1] - s[1], s[0] + a[0], s[1] + a[1]],
    [s[1] - a[1], a[2] - s[2], s[1] + a[1], s[2] + a[2]],
  ]).mul(0.5);
}

/** The same stretch of many plain elements: linear lift and slope, shear at the middle, the bed at the ends. */
function plainElements({ D, S }: { D: number; S: number }, k: number, length: number, count: number): Matrix {
  const n = 2 * (count + 1);
  const l = length / count;
  const K = Matrix.zeros(n, n);
  const add = (i: number, rows: readonly (readonly number[])[]) => {
    rows.forEach((line, p) => {
      line.forEach((value, q) => {
        K.set(2 * i + p, 2 * i + q, K.get(2 * i + p, 2 * i + q) + value);
      });
    });
  };
  const strain = [-1 / l, -0.5, 1 / l, -0.5];
  const bend = [0, -1 / l, 0, 1 / l];
  const bed = [(k * l) / 2, 0, (k * l) / 2, 0];
  for (let i = 0; i < count; i++) {
    add(
      i,
      strain.map((p, r) => strain.map((q, c) => S * l * p * q + D * l * bend[r]! * bend[c]! + (r === c ? bed[r]! : 0))),
    );
  }
  const outer = [0, 1, n - 2, n - 1];
  if (count === 1) return K;
  const inner = Array.from({ length: n - 4 }, (_, i) => i + 2);
  const coupling = K.selection(inner, outer);
  return K.selection(outer, outer).sub(coupling.transpose().mmul(solve(K.selection(inner, inner), coupling)));
}

/** Largest difference, each entry over the scale of its row and column. */
function apart(found: Matrix, wanted: Matrix): number {
  let worst = 0;
  for (let i = 0; i < 4; i++) {
    for (let j = 0; j < 4; j++) {
      const scale = Math.sqrt(wanted.get(i, i) * wanted.get(j, j));
      worst = Math.max(worst, Math.abs(found.get(i, j) - wanted.get(i, j)) / scale);
    }
  }
  return worst;
}

const D = 20;
const k = 4.5e12;
const doubleRoot = 1 / (2 * Math.sqrt(1 / (D * k)));

describe('the stretch of a beam on its bed', () => {
  it.each([
    ['waves', 3.3e6, 2e-3],
    ['waves, long', 3.3e6, 20e-3],
    ['no shear', 1e12, 2e-3],
    ['a double root', doubleRoot, 2e-3],
    ['nearly a double root', doubleRoot * (1 - 1e-9), 2e-3],
    ['two roots, close', doubleRoot * 0.98, 20e-3],
    ['two roots, apart', 2e5, 2e-3],
  ])('joins two halves into the whole: %s', (_, S, length) => {
    const half = matrixOf(bedStretch({ D, S }, k, length / 2));
    const joined = Matrix.zeros(6, 6);
    for (const at of [0, 2]) {
      for (let i = 0; i < 4; i++) {
        for (let j = 0; j < 4; j++) joined.set(at + i, at + j, joined.get(at + i, at + j) + half.get(i, j));
      }
    }
    const coupling = joined.selection([2, 3], [0, 1, 4, 5]);
    const whole = joined
      .selection([0, 1, 4, 5], [0, 1, 4, 5])
      .sub(coupling.transpose().mmul(solve(joined.selection([2, 3], [2, 3]), coupling)));
    expect(apart(whole, matrixOf(bedStretch({ D, S }, k, length)))).toBeLessThan(1e-11);
  });

  it('is what plain finite elements tend to, with the square of their length', () => {
    const exact = matrixOf(bedStretch({ D, S: 3.3e6 }, k, 3e-3));
    const errors = [16, 32, 64].map((count) => apart(plainElements({ D, S: 3.3e6 }, k, 3e-3, count), exact));
    expect(errors[2]).toBeLessThan(2e-3);
    for (const [i, error] of errors.slice(1).entries()) {
      const order = Math.log2(errors[i]! / error);
      expect(order).toBeGreaterThan(1.9);
      expect(order).toBeLessThan(2.1);
    }
  });

  it('without a bed is the free stretch', () => {
    const beam = { D, S: 3.3e6 };
    expect(apart(matrixOf(bedStretch(beam, 1, 2e-3)), matrixOf(freeStretch(beam, 2e-3)))).toBeLessThan(1e-7);
  });

  it('free, is the cantilever with shear', () => {
    const [S, l, P] = [3.3e6, 30e-3, 7];
    const K = matrixOf(freeStretch({ D, S }, l));
    const bent = solve(K.selection([0, 1], [0, 1]), Matrix.columnVector([P, 0])).to1DArray();
    expectNear(bent[0]!, (P * l ** 3) / (3 * D) + (P * l) / S, 1e-11);
    expectNear(bent[1]!, (-P * l * l) / (2 * D), 1e-11);
  });
});
