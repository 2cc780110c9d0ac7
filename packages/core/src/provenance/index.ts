/** A key of the bibliography in reference-data/bibliography.json. */
export type SourceKey = string;

/** How a value came to be known. */
export type Basis = 'published' | 'measured' | 'derived' | 'assumed';

/** How the source of a value was reached: read in the publication itself or where another quotes or solves it, recalled without re-reading, or computed. */
export type Access = 'read' | 'quoted' | 'recalled' | 'computed' | 'invented';

const accesses: Readonly<Record<Access, string>> = {
  read: 'read in the source',
  quoted: 'read where it is quoted',
  recalled: 'recalled, not re-read',
  computed: 'computed by an independent script',
  invented: 'invented',
};

/** How a source or a value was reached, for readers. */
export const accessInWords = (access: Access): string => accesses[access];

/** Something the reader of a result must know: an assumption made, or a validity limit that was crossed. */
export interface Note {
  readonly level: 'assumption' | 'warning';
  readonly text: string;
  readonly source?: SourceKey;
}

/** Notes without repetition, in order of first appearance. */
export function uniqueNotes(notes: Iterable<Note>): Note[] {
  const seen = new Map<string, Note>();
  for (const note of notes) if (!seen.has(note.text)) seen.set(note.text, note);
  return [...seen.values()];
}

/** Source keys without repetition, in order of first appearance. */
export function uniqueSources(...lists: Iterable<SourceKey>[]): SourceKey[] {
  const all = new Set<SourceKey>();
  for (const list of lists) for (const key of list) all.add(key);
  return [...all];
}
