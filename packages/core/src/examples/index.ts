export {
  type ExampleEntry,
  exampleCatalogue,
  findExamples,
} from './catalogue.js';
export { type CheckedExample, type CheckedValue, checkExample, checkExamples, type DroppedValue } from './check.js';
export { type ExampleCounts, exampleCounts, isIndependent } from './counts.js';
export { workedExamples } from './data.js';
export { exampleDesign, whyNoDesign } from './designs/example-design.js';
export { exampleIds, exampleOf } from './find.js';
export { readPrinted } from './last-digit.js';
export { rulesShown } from './rules-shown.js';
export { sourceName } from './source-name.js';
export { exampleSubjects, type Subject, subjects } from './subjects.js';
export type { NotReproduced, PrintedValue, WorkedExample } from './types.js';
export { inputsInWords, likePrinted } from './words.js';
