import { type Note, type SourceKey, uniqueNotes } from '../../provenance/index.js';
import { inMillimetres, requirePositive } from '../../stitch/index.js';
import type { Working } from '../../working/index.js';
import type { Verdict } from '../types.js';
import { naturalSplit } from './beam-toughness.js';
import { heldRows, showSharpestBend } from './bend-steps.js';
import { type BondLeft, endOfGrowth, requireRoom } from './bond-left.js';
import { checkArms, modelRows, requireInside, requireRefine } from './check.js';
import { equilibriumOf } from './equilibrium.js';
import { wedgeNote } from './large-displacement.js';
import type { Model } from './model.js';
import { openingChain } from './opening-chain.js';
import { bedStiffness, openingPair, rootLength } from './opening-pair.js';
import { openingStrain } from './opening-strain.js';
import { showOpeningPair } from './pair-steps.js';
import { forceAfter } from './row-law.js';
import { checkRowsMet, fewPenetrationsNote, mostRowsOf } from './row-limits.js';
import { settle } from './settle.js';
import { showNaturalSplit, showSplit } from './split-steps.js';
import type { WedgeEdge } from './types.js';

/** A row after the edge has been split. */
export interface WedgeRow {
  /** Number of the row as given. */
  readonly row: number;
  /** m */
  readonly position: number;
  /** Opening at the row, m, and force in all its penetrations, N. */
  readonly opening: number;
  readonly force: number;
  /** True once its greatest force is past. */
  readonly broken: boolean;
}

/** Where a split stops. */
export interface WedgeResult {
  /** m, from the edge. */
  readonly splitLength: number;
  /** False when the split ran through the whole depth. */
  readonly arrested: boolean;
  /** The row behind which it stops within one arm thickness, where beams are not to be trusted: read "at the row". */
  readonly atRow?: number;
  /** Split without rows, m. */
  readonly naturalLength: number;
  /** Force that holds the mouth open, N. */
  readonly load: number;
  /** In order of position. */
  readonly rows: readonly WedgeRow[];
  /** What broke, in order, with the split at which it did. */
  readonly broken: readonly { readonly kind: Verdict; readonly row: number; readonly splitLength: number }[];
  /** Largest surface strain of an arm at the end. */
  readonly armStrain: number;
  readonly notes: readonly Note[];
  readonly sources: readonly SourceKey[];
}

const notes: readonly Note[] = [
  {
    level: 'assumption',
    text: 'One split plane, a straight edge, a rigid wedge that holds the mouth open, no friction, no rate or overshoot of a fast split.',
  },
  {
    level: 'assumption',
    text: 'Arms are linear beams with shear on the elastic bed of their bond; both carry the same moment.',
  },
];

/** Pieces of growth per distance from one obstacle to the next. */
const pieces = 60;

/**
 * How far an edge splits that debris wedges open, with rows of thread that hold it, and which rows break.
 *
 * The mouth stands at its opening; the split grows from near the edge until the energy release at its tip is down to the toughness, rows closing
 * behind it with F(opening) each. Without rows, for slender arms: G = 9 Δ²/(2 a⁴ (1/D1 + 1/D2)), so a_n⁴ = 9 Δ²/(2 Gc (1/D1 + 1/D2)).
 *
 * @param edge rows with penetrations along the width; see {@link WedgeEdge}
 * @param working takes down the steps
 * @throws out-of-range a size not above 0, a row outside the depth, a curve that is not one, too many rows; not-admissible see `rowLaw`;
 * not-computable no equilibrium
 * @source derived in docs/theory/specimens.md; bed Kanninen 1973
 */
