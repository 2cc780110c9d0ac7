export { factorBanded, solveBanded } from './banded.js';
export { type BoundaryValueProblem, solveBoundaryValue } from './boundary-value.js';
export { choleskyOf } from './cholesky.js';
export { cosDegrees, fibreAngle, sinCosDegrees, sinDegrees } from './degrees.js';
export { quantile } from './quantile.js';
export { type RandomGenerator, type RandomState, randomGenerator, uniformRandom, xoshiro128 } from './random.js';
export { rootBetween } from './root-between.js';
export { invertSpd3 } from './spd3.js';
