export { type Chain, chainOf, kindOf } from './equation.js';
export { quantityTex, type Written } from './print.js';
export { symbolText } from './symbol.js';
