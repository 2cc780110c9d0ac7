import { type Laminate, laminate } from '../../laminate/index.js';
import {
  type Fabric,
  fabricFibreThickness,
  fabricPlies,
  fibreVolumeFractionInGap,
  type LibraryEntry,
  library,
  type Ply,
} from '../../material/index.js';
import { fail, type Path } from '../../problem/index.js';
import { type Note, uniqueNotes } from '../../provenance/index.js';
import type { LaminateModel, ListedPlyModel, Process } from '../model.js';
import type { LaminateEntry, MaterialEntry } from '../schema/design.js';
import { claimOf } from './claims.js';
import { defined, ownNames } from './constituents.js';
import { attempt, type Context, own, placed, unknownName } from './context.js';
import { fabricNotes } from './fabric-notes.js';
import { type ResolvedFabric, resolveFabric } from './fabrics.js';
import { resolveCore, resolvePly } from './plies.js';
import { type PlacedEntry, stackOf } from './stack.js';

/** A material as it stands in a stack: a layer of given thickness, or a fabric whose thickness the process decides. */
type Layer = { readonly fixed: Ply; readonly claim?: ListedPlyModel } | { readonly fabric: ResolvedFabric };

/** Each material of the design resolved once, however often it is used. */
export type Layers = Map<string, Layer | undefined>;

function resolve(context: Context, name: string, entry: MaterialEntry): Layer | undefined {
  if (entry.kind === 'fabric') {
    const fabric = resolveFabric(context, name, entry);
    return fabric === undefined ? undefined : { fabric };
  }
  if (entry.kind === 'ply') {
    const fixed = resolvePly(context, name, entry);
    const claim = fixed === undefined ? undefined : claimOf(context, name, entry, fixed);
    return fixed === undefined ? undefined : { fixed, ...(claim === undefined ? {} : { claim }) };
  }
  if (entry.kind === 'core') {
    const fixed = resolveCore(context, name, entry);
    return fixed === undefined ? undefined : { fixed };
  }
  return fail({
    code: 'not-a-choice',
    message: `\`${name}\` is a ${entry.kind}, not a layer`,
    allowed: 'a ply, a fabric or a core',
  });
}

/** The names a stack may use. */
const layerNames = (context: Context): string[] => [
  ...ownNames(context, 'ply'),
  ...ownNames(context, 'fabric'),
  ...ownNames(context, 'core'),
];

function missingLayer(context: Context, item: PlacedEntry): void {
  const { material, path, within } = item;
  const problem = unknownName('ply, fabric or core', material, layerNames(context), path, within);
  const inLibrary = (['plies', 'fabrics', 'cores'] as const).find((kind) =>
    Object.hasOwn(library[kind] as Record<string, LibraryEntry>, material),
  );
  if (/^[sStT]$/.test(material)) {
    context.problems.push({
      ...problem,
      hint: `to mirror or close the stack, \`${material}\` stands behind the bracket: "[0/90]${material}"`,
    });
    return;
  }
  context.problems.push(
    inLibrary === undefined
      ? problem
      : {
          ...problem,
          hint: `it is in the library: declare it under \`materials\` with \`from: ${material}\` and what the library leaves open`,
        },
  );
}

function layerOf(context: Context, layers: Layers, item: PlacedEntry): Layer | undefined {
  const { material, path, within } = item;
  const entry = own(context.design.materials, material);
  if (entry === undefined) {
    const key = `? ${material}`;
    if (!layers.has(key)) missingLayer(context, item);
    layers.set(key, undefined);
    return undefined;
  }
  if (!layers.has(material)) {
    const at: Path = entry.kind === 'fibre' || entry.kind === 'resin' ? path : ['materials', material];
    const before = context.problems.length;
    layers.set(
      material,
      attempt(context, at, () => resolve(context, material, entry)),
    );
    if (within !== undefined && at === path && context.problems.length > before) {
      context.problems.push({ ...(context.problems.pop() as (typeof context.problems)[number]), within });
    }
  }
  return layers.get(material);
}

/** In a bag the fibre fraction is given, of the process or of the fabric itself. */
function inBag(fabric: ResolvedFabric, process: LaminateEntry['process']): Fabric {
  const fibreVolumeFraction = process?.fibreVolumeFraction ?? fabric.fibreVolumeFraction;
  if (fibreVolumeFraction === undefined) {
    return fail({
      code: 'missing-key',
      message: `missing \`fibreVolumeFraction\` of fabric \`${fabric.name}\``,
      allowed: 'a fraction from 0.1 to 0.75, of the fabric or of the process of the laminate',
      hint: 'vacuum infusion usually reaches 0.48 to 0.56, a bag on wet lay-up 0.42 to 0.52 (common practice, no source)',
      path: ['materials', fabric.name],
      atKey: true,
    });
  }
  return { ...fabric, fibreVolumeFraction };
}

