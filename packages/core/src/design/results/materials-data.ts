import type { MicromechanicsComparison, Ply } from '../../material/index.js';
import type { CuredFabric, FibreModels, ListedPlyResult, MaterialResult } from './materials.js';

type Data = Record<string, unknown>;

const plyData = (ply: Ply): Data => {
  const { angle, thickness, E1, E2, G12, nu12, G13 = null, G23 = null, nu23 = null, density = null } = ply;
  const { strengths = null } = ply;
  const { alpha1 = null, alpha2 = null } = ply.expansion ?? {};
  const { beta1 = null, beta2 = null } = ply.moistureExpansion ?? {};
  const elastic = { E1, E2, G12, nu12, G13, G23, nu23 };
  return { angle, thickness, density, ...elastic, alpha1, alpha2, beta1, beta2, strengths };
};

/** The values of one fibre by model: the last name of every path is the constant, which tells its unit. */
function modelsData({ properties }: MicromechanicsComparison): Data {
  const groups: Record<string, Record<string, number | string>> = { used: {}, usedModel: {} };
  const put = (group: string, property: string, value: number | string | undefined): void => {
    if (value === undefined) return;
    const held = groups[group] ?? {};
    held[property] = value;
    groups[group] = held;
  };
  for (const { property, values, bounds, relativeSpread } of properties) {
    for (const { rule, value, role, xi } of values) {
      put(rule, property, value);
      if (rule === 'halpin-tsai') put('xi', property, xi);
      if (role !== 'used') continue;
      put('used', property, value);
      put('usedModel', property, rule);
    }
    put('series', property, bounds?.reuss);
    put('parallel', property, bounds?.voigt);
    put('relativeSpread', property, relativeSpread);
  }
  return groups;
}

function crimpData({ crimp }: CuredFabric): Data | null {
  if (crimp === undefined) return null;
  const { basis, k1, k2, geometry } = crimp;
  const factors = { basis, warpFactor: k1, weftFactor: k2 };
  if (geometry === undefined) return factors;
  const { warp, weft, high } = geometry;
  return {
    ...factors,
    ...(high === undefined ? {} : { warpFactorHigh: high.E1, weftFactorHigh: high.E2 }),
    warpAngle: warp.angle,
    weftAngle: weft.angle,
    warpSurplusLength: warp.crimp,
    weftSurplusLength: weft.crimp,
  };
}

const byFibre = (models: readonly FibreModels[]): Data =>
  Object.fromEntries(models.map(({ fibre, comparison }) => [fibre, modelsData(comparison)]));

function curedData(state: CuredFabric): Data {
  const { laminates, fabric, thickness, arealMass, resinArealMass } = state;
  return {
    laminates,
    fibreVolumeFraction: fabric.fibreVolumeFraction,
    voidFraction: fabric.voidFraction ?? 0,
    voidModel: fabric.voidModel ?? 'mass-only',
    thickness,
    arealMass,
    resinArealMass,
    resinMassFraction: resinArealMass / arealMass,
    density: arealMass / thickness,
    crimp: crimpData(state),
    plies: state.plies.map(plyData),
    models: byFibre(state.models),
  };
}

function listedData({ model }: ListedPlyResult): Data {
  const { fibre, resin, fibreVolumeFraction, architecture, warpShare, namedBy, found } = model;
  const { E1, E2, G12, consistent, fibreVolumeFractionNeeded = null, fibreModulusNeeded = null } = found;
  return {
    fibre: fibre.name,
    resin: resin.name,
    fibreVolumeFraction,
    architecture,
    namedBy,
    ...(warpShare === undefined ? {} : { warpShare }),
    consistency: {
      consistent,
      listed: { E1: E1.given, E2: E2.given, G12: G12.given },
      fromConstituents: { E1: E1.expected, E2: E2.expected, G12: G12.expected },
      departure: { E1: E1.departure, E2: E2.departure, G12: G12.departure },
      fibreVolumeFractionNeeded,
      fibreModulusNeeded,
    },
  };
}

/** A material's part of the JSON document: SI numbers. */
export function materialData(result: MaterialResult): Data {
  const { kind, notes, sources } = result;
  if (result.kind === 'ply') return { kind, ...listedData(result), notes, sources };
  const [first] = result.cured;
  const { architecture, weave, resin, arealMass, warpShare } = first?.fabric ?? {};
  return {
    kind,
    architecture,
    ...(weave === undefined ? {} : { weave }),
    ...(architecture === 'woven' ? { warpShare: warpShare ?? 0.5 } : {}),
    resin: resin?.name,
    fibreArealMass: arealMass,
    fibres: (first?.fibres ?? []).map(({ name, arealMass: fibreArealMass }) => ({ name, fibreArealMass })),
    cured: result.cured.map(curedData),
    notes,
    sources,
  };
}
