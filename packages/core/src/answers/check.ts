import { locate, type Model, parseSource, workedSteps } from '../design/index.js';
import { type Problem, SelvageError } from '../problem/index.js';
import type { KindName } from '../quantity/index.js';
import { type Candidate, type Compared, type Explanation, explain } from './explain.js';
import { findQuantity } from './find.js';
import { type Quantity, quantitiesOf } from './quantities.js';
import type { Answer, Answers } from './read.js';
import { repeated } from './repeated.js';
import { reportNumber } from './report-number.js';
import { type SharedSlip, settled, sharedSlips } from './shared.js';
import { sheetOf } from './sheet.js';
import { negligibleSizes } from './size.js';
import { type AnswerValue, answerValue } from './value.js';

/** `right`: to the digits that were written, or to 0.1 %. `rounded`: to 1 %, which rounding on the way explains. */
export type AnswerVerdict = 'right' | 'rounded' | 'slip' | 'wrong';

/** An answer with what came of it; numbers in SI. */
export interface CheckedAnswer {
  /** The quantity as written, and the name that it has in the working. */
  readonly written: string;
  readonly key: string;
  readonly meaning?: string;
  readonly kind: KindName;
  /** Value and unit as written. */
  readonly given: string;
  readonly value: number;
  readonly right: number;
  /** Digits that count, and the unit that was written with its size in SI. */
  readonly digits: number;
  readonly unit: { readonly text: string; readonly size: number };
  /** Relative to the right value; absent when that is as good as zero. */
  readonly deviation?: number;
  readonly verdict: AnswerVerdict;
  /** Slips that give the answer, those first that explain most of the sheet, then the more common. */
  readonly explanations: readonly Explanation[];
}

/** A sheet of answers that has been looked through. */
export interface CheckedAnswers {
  readonly title: string;
  readonly answers: readonly CheckedAnswer[];
  readonly counts: Readonly<Record<AnswerVerdict, number>>;
  readonly shared: readonly SharedSlip[];
}

const fine = 1e-3;
const onTheWay = 1e-2;
/** An answer that rounding explains is read as a slip too when so many digits agree with it. */
const digitsForDoubt = 4;

/**
 * Compares the answers of a sheet with the working of a design.
 *
 * An answer is right within half a unit of its last written digit or 0.1 %, whichever is more; up to 1 % it is right with rounding on the way.
 * Any other is compared with the numbers that known slips give: the design computed anew with the slip made.
 *
 * @param model as `assemble` gives it
 * @throws SelvageError with places in the sheet: `unknown-name` no such quantity, or several; `duplicate-key` one answered twice;
 * `not-a-number`, `unit-missing`, `unit-unknown`, `unit-mismatch`; as `workedSteps`
 */
export function checkAnswers(model: Model, answers: Answers): CheckedAnswers {
  const steps = workedSteps(model);
  const quantities = quantitiesOf(steps);
  const read = readEntries(model, answers, quantities);
  const sheet = sheetOf(model, steps, quantities);
  const negligible = negligibleSizes(quantities.values());
  const checked = settled(
    read.map(({ entry, of, answer }) => judge(entry, of, answer, negligible(of), (one) => explain(one, sheet))),
  );
  const count = (verdict: AnswerVerdict): number => checked.filter((one) => one.verdict === verdict).length;
  return {
    title: model.title,
    answers: checked,
    counts: { right: count('right'), rounded: count('rounded'), slip: count('slip'), wrong: count('wrong') },
    shared: sharedSlips(checked).filter((one) => one.count > 1),
  };
}

interface ReadEntry {
  readonly entry: Answer;
  readonly of: Quantity;
  readonly answer: AnswerValue;
}

/** What each answer means. @throws SelvageError every fault of the sheet */
function readEntries(
  model: Model,
  { entries, source }: Answers,
  quantities: ReadonlyMap<string, Quantity>,
): ReadEntry[] {
  const problems: Problem[] = [];
  const keys: (string | undefined)[] = [];
  const read = entries.flatMap((entry, i): ReadEntry[] => {
    const path = ['answers', i];
    const found = findQuantity(entry.quantity, quantities, (name) => reportNumber(model, name));
    if ('problem' in found) {
      keys.push(undefined);
      problems.push({ ...found.problem, path: [...path, 'quantity'] });
      return [];
    }
    const of = found.quantity;
    keys.push(of.key);
    const answer = answerValue(entry, of.kind, path);
    if ('value' in answer) return [{ entry, of, answer }];
    problems.push(answer);
    return [];
  });
  problems.push(...repeated(keys));
  if (problems.length > 0) throw new SelvageError(locate(problems, parseSource(source.text)));
  return read;
}

function judge(
  { quantity, value, unit }: Answer,
  of: Quantity,
  answer: AnswerValue,
  negligible: number,
  explanationsOf: (compared: Compared) => readonly Candidate[],
): CheckedAnswer & { readonly explanations: readonly Candidate[] } {
  const right = of.value;
  // A zero has no digit that could be half right.
  const half = answer.digits === 0 ? 0 : answer.half;
  const tolerance = Math.max(half, fine * Math.abs(right), negligible);
  const off = Math.abs(answer.value - right);
  const rounded = off <= onTheWay * Math.abs(right);
  // What may be rounding is doubted only where the digits of a slip agree to the last.
  const compared = { of, answer, tolerance, negligible, rounding: rounded ? 0 : fine };
  const explanations = off <= tolerance || (rounded && answer.digits < digitsForDoubt) ? [] : explanationsOf(compared);
  const verdict = off <= tolerance ? 'right' : rounded ? 'rounded' : explanations.length > 0 ? 'slip' : 'wrong';
  return {
    written: quantity,
    key: of.key,
    ...(of.meaning === undefined ? {} : { meaning: of.meaning }),
    kind: of.kind,
    given: unit === undefined ? value.trim() : `${value} ${unit}`,
    value: answer.value,
    right,
    digits: answer.digits,
    unit: { text: answer.unitText, size: answer.unit },
    ...(Math.abs(right) <= negligible ? {} : { deviation: (answer.value - right) / Math.abs(right) }),
    verdict,
    explanations,
  };
}
