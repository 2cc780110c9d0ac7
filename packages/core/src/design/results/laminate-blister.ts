import {
  type EllipseBlisterResult,
  ellipseBlister,
  type Laminate,
  type StripBlisterResult,
  laminate as stack,
  stripBlister,
  type Vector3,
} from '../../laminate/index.js';
import { fail, type Path } from '../../problem/index.js';
import type { Note } from '../../provenance/index.js';
import { defined } from '../assemble/constituents.js';
import { placed } from '../assemble/context.js';
import type { BlisterEntry } from '../schema/design.js';

/** The part of a laminate over a delamination that may buckle. */
export interface Film {
  readonly side: 'tool' | 'bag';
  /** Numbers of its layers, from the tool side. */
  readonly layers: readonly [first: number, last: number];
  readonly laminate: Laminate;
  readonly base: Laminate;
}

/** A delamination inside a laminate as the design asks for it. */
export type BlisterResult = {
  readonly entry: BlisterEntry;
  readonly film: Film;
  readonly notes: readonly Note[];
} & (
  | { readonly shape: 'strip'; readonly strain?: number; readonly found: StripBlisterResult }
  | {
      readonly shape: 'ellipse';
      readonly strain: Vector3;
      readonly width: number;
      readonly found: EllipseBlisterResult;
    }
);

/**
 * @param path of the entry in the design
 * @throws out-of-range at `interface` where there is none, at `strain` when nothing is compressed by it; missing-key, contradiction for
 *   keys that the shape needs or cannot use
 */
export function blisterOf(laminate: Laminate, entry: BlisterEntry, path: Path, notes: readonly Note[]): BlisterResult {
  const film = filmOf(laminate, entry.interface, [...path, 'interface']);
  const { length, toughness } = entry;
  const { base } = film;
  if (entry.shape === 'strip') {
    const strain = stripStrain(entry, path);
    const found = placed(path, () => stripBlister(film.laminate, defined({ length, strain, toughness, base })));
    return { entry, film, shape: 'strip', ...defined({ strain }), found, notes: [...found.notes, ...notes] };
  }
  const width = widthOf(entry, path);
  const strain = ellipseStrain(entry, path);
  const found = placed([...path, 'strain'], () =>
    ellipseBlister(film.laminate, { a: length / 2, b: width / 2, strain, base, ...defined({ toughness }) }),
  );
  return { entry, film, shape: 'ellipse', strain, width, found, notes: [...found.notes, ...notes] };
}

/** The thinner of the two parts; the one at the bag side when both are alike. */
function filmOf({ plies, thickness }: Laminate, below: number, path: Path): Film {
  if (!(Number.isInteger(below) && below < plies.length)) {
    const most = plies.length - 1;
    fail({
      code: 'out-of-range',
      message: `interface = ${below}: the laminate has ${plies.length} ${plies.length === 1 ? 'layer' : 'layers'} when built up`,
      allowed:
        most < 1
          ? 'a laminate of two layers at least'
          : `a whole number from 1 to ${most}: the layers below the delamination`,
      path,
    });
  }
  const [lower, upper] = [stack(plies.slice(0, below)), stack(plies.slice(below))];
  return lower.thickness < upper.thickness - 1e-9 * thickness
    ? { side: 'tool', layers: [1, below], laminate: lower, base: upper }
    : { side: 'bag', layers: [below + 1, plies.length], laminate: upper, base: lower };
}

function stripStrain({ strain, width }: BlisterEntry, path: Path): number | undefined {
  if (width !== undefined) unused('width', 'a strip is as wide as it likes, across x', [...path, 'width']);
  if (typeof strain === 'number' || strain === undefined) return strain;
  return unused('a list of strains', 'a strip takes one strain, along x', [...path, 'strain']);
}

function widthOf({ shape, length, width }: BlisterEntry, path: Path): number {
  if (shape === 'circle') {
    if (width !== undefined) unused('width', 'a circle has its diameter as `length`', [...path, 'width']);
    return length;
  }
  return width ?? missing('width', 'the whole width of the ellipse along y', path);
}

function ellipseStrain({ strain }: BlisterEntry, path: Path): Vector3 {
  const needed = 'strain of the laminate along x, along y and in shear: [x, y, xy]';
  if (strain === undefined) return missing('strain', needed, path);
  if (typeof strain === 'number') {
    return fail({
      code: 'contradiction',
      message: 'one strain is given for a blister that is no strip',
      allowed: needed,
      path: [...path, 'strain'],
    });
  }
  const [x = 0, y = 0, xy = 0] = strain;
  return [x, y, xy];
}

const unused = (what: string, allowed: string, path: Path): never =>
  fail({
    code: 'contradiction',
    message: `${what} is given for a blister that has no use for it`,
    allowed,
    path,
    atKey: true,
  });

const missing = (key: string, allowed: string, path: Path): never =>
  fail({ code: 'missing-key', message: `missing \`${key}\` in \`${path.join('.')}\``, allowed, path, atKey: true });

/** The blister in the JSON document; strains and forces are three, [x, y, xy], for an ellipse and one, along x, for a strip. */
export function blisterData(result: BlisterResult): Record<string, unknown> {
  const { entry, film, notes } = result;
  return {
    shape: entry.shape,
    interface: entry.interface,
    side: film.side,
    layers: [...film.layers],
    thickness: film.laminate.thickness,
    length: entry.length,
    ...(result.shape === 'strip' ? stripData(result.found, result.strain) : ellipseData(result.found, result)),
    ...defined({ toughness: entry.toughness }),
    notes,
    sources: result.found.sources,
  };
}

function stripData({ criticalStrain, criticalN, G, growthStrain }: StripBlisterResult, strain: number | undefined) {
  const compressed = strain !== undefined && strain < 0;
  return {
    ...defined({ strain }),
    criticalStrain,
    criticalN,
    multiplier: compressed ? criticalStrain / strain : null,
    G,
    ...(growthStrain === undefined
      ? {}
      : { growthStrain, growthMultiplier: compressed ? growthStrain / strain : null }),
  };
}

function ellipseData(
  found: EllipseBlisterResult,
  { strain, width }: { readonly strain: Vector3; readonly width: number },
) {
  const { growthMultiplier } = found;
  return {
    width,
    strain: [...strain],
    criticalStrain: [...found.strain],
    criticalN: [...found.N],
    multiplier: found.multiplier,
    G: [...found.G],
    ...(growthMultiplier === undefined
      ? {}
      : { growthStrain: strain.map((value) => value * growthMultiplier), growthMultiplier }),
  };
}
