import { fibreAngle } from '../numeric/index.js';

/** A ply as the printer takes it: degrees, and a material where the stack has several. */
export interface PrintItem {
  readonly angle: number;
  readonly material?: string;
}

/** Bodies above this length are shortened by runs and ± only: looking for the best groups grows with the cube of it. */
const searched = 48;

/**
 * The shortest orientation code of a stack, from the tool side on.
 *
 * Angles are brought to (-90, 90]; a mirrored stack becomes `[...]s` (with `~` for a mid-ply), repeats of the whole a number
 * behind the bracket, neighbours `0_2`, `±45` or a group `(0/90)2`. Materials are written only when there are several; a
 * name that a suffix cannot hold is written with hyphens. {@link parseOrientationCode} reads the same plies back.
 *
 * @param items one or more plies; angles in degrees
 * @returns the code; `[]` for no plies
 * @source ASTM D6507 (recalled, not re-read)
 */
export function printOrientationCode(items: readonly PrintItem[]): string {
  const plies = withSuffixes(items);
  if (plies.length === 0) return '[]';
  const candidates = [...wrappings(plies).map(({ inner, suffix }) => `[${inner()}]${suffix}`), `[${body(plies)}]`];
  return shortest(candidates);
}

interface PrintedPly {
  readonly angle: number;
  readonly suffix: string;
  readonly text: string;
}

function withSuffixes(items: readonly PrintItem[]): PrintedPly[] {
  const several = new Set(items.map((item) => item.material)).size > 1;
  const names = several ? suffixNames(items) : new Map<string, string>();
  return items.map(({ angle: given, material }) => {
    const angle = fibreAngle(given);
    const suffix = material === undefined ? '' : (names.get(material) ?? '');
    return { angle, suffix, text: decimal(angle) + suffix };
  });
}

/** What stands for each material: its name with hyphens for what a suffix cannot hold, numbered where two became the same. */
function suffixNames(items: readonly PrintItem[]): Map<string, string> {
  const names = new Map<string, string>();
  const used = new Set<string>();
  for (const { material } of items) {
    if (material === undefined || names.has(material)) continue;
    const plain = material.replace(/_(?![A-Za-z])|[^A-Za-z0-9_-]/g, '-').replace(/^(?![A-Za-z])/, 'm');
    let name = plain;
    for (let k = 2; used.has(name); k++) name = `${plain}-${k}`;
    used.add(name);
    names.set(material, name);
  }
  return names;
}

/** A number without exponent. */
function decimal(value: number): string {
  const text = String(value);
  return text.includes('e')
    ? value
        .toFixed(20)
        .replace(/\.?0+$/, '')
        .replace(/^-0$/, '0')
    : text;
}

/** Ways to write plies as something in brackets with a repeat or `s` behind them; in order of preference. */
function wrappings(plies: readonly PrintedPly[], inside = body): { inner: () => string; suffix: string }[] {
  const n = plies.length;
  const found: { inner: () => string; suffix: string }[] = [];
  const period = smallestPeriod(plies);
  const repeated = { inner: () => inside(plies.slice(0, period)), suffix: String(n / period) };
  if (period === 1 && n > 1) return [repeated];
  if (n > 2 && isMirrored(plies)) {
    const half = plies.slice(0, Math.floor(n / 2));
    if (n % 2 === 0) {
      const sub = smallestPeriod(half);
      found.push({
        inner: () => inside(half.slice(0, sub)),
        suffix: sub < half.length ? `${half.length / sub}s` : 's',
      });
    } else {
      found.push({ inner: () => `${inside(half)}/${plies[half.length]?.text ?? ''}~`, suffix: 's' });
    }
  }
  if (period < n) found.push(repeated);
  return found;
}

/** The shortest text between brackets for a list of plies. */
function body(plies: readonly PrintedPly[]): string {
  if (plies.length > searched) return withRuns(plies);
  const known = new Map<string, string>();
  const best = (part: readonly PrintedPly[], from: number): string => {
    const key = `${from} ${part.length}`;
    const before = known.get(key);
    if (before !== undefined) return before;
    let text = part.length > 1 ? (unit(part) ?? '') : (part[0]?.text ?? '');
    if (text === '') {
      const splits = Array.from({ length: part.length - 1 }, (_, i) => {
        const k = part.length - 1 - i;
        return `${best(part.slice(0, k), from)}/${best(part.slice(k), from + k)}`;
      });
      text = shortest([...groups(part, (inner) => best(inner, from)), ...splits]);
    }
    known.set(key, text);
    return text;
  };
  return best(plies, 0);
}

function groups(part: readonly PrintedPly[], inside: (inner: readonly PrintedPly[]) => string): string[] {
  return wrappings(part, inside).map(({ inner, suffix }) => `(${inner()})${suffix}`);
}

/** A run of equal plies or a pair of opposite ones; undefined for anything else. */
function unit(plies: readonly PrintedPly[]): string | undefined {
  const [first, second] = plies;
  if (first === undefined || second === undefined) return undefined;
  if (plies.every((ply) => ply.text === first.text)) return `${first.text}_${plies.length}`;
  const opposite = plies.length === 2 && first.angle === -second.angle && first.suffix === second.suffix;
  if (!opposite) return undefined;
  return first.angle > 0 ? `±${first.text}` : `∓${second.text}`;
}

/** Plies in order, with equal neighbours and opposite pairs drawn together from the front. */
function withRuns(plies: readonly PrintedPly[]): string {
  const parts: string[] = [];
  for (let k = 0; k < plies.length; ) {
    let end = k + 1;
    while (plies[end]?.text === plies[k]?.text && end < plies.length) end++;
    if (end === k + 1 && plies[k + 2]?.text !== plies[k + 1]?.text && unit(plies.slice(k, k + 2))) end = k + 2;
    const part = plies.slice(k, end);
    parts.push(unit(part) ?? plies[k]?.text ?? '');
    k = end;
  }
  return parts.join('/');
}

function isMirrored(plies: readonly PrintedPly[]): boolean {
  return plies.every((ply, k) => ply.text === plies[plies.length - 1 - k]?.text);
}

function smallestPeriod(plies: readonly PrintedPly[]): number {
  for (let p = 1; p <= plies.length / 2; p++) {
    if (plies.length % p === 0 && plies.every((ply, k) => k < p || ply.text === plies[k - p]?.text)) return p;
  }
  return plies.length;
}

/** The shortest of some texts; of equals the one with fewest parts, then the first. */
function shortest(texts: readonly string[]): string {
  const least = Math.min(...texts.map((text) => text.length));
  const parts = (text: string): number => text.split('/').length;
  return texts
    .filter((text) => text.length === least)
    .reduce((best, text) => (parts(text) < parts(best) ? text : best));
}
