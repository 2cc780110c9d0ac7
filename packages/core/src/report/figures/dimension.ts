import { formatQuantity, type UnitSystem } from '../../quantity/index.js';
import { coordinate, element, label, line } from './markup.js';

interface Dimension {
  /** Ends of the measured distance, px along the direction measured. */
  readonly from: number;
  readonly to: number;
  /** Where the dimension line stands, px across. */
  readonly at: number;
  /** Where the witness lines begin, px across. */
  readonly reach: number;
  readonly text: string;
}

const tip = 5;
/** Below this distance the arrows stand outside and point inward. */
const roomForArrows = 18;

export function arrows(from: number, to: number, point: (along: number, across: number) => string): string[] {
  const inside = Math.abs(to - from) >= roomForArrows;
  const way = Math.sign(to - from) * (inside ? 1 : -1);
  const head = (end: number, toward: number): string =>
    element('path', {
      class: 'sv-tip',
      d: `M${point(end, 0)}L${point(end + toward * tip, -2.5)}L${point(end + toward * tip, 2.5)}Z`,
    });
  return [head(from, way), head(to, -way)];
}

/** A horizontal dimension above the drawing, its words over the line. */
export function dimensionAcross({ from, to, at, reach, text }: Dimension): string[] {
  const tail = Math.abs(to - from) >= roomForArrows ? 0 : 12;
  const direction = Math.sign(to - from);
  return [
    line(from, reach, from, at - 4, 'sv-hair'),
    line(to, reach, to, at - 4, 'sv-hair'),
    line(from - direction * tail, at, to + direction * tail, at, 'sv-axis'),
    ...arrows(from, to, (along, across) => `${coordinate(along)} ${coordinate(at + across)}`),
    label(text, (from + to) / 2, at - 8, '', 'middle'),
  ];
}

/** A vertical dimension right of the drawing, its words beside the line. */
export function dimensionUp({ from, to, at, reach, text }: Dimension): string[] {
  const tail = Math.abs(to - from) >= roomForArrows ? 0 : 12;
  const direction = Math.sign(to - from);
  return [
    line(reach, from, at + 4, from, 'sv-hair'),
    line(reach, to, at + 4, to, 'sv-hair'),
    line(at, from - direction * tail, at, to + direction * tail, 'sv-axis'),
    ...arrows(from, to, (along, across) => `${coordinate(at + across)} ${coordinate(along)}`),
    label(text, at + 9, (from + to) / 2 + 4.5),
  ];
}

const barLengths: Readonly<Record<UnitSystem, readonly number[]>> = {
  metric: [0.01, 0.001, 0.1],
  us: [0.0127, 0.00254, 0.127],
};

/** A scale bar of 10 mm or 0.5 in at a point; ten times less or more where that would be over half or under a twentieth of `room`, px. */
export function scaleBar(x: number, y: number, scale: number, room: number, units: UnitSystem): string[] {
  const fits = (length: number): boolean => length * scale <= room / 2 && length * scale >= room / 20;
  const lengths = barLengths[units];
  const length = lengths.find(fits) ?? lengths[0] ?? 0;
  const end = x + length * scale;
  return [
    element('path', {
      class: 'sv-ink',
      d: `M${coordinate(x)} ${coordinate(y - 4)}v8M${coordinate(x)} ${coordinate(y)}H${coordinate(end)}M${coordinate(end)} ${coordinate(y - 4)}v8`,
    }),
    label(formatQuantity(length, 'length', { units }), end + 8, y + 4.5),
  ];
}
