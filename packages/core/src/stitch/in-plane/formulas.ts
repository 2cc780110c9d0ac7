/** Elastic constants of a ply, Pa. */
export interface WavyPly {
  readonly E1: number;
  readonly G12: number;
  readonly nu12: number;
}

/**
 * Share of the width in which the fibres are disturbed, f = (d + l)/s, at most 1.
 * @param hole width of hole or resin pocket, m
 * @param straightening width beside it over which the fibres straighten, m
 * @param spacing of holes across the loaded fibres, m
 */
export function affectedWidth(hole: number, straightening: number, spacing: number): number {
  return Math.min(1, (hole + straightening) / spacing);
}

/**
 * Modulus along the fibres over that without stitches: 1 - f (1 - 1/(1 + (E1/G12 - 2 (1 + nu12)) phi^2/2)), from the off-axis compliance
 * to second order with the mean square phi^2/2 of a wave of greatest angle phi.
 * @param affected f, 0 to 1
 * @param waviness phi, radians
 */
export function modulusFactor(ply: WavyPly, affected: number, waviness: number): number {
  return 1 - affected * (1 - 1 / (1 + softening(ply, waviness)));
}

/** Compliance that waves of greatest angle phi add to that of straight fibres, over it: (E1/G12 - 2 (1 + nu12)) phi^2/2. */
export function softening({ E1, G12, nu12 }: WavyPly, waviness: number): number {
  return ((E1 / G12 - 2 * (1 + nu12)) * waviness ** 2) / 2;
}

/**
 * Kinking strength of fibres made wavier by phi over that before, (gamma + phi0)/(gamma + phi0 + phi): of G/(1 + phi0/gamma).
 * @param waviness phi added, radians
 * @param misalignment phi0 before, radians
 * @param yieldStrain gamma, shear strain at yield
 */
export function kinkingFactor(waviness: number, misalignment: number, yieldStrain: number): number {
  return (yieldStrain + misalignment) / (yieldStrain + misalignment + waviness);
}

/**
 * Area of laminate that one penetration takes with its resin pocket, m^2: a rhombus as wide as the hole and L long, d L/2, no longer than from hole
 * to hole along the fibres, and no less than the thread in it.
 * @param hole d, m
 * @param pocketLength L along the fibres, m
 * @param along distance of holes along the loaded fibres, m
 * @param bundle area of the thread in the hole, m^2
 */
export function pocketArea(hole: number, pocketLength: number, along: number, bundle: number): number {
  return Math.max(bundle, (hole * Math.min(pocketLength, along)) / 2);
}
