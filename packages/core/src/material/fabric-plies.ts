import { fail, type Problem } from '../problem/index.js';
import { demand, finite, positive, shown } from './check.js';
import { matPly } from './mat.js';
import { ply } from './ply.js';
import { plyFromConstituents, unidirectionalPly } from './ply-from-constituents.js';
import type { Architecture, Fabric, FabricLayer, Ply } from './types.js';
import { wovenPly } from './woven.js';

/** How a fabric lies in a stack. */
export interface FabricPlacement {
  /** Degrees from the laminate's x to the fabric's 0 (its warp); 0 when not given. */
  readonly angle?: number;
  /** True in the mirrored half of a symmetric stack: the fabric lies upside down, so its layers come in reverse order. */
  readonly mirrored?: boolean;
}

const ownedBy: readonly (readonly [keyof Fabric, Architecture])[] = [
  ['weave', 'woven'],
  ['warpShare', 'woven'],
  ['layers', 'multiaxial'],
  ['matModel', 'mat'],
];

function* misplaced(fabric: Fabric): Generator<Problem> {
  const { name, architecture } = fabric;
  for (const [key, owner] of ownedBy) {
    if (fabric[key] !== undefined && architecture !== owner) {
      yield { code: 'contradiction', message: `${key} is for a ${owner} fabric, ${name} is ${architecture}` };
    }
  }
  const { crimpFactor = 1 } = fabric;
  if (crimpFactor !== 1 && architecture !== 'woven') {
    const message = `crimpFactor = ${shown(crimpFactor)} is for a woven fabric, ${name} is ${architecture}`;
    yield { code: 'contradiction', message, allowed: '1' };
  }
}

function checkedLayers({ name, layers = [] }: Fabric): readonly FabricLayer[] {
  if (layers.length === 0) {
    fail({
      code: 'missing-key',
      message: `multiaxial fabric ${name} has no layers`,
      hint: 'give layers from the lower face up, each with angle and share',
    });
  }
  demand(...layers.flatMap((layer) => [finite('layer angle', layer.angle), positive('layer share', layer.share, '')]));
  const sum = layers.reduce((total, layer) => total + layer.share, 0);
  if (Math.abs(sum - 1) > 1e-6) {
    fail({
      code: 'out-of-range',
      message: `layer shares of fabric ${name} sum to ${shown(sum)}, must be 1`,
      allowed: 'shares that sum to 1 within 1e-6',
    });
  }
  return layers;
}

/** The same direction in -90 to 90 degrees; a fibre has no front end. */
const foldedAngle = (angle: number): number => (Math.abs(angle) <= 90 ? angle : angle - 180 * Math.round(angle / 180));

/**
 * The plies one fabric gives to a stack, from the tool side up: one for a unidirectional, woven or mat fabric, one per
 * layer for a multiaxial. A woven cloth is ONE ply of averaged constants, see `wovenPly`; a mat see `matPly`.
 * @param fabric SI; arealMass in kg/m^2, fibreVolumeFraction 0.1 to 0.75.
 * @param placement angle in degrees, added to the layers' own; mirrored turns the order of the layers, not their angles.
 * @returns Plies named after the fabric, angles of a multiaxial folded into -90 to 90 degrees.
 * @throws missing-key a multiaxial without layers; out-of-range shares that do not sum to 1, a fraction or factor
 * outside its range; contradiction a property that belongs to another architecture; not-admissible; not-a-number.
 */
export function fabricPlies(fabric: Fabric, { angle = 0, mirrored = false }: FabricPlacement = {}): Ply[] {
  demand(finite('angle', angle), ...misplaced(fabric));
  const finished = (plies: readonly Ply[]): Ply[] =>
    fabric.strengths === undefined
      ? [...plies]
      : plies.map((bare) => ply({ ...bare, ...(fabric.strengths && { strengths: fabric.strengths }) }));
  if (fabric.architecture === 'multiaxial') {
    const plies = checkedLayers(fabric).map((layer) =>
      plyFromConstituents({
        ...fabric,
        arealMass: fabric.arealMass * layer.share,
        angle: foldedAngle(angle + layer.angle),
      }),
    );
    return finished(mirrored ? plies.reverse() : plies);
  }
  if (fabric.architecture === 'mat') {
    return finished([matPly(unidirectionalPly({ ...fabric, angle }), fabric.matModel)]);
  }
  const ud = plyFromConstituents({ ...fabric, angle });
  return finished([fabric.architecture === 'woven' ? wovenPly(ud, fabric) : ud]);
}
