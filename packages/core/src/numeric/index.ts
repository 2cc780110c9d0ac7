export { cosDegrees, fibreAngle, sinCosDegrees, sinDegrees } from './degrees.js';
export { apply, dot, gram, timesPairDerivative } from './dense.js';
export { solve } from './solve.js';
export { invertSpd3 } from './spd3.js';
