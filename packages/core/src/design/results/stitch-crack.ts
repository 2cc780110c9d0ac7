import { armOf, type LaminateArm } from '../../fracture/index.js';
import { type Laminate, laminate, stiffness } from '../../laminate/index.js';
import type { Ply } from '../../material/index.js';
import type { Working } from '../../working/index.js';

/** Where a crack at mid-plane runs. */
export interface MidPlane {
  /** Under the faces, m. */
  readonly depth: number;
  /** Number of layers below it, from the tool side; of one that it lies in, those below that one. */
  readonly below: number;
  /** The layer in which it lies, counted from 1; absent where it lies between two. */
  readonly inside?: number;
}

/** The bed under the bonded part has no say in what is asked of these arms; given so that nothing is assumed of it, Pa. */
const anyBed = 1e10;

/** Two heights this close, over the thickness, are one. */
const close = 1e-9;

/** The mid-plane of a laminate: between two layers, or inside one. */
export function midPlaneOf({ plies, thickness }: Laminate): MidPlane {
  const depth = thickness / 2;
  let height = 0;
  for (const [i, ply] of plies.entries()) {
    height += ply.thickness;
    if (Math.abs(height - depth) <= close * thickness) return { depth, below: i + 1 };
    if (height > depth) return { depth, below: i, inside: i + 1 };
  }
  return { depth, below: plies.length };
}

/** What lies on either side of the mid-plane: toward the tool, toward the bag. */
function halves(stack: Laminate): readonly [Ply[], Ply[]] {
  const { below, inside } = midPlaneOf(stack);
  const { plies } = stack;
  const cut = inside === undefined ? undefined : plies[below];
  if (cut === undefined) return [plies.slice(0, below), plies.slice(below)];
  const under = stack.thickness / 2 - plies.slice(0, below).reduce((sum, ply) => sum + ply.thickness, 0);
  return [
    [...plies.slice(0, below), { ...cut, thickness: under }],
    [{ ...cut, thickness: cut.thickness - under }, ...plies.slice(below + 1)],
  ];
}

/**
 * The halves of a laminate as arms beside a crack at mid-plane, toward the tool and toward the bag.
 * @param turn degrees by which the crack grows from x
 * @param working takes down the steps
 */
export function halfLaminateArms(
  stack: Laminate,
  turn: 0 | 90,
  working?: Working,
): readonly [LaminateArm, LaminateArm] {
  const [tool, bag] = halves(stack).map((plies) =>
    laminate(plies.map((ply) => ({ ...ply, angle: ply.angle + turn }))),
  ) as [Laminate, Laminate];
  const arm = (half: Laminate, i: 1 | 2, crackFace: 'bottom' | 'top'): LaminateArm => {
    const own = working?.part('arms', i);
    if (own !== undefined) stiffness(half, own);
    return armOf(half, { crackFace, E3: anyBed }, own);
  };
  return [arm(tool, 1, 'bottom'), arm(bag, 2, 'top')];
}
