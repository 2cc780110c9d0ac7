import type { Note, SourceKey } from '../provenance/index.js';
import type { KindName, UnitSystem } from '../quantity/index.js';

/** A number that knows what it is: kept in SI, shown in the reader's units. */
export interface QuantityCell {
  readonly value: number;
  readonly kind: KindName;
  /** Significant digits shown; 4 by default. */
  readonly digits?: number;
}

/** A table or fact entry: words, or a quantity. */
export type Cell = string | QuantityCell;

/** A column of a table. */
export interface Column {
  readonly label: string;
  /** When every number of the column is of one kind, its unit is shown once, in the head. */
  readonly kind?: KindName;
}

/** A drawing, as a self-contained SVG string that follows light and dark by the page's custom properties. */
export interface FigureBlock {
  readonly kind: 'figure';
  /** Unique in the report; lower case with hyphens. */
  readonly id: string;
  readonly caption: string;
  /** What the drawing shows, in words that replace it for a reader who cannot see it. */
  readonly alt: string;
  readonly svg: string;
  /** The same in characters, for a terminal. */
  readonly text?: string;
}

/** A result with its formula; printed in symbols, with the numbers put in, and as a number with its unit. */
export interface Equation {
  /** The symbol of the result. */
  readonly symbol: string;
  /** In the other symbols, see `Rule`; without one the result stands alone. */
  readonly expression?: string;
  /** Where the result is a sum: the numbers of its terms; `values` then holds the result alone. */
  readonly terms?: readonly Readonly<Record<string, number>>[];
  /** Numbers of all symbols, SI. */
  readonly values: Readonly<Record<string, number>>;
}

/** Results shown as a matrix of one kind. */
export interface ResultMatrix {
  readonly name: string;
  readonly kind: KindName;
  /** By rows, SI. */
  readonly rows: readonly (readonly number[])[];
}

/** One step of a calculation. */
export interface StepBlock {
  readonly kind: 'step';
  /** Unique in the report; lower case with hyphens. */
  readonly id: string;
  readonly number: number;
  readonly title: string;
  /** Of what, in words: "plies 1 and 4, 45°". */
  readonly of: string;
  /** Name of the rule, and what stands before a symbol to name one of its numbers: `laminates.skin.plies.1`. */
  readonly rule: string;
  readonly part: string;
  readonly form?: { readonly text: string; readonly tex: string };
  /** Every number that came out, SI, by its symbol. */
  readonly results: Readonly<Record<string, number>>;
  readonly equations: readonly Equation[];
  readonly matrices: readonly ResultMatrix[];
  readonly digits: number;
  readonly remark?: string;
  readonly source: SourceKey;
  /** Author, year and place in the source, and how it was reached. */
  readonly sourceText: string;
  /** Published examples that this formula reproduces. */
  readonly examples: readonly string[];
}

/** One piece of a report. Renderers print these and know nothing of mechanics. */
export type Block =
  | { readonly kind: 'heading'; readonly level: 2 | 3; readonly text: string; readonly id: string }
  | { readonly kind: 'paragraph'; readonly text: string }
  | { readonly kind: 'list'; readonly items: readonly string[] }
  | {
      readonly kind: 'facts';
      readonly items: readonly { readonly label: string; readonly value: Cell; readonly remark?: string }[];
    }
  | {
      readonly kind: 'table';
      /** Unique in the report; lower case with hyphens; names the table in CSV output. */
      readonly id: string;
      readonly caption: string;
      readonly columns: readonly Column[];
      readonly rows: readonly (readonly Cell[])[];
      /** For each row the id of the heading to which its first entry leads on a page. */
      readonly rowLinks?: readonly string[];
    }
  | FigureBlock
  | StepBlock
  | { readonly kind: 'notes'; readonly notes: readonly Note[] }
  | { readonly kind: 'caution'; readonly title: string; readonly items: readonly string[] }
  | {
      readonly kind: 'sources';
      readonly entries: readonly { readonly key: SourceKey; readonly text: string; readonly access: string }[];
    };

/** A finished report: what a reader sees (blocks) and what a program reads (data, SI numbers). */
export interface Report {
  readonly title: string;
  readonly subtitle?: string;
  /** Units in which the report was written; renderers use them unless told otherwise. */
  readonly units: UnitSystem;
  readonly blocks: readonly Block[];
  /** The contract's JSON document. */
  readonly data: Readonly<Record<string, unknown>>;
}

/** What a report can be written as. */
export type RenderFormat = 'text' | 'markdown' | 'html' | 'json' | 'csv';
