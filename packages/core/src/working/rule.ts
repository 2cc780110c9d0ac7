import type { SourceKey } from '../provenance/index.js';
import type { KindName } from '../quantity/index.js';

/** What a symbol of the formulas stands for. */
export interface SymbolMeaning {
  readonly kind: KindName;
  /** In words, lower case. */
  readonly meaning: string;
}

/** The table of symbols of one subject: identifier as the formulas write it, kind of quantity, meaning. */
export type SymbolTable = Readonly<Record<string, SymbolMeaning>>;

/** A formula for people that has no expression for each number: an inverse, the root of an equation. */
export interface Form {
  readonly text: string;
  readonly tex: string;
}

/**
 * A formula of the handbooks with its name and source. The computation writes down the numbers that went into it and came out of it; a rule
 * computes nothing.
 *
 * Expressions are those of mathjs with angles in degrees: `U2 cos(2 theta)`, `E1 / (1 - nu12 nu21)`. A product with a bracket needs its star.
 */
export interface Rule {
  readonly title: string;
  /** Results in the order of the calculation, each by the symbols before it; where there are sums, they come first. */
  readonly formulas?: Readonly<Record<string, string>>;
  /** Results that are sums over the rows of the step, each with the term of one row; a row may use the symbols of the step. */
  readonly sums?: Readonly<Record<string, string>>;
  /** Results of every row by itself, in the order of the calculation, by the symbols of the row and of the step. */
  readonly each?: Readonly<Record<string, string>>;
  /** What a row is called: `ply`. */
  readonly row?: string;
  /** Stands where no expression can: how the results follow from the inputs. */
  readonly form?: Form;
  /** Results of a `form`; those of formulas and sums are known. */
  readonly results?: readonly string[];
  /** Results that are shown as matrices, by rows. */
  readonly grids?: Readonly<Record<string, readonly (readonly string[])[]>>;
  /** What a reader should know: a convention, where the formula ends. */
  readonly remark?: string;
  readonly source: SourceKey;
  /** Chapter, table, equation or page in the source. */
  readonly where?: string;
}
