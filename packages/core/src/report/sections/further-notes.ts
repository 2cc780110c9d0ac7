import { type Note, uniqueNotes } from '../../provenance/index.js';
import type { Block } from '../blocks.js';

/** The notes of a check of a laminate, without those that stand with the laminate itself. */
export function furtherNotes(notes: readonly Note[], known: readonly Note[]): Block {
  const said = new Set(known.map((note) => note.text));
  return { kind: 'notes', notes: uniqueNotes(notes.filter((note) => !said.has(note.text))) };
}
