import { Matrix } from 'ml-matrix';
import { choleskyOf } from '../../numeric/index.js';
import { type BridgingPath, bridgingLaw, type PenetrationInput } from '../../stitch/index.js';
import { type OpeningNumbers, openingNumbers } from './samples.js';

/** Penetrations whose law along the path is worked out in full. */
const inFull = 24;

/** Keeps the fit determinate where parameters do not scatter. */
const ridge = 1e-6;

/**
 * Peak, opening and work along a path for many penetrations: that of straight opening times a ratio, whose logarithm is fitted by least squares over some of them worked out in
 * full, linear in the logarithms of force, opening, work and resistance against ploughing.
 */
export function numbersAlong(
  penetrations: readonly PenetrationInput[],
  path: BridgingPath | undefined,
): readonly OpeningNumbers[] {
  const straight = penetrations.map(openingNumbers);
  if (path === undefined) return straight;
  const step = Math.max(1, Math.floor(penetrations.length / inFull));
  const chosen = penetrations.map((_, i) => i).filter((i) => i % step === 0);
  const features = penetrations.map((one, i) => featuresOf(one, straight[i]));
  const means = (features[0] ?? []).map(
    (_, k) => chosen.reduce((sum, i) => sum + (features[i]?.[k] ?? 0), 0) / chosen.length,
  );
  const centred = features.map((row) => row.map((value, k) => (k === 0 ? 1 : value - (means[k] ?? 0))));
  const full = chosen.map((i) => {
    const { peak, work } = bridgingLaw({ ...(penetrations[i] as PenetrationInput), path });
    const plain = straight[i] as OpeningNumbers;
    return [peak.force / plain.force, peak.opening / plain.opening, work / plain.work].map(Math.log);
  });
  const X = new Matrix(chosen.map((i) => centred[i] ?? []));
  const XtX = X.transpose().mmul(X);
  for (let k = 1; k < XtX.rows; k++) XtX.set(k, k, XtX.get(k, k) + ridge * chosen.length);
  const fit = choleskyOf(XtX)?.solve(X.transpose().mmul(new Matrix(full)));
  return straight.map((one, i) => {
    const ratio = (column: number): number =>
      Math.exp((centred[i] ?? []).reduce((sum, value, k) => sum + value * (fit?.get(k, column) ?? 0), 0));
    return { ...one, force: one.force * ratio(0), opening: one.opening * ratio(1), work: one.work * ratio(2) };
  });
}

function featuresOf({ parameters }: PenetrationInput, numbers: OpeningNumbers | undefined): readonly number[] {
  const { force = 1, opening = 1, work = 1 } = numbers ?? {};
  const { bearingPressure = 1, bearingWidth = 1 } = parameters ?? {};
  return [1, Math.log(force), Math.log(opening), Math.log(work), Math.log(bearingPressure * bearingWidth)];
}