export function simulateWedge(edge: WedgeEdge, working?: Working): WedgeResult {
  const { arms, width, depth, opening, bondToughness, refine = 1 } = edge;
  checkArms(arms);
  requirePositive('width', width, inMillimetres);
  requirePositive('depth', depth, inMillimetres);
  requirePositive('opening', opening, inMillimetres);
  requirePositive('bondToughness', bondToughness, (value) => `${value} J/m²`);
  requireRefine(refine);
  const pair = openingPair(arms);
  const bond: BondLeft = { root: rootLength(pair), length: depth, name: 'depth' };
  requireRoom(bond, edge.crackLength ?? 0);
  const end = endOfGrowth(bond);
  const rows = modelRows(edge.rows, depth, 'depth');
  checkRowsMet(rows, end, edge.mostRows ?? mostRowsOf.wedge);
  const naturalLength = naturalSplit(pair, opening, bondToughness, end);
  const begin = edge.crackLength ?? Math.min(rows[0]?.place ?? end, naturalLength > 0 ? naturalLength : end) / 10;
  requireInside('crackLength', begin, end, 'depth of sound bond');
  const strain = openingStrain(edge, rows);
  const model: Model = {
    chain: openingChain(
      pair,
      width,
      depth,
      rows.map(({ place }) => place),
    ),
    rows,
    tipLimit: Math.sqrt((2 * bondToughness) / bedStiffness(pair)),
    bondWork: bondToughness * width,
    longest: end,
    ...strain,
  };
  const equilibrium = equilibriumOf(model);
  const seen = Float64Array.from(rows, ({ law }) => law.firm);
  const first = equilibrium(begin, 1e-9 * opening, seen, new Float64Array(rows.length));
  const gaps = rows.map(({ place }, i) => place - (rows[i - 1]?.place ?? 0)).filter((gap) => gap > 0);
  const longest = Math.min(naturalLength > 0 ? naturalLength : end, ...gaps) / pieces / refine;
  const settled = settle(model, equilibrium, first, opening, {
    first: longest / 8,
    longest,
    enough: Number.POSITIVE_INFINITY,
  });
  const { state, passings } = settled;
  const behind = rows.findLast(({ place }) => place <= state.crackLength);
  const thickness = Math.max(arms[0].thickness, arms[1].thickness);
  const arrested = state.crackLength < end;
  const near = behind !== undefined && arrested && state.crackLength - behind.place < thickness;
  const armStrain = model.strain(state);
  const warnings: Note[] = [...fewPenetrationsNote(edge.rows), ...wedgeNote(opening / state.crackLength)];
  if (!arrested) {
    warnings.push({
      level: 'warning',
      text: `Nothing stops the split: it runs through the depth. The length of ${inMillimetres(state.crackLength)} is where the model ends, ${inMillimetres(depth - state.crackLength)} before the end of the bond; load and rows are those there.`,
    });
  }
  if (armStrain > strain.strainLimit) {
    warnings.push({
      level: 'warning',
      text: `An arm breaks: surface strain ${percent(armStrain)}, limit ${percent(strain.strainLimit)}.`,
    });
  }
  const shown = rows.map(({ place, law, index }, j) => {
    const w = state.opening[j] as number;
    const m = state.largest[j] as number;
    const force = forceAfter(law, w, m);
    return { row: index, position: place, opening: w, force, broken: m > law.peak };
  });
  const found = uniqueNotes([...notes, ...warnings]);
  if (working !== undefined) {
    showOpeningPair(arms, pair, working);
    showNaturalSplit(pair, { width, opening, bondToughness, length: naturalLength }, working);
    showSplit({ pair, width, bondToughness }, state, heldRows(rows, edge.rows, state), working);
    showSharpestBend(edge, rows, state, working.part('sharpestBend'), false);
    working.notes(found);
  }
  return {
    splitLength: state.crackLength,
    arrested,
    ...(near && { atRow: behind.index }),
    naturalLength,
    load: state.load,
    rows: shown,
    broken: passings.flatMap(({ row, crackLength }) => {
      const one = rows[row];
      return one === undefined ? [] : [{ kind: one.failure, row: one.index, splitLength: crackLength }];
    }),
    armStrain,
    notes: found,
    sources: ['kanninen-1973', 'selvage-2026-derivation'],
  };
}

const percent = (strain: number): string => `${(100 * strain).toFixed(2)} %`;
