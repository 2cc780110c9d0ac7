import {
  corePly,
  entryOf,
  entrySources,
  entryValues,
  type LibraryEntry,
  library,
  type Ply,
  ply,
} from '../../material/index.js';
import { fail, type Path } from '../../problem/index.js';
import type { CoreEntry, PlyEntry } from '../schema/design.js';
import { defined, useOwn } from './constituents.js';
import { type Context, placed, unknownName } from './context.js';

/** The library entry that completes one of the file, when `from` names one. */
export function base<Entry extends LibraryEntry>(
  context: Context,
  what: 'ply' | 'fabric' | 'core',
  entries: Readonly<Record<string, Entry>>,
  from: string | undefined,
  path: Path,
): Entry | undefined {
  if (from === undefined) return undefined;
  const found = entryOf(entries, from);
  if (found !== undefined) return found;
  context.problems.push(unknownName(what, from, Object.keys(entries), [...path, 'from']));
  return undefined;
}

/** A value that must be given somewhere. */
export const needed = <Value>(value: Value | undefined, key: string, path: Path, what: string): Value =>
  value ??
  fail({
    code: 'missing-key',
    message: `missing \`${key}\` in \`${path.join('.')}\``,
    allowed: `${what}, here or by \`from\``,
    path,
    atKey: true,
  });

/** A ply given by its constants, completed from the library. */
export function resolvePly(context: Context, name: string, entry: PlyEntry): Ply | undefined {
  const path = ['materials', name];
  const from = base(context, 'ply', library.plies, entry.from, path);
  if (entry.from !== undefined && from === undefined) return undefined;
  const known = from === undefined ? {} : entryValues(from);
  useOwn(context, 'ply', name, entry, from);
  const constant = (key: 'E1' | 'E2' | 'G12' | 'nu12'): number =>
    needed(entry[key] ?? known[key], key, path, 'a constant of the ply');
  const group = <Key extends string>(keys: readonly Key[]): Record<Key, number> | undefined =>
    keys.every((key) => known[key] !== undefined)
      ? (Object.fromEntries(keys.map((key) => [key, known[key]])) as Record<Key, number>)
      : undefined;
  return placed(
    path,
    () =>
      ply(
        defined({
          name,
          E1: constant('E1'),
          E2: constant('E2'),
          G12: constant('G12'),
          nu12: constant('nu12'),
          G13: entry.G13,
          G23: entry.G23,
          nu23: entry.nu23 ?? (entry.G23 === undefined ? known.nu23 : undefined),
          thickness: entry.thickness,
          density: entry.density ?? known.density,
          fibreVolumeFraction: entry.fibreVolumeFraction ?? known.Vf,
          strengths: entry.strengths ?? group(['Xt', 'Xc', 'Yt', 'Yc', 'S']),
          expansion: entry.expansion ?? group(['alpha1', 'alpha2']),
          moistureExpansion: entry.moistureExpansion ?? group(['beta1', 'beta2']),
          sources: from === undefined ? [] : entrySources(from),
        }),
      ),
    entry,
  );
}

/** A core, completed from the library. */
export function resolveCore(context: Context, name: string, entry: CoreEntry): Ply | undefined {
  const path = ['materials', name];
  const from = base(context, 'core', library.cores, entry.from, path);
  if (entry.from !== undefined && from === undefined) return undefined;
  const known = from === undefined ? {} : entryValues(from);
  useOwn(context, 'core', name, entry, from);
  const E = entry.E ?? known.E;
  const nu = entry.nu ?? known.nu;
  const isotropic = E === undefined || nu === undefined ? undefined : E / (2 * (1 + nu));
  return placed(
    path,
    () =>
      corePly(
        defined({
          name,
          thickness: entry.thickness,
          E: needed(E, 'E', path, 'the modulus'),
          G: needed(entry.G ?? known.G ?? isotropic, 'G', path, 'the shear modulus, or nu'),
          nu,
          E3: entry.E3,
          shearStrength: entry.S ?? known.S,
          density: needed(entry.density ?? known.density, 'density', path, 'the density'),
          expansion: entry.alpha === undefined ? undefined : { alpha1: entry.alpha, alpha2: entry.alpha },
          sources: from === undefined ? [] : entrySources(from),
        }),
      ),
    entry,
  );
}
