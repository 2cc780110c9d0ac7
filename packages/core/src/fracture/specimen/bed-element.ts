/** Stiffness of a stretch of beam between two points, per width, by lift and slope at its ends: k11, k12 … of the right end, and coupling. */
export interface Ends {
  /** Both ends alike (lift equal, slopes opposite): force and moment at the right end by lift and slope there. */
  readonly symmetric: readonly [number, number, number];
  /** Ends opposed (lifts opposite, slopes equal). */
  readonly opposed: readonly [number, number, number];
}

/** A beam with shear: bending stiffness D, N m, and shear stiffness S, N/m, per width. */
export interface Beam {
  readonly D: number;
  readonly S: number;
}

/**
 * Stiffness of a free stretch of a beam with shear.
 *
 * Alike: pure bending, M = 2 D/l ψ. Opposed: M and V of the cantilever of half the length, lift² over h³/(3 D) + h/S.
 */
export function freeStretch({ D, S }: Beam, length: number): Ends {
  const h = length / 2;
  // Half a stretch clamped at its middle but free to turn there: lift - h slope is the cantilever's bend.
  const k = 1 / ((h * h * h) / (3 * D) + h / S);
  return { symmetric: [0, 0, D / h], opposed: [k, -h * k, h * h * k] };
}

/**
 * Stiffness of a stretch of a beam with shear on a bed of k per area, exact.
 *
 * The lift obeys D δ'''' - (k D/S) δ'' + k δ = 0 with roots ± r1, ± r2; r1² + r2² = k/S, r1 r2 = √(k/D). About the middle its even and odd
 * parts do not couple. With a basis E of even, O of odd functions, E' = T O and O' = T E, and δ = β T³ E: slope of the section ψ = -(r1 r2)² β O,
 * V = k β T² O, M = -k β T E. Basis of distinct roots: cosh and sinh of each, T diagonal. Near one double root, or with complex ones:
 * u, v = (r1 ± r2)/2, E = (cosh ux cosh vx, u sinh ux sinh vx / v), which stays real and finite.
 */
export function bedStretch({ D, S }: Beam, k: number, length: number): Ends {
  const h = length / 2;
  const product = Math.sqrt(k / D);
  const u = Math.sqrt(k / S + 2 * product) / 2;
  const square = k / (4 * S) - product / 2;
  const v = Math.sqrt(Math.abs(square));
  if (square > 0 && v * h > 1) {
    const [r1, r2] = [u + v, product / (u + v)];
    const odd = [Math.tanh(r1 * h), Math.tanh(r2 * h)] as const;
    const T = [r1, 0, 0, r2] as const;
    return { symmetric: endStiffness(T, [1, 1], odd, k, D), opposed: endStiffness(T, odd, [1, 1], k, D) };
  }
  const th = Math.tanh(u * h);
  const c = square > 0 ? Math.cosh(v * h) : Math.cos(v * h);
  const s = v * h < 1e-9 ? u * h : (u / v) * (square > 0 ? Math.sinh(v * h) : Math.sin(v * h));
  const T = [u, square / u, u, u] as const;
  const even = [c, th * s] as const;
  const odd = [th * c, s] as const;
  return { symmetric: endStiffness(T, even, odd, k, D), opposed: endStiffness(T, odd, even, k, D) };
}

type Two = readonly [number, number];

/** k11, k12, k22 from the values of the basis at the end, itself (E) and its partner (O). */
function endStiffness(
  T: readonly [number, number, number, number],
  E: Two,
  O: Two,
  k: number,
  D: number,
): [number, number, number] {
  const times = ([a, b]: Two): Two => [T[0] * a + T[1] * b, T[2] * a + T[3] * b];
  const TE = times(E);
  const lift = times(times(TE));
  const turn = [(-k / D) * O[0], (-k / D) * O[1]] as const;
  const force = times(times(O));
  const det = lift[0] * turn[1] - lift[1] * turn[0];
  // Rows of β follow from lift and slope: β = (lift, turn)⁻¹ (δ, ψ), then V = k β T² O and M = -k β T E.
  const k11 = (k * (turn[1] * force[0] - turn[0] * force[1])) / det;
  const k12 = (k * (lift[0] * force[1] - lift[1] * force[0])) / det;
  const k22 = (-k * (lift[0] * TE[1] - lift[1] * TE[0])) / det;
  return [k11, k12, k22];
}
