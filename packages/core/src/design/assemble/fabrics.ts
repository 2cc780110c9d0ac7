import { clothOfYarns, entryValues, type Fabric, type FabricLayer, library } from '../../material/index.js';
import { fail, type Path } from '../../problem/index.js';
import type { Note } from '../../provenance/index.js';
import type { FabricEntry } from '../schema/design.js';
import { defined, findFibre, findResin, useOwn } from './constituents.js';
import type { Context } from './context.js';
import { fabricFaults } from './fabric-faults.js';
import { base, needed } from './plies.js';

/** A fabric with its constituents resolved; its fibre fraction is decided by the process of each laminate. */
export type ResolvedFabric = Omit<Fabric, 'fibreVolumeFraction'> & {
  readonly fibreVolumeFraction?: number;
  /** What the design file's way to give it leaves to be said. */
  readonly remarks?: readonly Note[];
};

const grams = (mass: number): string => `${Number((mass * 1e3).toPrecision(4))} g/m^2`;

/** The total of the layers' masses; a given total must agree with it. */
function layersMass({ layers, arealMass }: FabricEntry, path: Path): number | undefined {
  if (layers === undefined) return undefined;
  const total = layers.reduce((sum, layer) => sum + layer.arealMass, 0);
  if (arealMass !== undefined && Math.abs(arealMass - total) > 0.005 * total) {
    fail({
      code: 'contradiction',
      message: `arealMass = ${grams(arealMass)}, but the layers sum to ${grams(total)}`,
      allowed: 'a total that equals the sum of the layers within 0.5 %, or none',
      path: [...path, 'arealMass'],
      also: [{ label: 'the layers', path: [...path, 'layers'] }],
    });
  }
  return total;
}

/** Layers with their fibres found and their shares; undefined when a name is unknown. */
function layersOf(
  context: Context,
  { layers = [] }: FabricEntry,
  total: number,
  path: Path,
): FabricLayer[] | undefined {
  const found = layers.map(({ angle, arealMass, fibre, strengths }, i) => {
    const own = fibre === undefined ? undefined : findFibre(context, fibre, [...path, 'layers', i, 'fibre']);
    if (fibre !== undefined && own === undefined) return undefined;
    return defined({ angle, share: arealMass / total, fibre: own, strengths }) as FabricLayer;
  });
  const known = found.filter((layer) => layer !== undefined);
  return known.length < found.length ? undefined : known;
}

/** Counts, linear densities and mass of a cloth agree when they are within this (common practice, no source). */
const yarnTolerance = 0.1;

/** Areal mass and share of the warp as far as the yarns give them, with what is to be said about it. */
function ofYarns(
  name: string,
  entry: FabricEntry,
  path: Path,
): { arealMass?: number; warpShare?: number; remarks: Note[] } {
  const { yarnCount, weftCount, yarnLinearDensity, weftLinearDensity, arealMass, warpShare } = entry;
  const assumed = (text: string): Note => ({ level: 'assumption', text: `${name}: ${text}` });
  if (yarnCount === undefined) return { remarks: [] };
  if (yarnLinearDensity === undefined) {
    const uneven = warpShare === undefined && weftCount !== undefined && weftCount !== yarnCount;
    const text =
      'half of its mass is taken to lie in the warp although the counts of warp and weft differ; `warpShare` or the linear densities of the yarns would tell';
    return { remarks: uneven ? [assumed(text)] : [] };
  }
  const found = clothOfYarns(defined({ yarnCount, weftCount, yarnLinearDensity, weftLinearDensity }));
  const share = `${(found.warpShare * 100).toFixed(1)} %`;
  if (arealMass === undefined) {
    const text = `areal mass ${grams(found.arealMass)} and warp share ${share} from its yarns, which count as straight`;
    return { ...found, remarks: [assumed(text)] };
  }
  if (Math.abs(found.arealMass - arealMass) > yarnTolerance * arealMass) {
    fail({
      code: 'contradiction',
      message: `arealMass = ${grams(arealMass)}, but counts and linear densities of the yarns give ${grams(found.arealMass)}`,
      allowed: 'a mass within 10 % of that of the yarns, or none',
      path: [...path, 'arealMass'],
      also: [{ label: 'the yarns', path: [...path, 'yarnLinearDensity'] }],
    });
  }
  return { warpShare: found.warpShare, remarks: [assumed(`warp share ${share} from its yarns`)] };
}

