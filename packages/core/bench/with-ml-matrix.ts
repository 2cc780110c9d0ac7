import { inverse, Matrix } from 'ml-matrix';
import { type Answer, type Job, load, tsaiWuRatio } from './job.js';

/** The job with ml-matrix as one writes it: transformation matrices, sums of 3x3 matrices, the inverse of the 6x6. */
export function withMlMatrix({ laminates, Q: [Q11, Q12, Q22, Q66] }: Job, angles: readonly number[]) {
  const Q = new Matrix([
    [Q11, Q12, 0],
    [Q12, Q22, 0],
    [0, 0, Q66],
  ]);
  const R = Matrix.diag([1, 1, 2]);
  const Rinverse = inverse(R);
  const force = Matrix.columnVector([...load]);
  const rotation = (angle: number): Matrix => {
    const [c, s] = [Math.cos((angle * Math.PI) / 180), Math.sin((angle * Math.PI) / 180)];
    return new Matrix([
      [c * c, s * s, 2 * c * s],
      [s * s, c * c, -2 * c * s],
      [-c * s, c * s, c * c - s * s],
    ]);
  };
  const qbar = (angle: number): Matrix => {
    const T = rotation(angle);
    return inverse(T).mmul(Q).mmul(R).mmul(T).mmul(Rinverse);
  };
  /** From strain in laminate axes to stress in ply axes. */
  const stressOf = (angle: number): Matrix => Q.mmul(R).mmul(rotation(angle)).mmul(Rinverse);
  const known = new Map(angles.map((angle) => [angle, { stiff: qbar(angle), stress: stressOf(angle) }]));
  const laminate = (
    list: readonly number[],
    thicknesses: readonly number[],
    of: (angle: number) => { stiff: Matrix; stress: Matrix },
  ): Answer => {
    const plies = list.map(of);
    const h = thicknesses.reduce((sum, t) => sum + t, 0);
    const [A, B, D] = [Matrix.zeros(3, 3), Matrix.zeros(3, 3), Matrix.zeros(3, 3)];
    let lower = -h / 2;
    list.forEach((_, k) => {
      const upper = lower + thicknesses[k]!;
      const ply = plies[k]!.stiff;
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
    const shape = inv.mmul(force);
    const strain = Matrix.columnVector(shape.to1DArray().slice(0, 3));
    const curvature = Matrix.columnVector(shape.to1DArray().slice(3));
    let least = Number.POSITIVE_INFINITY;
    let z = -h / 2;
    list.forEach((_, k) => {
      for (const at of [z, z + thicknesses[k]!]) {
        const [s1 = 0, s2 = 0, s12 = 0] = plies[k]!.stress.mmul(
          Matrix.add(strain, Matrix.mul(curvature, at)),
        ).to1DArray();
        least = Math.min(least, tsaiWuRatio(s1, s2, s12));
      }
      z += thicknesses[k]!;
    });
    return [
      ...A.to1DArray(),
      ...B.to1DArray(),
      ...D.to1DArray(),
      ...inv.to1DArray(),
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
