import { fail } from '../problem/index.js';
import type { Cursor } from './orientation-code-cursor.js';

/** Most plies that a code may stand for. */
const mostPlies = 2000;

/** Refuses more plies than a code may stand for; `from` is where the text that asks for them starts. */
export function limit(cursor: Cursor, plies: number, from: number): void {
  if (plies <= mostPlies) return;
  fail({
    code: 'too-large',
    message: `the orientation code stands for ${plies} plies or more, the limit is ${mostPlies}`,
    allowed: `up to ${mostPlies} plies`,
    within: { offset: from, length: Math.max(1, cursor.at - from) },
  });
}

/** A half ply that is not where a half ply can be. */
export function halfFault(
  cursor: Cursor,
  { offset, length }: { readonly offset: number; readonly length: number },
  repeated: boolean,
): never {
  const text = cursor.code.slice(offset, offset + length);
  return fault(
    offset,
    length,
    `${text} must be the last ply of a symmetric code`,
    'a half ply at the end of [...]s',
    repeated ? 'write a repeated code out up to the mid-plane, then `s`' : 'put `s` behind the bracket, or remove `~`',
  );
}

/** No angle where a ply should stand. */
export function plyFault(cursor: Cursor, start: number): never {
  const { code, at } = cursor;
  const found = code[at];
  if (found === undefined)
    return fault(Math.max(0, at - 1), 1, 'the orientation code ends where a ply should stand', 'an angle');
  if (found === '/' || found === ']' || found === ')') {
    return fault(at, 1, `a ply is missing before \`${found}\``, 'an angle in degrees');
  }
  if (found === '[')
    return fault(at, 1, 'a second `[` stands inside the code', '`(` for a group', 'write groups as (0/90)2');
  const length = Math.max(1, at + 1 - start);
  return fault(
    at + 1 - length,
    length,
    `\`${code.slice(at + 1 - length, at + 1)}\` is not an angle`,
    'an angle in degrees such as 45, -45 or ±45',
  );
}

/** Neither `/` nor the closing bracket after a ply. */
export function separatorFault(cursor: Cursor, closing: ']' | ')', open: number): never {
  const { code, at } = cursor;
  const found = code[at];
  if (found === undefined)
    return fault(open, 1, `\`${code[open]}\` is not closed`, `\`${closing}\``, `add \`${closing}\``);
  if (found === ',' || found === ';') {
    const allowed = '`/` between plies, a point in a decimal number';
    return fault(
      at,
      1,
      `\`${found}\` stands between two plies`,
      allowed,
      'write `/`, or a point where a decimal number is meant',
    );
  }
  if (found === ']') return fault(open, 1, '`(` is not closed before `]`', '`)`', 'add `)`');
  if (found === ')') return fault(at, 1, '`)` closes a group that was not opened', `\`/\` or \`${closing}\``);
  return fault(at, 1, `\`${found}\` is not understood here`, `\`/\` or \`${closing}\``);
}

/** Text behind the end of the code. */
export function afterSuffix(cursor: Cursor): never {
  const { code, at } = cursor;
  const rest = code.slice(at).trimEnd();
  const hint = /^\d/.test(rest) ? 'a repeat stands before `s`, as in ]2s' : undefined;
  return fault(at, rest.length, `\`${rest}\` is not understood behind the code`, 'a repeat, `s` or `T`', hint);
}

/** Stops with what is wrong at a place of the code. */
export function fault(offset: number, length: number, message: string, allowed?: string, hint?: string): never {
  return fail({
    code: 'orientation-code',
    message,
    ...(allowed === undefined ? {} : { allowed }),
    ...(hint === undefined ? {} : { hint }),
    within: { offset, length },
  });
}
