import { SelvageError } from '../../problem/index.js';
import type { LaminateModel, Model } from '../model.js';
import type { Design } from '../read.js';
import { locate, parseSource } from '../source.js';
import { newContext } from './context.js';
import { assembleCoupons } from './coupons.js';
import { assembleLaminate, type Layers } from './laminates.js';
import { assembleLoads } from './loads.js';
import { materialModels } from './materials.js';
import { assembleStitching } from './stitching.js';

/**
 * Resolves every name of a design and computes its derived parts: plies from constituents, fibre fractions of closed tools, stitch plans.
 * @returns the model that reports and studies work on
 * @throws SelvageError all problems at once, each with its place in the file: `unknown-name`, `orientation-code`, `missing-key`,
 * `contradiction`, `out-of-range`, `not-admissible`, `not-computable`
 */
export function assemble(design: Design): Model {
  const context = newContext(design);
  const layers: Layers = new Map();
  const laminates = new Map<string, LaminateModel | undefined>();
  for (const [name, entry] of Object.entries(design.laminates))
    laminates.set(name, assembleLaminate(context, layers, name, entry));
  const stitching = new Map(
    Object.entries(design.stitching ?? {}).map(([name, entry]) => [
      name,
      assembleStitching(context, laminates, name, entry),
    ]),
  );
  const loads = assembleLoads(context, laminates);
  const coupons = assembleCoupons(context, { laminates, stitching });
  if (context.problems.length > 0) throw new SelvageError(locate(context.problems, parseSource(design.source.text)));
  const { title, units = 'metric', notes = [], targets = [] } = design;
  const assembled = [...laminates.values()].filter((one) => one !== undefined);
  return {
    title,
    units,
    notes: typeof notes === 'string' ? [notes] : notes,
    provenance: [...context.used.values()],
    materials: materialModels(layers, assembled),
    laminates: assembled,
    stitching: [...stitching.values()].filter((one) => one !== undefined),
    coupons,
    loads,
    targets,
    source: design.source,
  };
}
