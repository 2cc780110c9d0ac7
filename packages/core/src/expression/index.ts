export { parseExpression } from './parse.js';
export { symbolTex, symbolText } from './symbol.js';
