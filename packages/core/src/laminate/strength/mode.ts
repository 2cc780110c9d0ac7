import type { Criterion } from './criterion.js';
import type { Lay } from './lay.js';
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
  warpTension: 'tension along the warp',
  warpCompression: 'compression along the warp',
  weftTension: 'tension along the weft',
  weftCompression: 'compression along the weft',
  clothShear: 'shear between warp and weft',
  matTension: 'tension of the mat',
  matCompression: 'compression of the mat',
  matShear: 'shear of the mat',
  none: 'none',
} as const;

/** A way of failing, as a key for programs; {@link FailureMode} has its words. */
export type ModeKey = keyof typeof words;

/** A way of failing; `fractureAngle` only with Puck between fibres, degrees from the ply's normal plane, 0 upright. */
export interface FailureMode {
  readonly modeKey: ModeKey;
  /** In words. */
  readonly mode: string;
  readonly fractureAngle?: number;
}

export const noMode: FailureMode = { modeKey: 'none', mode: words.none };

const matrixModes: ReadonlySet<ModeKey> = new Set([
  'transverseTension',
  'transverseCompression',
  'shear',
  'matrixTension',
  'matrixCompression',
  'puckA',
  'puckB',
  'puckC',
  'clothShear',
]);

/** Whether the fibres break, rather than the matrix or its bond to them; a mat breaks as a whole, whatever breaks it. */
export const breaksFibres = (key: ModeKey): boolean => !matrixModes.has(key);

/** At a tie the fibres are held to be whole. */
const clearly = 1 + 1e-9;

/**
 * The way in which a stress on the failure surface breaks the ply, by the criterion's own modes. Tsai-Hill and Tsai-Wu have
 * none: for them the stress that uses most of its own strength is named.
 *
 * A cloth breaks along its warp or its weft, or its matrix shears; a mat breaks in tension, compression or shear.
 *
 * @param stress σ1, σ2, τ12 at failure, Pa
 */
export function modeAt(
  criterion: Criterion,
  stress: readonly [number, number, number],
  c: StrengthConstants,
  lay: Lay = 'unidirectional',
): FailureMode {
  const [s1, s2, s12] = stress;
  if (lay !== 'unidirectional') {
    const modeKey = (lay === 'cloth' ? clothMode : matMode)(criterion, s1, s2, s12, c);
    return combines(criterion) ? { modeKey, mode: `combined stress, mostly ${words[modeKey]}` } : named(modeKey);
  }
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

/** Whether the criterion joins all stresses in one number and tells no modes. */
const combines = (criterion: Criterion): boolean => criterion === 'tsaiHill' || criterion === 'tsaiWu';

const named = (modeKey: ModeKey): FailureMode => ({ modeKey, mode: words[modeKey] });

/** What each stress uses of the strength against it. */
function shares(s1: number, s2: number, s12: number, { Xt, Xc, Yt, Yc, S }: StrengthConstants) {
  return {
    along: s1 >= 0 ? s1 / Xt : -s1 / Xc,
    across: s2 >= 0 ? s2 / Yt : -s2 / Yc,
    shear: Math.abs(s12) / S,
  };
}

function largest(s1: number, s2: number, s12: number, c: StrengthConstants): ModeKey {
  const { along, across, shear } = shares(s1, s2, s12, c);
  if (along > clearly * Math.max(across, shear)) return s1 >= 0 ? 'fibreTension' : 'fibreCompression';
  if (shear > across) return 'shear';
  return s2 >= 0 ? 'transverseTension' : 'transverseCompression';
}

/** How near Hashin's two ways of breaking are, 1 when they break, and what shear has in each. */
function hashinEfforts(s1: number, s2: number, s12: number, c: StrengthConstants) {
  const shear = (s12 / c.S) ** 2;
  const inFibre = s1 >= 0 ? c.alpha * shear : 0;
  const fibre = (s1 >= 0 ? (s1 / c.Xt) ** 2 : (s1 / c.Xc) ** 2) + inFibre;
  const matrix =
    s2 >= 0 ? (s2 / c.Yt) ** 2 + shear : (s2 / (2 * c.ST)) ** 2 + ((c.Yc / (2 * c.ST)) ** 2 - 1) * (s2 / c.Yc) + shear;
  return { fibre, matrix, inFibre, inMatrix: shear };
}

function hashinMode(s1: number, s2: number, s12: number, c: StrengthConstants): ModeKey {
  const { fibre, matrix } = hashinEfforts(s1, s2, s12, c);
  if (fibre > clearly * matrix) return s1 >= 0 ? 'fibreTension' : 'fibreCompression';
  return s2 >= 0 ? 'matrixTension' : 'matrixCompression';
}

const warp = (s1: number): ModeKey => (s1 >= 0 ? 'warpTension' : 'warpCompression');
const weft = (s2: number): ModeKey => (s2 >= 0 ? 'weftTension' : 'weftCompression');

/** Warp or weft, unless shear has the greater share; the two are alike. */
function clothMode(criterion: Criterion, s1: number, s2: number, s12: number, c: StrengthConstants): ModeKey {
  if (criterion === 'hashin') {
    const { fibre, matrix, inFibre, inMatrix } = hashinEfforts(s1, s2, s12, c);
    const [key, whole, shear] =
      fibre > clearly * matrix ? ([warp(s1), fibre, inFibre] as const) : ([weft(s2), matrix, inMatrix] as const);
    return whole - shear > clearly * shear ? key : 'clothShear';
  }
  const [e1, e2] = direct(criterion, s1, s2, c);
  const { along, across, shear } = shares(e1, e2, s12, c);
  if (Math.max(along, across) <= clearly * shear) return 'clothShear';
  return along > across ? warp(e1) : weft(e2);
}

function matMode(criterion: Criterion, s1: number, s2: number, s12: number, c: StrengthConstants): ModeKey {
  const [e1, e2] = direct(criterion, s1, s2, c);
  const { along, across, shear } = shares(e1, e2, s12, c);
  if (Math.max(along, across) <= clearly * shear) return 'matShear';
  return (along > across ? e1 : e2) >= 0 ? 'matTension' : 'matCompression';
}

/** What the criterion measures against the strengths along and across: stress, or strain times modulus. */
const direct = (criterion: Criterion, s1: number, s2: number, c: StrengthConstants): readonly [number, number] =>
  criterion === 'maxStrain' ? [s1 - c.nu12 * s2, s2 - c.nu21 * s1] : [s1, s2];

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
