import type { Path, Problem } from '../problem/index.js';
import { type KindName, parseQuantity } from '../quantity/index.js';
import type { Answer } from './read.js';
import { writtenNumber } from './written.js';

/** The value of an answer with what its digits say. */
export interface AnswerValue {
  /** SI, angles in degrees. */
  readonly value: number;
  /** Half a unit of the last written digit, SI. */
  readonly half: number;
  readonly digits: number;
  /** SI value of 1 of the unit that was written, and the unit as it was. */
  readonly unit: number;
  readonly unitText: string;
}

/** Reads the value of an answer as a quantity of a kind. @param path of the answer in its file */
export function answerValue({ value, unit }: Answer, kind: KindName, path: Path): AnswerValue | Problem {
  const text = unit === undefined ? value : `${value} ${unit}`;
  const parsed = parseQuantity(text, kind, [...path, 'value']);
  if (!parsed.ok) return unit === undefined ? parsed.problem : atUnit(parsed.problem, value, path);
  const number = writtenNumber(value);
  const unitText = text.slice(number.text.length).trim();
  const size = (count: string): number => {
    const one = parseQuantity(`${count} ${unitText}`, kind);
    return one.ok ? one.value : Number.NaN;
  };
  // The difference of two, so that a temperature loses its zero point.
  const factor = size('1') - size('0');
  return { value: parsed.value, half: number.half * factor, digits: number.digits, unit: factor, unitText };
}

/** A fault of the unit is shown where the unit stands. */
function atUnit(problem: Problem, value: string, path: Path): Problem {
  const offset = (problem.within?.offset ?? 0) - value.length - 1;
  if (problem.within === undefined || offset < 0) return problem;
  return { ...problem, path: [...path, 'unit'], within: { ...problem.within, offset } };
}
