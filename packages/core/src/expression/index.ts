export { parseExpression } from './parse.js';
