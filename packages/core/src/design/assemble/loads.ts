import { freeStrain, sixComponents } from '../../laminate/index.js';
import type { LaminateModel, LoadModel } from '../model.js';
import type { LoadEntry } from '../schema/design.js';
import { defined } from './constituents.js';
import { attempt, type Context, unknownName } from './context.js';

/** The load cases of a design; what contradicts itself or does not fit its laminate is noted at its key. */
export function assembleLoads(
  context: Context,
  laminates: ReadonlyMap<string, LaminateModel | undefined>,
): LoadModel[] {
  return Object.entries(context.design.loads ?? {}).map(([name, entry]) => {
    const path = ['loads', name];
    if (!laminates.has(entry.laminate)) {
      context.problems.push(unknownName('laminate', entry.laminate, [...laminates.keys()], [...path, 'laminate']));
    }
    checkComponents(context, path, entry);
    const found = laminates.get(entry.laminate);
    if (found !== undefined) checkSurroundings(context, path, entry, found);
    return { name, ...entry };
  });
}

/** Each component is a force or a deformation; an envelope has two components. */
function checkComponents(context: Context, path: readonly string[], entry: LoadEntry): void {
  const { N, M, strain, curvature } = entry;
  attempt(context, [...path, 'strain'], () => sixComponents(defined({ N, strain })));
  attempt(context, [...path, 'curvature'], () => sixComponents(defined({ M, curvature })));
  checkOpen(context, path, ['N', 'strain'], N, strain);
  checkOpen(context, path, ['M', 'curvature'], M, curvature);
  const [first, second] = entry.strength?.envelope ?? [];
  if (first === undefined || first !== second) return;
  context.problems.push({
    code: 'contradiction',
    message: `both components of the envelope are ${first}`,
    allowed: 'two different components',
    path: [...path, 'strength', 'envelope'],
  });
}

/** A force left open by `null` follows from a deformation, which must then be given; a component open on both sides is free, without force. */
function checkOpen(
  context: Context,
  path: readonly string[],
  [force, shape]: readonly [string, string],
  forces: readonly (number | null)[] | undefined,
  shapes: readonly (number | null)[] | undefined,
): void {
  if (shapes !== undefined) return;
  forces?.forEach((value, i) => {
    if (value !== null) return;
    context.problems.push({
      code: 'contradiction',
      message: `\`${force}\` leaves ${['x', 'y', 'xy'][i]} open, but no \`${shape}\` is given from which it would follow`,
      allowed: `a value here, 0 where nothing acts, or one in \`${shape}\``,
      path: [...path, force, i],
    });
  });
}

/** Every ply needs the coefficients of what acts on it, and a list of moistures one number for each. */
function checkSurroundings(context: Context, path: readonly string[], entry: LoadEntry, model: LaminateModel): void {
  for (const key of ['temperatureChange', 'temperatureGradient', 'moisture'] as const) {
    const value = entry[key];
    if (value !== undefined) attempt(context, [...path, key], () => freeStrain(model.laminate, { [key]: value }));
  }
}
