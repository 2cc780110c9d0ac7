import {
  entryOf,
  type Fibre,
  fibreFractionLimits,
  library,
  libraryFibre,
  libraryResin,
  type Ply,
  plyConsistency,
  type Resin,
} from '../../material/index.js';
import { fail, type Path } from '../../problem/index.js';
import type { Note } from '../../provenance/index.js';
import type { ListedPlyModel } from '../model.js';
import type { PlyEntry } from '../schema/design.js';
import { defined, findFibre, findResin } from './constituents.js';
import type { Context } from './context.js';

type Claimed = Omit<ListedPlyModel, 'kind' | 'name' | 'found'>;

const claimKeys = ['fibre', 'resin', 'architecture', 'warpShare'] as const;

const missing = (path: Path, key: string, allowed: string): never =>
  fail({ code: 'missing-key', message: `missing \`${key}\` in \`${path.join('.')}\``, allowed, path, atKey: true });

/** Keys of the comparison without which nothing is compared, or that the architecture has no use for. */
function demandUse(entry: PlyEntry, path: Path, compared: boolean, architecture: 'ud' | 'woven'): void {
  const idle = compared ? undefined : claimKeys.find((key) => entry[key] !== undefined);
  if (idle !== undefined) {
    fail({
      code: 'missing-key',
      message: `\`${idle}\` has no effect without \`fibre\` and \`resin\``,
      hint: 'give both too, or leave it out',
      path: [...path, idle],
      atKey: true,
    });
  }
  if (entry.warpShare !== undefined && architecture !== 'woven') {
    fail({
      code: 'contradiction',
      message: `\`warpShare\` is for a woven ply, this one is ${architecture}`,
      allowed: '`warpShare` only with `architecture: woven`',
      hint: 'leave it out, or is the architecture another?',
      path: [...path, 'warpShare'],
      atKey: true,
      also: [{ label: architecture, path: [...path, 'architecture'] }],
    });
  }
}

/** What the design file says the ply is made of, completed from the library's row; undefined when a name is unknown. */
function ownClaim(context: Context, entry: PlyEntry, path: Path, listed: Ply): Claimed | undefined {
  const row = entry.from === undefined ? undefined : entryOf(library.plies, entry.from);
  const named = (key: 'fibre' | 'resin'): string =>
    entry[key] ?? row?.[key] ?? missing(path, key, `\`${key}\` beside \`${key === 'fibre' ? 'resin' : 'fibre'}\``);
  const [fibreName, resinName] = [named('fibre'), named('resin')];
  const fibre = findFibre(context, fibreName, [...path, 'fibre']);
  const resin = findResin(context, resinName, [...path, 'resin']);
  const { fibreVolumeFraction } = listed;
  if (fibreVolumeFraction === undefined)
    return missing(path, 'fibreVolumeFraction', 'the fibre fraction at which the ply is listed, to compare it');
  if (fibre === undefined || resin === undefined) return undefined;
  const { architecture = row?.architecture ?? 'ud', warpShare } = entry;
  const claimed = { listed, fibre, resin, fibreVolumeFraction, architecture, warpShare, namedBy: 'design' as const };
  return defined(claimed) as Claimed;
}

/** What the library's row names itself, as long as the design changes neither its modulus nor its fibre fraction. */
function libraryClaim({ from, E1, fibreVolumeFraction }: PlyEntry, listed: Ply): Claimed | undefined {
  const row = from === undefined ? undefined : entryOf(library.plies, from);
  if (row?.fibre === undefined || row.resin === undefined || E1 !== undefined || fibreVolumeFraction !== undefined)
    return undefined;
  const { fibreVolumeFraction: fraction } = listed;
  const [fibre, resin] = [libraryFibre(row.fibre), libraryResin(row.resin)] as [Fibre, Resin];
  if (fraction === undefined) return undefined;
  const { architecture = 'ud' } = row;
  return { listed, fibre, resin, fibreVolumeFraction: fraction, architecture, namedBy: 'library' };
}

/** Adds to what the report says of a ply; a computed doubt stands in place of the caution that the library's row carries. */
function remark(context: Context, name: string, notes: readonly Note[], instead: boolean): void {
  const key = `ply ${name}`;
  const known = context.used.get(key);
  if (known === undefined || notes.length === 0) return;
  const kept = instead ? known.notes.filter((note) => note.level !== 'warning') : known.notes;
  context.used.set(key, { ...known, notes: [...kept, ...notes] });
}

/** A caution of the library that says nothing but that its row fits its constituents. */
const saysThatItFits = /: (agrees|reproduces( to \d+ %)?)\.$/;

/** A ply that was found to fit its constituents needs no warning that it does. */
function withoutAlarm(context: Context, name: string): void {
  const key = `ply ${name}`;
  const known = context.used.get(key);
  if (known === undefined) return;
  const notes = known.notes.map((note) =>
    saysThatItFits.test(note.text) ? { ...note, level: 'assumption' as const } : note,
  );
  context.used.set(key, { ...known, notes });
}

/**
 * Compares a ply given by its constants with the fibre, resin and fibre fraction that the design file, or the row of the
 * library it comes from, names; nothing in the ply is changed. A doubt becomes a warning beside the material.
 * @returns the comparison; undefined when nothing is named, a name is unknown (noted), or the fraction is out of range (remarked)
 * @throws missing-key, contradiction for keys of the comparison that have no effect
 */
export function claimOf(context: Context, name: string, entry: PlyEntry, listed: Ply): ListedPlyModel | undefined {
  const path = ['materials', name];
  const own = entry.fibre !== undefined || entry.resin !== undefined;
  const claimed = own ? ownClaim(context, entry, path, listed) : libraryClaim(entry, listed);
  if (own && claimed === undefined) return undefined;
  demandUse(entry, path, own, claimed?.architecture ?? 'ud');
  if (claimed === undefined) return undefined;
  const { lowest, highest } = fibreFractionLimits;
  const { fibreVolumeFraction: fraction } = claimed;
  if (fraction < lowest || fraction > highest) {
    const text = `${name}: not compared with its constituents, fibre fraction ${Number((fraction * 100).toPrecision(4))} % is outside ${lowest * 100} to ${highest * 100} %`;
    remark(context, name, [{ level: 'warning', text }], false);
    return undefined;
  }
  const found = plyConsistency({ ...listed, name }, claimed);
  remark(context, name, found.notes, entry.from !== undefined);
  if (found.consistent) withoutAlarm(context, name);
  return { kind: 'ply', name, ...claimed, found };
}
