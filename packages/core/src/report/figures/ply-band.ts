import { fibreDye, hatchSpacing as spacing } from './look/index.js';
import { element } from './markup.js';

/** What a layer is made of, as far as its drawing goes: one fibre direction, two crossed ones, none, or a core. */
export type BandKind = 'ud' | 'cloth' | 'mat' | 'core';

/** One layer of a drawn stack, tool side first. */
export interface BandPly {
  readonly name: string;
  /** Degrees from x, positive toward y. */
  readonly angle: number;
  /** m, positive. */
  readonly thickness: number;
  /** Default ud. */
  readonly kind?: BandKind;
}

/** An angle brought into (-90, 90], where fibre directions repeat; rounded to 1/1000 degree. */
function fibreAngle(angle: number): number {
  const turned = ((angle % 180) + 180) % 180;
  return Math.round((turned > 90 ? turned - 180 : turned) * 1000) / 1000 + 0;
}

/** The direction of a layer in words of an orientation code: "45°", "0/90°", "±45°"; empty for mats and cores. */
export function directionLabel(ply: BandPly): string {
  const angle = fibreAngle(ply.angle);
  if (ply.kind === 'mat' || ply.kind === 'core') return '';
  if (ply.kind !== 'cloth') return `${angle}°`;
  if (Math.abs(angle) === 45) return '±45°';
  return `${angle}/${fibreAngle(angle + 90)}°`;
}

/** One character that stands for a layer in a text drawing. */
export function directionCharacter(ply: BandPly): string {
  if (ply.kind === 'core') return '.';
  if (ply.kind === 'mat') return '~';
  const angle = fibreAngle(ply.angle);
  const square = angle === 0 || angle === 90;
  if (ply.kind === 'cloth') return square ? '#' : 'x';
  if (square) return angle === 0 ? '-' : '|';
  return angle > 0 ? '/' : '\\';
}

function hatchLine(angle: number): string {
  const classes = `sv-${fibreDye(angle)} sv-thin`;
  return element('line', { class: classes, x1: -1, y1: spacing / 2, x2: spacing + 1, y2: spacing / 2 });
}

/** The name under which the hatching of a layer is defined in its figure. */
export function hatchId(id: string, ply: BandPly): string {
  if (ply.kind === 'mat' || ply.kind === 'core') return `${id}-hatch-${ply.kind}`;
  const angle = fibreAngle(ply.angle);
  const plain = String(Math.abs(angle)).replace('.', '-');
  return `${id}-hatch-${ply.kind ?? 'ud'}-${angle < 0 ? 'minus-' : ''}${plain}`;
}

/**
 * The hatching of a layer as an SVG pattern: lines run as the fibres do, seen from above with x to the right;
 * crossed for cloth, scattered dashes for a mat, dots for a core. A line passes through the middle of the band, however thin.
 */
export function hatchPattern(id: string, ply: BandPly): string {
  const shared = { id: hatchId(id, ply), patternUnits: 'userSpaceOnUse' };
  if (ply.kind === 'core') {
    return element(
      'pattern',
      { ...shared, width: 8, height: 8, y: -4 },
      element('circle', { class: 'sv-dot', cx: 2, cy: 4, r: 0.7 }),
      element('circle', { class: 'sv-dot', cx: 6, cy: 8, r: 0.7 }),
      element('circle', { class: 'sv-dot', cx: 6, cy: 0, r: 0.7 }),
    );
  }
  if (ply.kind === 'mat') {
    return element(
      'pattern',
      { ...shared, width: 18, height: 9, y: -4.5 },
      element('path', { class: 'sv-axis', d: 'M1 3l5 2M9 7l4-4M12 5l5 1M3 8l4-1M8 1l3 1' }),
    );
  }
  const angle = fibreAngle(ply.angle);
  const turn = `rotate(${-angle}) translate(0 ${-spacing / 2})`;
  const size = { width: spacing, height: spacing, patternTransform: turn };
  if (ply.kind !== 'cloth') return element('pattern', { ...shared, ...size }, hatchLine(angle));
  const across = element('line', {
    class: `sv-${fibreDye(fibreAngle(angle + 90))} sv-thin`,
    x1: spacing / 2,
    y1: -1,
    x2: spacing / 2,
    y2: spacing + 1,
  });
  return element('pattern', { ...shared, ...size }, hatchLine(angle), across);
}
