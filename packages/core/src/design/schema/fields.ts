import * as z from 'zod/mini';
import { fibreFractionLimits } from '../../material/index.js';
import { nearestHint, type Problem } from '../../problem/index.js';
import { formatQuantity, type KindName, kinds, parseQuantity } from '../../quantity/index.js';

/** Limits of a quantity, in SI. */
export interface Range {
  /** Greater than this. */
  readonly above?: number;
  /** At least, at most, smaller than this. */
  readonly min?: number;
  readonly max?: number;
  readonly below?: number;
}

/** Limits in words: "above 0 mm", "from 10 % to 75 %", "above 0 % and below 100 %". */
function limits(kind: KindName, { above, min, max, below }: Range): string {
  const shown = kind === 'strain' ? 'fraction' : kind;
  const isCount = (value: number): boolean => kind === 'number' && Number.isSafeInteger(value);
  const show = (value: number): string =>
    value === 0 || isCount(value) ? String(value) : formatQuantity(value, shown);
  if (min !== undefined && max !== undefined) return `from ${show(min)} to ${show(max)}`;
  return [
    above === undefined ? '' : `above ${show(above)}`,
    min === undefined ? '' : `at least ${show(min)}`,
    max === undefined ? '' : `at most ${show(max)}`,
    below === undefined ? '' : `below ${show(below)}`,
  ]
    .filter((part) => part !== '')
    .join(' and ');
}

const outside = (value: number, { above, min, max, below }: Range): boolean =>
  (above !== undefined && value <= above) ||
  (min !== undefined && value < min) ||
  (max !== undefined && value > max) ||
  (below !== undefined && value >= below);

/** Puts a problem into zod's list of issues; {@link problemOf} takes it out again. */
const report = (context: z.core.$RefinementCtx | { issues: unknown[] }, input: unknown, problem: Problem): void => {
  (context.issues as unknown[]).push({ code: 'custom', input, message: problem.message, params: { problem } });
};

/** The problem that a field of ours left in a zod issue. */
export function problemOf(issue: {
  readonly code: string;
  readonly params?: Record<string, unknown> | undefined;
}): Problem | undefined {
  return issue.code === 'custom' ? (issue.params?.problem as Problem | undefined) : undefined;
}

const example: Partial<Record<KindName, string>> = {
  angle: '45',
  arealMass: '300 g/m^2',
  density: '1150 kg/m^3',
  expansion: '22.5e-6 1/K',
  fraction: '0.5 or 50 %',
  length: '4 mm',
  linearDensity: '75 tex',
  modulus: '38.1 GPa',
  perLength: '8 1/cm',
  pressure: '5 kPa',
  strain: '0.3 %',
  stress: '40 MPa',
  temperatureChange: '-60 K',
  tenacity: '1.7 N/tex',
  toughness: '300 J/m^2',
};

const described = (kind: KindName, words: string, range: Range): string => {
  const limit = limits(kind, range);
  const such = example[kind] ?? (kinds[kind].metric === '' ? undefined : `1 ${kinds[kind].metric}`);
  return `${words}: ${kinds[kind].name}${limit === '' ? '' : ` ${limit}`}${such === undefined ? '' : `, for example ${such}`}`;
};

/** 55 where 55 % is meant. */
function percentHint(given: string | number, kind: KindName, value: number, range: Range): { hint?: string } {
  const bare = !String(given).includes('%');
  const meant = bare && kind === 'fraction' && value > 1 && !outside(value / 100, range);
  return meant ? { hint: `did you mean \`${given} %\`?` } : {};
}

/** A modulus of a solid; the stiffest there is reaches 1.2 TPa. */
export const solidModulus: Range = { above: 0, max: 5e12 };

/** Thermal expansion of a solid, 1/K. */
export const solidExpansion: Range = { min: -1e-3, max: 1e-3 };

/** Strains for which plies answer in proportion; percent or 10^-6 left out fall outside of it. */
export const elasticStrain: Range = { min: -0.1, max: 0.1 };

/** Changes of temperature that a laminate can see, K. */
export const seenTemperatureChange: Range = { min: -500, max: 1000 };

/** Densities that solids and threads have; g/cm^3 written as kg/m^3 falls out of it. */
export const solidDensity: Range = { min: 300, max: 25_000 };

/** A quantity of one kind: text with unit in, SI number out. */
export function quantity(kind: KindName, words: string, range: Range = {}) {
  const text = described(kind, words, range);
  const input = z.union([z.string(), z.number()], { error: () => text }).check(z.describe(text));
  return z.pipe(
    input,
    z.transform((given, context): number => {
      const parsed = parseQuantity(given, kind);
      if (!parsed.ok) {
        report(context, given, parsed.problem);
        return z.NEVER;
      }
      if (outside(parsed.value, range)) {
        report(context, given, {
          code: 'out-of-range',
          message: `${words} = ${given} is out of range`,
          allowed: `${kinds[kind].name} ${limits(kind, range)}`,
          ...percentHint(given, kind, parsed.value, range),
        });
      }
      return parsed.value;
    }),
  );
}

/** Fibre fractions for which plies are computed from constituents. */
export const fibreContent: Range = { min: fibreFractionLimits.lowest, max: fibreFractionLimits.highest };

/** An object with exactly these keys; the message of an unknown key is the list of allowed ones. */
export function section<Shape extends z.core.$ZodLooseShape>(words: string, shape: Shape) {
  const keys = Object.keys(shape).join(', ');
  return z
    .strictObject(shape, { error: (issue) => (issue.code === 'unrecognized_keys' ? keys : words) })
    .check(z.describe(words));
}

const namePattern = /^[A-Za-z][A-Za-z0-9_-]{0,60}$/;

/** A mapping from names of the user's own to values. */
export function named<Value extends z.core.$ZodType>(words: string, value: Value) {
  const key = z.string().check(z.regex(namePattern, { error: () => 'a letter, then letters, digits, - or _' }));
  return z.record(key, value, { error: () => words }).check(z.describe(words));
}

/** One or more lines of free text. */
export const text = (words: string) => z.string({ error: () => words }).check(z.maxLength(4000), z.describe(words));

/** A list with its own words for readers. */
export const listOf = <Item extends z.core.$ZodType>(words: string, item: Item, most: number) =>
  z.array(item, { error: () => words }).check(z.minLength(1), z.maxLength(most), z.describe(words));

/** The name of something declared in the file or in the library. */
export const reference = (words: string) => z.string({ error: () => words }).check(z.describe(words));

/** One of a few words; numbers are taken as their text, so that `stitchType: 301` needs no quotes. */
export function choice<const Choices extends readonly string[]>(words: string, choices: Choices) {
  const input = z.union([z.string(), z.number()], { error: () => `${words}: ${choices.join(', ')}` });
  return z.pipe(
    input.check(z.meta({ description: `${words}: ${choices.join(', ')}`, choices: [...choices] })),
    z.transform((given, context): Choices[number] => {
      const found = choices.find((one) => one === String(given));
      if (found !== undefined) return found;
      report(context, given, {
        code: 'not-a-choice',
        message: `\`${given}\` is not ${words}`,
        allowed: choices.join(', '),
        ...(/^\d+$/.test(String(given)) ? {} : nearestHint(String(given), choices)),
      });
      return z.NEVER;
    }),
  );
}
