export {
  type DisplayOptions,
  displayNumber,
  displayUnit,
  formatNumber,
  formatQuantity,
  inDisplayUnit,
} from './format.js';
export { type Kind, type KindName, kinds, type UnitSystem } from './kind.js';
export { leadingNumber } from './number.js';
export { type ParsedQuantity, parseQuantity, toSI } from './parse.js';
export { parseUnit } from './unit.js';
