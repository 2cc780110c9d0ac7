import { type Architecture, type Weave, yarnsPerRepeat } from '../../material/index.js';
import { type Path, type Problem, SelvageError } from '../../problem/index.js';
import type { FabricEntry } from '../schema/design.js';

type Key = keyof FabricEntry;

/** What a fabric is, of its own or by the library entry that completes it. */
interface Decided {
  readonly architecture: Architecture;
  readonly weave: Weave | undefined;
}

/** Keys that say something of one architecture only. */
const owners: readonly (readonly [Key, Architecture])[] = [
  ['weave', 'woven'],
  ['warpShare', 'woven'],
  ['crimpFactor', 'woven'],
  ['yarnCount', 'woven'],
  ['weftCount', 'woven'],
  ['harness', 'woven'],
  ['yarnLinearDensity', 'woven'],
  ['weftLinearDensity', 'woven'],
  ['weftFibre', 'woven'],
  ['layers', 'multiaxial'],
  ['matModel', 'mat'],
];

/** A key that stands beside one that excludes it: both places. */
const against = (
  place: { readonly path: Path; readonly key: string; readonly other: string; readonly label: string },
  words: Pick<Problem, 'message' | 'allowed' | 'hint'>,
): Problem => ({
  code: 'contradiction',
  ...words,
  path: [...place.path, ...place.key.split('.')],
  atKey: true,
  also: [{ label: place.label, path: [...place.path, place.other] }],
});

/** A key that does nothing without another. */
const without = (path: Path, key: string, other: string): Problem => ({
  code: 'missing-key',
  message: `\`${key}\` has no effect without \`${other}\``,
  hint: `give \`${other}\` too, or leave it out`,
  path: [...path, key],
  atKey: true,
});

function* foreign(entry: FabricEntry, path: Path, { architecture }: Decided): Generator<Problem> {
  const place = entry.architecture === undefined ? 'from' : 'architecture';
  for (const [key, owner] of owners) {
    if (entry[key] === undefined || architecture === owner) continue;
    const message = `\`${key}\` is for a ${owner} fabric, this one is ${architecture}`;
    const allowed = `\`${key}\` only with \`architecture: ${owner}\``;
    const hint = 'leave it out, or is the architecture another?';
    yield against({ path, key, other: place, label: architecture }, { message, allowed, hint });
  }
}

function* weaveFaults(entry: FabricEntry, path: Path, { weave }: Decided): Generator<Problem> {
  const { crimpFactor, yarnCount, harness } = entry;
  if (crimpFactor !== undefined && yarnCount !== undefined) {
    const message = '`yarnCount` and `crimpFactor` both decide the crimp';
    const allowed = 'the factor, or the count from which it follows';
    const place = { path, key: 'yarnCount', other: 'crimpFactor', label: 'the factor' };
    yield against(place, { message, allowed, hint: 'keep a measured factor, else the count' });
  }
  if (yarnCount === undefined) {
    for (const key of ['weftCount', 'harness', 'yarnLinearDensity'] as const)
      if (entry[key] !== undefined) yield without(path, key, 'yarnCount');
  }
  if (entry.weftLinearDensity !== undefined && entry.yarnLinearDensity === undefined)
    yield without(path, 'weftLinearDensity', 'yarnLinearDensity');
  if (entry.warpShare !== undefined && entry.yarnLinearDensity !== undefined) {
    const message = '`warpShare` and `yarnLinearDensity` both decide the share of the warp';
    const allowed = 'the share, or the linear densities from which it follows';
    const place = { path, key: 'warpShare', other: 'yarnLinearDensity', label: 'the yarns' };
    yield against(place, { message, allowed, hint: 'leave one of them out' });
  }
  if (harness !== undefined) yield* harnessFaults(harness, weave, entry, path);
}

function* harnessFaults(harness: number, weave: Weave | undefined, entry: FabricEntry, path: Path): Generator<Problem> {
  try {
    yarnsPerRepeat(weave, harness);
  } catch (error) {
    if (!(error instanceof SelvageError)) throw error;
    const also =
      weave === undefined ? [] : [{ label: weave, path: [...path, entry.weave === undefined ? 'from' : 'weave'] }];
    yield* error.problems.map((problem) => ({
      ...problem,
      hint: 'leave it out for the usual one',
      path: [...path, 'harness'],
      also,
    }));
  }
}

function* modelFaults(entry: FabricEntry, path: Path): Generator<Problem> {
  const { transverseModel, shearModel, xi, voidModel, voidFraction } = entry;
  const rules = { E2: transverseModel, G12: shearModel ?? transverseModel };
  for (const key of ['E2', 'G12'] as const) {
    const rule = rules[key];
    if (xi?.[key] === undefined || rule === undefined || rule === 'halpin-tsai') continue;
    const other = key === 'G12' && shearModel !== undefined ? 'shearModel' : 'transverseModel';
    const message = `\`xi.${key}\` belongs to the Halpin-Tsai equation, ${key} is by \`${rule}\``;
    const allowed = `\`xi.${key}\` only with \`${other}: halpin-tsai\``;
    const place = { path, key: `xi.${key}`, other, label: 'the model' };
    yield against(place, { message, allowed, hint: 'leave one of them out' });
  }
  if (voidModel !== undefined && voidFraction === undefined) yield without(path, 'voidModel', 'voidFraction');
}

function* layerFaults({ fibre, strengths, layers = [] }: FabricEntry, path: Path): Generator<Problem> {
  if (layers.length === 0) return;
  for (const [key, given] of [
    ['fibre', fibre],
    ['strengths', strengths],
  ] as const) {
    if (given === undefined || layers.some((layer) => layer[key] === undefined)) continue;
    const message = `\`${key}\` of the fabric has no effect: every layer has its own`;
    const allowed = `\`${key}\` of the layers, or of the fabric for those without their own`;
    const place = { path, key, other: 'layers', label: 'the layers' };
    yield against(place, { message, allowed, hint: 'leave it out' });
  }
}

/**
 * Keys of a fabric that contradict each other or have no effect, each with the place of the other: what belongs to another
 * architecture, a crimp given twice, the share of the warp given twice, a harness that is not of the weave, a measure of
 * reinforcement without its equation, a model of voids without voids.
 */
export function fabricFaults(entry: FabricEntry, path: Path, decided: Decided): Problem[] {
  const elsewhere = [...foreign(entry, path, decided)];
  const woven = decided.architecture === 'woven' ? [...weaveFaults(entry, path, decided)] : [];
  const layered = decided.architecture === 'multiaxial' ? [...layerFaults(entry, path)] : [];
  return [...elsewhere, ...woven, ...layered, ...modelFaults(entry, path)];
}
