import { nearest, type Path, type Problem } from '../problem/index.js';
import { type KindName, kinds } from './kind.js';
import { leadingNumber } from './number.js';
import { knownUnits, normaliseUnit, parseUnit, type UnitValue } from './unit.js';

/** A number in SI (angles in degrees), or what is wrong with the text. */
export type ParsedQuantity =
  | { readonly ok: true; readonly value: number }
  | { readonly ok: false; readonly problem: Problem };

const longestQuantity = 100;

/** Kinds for which a bare number is complete: pure numbers, and angles in degrees. */
const bareNumberKinds: ReadonlySet<KindName> = new Set(['number', 'fraction', 'strain', 'angle']);

/** Units offered to somebody who wrote none or a wrong one. */
function acceptedUnits(kind: KindName): string[] {
  const { metric, us, si, alsoAccepted } = kinds[kind];
  return [...new Set([metric, us, ...alsoAccepted, si])].filter((unit) => unit !== '');
}

/** The dimension that a kind of quantity must have, for example `M1 L-2` of an areal mass. */
function dimensionOf(kind: KindName): string {
  const dimension = parseUnit(kinds[kind].si)?.dimension;
  if (dimension === undefined) throw new Error(`the SI unit of kind ${kind} is not a unit`);
  return dimension;
}

const baseNames: Record<string, string> = {
  M: 'mass',
  L: 'length',
  T: 'time',
  I: 'current',
  K: 'temperature',
  A: 'angle',
};
const superscript = (power: string): string =>
  power === '1' ? '' : [...power].map((c) => (c === '-' ? '⁻' : ('⁰¹²³⁴⁵⁶⁷⁸⁹'[Number(c)] ?? c))).join('');

/** A dimension key in words: "mass·length⁻²". */
function dimensionInWords(dimension: string): string {
  if (dimension === '') return 'a pure number';
  return dimension
    .split(' ')
    .map((part) => `${baseNames[part.charAt(0)] ?? part.charAt(0)}${superscript(part.slice(1))}`)
    .join('·');
}

/** "a stress (mass·length⁻¹·time⁻²)"; "a length" alone, where the name says the dimension already. */
function withDimension(name: string, dimension: string): string {
  const words = dimensionInWords(dimension);
  return name.endsWith(words) ? name : `${name} (${words})`;
}

function whatItIs(unit: UnitValue): string {
  const same = (Object.keys(kinds) as KindName[]).find(
    (name) => name !== 'number' && dimensionOf(name) === unit.dimension,
  );
  const words = dimensionInWords(unit.dimension);
  if (unit.dimension === '') return words;
  return same === undefined ? words : withDimension(kinds[same].name, unit.dimension);
}

function toKind(value: number, unit: UnitValue, kind: KindName): number {
  if (kind === 'angle')
    return unit.dimension === '' ? value : value * Number((unit.factor * (180 / Math.PI)).toPrecision(15));
  return kind === 'temperature' ? value * unit.factor + unit.offset : value * unit.factor;
}

/** F and C are farad and coulomb to a unit table, degrees to whoever writes them behind a temperature. */
function degreeHint(unitText: string, kind: KindName): { hint?: string } {
  const degree = kind.startsWith('temperature') && /^[FC]$/i.test(unitText);
  return degree ? { hint: `did you mean \`deg${unitText.toUpperCase()}\`?` } : {};
}

function hintFor(unit: string, fitting: readonly string[]): { hint?: string } {
  const found = nearest(unit, fitting) ?? nearest(unit, knownUnits());
  return found === undefined ? {} : { hint: `did you mean \`${found}\`?` };
}

/** The usual unit of a kind; its SI unit for a number that has the power of ten of the usual one in it already. */
function likelyUnit(value: number, kind: KindName): string {
  const [usual = ''] = acceptedUnits(kind);
  const power = Number(/^1e-?\d+/.exec(usual)?.[0] ?? 1);
  return value !== 0 && Math.abs(value) < Math.sqrt(power) && power !== 1 ? kinds[kind].si : usual;
}

const refuse = (problem: Problem): ParsedQuantity => ({ ok: false, problem });

