import type { Criterion } from './criterion.js';
import type { StrengthConstants } from './strength-constants.js';

/** What each way of failing is called. */
const words = {
  fibreTension: 'tension along the fibre',
  fibreCompression: 'compression along the fibre',
  transverseTension: 'tension across the fibre',
  transverseCompression: 'compression across the fibre',
  shear: 'shear along the fibre',
  matrixTension: 'matrix in tension',
  matrixCompression: 'matrix in compression',
  puckA: 'between fibres, mode A (tension, crack upright)',
  puckB: 'between fibres, mode B (shear under compression, crack upright)',
  puckC: 'between fibres, mode C (compression, crack oblique)',
  none: 'none',
} as const;

export type ModeKey = keyof typeof words;

/** A way of failing; `fractureAngle` only with Puck between fibres, degrees from the ply's normal plane, 0 upright. */
export interface FailureMode {
  readonly modeKey: ModeKey;
  /** In words. */
  readonly mode: string;
  readonly fractureAngle?: number;
}

export const noMode: FailureMode = { modeKey: 'none', mode: words.none };

/** Whether the fibres break, rather than the matrix or its bond to them. */
export const breaksFibres = (key: ModeKey): boolean => key === 'fibreTension' || key === 'fibreCompression';

/** At a tie the fibres are held to be whole. */
const clearly = 1 + 1e-9;

/**
 * The way in which a stress on the failure surface breaks the ply, by the criterion's own modes. Tsai-Hill and Tsai-Wu have
 * none: for them the stress that uses most of its own strength is named.
 *
 * @param stress σ1, σ2, τ12 at failure, Pa
 */
export function modeAt(
  criterion: Criterion,
  stress: readonly [number, number, number],
  c: StrengthConstants,
): FailureMode {
  const [s1, s2, s12] = stress;
  switch (criterion) {
    case 'maxStress':
      return named(largest(s1, s2, s12, c));
    case 'maxStrain':
      return named(largest(s1 - c.nu12 * s2, s2 - c.nu21 * s1, s12, c));
    case 'hashin':
      return named(hashinMode(s1, s2, s12, c));
    case 'puck':
      return puckMode(s1, s2, s12, c);
    case 'tsaiHill':
    case 'tsaiWu': {
      const modeKey = largest(s1, s2, s12, c);
      return { modeKey, mode: `combined stress, mostly ${words[modeKey]}` };
    }
  }
}

const named = (modeKey: ModeKey): FailureMode => ({ modeKey, mode: words[modeKey] });

function largest(s1: number, s2: number, s12: number, { Xt, Xc, Yt, Yc, S }: StrengthConstants): ModeKey {
  const along = s1 >= 0 ? s1 / Xt : -s1 / Xc;
  const across = s2 >= 0 ? s2 / Yt : -s2 / Yc;
  const shear = Math.abs(s12) / S;
  if (along > clearly * Math.max(across, shear)) return s1 >= 0 ? 'fibreTension' : 'fibreCompression';
  if (shear > across) return 'shear';
  return s2 >= 0 ? 'transverseTension' : 'transverseCompression';
}

function hashinMode(s1: number, s2: number, s12: number, c: StrengthConstants): ModeKey {
  const shear = (s12 / c.S) ** 2;
  const fibre = s1 >= 0 ? (s1 / c.Xt) ** 2 + c.alpha * shear : (s1 / c.Xc) ** 2;
  const matrix =
    s2 >= 0 ? (s2 / c.Yt) ** 2 + shear : (s2 / (2 * c.ST)) ** 2 + ((c.Yc / (2 * c.ST)) ** 2 - 1) * (s2 / c.Yc) + shear;
  if (fibre > clearly * matrix) return s1 >= 0 ? 'fibreTension' : 'fibreCompression';
  return s2 >= 0 ? 'matrixTension' : 'matrixCompression';
}

function puckMode(s1: number, s2: number, s12: number, c: StrengthConstants): FailureMode {
  const { S, Yt, Yc, pPlus, pMinus, pAcross, RA } = c;
  const fibre = s1 >= 0 ? s1 / c.Xt : -s1 / c.Xc;
  const upright = s2 >= 0 || -s2 * c.shearAtJoint <= RA * Math.abs(s12);
  const between = (): number => {
    if (s2 >= 0) return Math.hypot(s12 / S, (1 - (pPlus * Yt) / S) * (s2 / Yt)) + (pPlus * s2) / S;
    if (upright) return (Math.hypot(s12, pMinus * s2) + pMinus * s2) / S;
    const k = 2 * (1 + pAcross) * S;
    return (s12 / k) * (s12 / -s2) * (Yc / k) - s2 / Yc;
  };
  if (fibre > clearly * between()) return named(s1 >= 0 ? 'fibreTension' : 'fibreCompression');
  if (upright) return { ...named(s2 >= 0 ? 'puckA' : 'puckB'), fractureAngle: 0 };
  const cosine = Math.sqrt(Math.min(1, RA / -s2));
  return { ...named('puckC'), fractureAngle: (Math.acos(cosine) * 180) / Math.PI };
}
