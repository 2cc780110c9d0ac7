import { bibliography } from '../../material/index.js';
import { type SourceKey, uniqueSources } from '../../provenance/index.js';
import type { Model } from '../model.js';
import { type CouponResult, couponResults, couponSources } from './coupons.js';
import { asksForAdvice, couponData } from './coupons-data.js';
import { type LaminateResult, laminateData, laminateResult } from './laminates.js';
import { type LoadResult, loadData, loadResult, loadSources } from './loads.js';
import { type MaterialResult, materialResults } from './materials.js';
import { materialData } from './materials-data.js';
import { type StitchingResult, stitchingData, stitchingResults, stitchingSources } from './stitching.js';
import { judgeTargets, type TargetResult } from './targets.js';

export { type CouponResult, couponNotes } from './coupons.js';
export type { BlisterResult, Film } from './laminate-blister.js';
export type { LaminateChecks } from './laminate-checks.js';
export type { FirstOpening, FreeEdgeResult } from './laminate-edge.js';
export type { LaminateExpansion } from './laminate-expansion.js';
export type { PanelResult } from './laminate-panel.js';
export type { LaminateResult } from './laminates.js';
export type { LoadEnvelope } from './load-envelope.js';
export type { Residual } from './load-residual.js';
export type { LoadStrength } from './load-strength.js';
export { type LoadResult, loadNotes } from './loads.js';
export type { CuredFabric, FabricResult, FibreModels, ListedPlyResult, MaterialResult } from './materials.js';
export type { MidPlane } from './stitch-crack.js';
export type { StitchGrowth } from './stitch-growth.js';
export { againstPrint, type StitchHolding, type StitchLaw } from './stitch-holding.js';
export type { LoadedFibres, StitchPrice } from './stitch-price.js';
export type { StitchingResult } from './stitching.js';
export type { TargetResult } from './targets.js';

/** Everything that follows from a model, and the same as the JSON document of the contract. */
export interface Results {
  readonly model: Model;
  readonly materials: readonly MaterialResult[];
  readonly laminates: readonly LaminateResult[];
  readonly stitching: readonly StitchingResult[];
  readonly loads: readonly LoadResult[];
  readonly coupons: readonly CouponResult[];
  readonly targets: readonly TargetResult[];
  /** Keys of the bibliography, each used by a model or a value of this design. */
  readonly sources: readonly SourceKey[];
  readonly data: Readonly<Record<string, unknown>>;
}

/** How thoroughly a design is computed. */
export interface ComputeOptions {
  /** True leaves out advice on coupons that no target asks for: every fault of the design is found, in a fraction of the time. */
  readonly faultsOnly?: boolean;
}

/**
 * Computes everything that a report or a study of the design needs.
 * @throws SelvageError with places in the file: a target whose quantity or limit cannot be read, a load case that contradicts itself
 */
export function compute(model: Model, { faultsOnly = false }: ComputeOptions = {}): Results {
  const materials = materialResults(model);
  const laminates = model.laminates.map((one) => laminateResult(one, model));
  const byName = new Map(model.laminates.map((laminate) => [laminate.name, laminate]));
  const loads = model.loads.flatMap((load) => {
    const laminate = byName.get(load.laminate);
    return laminate === undefined ? [] : [loadResult(load, laminate, model.source)];
  });
  const stitching = stitchingResults(model);
  const coupons = couponResults(model, {
    advice: !faultsOnly || model.targets.some(({ quantity }) => asksForAdvice(quantity)),
  });
  const sources = uniqueSources(
    ...laminates.map((one) => one.sources),
    ...stitching.map(stitchingSources),
    ...loads.map(loadSources),
    ...coupons.map(couponSources),
    ...materials.map((one) => one.sources),
    ...model.provenance.map((one) => one.sources),
  );
  const data: Record<string, unknown> = {
    format: 1,
    title: model.title,
    materials: Object.fromEntries(materials.map((one) => [one.name, materialData(one)])),
    laminates: Object.fromEntries(laminates.map((one) => [one.model.name, laminateData(one)])),
    stitching: Object.fromEntries(stitching.map((one) => [one.model.name, stitchingData(one)])),
    blade: null,
    loads: Object.fromEntries(loads.map((one) => [one.model.name, loadData(one)])),
    coupons: Object.fromEntries(coupons.map((one) => [one.model.name, couponData(one)])),
  };
  const targets = judgeTargets(model.targets, data, model);
  return {
    model,
    materials,
    laminates,
    stitching,
    loads,
    coupons,
    targets,
    sources,
    data: { ...data, targets, sources: sources.map((key) => ({ key, ...bibliography[key] })) },
  };
}
