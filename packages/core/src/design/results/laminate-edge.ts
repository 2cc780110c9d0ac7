import {
  type EdgeDelamination,
  type EdgeInterface,
  type EdgeOpening,
  type EdgePeel,
  edgeDelamination,
  type Laminate,
} from '../../laminate/index.js';
import { type Path, SelvageError } from '../../problem/index.js';
import type { Note } from '../../provenance/index.js';
import { defined } from '../assemble/constituents.js';
import type { FreeEdgeEntry } from '../schema/design.js';

/** Where an edge parts first, alone or together with its mirror image, and at which strain. */
export interface FirstOpening {
  readonly below: number;
  readonly opening: 'single' | 'pair';
  readonly strain: number;
}

/** The free edge of a laminate as the design asks for it. */
export interface FreeEdgeResult {
  readonly entry: FreeEdgeEntry;
  readonly found: EdgeDelamination;
  /** With a toughness: the interface that parts at the least strain, pulled and compressed. */
  readonly first?: { readonly tension: FirstOpening; readonly compression: FirstOpening };
  readonly notes: readonly Note[];
}

/**
 * @param path of the entry in the design
 * @throws not-computable at `temperatureChange` when a ply has no thermal expansion
 */
export function freeEdgeOf(
  laminate: Laminate,
  entry: FreeEdgeEntry,
  path: Path,
  notes: readonly Note[],
): FreeEdgeResult {
  const found = located([...path, 'temperatureChange'], () => edgeDelamination(laminate, defined(entry)));
  const tension = firstOf(found.interfaces, (onset) => onset.tension);
  const compression = firstOf(found.interfaces, (onset) => onset.compression);
  return {
    entry,
    found,
    ...(tension === undefined || compression === undefined ? {} : { first: { tension, compression } }),
    notes: [...found.notes, ...notes],
  };
}

/** Problems of a computation get the path of the one key that can be at fault. */
function located<Result>(path: Path, compute: () => Result): Result {
  try {
    return compute();
  } catch (error) {
    if (!(error instanceof SelvageError)) throw error;
    throw new SelvageError(error.problems.map((problem) => ({ path, ...problem })));
  }
}

type Onset = NonNullable<EdgeOpening['onset']>;

function firstOf(interfaces: readonly EdgeInterface[], strainOf: (onset: Onset) => number): FirstOpening | undefined {
  const all = interfaces.flatMap(({ below, single, pair }) =>
    (
      [
        ['single', single],
        ['pair', pair],
      ] as const
    ).flatMap(([opening, found]) =>
      found?.onset === undefined ? [] : [{ below, opening, strain: strainOf(found.onset) }],
    ),
  );
  // Of an interface and its mirror image the first one counts, whatever rounding says.
  return all.reduce<FirstOpening | undefined>(
    (least, one) => (least === undefined || Math.abs(one.strain) < Math.abs(least.strain) * (1 - 1e-9) ? one : least),
    undefined,
  );
}

const openingData = ({ onset, ...rest }: EdgeOpening) => ({
  ...rest,
  ...(onset === undefined ? {} : { onsetTension: onset.tension, onsetCompression: onset.compression }),
});

const peelData = ({ moment, relative, sense }: EdgePeel) => ({ edgeMoment: moment, relative, sense });

/** The free edge in the JSON document; G is per front. */
export function freeEdgeData({ entry, found, first, notes }: FreeEdgeResult): Record<string, unknown> {
  const { strain, temperatureChange, toughness } = entry;
  return {
    ...defined({ strain, temperatureChange, toughness }),
    interfaces: found.interfaces.map(({ single, pair, peel, angles, ...rest }) => ({
      ...rest,
      angles: [...angles],
      ...(single === undefined ? {} : { single: openingData(single) }),
      ...(pair === undefined ? {} : { pair: openingData(pair) }),
      peel: peelData(peel),
    })),
    ...(found.critical === undefined
      ? {}
      : { critical: { below: found.critical.below, opening: found.critical.opening, ...openingData(found.critical) } }),
    ...(first === undefined ? {} : { first }),
    midPlanePeel: peelData(found.midPlanePeel),
    notes,
    sources: found.sources,
  };
}
