import { scaleLinear } from 'd3-scale';
import { displayUnit, formatNumber, inDisplayUnit, type KindName, type UnitSystem } from '../../quantity/index.js';
import type { ChartQuantity } from './chart-input.js';

/** An axis in numbers. What is written along it is the unit of display over a power of ten that the title names. */
export interface ChartAxis {
  /** "label, unit" */
  readonly title: string;
  /** The power of ten and the unit of display; empty for pure numbers without a power. */
  readonly unit: string;
  /** Ends of the axis, unit of display. */
  readonly low: number;
  readonly high: number;
  readonly ticks: readonly number[];
  /** What is written at the ticks. */
  readonly names: readonly string[];
  /** A value in SI in the unit of display. */
  readonly shown: (value: number) => number;
  /** A value in the unit of display as it is written along the axis. */
  readonly written: (value: number) => string;
}

interface AxisOptions {
  readonly units: UnitSystem;
  /** About how many ticks. */
  readonly count: number;
  /** The axis ends where the values end, and has ticks there. */
  readonly tight?: boolean;
}

/** Below this share of the numbers themselves their differences are noise of computing. */
const noise = 1e-9;
const smallest = 1e-250;

/** The ends of the values; equal values get room on both sides, and a zero that is near is taken in. */
function domainOf(values: readonly number[], tight: boolean): [number, number] {
  const [low, high] = values.reduce(([a, b], value) => [Math.min(a, value), Math.max(b, value)], [Infinity, -Infinity]);
  const size = Math.max(Math.abs(low), Math.abs(high));
  if (size < smallest) return [-1, 1];
  const span = high - low;
  if (span <= noise * size) return [low - size / 2, high + size / 2];
  if (tight) return [low, high];
  if (low > 0 && low <= span / 4) return [0, high];
  if (high < 0 && -high <= span / 4) return [low, 0];
  return [low, high];
}

/** Directions are read in parts of a right angle. */
const angleSteps = [5, 15, 30, 45, 90, 180, 360, 720];

function ticksOf([low, high]: [number, number], kind: KindName, { count, tight = false }: AxisOptions) {
  const step = angleSteps.find((degrees) => (high - low) / degrees <= count);
  if (kind === 'angle' && step !== undefined && high - low >= 30) {
    const [first, last] = [Math.floor(low / step), Math.ceil(high / step)];
    const ticks = Array.from({ length: last - first + 1 }, (_, i) => (first + i) * step);
    return tight ? { low, high, ticks } : { low: first * step, high: last * step, ticks };
  }
  const scale = scaleLinear().domain([low, high]);
  const [from = low, to = high] = (tight ? scale : scale.nice(count)).domain();
  return { low: from, high: to, ticks: scale.ticks(count) };
}

/** Share of the axis that the number at a tick needs for itself. */
const elbow = 0.06;

/** Round ticks with the ends of the axis, those too near to an end left out. */
function withEnds(ticks: readonly number[], low: number, high: number): number[] {
  const gap = elbow * (high - low);
  return [low, ...ticks.filter((tick) => tick - low >= gap && high - tick >= gap), high];
}

const raised = (power: number): string =>
  [...String(power)].map((c) => (c === '-' ? '⁻' : '⁰¹²³⁴⁵⁶⁷⁸⁹'.charAt(Number(c)))).join('');

/** The power of ten, a multiple of three, that leaves numbers of few digits; 0 while they have few without it. */
function powerOf(size: number): number {
  return size >= 1e6 || size < 1e-2 ? 3 * Math.floor(Math.log10(size) / 3 + 1e-12) : 0;
}

/** Decimals that a number needs, up to the twelfth digit. */
const decimals = (value: number): number => (String(Number(value.toPrecision(12))).split('.')[1] ?? '').length;

/** An axis that holds all values (SI), with round ticks in the reader's unit. */
export function chartAxis({ label, kind }: ChartQuantity, values: readonly number[], options: AxisOptions): ChartAxis {
  const { units, tight = false } = options;
  const shown = (value: number): number => inDisplayUnit(value, kind, units);
  const { low, high, ticks: round } = ticksOf(domainOf(values.map(shown), tight), kind, options);
  const power = powerOf(Math.max(Math.abs(low), Math.abs(high)));
  const over = (value: number): number => value / 10 ** power;
  const written = (value: number): string => formatNumber(over(value), 4);
  const places = Math.max(...round.map((tick) => decimals(over(tick))));
  const ticks = tight ? withEnds(round, low, high) : round;
  const name = (tick: number): string => {
    if (tick === 0) return '0';
    return round.includes(tick) ? over(tick).toFixed(places) : formatNumber(over(tick), 3);
  };
  const display = displayUnit(kind, units);
  const unit = [power === 0 ? '' : `10${raised(power)}`, display]
    .filter((word) => word !== '')
    .join(display.startsWith('10') ? ' × ' : ' ');
  return {
    title: unit === '' ? label : `${label}, ${unit}`,
    unit,
    low,
    high,
    ticks,
    names: ticks.map(name),
    shown,
    written,
  };
}
