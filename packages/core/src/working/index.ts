export { holderOf, keyOf, resultsOf } from './names.js';
export {
  type Recorded,
  type RecordedNotes,
  type RecordedStep,
  type StepValues,
  startWorking,
  type Working,
} from './recorder.js';
export type { Form, Rule, SymbolMeaning } from './rule.js';
export { type RuleName, rules, symbols } from './rules.js';
