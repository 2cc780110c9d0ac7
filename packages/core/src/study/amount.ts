import type { InputValue } from '../design/index.js';
import { leadingNumber, parseUnit } from '../quantity/index.js';

/** A number of a design file with its unit as written; a bare number has none. */
export interface Amount {
  readonly number: number;
  /** Empty for a bare number. */
  readonly unit: string;
}

/** The number in a value, where it is one with a known unit or none: "4 mm", 110, "50 %"; not "[0/90]s", "1/8 in". */
export function amountOf(value: InputValue): Amount | undefined {
  if (typeof value === 'number') return { number: value, unit: '' };
  if (typeof value !== 'string') return undefined;
  const text = value.trim();
  const number = leadingNumber(text);
  if (number?.decimal === undefined) return undefined;
  const unit = text.slice(number.length).trim();
  return unit !== '' && parseUnit(unit) === undefined ? undefined : { number: number.value, unit };
}

/** Digits beyond which a number in a design file says nothing. */
const digits = 12;

/** An amount as it is written in a design file. */
export function written({ number, unit }: Amount): InputValue {
  const rounded = Number(number.toPrecision(digits));
  return unit === '' ? rounded : `${rounded} ${unit}`;
}

/** Sections and keys in which no number is an input of mechanics. */
const aside = /^(format|title|notes|targets|search|tolerances)(\.|$)|\.(note|title|label|source|basis)$/;

/** Whether results may follow from what stands at a path of a design file. */
export const isInput = (path: string): boolean => !aside.test(path);

/** Keys whose number is the name of something or counts things, so that there is nothing a little beside it. The metric number of a needle is a length. */
const nominal = /\.(stitchType|strandsInNeedle|harness|interface|modes|count)$/;

/** Whether the number at a path of a design file can be a little more or less. */
export const isQuantity = (path: string): boolean => !nominal.test(path);

/** Below this share of a quantity a change of it is round-off. */
export const roundOff = 1e-10;

/** The number of an amount in another unit of the same dimension; undefined for another dimension. */
export function numberIn(amount: Amount, unit: string): number | undefined {
  if (amount.unit === unit) return amount.number;
  const [from, to] = [parseUnit(amount.unit || '1'), parseUnit(unit || '1')];
  if (from === undefined || to === undefined || from.dimension !== to.dimension) return undefined;
  return (amount.number * from.factor) / to.factor;
}
