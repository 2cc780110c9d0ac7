import type { Note, SourceKey } from '../provenance/index.js';
import type { Working } from '../working/index.js';
import { shown } from './check.js';
import { type WeaveGeometry, weavePaths, type YarnPath } from './crimp-geometry.js';
import { showCrimp } from './crimp-steps.js';
import { constantsFromStiffness, crossPlyStiffness } from './reduced-stiffness.js';
import {
  assumedPlyNu23,
  equalStrainLayer,
  equalStressLayer,
  type LayerStiffness,
  tiltMeans,
  type YarnConstants,
} from './undulated-yarn.js';

/** A weave's geometry and what its yarns are made of. */
export interface CrimpInput extends WeaveGeometry {
  readonly name?: string;
  /** The warp as a straight unidirectional ply of the cloth's fibre fraction; the weft too unless that is given. */
  readonly ud: YarnConstants;
  readonly weftUd?: YarnConstants;
}

/** What crimp leaves of a cloth's moduli, and the geometry it comes from. */
export interface CrimpFactors {
  /** Factor on the cloth's modulus along the warp, and along the weft. */
  readonly E1: number;
  readonly E2: number;
  /** The same when neighbours keep the yarns from shearing out of the plane; absent where nu23 fits no material. */
  readonly high?: { readonly E1: number; readonly E2: number };
  readonly warp: YarnPath;
  readonly weft: YarnPath;
  readonly notes: readonly Note[];
  readonly sources: readonly SourceKey[];
}

/** Above this largest angle a warning is given, degrees (common practice, no source). */
const steepAngle = 15;

const straight = tiltMeans(0);

/**
 * What crimp leaves of a woven cloth's moduli, from the weave's own geometry: warp and weft each as a layer averaged along
 * its undulated and straight lengths (`weavePaths`, `equalStressLayer`), the two layers at equal strain in the plane; the
 * factor is the modulus of that cloth over the modulus with straight yarns.
 * Slices bear the same load and shear freely out of the plane, which neighbouring plies hinder: the estimate is low, and
 * `high` is the other limit (`equalStrainLayer`). Slices do not bend. The shape of the yarn's section, gaps and nesting are
 * not resolved. It covers no change of G12 and no strength.
 * @param input Geometry in m and 1/m, constants in Pa; G13 = G12 and nu23 = 0.4 where they are not given.
 * @param working takes the steps down, when given.
 * @returns Factors (1 without crimp), ways of the yarns, notes: what was assumed, and a warning above 15 degrees.
 * @throws missing-key, contradiction, out-of-range as `weavePaths`; not-admissible for a nu23 of -1 or less.
 * @source Ishikawa & Chou 1982, crimp model for plain weave; twill and satin by their undulated share (recalled, not re-read).
 */
export function crimpFactorFromGeometry(input: CrimpInput, working?: Working): CrimpFactors {
  const { ud, weftUd = ud, warpShare = 0.5, name = 'cloth' } = input;
  const { warp, weft, notes } = weavePaths(input, name, working);
  const warpTilt = tiltMeans(warp.slope, warp.undulatedShare);
  const weftTilt = tiltMeans(weft.slope, weft.undulatedShare);
  const average = (along: LayerStiffness, across: LayerStiffness) =>
    // Shear in the plane does not enter the moduli along the yarns.
    crossPlyStiffness([...along, ud.G12], warpShare, [...across, weftUd.G12]);
  const cloth = (along: LayerStiffness, across: LayerStiffness) => constantsFromStiffness(average(along, across));
  const flat = cloth(equalStressLayer(ud, straight), equalStressLayer(weftUd, straight));
  const factors = (along: LayerStiffness, across: LayerStiffness) => {
    const { E1, E2 } = cloth(along, across);
    return { E1: E1 / flat.E1, E2: E2 / flat.E2 };
  };
  const soft = [equalStressLayer(ud, warpTilt), equalStressLayer(weftUd, weftTilt)] as const;
  const low = factors(...soft);
  if (working !== undefined) {
    const wavy = cloth(...soft);
    showCrimp(
      {
        warp: { way: warp, tilt: warpTilt, yarn: ud, layer: soft[0] },
        weft: { way: weft, tilt: weftTilt, yarn: weftUd, layer: soft[1] },
        cloth: { s_warp: warpShare, average: average(...soft), flat, wavy, factors: low },
      },
      working,
    );
  }
  const stiff = [equalStrainLayer(ud, warpTilt), equalStrainLayer(weftUd, weftTilt)] as const;
  const high = stiff[0] && stiff[1] && factors(stiff[0], stiff[1]);
  const without = high === undefined ? '' : `; ${high.E1.toFixed(3)} and ${high.E2.toFixed(3)} without that shear`;
  const more: Note[] = [
    {
      level: 'assumption',
      text: `${name}: crimp from yarns along a sine over ${shown(warp.undulatedShare)} of their length, one yarn spacing per change of sides, slices free to shear but not to bend: a low estimate${without}`,
      source: 'ishikawa-chou-1982',
    },
  ];
  if (ud.nu23 === undefined || weftUd.nu23 === undefined) {
    const text = `${name}: nu23 of the yarn is not given, ${assumedPlyNu23} is assumed for its tilt`;
    more.push({ level: 'assumption', text });
  }
  const steepest = Math.max(warp.angle, weft.angle);
  if (steepest > steepAngle) {
    const text = `${name}: yarns tilted by up to ${shown(steepest)} degrees, above ${steepAngle}: the crimp factor is rough (common practice, no source)`;
    more.push({ level: 'warning', text });
  }
  return {
    ...low,
    ...(high && { high }),
    warp,
    weft,
    notes: [...notes, ...more],
    sources: ['ishikawa-chou-1982', 'selvage-2026-derivation'],
  };
}
