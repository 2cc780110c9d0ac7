/**
 * The structure of a specimen without its rows, as a chain of points whose stretches are solved exactly: K u = P load, Δ = direct P + drive u.
 *
 * Totals of the specimen, not per width. `lay` writes all of it for one crack length; the arrays are the chain's own and are reused.
 */
export interface Chain {
  readonly band: number;
  /** Banded as in `factorBanded`. These arrays have room for the longest chain. */
  readonly K: Float64Array;
  readonly load: Float64Array;
  readonly drive: Float64Array;
  /** Unknown that is the opening (or sliding) at each row from `Laid.first` on. */
  readonly row: Int32Array;
  /** Points where crack faces rub: their unknown and the friction force per load. */
  readonly rubs: readonly { unknown: number; perLoad: number }[];
  /** Lays the chain for a crack length, m; the first `spent` rows hold nothing any more. */
  lay(crackLength: number, spent: number): Laid;
  /** Writes the openings of the rows before `Laid.first`, from those of the others, load and displacement. */
  fill(opening: Float64Array, load: number, displacement: number, next: number): void;
}

/** What of a chain depends on the crack length besides its arrays. The same object is handed out each time. */
export interface Laid {
  unknowns: number;
  /** Unknowns whose rows of K are the same in every chain that has as many of them. */
  settled: number;
  /** The first unknown on which the load acts, and the first at which anything is felt. */
  loaded: number;
  felt: number;
  /** The first row that is part of the chain, and the first too far ahead to feel anything. */
  first: number;
  beyond: number;
  /** Unknown that is the opening (or sliding) at the tip, and that at the point next to the load line. */
  tip: number;
  next: number;
  direct: number;
}

/** Places of points without the tip, and which of them belongs to each row. */
export interface Places {
  readonly at: readonly number[];
  readonly ofRow: readonly number[];
}

/** Points at all given places and rows, in order, those of one place once. */
export function placesOf(fixed: readonly number[], rows: readonly number[], length: number): Places {
  const same = 1e-9 * length;
  const at: number[] = [];
  for (const place of [...fixed, ...rows].sort((a, b) => a - b)) {
    if (at.length === 0 || place - (at.at(-1) ?? 0) > same) at.push(place);
  }
  const ofRow = rows.map((row) => at.findIndex((place) => Math.abs(place - row) <= same));
  return { at, ofRow };
}

/** Number of places before the tip, and whether the tip is taken to lie at the next one. */
export function tipAmong({ at }: Places, tip: number, near: number): { readonly before: number; readonly on: boolean } {
  let low = 0;
  let high = at.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((at[middle] as number) < tip - near) low = middle + 1;
    else high = middle;
  }
  return { before: low, on: low < at.length && (at[low] as number) <= tip + near };
}
