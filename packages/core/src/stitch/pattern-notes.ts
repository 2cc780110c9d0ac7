import type { Note } from '../provenance/index.js';
import { inMillimetres } from './check.js';
import { meetings } from './crossing.js';
import { holeDensity } from './density.js';
import { closeRow, countedWidth } from './edge-rows.js';
import type { CrossingPattern, Pattern, RowsPattern } from './types.js';

/** Closed pitch further than this from the wanted one is worth a word. */
const noticeable = 0.05;

/**
 * What a reader must know of how a pattern was counted.
 * @throws out-of-range see {@link checkPattern}
 */
export function patternNotes(pattern: Pattern): Note[] {
  switch (pattern.kind) {
    case 'rows':
      return rowNotes(pattern);
    case 'crossing':
      return crossingNotes(pattern);
    case 'zigzag': {
      if (pattern.swing < pattern.rowSpacing) return [];
      const [swing, spacing] = [inMillimetres(pattern.swing), inMillimetres(pattern.rowSpacing)];
      return [{ level: 'warning', text: `zigzags of ${swing} swing, ${spacing} apart, reach over each other` }];
    }
    default:
      return [];
  }
}

function rowNotes(pattern: RowsPattern): Note[] {
  const width = inMillimetres(countedWidth(pattern));
  const how =
    pattern.bandWidth !== undefined
      ? 'the given band'
      : pattern.rows.length === 1
        ? 'twice the offset of the single row'
        : 'rows times their mean distance';
  const notes: Note[] = [
    { level: 'assumption', text: `numbers per area of edge rows are counted over a band of ${width}: ${how}` },
  ];
  pattern.rows.forEach((row, index) => {
    const { pitch } = closeRow(row);
    if (Math.abs(pitch - row.pitch) > noticeable * row.pitch) {
      const text = `row ${index + 1} closes at a pitch of ${inMillimetres(pitch)} instead of ${inMillimetres(row.pitch)}`;
      notes.push({ level: 'warning', text });
    }
  });
  return notes;
}

function crossingNotes(pattern: CrossingPattern): Note[] {
  const { repeats, sharedDensity } = meetings(pattern);
  const notes: Note[] = [];
  if (!repeats) {
    notes.push({
      level: 'assumption',
      text: 'the two sets never fall into step: no shared holes counted, closest holes are those of a searched part',
    });
  }
  if (sharedDensity > 0) {
    const share = ((100 * sharedDensity) / holeDensity(pattern)).toPrecision(3);
    notes.push({
      level: 'assumption',
      text: `${share} % of the holes are sewn by both sets: each pass leaves its own thread, the hole counts once`,
    });
  }
  if ((pattern.angle ?? 90) !== 90) {
    notes.push({
      level: 'assumption',
      text: 'distances between rows met by a crack are those of the first set: the second, at an angle, lies in between',
    });
  }
  return notes;
}
