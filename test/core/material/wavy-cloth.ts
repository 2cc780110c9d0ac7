import { Matrix as Dense, inverse } from 'ml-matrix';
import type { YarnConstants } from '../../../packages/core/src/material/index.js';

// A cloth of wavy yarns by slices: every slice is a fourth-order tensor turned about the y axis. Independent of the library.

type Tensor = number[][][][];
const axes: readonly number[] = [0, 1, 2];
const voigt = [
  [0, 5, 4],
  [5, 1, 3],
  [4, 3, 2],
];

/** Compliance in the order 11, 22, 33, 23, 13, 12 with engineering shear, of a material alike in 2 and 3. */
function compliance6({ E1, E2, G12, nu12, G13 = G12, nu23 = Number.NaN }: YarnConstants): Dense {
  const S = Dense.zeros(6, 6);
  S.set(0, 0, 1 / E1);
  S.set(1, 1, 1 / E2);
  S.set(2, 2, 1 / E2);
  for (const k of [1, 2]) {
    S.set(0, k, -nu12 / E1);
    S.set(k, 0, -nu12 / E1);
  }
  S.set(1, 2, -nu23 / E2);
  S.set(2, 1, -nu23 / E2);
  S.set(3, 3, (2 * (1 + nu23)) / E2);
  S.set(4, 4, 1 / G13);
  S.set(5, 5, 1 / G12);
  return S;
}

/** The tensor of a 6 by 6 matrix; every shear index divides an entry by `shear` (2 for a compliance, 1 for a stiffness). */
function tensorOf(M: Dense, shear: number): Tensor {
  const divisor = (k: number): number => (k > 2 ? shear : 1);
  return axes.map((i) =>
    axes.map((j) =>
      axes.map((k) =>
        axes.map((l) => {
          const [m, n] = [voigt[i]![j], voigt[k]![l]];
          return M.get(m!, n!) / (divisor(m!) * divisor(n!));
        }),
      ),
    ),
  );
}

/** t'_pqrs = R_pi R_qj R_rk R_sl t_ijkl, turned about y. */
function turnedAboutY(t: Tensor, angle: number): Tensor {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  const R = [
    [c, 0, -s],
    [0, 1, 0],
    [s, 0, c],
  ];
  const once = (u: Tensor): Tensor =>
    // Turns the first index and moves it to the end; four times turns all.
    axes.map((j) =>
      axes.map((k) =>
        axes.map((l) => axes.map((p) => axes.reduce((sum, i) => sum + R[p]![i]! * u[i]![j]![k]![l]!, 0))),
      ),
    );
  return once(once(once(once(t))));
}

/** Slopes at the middle of `steps` equal lengths along half a sine wave of that length and height. */
const slopes = (length: number, rise: number, steps: number): number[] =>
  Array.from({ length: steps }, (_, i) => {
    const z = (x: number) => (rise / 2) * Math.sin((Math.PI * x) / length);
    const [from, to] = [(i / steps - 0.5) * length, ((i + 1) / steps - 0.5) * length];
    return (z(to) - z(from)) / (to - from);
  });

export interface Wave {
  readonly length: number;
  readonly rise: number;
  /** Share of the yarn that is wavy. */
  readonly share: number;
}

/** Length of the wavy yarn over its projection, less 1, as a chain of straight pieces. */
export function chainSurplus({ length, rise, share }: Wave, steps = 20000): number {
  const pieces = slopes(length, rise, steps);
  return (share * pieces.reduce((sum, slope) => sum + Math.sqrt(1 + slope * slope) - 1, 0)) / steps;
}

/** Plane-stress stiffness of a wavy yarn layer, its slices at equal stress and free to shear. */
export function equalStress(yarn: YarnConstants, { length, rise, share }: Wave, steps = 400): Dense {
  const s = tensorOf(compliance6(yarn), 2);
  const inPlane = (t: Tensor) =>
    new Dense([
      [t[0]![0]![0]![0]!, t[0]![0]![1]![1]!, 0],
      [t[1]![1]![0]![0]!, t[1]![1]![1]![1]!, 0],
      [0, 0, 4 * t[0]![1]![0]![1]!],
    ]);
  let mean = inPlane(s).mul(1 - share);
  for (const slope of slopes(length, rise, steps)) {
    mean = mean.add(inPlane(turnedAboutY(s, Math.atan(slope))).mul(share / steps));
  }
  return inverse(mean);
}

/** The same with its slices at equal strain and not free to shear; the mean stress through the thickness is zero. */
export function equalStrain(yarn: YarnConstants, { length, rise, share }: Wave, steps = 400): Dense {
  const c = tensorOf(inverse(compliance6(yarn)), 1);
  const normal = (t: Tensor) => new Dense(axes.map((i) => axes.map((j) => t[i]![i]![j]![j]!)));
  let mean = normal(c).mul(1 - share);
  for (const slope of slopes(length, rise, steps)) {
    mean = mean.add(normal(turnedAboutY(c, Math.atan(slope))).mul(share / steps));
  }
  const entry = (i: number, j: number) => mean.get(i, j) - (mean.get(i, 2) * mean.get(2, j)) / mean.get(2, 2);
  return new Dense([
    [entry(0, 0), entry(0, 1), 0],
    [entry(1, 0), entry(1, 1), 0],
    [0, 0, yarn.G12],
  ]);
}

/** Moduli along warp and weft of two bonded layers, the second laid across. */
export function clothModuli(warp: Dense, weft: Dense, warpShare: number): { E1: number; E2: number } {
  const across = new Dense([
    [weft.get(1, 1), weft.get(0, 1), 0],
    [weft.get(0, 1), weft.get(0, 0), 0],
    [0, 0, weft.get(2, 2)],
  ]);
  const S = inverse(Dense.mul(warp, warpShare).add(across.mul(1 - warpShare)));
  return { E1: 1 / S.get(0, 0), E2: 1 / S.get(1, 1) };
}
