import { type LoadResult, loadNotes } from '../../design/index.js';
import type { Note } from '../../provenance/index.js';
import type { UnitSystem } from '../../quantity/index.js';
import type { Block } from '../blocks.js';
import { heading, slug } from './build.js';
import { residualBlocks } from './loads/cured-shape.js';
import { envelopeBlocks } from './loads/envelope.js';
import { stressProfile } from './loads/profile.js';
import { progressiveBlocks } from './loads/progressive.js';
import { loadFacts, responseTable } from './loads/response.js';
import { loadSandwich } from './loads/sandwich.js';
import { loadShear } from './loads/shear.js';
import { strengthBlocks } from './loads/strength.js';
import { stressTables } from './loads/stresses.js';

/**
 * The notes of a load case without the assumptions that stand with an earlier one, be it of the same laminate or that they name no
 * ply of it; warnings stand with every load that they concern.
 */
function newNotes(result: LoadResult, earlier: readonly LoadResult[]): Note[] {
  const said = (load: LoadResult): Set<string> => new Set(loadNotes(load).map(({ text }) => text));
  const anywhere = new Set(earlier.flatMap((load) => [...said(load)]));
  const same = new Set(
    earlier.filter(({ model }) => model.laminate === result.model.laminate).flatMap((load) => [...said(load)]),
  );
  const names = result.laminate.laminate.plies.map(({ name }) => `(${name}`);
  const isNamed = (text: string): boolean => names.some((name) => text.includes(name));
  return loadNotes(result).filter(
    ({ level, text }) => level === 'warning' || !(same.has(text) || (anywhere.has(text) && !isNamed(text))),
  );
}

/** What the report says about one load case; `earlier` ones have said their assumptions already. */
export function loadSection(result: LoadResult, units: UnitSystem, earlier: readonly LoadResult[] = []): Block[] {
  const { model, response } = result;
  const id = `load-${slug(model.name)}`;
  const title = `Stress through the thickness, load ${model.name}`;
  return [
    heading(2, `Load ${model.name} on laminate ${model.laminate}`, id),
    ...loadFacts(result, units),
    responseTable(result, id),
    ...stressProfile(result, response, { id: `${id}-profile`, title, units }),
    ...stressTables(result, id),
    ...strengthBlocks(result, id, units),
    ...envelopeBlocks(result, id, units),
    ...progressiveBlocks(result, id, units),
    ...residualBlocks(result, id, units),
    ...loadShear(result, id, units),
    ...loadSandwich(result, id),
    { kind: 'notes', notes: newNotes(result, earlier) },
  ];
}