function wrongNumber(text: string, kind: KindName, path: Path): ParsedQuantity {
  const comma = /^[+\-−]?\d+,\d+/.exec(text)?.[0];
  const behind = /^[a-zA-Z. ]+(\d.*)$/.exec(text)?.[1];
  return refuse({
    code: 'not-a-number',
    message: `\`${text}\` does not begin with a number`,
    allowed: `${kinds[kind].name}, for example ${exampleOf(kind)}`,
    ...(behind === undefined ? {} : { hint: `write \`${behind}\` alone` }),
    ...(comma === undefined
      ? {}
      : {
          hint: `write a decimal point and no thousands mark: \`${comma.replace(',', '.')}\` or \`${comma.replace(',', '')}\``,
        }),
    path,
  });
}

function exampleOf(kind: KindName): string {
  const unit = acceptedUnits(kind)[0];
  return bareNumberKinds.has(kind) && unit === undefined ? '`0.5`' : `\`1 ${unit ?? ''}\``;
}

/**
 * Reads a quantity such as "0.25 mm", "5.7 oz/yd^2", "5/8 in", "1200 denier", "50 %", "1.739×10⁹ N/m" and gives it in SI (angles in degrees).
 * A temperature keeps its zero point ("60 degC" is 333.15 K); a temperature difference does not ("60 degC" is 60 K).
 * Problems: `not-a-number`, `unit-missing`, `unit-unknown`, `unit-mismatch` (names both dimensions and units that would do).
 */
export function parseQuantity(input: string | number, kind: KindName, path: Path = []): ParsedQuantity {
  const text = typeof input === 'number' ? String(input) : input.trim();
  if (text.length > longestQuantity) {
    return refuse({
      code: 'not-a-number',
      message: `a quantity of ${text.length} characters is too long`,
      allowed: `at most ${longestQuantity} characters`,
      path,
    });
  }
  const number = leadingNumber(text);
  if (number === undefined) return wrongNumber(text, kind, path);
  const unitText = text.slice(number.length).trim();
  if (/^,\d/.test(unitText)) return wrongNumber(text, kind, path);
  if (!Number.isFinite(number.value)) {
    return refuse({ code: 'not-a-number', message: `\`${text}\` is not a finite number`, path });
  }
  const units = acceptedUnits(kind);
  if (unitText === '' && !bareNumberKinds.has(kind)) {
    return refuse({
      code: 'unit-missing',
      message: `\`${text}\` has no unit, but ${withDimension(kinds[kind].name, dimensionOf(kind))} is needed`,
      allowed: `units: ${units.join(', ')}`,
      hint: `write for example \`${text} ${likelyUnit(number.value, kind)}\``,
      path,
    });
  }
  const within = { offset: text.length - unitText.length, length: Math.max(1, unitText.length) };
  const unit = parseUnit(unitText);
  if (unit === undefined) {
    return refuse({
      code: 'unit-unknown',
      message: `\`${unitText}\` is not a unit`,
      allowed: `units for ${kinds[kind].name}: ${units.join(', ')}`,
      ...hintFor(normaliseUnit(unitText), units),
      within,
      path,
    });
  }
  const needed = dimensionOf(kind);
  const plainAngle = kind === 'angle' && unit.dimension === '' && unitText === '';
  if (unit.dimension !== needed && !plainAngle) {
    return refuse({
      code: 'unit-mismatch',
      message: `\`${unitText}\` is ${whatItIs(unit)}, but ${withDimension(kinds[kind].name, needed)} is needed`,
      allowed: units.length === 0 ? 'a number without unit' : `units: ${units.join(', ')}`,
      ...degreeHint(unitText, kind),
      within,
      path,
    });
  }
  const value = toKind(number.value, unit, kind);
  if (!Number.isFinite(value))
    return refuse({ code: 'not-a-number', message: `\`${text}\` is too large a number`, path });
  return { ok: true, value };
}

/** Converts a value in a known unit to SI (angles to degrees, temperatures with their zero point). @throws not found: plain Error, a fault of the caller's data. */
export function toSI(value: number, unitText: string): number {
  const unit = parseUnit(unitText);
  if (unit === undefined) throw new Error(`unknown unit ${unitText}`);
  return toKind(value, unit, unit.dimension === 'A1' ? 'angle' : unit.offset === 0 ? 'number' : 'temperature');
}
