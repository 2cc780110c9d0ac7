import { type Path, type Problem, SelvageError } from '../../problem/index.js';
import { type Note, type SourceKey, uniqueSources } from '../../provenance/index.js';
import { defined } from '../assemble/constituents.js';
import type { LaminateModel, Model } from '../model.js';
import { locate, parseSource } from '../source.js';
import { type BlisterResult, blisterData, blisterOf } from './laminate-blister.js';
import { type FreeEdgeResult, freeEdgeData, freeEdgeOf } from './laminate-edge.js';
import { expansionData, expansionOf, type LaminateExpansion } from './laminate-expansion.js';
import { type PanelResult, panelData, panelOf } from './laminate-panel.js';
import { remembered } from './remembered.js';

/** What a laminate does by itself, and the checks that the design asks for. */
export interface LaminateChecks {
  readonly expansion?: LaminateExpansion;
  readonly freeEdge?: FreeEdgeResult;
  readonly panel?: PanelResult;
  readonly blister?: BlisterResult;
}

interface Asked<Entry> {
  readonly laminate: LaminateModel['laminate'];
  readonly entry: Entry;
  readonly path: Path;
  readonly sewn: readonly Note[];
}

/** A check takes a while, and most laminates stay the same while a design is worked on. */
const check = <Entry, Result>(
  of: (laminate: LaminateModel['laminate'], entry: Entry, path: Path, sewn: readonly Note[]) => Result,
) => remembered(({ laminate, entry, path, sewn }: Asked<Entry>) => of(laminate, entry, path, sewn), 20);

const edgeCheck = check(freeEdgeOf);
const panelCheck = check(panelOf);
const blisterCheck = check(blisterOf);

/** The plans that sew a laminate, as a note; none when it is not sewn. */
function sewnNotes({ name }: LaminateModel, { stitching }: Pick<Model, 'stitching'>): Note[] {
  const plans = stitching.filter((plan) => plan.laminate === name).map((plan) => plan.name);
  if (plans.length === 0) return [];
  return [
    {
      level: 'assumption',
      text: `These numbers are for the unstitched laminate: what thread does to it is not counted (stitch plan ${plans.join(', ')}).`,
    },
  ];
}

/**
 * Expansion, free edge, panel and blister of one laminate.
 * @throws SelvageError all problems of its checks at once, each with its place in the file
 */
export function laminateChecks(model: LaminateModel, design: Pick<Model, 'stitching' | 'source'>): LaminateChecks {
  const { laminate, freeEdge, panel, blister } = model;
  const at = (key: string) => ['laminates', model.name, key];
  const sewn = sewnNotes(model, design);
  const problems: Problem[] = [];
  const attempt = <Result>(compute: () => Result): Result | undefined => {
    try {
      return compute();
    } catch (error) {
      if (!(error instanceof SelvageError)) throw error;
      problems.push(...error.problems);
      return undefined;
    }
  };
  const checks = defined({
    expansion: expansionOf(laminate),
    freeEdge: freeEdge && attempt(() => edgeCheck({ laminate, entry: freeEdge, path: at('freeEdge'), sewn })),
    panel: panel && attempt(() => panelCheck({ laminate, entry: panel, path: at('panel'), sewn })),
    blister: blister && attempt(() => blisterCheck({ laminate, entry: blister, path: at('blister'), sewn })),
  });
  if (problems.length > 0) throw new SelvageError(locate(problems, parseSource(design.source.text)));
  return checks;
}

/** Sources of every model that the checks used. */
export const checkSources = ({ expansion, freeEdge, panel, blister }: LaminateChecks): SourceKey[] =>
  uniqueSources(
    expansion?.thermal?.sources ?? [],
    expansion?.moisture?.sources ?? [],
    freeEdge?.found.sources ?? [],
    panel?.sources ?? [],
    blister?.found.sources ?? [],
  );

/** The checks in the JSON document. */
export function checksData({ expansion, freeEdge, panel, blister }: LaminateChecks): Record<string, unknown> {
  return {
    ...(expansion === undefined ? {} : { expansion: expansionData(expansion) }),
    ...(freeEdge === undefined ? {} : { freeEdge: freeEdgeData(freeEdge) }),
    ...(panel === undefined ? {} : { panel: panelData(panel) }),
    ...(blister === undefined ? {} : { blister: blisterData(blister) }),
  };
}
