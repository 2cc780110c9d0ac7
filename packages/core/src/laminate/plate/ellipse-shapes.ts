import { multiply, type Polynomial } from './polynomial.js';

/** Highest power of the polynomial that multiplies (1 - ξ² - η²)² in the deflection. */
const deflectionPower = 6;
/** Highest power of the polynomial that multiplies 1 - ξ² - η² in the displacements in the plane. */
const inPlanePower = 7;

const rim: Polynomial = [
  { c: 1, i: 0, j: 0 },
  { c: -1, i: 2, j: 0 },
  { c: -1, i: 0, j: 2 },
];

/** ξ^i η^j times a factor, for i + j up to a power and of one parity. */
function shapes(factor: Polynomial, power: number, parity: number): Polynomial[] {
  const found: Polynomial[] = [];
  for (let sum = parity; sum <= power; sum += 2) {
    for (let i = 0; i <= sum; i++) found.push(multiply(factor, [{ c: 1, i, j: sum - i }]));
  }
  return found;
}

/** Deflections of a disk clamped along its edge, of even (0) or odd (1) power. */
export const deflectionShapes = (parity: number): Polynomial[] => shapes(multiply(rim, rim), deflectionPower, parity);

/** Displacements in the plane of a disk held along its edge: of odd power, since the square of any deflection's slope is even. */
export const inPlaneShapes = (): Polynomial[] => shapes(rim, inPlanePower, 1);

/** The highest power of any of these shapes. */
export const shapePower = Math.max(deflectionPower + 4, inPlanePower + 2);

/** The highest power in the energy of the two: four slopes of the deflection. */
export const energyPower = 4 * (deflectionPower + 3);
