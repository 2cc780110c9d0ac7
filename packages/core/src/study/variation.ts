import type { InputValue } from '../design/index.js';
import { fail } from '../problem/index.js';
import { type Amount, amountOf, written } from './amount.js';

/** An input and the values that it takes in turn, as they would be written in the design file. */
export interface Variation {
  readonly path: string;
  readonly values: readonly InputValue[];
}

const most = 1001;
const form = 'PATH=FROM..TO:COUNT or PATH=VALUE,VALUE,...';

const bad = (text: string, message: string, allowed: string): never =>
  fail({ code: 'wrong-type', message: `\`${text}\`: ${message}`, allowed });

function endOf(text: string, whole: string): Amount {
  return amountOf(text) ?? bad(whole, `\`${text.trim()}\` is not a number with its unit`, 'for example 2 mm..8 mm:13');
}

function range(path: string, text: string, whole: string): Variation {
  const [, fromText = '', toText = '', countText = ''] = /^(.+)\.\.(.+):(\d+)$/.exec(text) ?? [];
  if (countText === '') bad(whole, 'a range needs its ends and a count', form);
  const count = Number(countText);
  if (!(count >= 2 && count <= most)) bad(whole, `${countText} values`, `2 to ${most}`);
  const to = endOf(toText, whole);
  const given = endOf(fromText, whole);
  const from = given.unit === '' ? { ...given, unit: to.unit } : given;
  if (from.unit !== to.unit) bad(whole, `ends in two units, ${from.unit} and ${to.unit || 'none'}`, 'one unit');
  const size = Math.max(Math.abs(from.number), Math.abs(to.number));
  const at = (i: number): number => {
    const number = from.number + ((to.number - from.number) * i) / (count - 1);
    return Math.abs(number) < 1e-12 * size ? 0 : number;
  };
  return { path, values: Array.from({ length: count }, (_, i) => written({ number: at(i), unit: to.unit })) };
}

/**
 * A variation as it is typed: `stitching.edge.pitch=2mm..8mm:13` (13 values, ends among them) or `stitching.edge.pattern=parallel,staggered`.
 * @throws SelvageError `wrong-type` another form, ends in two units, fewer than 2 or more than 1001 values
 */
export function parseVariation(text: string): Variation {
  const cut = text.indexOf('=');
  const [path, values] = [text.slice(0, cut).trim(), text.slice(cut + 1).trim()];
  if (cut < 1 || values === '') bad(text, 'an input and its values are needed', form);
  if (/\.\.[^,]+$/.test(values)) return range(path, values, text);
  const list = values.split(',').map((one) => one.trim());
  if (list.includes('')) bad(text, 'a value is empty', form);
  if (list.length > most) bad(text, `${list.length} values`, `1 to ${most}`);
  return { path, values: list.map((one) => (Number.isFinite(Number(one)) ? Number(one) : one)) };
}
