import type { Ply } from '../../material/index.js';
import type { Note } from '../../provenance/index.js';
import type { Laminate, Vector3 } from '../types.js';
import type { Criterion } from './criterion.js';
import type { FaceStress } from './face-stress.js';
import { layOf } from './lay.js';

/** Criteria whose limits are not the same along 1 and along 2, even where the strengths are. */
const unlike: ReadonlySet<Criterion> = new Set(['hashin', 'tsaiHill']);

/** Whether it matters for a laminate which of the two yarns of a cloth is called the warp. */
export const dependsOnNaming = ({ plies }: Laminate, criterion: Criterion): boolean =>
  unlike.has(criterion) && plies.some((ply) => ply.strengths !== undefined && layOf(ply) === 'cloth');

/** The same laminate with the warp of every cloth called its weft: turned by a right angle, constants of 1 and 2 exchanged. */
export const renamed = (laminate: Laminate): Laminate => ({
  ...laminate,
  plies: laminate.plies.map((ply) => (layOf(ply) === 'cloth' ? exchanged(ply) : ply)),
});

function exchanged(ply: Ply): Ply {
  const { angle, E1, E2, nu12, strengths, expansion, moistureExpansion } = ply;
  return {
    ...ply,
    angle: angle + 90,
    E1: E2,
    E2: E1,
    nu12: (nu12 * E2) / E1,
    ...(strengths && {
      strengths: { Xt: strengths.Yt, Xc: strengths.Yc, Yt: strengths.Xt, Yc: strengths.Xc, S: strengths.S },
    }),
    ...(expansion && { expansion: { alpha1: expansion.alpha2, alpha2: expansion.alpha1 } }),
    ...(moistureExpansion && {
      moistureExpansion: { beta1: moistureExpansion.beta2, beta2: moistureExpansion.beta1 },
    }),
  };
}

/** The stress of the laminate in the axes of the {@link renamed} one. */
export function inRenamedAxes({ plies }: Laminate, stress: readonly FaceStress[]): FaceStress[] {
  const turned = ([s1, s2, s12]: Vector3): Vector3 => [s2, s1, 0 - s12];
  return stress.map((one, k) => {
    const ply = plies[k];
    if (ply === undefined || layOf(ply) !== 'cloth') return one;
    return { top: turned(one.top), bottom: turned(one.bottom) };
  });
}

/** Below this relative difference of two ratios no reader need know. */
const worthTelling = 0.01;

/** A warning where the two namings of the yarns give two ratios. */
export function namingNotes(
  criterion: Criterion,
  what: 'first' | 'last',
  ratio: number | undefined,
  other: number | undefined,
): Note[] {
  if (ratio === undefined || other === undefined || Math.abs(other - ratio) <= worthTelling * ratio) return [];
  const name = criterion === 'hashin' ? 'Hashin' : 'Tsai-Hill';
  const shown = (value: number): string => String(Number(value.toPrecision(4)));
  return [
    {
      level: 'warning',
      text: `${name} is not alike along warp and weft of a cloth: ${what}-ply failure at ${shown(ratio)} times the load would be at ${shown(other)} times with the names of warp and weft exchanged.`,
    },
  ];
}
