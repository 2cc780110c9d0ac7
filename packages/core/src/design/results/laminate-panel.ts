import {
  type BucklingLoad,
  type Laminate,
  type PlateBuckling,
  type PlateDeflection,
  type PlateVibration,
  plateBuckling,
  plateDeflection,
  plateVibration,
} from '../../laminate/index.js';
import { fail, type Path } from '../../problem/index.js';
import { type Note, type SourceKey, uniqueNotes, uniqueSources } from '../../provenance/index.js';
import { placed } from '../assemble/context.js';
import type { PanelEntry } from '../schema/design.js';

/** A panel of a laminate as the design asks for it. */
export interface PanelResult {
  readonly entry: PanelEntry;
  /** Where a compression is given. */
  readonly buckling?: PlateBuckling;
  /** Where every ply has a density. */
  readonly vibration?: PlateVibration;
  /** Where a pressure is given. */
  readonly deflection?: PlateDeflection;
  readonly notes: readonly Note[];
  readonly sources: readonly SourceKey[];
}

const usualModes = 4;

/**
 * @param path of the entry in the design
 * @throws out-of-range at `compression` when it compresses in no direction, at `modes` when that is no whole number
 */
export function panelOf(laminate: Laminate, entry: PanelEntry, path: Path, notes: readonly Note[]): PanelResult {
  const { length: a, width: b, compression, pressure, modes = usualModes } = entry;
  if (!Number.isInteger(modes)) {
    fail({
      code: 'out-of-range',
      message: `modes = ${modes} is not a whole number`,
      allowed: 'a whole number from 1 to 25',
      path: [...path, 'modes'],
    });
  }
  const buckling = compression === undefined ? undefined : bucklingOf(laminate, { a, b }, compression, path);
  const dense = laminate.plies.every((ply) => ply.density !== undefined);
  const vibration = dense ? placed(path, () => plateVibration(laminate, { a, b }, { modes })) : undefined;
  const deflection =
    pressure === undefined
      ? undefined
      : placed([...path, 'pressure'], () => plateDeflection(laminate, { a, b }, { pressure, shape: 'uniform' }));
  const found = [buckling, vibration, deflection].filter((one) => one !== undefined);
  return {
    entry,
    ...(buckling === undefined ? {} : { buckling }),
    ...(vibration === undefined ? {} : { vibration }),
    ...(deflection === undefined ? {} : { deflection }),
    notes: uniqueNotes([...found.flatMap((one) => one.notes), ...notes]),
    sources: uniqueSources(...found.map((one) => one.sources)),
  };
}

function bucklingOf(
  laminate: Laminate,
  plate: { readonly a: number; readonly b: number },
  [x, y]: readonly [number, number],
  path: Path,
): PlateBuckling {
  const at = [...path, 'compression'];
  if (!(Math.max(x, y) > 0)) {
    fail({
      code: 'out-of-range',
      message: '`compression` compresses the panel in no direction',
      allowed: 'one of the two above 0; a negative one pulls',
      path: at,
    });
  }
  // Forces of plates count tension as positive.
  return placed(at, () => plateBuckling(laminate, plate, { Nx: 0 - x, Ny: 0 - y }));
}

const loadData = ({ multiplier, Nx, Ny, m, n }: BucklingLoad) => ({
  multiplier,
  Nx,
  Ny,
  m: m ?? null,
  n: n ?? null,
});

/** The panel in the JSON document: forces N/m, tension positive; m and n are null where the panel crimps. */
export function panelData({
  entry,
  buckling,
  vibration,
  deflection,
  notes,
  sources,
}: PanelResult): Record<string, unknown> {
  const { length, width, compression, pressure } = entry;
  return {
    length,
    width,
    ...(compression === undefined ? {} : { compression: [...compression] }),
    ...(buckling === undefined
      ? {}
      : { buckling: { thin: loadData(buckling.thin), withShear: loadData(buckling.withShear) } }),
    ...(vibration === undefined
      ? {}
      : {
          modes: vibration.modes.map(({ m, n, thin, withShear }) => ({
            m,
            n,
            frequencyThin: thin,
            frequency: withShear,
          })),
        }),
    ...(pressure === undefined ? {} : { pressure }),
    ...(deflection === undefined ? {} : { deflectionThin: deflection.thin, deflection: deflection.withShear }),
    notes,
    sources,
  };
}
