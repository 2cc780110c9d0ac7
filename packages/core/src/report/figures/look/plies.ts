import type { Dye } from './palette.js';

/**
 * The dye of fibres that run at an angle, degrees in (-90, 90]: along, across, and leaning either way. The lines of a hatch
 * run at that angle as well, so that the dye only repeats what they show.
 */
export function fibreDye(angle: number): Dye {
  if (angle === 0) return 'indigo';
  if (angle === 90) return 'verdigris';
  return angle > 0 ? 'madder' : 'heather';
}

/** Thread on top of a part and below it; the dashes of what lies below say it hides. */
export const threadLook = { top: 'sv-madder sv-thick', bottom: 'sv-indigo sv-thick sv-stitched' } as const;
