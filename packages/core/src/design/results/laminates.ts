import {
  arealMass,
  type Diagnosis,
  diagnosis,
  engineeringConstants,
  type LaminateConstants,
  type LaminationParameters,
  laminationParameters,
  type NoSandwich,
  printOrientationCode,
  type Sandwich,
  type Stiffness,
  stiffness,
  type TransverseShear,
  transverseShear,
} from '../../laminate/index.js';
import { type Note, type SourceKey, uniqueNotes, uniqueSources } from '../../provenance/index.js';
import type { LaminateModel, Model } from '../model.js';
import { checkSources, checksData, type LaminateChecks, laminateChecks } from './laminate-checks.js';
import { sandwichData, sandwichOf } from './laminate-sandwich.js';
import { transverseShearData } from './laminate-shear.js';

/** Everything computed about one laminate; SI units. */
export interface LaminateResult extends LaminateChecks {
  readonly model: LaminateModel;
  readonly stiffness: Stiffness;
  readonly constants: LaminateConstants;
  readonly diagnosis: Diagnosis;
  readonly laminationParameters: LaminationParameters;
  readonly transverseShear: TransverseShear;
  /** Present when a ply is a core. */
  readonly sandwich?: Sandwich | NoSandwich;
  readonly arealMass: ReturnType<typeof arealMass>;
  /** The stack of single layers, canonical and written in full. */
  readonly canonicalCode: string;
  readonly fullCode: string;
  readonly notes: readonly Note[];
  readonly sources: readonly SourceKey[];
}

/** Stiffness, constants, diagnosis and masses of one laminate. */
export function laminateResult(model: LaminateModel, design: Pick<Model, 'stitching' | 'source'>): LaminateResult {
  const { laminate } = model;
  const computed = stiffness(laminate);
  const constants = engineeringConstants(computed);
  const found = diagnosis(laminate);
  const parameters = laminationParameters(laminate);
  const shear = transverseShear(laminate);
  const sandwich = sandwichOf(laminate);
  const checks = laminateChecks(model, design);
  const layers = laminate.plies.map((ply) => ({ angle: ply.angle, material: ply.name }));
  const oneMaterial = new Set(layers.map((layer) => layer.material)).size === 1;
  return {
    model,
    stiffness: computed,
    constants,
    diagnosis: found,
    laminationParameters: parameters,
    transverseShear: shear,
    ...(sandwich === undefined ? {} : { sandwich }),
    ...checks,
    arealMass: arealMass(laminate),
    canonicalCode: printOrientationCode(layers),
    fullCode: `[${layers.map((layer) => `${layer.angle}${oneMaterial ? '' : layer.material}`).join('/')}]`,
    notes: uniqueNotes([...computed.notes, ...parameters.notes, ...shear.notes, ...(sandwich?.notes ?? [])]),
    sources: uniqueSources(
      computed.sources,
      constants.sources,
      found.sources,
      parameters.sources,
      shear.sources,
      sandwich?.sources ?? [],
      checkSources(checks),
    ),
  };
}

const plain = (matrix: readonly (readonly number[])[]): number[][] => matrix.map((row) => [...row]);

/** The laminate's part of the JSON document: SI numbers under the names of the contract. */
export function laminateData(result: LaminateResult): Record<string, unknown> {
  const { model, stiffness: s, constants, diagnosis: d } = result;
  let z = -s.thickness / 2;
  return {
    ...(model.title === undefined ? {} : { title: model.title }),
    ...(model.code === undefined ? {} : { code: model.code }),
    canonicalCode: result.canonicalCode,
    thickness: s.thickness,
    arealMass: result.arealMass.total ?? null,
    fibreArealMass: result.arealMass.fibre ?? null,
    resinArealMass: result.arealMass.resin ?? null,
    process: model.process,
    plies: model.laminate.plies.map((ply) => {
      const { name, angle, thickness, E1, E2, G12, nu12 } = ply;
      const zBottom = z;
      z += thickness;
      return {
        name,
        angle,
        thickness,
        zToolSide: zBottom,
        zBagSide: z,
        E1,
        E2,
        G12,
        nu12,
        density: ply.density ?? null,
        fibreVolumeFraction: ply.fibreVolumeFraction ?? null,
      };
    }),
    A: plain(s.A),
    B: plain(s.B),
    D: plain(s.D),
    a: plain(s.a),
    b: plain(s.b),
    d: plain(s.d),
    condition: s.condition,
    inPlane: constants.inPlane,
    flexural: constants.flexural,
    inPlaneRestrained: constants.inPlaneRestrained,
    flexuralRestrained: constants.flexuralRestrained,
    diagnosis: withoutProvenance(d),
    laminationParameters: withoutProvenance(result.laminationParameters),
    transverseShear: transverseShearData(result.transverseShear),
    ...(result.sandwich === undefined ? {} : { sandwich: sandwichData(result.sandwich) }),
    ...checksData(result),
    notes: result.notes,
    sources: result.sources,
  };
}

/** A result without its notes and sources, which stand once for the whole laminate. */
export function withoutProvenance<Result extends object>(result: Result): Omit<Result, 'notes' | 'sources'> {
  const { notes: _, sources: __, ...rest } = result as Result & { notes?: unknown; sources?: unknown };
  return rest;
}
