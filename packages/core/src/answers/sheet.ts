import { type Model, workedSteps } from '../design/index.js';
import { SelvageError } from '../problem/index.js';
import { holderOf, type RecordedStep } from '../working/index.js';
import { propagate } from './propagate.js';
import { type Quantity, quantitiesOf } from './quantities.js';
import { reportNumber } from './report-number.js';
import type { FormulaWay, ModelWay, Sheet } from './slips/index.js';

/** The name of the laminate that a number belongs to, by itself or through its load. */
const laminateOf = (model: Model, { part: [section, name] }: Pick<Quantity, 'part'>): string | undefined =>
  section === 'laminates'
    ? name
    : section === 'loads'
      ? model.loads.find((load) => load.name === name)?.laminate
      : undefined;

/** The laminate or load that a number belongs to. */

/** One laminate of a model, and the load that a number belongs to: what a slip needs to reach it. */
function onlyFor(model: Model, laminate: string, { part: [section, name] }: Quantity): Model {
  return {
    ...model,
    materials: [],
    stitching: [],
    coupons: [],
    targets: [],
    laminates: model.laminates.filter((one) => one.name === laminate),
    loads: section === 'loads' ? model.loads.filter((load) => load.name === name) : [],
  };
}

/** A value, or undefined where the computation refuses the input. */
function possible<T>(compute: () => T): T | undefined {
  try {
    return compute();
  } catch (error) {
    if (error instanceof SelvageError) return undefined;
    throw error;
  }
}

/** Numbers by key. */
type Numbers = (key: string) => number | undefined;

/**
 * What the slips are computed from. A change is worked out once for each laminate and load, and only when an answer asks for it.
 * @param steps the working of the model as it is
 */
export function sheetOf(
  model: Model,
  steps: readonly RecordedStep[],
  quantities: ReadonlyMap<string, Quantity>,
): Sheet {
  const worked = new Map<ModelWay | FormulaWay, Map<string, Numbers>>();

  const withModel = ({ model: change }: ModelWay, laminate: string, of: Quantity): Numbers => {
    const changed = possible(() => change(onlyFor(model, laminate, of)));
    if (changed === undefined) return () => undefined;
    const numbers = possible(() => quantitiesOf(workedSteps(changed)));
    return (key) => (quantities.has(key) ? numbers?.get(key)?.value : reportNumber(changed, key)?.value);
  };
  const withFormulas = ({ change }: FormulaWay, laminate: string, of: Quantity): Numbers => {
    const holders = [`laminates.${laminate}`, holderOf(of)];
    const own = steps.filter((step) => holders.includes(holderOf(step)));
    const numbers = propagate(own, change, () => laminate);
    return (key) => numbers.get(key);
  };

  return {
    right: (key) => quantities.get(key),
    under: (way) => (of) => {
      const laminate = laminateOf(model, of);
      if (laminate === undefined) return undefined;
      const ofWay = worked.get(way) ?? new Map<string, Numbers>();
      worked.set(way, ofWay);
      const holder = holderOf(of);
      const numbers =
        ofWay.get(holder) ?? ('model' in way ? withModel(way, laminate, of) : withFormulas(way, laminate, of));
      ofWay.set(holder, numbers);
      return numbers(of.key);
    },
    plyCount: (of) => {
      const name = laminateOf(model, of);
      return model.laminates.find((one) => one.name === name)?.laminate.plies.length ?? 0;
    },
  };
}
