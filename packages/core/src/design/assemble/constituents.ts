import {
  entryNotes,
  entrySources,
  type Fibre,
  fibreFaults,
  type LibraryEntry,
  library,
  libraryFibre,
  libraryResin,
  type Resin,
} from '../../material/index.js';
import { type Path, SelvageError } from '../../problem/index.js';
import type { Provenance } from '../model.js';
import type { MaterialEntry } from '../schema/design.js';
import { attempt, type Context, own, unknownName, use } from './context.js';

type Kind = Provenance['kind'];

/** Values of a library entry that a design takes over, by kind; only of these the cautions are passed on. */
const taken: Readonly<Record<Kind, readonly string[]>> = {
  fibre: ['E1', 'E2', 'G12', 'nu12', 'nu23', 'density', 'alpha1', 'alpha2'],
  resin: ['E', 'nu', 'density', 'alpha', 'beta'],
  ply: [
    'E1',
    'E2',
    'G12',
    'nu12',
    'nu23',
    'density',
    'Vf',
    'Xt',
    'Xc',
    'Yt',
    'Yc',
    'S',
    'alpha1',
    'alpha2',
    'beta1',
    'beta2',
  ],
  fabric: ['arealMass'],
  core: ['E', 'G', 'nu', 'S', 'density'],
  thread: ['linearDensity', 'density', 'tenacity', 'modulus'],
};

/** Remembers a library entry as used. */
export function useLibrary(context: Context, kind: Kind, name: string, entry: LibraryEntry): void {
  use(context, {
    name,
    kind,
    label: entry.label,
    library: name,
    sources: entrySources(entry, taken[kind]),
    overridden: [],
    notes: entryNotes(entry, taken[kind]),
  });
}

interface OwnEntry {
  readonly label?: string | undefined;
  readonly source?: string | undefined;
  readonly basis?: Provenance['basis'] | undefined;
  readonly note?: string | undefined;
  readonly from?: string | undefined;
}

/** Remembers an entry of the design file as used, with the library entry that completed it. */
export function useOwn(context: Context, kind: Kind, name: string, entry: OwnEntry, base?: LibraryEntry): void {
  const { label, source, basis, note, from } = entry;
  const own = (key: string): boolean => (entry as Readonly<Record<string, unknown>>)[key] !== undefined;
  const fromLibrary = taken[kind].filter((key) => !own(key));
  use(context, {
    name,
    kind,
    overridden: base === undefined ? [] : ['thickness', ...taken[kind]].filter(own),
    sources: base === undefined ? [] : entrySources(base, fromLibrary),
    notes: base === undefined ? [] : entryNotes(base, fromLibrary),
    ...(label === undefined ? {} : { label }),
    ...(source === undefined ? {} : { source }),
    ...(basis === undefined ? {} : { basis }),
    ...(note === undefined ? {} : { note }),
    ...(from === undefined ? {} : { library: from }),
  });
}

/** Names of the design's own materials of one kind. */
export function ownNames(context: Context, kind: MaterialEntry['kind']): string[] {
  return Object.entries(context.design.materials ?? {})
    .filter(([, entry]) => entry.kind === kind)
    .map(([name]) => name);
}

/** @throws SelvageError `not-admissible` */
function demandFibre(fibre: Fibre): Fibre {
  const faults = fibreFaults(fibre);
  if (faults.length > 0) throw new SelvageError(faults);
  return fibre;
}

/** The fibre of that name, from the file or else the library. */
export function findFibre(context: Context, name: string, path: Path): Fibre | undefined {
  const entry = own(context.design.materials, name);
  if (entry?.kind === 'fibre') {
    useOwn(context, 'fibre', name, entry);
    const { kind: _, label: __, source: ___, basis: ____, note: _____, ...values } = entry;
    const fibre = defined({ name, ...values, sources: [] });
    return attempt(context, ['materials', name], () => demandFibre(fibre), entry);
  }
  const found = Object.hasOwn(library.fibres, name) ? libraryFibre(name) : undefined;
  if (found === undefined) {
    context.problems.push(
      unknownName('fibre', name, [...ownNames(context, 'fibre'), ...Object.keys(library.fibres)], path),
    );
    return undefined;
  }
  useLibrary(context, 'fibre', name, library.fibres[name] as LibraryEntry);
  return found;
}

/** The resin of that name, from the file or else the library. */
export function findResin(context: Context, name: string, path: Path): Resin | undefined {
  const entry = own(context.design.materials, name);
  if (entry?.kind === 'resin') {
    useOwn(context, 'resin', name, entry);
    const { kind: _, label: __, source: ___, basis: ____, note: _____, ...values } = entry;
    return defined({ name, ...values, sources: [] });
  }
  const found = Object.hasOwn(library.resins, name) ? libraryResin(name) : undefined;
  if (found === undefined) {
    context.problems.push(
      unknownName('resin', name, [...ownNames(context, 'resin'), ...Object.keys(library.resins)], path),
    );
    return undefined;
  }
  useLibrary(context, 'resin', name, library.resins[name] as LibraryEntry);
  return found;
}

/** A copy without keys whose value is undefined, for types in which an optional key is absent rather than undefined. */
export function defined<Value extends object>(value: Value): { [Key in keyof Value]: Exclude<Value[Key], undefined> } {
  return Object.fromEntries(Object.entries(value).filter(([, part]) => part !== undefined)) as {
    [Key in keyof Value]: Exclude<Value[Key], undefined>;
  };
}
