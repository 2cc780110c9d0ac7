import { create, createUnitDependencies, type MathJsInstance, unitDependencies } from 'mathjs';

/** Textile and trade units that mathjs does not bring, each by its definition. */
const tradeUnits: readonly (readonly [name: string, definition: string])[] = [
  ['tex', '1e-6 kg/m'], // ISO 1144: grams per kilometre
  ['dtex', '1e-7 kg/m'],
  ['ktex', '1e-3 kg/m'],
  ['denier', '0.1111111111111111e-6 kg/m'], // grams per 9 kilometres
  ['gf', '9.80665e-3 N'],
  ['psi', '1 lbf/in^2'],
  ['ksi', '1e3 lbf/in^2'],
  ['Msi', '1e6 lbf/in^2'],
];

let instance: MathJsInstance | undefined;

/** The one small mathjs instance: units only, made when first needed (it costs more than the rest of a report). */
function unitSystem(): MathJsInstance {
  if (instance === undefined) {
    instance = create({ ...unitDependencies, ...createUnitDependencies });
    for (const [name, definition] of tradeUnits) instance.createUnit(name, { definition }, { override: true });
  }
  return instance;
}

/** A unit expression reduced to SI: `value_SI = factor * value + offset`; the dimension as a text key. */
export interface UnitValue {
  readonly factor: number;
  /** Zero except for degC and degF. */
  readonly offset: number;
  /** Exponents such as `M1 L-1 T-2`; empty for a plain number. */
  readonly dimension: string;
}

const baseDimensions = ['M', 'L', 'T', 'I', 'K', 'J', 'N', 'A', 'B'];

interface UnitInternals {
  readonly value: number;
  readonly dimensions: readonly number[];
  readonly units: readonly { readonly unit: { readonly offset: number; readonly value: number } }[];
}

/** Rounds to 15 significant digits: g/cm^3 is 1000, not 999.9999999999999. */
const withoutNoise = (value: number): number => Number(value.toPrecision(15));

/** Reads a normalised unit expression ("N/mm", "1/K") with mathjs; undefined when mathjs does not know it. */
export function readUnitWithMathjs(expression: string): UnitValue | undefined {
  let unit: UnitInternals;
  try {
    const text = /^\d/.test(expression) ? expression : `1 ${expression}`;
    unit = unitSystem().unit(text) as unknown as UnitInternals;
  } catch {
    return undefined;
  }
  const dimension = unit.dimensions
    .map((power, i) => (Math.abs(power) < 1e-12 ? '' : `${baseDimensions[i]}${power}`))
    .filter((part) => part !== '')
    .join(' ');
  const only = unit.units.length === 1 ? unit.units[0]?.unit : undefined;
  const offset = only !== undefined && dimension === 'K1' ? only.offset * only.value : 0;
  return { factor: withoutNoise(unit.value), offset: withoutNoise(offset), dimension };
}
