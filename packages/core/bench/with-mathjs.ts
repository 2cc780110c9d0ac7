import { add, diag, inv, type Matrix, matrix, multiply, zeros } from 'mathjs';
import { type Answer, type Job, load, tsaiWuRatio } from './job.js';

/** The job with mathjs as one writes it: transformation matrices, sums of 3x3 matrices, the inverse of the 6x6. */
export function withMathjs({ laminates, Q: [Q11, Q12, Q22, Q66] }: Job, angles: readonly number[]) {
  const Q = matrix([
    [Q11, Q12, 0],
    [Q12, Q22, 0],
    [0, 0, Q66],
  ]);
  const R = matrix(diag([1, 1, 2]));
  const Rinverse = inv(R);
  const force = matrix([...load]);
  const rotation = (angle: number): Matrix => {
    const [c, s] = [Math.cos((angle * Math.PI) / 180), Math.sin((angle * Math.PI) / 180)];
    return matrix([
      [c * c, s * s, 2 * c * s],
      [s * s, c * c, -2 * c * s],
      [-c * s, c * s, c * c - s * s],
    ]);
  };
  const qbar = (angle: number): Matrix => {
    const T = rotation(angle);
    return multiply(multiply(multiply(multiply(inv(T), Q), R), T), Rinverse);
  };
  /** From strain in laminate axes to stress in ply axes. */
  const stressOf = (angle: number): Matrix => multiply(multiply(multiply(Q, R), rotation(angle)), Rinverse);
  const known = new Map(angles.map((angle) => [angle, { stiff: qbar(angle), stress: stressOf(angle) }]));
  const laminate = (
    list: readonly number[],
    thicknesses: readonly number[],
    of: (angle: number) => { stiff: Matrix; stress: Matrix },
  ): Answer => {
    const plies = list.map(of);
    const h = thicknesses.reduce((sum, t) => sum + t, 0);
    let A = zeros(3, 3) as Matrix;
    let B = zeros(3, 3) as Matrix;
    let D = zeros(3, 3) as Matrix;
    let lower = -h / 2;
    list.forEach((_, k) => {
      const upper = lower + thicknesses[k]!;
      const ply = plies[k]!.stiff;
      A = add(A, multiply(ply, upper - lower));
      B = add(B, multiply(ply, (upper ** 2 - lower ** 2) / 2));
      D = add(D, multiply(ply, (upper ** 3 - lower ** 3) / 3));
      lower = upper;
    });
    const [a, b, d] = [A, B, D].map((m) => m.toArray() as number[][]) as [number[][], number[][], number[][]];
    const whole = matrix([0, 1, 2, 3, 4, 5].map((i) => (i < 3 ? [...a[i]!, ...b[i]!] : [...b[i - 3]!, ...d[i - 3]!])));
    const whole6 = inv(whole);
    const inverse = whole6.toArray() as number[][];
    const constants = (at: number, scale: number): number[] => {
      const c = (i: number, j: number) => inverse[at + i]![at + j]!;
      return [
        scale / c(0, 0),
        scale / c(1, 1),
        scale / c(2, 2),
        -c(0, 1) / c(0, 0),
        -c(0, 1) / c(1, 1),
        c(0, 2) / c(0, 0),
        c(1, 2) / c(1, 1),
      ];
    };
    const shape = multiply(whole6, force).toArray() as number[];
    const [strain, curvature] = [matrix(shape.slice(0, 3)), matrix(shape.slice(3))];
    let least = Number.POSITIVE_INFINITY;
    let z = -h / 2;
    list.forEach((_, k) => {
      for (const at of [z, z + thicknesses[k]!]) {
        const stress = multiply(plies[k]!.stress, add(strain, multiply(curvature, at))).toArray() as number[];
        least = Math.min(least, tsaiWuRatio(stress[0]!, stress[1]!, stress[2]!));
      }
      z += thicknesses[k]!;
    });
    return [
      ...a.flat(),
      ...b.flat(),
      ...d.flat(),
      ...inverse.flat(),
      ...constants(0, 1 / h),
      ...constants(3, 12 / h ** 3),
      least,
    ];
  };
  const run = (of: (angle: number) => { stiff: Matrix; stress: Matrix }) => () =>
    laminates.map(({ angles: list, thicknesses }) => laminate(list, thicknesses, of));
  return {
    perPly: run((angle) => ({ stiff: qbar(angle), stress: stressOf(angle) })),
    cached: run((angle) => known.get(angle)!),
  };
}
