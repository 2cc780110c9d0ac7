import { fail } from '../problem/index.js';
import type { Note } from '../provenance/index.js';
import type { Working } from '../working/index.js';
import { between, demand, positive, shown, within } from './check.js';
import type { Weave } from './types.js';

/** A weave as it lies in the cured cloth; lengths in m. */
export interface WeaveGeometry {
  /** When not given, what the harness says; plain, the most crimped, without that. */
  readonly weave?: Weave;
  /** Yarns in one repeat, in which a yarn changes sides twice: 2 plain, 3 or more twill, 4 or more satin. */
  readonly harness?: number;
  /** Cured thickness of the cloth; or that of a yarn, half of it. */
  readonly clothThickness?: number;
  readonly yarnThickness?: number;
  /** Warp yarns per width, 1/m; or the width of yarns that lie side by side, m. */
  readonly yarnCount?: number;
  readonly yarnWidth?: number;
  /** Weft yarns per length, 1/m; as many as warp yarns when not given. */
  readonly weftCount?: number;
  /** Share of the cloth's thickness in the warp, over 0 to under 1; 0.5 when not given. */
  readonly warpShare?: number;
}

/** The way of a yarn through the cloth. */
export interface YarnPath {
  /** Share of its length on which it changes sides, 0 to 1; the rest is straight. */
  readonly undulatedShare: number;
  /** Length of one change of sides, and the height it covers, m. */
  readonly length: number;
  readonly rise: number;
  /** Largest slope, and as an angle in degrees. */
  readonly slope: number;
  readonly angle: number;
  /** Length of yarn over length of cloth, less 1. */
  readonly crimp: number;
}

const usualHarness: Record<Weave, number> = { plain: 2, twill: 4, satin: 5 };
const leastHarness: Record<Weave, number> = { plain: 2, twill: 3, satin: 4 };

/**
 * Yarns in one repeat: the number given, else the usual one of the weave (plain when that is not given either).
 * @throws out-of-range below 2 or above 24; contradiction no whole number, or one that the weave named cannot have.
 */
export function yarnsPerRepeat(weave: Weave | undefined, harness: number = usualHarness[weave ?? 'plain']): number {
  demand(within('harness', harness, 2, 24));
  const least = weave === undefined ? 2 : leastHarness[weave];
  if (!Number.isInteger(harness) || harness < least || (weave === 'plain' && harness !== 2)) {
    const allowed = weave === 'plain' ? '2' : `a whole number of ${least} or more`;
    fail({
      code: 'contradiction',
      message: `harness = ${shown(harness)} is no ${weave === undefined ? '' : `${weave} `}weave`,
      allowed,
    });
  }
  return harness;
}

/** The one of two ways to give a quantity that was used. */
function oneOf(given: Readonly<Record<string, number | undefined>>): [name: string, value: number] {
  const found = Object.entries(given).filter((entry): entry is [string, number] => entry[1] !== undefined);
  const names = Object.keys(given).join(' or ');
  const [only] = found;
  if (only === undefined) return fail({ code: 'missing-key', message: `the weave's geometry needs ${names}` });
  if (found.length > 1) {
    const both = found.map(([name, value]) => `${name} = ${shown(value)}`).join(' and ');
    fail({ code: 'contradiction', message: `${both} are both given`, allowed: names });
  }
  return only;
}

/** Points of the mean over half a wave; the integrand is smooth and periodic, so the sum converges at once. */
const points = 64;

/** Length of a sine-shaped yarn of largest slope q over its projection, less 1: the mean of sqrt(1 + q^2 cos^2) - 1. */
export function surplusLength(slope: number): number {
  let sum = 0;
  for (let i = 0; i < points; i++) {
    const tangent = slope * Math.cos((Math.PI * (i + 0.5)) / points);
    sum += (tangent * tangent) / (1 + Math.sqrt(1 + tangent * tangent));
  }
  return sum / points;
}

/** A way by its symbols. */
export const wayAs = ({ undulatedShare, length, rise, slope, angle }: YarnPath): Record<string, number> => ({
  u_y: undulatedShare,
  l_y: length,
  r_y: rise,
  q_y: slope,
  theta_y: angle,
});

function yarnPath(length: number, rise: number, harness: number): YarnPath {
  const slope = (Math.PI * rise) / (2 * length);
  const undulatedShare = 2 / harness;
  return {
    undulatedShare,
    length,
    rise,
    slope,
    angle: (Math.atan(slope) * 180) / Math.PI,
    crimp: undulatedShare * surplusLength(slope),
  };
}

/**
 * Ways of warp and weft through a cloth whose two yarn systems fill its thickness: a yarn changes sides between two
 * neighbouring cross yarns, along half a sine wave as long as their spacing, and so passes the thickness of one cross yarn;
 * its largest slope is pi/2 times rise over length. It does so twice in `harness` yarns and is straight over the floats.
 * @param geometry m and 1/m; lengths and counts more than 0.
 * @param working takes the steps down, when given.
 * @returns The two ways, with a note for whatever was assumed about the weave.
 * @throws missing-key, contradiction when thickness or spacing is given in no way or in two, or the harness is not of the
 * weave; out-of-range for lengths and counts that are not positive.
 * @source Ishikawa & Chou 1982, with the undulation as long as the yarn spacing (recalled, not re-read).
 */
export function weavePaths(
  geometry: WeaveGeometry,
  name = 'cloth',
  working?: Working,
): { readonly warp: YarnPath; readonly weft: YarnPath; readonly notes: readonly Note[] } {
  const { weave, clothThickness, yarnThickness, yarnCount, yarnWidth, weftCount, warpShare = 0.5 } = geometry;
  const harness = yarnsPerRepeat(weave, geometry.harness);
  const [thicknessName, thickness] = oneOf({ clothThickness, yarnThickness });
  const [spacingName, spacing] = oneOf({ yarnCount, yarnWidth });
  demand(
    positive(thicknessName, thickness, 'm'),
    positive(spacingName, spacing, spacingName === 'yarnCount' ? '1/m' : 'm'),
    weftCount === undefined ? undefined : positive('weftCount', weftCount, '1/m'),
    between('warp share', warpShare, 0, 1),
  );
  const cloth = thicknessName === 'clothThickness' ? thickness : 2 * thickness;
  const warpSpacing = spacingName === 'yarnCount' ? 1 / spacing : spacing;
  const weftSpacing = weftCount === undefined ? warpSpacing : 1 / weftCount;
  const notes: Note[] = [];
  const assume = (text: string) => notes.push({ level: 'assumption', text: `${name}: ${text}` });
  if (geometry.harness === undefined && weave !== 'plain') {
    assume(`${weave ?? 'plain'} weave with ${harness} yarns in a repeat assumed for the crimp`);
  }
  const warp = yarnPath(weftSpacing, (1 - warpShare) * cloth, harness);
  const weft = yarnPath(warpSpacing, warpShare * cloth, harness);
  const place = { t_k: cloth, s_warp: warpShare, n_repeat: harness };
  working?.part('warp').step('wayOfWarp', { ...place, n_weft: 1 / weftSpacing, ...wayAs(warp) });
  working?.part('weft').step('wayOfWeft', { ...place, n_warp: 1 / warpSpacing, ...wayAs(weft) });
  return { warp, weft, notes };
}
