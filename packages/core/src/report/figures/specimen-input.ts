import { fail } from '../../problem/index.js';
import type { UnitSystem } from '../../quantity/index.js';

/** A specimen seen from the side. Lengths in m, places from where the specimen counts: load line, left support, grips or edge. */
export interface SpecimenFigureInput {
  /** Unique in the report; lower case with hyphens. */
  readonly id: string;
  readonly title: string;
  readonly kind: 'dcb' | 'enf' | 'peel' | 'wedge';
  /** Of the upper and the lower arm. */
  readonly thickness: readonly [number, number];
  /** To the end of the bond. */
  readonly length: number;
  /** The starting crack; of a wedged edge the split. */
  readonly crackLength: number;
  /** Places of the rows. */
  readonly rows: readonly number[];
  /** Of an end-notched flexure specimen: between supports, and between two loads about the middle. */
  readonly span?: number;
  readonly loadSpan?: number;
  /** Of a wedged edge: how far its mouth is held open. */
  readonly opening?: number;
  readonly units: UnitSystem;
}

/** Refuses sizes and places that cannot be drawn. */
export function checkSpecimen(input: SpecimenFigureInput): void {
  const { id, thickness, length, crackLength, rows, span, loadSpan, opening } = input;
  const wrong = (name: string, value: number, allowed: string): never =>
    fail({ code: 'not-computable', message: `figure \`${id}\`: ${name} = ${value} m cannot be drawn`, allowed });
  const sizes = { 'upper arm': thickness[0], 'lower arm': thickness[1], length, span, opening };
  for (const [name, value] of Object.entries(sizes)) {
    if (value !== undefined && !(value > 0 && Number.isFinite(value))) wrong(name, value, 'above 0');
  }
  const places = { crackLength, loadSpan, ...Object.fromEntries(rows.map((place, i) => [`row ${i + 1}`, place])) };
  for (const [name, value] of Object.entries(places)) {
    if (value !== undefined && !(value >= 0 && value <= length)) wrong(name, value, 'inside the specimen');
  }
}

/** Rows that act: in a peel those behind the front at the start are cut. */
export function actingRows({ kind, rows, crackLength }: SpecimenFigureInput): number[] {
  return [...rows].sort((a, b) => a - b).filter((place) => kind !== 'peel' || place >= crackLength);
}

/** Where the loads act, m. */
export function loadPlaces({ kind, span = 0, loadSpan = 0 }: SpecimenFigureInput): number[] {
  if (kind !== 'enf') return [0];
  return loadSpan > 0 ? [(span - loadSpan) / 2, (span + loadSpan) / 2] : [span / 2];
}
