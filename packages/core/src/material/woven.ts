import { uniqueNotes, uniqueSources } from '../provenance/index.js';
import type { Working } from '../working/index.js';
import { between, demand, over } from './check.js';
import { type ClothBody, clothPly } from './cloth.js';
import { showHybrid } from './cloth-steps.js';
import type { WovenOptions } from './crimp-choice.js';
import { reducedStiffness } from './reduced-stiffness.js';
import type { Ply } from './types.js';

const demandWoven = ({ warpShare = 0.5, crimpFactor = 1 }: WovenOptions): void =>
  demand(between('warp share', warpShare, 0, 1), over('crimp factor', crimpFactor, 0.5, 1));

/**
 * A woven cloth as ONE ply: its fibres as two unidirectional layers of equal fibre fraction, warp and weft, averaged in
 * the plane (Q11 = s Q11' + (1-s) Q22', Q22 with the shares exchanged, Q12, Q66 as they are). Crimp then multiplies E1 by
 * k1 and E2 by k2; G12 stays, and nu12 becomes nu12 sqrt(k1/k2), so that warp and weft are treated alike and
 * nu12/E1 = nu21/E2 still holds. Expansion and swelling by equilibrium of the two layers before crimp; G13 and G23 with the
 * layers in series. The crimp factor is the one given, else that of the weave's geometry where a yarn count is given
 * (`crimpFactorFromGeometry`), else a usual one with a note.
 * Bending of a single cloth is taken as that of the averaged material; the undulation is not resolved.
 * @param ud The cloth's whole fibre mass as one unidirectional ply.
 * @param working takes the steps down, when given; those of the constants of `ud` are taken down where they are computed.
 * @returns One ply, axis 1 along the warp, with the mass, thickness and angle of `ud`.
 * @throws out-of-range crimpFactor outside 0.5 to 1 (0.5 excluded), warpShare not between 0 and 1, a count that is not
 * positive; contradiction a harness that is not of the weave.
 * @source Cross-ply equivalent (mosaic) and crimp model: Ishikawa & Chou 1982 (recalled, not re-read).
 */
export function wovenPly(ud: Ply, options: WovenOptions = {}, working?: Working): Ply {
  demandWoven(options);
  if (working !== undefined) reducedStiffness(ud, working.part('unidirectional'));
  const { expansion: _, moistureExpansion: __, G13: ___, G23: ____, nu23: _____, ...body } = ud;
  return clothPly({ warp: ud, weft: ud, share: options.warpShare ?? 0.5 }, body, options, working);
}

/** Sum of a mass that both layers know. */
const sum = (first: number | undefined, second: number | undefined): number | undefined =>
  first === undefined || second === undefined ? undefined : first + second;

/** Swelling per moisture of the whole cloth: the resin holds the same moisture in both layers. */
function perClothMoisture(name: 'warp' | 'weft', layer: Ply, W_cloth: number, working?: Working): Ply {
  const { moistureExpansion: own, resinArealMass: resin, density } = layer;
  if (own === undefined || resin === undefined || density === undefined) return layer;
  const W_m = resin / (density * layer.thickness);
  const factor = W_m / W_cloth;
  const shared = { beta1: own.beta1 * factor, beta2: own.beta2 * factor };
  working?.part(name).step(name === 'warp' ? 'warpMoisture' : 'weftMoisture', {
    ...own,
    W_m,
    W_cloth,
    [`beta_${name}1`]: shared.beta1,
    [`beta_${name}2`]: shared.beta2,
  });
  return { ...layer, moistureExpansion: shared };
}

/**
 * The cloth of `wovenPly` with warp and weft of two fibres at one fibre fraction: their volumes add to the thickness and
 * each layer has its own constants, warp share of the thickness = warp thickness / cloth thickness.
 * @param warp, weft The mass of each as a unidirectional ply with the name and angle of the cloth, masses known.
 * @param working takes the steps down, when given; those of warp and weft are taken down where they are computed.
 * @throws as `wovenPly`.
 */
export function hybridWovenPly(warp: Ply, weft: Ply, options: WovenOptions = {}, working?: Working): Ply {
  demandWoven(options);
  const thickness = warp.thickness + weft.thickness;
  const fibreMass = sum(warp.fibreArealMass, weft.fibreArealMass);
  const resinMass = sum(warp.resinArealMass, weft.resinArealMass);
  const mass = sum(fibreMass, resinMass);
  const { name, angle, fibreVolumeFraction, voidFraction } = warp;
  const body: ClothBody = {
    name,
    angle,
    thickness,
    ...(mass !== undefined && { density: mass / thickness }),
    ...(fibreMass !== undefined && { fibreArealMass: fibreMass }),
    ...(resinMass !== undefined && { resinArealMass: resinMass }),
    ...(fibreVolumeFraction !== undefined && { fibreVolumeFraction }),
    ...(voidFraction !== undefined && { voidFraction }),
    notes: uniqueNotes([...warp.notes, ...weft.notes]),
    sources: uniqueSources(warp.sources, weft.sources),
  };
  const share = warp.thickness / thickness;
  const W_cloth = resinMass === undefined || mass === undefined ? undefined : resinMass / mass;
  if (working !== undefined) {
    reducedStiffness(warp, working.part('warp'));
    reducedStiffness(weft, working.part('weft'));
    showHybrid(warp, weft, { ...body, share, W_cloth }, working);
  }
  const inCloth = (name: 'warp' | 'weft', layer: Ply): Ply =>
    W_cloth === undefined ? layer : perClothMoisture(name, layer, W_cloth, working);
  return clothPly({ warp: inCloth('warp', warp), weft: inCloth('weft', weft), share }, body, options, working);
}
