import { fail, type Problem } from '../problem/index.js';
import type { Working } from '../working/index.js';
import { between, demand, finite, positive, shown } from './check.js';
import { matPly } from './mat.js';
import { ply } from './ply.js';
import { plyFromConstituents, unidirectionalPly } from './ply-from-constituents.js';
import type { Architecture, Fabric, FabricLayer, Fibre, Ply, Strengths } from './types.js';
import { hybridWovenPly, wovenPly } from './woven.js';

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
  ['weftFibre', 'woven'],
  ['yarnCount', 'woven'],
  ['weftCount', 'woven'],
  ['harness', 'woven'],
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
  if (fabric.weftCount !== undefined && fabric.yarnCount === undefined) {
    yield {
      code: 'missing-key',
      message: `fabric ${name} has a weftCount but no yarnCount`,
      hint: 'give both, or none',
    };
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

/** The working of a part of the fabric's mass, which is taken down first. */
function partOf({ arealMass }: Fabric, share: number, working: Working | undefined): Working | undefined {
  working?.step('layerMass', { m_fabric: arealMass, s_m: share, m_f: arealMass * share });
  return working;
}

/** Warp and weft of a cloth of two fibres, each as a unidirectional ply. */
function hybridCloth(fabric: Fabric, weftFibre: Fibre, angle: number, working?: Working): Ply {
  const { arealMass, warpShare = 0.5 } = fabric;
  demand(between('warp share', warpShare, 0, 1));
  const warpPart = partOf(fabric, warpShare, working?.part('warp'));
  const warp = plyFromConstituents({ ...fabric, arealMass: arealMass * warpShare, angle }, warpPart);
  const weftPart = partOf(fabric, 1 - warpShare, working?.part('weft'));
  const ofWeft = { ...fabric, fibre: weftFibre, arealMass: arealMass * (1 - warpShare), angle };
  return hybridWovenPly(warp, plyFromConstituents(ofWeft, weftPart), fabric, working);
}

/** The same direction in -90 to 90 degrees; a fibre has no front end. */
const foldedAngle = (angle: number): number => (Math.abs(angle) <= 90 ? angle : angle - 180 * Math.round(angle / 180));

/**
 * The plies one fabric gives to a stack, from the tool side up: one for a unidirectional, woven or mat fabric, one per
 * layer for a multiaxial. A woven cloth is ONE ply of averaged constants, see `wovenPly`; a mat see `matPly`. Warp and
 * weft of a cloth, and the layers of a multiaxial, may be of different fibres at the fabric's one fibre fraction: their
 * volumes add to the thickness, each with its own constants (`fabricFibres` gives the mass of each).
 * @param fabric SI; arealMass in kg/m^2, fibreVolumeFraction 0.1 to 0.75.
 * @param placement angle in degrees, added to the layers' own; mirrored turns the order of the layers, not their angles.
 * @param working takes the steps down, when given: of a multiaxial in the parts `layers.1` and so on, of the fibres of a cloth or mat in
 * `unidirectional`, or `warp` and `weft` where they differ.
 * @returns Plies named after the fabric, angles of a multiaxial folded into -90 to 90 degrees.
 * @throws missing-key a multiaxial without layers, a weftCount without yarnCount; out-of-range shares that do not sum to 1, a fraction or factor
 * outside its range; contradiction a property that belongs to another architecture; not-admissible; not-a-number.
 */
export function fabricPlies(
  fabric: Fabric,
  { angle = 0, mirrored = false }: FabricPlacement = {},
  working?: Working,
): Ply[] {
  demand(finite('angle', angle), ...misplaced(fabric));
  const strong = (bare: Ply, strengths: Strengths | undefined = fabric.strengths): Ply =>
    strengths === undefined ? bare : ply({ ...bare, strengths });
  if (fabric.architecture === 'multiaxial') {
    const plies = checkedLayers(fabric).map((layer, i) => {
      const bare = plyFromConstituents(
        {
          ...fabric,
          fibre: layer.fibre ?? fabric.fibre,
          arealMass: fabric.arealMass * layer.share,
          angle: foldedAngle(angle + layer.angle),
        },
        partOf(fabric, layer.share, working?.part('layers', i + 1)),
      );
      return strong(bare, layer.strengths);
    });
    return mirrored ? plies.reverse() : plies;
  }
  const within = working?.part('unidirectional');
  if (fabric.architecture === 'mat') {
    return [strong(matPly(unidirectionalPly({ ...fabric, angle }, within), fabric.matModel, working))];
  }
  if (fabric.weftFibre !== undefined) return [strong(hybridCloth(fabric, fabric.weftFibre, angle, working))];
  if (fabric.architecture === 'ud') return [strong(plyFromConstituents({ ...fabric, angle }, working))];
  return [strong(wovenPly(plyFromConstituents({ ...fabric, angle }, within), fabric, working))];
}
