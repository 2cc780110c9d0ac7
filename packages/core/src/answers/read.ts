import { isScalar } from 'yaml';
import * as z from 'zod/mini';
import {
  bySchema,
  type DesignSource,
  designText,
  locate,
  parseDesign,
  type ReadOptions,
  reference,
  section,
} from '../design/index.js';
import { fail, type Problem, SelvageError } from '../problem/index.js';
import { repeated } from './repeated.js';
import { writtenNumber } from './written.js';

/** One answer of a sheet, as written. */
export interface Answer {
  readonly quantity: string;
  /** The number with the digits that were written, and its unit when it stands behind it: `45.20`, `45.2 kN/mm`. */
  readonly value: string;
  /** The unit when it stands by itself. */
  readonly unit?: string;
}

/** A sheet of answers as read; what they are answers to is not yet known. */
export interface Answers {
  readonly entries: readonly Answer[];
  readonly source: DesignSource;
}

const valueWords = 'a number, with its unit here or under `unit`: 45.2 or 45.2 kN/mm';

const answerEntry = section('an answer', {
  quantity: reference('what was computed, by its name in the working: laminates.skin.A11'),
  value: z.union([z.string(), z.number()], { error: () => valueWords }).check(z.describe(valueWords)),
  unit: z.optional(reference('the unit of the value: kN/mm')),
});

const listWords = 'a list of answers, each with `quantity`, `value` and `unit`';
const most = 2000;

const answersSchema = section('a sheet of answers', {
  answers: z.array(answerEntry, { error: () => listWords }).check(z.maxLength(most), z.describe(listWords)),
});

/**
 * Reads a sheet of answers: YAML 1.2 or JSON, `answers:` with a list of `{ quantity: laminates.skin.A11, value: 45.2, unit: kN/mm }`;
 * the unit may also stand behind the number.
 * @param text the text of the file, or its bytes
 * @returns the answers with their digits as written; quantities and units are looked at by `checkAnswers`, which knows the design
 * @throws SelvageError as `readDesign`, `duplicate-key` for a quantity given twice and `contradiction` for a unit given twice, each with its place
 */
export function readAnswers(text: string | Uint8Array, options: ReadOptions = {}): Answers {
  const { source, data } = parseDesign((typeof text === 'string' ? text : designText(text)).replace(/^\uFEFF/, ''));
  if (data === null || data === undefined) {
    fail({ code: 'missing-key', message: 'the file is empty', allowed: '`answers:` with a list of answers' });
  }
  const { answers } = bySchema(answersSchema, data, source, 'the sheet of answers');
  const written = (i: number): string => {
    const node = source.document.getIn(['answers', i, 'value'], true);
    const text = isScalar(node) && typeof node.value === 'number' ? node.source : undefined;
    return text ?? String(answers[i]?.value);
  };
  const entries = answers.map(({ quantity, unit }, i): Answer => {
    return { quantity: quantity.trim(), value: written(i), ...(unit === undefined ? {} : { unit: unit.trim() }) };
  });
  const problems = [
    ...(entries.length === 0 ? [empty] : []),
    ...repeated(entries.map(({ quantity }) => quantity)),
    ...entries.flatMap(twoUnits),
  ];
  if (problems.length > 0) throw new SelvageError(locate(problems, source));
  const { fileName } = options;
  return { entries, source: { text: source.text, ...(fileName === undefined ? {} : { fileName }) } };
}

const empty: Problem = {
  code: 'missing-key',
  message: '`answers` is empty',
  allowed: 'at least one answer: { quantity: laminates.skin.A11, value: 45.2, unit: kN/mm }',
  path: ['answers'],
  atKey: true,
};

function twoUnits({ value, unit }: Answer, i: number): Problem[] {
  const number = writtenNumber(value).text;
  if (unit === undefined || number === '' || value.trim() === number) return [];
  return [
    {
      code: 'contradiction',
      message: `the value \`${value}\` has its unit already`,
      allowed: 'the unit once: behind the number, or under `unit`',
      path: ['answers', i, 'unit'],
    },
  ];
}
