import type { RecognisedSlip, SlipName } from '../../answers/index.js';

/** A slip in words. */
interface SlipWords {
  /** For a table, and behind "follows from": what was done. */
  readonly did: string;
  /** What to look at, one sentence or two. */
  readonly look: string;
}

const words: Readonly<Record<SlipName, SlipWords>> = {
  unit: {
    did: 'the right number with another unit',
    look: 'The digits are right; the unit behind them belongs to another power of ten or another system. Follow the units through the formula.',
  },
  powerOfTen: {
    did: 'a power of ten',
    look: 'The digits are right, the point is not where it belongs. Look where mm meet m, MPa meet GPa, N meet kN.',
  },
  shearSign: {
    did: 'the other sign of shear',
    look: 'The size is right. Angles count from x to the fibre, positive toward y, and sin θ changes its sign with them; shear is positive where it closes the right angle between x and y.',
  },
  anglesNegated: {
    did: 'all angles with the other sign',
    look: 'Angles count from x to the fibre, positive toward y: +45 and -45 are exchanged here.',
  },
  turnedBack: {
    did: 'turned by the angle with the other sign',
    look: 'From x and y to the fibre the angle is θ, from the fibre back it is -θ. Look at the sign of the terms with sin θ cos θ: strain into the axes of the ply, stress back, Q̄16 and Q̄26, thermal shear.',
  },
  orderReversed: {
    did: 'the plies taken in reversed order',
    look: 'The first ply of the code lies at the tool, at z = -h/2; the last one at the bag.',
  },
  otherSide: {
    did: 'z counted from the other side',
    look: 'z is zero at the mid-plane and grows from the tool to the bag, so the first ply has the smallest z. Otherwise B, curvatures and the faces of a ply change their sign or place.',
  },
  heightSubtracted: {
    did: 'the mid-plane strain less z times the curvature',
    look: 'The strain at a height is ε⁰ + z κ with the sign of z: z is negative on the side of the tool, and κ is positive where the bag side stretches.',
  },
  tensorShear: {
    did: "the tensor's shear strain in place of the engineering one",
    look: 'γ is twice the tensor component. Look at the factors of 2 in the rotation of strain, in Q̄ (4 Q66, not 2), in the free thermal shear and in the twist.',
  },
  ownInertia: {
    did: 'D without t³/12',
    look: 'Each ply adds t z² + t³/12: the second part is its stiffness about its own middle.',
  },
  fromToolFace: {
    did: 'z counted from the tool face',
    look: 'z counts from the mid-plane. From the face A stays as it is, B is larger by A h/2, and D changes with both.',
  },
  halfStack: {
    did: 'only the written half of a symmetric stack',
    look: 'With `s` the written half is followed by its mirror image: the sums run over all plies.',
  },
  plyThickness: {
    did: 'a thickness that is not that of one ply',
    look: 'Half, twice, or the thickness of the whole laminate stands where that of one ply belongs, or the other way round.',
  },
  couplingIgnored: {
    did: 'A and D inverted as if B were zero',
    look: 'The compliance is the inverse of the whole 6×6 stiffness; A⁻¹ and D⁻¹ are those of a laminate that is held from coupling.',
  },
  heatForgotten: {
    did: 'the part of heat and moisture left out',
    look: 'N_T and M_T add to the forces, and the free strain is taken off the strain of a ply before Q is applied.',
  },
  heatSign: {
    did: 'the change of temperature with the other sign',
    look: 'The change counts from the stress-free state: cooling is negative.',
  },
  faceOrAxes: {
    did: 'the right number of another face or of other axes',
    look: 'Faces: top is the one toward the tool. Axes: 1 and 2 are those of the ply, x and y those of the laminate.',
  },
  bendingForInPlane: {
    did: 'the constant of the other way of loading',
    look: 'Constants in the plane follow from a, those in bending from d.',
  },
  poisson: {
    did: 'ν12 and ν21 exchanged, the wrong way from one to the other, or another denominator than 1 - ν12 ν21',
    look: 'ν12 is the contraction across the fibre under stress along it, the larger of the two as a rule; ν21 = ν12 E2/E1.',
  },
  angleFromY: {
    did: 'angles counted from y',
    look: 'Angles count from x: sine and cosine are exchanged here.',
  },
  singleInverse: {
    did: 'components inverted one by one',
    look: 'a11 is a component of the inverse, not 1/A11: the other components take part in it.',
  },
  radians: {
    did: 'degrees read as radians',
    look: 'The angle went into sine and cosine as if it were in radians. Look at the setting of the calculator, or convert in the script.',
  },
  sign: {
    did: 'the other sign',
    look: 'The size is right. Look at the directions in which forces, moments and z count as positive.',
  },
};

/** "a factor of 1000 too large" of a power of ten. */
function factor(power: number): string {
  const size = Math.abs(power) > 3 ? `10^${Math.abs(power)}` : String(10 ** Math.abs(power));
  return `a factor of ${size} too ${power > 0 ? 'large' : 'small'}`;
}

/** What was done, in few words: "the plies taken in reversed order", "a factor of 1000 too large". */
export function slipDid({ name, detail }: RecognisedSlip): string {
  if (detail === undefined) return words[name].did;
  if (name === 'powerOfTen') return factor(Number(detail));
  if (name === 'unit') return detail === '' ? 'the right number without a unit' : `the right number in ${detail}`;
  return `the right number of ${detail}`;
}

/** What to look at. */
export const slipLook = (name: SlipName): string => words[name].look;
