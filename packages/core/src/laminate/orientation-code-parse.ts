import { fail } from '../problem/index.js';
import { type Cursor, skip, take } from './orientation-code-cursor.js';
import { afterSuffix, fault, halfFault, limit, plyFault, separatorFault } from './orientation-code-faults.js';

/** One ply of an orientation code, from the tool side on. */
export interface StackItem {
  /** degrees, as written */
  readonly angle: number;
  /** The suffix after the angle; absent where none is written. */
  readonly material?: string;
  /** Whether an `s` made it as the mirror image of another. */
  readonly mirrored: boolean;
  /** Where the ply stands in the code, characters from its start. */
  readonly offset: number;
  readonly length: number;
}

interface Piece extends StackItem {
  readonly half: boolean;
}

const mostCharacters = 10_000;
const deepest = 20;

const pair = /±|∓|\+\/?[-−–]|[-−–]\/?\+/y;
const sign = /[+\-−–]/y;
const number = /\d+(?:\.\d+)?|\.\d+/y;
const degreeSign = /°/y;
const suffixName = /_?[A-Za-z][A-Za-z0-9-]*(?:_[A-Za-z][A-Za-z0-9-]*)*/y;
const repeat = /_\s*(\d+)/y;
const bar = /~/y;
const wholeSuffix = /(?:_?\s*(\d+))?\s*(?:_?\s*([sSTt]))?/y;
const groupSuffix = /(?:_?\s*(\d+))?\s*(?:_?\s*([sS]))?/y;

/**
 * The plies that an orientation code stands for, from the tool side on.
 *
 * `[0/±45/90]s`, `[0/±45]2s`, `[(0/90)2/45]`, `[0_2/90]`; `~` after the last ply of a symmetric code is the bar of a half ply
 * (`[0/90~]s` is 0, 90, 0); `∓45` is -45 first; `+-` and `-+` may be spelled; a material is a suffix after the angle
 * (`[0g/45c_2]s`: letters, digits, hyphens); `]T` says that the code is whole. A repeat applies before `s`: `2s` is (two
 * times) mirrored. A repeat after ± is refused, since it is read in two ways.
 *
 * @param code up to 10 000 characters, up to 2000 plies, angles from -180 to 180 degrees
 * @returns one item per ply, with its place in the code
 * @throws orientation-code with the place of the fault in `within`; too-large above 2000 plies
 * @source ASTM D6507 (recalled, not re-read); the plain spelling of subscripts and bars is ours
 */
export function parseOrientationCode(code: string): StackItem[] {
  if (code.length > mostCharacters) {
    fail({
      code: 'too-large',
      message: `the orientation code has ${code.length} characters, the limit is ${mostCharacters}`,
      within: { offset: 0, length: code.length },
    });
  }
  const cursor: Cursor = { code, at: 0 };
  skip(cursor);
  const open = cursor.at;
  if (code[open] !== '[') {
    const at = Math.min(open, Math.max(0, code.length - 1));
    fault(at, 1, 'an orientation code starts with `[`', '`[`', `write [${code.trim() || '0/90'}]`);
  }
  const inside = sequence(cursor, ']', 0);
  const plies = finish(cursor, inside, wholeSuffix, open);
  skip(cursor);
  if (cursor.at < code.length) afterSuffix(cursor);
  return plies.map(({ half: _, ...item }) => item);
}

/** The plies between an opening bracket, at the cursor, and its closing one. */
function sequence(cursor: Cursor, closing: ']' | ')', depth: number): Piece[] {
  const open = cursor.at++;
  if (depth > deepest) fault(open, 1, `groups are nested ${depth} deep, the limit is ${deepest}`);
  const plies: Piece[] = [];
  while (true) {
    skip(cursor);
    plies.push(...(cursor.code[cursor.at] === '(' ? group(cursor, depth) : ply(cursor)));
    limit(cursor, plies.length, open);
    skip(cursor);
    const next = cursor.code[cursor.at];
    if (next === '/') {
      cursor.at++;
    } else if (next === closing) {
      cursor.at++;
      return plies;
    } else {
      separatorFault(cursor, closing, open);
    }
  }
}

