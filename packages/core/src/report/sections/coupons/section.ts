import { type CouponResult, couponNotes } from '../../../design/index.js';
import { type Note, uniqueNotes } from '../../../provenance/index.js';
import type { UnitSystem } from '../../../quantity/index.js';
import type { Block } from '../../blocks.js';
import { heading, listOf, slug } from '../build.js';
import { adviceBlocks } from './changes.js';
import { checkBlocks } from './checks.js';
import { densityFigure } from './density.js';
import { couponDrawing } from './drawing.js';
import { couponFacts } from './facts.js';
import { lawFigure } from './law.js';
import { predictionsTable } from './predictions.js';
import { recordBlocks } from './record.js';
import { resistanceFigure } from './resistance.js';
import { verdictSentences } from './verdict.js';

/** Everything that a reader must know of a coupon, from whatever part of it. */
const notesOf = (one: CouponResult): Note[] => {
  const { result, wedge, law, bridging } = one.prediction;
  return uniqueNotes([...couponNotes(one), ...[result, wedge, law, bridging].flatMap((part) => part?.notes ?? [])]);
};

/** The notes without the assumptions that stand with an earlier coupon; warnings stand with every coupon that they concern. */
function newNotes(one: CouponResult, earlier: readonly CouponResult[]): { notes: Note[]; said: boolean } {
  const said = new Set(earlier.flatMap((other) => notesOf(other).map(({ text }) => text)));
  const all = notesOf(one);
  const notes = all.filter(({ level, text }) => level === 'warning' || !said.has(text));
  return { notes, said: notes.length < all.length };
}

/** What the report says about one coupon; `earlier` ones have said their assumptions already. */
export function couponSection(one: CouponResult, units: UnitSystem, earlier: readonly CouponResult[] = []): Block[] {
  const { model } = one;
  const id = `coupon-${slug(model.name)}`;
  const { notes, said } = newNotes(one, earlier);
  return [
    heading(2, model.title === undefined ? `Coupon ${model.name}` : `${model.title} (coupon ${model.name})`, id),
    { kind: 'paragraph', text: verdictSentences(one, units) },
    ...listOf(model.note === undefined ? [] : [model.note]),
    predictionsTable(one, id),
    couponDrawing(one, id, units),
    couponFacts(one, units),
    ...recordBlocks(one, id, units),
    ...resistanceFigure(one, id, units),
    ...lawFigure(one, id, units),
    ...adviceBlocks(one, id, densityFigure(one, id, units), units),
    ...checkBlocks(one, id, units),
    ...listOf(said ? ['Assumptions that stand with an earlier coupon hold here too.'] : []),
    { kind: 'notes', notes },
  ];
}
