import { symbolText } from '../expression/index.js';
import { nearest, type Problem } from '../problem/index.js';
import { holderOf } from '../working/index.js';
import type { Quantity } from './quantities.js';

/** The quantity that a name means, or what is wrong with the name. */
type Found = { readonly quantity: Quantity } | { readonly problem: Problem };

const mostListed = 12;

const listed = (names: readonly string[]): string =>
  `${names.slice(0, mostListed).join(', ')}${names.length > mostListed ? ` and ${names.length - mostListed} more` : ''}`;

/** The name in the working of a constant that is given by its path in the JSON report. */
const inWorking = (name: string): string =>
  name.replace(/\.inPlane\.(\w+)$/, '.$1').replace(/\.flexural\.(\w+)$/, '.$1b');

/** The laminate, load or other entry that a quantity belongs to. */

/** A symbol as it is compared with what a student writes: raised and lowered digits as plain ones, one kind of bar, no joints. */
const plain = (symbol: string): string =>
  symbol
    .normalize('NFKD')
    .replaceAll('\u0305', '\u0304')
    .replace(/[_,{}^ ]/g, '');

/**
 * The quantity of a name: its key, or the end of its key where only one entry of the design has such a number. `A11` is that of the only
 * laminate, `Q11` that of every ply when all have the same. The symbol may be as it is printed, `κx`; parts between may be left out too.
 * @param inReport the number of the report that has the name for its path, which goes before a key that only has its parts
 */
export function findQuantity(
  name: string,
  quantities: ReadonlyMap<string, Quantity>,
  inReport: (path: string) => Quantity | undefined,
): Found {
  const all = [...quantities.values()];
  const typed = typedNames(name, all);
  const found = (candidates: (name: string) => readonly Quantity[]): Found | undefined =>
    choose(name, candidates(name)) ?? choose(name, typed.flatMap(candidates));

  const ending = found((end) => {
    const whole = quantities.get(inWorking(end));
    return whole === undefined ? outermost(all.filter(({ key }) => key.endsWith(`.${end}`))) : [whole];
  });
  if (ending !== undefined && 'quantity' in ending) return ending;
  const reported = inReport(name);
  if (reported !== undefined) return { quantity: reported };
  const leaving = (): Found | undefined =>
    found((short) => outermost(all.filter((one) => leavesOut(short.split('.'), one))));
  return ending ?? leaving() ?? { problem: unknown(name, typed, quantities) };
}

/** The name with its symbol as it is typed, for each symbol that is printed as it stands in the name. */
function typedNames(name: string, quantities: readonly Quantity[]): readonly string[] {
  const parts = name.split('.');
  const printed = plain(parts.pop() ?? '');
  const symbols = new Set(quantities.map(({ symbol }) => symbol));
  return [...symbols]
    .filter((symbol) => plain(symbolText(symbol)) === printed)
    .map((symbol) => [...parts, symbol].join('.'));
}

/** The one of the candidates that is meant, or that they are too many; undefined when there is none. */
function choose(name: string, candidates: readonly Quantity[]): Found | undefined {
  const found = computedFirst(candidates).toSorted((one, other) => one.part.length - other.part.length);
  const [first] = found;
  if (first === undefined) return undefined;
  const alike = found.every(({ value }) => value === first.value);
  const meant = alike ? found.filter(({ part }) => part.length === first.part.length) : found;
  if (alike && meant.every((one) => holderOf(one) === holderOf(first))) return { quantity: first };
  return {
    problem: {
      code: 'unknown-name',
      message: `\`${name}\` can be ${meant.length} quantities of this design`,
      allowed: `the whole name: ${listed(meant.map(({ key }) => key))}`,
    },
  };
}

/** Whether names stand in others in their order. */
function within(names: readonly string[], others: readonly string[]): boolean {
  let at = -1;
  return names.every((name) => {
    at = others.indexOf(name, at + 1);
    return at >= 0;
  });
}

/** Without what has all parts of another and more: that is a part of it, such as the residual stress of a load. */
function outermost(all: readonly Quantity[]): readonly Quantity[] {
  const kept: Quantity[] = [];
  for (const one of all.toSorted((a, b) => a.part.length - b.part.length)) {
    const isPart = kept.some(({ part }) => part.length < one.part.length && within(part, one.part));
    if (!isPart) kept.push(one);
  }
  return kept;
}

/** What is computed, and what is only used where it is another number. */
function computedFirst(all: readonly Quantity[]): Quantity[] {
  const computed = all.filter((one) => one.computed);
  return [...computed, ...all.filter((one) => !one.computed && !computed.some(({ value }) => value === one.value))];
}

/** Whether the key has the parts of a name in their order and ends with its symbol. */
const leavesOut = (names: readonly string[], { part, symbol }: Quantity): boolean =>
  names.length > 1 && names[names.length - 1] === symbol && within(names.slice(0, -1), part);

/** @param typed the name with its symbol as typed, where it was written as printed */
function unknown(name: string, typed: readonly string[], quantities: ReadonlyMap<string, Quantity>): Problem {
  const keys = [...quantities.keys()];
  const parts = name.split('.');
  const names = [...new Set([...keys, ...keys.map((key) => key.split('.').slice(-parts.length).join('.'))])];
  const greek = typed.length === 0 && /[^ -~]/.test(name);
  const alike = greek ? names.map(asPrinted) : names;
  const near = nearest(greek ? name : (typed[0] ?? name), alike);
  return {
    code: 'unknown-name',
    message: `the working of this design has no \`${name}\``,
    allowed: nextNames(parts, keys),
    ...(near === undefined ? {} : { hint: `did you mean \`${names[alike.indexOf(near)]}\`?` }),
  };
}

/** A name with its symbol as printed. */
const asPrinted = (name: string): string => name.replace(/[^.]+$/, symbolText);

/** What may stand where the name leaves the working. */
function nextNames(parts: readonly string[], keys: readonly string[]): string {
  const split = keys.map((key) => key.split('.'));
  const after = (length: number): string[] => [
    ...new Set(
      split.flatMap((key) => {
        const next = key[length];
        return next !== undefined && parts.slice(0, length).every((part, i) => key[i] === part) ? [next] : [];
      }),
    ),
  ];
  const known = parts.findIndex((_, i) => after(i + 1).length === 0);
  const length = known < 0 ? parts.length : known;
  return `${length === 0 ? 'a name begins with' : `after \`${parts.slice(0, length).join('.')}\``}: ${listed(after(length))}`;
}
