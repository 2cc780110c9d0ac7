import { uniqueNotes } from '../../provenance/index.js';
import {
  type BridgingLaw,
  bridgingLaw,
  bridgingModel,
  lawOf,
  showGivingWay,
  showMeasured,
  stitchSummary,
  toughness,
} from '../../stitch/index.js';
import type { Working } from '../../working/index.js';
import { penetrationOf } from '../assemble/penetration.js';
import { coreThickness } from '../assemble/stitching.js';
import type { LaminateModel, Model, StitchingModel } from '../model.js';
import { growthOf } from '../results/stitch-growth.js';
import { missingForLaw, missingLaminate, threadCautions } from '../results/stitch-needs.js';
import { stitchPrice } from '../results/stitch-price.js';

/** Takes down the geometry of a stitch plan, what one stitch holds and what it adds to toughness: the calls of the results, without their ranges. */
export function stitchingSteps(model: StitchingModel, { laminates }: Model, working: Working): void {
  const laminate = laminates.find(({ name }) => name === model.laminate);
  showDryStack(model, laminate, working);
  const { notes } = stitchSummary(model.plan, working);
  working.notes(model.summary.notes.filter(({ text }) => !notes.some((one) => one.text === text)));
  if (laminate === undefined) return;
  const computed = lawSteps(model, laminate, working);
  const { measured } = model.bridging;
  if (measured !== undefined) showMeasured(measured, working.part('measured'));
  const law = measured ?? computed;
  if (law !== undefined) {
    const { penetrationDensity } = model.summary;
    // Among rows near an edge no bridged zone is full.
    if (model.plan.pattern.kind !== 'rows') toughness({ law, penetrationDensity, bondToughness: 0 }, working);
    if (missingLaminate(laminate).length === 0) growthOf(model, laminate, law, working.part('growth'));
  }
  const inPlane = working.part('inPlane');
  const { along, across, common } = stitchPrice(model, laminate, inPlane);
  const [k_p1, k_p2] = [along, across].map((one) => one?.found.crowding.upper.value);
  const k_pm = common?.crowding.upper.value;
  if (k_p1 !== undefined && k_p2 !== undefined && k_pm !== undefined)
    inPlane.step('crowdingOfBoth', { k_p1, k_p2, k_pm });
}

/** Takes down how thick the dry stack is where that follows from its fibres. */
function showDryStack(
  { plan, dryFibreVolumeFraction: V_dry }: StitchingModel,
  laminate: LaminateModel | undefined,
  working: Working,
): void {
  const t_solid = laminate?.solidFibreThickness;
  if (laminate === undefined || V_dry === undefined || t_solid === undefined) return;
  working.step('dryStack', { t_solid, V_dry, t_core: coreThickness(laminate), h_d: plan.dryThickness });
}

/** The law of one stitch against a crack at mid-plane that opens, and that slides; that of opening, where the design says what it takes. */
function lawSteps(model: StitchingModel, laminate: LaminateModel, working: Working): BridgingLaw | undefined {
  if (missingForLaw(model, laminate).length > 0) return undefined;
  const { legAngle = 0 } = model.bridging;
  const stitch = working.part('stitch');
  const penetration = penetrationOf(model, laminate.laminate.thickness);
  const { model: sides } = bridgingModel(penetration, stitch);
  stitch.notes(uniqueNotes([...bridgingLaw(penetration).notes, ...threadCautions(model)]));
  showGivingWay(sides, stitch);
  const [open, slid] = [working.part('opening'), working.part('sliding')];
  const opening = lawOf(sides, legAngle > 0 ? { angle: legAngle } : undefined, [], open);
  open.notes(opening.notes);
  slid.notes(lawOf(sides, { angle: 90 }, [], slid).notes);
  return opening;
}
