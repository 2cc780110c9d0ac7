import {
  arealMass,
  type CrimpChoice,
  compareMicromechanics,
  type Fabric,
  type FabricFibre,
  type Fibre,
  fabricCrimp,
  fabricFibres,
  fabricPlies,
  type MicromechanicsComparison,
  type Ply,
} from '../../material/index.js';
import { type Note, type SourceKey, uniqueNotes, uniqueSources } from '../../provenance/index.js';
import type { FabricModel, ListedPlyModel, Model } from '../model.js';

/** The models side by side for the unidirectional plies of one fibre. */
export interface FibreModels {
  readonly fibre: string;
  readonly comparison: MicromechanicsComparison;
}

/** Everything computed about a fabric at one fibre fraction; SI units. */
export interface CuredFabric {
  /** The laminates in which it has that fibre fraction. */
  readonly laminates: readonly string[];
  readonly fabric: Fabric;
  /** As the fabric lies at 0 degrees, its layers from below. */
  readonly plies: readonly Ply[];
  readonly fibres: readonly FabricFibre[];
  /** Of all plies together. */
  readonly thickness: number;
  readonly arealMass: number;
  readonly resinArealMass: number;
  /** Of a woven fabric. */
  readonly crimp?: CrimpChoice;
  /** One for each fibre of the fabric. */
  readonly models: readonly FibreModels[];
}

/** What a fabric of the design comes to in each way that the stacks mould it. */
export interface FabricResult {
  readonly kind: 'fabric';
  readonly name: string;
  readonly cured: readonly CuredFabric[];
  readonly notes: readonly Note[];
  readonly sources: readonly SourceKey[];
}

/** A ply given by its constants beside the one that its fibre and resin would give. */
export interface ListedPlyResult {
  readonly kind: 'ply';
  readonly name: string;
  readonly model: ListedPlyModel;
  readonly notes: readonly Note[];
  readonly sources: readonly SourceKey[];
}

/** A material of the stacks that is made of fibre and resin, or said to be. */
export type MaterialResult = FabricResult | ListedPlyResult;

/** The different fibres of a fabric, each name once, in the order of `fabricFibres`. */
function distinctFibres({ fibre, weftFibre, layers = [] }: Fabric): Map<string, Fibre> {
  const all = [...layers.flatMap((layer) => layer.fibre ?? []), fibre, ...(weftFibre === undefined ? [] : [weftFibre])];
  return new Map(all.map((one) => [one.name, one]));
}

const total = (values: readonly (number | undefined)[]): number =>
  values.reduce<number>((sum, value) => sum + (value ?? 0), 0);

function curedFabric(laminates: readonly string[], fabric: Fabric): CuredFabric {
  const plies = fabricPlies(fabric);
  const crimp = fabricCrimp(fabric);
  const fibres = fabricFibres(fabric);
  const known = distinctFibres(fabric);
  return {
    laminates,
    fabric,
    plies,
    fibres,
    thickness: total(plies.map((ply) => ply.thickness)),
    arealMass: total(plies.map(arealMass)),
    resinArealMass: total(plies.map((ply) => ply.resinArealMass)),
    ...(crimp === undefined ? {} : { crimp }),
    models: fibres.flatMap(({ name }) => {
      const fibre = known.get(name);
      return fibre === undefined ? [] : [{ fibre: name, comparison: compareMicromechanics({ ...fabric, fibre }) }];
    }),
  };
}

function fabricResult({ name, cured }: FabricModel): FabricResult {
  const states = cured.map(({ laminates, fabric }) => curedFabric(laminates, fabric));
  const compared = states.flatMap((state) => state.models.map(({ comparison }) => comparison));
  const plies = states.flatMap((state) => state.plies);
  return {
    kind: 'fabric',
    name,
    cured: states,
    notes: uniqueNotes([...plies, ...compared].flatMap(({ notes }) => notes)),
    sources: uniqueSources(...[...plies, ...compared].map(({ sources }) => sources)),
  };
}

/** What follows from fibre and resin for every material of the stacks that is made of them. */
export function materialResults({ materials }: Model): MaterialResult[] {
  return materials.map((model) => {
    if (model.kind === 'fabric') return fabricResult(model);
    const { name, found } = model;
    return { kind: 'ply', name, model, notes: found.notes, sources: found.sources };
  });
}
