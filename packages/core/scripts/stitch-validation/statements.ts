import { toSI } from '../../src/quantity/index.js';
import {
  type BridgingFailure,
  bridgingLaw,
  fibreArea,
  type PenetrationInput,
  stitchType,
} from '../../src/stitch/index.js';
import { knockdownOf } from './compare-in-plane.js';
import type { Predictions } from './compare-toughness.js';
import { type Bends, densityOf, penetrationOf } from './coupons.js';
import { type Claim, cases, claims, entry, inPlaneCases, series } from './inputs.js';
import { threadOf } from './materials.js';
import { type ArmsFound, bareOnset, type Prediction } from './predict.js';
import { digits, percent } from './words.js';

/** What the model says of a statement in print, by one law. */
interface Finding {
  readonly found: string;
  readonly holds: boolean;
}

/** A statement in print beside what the model says of it by both laws; or the reason why nothing is said. */
export interface Statement extends Claim {
  readonly findings?: Readonly<Record<Bends, Finding>>;
}

/** Name of a check in the inputs and how it is made. */
type Check = (predictions: (id: string) => Prediction, bends: Bends) => Finding;

const mm = (length: number): string => `${digits(1e3 * length)} mm`;

const ratio = ({ bond }: Prediction, toughness: number): number => toughness / bond;

/** Slope of ln y against ln x by least squares. */
function slope(points: readonly (readonly [x: number, y: number])[]): number {
  const logs = points.map(([x, y]) => [Math.log(x), Math.log(y)] as const);
  const mean = (of: (point: readonly [number, number]) => number) =>
    logs.reduce((sum, point) => sum + of(point), 0) / logs.length;
  const [x0, y0] = [mean(([x]) => x), mean(([, y]) => y)];
  return mean(([x, y]) => (x - x0) * (y - y0)) / mean(([x]) => (x - x0) ** 2);
}

const workOf = (penetration: PenetrationInput): number => bridgingLaw(penetration).work;

/** Arms as they were found by one law, densely and sparsely stitched. */
type Arms = Readonly<Record<Bends, Readonly<Record<'dense' | 'sparse', ArmsFound>>>>;

const armsBreak =
  (arms: Arms): Check =>
  (_, bends) => {
    const { dense, sparse } = arms[bends];
    return {
      found: `arms break in ${percent(dense.share)} of the samples at 64 per square inch, ${percent(sparse.share)} at 16`,
      holds: dense.share > 0.5,
    };
  };

/** Computed lengths may be short of printed ones by this factor, as docs/theory/stitch-toughness.md says; made from printed zones. */
const shortfall = 4;

const rise: Check = (predictions) => {
  const lengths = ['glass-vinyl-ester', 'carbon-aramid'].map((id) => predictions(id).opening?.rise ?? Number.NaN);
  return {
    found: `${lengths.map(mm).join(' in glass/vinyl ester, ')} in carbon/epoxy: short of the printed 20 mm by factors of ${lengths.map((length) => digits(20e-3 / length)).join(' and ')}, counted as holding within a factor of ${shortfall}`,
    holds: lengths.every((length) => length >= 20e-3 / shortfall && length <= 30e-3),
  };
};

const bothSites: Check = (predictions) => {
  const all = Object.keys(cases).filter((id) => entry(cases, id).thread !== undefined);
  const mean = (site: BridgingFailure) =>
    all.reduce((sum, id) => sum + (predictions(id).failures[site] ?? 0), 0) / all.length;
  const [crack, anchor] = [mean('threadAtCrack'), mean('threadAtAnchor')];
  return {
    found: `the weakest site is the plane of the crack in ${percent(crack)}, an anchor in ${percent(anchor)} of the samples of all cases`,
    holds: crack > 0.02 && anchor > 0.02,
  };
};

const slidingBelowOpening: Check = (predictions) => {
  const [opens, slides] = [predictions('carbon-aramid'), predictions('carbon-aramid-sliding')];
  const gains = [opens, slides].map((one) => [ratio(one, one.steady.median) - 1, ratio(one, one.specimen.median) - 1]);
  const [steady, specimen] = [0, 1].map((column) => gains.map((gain) => gain[column] ?? Number.NaN));
  const words = (gain: readonly number[] | undefined) =>
    (gain ?? []).map((value) => digits(value)).join(' opening and ');
  return {
    found: `gain over the bond ${words(steady)} sliding (steady), ${words(specimen)} (specimen)`,
    holds: [steady, specimen].every((gain = []) => (gain[1] ?? 0) < (gain[0] ?? 0)),
  };
};

