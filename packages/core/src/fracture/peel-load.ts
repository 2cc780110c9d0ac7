/** Exponent that joins the two ends of `fastForce`: within 4 % of the elastica between them. */
const joint = 2.7;

/** Load of a peel whose arms stand upright at the grips, N: b J/2. */
export const uprightLoad = (width: number, J: number): number => (width * J) / 2;

/** Load of a peel between that of straight arms and of upright ones, N. */
export const peelLoad = (straight: number, upright: number): number =>
  (straight ** joint + upright ** joint) ** (1 / joint);