const modelOf = ({ transverseModel, shearModel, xi }: FabricEntry): Fabric['model'] =>
  defined({ E2: transverseModel, G12: shearModel ?? transverseModel, xiE2: xi?.E2, xiG12: xi?.G12 });

/**
 * A fabric of the file with its fibres and resin found and the library's values filled in; undefined when a name is unknown
 * or keys contradict each other, which is noted.
 */
export function resolveFabric(context: Context, name: string, entry: FabricEntry): ResolvedFabric | undefined {
  const path = ['materials', name];
  const from = base(context, 'fabric', library.fabrics, entry.from, path);
  if (entry.from !== undefined && from === undefined) return undefined;
  const architecture = needed(
    entry.architecture ?? from?.architecture,
    'architecture',
    path,
    'ud, woven, multiaxial or mat',
  );
  const weave = entry.weave ?? (entry.architecture === undefined ? from?.weave : undefined);
  const faults = fabricFaults(entry, path, { architecture, weave });
  context.problems.push(...faults);

  const [firstLayer] = entry.layers ?? [];
  const layered = entry.layers?.every((layer) => layer.fibre !== undefined) ? firstLayer?.fibre : undefined;
  const fibreName = needed(entry.fibre ?? layered ?? from?.fibre, 'fibre', path, 'the name of a fibre');
  const fibrePath = entry.fibre !== undefined ? ['fibre'] : layered !== undefined ? ['layers', 0, 'fibre'] : [];
  const fibre = findFibre(context, fibreName, [...path, ...fibrePath]);
  const weftFibre =
    entry.weftFibre === undefined ? undefined : findFibre(context, entry.weftFibre, [...path, 'weftFibre']);
  const resin = findResin(context, entry.resin, [...path, 'resin']);
  const total = layersMass(entry, path);
  const layers = total === undefined ? [] : layersOf(context, entry, total, path);
  if (fibre === undefined || resin === undefined || layers === undefined || faults.length > 0) return undefined;
  if (entry.weftFibre !== undefined && weftFibre === undefined) return undefined;

  const yarns = ofYarns(name, entry, path);
  const withMass = { ...entry, arealMass: entry.arealMass ?? yarns.arealMass };
  useOwn(context, 'fabric', name, withMass, from);
  const libraryMass = from === undefined ? undefined : entryValues(from).arealMass;
  const model = modelOf(entry) ?? {};
  return defined({
    name,
    fibre,
    weftFibre,
    resin,
    architecture,
    arealMass: needed(
      total ?? entry.arealMass ?? yarns.arealMass ?? libraryMass,
      'arealMass',
      path,
      'the dry areal mass',
    ),
    fibreVolumeFraction: entry.fibreVolumeFraction,
    voidFraction: entry.voidFraction,
    voidModel: entry.voidModel,
    weave,
    warpShare: entry.warpShare ?? yarns.warpShare,
    crimpFactor: entry.crimpFactor,
    yarnCount: entry.yarnCount,
    weftCount: entry.weftCount,
    harness: entry.harness,
    layers: layers.length > 0 ? layers : entry.architecture === undefined ? from?.layers : undefined,
    matModel: entry.matModel,
    model: Object.keys(model).length === 0 ? undefined : model,
    strengths: entry.strengths,
    remarks: yarns.remarks.length === 0 ? undefined : yarns.remarks,
  }) as ResolvedFabric;
}
