import type { Quantity } from './quantities.js';
import { type Sheet, type Slip, type SlipName, slips } from './slips/index.js';
import type { AnswerValue } from './value.js';

/** One slip, with what fixes it further: a unit, a power of ten, the quantity that was given instead. */
export interface RecognisedSlip {
  readonly name: SlipName;
  readonly detail?: string;
}

/** What explains a wrong number: one slip, or two that were made together. */
export interface Explanation {
  readonly slips: readonly RecognisedSlip[];
  /** The number that they give, SI. */
  readonly value: number;
}

/** An answer beside the right number. */
export interface Compared {
  readonly of: Quantity;
  readonly answer: AnswerValue;
  /** The largest difference that the written digits allow, SI. */
  readonly tolerance: number;
  /** A number below this is as good as zero. */
  readonly negligible: number;
  /** How far rounding on the way may lead from the number of a slip, as a share of it. */
  readonly rounding: number;
}

/** An explanation that may still stand back behind another. */
export interface Candidate extends Explanation {
  /** Slips of one family give one number by symmetry: one of them stands for the others. */
  readonly family: string;
}

/** Two slips together give many numbers: only so many digits tell them from chance. */
const digitsForTwo = 4;
const thousands = [3, -3, 6, -6, 9, -9];

const equal = (one: number, other: number): boolean => Math.abs(one - other) <= 1e-9 * Math.abs(one);

const meets = ({ answer, rounding }: Compared, value: number): boolean =>
  Math.abs(answer.value - value) <= Math.max(answer.half, rounding * Math.abs(value));

/**
 * A slip that changes nothing that the digits show explains nothing; nor does one whose number is nothing beside its neighbours, unless it is the
 * right number with its point elsewhere.
 */
const tells = ({ of, tolerance, negligible }: Compared, { value, family }: Candidate): boolean =>
  Math.abs(value - of.value) > tolerance && Math.abs(family === 'ten' ? of.value : value) > negligible;

const numbersOf = (slip: Slip, { of, answer }: Compared, sheet: Sheet): Candidate[] =>
  slip.numbers(of, sheet, { kind: of.kind, unit: answer.unit }).map(({ value, detail }) => ({
    slips: [{ name: slip.name, ...(detail === undefined ? {} : { detail }) }],
    value,
    family: slip.family ?? slip.name,
  }));

const nameOf = ({ slips: [first] }: Explanation): SlipName | undefined => first?.name;

/** Each slip once; of a family that gives one number by symmetry the first; a mere sign only where nothing else gives it. */
export function once(found: readonly Candidate[]): Candidate[] {
  const kept: Candidate[] = [];
  for (const one of found) {
    const known = kept.some(
      (other) => nameOf(other) === nameOf(one) || (other.family === one.family && equal(other.value, one.value)),
    );
    if (!known && (nameOf(one) !== 'sign' || kept.length === 0)) kept.push(one);
  }
  return kept;
}

/** Slips that each give the answer, the more common first. */
function single(compared: Compared, sheet: Sheet): Candidate[] {
  const enough = slips.filter((slip) => slip.digits <= compared.answer.digits);
  return enough
    .flatMap((slip) => numbersOf(slip, compared, sheet))
    .filter((one) => tells(compared, one) && meets(compared, one.value));
}

/** A slip together with a power of a thousand, when only one such pair gives the answer. */
function double(compared: Compared, sheet: Sheet): Candidate[] {
  if (compared.answer.digits < digitsForTwo) return [];
  const found = slips
    .filter(({ family, name }) => family !== 'ten' && name !== 'sign')
    .flatMap((slip) => numbersOf(slip, compared, sheet))
    .filter((one) => tells(compared, one))
    .flatMap((one) =>
      thousands.map(
        (power): Candidate => ({
          ...one,
          slips: [...one.slips, { name: 'powerOfTen', detail: String(power) }],
          value: one.value * 10 ** power,
        }),
      ),
    )
    .filter(({ value }) => meets(compared, value));
  return once(found).length === 1 ? found : [];
}

/** All that can explain an answer that is not right: slips that each give it, else one pair of slips; the more common first. */
export function explain(compared: Compared, sheet: Sheet): readonly Candidate[] {
  const found = single(compared, sheet);
  return found.length > 0 ? found : double(compared, sheet);
}
