/** Compliances of an arm's cross-section per width: curvature per moment, stretch per axial force, slant per shear force. 0 is rigid. */
export interface SectionCompliance {
  readonly bend: number;
  readonly stretch: number;
  readonly shear: number;
}

/** How an arm runs on at a cross-section, with derivatives by its angle and the two components of the force. */
export interface SectionState {
  /** Place gained per length of arm, dx/ds and dy/ds. */
  dx: number;
  dy: number;
  /** Moment gained per length of arm, dM/ds. */
  dM: number;
  dxByAngle: number;
  dyByAngle: number;
  dMByAngle: number;
  dxByH: number;
  /** Also dy by H. */
  dxByV: number;
  dyByV: number;
  dMByH: number;
  dMByV: number;
  /** Energy of stretch and shear per length. */
  energy: number;
}

export const emptySection = (): SectionState => ({
  dx: 1,
  dy: 0,
  dM: 0,
  dxByAngle: 0,
  dyByAngle: 0,
  dMByAngle: 0,
  dxByH: 0,
  dxByV: 0,
  dyByV: 0,
  dMByH: 0,
  dMByV: 0,
  energy: 0,
});

/**
 * The geometrically exact plane beam at one cross-section.
 *
 * With the force (H, V) resolved along and across the section, N = H cos θ + V sin θ and T = V cos θ - H sin θ:
 * dx/ds = (1 + N/EA) cos θ - (T/kGA) sin θ, dy/ds = (1 + N/EA) sin θ + (T/kGA) cos θ, dM/ds = H dy/ds - V dx/ds; dθ/ds = M/EI.
 *
 * @param angle of the section's normal, rad
 * @param H force along x that the farther part exerts
 * @param V the same along y
 * @param out overwritten
 * @source Reissner 1972
 */
export function sectionAt(
  { stretch, shear }: SectionCompliance,
  angle: number,
  H: number,
  V: number,
  out: SectionState,
): void {
  const c = Math.cos(angle);
  const s = Math.sin(angle);
  const N = H * c + V * s;
  const T = V * c - H * s;
  const length = 1 + N * stretch;
  const slant = T * shear;
  const dx = length * c - slant * s;
  const dy = length * s + slant * c;
  const along = stretch * T;
  const across = shear * N;
  out.dx = dx;
  out.dy = dy;
  out.dM = H * dy - V * dx;
  out.dxByAngle = along * c + across * s - dy;
  out.dyByAngle = along * s - across * c + dx;
  out.dMByAngle = H * out.dyByAngle - V * out.dxByAngle;
  out.dxByH = stretch * c * c + shear * s * s;
  out.dxByV = (stretch - shear) * s * c;
  out.dyByV = stretch * s * s + shear * c * c;
  out.dMByH = dy + H * out.dxByV - V * out.dxByH;
  out.dMByV = H * out.dyByV - V * out.dxByV - dx;
  out.energy = (stretch * N * N + shear * T * T) / 2;
}

/** Places of an arm's unknowns in a boundary-value problem: along, away, angle, moment, force along and away. */
export const [X, Y, ANGLE, M, H, V] = [0, 1, 2, 3, 4, 5] as const;
export const perArm = 6;

/**
 * Slopes of an arm's unknowns along it, and their derivatives, for a boundary-value problem.
 *
 * @param at where the point's unknowns begin in z
 * @param offset of this arm among them
 * @param size unknowns of the point
 * @param section overwritten
 */
export function armSlope(
  compliance: SectionCompliance,
  z: ArrayLike<number>,
  at: number,
  offset: number,
  size: number,
  f: number[],
  J: number[],
  section: SectionState,
): void {
  const value = (i: number): number => z[at + offset + i] ?? 0;
  sectionAt(compliance, value(ANGLE), value(H), value(V), section);
  const { bend } = compliance;
  f[offset + X] = section.dx;
  f[offset + Y] = section.dy;
  f[offset + ANGLE] = bend * value(M);
  f[offset + M] = section.dM;
  const row = (i: number): number => (offset + i) * size + offset;
  J[row(X) + ANGLE] = section.dxByAngle;
  J[row(X) + H] = section.dxByH;
  J[row(X) + V] = section.dxByV;
  J[row(Y) + ANGLE] = section.dyByAngle;
  J[row(Y) + H] = section.dxByV;
  J[row(Y) + V] = section.dyByV;
  J[row(ANGLE) + M] = bend;
  J[row(M) + ANGLE] = section.dMByAngle;
  J[row(M) + H] = section.dMByH;
  J[row(M) + V] = section.dMByV;
}

/**
 * What an arm carries past a cross-section when its root moves on: M²/2EI + F · dr/ds - N²/2EA - T²/2kGA, the same all along an
 * arm without loads between. Per length and width it is the energy release of the arm. Its derivatives by M, angle, H and V are
 * M/EI, -dM/ds, dx/ds and dy/ds.
 *
 * @source energy-momentum balance of the elastica; derivation in docs/theory/peel.md
 */
export function firstIntegral(bend: number, M: number, H: number, V: number, section: SectionState): number {
  return (bend * M * M) / 2 + H * section.dx + V * section.dy - section.energy;
}
