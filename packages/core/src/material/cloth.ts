import { uniqueSources } from '../provenance/index.js';
import type { Working } from '../working/index.js';
import { showAverage, showCloth, showClothFree } from './cloth-steps.js';
import { chooseCrimp, type WovenOptions } from './crimp-choice.js';
import { ply } from './ply.js';
import {
  constantsFromStiffness,
  crossPlyStiffness,
  type ReducedStiffness,
  reducedStiffness,
} from './reduced-stiffness.js';
import type { Ply } from './types.js';

/** Warp and weft of a cloth, each as a unidirectional ply in its own axes. */
export interface ClothLayers {
  readonly warp: Ply;
  readonly weft: Ply;
  /** Share of the cloth's thickness in the warp. */
  readonly share: number;
}

/** Name, place, masses, notes and sources of a cloth: all of a ply but its constants. */
export type ClothBody = Omit<
  Ply,
  'E1' | 'E2' | 'G12' | 'nu12' | 'G13' | 'G23' | 'nu23' | 'expansion' | 'moistureExpansion'
>;

type Pair = readonly [along: number, across: number];

/** Stress along warp and weft of two bonded layers that are held at their old size, each with its own free strains along and across its fibre. */
function heldStress(Q: ReducedStiffness, e: Pair, share: number, R: ReducedStiffness, f: Pair): Pair {
  const N1 = share * (Q[0] * e[0] + Q[1] * e[1]) + (1 - share) * (R[1] * f[0] + R[2] * f[1]);
  const N2 = share * (Q[1] * e[0] + Q[2] * e[1]) + (1 - share) * (R[0] * f[0] + R[1] * f[1]);
  return [N1, N2];
}

/** The strain at which that stress is gone. */
function freed([A11, A12, A22]: ReducedStiffness, [N1, N2]: Pair): Pair {
  const determinant = A11 * A22 - A12 * A12;
  return [(A22 * N1 - A12 * N2) / determinant, (A11 * N2 - A12 * N1) / determinant];
}

/** The cloth of `layers` as one ply, crimped as `options` say; see `wovenPly`. The steps go into `working`, when given. */
export function clothPly(layers: ClothLayers, body: ClothBody, options: WovenOptions, working?: Working): Ply {
  const { warp, weft, share } = layers;
  const [Q, R] = [reducedStiffness(warp), reducedStiffness(weft)];
  const average = crossPlyStiffness(Q, share, R);
  const flat = constantsFromStiffness(average);
  if (working !== undefined) showAverage(Q, R, share, average, flat, working);
  const crimped = { ...layers, name: body.name, thickness: body.thickness };
  const { k1, k2, notes, sources } = chooseCrimp(crimped, options, working?.part('crimp'));
  const free = (by: 'heat' | 'moisture', e: Pair | undefined, f: Pair | undefined): Pair | undefined => {
    if (e === undefined || f === undefined) return undefined;
    const held = heldStress(Q, e, share, R, f);
    const found = freed(average, held);
    if (working !== undefined) showClothFree({ by, Q, R, share, average, e, f, held, free: found }, working);
    return found;
  };
  const heat = ({ expansion: e }: Ply): Pair | undefined => e && [e.alpha1, e.alpha2];
  const moisture = ({ moistureExpansion: e }: Ply): Pair | undefined => e && [e.beta1, e.beta2];
  const inSeries = (first: number | undefined, second: number | undefined): number | undefined =>
    first === undefined || second === undefined ? undefined : 1 / (share / first + (1 - share) / second);
  const [G13, G23] = [inSeries(warp.G13, weft.G23), inSeries(warp.G23, weft.G13)];
  const constants = { ...flat, E1: k1 * flat.E1, E2: k2 * flat.E2, nu12: flat.nu12 * Math.sqrt(k1 / k2) };
  if (working !== undefined) {
    showCloth({ ...layers, average, flat, k1, k2, constants, G13, G23 }, working);
  }
  const thermal = free('heat', heat(warp), heat(weft));
  const swelling = free('moisture', moisture(warp), moisture(weft));
  return ply({
    ...body,
    ...constants,
    ...(G13 !== undefined && { G13 }),
    ...(G23 !== undefined && { G23 }),
    ...(thermal && { expansion: { alpha1: thermal[0], alpha2: thermal[1] } }),
    ...(swelling && { moistureExpansion: { beta1: swelling[0], beta2: swelling[1] } }),
    notes: [...body.notes, ...notes],
    sources: uniqueSources(body.sources, ['ishikawa-chou-1982'], sources),
  });
}
