import type { ToughnessRow } from './compare-toughness.js';
import { type Bends, bendsOf } from './coupons.js';
import type { StitchValidation } from './results.js';
import { digits } from './words.js';

/**
 * What keeping a gate says: `independent` that the model meets the print; `wide` little, since much that is wrong would keep it; `circular` nothing,
 * since the band is made from the print that it is asked of.
 */
export type Weight = 'independent' | 'wide' | 'circular';

/** What a prediction must keep to, for a printed row that was read and may gate. */
export interface Gate {
  readonly dataSet: string;
  readonly what: string;
  readonly band: string;
  /** Why the band is as wide as it is. */
  readonly because: string;
  readonly weight: Weight;
  /** Laws it is asked of; the other is reported only. */
  readonly laws: readonly Bends[];
  readonly value: Readonly<Record<Bends, string>>;
  readonly passes: Readonly<Record<Bends, boolean>>;
}

type Asked = Omit<Gate, 'value' | 'passes'> & {
  readonly of: (bends: Bends) => { readonly value: string; readonly passes: boolean };
};

const defaultOnly: readonly Bends[] = ['rigid'];

function toughnessOf({ toughness }: StitchValidation, bends: Bends, dataSet: string): ToughnessRow {
  const row = toughness[bends].find(({ comparison }) => comparison.dataSet === dataSet);
  if (row === undefined) throw new Error(`no toughness of ${dataSet}`);
  return row;
}

/** A printed ratio between the ends of both columns. */
function ratioBetween(found: StitchValidation): Asked {
  return {
    dataSet: 'chen-2001',
    what: 'ratio of toughness in opening at 64 per square inch',
    band: 'printed value between the low end of the steady range and the high end of the specimen range',
    because:
      'density read, arm, bond and thread recalled. Wide: what lies within a factor of 2 to 3 or more of the print passes. The high end is that of a specimen whose arms bend beyond linear beams, see the cases',
    weight: 'wide',
    laws: bendsOf,
    of: (bends) => {
      const { steady, specimen, published } = toughnessOf(found, bends, 'chen-2001');
      return {
        value: `${digits(published)} between ${digits(steady.low)} and ${digits(specimen.high)}, ends a factor of ${digits(specimen.high / steady.low)} apart`,
        passes: steady.low <= published && published <= specimen.high,
      };
    },
  };
}

/** The arms of the dense pattern break. */
function armsBreak({ arms }: StitchValidation): Asked {
  return {
    dataSet: 'chen-2001',
    what: 'arms of a plain double cantilever at 64 per square inch',
    band: 'the arm is what limits, with the single values, and more often than at 16 per square inch',
    because: 'a way to fail, not a number; thickness of the arm recalled',
    weight: 'independent',
    laws: bendsOf,
    of: (bends) => {
      const { dense, sparse } = arms[bends];
      return {
        value: `limited by the ${dense.first}`,
        passes: dense.first === 'arm' && dense.share > sparse.share,
      };
    },
  };
}

/** The greatest ratio in sliding is not passed. */
function slidingNotAbove(found: StitchValidation): Asked {
  const factor = 1.5;
  return {
    dataSet: 'jain-1998',
    what: 'greatest ratio of toughness in sliding',
    band: `neither column's median above ${factor} times the printed value`,
    because: 'the greatest of a series with several threads; all inputs assumed; nothing from below',
    weight: 'independent',
    laws: defaultOnly,
    of: (bends) => {
      const { steady, specimen, published } = toughnessOf(found, bends, 'jain-1998');
      const most = Math.max(steady.median, specimen.median);
      return { value: `${digits(most)} against ${digits(published)}`, passes: most <= factor * published };
    },
  };
}

/** Computed zones are short of printed ones by no more than is said of them. */
function zoneLength({ zones }: StitchValidation, index: number): Asked {
  const [least, most] = [1 / 1.5, 4];
  return {
    dataSet: 'tong-mouritz-bannister-2002',
    what: zones.rigid[index]?.row.quantity ?? '',
    band: `printed over simulated, middle over middle, ${digits(least)} to ${most}`,
    because:
      'the shortfall of 1 to 4 that docs/theory/stitch-toughness.md states, with room for the laminates not being the same; that shortfall was made from these printed zones',
    weight: 'circular',
    laws: bendsOf,
    of: (bends) => {
      const { shortfall } = zones[bends][index] ?? { shortfall: Number.NaN };
      return { value: digits(shortfall), passes: least <= shortfall && shortfall <= most };
    },
  };
}

/** The limiting models lie to the law as to measurements in print. */
function limit({ forms }: StitchValidation, compare: string): Asked {
  const without = compare === 'withoutPullOut';
  const [least, most] = without ? [0.3, 0.7] : [0.8, 1.25];
  return {
    dataSet: 'tong-mouritz-bannister-2002',
    what: without
      ? 'work without pull-out over that of the law'
      : 'work with all stitches pulling out over that of the law',
    band: `${least} to ${most}`,
    because: without
      ? 'about half in print, of one series; bends that give way put more work into stretch'
      : 'called excellent in print; narrow of itself, since anchors give way in nearly all samples',
    weight: without ? 'independent' : 'wide',
    laws: without ? defaultOnly : bendsOf,
    of: (bends) => {
      const predicted = forms[bends].find(({ comparison }) => comparison.compare === compare)?.predicted ?? Number.NaN;
      return { value: digits(predicted), passes: least <= predicted && predicted <= most };
    },
  };
}

/** A statement that must hold. */
function statement(
  { statements }: StitchValidation,
  check: string,
  because: string,
  { weight = 'independent', laws = bendsOf }: Partial<Pick<Gate, 'weight' | 'laws'>> = {},
): Asked {
  const found = statements.find((one) => one.check === check);
  return {
    dataSet: found?.dataSet ?? '',
    what: found?.claim ?? '',
    band: 'holds',
    because,
    weight,
    laws,
    of: (bends) => {
      const finding = found?.findings?.[bends];
      return { value: finding?.holds === true ? 'holds' : 'does not hold', passes: finding?.holds === true };
    },
  };
}

/** Everything that rows of use `validate` demand of the predictions. */
export function gates(found: StitchValidation): readonly Gate[] {
  const asked: readonly Asked[] = [
    ratioBetween(found),
    armsBreak(found),
    slidingNotAbove(found),
    zoneLength(found, 0),
    zoneLength(found, 1),
    limit(found, 'withoutPullOut'),
    limit(found, 'allPullOut'),
    statement(found, 'rise', '5 to 30 mm: 20 mm in print, down to a quarter of it by the shortfall of zones', {
      weight: 'circular',
    }),
    statement(found, 'bothSites', 'each site the weakest in 2 % of the samples or more', { weight: 'wide' }),
    statement(found, 'slidingBelowOpening', 'an order, in both columns, for one laminate in both modes'),
    statement(found, 'thickness', 'a work that grows faster than the thickness, at most with its square', {
      laws: defaultOnly,
    }),
  ];
  return asked.map(({ of, ...gate }) => {
    const [rigid, yielding] = [of('rigid'), of('yielding')];
    return {
      ...gate,
      value: { rigid: rigid.value, yielding: yielding.value },
      passes: { rigid: rigid.passes, yielding: yielding.passes },
    };
  });
}

/** Whether a gate is kept by every law that it is asked of. */
export const isKept = ({ laws, passes }: Gate): boolean => laws.every((bends) => passes[bends]);