function group(cursor: Cursor, depth: number): Piece[] {
  const open = cursor.at;
  return finish(cursor, sequence(cursor, ')', depth + 1), groupSuffix, open);
}

/** One ply, or the two of ±, with material and repeat. */
function ply(cursor: Cursor): Piece[] {
  const offset = cursor.at;
  const both = take(cursor, pair)?.[0];
  const lone = both === undefined ? take(cursor, sign)?.[0] : undefined;
  skip(cursor);
  const digits = take(cursor, number)?.[0];
  if (digits === undefined) return plyFault(cursor, offset);
  take(cursor, degreeSign);
  const size = Number(digits);
  if (size > 180) {
    fault(offset, cursor.at - offset, `the angle ${digits} is out of range`, '-180 to 180 degrees');
  }
  const end = cursor.at;
  skip(cursor);
  const material = take(cursor, suffixName)?.[0].replace(/^_/, '');
  if (material === undefined) cursor.at = end;
  const count = plyRepeat(cursor, offset, both === undefined ? undefined : digits + (material ?? ''));
  const half = take(cursor, bar) !== undefined;
  const length = cursor.at - offset;
  if (half && (both !== undefined || count > 1)) {
    fault(offset, length, 'a half ply `~` must be a single ply', undefined, 'write the last ply by itself, then `~`');
  }
  const make = (angle: number): Piece => ({
    // Adding 0 turns -0 into 0.
    angle: angle + 0,
    ...(material === undefined ? {} : { material }),
    mirrored: false,
    offset,
    length,
    half,
  });
  if (both !== undefined) {
    const plusFirst = both === '±' || both.startsWith('+');
    return plusFirst ? [make(size), make(-size)] : [make(-size), make(size)];
  }
  return Array.from({ length: count }, () => make(lone === undefined || lone === '+' ? size : -size));
}

function plyRepeat(cursor: Cursor, offset: number, ofPair: string | undefined): number {
  const start = cursor.at;
  const found = take(cursor, repeat);
  if (!found) return 1;
  if (ofPair !== undefined) {
    const k = found[1];
    fault(
      offset,
      cursor.at - offset,
      `a repeat after ± can be read in two ways`,
      'a repeat after a single angle or after `)`',
      `write (±${ofPair})${k} or ${ofPair}_${k}/-${ofPair}_${k}`,
    );
  }
  return counted(cursor, found[1] ?? '', start);
}

/** A repeat count as a number; `start` is where it is written. */
function counted(cursor: Cursor, digits: string, start: number): number {
  const count = Number(digits);
  if (count === 0) fault(start, cursor.at - start, 'a repeat of 0 leaves no ply', 'a repeat of 1 or more');
  limit(cursor, count, start);
  return count;
}

/** Applies the repeat and the `s` behind a closing bracket. */
function finish(cursor: Cursor, plies: readonly Piece[], suffix: RegExp, open: number): Piece[] {
  const end = cursor.at;
  skip(cursor);
  const start = cursor.at;
  const found = take(cursor, suffix);
  if (found?.[0] === '') cursor.at = end;
  const count = found?.[1] === undefined ? 1 : counted(cursor, found[1], start);
  const symmetric = found?.[2]?.toLowerCase() === 's';

  const half = plies.find((piece, k) => piece.half && !(symmetric && count === 1 && k === plies.length - 1));
  if (half) halfFault(cursor, half, symmetric && count > 1);
  limit(cursor, plies.length * count * (symmetric ? 2 : 1), open);
  const repeated = Array.from({ length: count }, () => plies).flat();
  if (!symmetric) return repeated;
  const last = repeated[repeated.length - 1];
  const image = (last?.half ? repeated.slice(0, -1) : repeated).toReversed();
  return [...repeated, ...image.map((piece) => ({ ...piece, mirrored: true }))].map((piece) => ({
    ...piece,
    half: false,
  }));
}
