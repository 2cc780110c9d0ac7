export {
  type EdgeDelamination,
  type EdgeInterface,
  type EdgeOptions,
  edgeDelamination,
} from './edge-delamination.js';
export type { EdgePeel } from './edge-peel.js';
export { type FlatEdgeRelease, flatEdgeRelease } from './flat-parts.js';
export type { EdgeOpening, OnsetStrain } from './opening.js';
