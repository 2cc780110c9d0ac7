import { formatQuantity, type UnitSystem } from '../../quantity/index.js';
import { roomFor, shortened } from './lettering.js';
import { coordinate, element, escapeMarkup } from './markup.js';
import { groupDirection, groupNames, numbersOf, type PlyGroup } from './ply-groups.js';

/** Characters of a label; the material name gives way. */
const longestLabel = 46;
const shortestName = 8;

interface StackLabel {
  readonly group: PlyGroup;
  /** Drawing heights of the group's tool-side and bag-side faces (low is further down, so larger). */
  readonly low: number;
  readonly high: number;
  /** Drawing height of the label. */
  readonly at: number;
  readonly bandRight: number;
  readonly units: UnitSystem;
}

const widthOf = (text: string): number => [...text].length;

const leader = 38;

/** The parts of a label with their classes: numbers, direction, material, thickness of one layer. */
function parts(group: PlyGroup, units: UnitSystem): { readonly text: string; readonly classes?: string }[] {
  const single = group.period.length === 1 ? group.period[0] : undefined;
  const thickness = single ? formatQuantity(single.thickness, 'length', { units, digits: 3 }) : '';
  const numbers = numbersOf(group);
  const direction = groupDirection(group);
  const room = longestLabel - widthOf(numbers) - widthOf(direction) - widthOf(thickness);
  return [
    { text: numbers, classes: 'sv-muted' },
    { text: direction, classes: 'sv-strong' },
    { text: shortened(groupNames(group), Math.max(shortestName, room)) },
    { text: thickness, classes: 'sv-muted' },
  ].filter(({ text }) => text !== '');
}

/** Room that the label of a group takes right of the bands, px. */
export function labelWidth(group: PlyGroup, units: UnitSystem): number {
  return leader + parts(group, units).reduce((sum, { text }) => sum + roomFor(`${text} `) + 4, 0);
}

/** Layer numbers, direction, material and thickness of a group, with a bracket when it is several layers and a leader line. */
export function stackLabel({ group, low, high, at, bandRight, units }: StackLabel): string {
  const textLeft = bandRight + leader;
  const middle = coordinate((low + high) / 2);
  const bracket = group.last > group.first;
  const words = parts(group, units).map(({ text, classes }, i) =>
    element('tspan', { class: classes, dx: i === 0 ? undefined : 4 }, escapeMarkup(text)),
  );
  return [
    bracket
      ? element('path', {
          class: 'sv-axis',
          d: `M${bandRight + 5} ${coordinate(high + 1.5)}h4V${coordinate(low - 1.5)}h-4`,
        })
      : '',
    element('path', {
      class: 'sv-hair',
      d: `M${bandRight + (bracket ? 9 : 4)} ${middle}H${bandRight + 13}L${textLeft - 16} ${coordinate(at)}h11`,
    }),
    element('text', { class: 'sv-text', x: textLeft, y: at + 4.5 }, words.join(' ')),
  ].join('');
}
