import { type LoadResult, loadNotes } from '../../design/index.js';
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

/** What the report says about one load case. */
export function loadSection(result: LoadResult, units: UnitSystem): Block[] {
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
    { kind: 'notes', notes: loadNotes(result) },
  ];
}
