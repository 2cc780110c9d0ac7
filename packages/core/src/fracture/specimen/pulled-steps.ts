import type { RuleName, StepValues, Working } from '../../working/index.js';
import type { SpecimenState, Verdict } from '../types.js';
import type { Moment, Piece } from './resistance.js';

/** How the working makes toughness of a load. */
export interface RowsOfLoad {
  readonly rule: RuleName;
  /** What all rows share. */
  readonly values: StepValues;
  /** What of a row depends on the crack length besides. */
  readonly of?: (crackLength: number) => StepValues;
}

interface PulledMoment extends Moment {
  readonly load: number;
  readonly displacement: number;
}

interface Pulled {
  readonly rows: RowsOfLoad;
  /** What gave way, with the crack length that a tester sees. */
  readonly events: readonly {
    readonly kind: Verdict;
    readonly load: number;
    readonly displacement: number;
    readonly from: number;
    readonly byLoad: number;
  }[];
  readonly pieces: readonly Piece<PulledMoment>[];
  readonly width: number;
}

/** Takes down the record of a specimen, row by row: what gave way, by kind, then the growth by load and by area. */
export function showPulled({ rows, events, pieces, width }: Pulled, working: Working): void {
  const row = (a: number, P: number, Delta: number, G_L: number): StepValues => ({ a, P, Delta, ...rows.of?.(a), G_L });
  for (const kind of new Set(events.map((event) => event.kind))) {
    const own = events.filter((event) => event.kind === kind);
    const list = own.map(({ from, load, displacement, byLoad }) => row(from, load, displacement, byLoad));
    working.part('gaveWay', kind).step(rows.rule, rows.values, list);
  }
  if (pieces.length === 0) return;
  const grown = pieces.map(({ from }) => row(from.crackLength, from.load, from.displacement, from.byLoad));
  working.part('growth').step(rows.rule, rows.values, grown);
  showPieces(pieces, width, working.part('growth'));
}

/** Takes down the greatest load, and where it is reached. */
export function showGreatest(states: readonly SpecimenState[], working: Working): void {
  const most = states.reduce<SpecimenState | undefined>(
    (best, state) => (best === undefined || state.load > best.load ? state : best),
    undefined,
  );
  if (most === undefined) return;
  working.step('greatestLoad', { a: most.crackLength, Delta: most.displacement, P_max: most.load });
}

/** A piece of growth that is this small a share of the crack is rounding, and has no toughness. */
const noGrowth = 1e-12;

/** Takes down the toughness of every piece of growth from the work that it took. */
export function showPieces(pieces: readonly Piece<Moment>[], width: number, working: Working): void {
  const rows = pieces
    .filter(({ end, growth, from }) => end !== true && growth > noGrowth * from.crackLength)
    .map(({ from, work, stored, spent, growth }) => ({
      a: from.crackLength,
      a_p: growth,
      W_p: work,
      U_p: stored,
      G_A: spent / (width * growth),
    }));
  working.step('areaRows', { b: width }, rows);
}
