import { nearestHint, type Problem } from '../problem/index.js';
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
const holderOf = ({ part }: Quantity): string => part.slice(0, 2).join('.');

/**
 * The quantity of a name: its key, or the end of its key where only one entry of the design has such a number. `A11` is that of the only
 * laminate, `Q11` that of every ply when all have the same.
 */
export function findQuantity(name: string, quantities: ReadonlyMap<string, Quantity>): Found {
  const whole = quantities.get(inWorking(name));
  if (whole !== undefined) return { quantity: whole };
  const ending = [...quantities.values()].filter(({ key }) => key.endsWith(`.${name}`));
  const computed = ending.filter((one) => one.computed);
  const nearest = computed.length > 0 ? computed : ending;
  // What stands nearest to the top is the thing itself; deeper ones are parts of it, such as the residual stress of a load.
  const depth = Math.min(...nearest.map(({ part }) => part.length));
  const meant = nearest.filter(({ part }) => part.length === depth);
  const [first] = meant;
  if (first === undefined) return { problem: unknown(name, quantities) };
  if (meant.every((one) => holderOf(one) === holderOf(first) && one.value === first.value)) return { quantity: first };
  return {
    problem: {
      code: 'unknown-name',
      message: `\`${name}\` can be ${meant.length} quantities of this design`,
      allowed: `the whole name: ${listed(meant.map(({ key }) => key))}`,
    },
  };
}

function unknown(name: string, quantities: ReadonlyMap<string, Quantity>): Problem {
  const keys = [...quantities.keys()];
  const parts = name.split('.');
  const endings = new Set(keys.map((key) => key.split('.').slice(-parts.length).join('.')));
  return {
    code: 'unknown-name',
    message: `the working of this design has no \`${name}\``,
    allowed: nextNames(parts, keys),
    ...nearestHint(name, [...keys, ...endings]),
  };
}

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
