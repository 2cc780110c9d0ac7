import { fail } from '../../problem/index.js';
import { type BridgingCurve, inMillimetres } from '../../stitch/index.js';
import type { BridgingRow } from '../types.js';
import { type Firmer, firmAgain, firmStretches } from './firm-again.js';

/** A row of penetrations as a spring that never recovers: N and m, of the whole row. */
export interface RowLaw {
  readonly opening: Float64Array;
  readonly force: Float64Array;
  /** Area under the curve up to each point, J. */
  readonly area: Float64Array;
  /** Opening up to which the row is elastic: where force over opening is greatest. */
  readonly firm: number;
  /** Force over opening there, N/m. */
  readonly stiffness: number;
  /** Greatest slope of the elastic part, N/m. */
  readonly steepest: number;
  /** True when the elastic part is one straight line. */
  readonly straight: boolean;
  /** Opening beyond which the greatest force is past. */
  readonly peak: number;
  /** Opening beyond which there is no force. */
  readonly end: number;
  /** Stretches past `firm` in which force over opening is above what it has been down to. */
  readonly firmer: readonly Firmer[];
}

const rounding = 1e-9;

/** Share of the longest opening within which a force that is there from the start is reached. */
const atOnce = 1e-4;

/**
 * Spring of a row, force of one penetration times their number.
 *
 * Elastic along its curve up to where F/w is greatest, at once for a curve without a toe; from there damaged: with m the largest opening so far, force up
 * to m is (F(m)/m) (w F/w at its greatest)⁻¹ of the elastic one, which goes on as a straight line. Where F/w rises again that would give energy back:
 * there, until F/w is down to its least so far, the row follows its curve both ways, and below unloads as from where F/w was least. A force at zero
 * opening is reached within 1e-4 of the longest opening.
 *
 * @returns undefined for a row without force
 * @throws out-of-range a curve that is not one; not-admissible a sudden drop while a curve stiffens again that does not end it
 */
export function rowLaw({ curve, penetrations }: BridgingRow, name: string): RowLaw | undefined {
  checkCurve(curve.opening, curve.force, name);
  const { opening, force } = fromNothing(curve, penetrations);
  const area = new Float64Array(opening.length);
  let [peak, firm, stiffness] = [0, 0, 0];
  for (let i = 1; i < opening.length; i++) {
    const w = at(opening, i);
    const F = at(force, i);
    area[i] = at(area, i - 1) + ((w - at(opening, i - 1)) * (F + at(force, i - 1))) / 2;
    if (F >= at(force, peak)) peak = i;
    if (F > stiffness * (1 + rounding) * w) [firm, stiffness] = [i, F / w];
  }
  if (stiffness === 0) return undefined;
  let steepest = stiffness;
  for (let i = 1; i <= firm; i++) {
    steepest = Math.max(steepest, (at(force, i) - at(force, i - 1)) / (at(opening, i) - at(opening, i - 1)));
  }
  const end = at(opening, opening.length - 1);
  return {
    opening,
    force,
    area,
    firm: at(opening, firm),
    stiffness,
    steepest,
    straight: firm === 1,
    peak: at(opening, peak),
    end,
    firmer: firmStretches(opening, force, firm, (place) => dropsInside(name, place)),
  };
}

/** The curve with its first point at zero force. */
function fromNothing(curve: BridgingCurve, penetrations: number): { opening: Float64Array; force: Float64Array } {
  const opening = [...curve.opening];
  const force = curve.force.map((one) => one * penetrations);
  if (opening[1] === 0 && force[0] === 0) {
    opening.shift();
    force.shift();
  }
  if ((force[0] ?? 0) > 0) {
    opening[0] = Math.min(atOnce * (opening.at(-1) ?? 0), (opening[1] ?? 0) / 2);
    opening.unshift(0);
    force.unshift(0);
  }
  return { opening: Float64Array.from(opening), force: Float64Array.from(force) };
}

function at(list: Float64Array, i: number): number {
  return list[i] as number;
}

/** The last point at or before an opening, counted so that a drop belongs to what is before it. */
function before(opening: Float64Array, w: number): number {
  let low = 0;
  let high = opening.length - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (at(opening, middle) < w) low = middle;
    else high = middle;
  }
  return low;
}

/** Slope of the curve at an opening past 0, N/m: of the straight piece that ends there or goes on beyond. */
function slopeOf({ opening, force, end }: RowLaw, w: number): number {
  if (w > end) return 0;
  const i = before(opening, w);
  return (at(force, i + 1) - at(force, i)) / (at(opening, i + 1) - at(opening, i));
}

