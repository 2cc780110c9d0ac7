export { type EllipseBlister, type EllipseBlisterResult, ellipseBlister } from './blister-ellipse.js';
export { type StripBlister, type StripBlisterResult, stripBlister } from './blister-strip.js';
export type { Plate } from './plate.js';
export { type BucklingLoad, type MembraneLoad, type PlateBuckling, plateBuckling } from './plate-buckling.js';
export { type PlateDeflection, type PlatePressure, plateDeflection } from './plate-deflection.js';
export { type PlateMode, type PlateVibration, plateVibration, type VibrationOptions } from './plate-vibration.js';
