import type { Note, SourceKey } from '../provenance/index.js';
import type { Working } from '../working/index.js';
import { shown } from './check.js';
import { type CrimpFactors, crimpFactorFromGeometry } from './crimp-factor.js';
import { yarnsPerRepeat } from './crimp-geometry.js';
import type { Weave } from './types.js';
import type { YarnConstants } from './undulated-yarn.js';

/** What crimp leaves of the moduli along warp and weft (common practice, no source). */
const usualCrimpFactors: Record<Weave, number> = { plain: 0.9, twill: 0.93, satin: 0.97 };

/** How a cloth is woven. */
export interface WovenOptions {
  /** Share of the fibre mass in the warp, over 0 to under 1; 0.5 when not given. */
  readonly warpShare?: number;
  readonly weave?: Weave;
  /** Over 0.5 to 1; when left out, from the geometry where a yarn count is given, else from the weave (plain when not given). */
  readonly crimpFactor?: number;
  /** Warp yarns per width, weft yarns per length (as many when not given), 1/m; yarns in a repeat of the weave. */
  readonly yarnCount?: number;
  readonly weftCount?: number;
  readonly harness?: number;
}

/** A cloth as far as its crimp needs it. */
interface CrimpedCloth {
  readonly name: string;
  /** m */
  readonly thickness: number;
  readonly warp: YarnConstants;
  readonly weft: YarnConstants;
  /** Share of the thickness in the warp. */
  readonly share: number;
}

/** Factors on the cloth's moduli along warp and weft, with what is to be said about them. */
export interface CrimpChoice {
  readonly k1: number;
  readonly k2: number;
  /** The factor given, that of the weave's geometry, or the usual one of its weave. */
  readonly basis: 'given' | 'geometry' | 'usual';
  /** Where the geometry decides: the ways of the yarns, and the other limit of the factors. */
  readonly geometry?: CrimpFactors;
  readonly notes: readonly Note[];
  readonly sources: readonly SourceKey[];
}

/**
 * The crimp factors of a cloth: the one given; else those of the weave's geometry where a yarn count is given; else the
 * usual one of its weave, with a note.
 * @throws as `crimpFactorFromGeometry`; contradiction a harness that is not of the weave.
 */
export function chooseCrimp(
  { name, thickness, warp, weft, share }: CrimpedCloth,
  options: WovenOptions,
  working?: Working,
): CrimpChoice {
  const { crimpFactor, yarnCount, weave } = options;
  if (options.harness !== undefined) yarnsPerRepeat(weave, options.harness);
  const assumed = (text: string): Note[] => [{ level: 'assumption', text: `${name}: ${text}` }];
  if (crimpFactor !== undefined) {
    const unused = `crimp factor ${shown(crimpFactor)} as given; the yarn count is not used`;
    const notes = yarnCount === undefined ? [] : assumed(unused);
    return { k1: crimpFactor, k2: crimpFactor, basis: 'given', notes, sources: [] };
  }
  if (yarnCount === undefined) {
    const k = usualCrimpFactors[weave ?? 'plain'];
    const text = `crimp factor ${shown(k)} taken for a ${weave ?? 'plain'} weave (common practice, no source)`;
    return { k1: k, k2: k, basis: 'usual', notes: assumed(text), sources: [] };
  }
  const geometry = { ...options, yarnCount, clothThickness: thickness, warpShare: share };
  const found = crimpFactorFromGeometry({ ...geometry, name, ud: warp, weftUd: weft }, working);
  const angles = [found.warp.angle, found.weft.angle].map((angle) => shown(Number(angle.toPrecision(3)))).join(' and ');
  const factors = [found.E1, found.E2].map((factor) => factor.toFixed(3)).join(' and ');
  const text = `crimp factors ${factors} along warp and weft, from yarns tilted by up to ${angles} degrees`;
  return {
    k1: found.E1,
    k2: found.E2,
    basis: 'geometry',
    geometry: found,
    notes: [...assumed(text), ...found.notes],
    sources: found.sources,
  };
}
