import {
  corePly,
  entryOf,
  entrySources,
  entryValues,
  type Fabric,
  type FabricLayer,
  type LibraryEntry,
  library,
  type Ply,
  ply,
} from '../../material/index.js';
import { fail, type Path } from '../../problem/index.js';
import type { CoreEntry, FabricEntry, PlyEntry } from '../schema/design.js';
import { defined, findFibre, findResin, useOwn } from './constituents.js';
import { type Context, placed, unknownName } from './context.js';

/** A fabric with its constituents resolved; its fibre fraction is decided by the process of each laminate. */
export type ResolvedFabric = Omit<Fabric, 'fibreVolumeFraction'> & { readonly fibreVolumeFraction?: number };

/** The library entry that completes one of the file, when `from` names one. */
function base<Entry extends LibraryEntry>(
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

const needed = <Value>(value: Value | undefined, key: string, path: Path, what: string): Value =>
  value ??
  fail({
    code: 'missing-key',
    message: `missing \`${key}\` in \`${path.join('.')}\``,
    allowed: `${what}, here or by \`from\``,
    path,
    atKey: true,
  });

/** Shares of the layers from their areal masses; a given total must agree with their sum. */
function layersOf(entry: FabricEntry, path: Path): { layers: FabricLayer[]; arealMass: number } | undefined {
  if (entry.layers === undefined) return undefined;
  const total = entry.layers.reduce((sum, layer) => sum + layer.arealMass, 0);
  if (entry.arealMass !== undefined && Math.abs(entry.arealMass - total) > 0.005 * total) {
    fail({
      code: 'contradiction',
      message: `arealMass = ${grams(entry.arealMass)}, but the layers sum to ${grams(total)}`,
      allowed: 'a total that equals the sum of the layers within 0.5 %, or none',
      path: [...path, 'arealMass'],
      also: [{ label: 'the layers', path: [...path, 'layers'] }],
    });
  }
  return {
    layers: entry.layers.map((layer) => ({ angle: layer.angle, share: layer.arealMass / total })),
    arealMass: total,
  };
}

const grams = (mass: number): string => `${Number((mass * 1e3).toPrecision(4))} g/m^2`;

/** A fabric of the file with fibre and resin found and the library's values filled in; undefined when a name is unknown. */
export function resolveFabric(context: Context, name: string, entry: FabricEntry): ResolvedFabric | undefined {
  const path = ['materials', name];
  const from = base(context, 'fabric', library.fabrics, entry.from, path);
  if (entry.from !== undefined && from === undefined) return undefined;
  const fibreName = needed(entry.fibre ?? from?.fibre, 'fibre', path, 'the name of a fibre');
  const fibre = findFibre(context, fibreName, entry.fibre === undefined ? path : [...path, 'fibre']);
  const resin = findResin(context, entry.resin, [...path, 'resin']);
  if (fibre === undefined || resin === undefined) return undefined;
  useOwn(context, 'fabric', name, entry, from);
  const given = layersOf(entry, path);
  const architecture = needed(
    entry.architecture ?? from?.architecture,
    'architecture',
    path,
    'ud, woven, multiaxial or mat',
  );
  const libraryMass = from === undefined ? undefined : entryValues(from).arealMass;
  return defined({
    name,
    fibre,
    resin,
    architecture,
    arealMass: needed(given?.arealMass ?? entry.arealMass ?? libraryMass, 'arealMass', path, 'the dry areal mass'),
    fibreVolumeFraction: entry.fibreVolumeFraction,
    voidFraction: entry.voidFraction,
    weave: entry.weave ?? (entry.architecture === undefined ? from?.weave : undefined),
    warpShare: entry.warpShare,
    crimpFactor: entry.crimpFactor,
    layers: given?.layers ?? (entry.architecture === undefined ? from?.layers : undefined),
    model: entry.transverseModel === undefined ? undefined : { E2: entry.transverseModel, G12: entry.transverseModel },
  }) as ResolvedFabric;
}

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
          density: needed(entry.density ?? known.density, 'density', path, 'the density'),
          expansion: entry.alpha === undefined ? undefined : { alpha1: entry.alpha, alpha2: entry.alpha },
          sources: from === undefined ? [] : entrySources(from),
        }),
      ),
    entry,
  );
}