/** Force on the curve, N. */
function forceOf(law: RowLaw, w: number): number {
  if (w > law.end || w <= 0) return 0;
  const { opening, force } = law;
  const i = before(opening, w);
  const share = (w - at(opening, i)) / (at(opening, i + 1) - at(opening, i));
  return at(force, i) + share * (at(force, i + 1) - at(force, i));
}

/** Share of the elastic force that is left when the largest opening has been m. */
export function leftAt(law: RowLaw, m: number): number {
  const r = firmAgain(law.firmer, m);
  return r > law.firm ? forceOf(law, r) / (r * law.stiffness) : 1;
}

/** Force at an opening when the largest so far has been m, N: on the curve beyond m. */
export function forceAfter(law: RowLaw, w: number, m: number): number {
  if (w <= 0 || m > law.end) return 0;
  if (w > firmAgain(law.firmer, m)) return forceOf(law, w);
  return leftAt(law, m) * (w > law.firm ? law.stiffness * w : forceOf(law, w));
}

/** Slope of that force, N/m; at m itself that of the curve. */
export function slopeAfter(law: RowLaw, w: number, m: number): number {
  if (w <= 0) return 0;
  if (w >= firmAgain(law.firmer, m)) return slopeOf(law, w);
  return leftAt(law, m) * (w > law.firm ? law.stiffness : slopeOf(law, w));
}

/** Area under the curve up to an opening, J. */
function areaAt({ opening, force, area, end }: RowLaw, w: number): number {
  if (w > end) return at(area, area.length - 1);
  const i = before(opening, w);
  const step = w - at(opening, i);
  const slope = (at(force, i + 1) - at(force, i)) / (at(opening, i + 1) - at(opening, i));
  return at(area, i) + step * (at(force, i) + (slope * step) / 2);
}

/** Energy that the row gives back from an opening w, the largest so far having been m, J. */
export function storedAfter(law: RowLaw, w: number, m: number): number {
  if (w <= 0 || m > law.end) return 0;
  const r = firmAgain(law.firmer, m);
  if (w > r && r < m) return storedAfter(law, r, r) + areaAt(law, w) - areaAt(law, r);
  const beyond = Math.max(0, w * w - law.firm * law.firm);
  return leftAt(law, r) * (areaAt(law, Math.min(w, law.firm)) + (law.stiffness * beyond) / 2);
}

/** Energy lost for good when the largest opening has been m, J: the area under the curve less what it then gives back. */
export function lostAt(law: RowLaw, m: number): number {
  return m > law.firm ? areaAt(law, m) - storedAfter(law, m, m) : 0;
}

/** Slope of a line through the curve at an opening w beyond m that is nowhere less steep than the way from there to any other point of the row, N/m. */
export function steepestFrom(law: RowLaw, w: number, m: number): number {
  const F = forceOf(law, w);
  const r = firmAgain(law.firmer, m);
  let most = F / w;
  for (let i = 0; i < law.opening.length; i++) {
    const [wi, Fi] = [at(law.opening, i), at(law.force, i)];
    if (wi >= r && wi !== w) most = Math.max(most, (Fi - F) / (wi - w));
  }
  return Math.max(most, r < w ? (F - forceAfter(law, r, r)) / (w - r) : 0);
}

function checkCurve(opening: readonly number[], force: readonly number[], name: string): void {
  const wrong = (what: string): never =>
    fail({
      code: 'out-of-range',
      message: `curve of ${name}: ${what}`,
      allowed: 'two points or more from opening 0, openings that never fall, forces not below 0',
    });
  if (opening.length !== force.length) wrong(`${opening.length} openings for ${force.length} forces`);
  if (opening.length < 2) wrong(`points = ${opening.length}, must be at least 2`);
  if (opening[0] !== 0) wrong(`starts at opening ${inMillimetres(opening[0] ?? 0)}, must be 0`);
  if (!((opening.at(-1) ?? 0) > 0)) wrong('longest opening = 0 mm, must be above 0');
  opening.forEach((value, i) => {
    const last = opening[i - 1] ?? 0;
    const F = force[i] ?? 0;
    if (!(value >= last && value < 1e6))
      wrong(`opening = ${inMillimetres(value)} after ${inMillimetres(last)}, must not fall`);
    if (!(F >= 0 && F < 1e15)) wrong(`force = ${F} N, must be finite and not below 0`);
  });
}

function dropsInside(name: string, opening: number): never {
  fail({
    code: 'not-admissible',
    message: `curve of ${name} drops at an opening of ${inMillimetres(opening)}, where it has become stiffer again, and is not down to what it was: unloading would give energy back`,
    allowed: 'past the steepest line from the origin, drops that take force over opening below all before',
    hint: 'smooth the curve before the drop, or draw the drop as a slope',
  });
}
