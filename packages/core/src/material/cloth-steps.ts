import type { StepValues, Working } from '../working/index.js';
import type { InPlaneConstants, ReducedStiffness } from './reduced-stiffness.js';
import type { Ply } from './types.js';

/** A stiffness by its symbols: `Q_warp11` to `Q_warp66`. */
export const stiffnessAs = (name: 'warp' | 'weft' | 'cloth', Q: ReducedStiffness): Record<string, number> =>
  Object.fromEntries(['11', '12', '22', '66'].map((index, i) => [`Q_${name}${index}`, Q[i] ?? 0]));

/** Takes down the average of warp and weft with straight yarns. */
export function showAverage(
  Q: ReducedStiffness,
  R: ReducedStiffness,
  s_warp: number,
  average: ReducedStiffness,
  flat: InPlaneConstants,
  working: Working,
): void {
  const layers = { s_warp, ...stiffnessAs('warp', Q), ...stiffnessAs('weft', R), ...stiffnessAs('cloth', average) };
  working.step('clothAverage', { ...layers, E_flat1: flat.E1, E_flat2: flat.E2, nu_flat12: flat.nu12 });
}

/** A cloth's layers, their average, its crimp and what follows. */
interface ClothParts {
  readonly warp: Ply;
  readonly weft: Ply;
  readonly share: number;
  readonly average: ReducedStiffness;
  readonly flat: InPlaneConstants;
  readonly k1: number;
  readonly k2: number;
  readonly constants: InPlaneConstants;
  readonly G13: number | undefined;
  readonly G23: number | undefined;
}

/** Takes down the constants of a cloth. */
export function showCloth(parts: ClothParts, working: Working): void {
  const { warp, weft, share, average, flat, k1, k2, constants, G13, G23 } = parts;
  const straight = { E_flat1: flat.E1, E_flat2: flat.E2, nu_flat12: flat.nu12, Q_cloth66: average[3] };
  const { E1, E2, G12, nu12 } = constants;
  working.step('clothCrimped', { k_warp: k1, k_weft: k2, ...straight, E1, E2, G12, nu12 });
  const [G_warp13, G_warp23, G_weft13, G_weft23] = [warp.G13, warp.G23, weft.G13, weft.G23];
  const layers = known({ G_warp13, G_warp23, G_weft13, G_weft23, G13, G23 });
  if (layers !== undefined) working.step('clothShear', { s_warp: share, ...layers });
}

/** The numbers, when all are there. */
const known = (values: Readonly<Record<string, number | undefined>>): StepValues | undefined =>
  Object.values(values).includes(undefined) ? undefined : (values as StepValues);

type Pair = readonly [along: number, across: number];

/** What heat or moisture does to a cloth: the free strains of its layers, the stress of the cloth held, its free strain. */
interface ClothFree {
  readonly by: 'heat' | 'moisture';
  readonly Q: ReducedStiffness;
  readonly R: ReducedStiffness;
  readonly share: number;
  readonly average: ReducedStiffness;
  readonly e: Pair;
  readonly f: Pair;
  readonly held: Pair;
  readonly free: Pair;
}

const pair = (name: string, [along, across]: Pair): Record<string, number> => ({
  [`${name}1`]: along,
  [`${name}2`]: across,
});

/** Takes down the expansion or the swelling of a cloth. */
export function showClothFree({ by, Q, R, share, average, e, f, held, free }: ClothFree, working: Working): void {
  const [name, stress] = by === 'heat' ? ['alpha', 'p'] : ['beta', 's'];
  const layers = {
    s_warp: share,
    ...stiffnessAs('warp', Q),
    ...stiffnessAs('weft', R),
    ...stiffnessAs('cloth', average),
  };
  working.step(by === 'heat' ? 'clothExpansion' : 'clothSwelling', {
    ...layers,
    ...pair(`${name}_warp`, e),
    ...pair(`${name}_weft`, f),
    ...pair(`${stress}_cloth`, held),
    ...pair(name, free),
  });
}

/** Takes down how thickness and masses of warp and weft add to those of the cloth, where the masses are known. */
export function showHybrid(
  warp: Ply,
  weft: Ply,
  cloth: Pick<Ply, 'thickness' | 'density' | 'fibreArealMass' | 'resinArealMass'> & {
    readonly share: number;
    readonly W_cloth: number | undefined;
  },
  working: Working,
): void {
  const values = known({
    t_warp: warp.thickness,
    t_weft: weft.thickness,
    m_warp: warp.fibreArealMass,
    m_weft: weft.fibreArealMass,
    r_warp: warp.resinArealMass,
    r_weft: weft.resinArealMass,
    t_k: cloth.thickness,
    s_warp: cloth.share,
    m_f: cloth.fibreArealMass,
    m_m: cloth.resinArealMass,
    rho: cloth.density,
    W_cloth: cloth.W_cloth,
  });
  if (values !== undefined) working.step('hybridCloth', values);
}
