import { formatQuantity, type UnitSystem } from '../../quantity/index.js';
import { directionCharacter } from './ply-band.js';
import { groupDirection, groupNames, numbersOf, type PlyGroup } from './ply-groups.js';

const bandCharacters = 12;

function thicknessOf(group: PlyGroup): number {
  return group.repeats * group.period.reduce((sum, ply) => sum + ply.thickness, 0);
}

/** A band of characters: one layer fills it, a repeated sequence takes turns in blocks of three. */
function bandText(group: PlyGroup): string {
  const characters = group.period.map(directionCharacter);
  return Array.from({ length: bandCharacters }, (_, i) => characters[Math.floor(i / 3) % characters.length]).join('');
}

/** A group as the parts below and above the mid-plane when that lies between two of its layers, else as it is. */
function splitAtMiddle(group: PlyGroup, below: number): PlyGroup[] {
  const each = thicknessOf(group) / group.repeats;
  const repeats = Math.round(-below / each);
  if (repeats <= 0 || repeats >= group.repeats || Math.abs(repeats * each + below) > 1e-6 * each) return [group];
  const middle = group.first + repeats * group.period.length;
  return [
    { ...group, last: middle - 1, repeats },
    { ...group, first: middle, repeats: group.repeats - repeats },
  ];
}

/**
 * The stack in characters, tool side at the bottom, one line per group of equal layers (not to scale).
 * Characters: - 0°, | 90°, / and \ between, # cloth on the axes, x cloth on the bias, ~ mat, . core.
 */
export function stackText(groups: readonly PlyGroup[], thickness: number, units: UnitSystem): string {
  const size = (value: number): string => formatQuantity(value, 'length', { units, digits: 3 });
  const lines: { cells: string[]; middle: 'inside' | 'above' | undefined }[] = [];
  let below = -thickness / 2;
  for (const whole of groups) {
    for (const group of splitAtMiddle(whole, below)) {
      const above = below + thicknessOf(group);
      const tolerance = 1e-6 * thickness;
      const inside = below < -tolerance && above > tolerance;
      lines.push({
        cells: [numbersOf(group), bandText(group), groupDirection(group), groupNames(group), size(thicknessOf(group))],
        middle: inside ? 'inside' : Math.abs(above) <= tolerance ? 'above' : undefined,
      });
      below = above;
    }
  }
  const widths = [0, 1, 2, 3, 4].map((column) =>
    Math.max(...lines.map(({ cells }) => [...(cells[column] ?? '')].length)),
  );
  const numbers = widths[0] ?? 0;
  const row = (cells: readonly string[]): string =>
    cells
      .map((cell, i) => {
        const space = ' '.repeat((widths[i] ?? 0) - [...cell].length);
        return i === 0 ? space + cell : cell + space;
      })
      .join('  ');
  const indent = ' '.repeat(numbers + 2);
  const drawn = lines.reverse().flatMap(({ cells, middle }) => {
    if (middle === 'inside') return [`${row(cells)}  < mid`];
    return middle === 'above' ? [`${indent}${'- '.repeat(bandCharacters / 2)} mid-plane`, row(cells)] : [row(cells)];
  });
  return [`${indent}bag side`, ...drawn, `${indent}tool side, ${formatQuantity(thickness, 'length', { units })} in all`]
    .map((text) => text.trimEnd())
    .join('\n');
}
