import type { LaminateArm } from '../../fracture/index.js';
import { type Note, type SourceKey, uniqueNotes, uniqueSources } from '../../provenance/index.js';
import {
  armCeiling,
  type BridgingLaw,
  type BridgingZone,
  countedWidth,
  type Discreteness,
  showArmBreaks,
  type ToughnessArm,
  toughness,
} from '../../stitch/index.js';
import type { Working } from '../../working/index.js';
import { defined } from '../assemble/constituents.js';
import type { LaminateModel, StitchingModel } from '../model.js';
import { halfLaminateArms } from './stitch-crack.js';

/** A crack at mid-plane that grows among stitches in one direction, the halves of the laminate beside it. SI units. */
export interface StitchGrowth {
  readonly bridgingLength: number;
  readonly zone: BridgingZone;
  /** Between the rows that it meets, m; absent for a single row. */
  readonly rowDistance?: number;
  readonly discreteness?: Discreteness;
  /** Toughness at which the halves break, J/m²; absent without strengths. */
  readonly ceiling?: number;
  /** How far it can grow among the stitches: the width of an edge band, m. */
  readonly bandWidth?: number;
}

/** Growth across the rows and along them; near an edge across them alone. */
interface StitchGrowths {
  readonly across: StitchGrowth;
  readonly along?: StitchGrowth;
  readonly notes: readonly Note[];
  readonly sources: readonly SourceKey[];
}

/** What the arms do while a crack grows among stitches whose rows run along x of the laminate. */
export function growthOf(
  model: StitchingModel,
  { laminate }: LaminateModel,
  law: BridgingLaw,
  working?: Working,
): StitchGrowths {
  const { pattern } = model.plan;
  const { rowsMetAcross, rowsMetAlong } = model.summary;
  const known = new Set(laminate.notes.map(({ text }) => text));
  const grown = (turn: 0 | 90, rowDistance: number | undefined, bandWidth?: number) => {
    const own = working?.part(turn === 90 ? 'across' : 'along');
    const arms = halfLaminateArms(laminate, turn, own);
    const rows = defined({ rowDistance, length: bandWidth });
    const found = growthIn(arms, model.summary.penetrationDensity, law, rows, own);
    return { ...found, notes: found.notes.filter(({ text }) => !known.has(text)) };
  };
  const band = pattern.kind === 'rows' ? countedWidth(pattern) : undefined;
  const across = grown(90, rowsMetAcross?.spacing, band);
  const along = band === undefined ? grown(0, rowsMetAlong.spacing) : undefined;
  return {
    across: across.growth,
    ...(along === undefined ? {} : { along: along.growth }),
    notes: [
      { level: 'assumption', text: 'the rows run along x of the laminate' },
      ...(along === undefined ? across.notes : directed(across.notes, along.notes)),
    ],
    sources: uniqueSources(across.sources, along?.sources ?? []),
  };
}

function growthIn(
  arms: readonly [LaminateArm, LaminateArm],
  penetrationDensity: number,
  law: BridgingLaw,
  rows: { readonly rowDistance?: number; readonly length?: number },
  working?: Working,
): { growth: StitchGrowth; notes: readonly Note[]; sources: readonly SourceKey[] } {
  const [arm, otherArm] = arms.map(({ bendingStiffness, thickness }) => ({ bendingStiffness, thickness })) as [
    ToughnessArm,
    ToughnessArm,
  ];
  // The bond is no part of these lengths; its toughness is that of a coupon.
  const found = toughness(
    { law: { ...law, notes: [] }, penetrationDensity, bondToughness: 0, arm, otherArm, ...rows },
    working,
  );
  if (working !== undefined) showArmBreaks(arms, working);
  const { bridgingLength = 0, zone = { low: 0, high: 0, needed: 0 }, discreteness } = found;
  return {
    growth: defined({
      bridgingLength,
      zone,
      rowDistance: rows.rowDistance,
      discreteness,
      ceiling: armCeiling(...arms),
      bandWidth: rows.length,
    }),
    notes: uniqueNotes([...found.notes, ...arms.flatMap(({ notes }) => notes)]),
    sources: uniqueSources(found.sources, ...arms.map(({ sources }) => sources)),
  };
}

/** Notes of both directions, once where they say the same. */
function directed(across: readonly Note[], along: readonly Note[]): Note[] {
  const of = (words: string, notes: readonly Note[], others: readonly Note[]): Note[] =>
    notes.map((note) =>
      others.some(({ text }) => text === note.text)
        ? note
        : { ...note, text: `growing ${words} the rows: ${note.text}` },
    );
  return uniqueNotes([...of('across', across, along), ...of('along', along, across)]);
}
