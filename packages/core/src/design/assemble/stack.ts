import { parseOrientationCode } from '../../laminate/index.js';
import { fail, type Path, type Problem } from '../../problem/index.js';
import type { StackEntry } from '../model.js';
import type { LaminateEntry } from '../schema/design.js';
import { placed } from './context.js';

/** A stack entry with the place in the file that its material name came from. */
export interface PlacedEntry extends StackEntry {
  readonly path: Path;
  readonly within?: Problem['within'];
}

function noMaterial(name: string, path: Path, within?: Problem['within']): never {
  return fail({
    code: 'missing-key',
    message: `a ply of laminate \`${name}\` names no material`,
    allowed: 'a suffix after the angle such as `0twill`, or `material` of the laminate for plies without one',
    path,
    ...(within === undefined ? {} : { within }),
  });
}

function fromCode(name: string, entry: LaminateEntry, code: string): PlacedEntry[] {
  const path = ['laminates', name, 'stack'];
  return placed(path, () => parseOrientationCode(code)).map((item) => {
    const within = { offset: item.offset, length: item.length };
    const letter = item.material;
    const material = letter === undefined ? entry.material : (entry.letters?.[letter] ?? letter);
    if (material === undefined) return noMaterial(name, path, within);
    const byLetter = letter !== undefined && entry.letters?.[letter] !== undefined;
    const place = byLetter
      ? { path: ['laminates', name, 'letters', letter] }
      : letter === undefined
        ? { path: ['laminates', name, 'material'] }
        : { path, within };
    return { material, angle: item.angle, mirrored: item.mirrored, ...place };
  });
}

function fromList(name: string, entry: LaminateEntry, list: Exclude<LaminateEntry['stack'], string>): PlacedEntry[] {
  const half = list.flatMap((item, i): PlacedEntry[] => {
    const path = ['laminates', name, 'stack', i];
    const { angle, material = entry.material, count = 1 } = typeof item === 'number' ? { angle: item } : item;
    if (material === undefined) return noMaterial(name, path);
    if (!Number.isInteger(count))
      fail({ code: 'out-of-range', message: `count = ${count} is not a whole number`, path: [...path, 'count'] });
    const ownMaterial = typeof item !== 'number' && item.material !== undefined;
    const place = ownMaterial ? [...path, 'material'] : ['laminates', name, 'material'];
    return Array.from({ length: count }, () => ({ material, angle, mirrored: false, path: place }));
  });
  return entry.symmetric === true ? [...half, ...half.toReversed().map((item) => ({ ...item, mirrored: true }))] : half;
}

/**
 * The stack of a laminate as a list from the tool side, from its orientation code or its list.
 * @throws orientation-code a code that cannot be read, with the place inside it; missing-key a ply without material;
 * contradiction `symmetric` beside a code (the code says it with `s`)
 */
export function stackOf(name: string, entry: LaminateEntry): PlacedEntry[] {
  if (typeof entry.stack !== 'string') return fromList(name, entry, entry.stack);
  if (entry.symmetric !== undefined) {
    fail({
      code: 'contradiction',
      message: '`symmetric` is for a listed stack',
      allowed: 'an orientation code says it itself, with `s` behind the bracket',
      path: ['laminates', name, 'symmetric'],
      atKey: true,
    });
  }
  return fromCode(name, entry, entry.stack);
}
