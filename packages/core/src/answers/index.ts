export { type AnswerVerdict, type CheckedAnswer, type CheckedAnswers, checkAnswers } from './check.js';
export type { Explanation, RecognisedSlip } from './explain.js';
export { type Answer, type Answers, readAnswers } from './read.js';
export type { SharedSlip } from './shared.js';
export type { SlipName } from './slips/index.js';
