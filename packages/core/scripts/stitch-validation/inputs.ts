import chosen from '@selvage/reference-data/stitch-validation-inputs.json' with { type: 'json' };
import printed from '@selvage/reference-data/stitched-laminates.json' with { type: 'json' };
import type { SourceKey } from '../../src/provenance/index.js';
import { toSI } from '../../src/quantity/index.js';

/** How an input came to be known, best first. */
export type InputAccess = 'read' | 'recalled' | 'assumed';

/** A row of reference-data/stitched-laminates.json, in the units of the print. */
export interface PrintedRow {
  readonly source?: SourceKey;
  readonly loading?: string;
  readonly quantity?: string;
  readonly observation?: string;
  readonly pattern?: string;
  readonly note?: string;
  readonly value?: number;
  readonly low?: number;
  readonly high?: number;
  readonly unit?: string;
  readonly access: 'read' | 'recalled';
}

interface PrintedInput {
  readonly name: string;
  readonly value?: number;
  readonly unit: string;
  readonly access: 'read' | 'recalled';
}

export interface DataSet {
  readonly label: string;
  readonly source: SourceKey;
  readonly use: 'validate' | 'context' | 'doNotGate';
  readonly inputs?: readonly PrintedInput[];
  readonly rows: readonly PrintedRow[];
}

export const dataSets = printed.dataSets as unknown as Readonly<Record<string, DataSet>>;

interface Given {
  readonly access: InputAccess;
  readonly note?: string;
}
interface Quantity extends Given {
  readonly value: number;
  readonly unit: string;
}
interface TakenOver extends Partial<Given> {
  /** The data set whose input of the same name this is. */
  readonly from: string;
}
interface Named extends Given {
  readonly id: string;
}
export interface SquarePattern extends Given {
  readonly pitch: number;
  readonly rowSpacing: number;
  readonly unit: string;
}

/** A stitched laminate to be pulled apart, as written down in reference-data/stitch-validation-inputs.json. */
export interface Case {
  readonly label: string;
  readonly mode: 'I' | 'II';
  readonly arm: Given & { readonly ply: string };
  readonly armThickness: Quantity | TakenOver;
  readonly bondToughness: Quantity | TakenOver;
  readonly thread?: Named;
  readonly rod?: Given & {
    readonly diameter: number;
    readonly unit: string;
    readonly fibre: string;
    readonly fibreFraction: number;
  };
  readonly anchorEfficiency?: Quantity;
  readonly stitch?: Named;
  readonly pattern: SquarePattern;
}

/** A stitched laminate loaded in its plane. */
export interface InPlaneCase {
  readonly label: string;
  readonly ply: Named;
  readonly thread: Named;
  readonly pattern: SquarePattern;
}

/** What of a printed row is compared with what of which cases. */
export interface Comparison {
  readonly dataSet: string;
  readonly row: number;
  readonly compare: string;
  readonly cases?: readonly string[];
  readonly why?: string;
}

/** A statement in print and how it is checked. */
export interface Claim {
  readonly dataSet: string;
  readonly row: number;
  readonly check: string;
  readonly claim: string;
  readonly why?: string;
}

type Sizes = Readonly<Record<string, Quantity | string | undefined>>;

export const cases = chosen.cases as unknown as Readonly<Record<string, Case>>;
export const inPlaneCases = chosen.inPlane as unknown as Readonly<Record<string, InPlaneCase>>;
export const comparisons = chosen.rows as readonly Comparison[];
export const claims = chosen.statements as readonly Claim[];
export const series = chosen.series;
export const notBlind: string = chosen.note;

/** An entry that must be there. */
export function entry<T>(shelf: Readonly<Record<string, T>>, id: string): T {
  const found = shelf[id];
  if (found === undefined) throw new Error(`stitch-validation-inputs.json: there is no ${id}`);
  return found;
}

/** A length of a specimen, m. */
export function sizeOf(specimen: keyof typeof chosen.specimens, name: string): number {
  const sizes = chosen.specimens[specimen] as Sizes;
  const size = entry(sizes, name);
  if (size === undefined || typeof size === 'string') throw new Error(`${specimen}: ${name} is no size`);
  return toSI(size.value, size.unit);
}

/** The printed row of a comparison. */
export function rowOf({ dataSet, row }: Pick<Comparison, 'dataSet' | 'row'>): PrintedRow {
  const found = entry(dataSets, dataSet).rows[row];
  if (found === undefined) throw new Error(`${dataSet}: there is no row ${row}`);
  return found;
}

/** An input in SI with how it is known. */
export function inputOf(
  one: Case,
  name: 'armThickness' | 'bondToughness',
): { readonly value: number; readonly access: InputAccess } {
  const given = one[name];
  if (!('from' in given)) return { value: toSI(given.value, given.unit), access: given.access };
  const input = entry(dataSets, given.from).inputs?.find((candidate) => candidate.name === name);
  if (input?.value === undefined) throw new Error(`${given.from} gives no ${name}`);
  return { value: toSI(input.value, input.unit), access: given.access ?? input.access };
}

/** How the inputs of a case are known: "arm, stitch assumed; thread recalled". */
export function qualityOf(one: Case): string {
  const parts: readonly (readonly [string, InputAccess | undefined])[] = [
    ['ply', one.arm.access],
    ['arm thickness', inputOf(one, 'armThickness').access],
    ['bond', inputOf(one, 'bondToughness').access],
    ['thread', one.thread?.access],
    ['rod', one.rod?.access],
    ['stitch', one.stitch?.access],
    ['pattern', one.pattern.access],
  ];
  return (['read', 'recalled', 'assumed'] as const)
    .map((access) => ({ access, names: parts.flatMap(([name, own]) => (own === access ? [name] : [])) }))
    .filter(({ names }) => names.length > 0)
    .map(({ access, names }) => `${names.join(', ')} ${access}`)
    .join('; ');
}
