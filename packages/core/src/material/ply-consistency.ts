import { choice } from '../problem/index.js';
import { type Note, type SourceKey, uniqueSources } from '../provenance/index.js';
import type { Working } from '../working/index.js';
import { between, demand, positive, shown } from './check.js';
import { showAverage } from './cloth-steps.js';
import { halpinTsai, ruleOfMixtures } from './mixing-rules.js';
import { inPlaneOfConstituents, unidirectionalPly } from './ply-from-constituents.js';
import {
  constantsFromStiffness,
  crossPlyStiffness,
  type InPlaneConstants,
  reducedStiffness,
} from './reduced-stiffness.js';
import type { Fibre, Ply, Resin } from './types.js';

/** What a listed ply claims to be made of. */
export interface ClaimedConstituents {
  readonly fibre: Fibre;
  readonly resin: Resin;
  readonly fibreVolumeFraction: number;
  /** `woven`: as two layers at 0 and 90 degrees, before crimp; `ud` when not given. */
  readonly architecture?: 'ud' | 'woven';
  /** Woven only: share of the fibre in the warp, over 0 to under 1; 0.5 when not given. */
  readonly warpShare?: number;
}

/** A listed constant against the one its constituents give, Pa; `departure` = expected/given - 1. */
export interface ListedAgainstExpected {
  readonly given: number;
  readonly expected: number;
  readonly departure: number;
}

/** How a listed ply fits its constituents. */
export interface PlyConsistency {
  readonly E1: ListedAgainstExpected;
  /** For information: these depend on the model as much as on the data. */
  readonly E2: ListedAgainstExpected;
  readonly G12: ListedAgainstExpected;
  /** False when E1 departs by more than 8 %. */
  readonly consistent: boolean;
  /** The fibre fraction that would give the listed E1, 0 to 1; absent when none would. */
  readonly fibreVolumeFractionNeeded?: number;
  /** The fibre modulus that would, Pa; for a unidirectional ply only. */
  readonly fibreModulusNeeded?: number;
  readonly notes: readonly Note[];
  readonly sources: readonly SourceKey[];
}

/** Departure of E1 above which a listed row is doubted (common practice, no source). */
const toleratedDeparture = 0.08;

/** The closest that round fibres pack, pi/(2 sqrt 3). */
const closestPacking = Math.PI / (2 * Math.sqrt(3));

/** Modulus along the fibre, or along the warp before crimp, of a ply of that fibre fraction, Pa. */
function modulusAt({ fibre, resin, architecture, warpShare = 0.5 }: ClaimedConstituents, Vf: number): number {
  const E1 = ruleOfMixtures(fibre.E1, resin.E, Vf);
  if (architecture !== 'woven') return E1;
  const E2 = halpinTsai(fibre.E2, resin.E, Vf, 2);
  const Q = reducedStiffness({ E1, E2, G12: 1, nu12: ruleOfMixtures(fibre.nu12, resin.nu, Vf) });
  return constantsFromStiffness(crossPlyStiffness(Q, warpShare)).E1;
}

