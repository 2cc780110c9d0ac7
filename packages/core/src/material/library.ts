import bibliographyData from '@selvage/reference-data/bibliography.json' with { type: 'json' };
import coreData from '@selvage/reference-data/cores.json' with { type: 'json' };
import fabricData from '@selvage/reference-data/fabrics.json' with { type: 'json' };
import fibreData from '@selvage/reference-data/fibres.json' with { type: 'json' };
import plyData from '@selvage/reference-data/plies.json' with { type: 'json' };
import resinData from '@selvage/reference-data/resins.json' with { type: 'json' };
import threadData from '@selvage/reference-data/threads.json' with { type: 'json' };
import { fail, nearestHint } from '../problem/index.js';
import type { SourceKey } from '../provenance/index.js';
import type { BibliographyEntry, LibraryEntry, LibraryFabric, LibraryPly, LibraryThread } from './library-types.js';

type Shelf<Entry> = Readonly<Record<string, Entry>>;

/** A thread with the values that it takes over from the entry it inherits from. */
function completed(thread: LibraryThread, threads: Shelf<LibraryThread>): LibraryThread {
  const parent = thread.inherits === undefined ? undefined : threads[thread.inherits];
  return parent === undefined
    ? thread
    : { ...thread, values: { ...completed(parent, threads).values, ...thread.values } };
}

function completedThreads(threads: Shelf<LibraryThread>): Shelf<LibraryThread> {
  return Object.fromEntries(Object.entries(threads).map(([id, thread]) => [id, completed(thread, threads)]));
}

/**
 * The materials and threads that come with the library, by kind and id, in the units of their sources.
 * Threads carry the values of the entry they inherit from.
 */
export const library = {
  fibres: fibreData as Shelf<LibraryEntry>,
  resins: resinData as Shelf<LibraryEntry>,
  plies: plyData as Shelf<LibraryPly>,
  fabrics: fabricData as Shelf<LibraryFabric>,
  cores: coreData as Shelf<LibraryEntry>,
  threads: completedThreads(threadData as Shelf<LibraryThread>),
} as const;

/** Every source that a value or a model of the library may name. */
export const bibliography = bibliographyData as Shelf<BibliographyEntry>;

/**
 * The full reference behind a source key: author, title, publisher, year.
 * @throws `unknown-name` when the bibliography has no such key
 */
export function citation(key: SourceKey): string {
  const entry = entryOf(bibliography, key);
  if (entry !== undefined) return entry.citation;
  return fail({
    code: 'unknown-name',
    message: `\`${key}\` is not in the bibliography`,
    allowed: 'a key of bibliography.json',
    ...nearestHint(key, Object.keys(bibliography)),
  });
}

/** The entry of that id, or undefined; names that every object carries, such as `constructor`, are no entries. */
export function entryOf<Entry>(shelf: Shelf<Entry>, id: string): Entry | undefined {
  return Object.hasOwn(shelf, id) ? shelf[id] : undefined;
}
