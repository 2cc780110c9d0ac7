import { readUnitWithMathjs, type UnitValue } from './mathjs-units.js';
import preparedUnits from './prepared-units.json' with { type: 'json' };

export type { UnitValue } from './mathjs-units.js';

/** Unit expressions prepared at build time by mathjs (scripts/prepare-units.ts), so that a usual design needs no mathjs at run time. */
const prepared = new Map<string, UnitValue>(
  Object.entries(preparedUnits as unknown as Record<string, [number, string, number?]>).map(
    ([text, [factor, dimension, offset]]) => [text, { factor, dimension, offset: offset ?? 0 }],
  ),
);

/** Pure numbers written as units. */
const pureNumbers = new Map<string, number>([
  ['', 1],
  ['%', 0.01],
  ['percent', 0.01],
  ['permille', 1e-3],
  ['ppm', 1e-6],
  ['microstrain', 1e-6],
  ['ustrain', 1e-6],
  ['uε', 1e-6],
  ['ue', 1e-6],
  ['1e-6', 1e-6],
]);

/** Spellings of the trade and their plain form. */
const spellings: readonly (readonly [RegExp, string])[] = [
  [/^(?:"|″|'')$/, 'in'],
  [/^(?:'|′)$/, 'ft'],
  [/\bgsm\b/gi, 'g/m^2'],
  [/\bspi\b/gi, '1/in'],
  [/^(?:stitch(?:es)?|rows?|holes?|penetrations?|picks?|ends?)\s*(?:\/|per)\s*/i, '1/'],
  [/^(?:g|gf|gram)\s*\/\s*(den(?:ier)?)\b/i, 'gf/denier'], // the trade's "grams per denier" is a force per linear density
  [/^gpd$/i, 'gf/denier'],
  [/\bden\b/gi, 'denier'],
  [/\b(in|ft)[*\s-]lbf?s?\b/gi, '$1*lbf'], // the trade's inch-pound is a force times a length
  [/\bpli\b/gi, 'lbf/in'],
  [/\blbs?\s*\/\s*in(?:ch)?$/gi, 'lbf/in'],
  [/\b(?:inch(?:es)?)\b/gi, 'in'],
  [/\bsq\s*(yd|ft|in|m|cm|mm)\b/gi, '$1^2'],
  [/\bmicrons?\b/gi, 'um'],
  [/\bmils\b/gi, 'mil'],
  [/\blbs\b/gi, 'lb'],
  [/\bmins\b/gi, 'min'],
  [/\bdegrees?\b/gi, 'deg'],
];

/** Brings a unit as people write it ("g/m²", "N·m", "°C", "in.lbf/in2") to the one spelling that is looked up. */
export function normaliseUnit(text: string): string {
  let unit = text
    .trim()
    .replace(/[µμ]/g, 'u')
    .replace(/°\s*([CF])\b/g, 'deg$1')
    .replace(/°/g, 'deg')
    .replace(/[·⋅×]/g, '*')
    .replace(
      /[⁻⁰¹²³⁴⁵⁶⁷⁸⁹]+/g,
      (power) =>
        `^${[...power]
          .map((c) => '⁻⁰¹²³⁴⁵⁶⁷⁸⁹'.indexOf(c) - 1)
          .join('')
          .replace('-1', '-')}`,
    )
    .replace(/([a-zA-Z])\.(?=[a-zA-Z])/g, '$1*')
    .replace(/([a-zA-Z])(-?\d)/g, '$1^$2')
    .replace(/\s*([*/^])\s*/g, '$1')
    .replace(/^10\^(-?\d+)(?=$|[*/])/, '1e$1');
  for (const [pattern, plain] of spellings) unit = unit.replace(pattern, plain);
  return unit.replace(/(\d)e\^-?(\d)/, (whole) => whole.replace('^', ''));
}

const longestUnit = 60;

/** Reads a unit in any of the spellings of the trade; undefined when it is none. */
export function parseUnit(text: string): UnitValue | undefined {
  if (text.length > longestUnit) return undefined;
  const plain = prepared.get(text);
  if (plain !== undefined) return plain;
  const unit = normaliseUnit(text);
  const pure = pureNumbers.get(unit);
  if (pure !== undefined) return { factor: pure, offset: 0, dimension: '' };
  return prepared.get(unit) ?? readUnitWithMathjs(unit);
}

/** The names of the units that are looked up without mathjs; the pool for spelling hints. */
export function knownUnits(): string[] {
  return [...prepared.keys()];
}
