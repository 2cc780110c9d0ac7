export type { Block, Cell, Column, FigureBlock, QuantityCell, RenderFormat, Report } from './blocks.js';
export { examplesReport } from './examples-report.js';
export { libraryReport } from './library-report.js';
export { type RenderOptions, render } from './render/index.js';
export { type ReportOptions, report } from './report.js';
