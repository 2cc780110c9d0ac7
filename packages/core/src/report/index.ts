export type {
  Block,
  Cell,
  Column,
  Equation,
  FigureBlock,
  QuantityCell,
  RenderFormat,
  Report,
  ResultMatrix,
  StepBlock,
} from './blocks.js';
export { type ExamplesReportOptions, examplesReport } from './examples-report.js';
export { libraryReport } from './library-report.js';
export { type RenderOptions, render } from './render/index.js';
export { type ReportOptions, report } from './report.js';
export { type ChangesTextOptions, changesText } from './studies/changes-text.js';
export { comparisonReport } from './studies/compare-report.js';
export { searchProgress } from './studies/search-progress.js';
export { searchReport } from './studies/search-report.js';
export { sensitivityReport } from './studies/sensitivity-report.js';
export { sweepReport } from './studies/sweep-report.js';
export { uncertaintyReport } from './studies/uncertainty-report.js';
export { answersReport } from './worked/answers-report.js';
export type { WorkingSelection } from './worked/select.js';
export { type WorkedOptions, workedExampleReport, workedReport } from './worked/worked-report.js';
