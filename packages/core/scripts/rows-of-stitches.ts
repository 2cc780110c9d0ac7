import { readToughness } from '../src/fracture/coupon/reading.js';
import { type Arm, rowsAcross, type SpecimenEvent, type SpecimenResult, simulateDcb } from '../src/fracture/index.js';
import { type BridgingLaw, bridgingLaw, bridgingLength, stitchType } from '../src/stitch/index.js';
import { testOverSteady } from '../src/stitch/priors.js';

/** A specimen of `testOverSteady.own` in reference-data/stitch-priors.json; SI units. */
export type RowsCase = (typeof testOverSteady.own.cases)[number];

/** What a double cantilever with aligned rows reads, over the steady toughness. */
export interface RowsReading {
  /** From the loads at the onset of growth. */
  readonly byLoad: number;
  /** Work less what unloading would return over the area grown, jumps included, from the middle of the growth on. */
  readonly byArea: number;
}

function armOf({ arm: { E, E3, G, thickness } }: RowsCase): Arm {
  return {
    thickness,
    bendingStiffness: (E * thickness ** 3) / 12,
    axialStiffness: E * thickness,
    shearStiffness: (5 / 6) * G * thickness,
    E3,
  };
}

function lawOf({ thread, beddingIn, arm }: RowsCase): BridgingLaw {
  return bridgingLaw({
    type: stitchType('301-modified'),
    needleThread: { name: 'invented', ...thread },
    thickness: 2 * arm.thickness,
    parameters: { beddingIn },
  });
}

/** Arms with penetrations of one law, as many per area whatever the distance of their rows. */
export interface RowsSpecimen {
  readonly arm: Arm;
  readonly law: BridgingLaw;
  /** 1/m² */
  readonly penetrationDensity: number;
  /** J/m² */
  readonly bondToughness: number;
}

/** A case of the table as arms and law. Arms cannot break. */
export const rowsSpecimen = (one: RowsCase): RowsSpecimen => ({ ...one, arm: armOf(one), law: lawOf(one) });

/** A specimen pulled with its rows at a distance of `ratio` bridging lengths: rows farther apart have a closer pitch. */
export function rowsReading(
  { arm, law, penetrationDensity: N, bondToughness }: RowsSpecimen,
  ratio: number,
): RowsReading {
  const { width, crackLength, growth, bondBeyond } = testOverSteady.own.specimen;
  const rowSpacing = ratio * bridgingLength(arm.bendingStiffness, N, law);
  const length = crackLength + growth + bondBeyond;
  const from = crackLength + rowSpacing / 2;
  const pattern = { kind: 'parallel', pitch: 1 / (N * rowSpacing), rowSpacing } as const;
  const curve = { opening: law.opening, force: law.force };
  const result = simulateDcb({
    arms: [arm, arm],
    width,
    bondToughness,
    crackLength,
    length,
    rows: rowsAcross({ pattern, growth: 'across', width, from, to: length, origin: from, curve, failure: law.failure }),
    until: { crackLength: crackLength + growth },
  });
  const steady = bondToughness + N * law.work;
  return {
    byLoad: readToughness(result, true).toughness / steady,
    byArea: spentPerArea(result, crackLength + growth / 2, width) / steady,
  };
}

/** J/m², from the first onset beyond a crack length to the last one. */
function spentPerArea({ events, states }: SpecimenResult, beyond: number, width: number): number {
  const onsets = events.filter(({ kind, crackLength }) => kind !== 'bond' && crackLength >= beyond);
  const at = (event: SpecimenEvent | undefined) => {
    const state = states.find(({ displacement, load }) => displacement === event?.displacement && load === event?.load);
    if (state === undefined) throw new Error('an onset is not among the states');
    return { spent: state.work - (state.load * state.displacement) / 2, crackLength: state.crackLength };
  };
  const [first, last] = [at(onsets[0]), at(onsets.at(-1))];
  return (last.spent - first.spent) / (width * (last.crackLength - first.crackLength));
}
