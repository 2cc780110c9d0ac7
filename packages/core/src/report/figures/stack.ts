import { fail } from '../../problem/index.js';
import { formatQuantity, type UnitSystem } from '../../quantity/index.js';
import type { FigureBlock } from '../blocks.js';
import { frame } from './frame.js';
import { coordinate, element, label, line } from './markup.js';
import { type BandPly, hatchId, hatchPattern } from './ply-band.js';
import { groupPlies, groupSentence, type PlyGroup } from './ply-groups.js';
import { spreadLabels } from './spread.js';
import { heightAxis } from './stack-axis.js';
import { labelWidth, stackLabel } from './stack-label.js';
import { stackText } from './stack-text.js';

export interface StackFigureInput {
  /** Unique in the report; lower case with hyphens. */
  readonly id: string;
  readonly title: string;
  /** Tool side first. */
  readonly plies: readonly BandPly[];
  readonly units: UnitSystem;
}

const bandLeft = 60;
const bandWidth = 120;
const labelGap = 17;
const top = 34;

/** Equal neighbours share a label; when these are still too many to read, repeated sequences do too. */
function labelGroups(plies: readonly BandPly[]): PlyGroup[] {
  const simple = groupPlies(plies);
  return simple.length > 24 ? groupPlies(plies, 4) : simple;
}

/** Heights of the interfaces, m, from -thickness/2 at the tool side; one more than there are layers. */
function interfaces(plies: readonly BandPly[]): number[] {
  const thickness = plies.reduce((sum, ply) => sum + ply.thickness, 0);
  let below = 0;
  const heights = [-thickness / 2];
  for (const ply of plies) {
    below += ply.thickness;
    const level = below - thickness / 2;
    heights.push(Math.abs(level) < 1e-9 * thickness ? 0 : level);
  }
  return heights;
}

function band(id: string, ply: BandPly, low: number, high: number): string {
  const box = { x: 0, y: -(low - high) / 2, width: bandWidth, height: low - high };
  return element(
    'g',
    { class: 'sv-ply', transform: `translate(${bandLeft} ${coordinate((low + high) / 2)})` },
    element('rect', { class: 'sv-cloth', ...box }),
    element('rect', { fill: `url(#${hatchId(id, ply)})`, ...box }),
    element('rect', { class: 'sv-outline', ...box }),
  );
}

/**
 * Draws a stack through its thickness, to scale in z, tool side at the bottom. Each layer is hatched in its fibre
 * directions as seen from above (x to the right); labels keep their distance by leader lines, equal neighbours share one.
 *
 * @throws not-computable without layers or with a thickness that is not positive and finite
 */
export function stackFigure(input: StackFigureInput): FigureBlock {
  const { id, title, plies, units } = input;
  if (plies.length === 0)
    fail({ code: 'not-computable', message: `figure \`${id}\`: a stack without layers cannot be drawn` });
  for (const ply of plies) {
    if (!(ply.thickness > 0 && Number.isFinite(ply.thickness) && Number.isFinite(ply.angle))) {
      fail({
        code: 'not-computable',
        message: `figure \`${id}\`: layer ${ply.name} has thickness = ${ply.thickness} m at angle = ${ply.angle}; it cannot be drawn`,
        allowed: 'a thickness above 0 and a finite angle',
      });
    }
  }
  const z = interfaces(plies);
  const thickness = -2 * (z[0] ?? 0);
  const groups = labelGroups(plies);
  const height = Math.min(360, Math.max(130, plies.length * 26, groups.length * labelGap));
  const bottom = top + Math.max(height, (groups.length - 1) * labelGap + 8);
  const middle = (top + bottom) / 2;
  const y = (level: number): number => middle - (level / thickness) * height;
  const at = (index: number): number => y(z[index] ?? 0);

  const ranges = groups.map((group) => ({ low: at(group.first), high: at(group.last + 1) }));
  // Screen heights ascend from the top, so labels are spread from the last group to the first.
  const places = spreadLabels(ranges.map((range) => (range.low + range.high) / 2).reverse(), labelGap).reverse();
  const patterns = new Map(plies.map((ply) => [hatchId(id, ply), hatchPattern(id, ply)]));
  const total = formatQuantity(thickness, 'length', { units });
  const alt = `Section through the thickness, ${total} in ${plies.length} ${plies.length === 1 ? 'layer' : 'layers'}. From the tool side: ${groups.map((group) => groupSentence(group, units)).join('; ')}.`;
  const width = bandLeft + bandWidth + Math.max(...groups.map((group) => labelWidth(group, units)));
  const shift = Math.min(0, ...places.map((place) => place - top));
  const svg = frame(
    {
      id,
      title,
      description: alt,
      width,
      height: Math.max(bottom, ...places) - shift + 30,
      definitions: [...patterns.values()],
    },
    element(
      'g',
      shift === 0 ? {} : { transform: `translate(0 ${coordinate(-shift)})` },
      ...plies.map((ply, i) => band(id, ply, at(i), at(i + 1))),
      ...heightAxis({ z, y, left: bandLeft, units }),
      ...groups.map((group, i) => {
        const { low, high } = ranges[i] ?? { low: 0, high: 0 };
        return stackLabel({ group, low, high, at: places[i] ?? 0, bandRight: bandLeft + bandWidth, units });
      }),
      line(bandLeft, y(0), bandLeft + bandWidth, y(0), 'sv-gap'),
      line(bandLeft - 6, y(0), bandLeft + bandWidth + 14, y(0), 'sv-ink sv-centre'),
      label('bag side', bandLeft + bandWidth / 2, y(thickness / 2) - 8, 'sv-muted', 'middle'),
      label('tool side', bandLeft + bandWidth / 2, y(-thickness / 2) + 18, 'sv-muted', 'middle'),
    ),
  );
  return { kind: 'figure', id, caption: title, alt, svg, text: stackText(groups, thickness, units) };
}
