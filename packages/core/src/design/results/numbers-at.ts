import { arealMass, engineeringConstants, stiffness } from '../../laminate/index.js';
import type { LaminateModel, Model, StitchingModel } from '../model.js';
import { isUnstitchedTwin } from './coupon-gain.js';
import { couponResults } from './coupons.js';
import { asksForAdvice, couponData } from './coupons-data.js';
import { laminateData, laminateResult } from './laminates.js';
import { loadData, loadResult } from './loads.js';
import { materialResults } from './materials.js';
import { materialData } from './materials-data.js';
import { stitchingData, stitchingResults, summaryData } from './stitching.js';

type Data = Record<string, unknown>;

/** Checks of a laminate, each left out unless a path leads into it. */
const checks = ['freeEdge', 'panel', 'blister'] as const;
/** Parts of a stitch plan that take a while. */
const holdings: ReadonlySet<string> = new Set(['bridging', 'inPlane']);

/**
 * The part of the JSON document that holds the numbers at some paths, computed without the rest; it may hold more, and lacks what is not there.
 * @param paths dotted paths
 * @throws SelvageError as `compute`
 */
export function numbersAt(model: Model, paths: readonly string[]): Readonly<Data> {
  const split = paths.map((path) => path.split('.'));
  /** Names of a section that paths lead to, each with the keys below it. */
  const wanted = (section: string): Map<string, ReadonlySet<string>> => {
    const found = new Map<string, Set<string>>();
    for (const [first, name = '', key = ''] of split) {
      if (first === section) found.set(name, (found.get(name) ?? new Set()).add(key));
    }
    return found;
  };
  const entries = <One extends { readonly name: string }>(
    section: string,
    models: readonly One[],
    data: (one: One, keys: ReadonlySet<string>) => Data | undefined,
  ): Data => {
    const names = wanted(section);
    return Object.fromEntries(
      models.flatMap((one) => {
        const keys = names.get(one.name);
        return keys === undefined ? [] : [[one.name, data(one, keys)] as const];
      }),
    );
  };
  return {
    materials: wanted('materials').size === 0 ? {} : materialsData(model),
    laminates: entries('laminates', model.laminates, (one, keys) => laminateNumbers(one, keys, model)),
    stitching: entries('stitching', model.stitching, (one, keys) => planData(model, one, keys)),
    loads: entries('loads', model.loads, (load) => {
      const laminate = model.laminates.find(({ name }) => name === load.laminate);
      return laminate && loadData(loadResult(load, laminate, model.source));
    }),
    coupons: couponsData(model, wanted('coupons'), paths),
  };
}

/** What follows from the stiffness alone. */
const plainKeys: ReadonlySet<string> = new Set(['thickness', 'arealMass', 'A', 'B', 'D', 'inPlane', 'flexural']);

function laminateNumbers(model: LaminateModel, keys: ReadonlySet<string>, design: Model): Data {
  if ([...keys].every((key) => plainKeys.has(key))) {
    const computed = stiffness(model.laminate);
    const { thickness, A, B, D } = computed;
    const { inPlane, flexural } = engineeringConstants(computed);
    return { thickness, arealMass: arealMass(model.laminate).total ?? null, A, B, D, inPlane, flexural };
  }
  const bare = { ...model };
  for (const check of checks) if (!keys.has(check)) delete bare[check];
  return laminateData(laminateResult(bare, design));
}

const materialsData = (model: Model): Data =>
  Object.fromEntries(materialResults(model).map((one) => [one.name, materialData(one)]));

function planData(model: Model, plan: StitchingModel, keys: ReadonlySet<string>): Data | undefined {
  if (![...keys].some((key) => holdings.has(key))) return summaryData(plan);
  const [found] = stitchingResults({ ...model, stitching: [plan] });
  return found && stitchingData(found);
}

/** Coupons that are wanted, the tested ones, which may narrow the ranges of others, and those from which a wanted gain counts. */
function couponsData(model: Model, names: ReadonlyMap<string, unknown>, paths: readonly string[]): Data {
  if (names.size === 0) return {};
  const gaining = model.coupons.filter(({ name }) => paths.includes(`coupons.${name}.simulated.gain`));
  const coupons = model.coupons.filter(
    ({ name, test, coupon }) =>
      names.has(name) || test !== undefined || gaining.some((one) => isUnstitchedTwin(coupon, one.coupon)),
  );
  const found = couponResults({ ...model, coupons }, { advice: paths.some(asksForAdvice) });
  return Object.fromEntries(found.map((one) => [one.model.name, couponData(one)]));
}
