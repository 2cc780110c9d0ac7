import { checkPattern } from './check-pattern.js';
import { meetings } from './crossing.js';
import { closeRow, countedArea } from './edge-rows.js';
import type { Pattern } from './types.js';

/** What is sewn with one setting: every stitch of it has the same run. */
export interface Course {
  /** Advance along the row per pass, m. */
  readonly pitch: number;
  /** Distance from hole to hole along the thread, m. */
  readonly run: number;
  /** Passes of the needle per area, 1/m^2. */
  readonly density: number;
  /** Length of row per area, m/m^2. */
  readonly rowLength: number;
}

/**
 * The courses of a pattern: one for parallel, staggered and zigzag rows, one for each set of crossing rows, one for each edge row.
 * Run: the pitch p, in a zigzag sqrt(p^2 + v^2), in an edge row its closed pitch.
 * Edge rows share the area counted width x mean row length; each contributes its stitches over it.
 * @throws out-of-range see `checkPattern`
 */
export function courses(pattern: Pattern): readonly Course[] {
  checkPattern(pattern);
  switch (pattern.kind) {
    case 'rows': {
      const { area } = countedArea(pattern);
      return pattern.rows.map((row) => {
        const { stitches, pitch } = closeRow(row);
        return { pitch, run: pitch, density: stitches / area, rowLength: row.length / area };
      });
    }
    case 'crossing':
      return [pattern, pattern.second].map(straight);
    case 'zigzag':
      return [{ ...straight(pattern), run: Math.hypot(pattern.pitch, pattern.swing) }];
    default:
      return [straight(pattern)];
  }
}

function straight({ pitch, rowSpacing }: { readonly pitch: number; readonly rowSpacing: number }): Course {
  return { pitch, run: pitch, density: 1 / (pitch * rowSpacing), rowLength: 1 / rowSpacing };
}

/**
 * Passes of the needle per area, N, 1/m^2: 1/(p s) for parallel, staggered and zigzag rows, the sum over both sets for crossing rows,
 * stitches over counted area for edge rows. Each pass leaves its legs, so a hole sewn twice counts twice; see {@link holeDensity}.
 * @throws out-of-range see `checkPattern`
 */
export function penetrationDensity(pattern: Pattern): number {
  return courses(pattern).reduce((sum, course) => sum + course.density, 0);
}

/**
 * Distinct holes per area, 1/m^2: the penetration density less, in crossing rows, the holes that both sets share.
 * @throws out-of-range see `checkPattern`
 */
export function holeDensity(pattern: Pattern): number {
  const all = penetrationDensity(pattern);
  return pattern.kind === 'crossing' ? all - meetings(pattern).sharedDensity : all;
}

/**
 * Length of row per area, m/m^2: the sum of 1/s over the sets.
 * @throws out-of-range see `checkPattern`
 */
export function rowLengthPerArea(pattern: Pattern): number {
  return courses(pattern).reduce((sum, course) => sum + course.rowLength, 0);
}

/**
 * Distance from hole to hole along the thread, averaged over the passes, m.
 * @throws out-of-range see `checkPattern`
 */
export function meanRun(pattern: Pattern): number {
  const all = courses(pattern);
  return all.reduce((sum, course) => sum + course.density * course.run, 0) / penetrationDensity(pattern);
}
