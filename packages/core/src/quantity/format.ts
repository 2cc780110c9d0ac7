import { type KindName, kinds, type UnitSystem } from './kind.js';
import { parseUnit } from './unit.js';

/** How a quantity is shown to a reader. */
export interface DisplayOptions {
  /** Default metric. */
  readonly units?: UnitSystem;
  /** Significant digits, default 4; digits before the decimal point are never rounded away. */
  readonly digits?: number;
}

const superscripts: Record<string, string> = {
  '-': '⁻',
  '0': '⁰',
  '1': '¹',
  '2': '²',
  '3': '³',
  '4': '⁴',
  '5': '⁵',
  '6': '⁶',
  '7': '⁷',
  '8': '⁸',
  '9': '⁹',
};
const raised = (digits: string): string => [...digits].map((c) => superscripts[c] ?? c).join('');

/** A unit as it is printed: "g/m^2" becomes "g/m²", "in*lbf" becomes "in·lbf", "degC" becomes "°C". */
function prettyUnit(unit: string): string {
  return unit
    .replace(/1e(-?\d+)/g, (_, power: string) => `10${raised(power)}`)
    .replace(/\^(-?\d+)/g, (_, power: string) => raised(power))
    .replace(/\*/g, '·')
    .replace(/\bdeg([CF])/g, '°$1')
    .replace(/\bdeg\b/g, '°')
    .replace(/\bum\b/g, 'µm');
}

const displayUnitOf = (kind: KindName, units: UnitSystem): string =>
  units === 'us' ? kinds[kind].us : kinds[kind].metric;

/** The unit in which a kind of quantity is shown, as printed; empty for pure numbers. */
export function displayUnit(kind: KindName, units: UnitSystem = 'metric'): string {
  return prettyUnit(displayUnitOf(kind, units));
}

/** The value in the unit of display, unrounded. */
export function inDisplayUnit(value: number, kind: KindName, units: UnitSystem = 'metric'): number {
  if (kind === 'angle') return value;
  const unit = parseUnit(displayUnitOf(kind, units));
  if (unit === undefined) throw new Error(`kind ${kind} has no display unit`);
  return kind === 'temperature' ? (value - unit.offset) / unit.factor : value / unit.factor;
}

/** A number with sensible digits: 2.677, 18.2, 33161, 1.739e9, 2.5e-6; never NaN. @throws RangeError on NaN or an infinite number. */
export function formatNumber(value: number, digits = 4): string {
  if (!Number.isFinite(value)) throw new RangeError(`a result is not a finite number (${value})`);
  if (value === 0) return '0';
  const size = Math.abs(value);
  if (size >= 1e7 || size < 1e-4) {
    return value
      .toExponential(digits - 1)
      .replace(/\.?0+e/, 'e')
      .replace('e+', 'e');
  }
  if (size >= 10 ** (digits - 1)) return value.toFixed(0);
  const text = value.toPrecision(digits);
  return text.includes('e') ? String(Number(text)) : text.includes('.') ? text.replace(/\.?0+$/, '') : text;
}

/** The number of a quantity in its unit of display, without the unit. */
export function displayNumber(value: number, kind: KindName, options: DisplayOptions = {}): string {
  return formatNumber(inDisplayUnit(value, kind, options.units), options.digits);
}

/** A quantity as a reader expects it: "2.677 mm", "18.2 GPa", "45°", "50 %". */
export function formatQuantity(value: number, kind: KindName, options: DisplayOptions = {}): string {
  const unit = displayUnit(kind, options.units);
  const number = displayNumber(value, kind, options);
  if (unit === '') return number;
  if (unit === '°') return `${number}°`;
  return unit.startsWith('10') ? `${number}·${unit}` : `${number} ${unit}`;
}
