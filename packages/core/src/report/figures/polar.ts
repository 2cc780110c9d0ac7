import { scaleLinear } from 'd3-scale';
import { curveCatmullRomClosed, lineRadial } from 'd3-shape';
import { fail } from '../../problem/index.js';
import {
  displayNumber,
  displayUnit,
  formatQuantity,
  inDisplayUnit,
  type KindName,
  type UnitSystem,
} from '../../quantity/index.js';
import type { FigureBlock } from '../blocks.js';
import { crossingWords } from './crossings.js';
import { frame } from './frame.js';
import { seriesLine } from './look/index.js';
import { coordinate, element, label, line } from './markup.js';
import { fullCircle } from './polar-circle.js';
import { ringNumbers, rings, spokes } from './polar-grid.js';
import { polarText } from './polar-text.js';

export interface PolarCurve {
  readonly label: string;
  /** SI, not negative, one for each angle. */
  readonly values: readonly number[];
  readonly kind: KindName;
}

export interface PolarFigureInput {
  /** Unique in the report; lower case with hyphens. */
  readonly id: string;
  readonly title: string;
  /** Degrees from x toward y, ascending, at most 5 apart, over a half turn or a full one. */
  readonly angles: readonly number[];
  /** One to four curves of one kind. */
  readonly curves: readonly PolarCurve[];
  readonly units: UnitSystem;
}

/** More curves about one centre cannot be followed. */
const mostCurves = 4;
const place = { x: 225, y: 210, radius: 170 };
const legendTop = place.y + place.radius + 44;
const legendStep = 22;
const degree = Math.PI / 180;

function checkCurves({ id, angles, curves }: PolarFigureInput): void {
  if (curves.length === 0 || curves.length > mostCurves) {
    fail({
      code: 'out-of-range',
      message: `figure \`${id}\` has ${curves.length} curves`,
      allowed: `1 to ${mostCurves}`,
    });
  }
  const kind = curves[0]?.kind;
  for (const curve of curves) {
    const name = `figure \`${id}\`: ${curve.label}`;
    if (curve.kind !== kind)
      fail({ code: 'unit-mismatch', message: `${name} is of kind ${curve.kind}, the first curve ${kind}` });
    if (curve.values.length !== angles.length) {
      fail({ code: 'contradiction', message: `${name} has ${curve.values.length} values for ${angles.length} angles` });
    }
    const odd = curve.values.find((value) => !(Number.isFinite(value) && value >= 0));
    if (odd !== undefined)
      fail({
        code: 'not-computable',
        message: `${name} = ${odd} has no place on a polar plot`,
        allowed: 'finite, 0 or more',
      });
  }
}

/** "10.3 GPa at 90°" for the least and the greatest value of a curve. */
function extremes(curve: PolarCurve, angles: readonly number[], units: UnitSystem) {
  const unit = displayUnit(curve.kind, units);
  const number = (value: number): string => displayNumber(value, curve.kind, { units, digits: 3 });
  const [low, high] = [Math.min(...curve.values), Math.max(...curve.values)];
  const angle = (value: number): number => angles[curve.values.indexOf(value)] ?? 0;
  const inUnit = unit === '' ? '' : ` ${unit}`;
  const same = number(low) === number(high);
  return {
    range: same ? `${number(low)}${inUnit}` : `${number(low)} to ${number(high)}${inUnit}`,
    sentence: same
      ? `${curve.label} is ${number(low)}${inUnit} in every direction.`
      : `${curve.label} is least at ${angle(low)}° with ${number(low)}${inUnit} and greatest at ${angle(high)}° with ${number(high)}${inUnit}.`,
  };
}

/** Coordinates of a path cut to two decimals, so that the same figure is the same text everywhere. */
const roundPath = (path: string): string =>
  path.replace(/-?\d+(?:\.\d+)?(?:e-?\d+)?/g, (number) => coordinate(Number(number)));

/**
 * Draws quantities against direction over the full circle, 0° to the right and angles counter-clockwise. Values over a half
 * turn are repeated over the other half: elastic constants do not change when a laminate is turned by 180°.
 *
 * @throws out-of-range for no or more than four curves, and for angles that do not ascend or leave a gap above 5 degrees
 * @throws unit-mismatch for curves of different kinds
 * @throws contradiction when a curve has not one value for each angle
 * @throws not-computable for a value that is negative or not finite, and when every value is zero
 */
export function polarFigure(input: PolarFigureInput): FigureBlock {
  checkCurves(input);
  const { id, title, angles, curves, units } = input;
  const kind = curves[0]?.kind ?? 'number';
  const circle = fullCircle(id, angles);
  const shown = curves.map((curve) =>
    circle.source.map((index) => inDisplayUnit(curve.values[index] ?? 0, kind, units)),
  );
  const largest = Math.max(...shown.flat());
  if (largest === 0)
    fail({ code: 'not-computable', message: `figure \`${id}\`: every value is 0, there is nothing to plot` });
  const scale = scaleLinear().domain([0, largest]).range([0, place.radius]).nice(4);
  const levels = scale.ticks(4).filter((value) => value > 0);
  const closed = lineRadial<number>()
    .curve(curveCatmullRomClosed)
    .angle((_, i) => (90 - (circle.angles[i] ?? 0)) * degree)
    .radius((value) => scale(value));
  const words = curves.map((curve) => extremes(curve, angles, units));
  const halfTurn = curves.map((curve) => ({
    label: curve.label,
    points: angles.flatMap((x, i) => (x <= (angles[0] ?? 0) + 180 ? [{ x, y: curve.values[i] ?? 0 }] : [])),
  }));
  const crossed = crossingWords(
    halfTurn,
    ({ x, y }) => `${Math.round(x)}° with ${formatQuantity(y, kind, { units, digits: 3 })}`,
  );
  const alt = [
    'Polar plot over the directions in the plane.',
    ...words.map(({ sentence }) => sentence),
    ...crossed,
  ].join(' ');
  const height = legendTop + (curves.length - 1) * legendStep + 14;
  const svg = frame(
    { id, title, description: alt, width: 2 * place.x, height },
    ...rings(place, scale, levels),
    ...spokes(place),
    ...shown.map((values, i) =>
      element('path', {
        class: `sv-curve ${seriesLine(i)}`,
        transform: `translate(${place.x} ${place.y})`,
        d: roundPath(closed(values) ?? ''),
      }),
    ),
    ...ringNumbers(place, scale, levels, displayUnit(kind, units)),
    ...curves.flatMap((curve, i) => {
      const y = legendTop + i * legendStep;
      return [
        line(82, y, 128, y, seriesLine(i)),
        label(`${curve.label}   ${words[i]?.range ?? ''}`, 142, y + 4.5, 'sv-strong'),
      ];
    }),
  );
  return { kind: 'figure', id, caption: title, alt, svg, text: polarText(input) };
}
