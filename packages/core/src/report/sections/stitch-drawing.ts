import type { StitchingModel } from '../../design/index.js';
import type { UnitSystem } from '../../quantity/index.js';
import { type FieldPattern, type Penetration, penetrations, type RowsPattern } from '../../stitch/index.js';
import type { FigureBlock } from '../blocks.js';
import { stitchFigure } from '../figures/index.js';

type Run = { readonly from: Penetration; readonly to: Penetration; readonly face: 'top' | 'bottom' };

/** Window of a field pattern: about eight pitches by three row spacings, rows half a spacing from its lower side. */
function fieldWindow(pattern: FieldPattern): { holes: Penetration[]; field: { width: number; height: number } } {
  const { pitch, rowSpacing } = pattern;
  const crossing = pattern.kind === 'crossing';
  const width = Math.max(8 * pitch, crossing ? 2.5 * pattern.second.rowSpacing : 0);
  const height = Math.max(3 * rowSpacing, crossing ? 4 * pattern.second.pitch : 0);
  const corner = { x: -pitch / 2, y: -rowSpacing / 2 };
  const holes = penetrations(pattern, { length: width, width: height, ...corner }).map((hole) => ({
    ...hole,
    x: hole.x - corner.x,
    y: hole.y - corner.y,
  }));
  return { holes, field: { width, height } };
}

/** Window of edge rows: the first ten pitches of every row, rows drawn straight. */
function edgeWindow(pattern: RowsPattern): { holes: Penetration[]; field: { width: number; height: number } } {
  const pitch = Math.max(...pattern.rows.map((row) => row.pitch));
  const last = Math.max(...pattern.rows.map((row) => row.offset));
  const first = Math.min(...pattern.rows.map((row) => row.offset));
  const lead = pitch / 2;
  const width = Math.min(10 * pitch, Math.max(...pattern.rows.map((row) => row.length))) + 2 * lead;
  const holes = penetrations(pattern)
    .map((hole) => ({ ...hole, x: hole.x + lead }))
    .filter((hole) => hole.x < width);
  return { holes, field: { width, height: last + first } };
}

/** Thread on the faces: from hole to hole along each row, on both faces, or on either in turn when one thread passes up and down by hand. */
function threadRuns(holes: readonly Penetration[], inTurn: boolean): Run[] {
  const runs: Run[] = [];
  let inRow = 0;
  for (const [i, to] of holes.entries()) {
    const from = holes[i - 1];
    const sameRow = from !== undefined && from.row === to.row && from.set === to.set;
    inRow = sameRow ? inRow + 1 : 0;
    if (!sameRow) continue;
    if (!inTurn || inRow % 2 === 1) runs.push({ from, to, face: 'top' });
    if (!inTurn || inRow % 2 === 0) runs.push({ from, to, face: 'bottom' });
  }
  return runs;
}

/** The pattern of a stitch plan, to scale. */
export function stitchDrawing(model: StitchingModel, id: string, units: UnitSystem): FigureBlock {
  const { pattern } = model.plan;
  const edge = pattern.kind === 'rows';
  const { holes, field } = edge ? edgeWindow(pattern) : fieldWindow(pattern);
  const rows = edge ? pattern.rows : [];
  const spacing = edge
    ? rows[1] === undefined
      ? undefined
      : rows[1].offset - (rows[0]?.offset ?? 0)
    : pattern.rowSpacing;
  return stitchFigure({
    id: `${id}-pattern`,
    title: `Stitch pattern of ${model.title ?? model.name}`,
    penetrations: holes,
    threads: threadRuns(holes, model.plan.type === 'running'),
    field,
    pitch: edge ? (rows[0]?.pitch ?? 0) : pattern.pitch,
    needleDiameter: model.summary.holeWidth,
    units,
    ...(edge ? { edge: 'bottom' as const } : {}),
    ...(spacing === undefined ? {} : { rowSpacing: spacing }),
  });
}
