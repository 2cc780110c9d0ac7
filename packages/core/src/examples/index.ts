export {
  type CheckedExample,
  type CheckedValue,
  checkExample,
  checkExamples,
  type DroppedValue,
  exampleIds,
} from './check.js';
export { type ExampleCounts, exampleCounts, isIndependent } from './counts.js';
export { workedExamples } from './data.js';
export type { NotReproduced, PrintedValue, WorkedExample } from './types.js';
export { inputsInWords, likePrinted } from './words.js';
