import { inverse, Matrix } from 'ml-matrix';
import type { Answer, Job } from './job.js';

/** The job with ml-matrix as one writes it: transformation matrices, sums of 3x3 matrices, the inverse of the 6x6. */
export function withMlMatrix({ laminates, Q: [Q11, Q12, Q22, Q66] }: Job, angles: readonly number[]) {
  const Q = new Matrix([
    [Q11, Q12, 0],
    [Q12, Q22, 0],
    [0, 0, Q66],
  ]);
  const R = Matrix.diag([1, 1, 2]);
  const Rinverse = inverse(R);
  const qbar = (angle: number): Matrix => {
    const [c, s] = [Math.cos((angle * Math.PI) / 180), Math.sin((angle * Math.PI) / 180)];
    const T = new Matrix([
      [c * c, s * s, 2 * c * s],
      [s * s, c * c, -2 * c * s],
      [-c * s, c * s, c * c - s * s],
    ]);
    return inverse(T).mmul(Q).mmul(R).mmul(T).mmul(Rinverse);
  };
  const known = new Map(angles.map((angle) => [angle, qbar(angle)]));
  const laminate = (
    list: readonly number[],
    thicknesses: readonly number[],
    stiff: (angle: number) => Matrix,
  ): Answer => {
    const h = thicknesses.reduce((sum, t) => sum + t, 0);
    const [A, B, D] = [Matrix.zeros(3, 3), Matrix.zeros(3, 3), Matrix.zeros(3, 3)];
    let lower = -h / 2;
    list.forEach((angle, k) => {
      const upper = lower + thicknesses[k]!;
      const ply = stiff(angle);
      A.add(Matrix.mul(ply, upper - lower));
      B.add(Matrix.mul(ply, (upper ** 2 - lower ** 2) / 2));
      D.add(Matrix.mul(ply, (upper ** 3 - lower ** 3) / 3));
      lower = upper;
    });
    const whole = Matrix.zeros(6, 6);
    whole.setSubMatrix(A, 0, 0).setSubMatrix(B, 0, 3).setSubMatrix(B, 3, 0).setSubMatrix(D, 3, 3);
    const inv = inverse(whole);
    const constants = (at: number, scale: number): number[] => {
      const c = (i: number, j: number) => inv.get(at + i, at + j);
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
    return [
      ...A.to1DArray(),
      ...B.to1DArray(),
      ...D.to1DArray(),
      ...inv.to1DArray(),
      ...constants(0, 1 / h),
      ...constants(3, 12 / h ** 3),
    ];
  };
  const run = (stiff: (angle: number) => Matrix) => () =>
    laminates.map(({ angles: list, thicknesses }) => laminate(list, thicknesses, stiff));
  return { perPly: run(qbar), cached: run((angle) => known.get(angle)!) };
}