/** The fibre fraction at which the modulus is `E1`, by halving 0 to 1; undefined when it lies outside. */
function fractionFor(E1: number, claimed: ClaimedConstituents): number | undefined {
  let [low, high] = [0, 1];
  if (!(E1 >= modulusAt(claimed, low) && E1 <= modulusAt(claimed, high))) return undefined;
  for (let i = 0; i < 52; i++) {
    const middle = (low + high) / 2;
    if (modulusAt(claimed, middle) < E1) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

function expectedConstants(
  claimed: ClaimedConstituents,
  working?: Working,
): {
  constants: InPlaneConstants;
  sources: readonly SourceKey[];
} {
  const ud = unidirectionalPly({ ...claimed, arealMass: 1 });
  if (claimed.architecture !== 'woven') {
    if (working !== undefined) inPlaneOfConstituents(claimed, claimed.resin, working);
    return { constants: ud, sources: ud.sources };
  }
  const { warpShare = 0.5 } = claimed;
  demand(between('warp share', warpShare, 0, 1));
  const strands = working?.part('unidirectional');
  if (strands !== undefined) inPlaneOfConstituents(claimed, claimed.resin, strands);
  const Q = reducedStiffness(ud, strands);
  const average = crossPlyStiffness(Q, warpShare);
  const cloth = constantsFromStiffness(average);
  if (working !== undefined) showAverage(Q, Q, warpShare, average, cloth, working);
  return { constants: cloth, sources: uniqueSources(ud.sources, ['ishikawa-chou-1982']) };
}

const rounded = (value: number, digits: number): string => shown(Number(value.toPrecision(digits)));

/** The warning, with what would reproduce the row. */
function doubt(
  name: string,
  E1: ListedAgainstExpected,
  claimed: ClaimedConstituents,
  needed: number | undefined,
): Note {
  const { fibreVolumeFraction: Vf, architecture } = claimed;
  const rule = architecture === 'woven' ? 'the cross-ply of its constituents (before crimp)' : 'the rule of mixtures';
  const percent = `${E1.departure > 0 ? '+' : ''}${(E1.departure * 100).toFixed(1)} %`;
  const reproduced =
    needed === undefined
      ? 'no fibre fraction would give the listed value'
      : `the listed value needs ${rounded(needed, 3)}${needed > closestPacking ? ', more than round fibres can pack' : ''}`;
  return {
    level: 'warning',
    text: `${name}: E1 = ${rounded(E1.given / 1e9, 4)} GPa, but ${rule} gives ${rounded(E1.expected / 1e9, 4)} GPa (${percent}) at fibre volume fraction ${shown(Vf)}; ${reproduced}; use the row as one data set and do not rescale it`,
  };
}

/** Takes down how far the listed constants are from the expected ones. */
function showListed(
  architecture: 'ud' | 'woven',
  { E1, E2, G12 }: Pick<PlyConsistency, 'E1' | 'E2' | 'G12'>,
  working: Working,
): void {
  const listed = { E_listed1: E1.given, E_listed2: E2.given, G_listed12: G12.given };
  const departures = { d_E1: E1.departure, d_E2: E2.departure, d_G12: G12.departure };
  const [along, across, shear] = [E1.expected, E2.expected, G12.expected];
  if (architecture === 'ud') working.step('listedPly', { E1: along, E2: across, G12: shear, ...listed, ...departures });
  else {
    working.step('listedCloth', { E_flat1: along, E_flat2: across, Q_cloth66: shear, ...listed, ...departures });
  }
}

/**
 * Whether a listed ply fits the fibre, resin and fibre fraction it is said to have: its E1 against the rule of mixtures
 * (a cloth's against two layers at 0 and 90 degrees before crimp), E2 and G12 against Halpin-Tsai for information.
 * Nothing in the row is changed. A warning names the fibre fraction that would reproduce E1 when it departs by more than
 * 8 % of the listed value (common practice, no source).
 * @param listed Constants as listed, Pa. @param claimed SI; fibreVolumeFraction 0.1 to 0.75.
 * @param working takes the steps down, when given.
 * @throws out-of-range, not-admissible, not-a-number as `plyFromConstituents`, and for listed moduli that are not positive; not-a-choice
 *   for the architecture.
 * @source Jones 1999, ch. 3 (recalled, not re-read).
 */
export function plyConsistency(
  listed: Pick<Ply, 'E1' | 'E2' | 'G12'> & { readonly name?: string },
  claimed: ClaimedConstituents,
  working?: Working,
): PlyConsistency {
  demand(...(['E1', 'E2', 'G12'] as const).map((key) => positive(key, listed[key], 'Pa')));
  const { fibre, resin, fibreVolumeFraction: Vf } = claimed;
  const architecture = choice('architecture', claimed.architecture ?? 'ud', ['ud', 'woven']);
  const { constants, sources } = expectedConstants(claimed, working);
  const against = (key: 'E1' | 'E2' | 'G12'): ListedAgainstExpected => ({
    given: listed[key],
    expected: constants[key],
    departure: constants[key] / listed[key] - 1,
  });
  const [E1, E2, G12] = [against('E1'), against('E2'), against('G12')];
  if (working !== undefined) showListed(architecture, { E1, E2, G12 }, working);
  const consistent = Math.abs(E1.departure) <= toleratedDeparture;
  const needed = fractionFor(listed.E1, claimed);
  const fibreModulus = architecture === 'woven' ? undefined : (listed.E1 - resin.E * (1 - Vf)) / Vf;
  return {
    E1,
    E2,
    G12,
    consistent,
    ...(needed !== undefined && { fibreVolumeFractionNeeded: needed }),
    ...(fibreModulus !== undefined && fibreModulus > 0 && { fibreModulusNeeded: fibreModulus }),
    notes: consistent ? [] : [doubt(listed.name ?? `ply of ${fibre.name}`, E1, claimed, needed)],
    sources,
  };
}
