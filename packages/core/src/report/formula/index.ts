export { symbolText } from '../../expression/index.js';
export { type Chain, chainOf, kindOf } from './equation.js';
export { quantityTex, type Written } from './print.js';
