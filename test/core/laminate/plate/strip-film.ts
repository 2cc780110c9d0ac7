import { Matrix, solve } from 'ml-matrix';
import type { Stiffness } from '../../../../packages/core/src/laminate/index.js';

const three = [-Math.sqrt(0.6), 0, Math.sqrt(0.6)] as const;
const weights = [5 / 9, 8 / 9, 5 / 9] as const;

/**
 * Force per length, N/m, at which a film clamped at both ends buckles, from the second variation of ∫ ½ (e·A e + 2 e·B κ + κ·D κ) - ½ N w'²
 * with e = (u', 0, v') and κ = (-w'', 0, 0): quadratic elements for u and v, cubic ones for w, inverse iteration. From above.
 */
export function stripInElements({ A, B, D }: Stiffness, length: number, elements: number): number {
  const h = 1 / elements; // of the length, w in lengths
  const nodes = 2 * elements + 1;
  const count = 2 * nodes + 2 * (elements + 1);
  const K = Array.from({ length: count }, () => new Array<number>(count).fill(0));
  const S = Array.from({ length: count }, () => new Array<number>(count).fill(0));
  const at = (m: Stiffness['A'], i: number, j: number): number => m[i]?.[j] ?? 0;
  for (let e = 0; e < elements; e++) {
    const first = 2 * nodes + 2 * e;
    three.forEach((s, g) => {
      const weight = (weights[g]! * h) / 2;
      const slopes = [s - 0.5, -2 * s, s + 0.5].map((value) => (2 * value) / h);
      const t = (s + 1) / 2;
      const tilts = [6 * t * t - 6 * t, (1 - 4 * t + 3 * t * t) * h, 6 * t - 6 * t * t, (3 * t * t - 2 * t) * h].map(
        (value) => value / h,
      );
      const bends = [12 * t - 6, (6 * t - 4) * h, 6 - 12 * t, (6 * t - 2) * h].map((value) => -value / (h * h));
      // Rows: unknown, what it adds to u', v', κ (over the length) and w'.
      const terms = [
        ...slopes.map((value, i) => [2 * e + i, value, 0, 0, 0] as const),
        ...slopes.map((value, i) => [nodes + 2 * e + i, 0, value, 0, 0] as const),
        ...bends.map((value, i) => [first + i, 0, 0, value, tilts[i]!] as const),
      ];
      for (const [i, u, v, k, w] of terms) {
        for (const [j, u2, v2, k2, w2] of terms) {
          const stretching = u * (at(A, 0, 0) * u2 + at(A, 0, 2) * v2) + v * (at(A, 0, 2) * u2 + at(A, 2, 2) * v2);
          const coupling = k * (at(B, 0, 0) * u2 + at(B, 0, 2) * v2) + k2 * (at(B, 0, 0) * u + at(B, 0, 2) * v);
          K[i]![j]! += weight * (stretching + coupling / length + (k * k2 * at(D, 0, 0)) / length ** 2);
          S[i]![j]! += weight * w * w2;
        }
      }
    });
  }
  const held = new Set([0, nodes - 1, nodes, 2 * nodes - 1, 2 * nodes, 2 * nodes + 1, count - 2, count - 1]);
  const free = Array.from({ length: count }, (_, i) => i).filter((i) => !held.has(i));
  const part = (m: number[][]) => free.map((i) => free.map((j) => m[i]![j]!));
  const [k, s] = [part(K), part(S)];
  const times = (m: number[][], x: readonly number[]) =>
    m.map((row) => row.reduce((sum, value, j) => sum + value * x[j]!, 0));
  const dot = (x: readonly number[], y: readonly number[]) => x.reduce((sum, value, i) => sum + value * y[i]!, 0);
  let x: number[] = free.map((i) => (i >= 2 * nodes && i % 2 === 0 ? 1 : 0.1));
  for (let i = 0; i < 30; i++) {
    const next = solve(new Matrix(k), Matrix.columnVector(times(s, x))).getColumn(0);
    const size = Math.max(...next.map(Math.abs));
    x = next.map((value) => value / size);
  }
  return dot(x, times(k, x)) / dot(x, times(s, x));
}

/**
 * Least energy of a buckled film under the compression e0, per width, beyond that of the flat film, J/m: w = q (1 - cos 2πx/l)/2 with u' and v'
 * as free series of cos 2πx/l and cos 4πx/l, and all of A, B and D. The energy is a square form in them and a polynomial in q².
 */
export function buckledEnergy({ A, B, D }: Stiffness, length: number, e0: number): number {
  const [A11, A16, A66] = [A[0]![0]!, A[0]![2]!, A[2]![2]!];
  const [B11, B16, D11] = [B[0]![0]!, B[0]![2]!, D[0]![0]!];
  const points = 16; // trapezoids over a period: exact for these waves
  const k = (2 * Math.PI) / length;
  const energy = (q: number): number => {
    const unknowns = 4;
    const fields = Array.from({ length: points }, (_, i) => {
      const [c, s] = [Math.cos((2 * Math.PI * i) / points), Math.sin((2 * Math.PI * i) / points)];
      return { waves: [c, 2 * c * c - 1], stretch: -e0 + (q * k * s) ** 2 / 8, bend: (-q * k * k * c) / 2 };
    });
    const matrix = Array.from({ length: unknowns }, () => new Array<number>(unknowns).fill(0));
    const right = new Array<number>(unknowns).fill(0);
    let alone = 0;
    for (const { waves, stretch, bend } of fields) {
      const push = [A11 * stretch + B11 * bend, A16 * stretch + B16 * bend] as const;
      alone += (A11 * stretch * stretch) / 2 + B11 * stretch * bend + (D11 * bend * bend) / 2;
      for (let i = 0; i < unknowns; i++) {
        right[i]! -= waves[i % 2]! * (i < 2 ? push[0] : push[1]);
        for (let j = 0; j < unknowns; j++) {
          const a = i < 2 && j < 2 ? A11 : i >= 2 && j >= 2 ? A66 : A16;
          matrix[i]![j]! += a * waves[i % 2]! * waves[j % 2]!;
        }
      }
    }
    const found = solve(new Matrix(matrix), Matrix.columnVector(right)).getColumn(0);
    const relaxed = found.reduce((sum, value, i) => sum + value * right[i]!, 0) / 2;
    return (length / points) * (alone - relaxed) - (length * A11 * e0 * e0) / 2;
  };
  // Even in q and of the fourth degree: two values give it.
  const unit = Math.sqrt(e0) * length;
  const [one, two] = [energy(unit), energy(2 * unit)];
  const fourth = (two - 4 * one) / 12;
  const second = one - fourth;
  return second >= 0 ? 0 : -(second * second) / (4 * fourth);
}
