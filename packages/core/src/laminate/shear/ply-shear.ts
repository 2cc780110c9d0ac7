import type { Ply } from '../../material/index.js';
import { sinCosDegrees } from '../../numeric/index.js';
import type { Note } from '../../provenance/index.js';
import { isCloth, isIsotropic } from '../fibre-directions.js';

/** Shear moduli of a ply through its thickness, Pa, with what was assumed about them. */
export interface PlyShear {
  readonly G13: number;
  readonly G23: number;
  readonly notes: readonly Note[];
}

/** Poisson ratio across the fibres where a unidirectional ply does not give it. */
const assumedNu23 = 0.4;

/**
 * Shear moduli of a ply through its thickness, Pa, assumed where the ply does not give them.
 *
 * G13 = G12. G23 = E2 / (2 (1 + nu23)) for a unidirectional ply, with nu23 = 0.4 where that is not given either (common
 * practice, no source); G23 = G12 for a cloth, a mat and a core, whose E2 says nothing about the plane across.
 */
export function plyShear(ply: Ply): PlyShear {
  const unidirectional = !ply.core && !isIsotropic(ply) && !isCloth(ply);
  const nu23 = ply.nu23 ?? assumedNu23;
  const G13 = ply.G13 ?? ply.G12;
  const G23 = ply.G23 ?? (unidirectional ? ply.E2 / (2 * (1 + nu23)) : ply.G12);
  const across = unidirectional ? `E2/(2 (1 + ${ply.nu23 === undefined ? 'an assumed ' : ''}${nu23}))` : 'G12';
  const assumed = [
    ...(ply.G13 === undefined ? ['G13 = G12'] : []),
    ...(ply.G23 === undefined ? [`G23 = ${across}`] : []),
  ];
  return {
    G13,
    G23,
    notes:
      assumed.length === 0
        ? []
        : [{ level: 'assumption', text: `${ply.name}: shear through the thickness with ${assumed.join(' and ')}.` }],
  };
}

/**
 * Shear stiffness of a ply through its thickness in laminate axes, Pa: `[Gxz, Gxyz, Gyz]`, the coupling in the middle.
 *
 * Gxz = c² G13 + s² G23, Gyz = s² G13 + c² G23, Gxyz = cs (G13 - G23).
 *
 * @source Whitney 1973
 */
export function shearStiffnessOf(ply: Ply): readonly [Gxz: number, Gxyz: number, Gyz: number] {
  const { G13, G23 } = plyShear(ply);
  const { sin: s, cos: c } = sinCosDegrees(ply.angle);
  return [c * c * G13 + s * s * G23, c * s * (G13 - G23), s * s * G13 + c * c * G23];
}
