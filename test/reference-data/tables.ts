import bibliography from '@selvage/reference-data/bibliography.json' with { type: 'json' };
import cores from '@selvage/reference-data/cores.json' with { type: 'json' };
import curedPlies from '@selvage/reference-data/examples/cured-plies.json' with { type: 'json' };
import fabrics from '@selvage/reference-data/fabrics.json' with { type: 'json' };
import fractions from '@selvage/reference-data/fibre-fractions-by-process.json' with { type: 'json' };
import fibres from '@selvage/reference-data/fibres.json' with { type: 'json' };
import hygrothermal from '@selvage/reference-data/hygrothermal.json' with { type: 'json' };
import needles from '@selvage/reference-data/needles.json' with { type: 'json' };
import plies from '@selvage/reference-data/plies.json' with { type: 'json' };
import resins from '@selvage/reference-data/resins.json' with { type: 'json' };
import threads from '@selvage/reference-data/threads.json' with { type: 'json' };
import toughness from '@selvage/reference-data/toughness.json' with { type: 'json' };
import wear from '@selvage/reference-data/wear.json' with { type: 'json' };
import type { WorkedExample } from '../../packages/core/src/examples/index.js';
import type {
  BibliographyEntry,
  LibraryEntry,
  LibraryFabric,
  LibraryThread,
  LibraryValue,
} from '../../packages/core/src/material/library-types.js';

export type Table<Entry = LibraryEntry> = Readonly<Record<string, Entry>>;

export const sources = bibliography as Table<BibliographyEntry>;

export const tables = {
  fibres: fibres as Table,
  resins: resins as Table,
  plies: plies as Table,
  fabrics: fabrics as Table<LibraryFabric>,
  cores: cores as Table,
  threads: threads as Table<LibraryThread>,
  toughness: toughness as Table,
  hygrothermal: hygrothermal as Table,
  wear: wear as Table,
  fractions: fractions as Table,
  needles: needles as Table,
};

/** Every value of every table, with its place in words. */
export const allValues: readonly (readonly [place: string, value: LibraryValue])[] = Object.entries(tables).flatMap(
  ([table, entries]) =>
    Object.entries(entries as Table).flatMap(([id, entry]) =>
      Object.entries(entry.values).map(([name, value]) => [`${table}/${id}/${name}`, value] as const),
    ),
);

export const allEntries: readonly (readonly [place: string, entry: LibraryEntry])[] = Object.entries(tables).flatMap(
  ([table, entries]) => Object.entries(entries as Table).map(([id, entry]) => [`${table}/${id}`, entry] as const),
);

export const curedPlyExamples = curedPlies as unknown as readonly WorkedExample[];
export { workedExamples as examples } from '../../packages/core/src/examples/index.js';
