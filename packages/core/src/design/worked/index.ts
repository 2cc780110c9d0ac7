import { type Recorded, type RecordedStep, startWorking } from '../../working/index.js';
import type { Model } from '../model.js';
import { couponSteps } from './coupons.js';
import { laminateSteps } from './laminates.js';
import { loadSteps } from './loads.js';
import { materialSteps } from './materials.js';
import { stitchingSteps } from './stitching.js';

/** The steps of {@link workedDesign} alone. */
export const workedSteps = (model: Model): readonly RecordedStep[] => workedDesign(model).steps;

/**
 * The working of a design: every step from the constants of its materials to what its coupons hold, as the computation wrote it down.
 *
 * The parts are those of the design: `materials.NAME`, and where a fabric has several fibre fractions `materials.NAME.LAMINATES`; `laminates.NAME`, `laminates.NAME.plies.2`, `loads.NAME.plies.2.top`, `stitching.NAME`,
 * `coupons.NAME`; a step's numbers are SI, by the symbols of its rule.
 *
 * @param model as `assemble` gives it
 * @throws SelvageError as the computations do
 */
export function workedDesign(model: Model): Recorded {
  const { working, steps, notes } = startWorking();
  for (const material of model.materials) materialSteps(material, model, working.part('materials', material.name));
  for (const laminate of model.laminates) laminateSteps(laminate, working.part('laminates', laminate.name));
  for (const load of model.loads) {
    const laminate = model.laminates.find(({ name }) => name === load.laminate);
    if (laminate !== undefined) loadSteps(load, laminate, working.part('loads', load.name));
  }
  for (const plan of model.stitching) stitchingSteps(plan, model, working.part('stitching', plan.name));
  for (const coupon of model.coupons) couponSteps(coupon, model, working.part('coupons', coupon.name));
  return { steps, notes };
}
