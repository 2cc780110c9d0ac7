import { angleBetween, fibreDirections, isIsotropic } from './fibre-directions.js';
import { ROW } from './kernel-layout.js';
import { tabulateQbar } from './qbar.js';
import { alike, crossed, flipped, kept, type Layer, near, opposite, sameStiffness } from './stack-layer.js';
import type { Laminate } from './types.js';

/** Plies side by side whose fibres run the same way. */
export interface Block {
  /** Plies. */
  readonly count: number;
  /** m */
  readonly thickness: number;
  /** degrees */
  readonly angle: number;
}

/** What the order and the angles of the plies say, without summing any stiffness. Shares are of the thickness, 0 to 1. */
export interface StackPattern {
  /** Of plies whose mirror image about the mid-plane is another ply. */
  readonly unmirroredShare: number;
  /** Whether the mirror image of every ply has the opposite angle, or in a 0/90 stack the other of the two. */
  readonly antisymmetric: boolean;
  /** Of plies that shear when stretched and lack a ply of the opposite angle. */
  readonly unbalancedShare: number;
  /** Of fibres that run along neither 0 nor 90 degrees. */
  readonly offAxisShare: number;
  /** Whether fibres run along +θ and -θ of one θ only. */
  readonly anglePly: boolean;
  /** Of fibres along 0, 45, -45 and 90 degrees; a mat counts a quarter to each. Of the thickness without cores. */
  readonly directionShares: readonly { readonly angle: number; readonly share: number }[];
  /** The thickest; absent when no ply has a direction. */
  readonly largestBlock?: Block;
  /** Between plies that touch, degrees, 0 to 90; a mat or core between them parts them. */
  readonly largestAngleJump: number;
}

/** Reads the pattern of a stack from its plies. */
export function stackPattern(laminate: Laminate): StackPattern {
  const { qbarTable, row } = tabulateQbar(laminate.plies);
  const layers = laminate.plies.map((ply, k): Layer => {
    const at = (row[k] ?? 0) * ROW;
    const stiffness = [...qbarTable.subarray(at, at + ROW)];
    return { ply, thickness: ply.thickness, stiffness, directions: fibreDirections(ply) };
  });
  const share = (picked: readonly Layer[]): number => total(picked) / laminate.thickness;
  const mirror = (k: number): Layer | undefined => layers[layers.length - 1 - k];
  const angles = new Set(layers.flatMap((layer) => layer.directions));
  const block = largestBlock(layers);
  return {
    unmirroredShare: share(layers.filter((layer, k) => !alike(layer, mirror(k)))),
    antisymmetric:
      layers.every((layer, k) => opposite(layer, mirror(k))) ||
      (isWithin(angles, [0, 90]) && layers.every((layer, k) => crossed(layer, mirror(k)))),
    unbalancedShare: unbalanced(layers) / laminate.thickness,
    offAxisShare: fibresAlong(layers, (angle) => angle !== 0 && angle !== 90) / laminate.thickness,
    anglePly: isAnglePly(angles),
    directionShares: directionShares(layers),
    ...(block === undefined ? {} : { largestBlock: block }),
    largestAngleJump: largestJump(layers),
  };
}

const total = (layers: readonly Layer[]): number => layers.reduce((sum, layer) => sum + layer.thickness, 0);

/** Thickness of plies with shear coupling that no equal thickness of the opposite angle makes up for. */
function unbalanced(layers: readonly Layer[]): number {
  const kinds: { layer: Layer; left: number }[] = [];
  for (const layer of layers) {
    const scale = 1e-9 * Math.max(...layer.stiffness.map(Math.abs));
    if (Math.max(Math.abs(layer.stiffness[2] ?? 0), Math.abs(layer.stiffness[4] ?? 0)) <= scale) continue;
    const same = kinds.find((kind) => sameStiffness(layer, kind.layer, kept));
    const other = kinds.find((kind) => sameStiffness(layer, kind.layer, flipped));
    if (same) same.left += layer.thickness;
    else if (other) other.left -= layer.thickness;
    else kinds.push({ layer, left: layer.thickness });
  }
  const rest = kinds.reduce((sum, kind) => sum + Math.abs(kind.left), 0);
  return rest <= 1e-9 * total(layers) ? 0 : rest;
}

function fibresAlong(layers: readonly Layer[], wanted: (angle: number) => boolean): number {
  return layers.reduce((sum, { directions, thickness }) => {
    return sum + (directions.length === 0 ? 0 : (thickness * directions.filter(wanted).length) / directions.length);
  }, 0);
}

function isWithin(angles: ReadonlySet<number>, allowed: readonly number[]): boolean {
  return angles.size > 0 && [...angles].every((angle) => allowed.includes(angle));
}

function isAnglePly(angles: ReadonlySet<number>): boolean {
  const [one = 0, other = 0] = angles;
  return angles.size === 2 && near(one, -other, 90);
}

function directionShares(layers: readonly Layer[]): { angle: number; share: number }[] {
  const mats = layers.filter(({ ply }) => !ply.core && isIsotropic(ply));
  const all = total(layers.filter(({ ply }) => !ply.core));
  return [0, 45, -45, 90].map((angle) => ({
    angle,
    share: all === 0 ? 0 : (fibresAlong(layers, (other) => near(angle, other, 90)) + total(mats) / 4) / all,
  }));
}

function largestBlock(layers: readonly Layer[]): Block | undefined {
  let best: Block | undefined;
  let open: { count: number; thickness: number; directions: readonly number[] } | undefined;
  for (const { directions, thickness, ply } of layers) {
    if (directions.length === 0) {
      open = undefined;
      continue;
    }
    const goes = open !== undefined && open.directions.join() === directions.join();
    open = {
      count: (goes ? (open?.count ?? 0) : 0) + 1,
      thickness: (goes ? (open?.thickness ?? 0) : 0) + thickness,
      directions,
    };
    const angle = directions[0] ?? ply.angle;
    if (best === undefined || open.thickness > best.thickness)
      best = { count: open.count, thickness: open.thickness, angle };
  }
  return best;
}

function largestJump(layers: readonly Layer[]): number {
  let largest = 0;
  layers.forEach(({ directions }, k) => {
    const next = layers[k + 1]?.directions ?? [];
    if (directions.length === 0 || next.length === 0) return;
    const apart = directions.flatMap((angle) => next.map((other) => angleBetween(angle, other)));
    largest = Math.max(largest, Math.min(...apart));
  });
  return largest;
}
