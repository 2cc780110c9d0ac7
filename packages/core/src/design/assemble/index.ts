import { SelvageError } from '../../problem/index.js';
import type { LaminateModel, LoadModel, Model } from '../model.js';
import type { Design } from '../read.js';
import { locate, parseSource } from '../source.js';
import { type Context, newContext, unknownName } from './context.js';
import { assembleLaminate, type Layers } from './laminates.js';
import { assembleStitching } from './stitching.js';

function loads(context: Context, laminates: ReadonlyMap<string, unknown>): LoadModel[] {
  return Object.entries(context.design.loads ?? {}).map(([name, entry]) => {
    if (!laminates.has(entry.laminate)) {
      context.problems.push(
        unknownName('laminate', entry.laminate, [...laminates.keys()], ['loads', name, 'laminate']),
      );
    }
    return { name, ...entry };
  });
}

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
  const stitching = Object.entries(design.stitching ?? {}).map(([name, entry]) =>
    assembleStitching(context, laminates, name, entry),
  );
  const assembledLoads = loads(context, laminates);
  if (context.problems.length > 0) throw new SelvageError(locate(context.problems, parseSource(design.source.text)));
  const { title, units = 'metric', notes = [], targets = [] } = design;
  return {
    title,
    units,
    notes: typeof notes === 'string' ? [notes] : notes,
    provenance: [...context.used.values()],
    laminates: [...laminates.values()].filter((one) => one !== undefined),
    stitching: stitching.filter((one) => one !== undefined),
    loads: assembledLoads,
    targets,
    source: design.source,
  };
}
