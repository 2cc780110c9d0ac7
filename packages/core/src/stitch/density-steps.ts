import type { Working } from '../working/index.js';
import { meetings } from './crossing.js';
import { courses, holeDensity, meanRun, penetrationDensity, rowLengthPerArea } from './density.js';
import { closeRow, countedArea, countedWidth } from './edge-rows.js';
import type { Pattern, RowsPattern } from './types.js';

/** Takes down how densely a pattern is sewn. */
export function showDensity(pattern: Pattern, working: Working): void {
  if (pattern.kind === 'rows') {
    showEdgeRows(pattern, working);
    return;
  }
  const all = { m: meanRun(pattern), N: penetrationDensity(pattern), l_R: rowLengthPerArea(pattern) };
  const { pitch: p, rowSpacing: s } = pattern;
  if (pattern.kind === 'zigzag') working.step('densityOfZigzag', { p, s, v: pattern.swing, ...all });
  else if (pattern.kind !== 'crossing') working.step('densityOfRows', { p, s, ...all });
  else {
    const rows = [pattern, pattern.second].map((set, i) => ({
      p: set.pitch,
      s: set.rowSpacing,
      ...coursesOf(pattern)[i],
    }));
    const further = { N_sh: meetings(pattern).sharedDensity, N_h: holeDensity(pattern) };
    working.step('densityOfCrossing', { ...all, ...weighted(rows), ...further }, rows);
  }
}

interface CourseSums {
  readonly N: number;
  readonly l_R: number;
  readonly m_N: number;
}

const coursesOf = (pattern: Pattern): readonly CourseSums[] =>
  courses(pattern).map(({ density, rowLength, run }) => ({ N: density, l_R: rowLength, m_N: density * run }));

const weighted = (rows: readonly Partial<CourseSums>[]): { readonly m_N: number } => ({
  m_N: rows.reduce((sum, { m_N = 0 }) => sum + m_N, 0),
});

function showEdgeRows(pattern: RowsPattern, working: Working): void {
  const closed = pattern.rows.map((row) => {
    const { stitches, pitch } = closeRow(row);
    return { L_r: row.length, p: row.pitch, n_s: stitches, p_c: pitch };
  });
  working.step('closedRows', {}, closed);
  const [n_R, b_R] = [pattern.rows.length, countedWidth(pattern)];
  const [o_1, o_R] = [pattern.rows[0]?.offset ?? 0, pattern.rows.at(-1)?.offset ?? 0];
  if (pattern.bandWidth === undefined) {
    if (n_R === 1) working.step('bandOfOneRow', { o_1, b_R });
    else working.step('bandOfRows', { n_R, o_1, o_R, b_R });
  }
  const { length, area } = countedArea(pattern);
  working.step(
    'areaOfRows',
    { b_R, n_R, L_R: length, A_R: area },
    closed.map(({ L_r }) => ({ L_r, L_R: L_r })),
  );
  const rows = coursesOf(pattern).map((course, i) => ({ ...closed[i], ...course }));
  const all = { N: penetrationDensity(pattern), l_R: rowLengthPerArea(pattern), m: meanRun(pattern) };
  working.step('densityAlongEdge', { A_R: area, ...all, ...weighted(rows) }, rows);
}
