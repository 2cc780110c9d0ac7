import { type Note, type SourceKey, uniqueSources } from '../provenance/index.js';
import { toSI } from '../quantity/index.js';
import { entryOf, library } from './library.js';
import type { LibraryEntry } from './library-types.js';
import type { Fibre, Resin } from './types.js';

/** The numbers of a library entry in SI (fractions plain, temperatures in K), by name. */
export function entryValues(entry: LibraryEntry): Record<string, number> {
  return Object.fromEntries(Object.entries(entry.values).map(([name, { value, unit }]) => [name, toSI(value, unit)]));
}

/** The sources of the named values of an entry, each once; of all its values when no names are given. */
export function entrySources(entry: LibraryEntry, names: readonly string[] = Object.keys(entry.values)): SourceKey[] {
  return uniqueSources(names.flatMap((name) => entry.values[name]?.source ?? []));
}

/**
 * What a reader must know before relying on an entry: its own caution, and each of the named values (all when no names
 * are given) that is assumed because no source gives it.
 */
export function entryNotes(entry: LibraryEntry, names: readonly string[] = Object.keys(entry.values)): Note[] {
  const caution: Note[] = entry.note === undefined ? [] : [{ level: 'warning', text: `${entry.label}: ${entry.note}` }];
  const assumed = names.flatMap((name): Note[] => {
    const value = entry.values[name];
    if (value?.basis !== 'assumed') return [];
    const reason = value.note === undefined ? '' : ` (${value.note})`;
    const text = `${entry.label}: ${name} = ${value.value} ${value.unit}`.trimEnd();
    return [{ level: 'assumption', text: `${text} is assumed${reason}`, source: value.source }];
  });
  return [...caution, ...assumed];
}

/** Picks the named numbers of an entry that it gives, in SI, and where they come from. */
function pick<Name extends string>(
  entry: LibraryEntry,
  names: readonly Name[],
): { values: Partial<Record<Name, number>>; sources: SourceKey[] } {
  const given = names.flatMap((name) => {
    const found = entry.values[name];
    return found === undefined ? [] : [[name, toSI(found.value, found.unit)] as const];
  });
  return { values: Object.fromEntries(given) as Partial<Record<Name, number>>, sources: entrySources(entry, names) };
}

/** The fibre of that id in SI; undefined when the library has none, or not all of its elastic constants and density. */
export function libraryFibre(id: string): Fibre | undefined {
  const entry = entryOf(library.fibres, id);
  if (entry === undefined) return undefined;
  const { values, sources } = pick(entry, ['E1', 'E2', 'G12', 'nu12', 'density', 'nu23', 'alpha1', 'alpha2']);
  const { E1, E2, G12, nu12, density, ...optional } = values;
  if (E1 === undefined || E2 === undefined || G12 === undefined || nu12 === undefined || density === undefined)
    return undefined;
  return { name: id, E1, E2, G12, nu12, density, ...optional, sources };
}

/** The cured resin of that id in SI; undefined when the library has none, or not its modulus, Poisson ratio and density. */
export function libraryResin(id: string): Resin | undefined {
  const entry = entryOf(library.resins, id);
  if (entry === undefined) return undefined;
  const { values, sources } = pick(entry, ['E', 'nu', 'density', 'alpha', 'beta']);
  const { E, nu, density, ...optional } = values;
  if (E === undefined || nu === undefined || density === undefined) return undefined;
  return { name: id, E, nu, density, ...optional, sources };
}
