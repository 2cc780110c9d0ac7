import { scaleLinear } from 'd3-scale';
import { displayNumber, displayUnit, inDisplayUnit, type UnitSystem } from '../../quantity/index.js';
import { label, line } from './markup.js';

const readable = 15;

interface HeightAxis {
  /** Heights of the interfaces, m, ascending. */
  readonly z: readonly number[];
  /** Place on the drawing of a height. */
  readonly y: (z: number) => number;
  /** Where the bands begin. */
  readonly left: number;
  readonly units: UnitSystem;
}

/** Ticks at every interface while their numbers can be read beside each other, else at round heights; always at both faces. */
function ticks({ z, y, units }: HeightAxis): number[] {
  const close = z.some((level, i) => i > 0 && y(z[i - 1] ?? 0) - y(level) < readable);
  const lowest = z[0] ?? 0;
  const highest = z.at(-1) ?? 0;
  if (!close) return [...z];
  const perMetre = inDisplayUnit(1, 'length', units);
  const round = scaleLinear()
    .domain([lowest * perMetre, highest * perMetre])
    .ticks(7)
    .map((tick) => tick / perMetre)
    .filter((tick) => y(lowest) - y(tick) >= readable && y(tick) - y(highest) >= readable);
  return [lowest, ...round, highest];
}

/** The axis of height through the stack: tick marks with numbers left of the bands, the unit above. */
export function heightAxis(axis: HeightAxis): string[] {
  const { z, y, left, units } = axis;
  return [
    ...ticks(axis).flatMap((level) => [
      line(left - 6, y(level), left, y(level), 'sv-axis'),
      label(displayNumber(level, 'length', { units, digits: 3 }), left - 10, y(level) + 4, '', 'end'),
    ]),
    label(`z, ${displayUnit('length', units)}`, left - 10, y(z.at(-1) ?? 0) - 16, 'sv-muted', 'end'),
  ];
}
