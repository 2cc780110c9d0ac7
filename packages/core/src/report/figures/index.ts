export { chartFigure } from './chart.js';
export type { ChartBand, ChartInput, ChartMark, ChartQuantity, ChartSeries } from './chart-input.js';
export { escapeMarkup, withoutControls } from './markup.js';
export type { BandKind, BandPly } from './ply-band.js';
export { type PolarCurve, type PolarFigureInput, polarFigure } from './polar.js';
export { type StackFigureInput, stackFigure } from './stack.js';
export { stitchFigure } from './stitch.js';
export type { StitchFigureInput } from './stitch-input.js';