const thickness: Check = (_, bends) => {
  const one = entry(cases, series.thickness.case);
  const { values, unit } = series.thickness.laminateThickness;
  const works = values.map((T) => [T, workOf({ ...penetrationOf(one, bends), thickness: toSI(T, unit) })] as const);
  const [thin, thick] = [works[0], works.at(-1)];
  const exponent = slope(works);
  const gains = [thin, thick].map((work) => digits((densityOf(one) * (work?.[1] ?? 0)) / 1e3)).join(' and ');
  return {
    found: `stitches add ${gains} kJ/m² at ${thin?.[0]} and ${thick?.[0]} ${unit}: as the thickness to the power ${digits(exponent)}, pull-out alone to the power 2`,
    holds: exponent > 1 && exponent <= 2,
  };
};

const fibreStiffness: Check = (predictions) => {
  const ids = ['sparse-glass', 'sparse-aramid', 'sparse-carbon'];
  const of = (column: 'steady' | 'specimen') => ids.map((id) => ratio(predictions(id), predictions(id)[column].median));
  const [steady, specimen] = [of('steady'), of('specimen')];
  return {
    found: `ratio with glass, aramid, carbon ${steady.map((value) => digits(value)).join(', ')} (steady), ${specimen.map((value) => digits(value)).join(', ')} (specimen)`,
    holds: [steady, specimen].some((values) => Math.max(...values) === values[2]),
  };
};

const lockBelowSaddle: Check = (_, bends) => {
  const saddle = penetrationOf(entry(cases, 'glass-twill-saddle'), bends);
  const share = workOf({ ...saddle, type: stitchType('301') }) / workOf(saddle);
  return {
    found: `a balanced lockstitch takes ${digits(share)} of the work of a saddle stitch of the same thread`,
    holds: share < 1,
  };
};

const fibreFraction: Check = (_, bends) => {
  const { threads, pitches, laminateThickness, stitch } = series.fibreFraction;
  const points = threads.flatMap((id) =>
    pitches.values.map((value) => {
      const thread = threadOf(id);
      const pitch = toSI(value, pitches.unit);
      const type = stitchType(stitch.id);
      const T = toSI(laminateThickness.value, laminateThickness.unit);
      const parameters = bends === 'rigid' ? { beddingIn: 0 } : {};
      const work = workOf({ type, needleThread: thread, thickness: T, bends, pitch, parameters });
      const legs = type.legsAbove.needle + type.legsAbove.under;
      return [(legs * fibreArea(thread)) / pitch ** 2, work / pitch ** 2] as const;
    }),
  );
  const exponent = slope(points);
  return { found: `gain as the share of fibre to the power ${digits(exponent)}`, holds: Math.abs(exponent - 1) <= 0.2 };
};

const stiffnessKept: Check = () => {
  const { modulus } = knockdownOf(entry(inPlaneCases, 'glass-aramid-5'));
  return {
    found: `${percent(modulus.low)} to ${percent(modulus.high)} of the stiffness is left`,
    holds: modulus.low >= 0.95,
  };
};

const flexureUnsuitable: Check = (predictions) => {
  const sliding = Object.keys(cases).filter((id) => entry(cases, id).mode === 'II');
  const never = sliding.filter((id) => !predictions(id).full);
  return {
    found: `in ${never.length} of ${sliding.length} cases no row gives way before the crack comes under the load`,
    holds: never.length > sliding.length / 2,
  };
};

const notBeforeReached: Check = (predictions) => {
  const id = 'uniweave-16';
  const share = (predictions(id).onset ?? Number.NaN) / bareOnset(entry(cases, id));
  return {
    found: `with the first row 3.2 mm ahead the crack begins to grow at ${digits(share)} times the load without rows`,
    holds: Math.abs(share - 1) <= 0.1,
  };
};

const checks: Readonly<Record<string, Check>> = {
  rise,
  bothSites,
  slidingBelowOpening,
  thickness,
  fibreStiffness,
  lockBelowSaddle,
  fibreFraction,
  stiffnessKept,
  flexureUnsuitable,
  notBeforeReached,
};

/** All statements in print with what the model says of them. */
export function statements(predictions: Predictions, arms: Arms): readonly Statement[] {
  return claims.map((claim) => {
    const check = claim.check === 'armsBreak' ? armsBreak(arms) : checks[claim.check];
    if (check === undefined) return claim;
    const by = (bends: Bends) => check((id) => entry(predictions, id)[bends], bends);
    return { ...claim, findings: { rigid: by('rigid'), yielding: by('yielding') } };
  });
}