/** The process with the fibre fraction that a closed tool leaves. */
function processOf(name: string, entry: LaminateEntry, layers: readonly Layer[]): Process {
  const path = ['laminates', name, 'process'];
  const { kind = 'bag', gap, fibreVolumeFraction } = entry.process ?? {};
  if (entry.process === undefined && layers.every((layer) => 'fixed' in layer)) return { kind: 'given' };
  if (kind === 'bag') {
    if (gap !== undefined)
      contradiction(
        [...path, 'gap'],
        '`gap` is given for a bag',
        'a bag fixes the fibre fraction, a closed tool the gap',
      );
    return { kind, ...(fibreVolumeFraction === undefined ? {} : { fibreVolumeFraction }) };
  }
  if (fibreVolumeFraction !== undefined) {
    contradiction(
      [...path, 'fibreVolumeFraction'],
      '`fibreVolumeFraction` is given for a closed tool',
      'the gap decides it',
    );
  }
  if (gap === undefined)
    return fail({
      code: 'missing-key',
      message: `missing \`gap\` in \`${path.join('.')}\``,
      allowed: 'the gap of the closed tool',
      path,
      atKey: true,
    });
  const fabrics = layers.filter((layer) => 'fabric' in layer);
  if (fabrics.length === 0) {
    contradiction(
      path,
      'a closed tool presses fabrics, but every layer has a fixed thickness',
      'at least one fabric, or no process',
    );
  }
  const fibreThickness = fabrics.reduce((sum, { fabric }) => sum + fabricFibreThickness(fabric), 0);
  const fixedThickness = layers.reduce((sum, layer) => sum + ('fixed' in layer ? layer.fixed.thickness : 0), 0);
  return {
    kind,
    gap,
    fibreVolumeFraction: placed([...path, 'gap'], () =>
      fibreVolumeFractionInGap({ fibreThickness, gap, fixedThickness }),
    ),
  };
}

const contradiction = (path: Path, message: string, allowed: string): never =>
  fail({ code: 'contradiction', message, allowed, path, atKey: true });

function pliesOf(layer: Layer, item: PlacedEntry, process: Process, entry: LaminateEntry): Ply[] {
  const { angle, mirrored } = item;
  if ('fixed' in layer) return [{ ...layer.fixed, angle }];
  const fabric =
    process.kind !== 'closedTool'
      ? inBag(layer.fabric, entry.process)
      : { ...layer.fabric, fibreVolumeFraction: process.fibreVolumeFraction };
  const notes = fabricNotes(layer.fabric, fabric.fibreVolumeFraction);
  const plies = placed(['materials', fabric.name], () => fabricPlies(fabric, { angle, mirrored }));
  return notes.length === 0 ? plies : plies.map((ply) => ({ ...ply, notes: [...ply.notes, ...notes] }));
}

/** The process decides before the fabric: a fibre fraction written with a fabric is not used there, which the report says. */
function unusedFractions(process: Process, layers: readonly Layer[]): Note[] {
  const decided = process.kind === 'given' ? undefined : process.fibreVolumeFraction;
  if (decided === undefined) return [];
  const by = process.kind === 'closedTool' ? 'the gap of the closed tool' : 'the process of the laminate';
  const unused = layers.flatMap((layer) => {
    const own = 'fabric' in layer ? layer.fabric.fibreVolumeFraction : undefined;
    return 'fabric' in layer && own !== undefined && own !== decided ? [{ name: layer.fabric.name, own }] : [];
  });
  const texts = unused.map(
    ({ name, own }) =>
      `${name}: the fibre fraction ${shownPercent(own)} of the design file is not used, ${by} makes it ${shownPercent(decided)}`,
  );
  return uniqueNotes(texts.map((text) => ({ level: 'assumption' as const, text })));
}

const shownPercent = (fraction: number): string => `${(fraction * 100).toFixed(1)} %`;

const withNotes = (laminate: Laminate, notes: readonly Note[]): Laminate =>
  notes.length === 0 ? laminate : { ...laminate, notes: [...laminate.notes, ...notes] };

/** Thickness of the fibres alone; undefined when a ply other than a core does not tell its fibre fraction. */
function fibreThickness(plies: readonly Ply[]): number | undefined {
  let sum = 0;
  for (const ply of plies) {
    if (ply.core === true) continue;
    if (ply.fibreVolumeFraction === undefined) return undefined;
    sum += ply.fibreVolumeFraction * ply.thickness;
  }
  return sum;
}

/** What the design wants to know of a laminate by itself. */
const checksOf = ({ freeEdge, panel, blister }: LaminateEntry) => defined({ freeEdge, panel, blister });

/** One laminate of the design, or undefined when its problems were noted. */
export function assembleLaminate(
  context: Context,
  layers: Layers,
  name: string,
  entry: LaminateEntry,
): LaminateModel | undefined {
  const path = ['laminates', name];
  const stack = attempt(context, path, () => stackOf(name, entry));
  if (stack === undefined) return undefined;
  const found = stack.map((item) => layerOf(context, layers, item));
  const all = found.filter((layer): layer is Layer => layer !== undefined);
  if (all.length < found.length) return undefined;
  return attempt(context, path, () => {
    const process = processOf(name, entry, all);
    const plies = stack.flatMap((item, i) => pliesOf(all[i] as Layer, item, process, entry));
    const solid = fibreThickness(plies);
    return {
      name,
      entries: stack.map(({ material, angle, mirrored }) => ({ material, angle, mirrored })),
      process,
      laminate: withNotes(laminate(plies), unusedFractions(process, all)),
      ...(entry.title === undefined ? {} : { title: entry.title }),
      ...(entry.note === undefined ? {} : { note: entry.note }),
      ...(typeof entry.stack === 'string' ? { code: entry.stack } : {}),
      ...(solid === undefined ? {} : { solidFibreThickness: solid }),
      ...checksOf(entry),
    };
  });
}
