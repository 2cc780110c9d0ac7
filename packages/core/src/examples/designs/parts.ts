import { toSI } from '../../quantity/index.js';

/** An entry of a design file: quantities as text with their units. */
export type Entry = Readonly<Record<string, unknown>>;

/** A number of the JSON report, SI, and what makes it the value of the example: `times` it, or `times` over it. */
export interface Term {
  /** Dotted path. */
  readonly at: string;
  readonly times?: number;
  readonly inverse?: true;
}

/** Where a value of an example is found in the results of its design: a sum of terms, of which only the size may count. */
export interface Held {
  readonly terms: readonly Term[];
  readonly plus?: number;
  readonly size?: true;
}

/** An example as the sections of a design file. */
export interface DesignParts {
  /** What stands in the design that the source does not give, and why it may. */
  readonly ours?: readonly string[];
  readonly materials: Readonly<Record<string, Entry>>;
  readonly laminates: Readonly<Record<string, Entry>>;
  readonly loads?: Readonly<Record<string, Entry>>;
  /** By the keys of the values; those of them that are not here are no results of a design. */
  readonly held: Readonly<Record<string, Held>>;
}

/** Why an example cannot be written as a design file, and what can be had instead. */
export interface NoDesign {
  readonly why: string;
  readonly instead: string;
}

export const at = (path: string, times = 1): Held => ({ terms: [{ at: path, ...(times === 1 ? {} : { times }) }] });

export const over = (path: string, times = 1): Term => ({ at: path, times, inverse: true });

const places = ['0.0', '0.1', '0.2', '1.1', '1.2', '2.2'] as const;
const pairs = ['11', '12', '16', '22', '26', '66'] as const;

/** The entries of a symmetric matrix under `NAMEij`. */
export const matrixAt = (name: string, path: string, times = 1): Record<string, Held> =>
  Object.fromEntries(pairs.map((pair, i) => [`${name}${pair}`, at(`${path}.${places[i]}`, times)]));

/** Three components under the names given. */
export const vectorAt = (names: readonly string[], path: string, times = 1): Record<string, Held> =>
  Object.fromEntries(names.map((name, i) => [name, at(`${path}.${i}`, times)]));

/** A number without the noise of its last bits. */
export const digits = (value: number): number => Number(value.toPrecision(15));

/** A quantity computed in SI, as text in a unit. */
export const inUnit = (value: number, unit: string): string => `${digits(value / toSI(1, unit))} ${unit}`;

/** A name for a number, as names of a design file are made: 0.4 is "0_4". */
export const nameOf = (value: number): string => String(value).replace('.', '_');
