import type { LoadResult } from '../../../design/index.js';
import { short } from './words.js';

/** What ends a load case besides its layers: how far the load may grow, and what happens then. */
export interface Limit {
  readonly ratio: number;
  /** "the core shears" */
  readonly what: string;
  /** What the ratio multiplies. */
  readonly of: string;
}

const least = (limits: readonly Limit[]): Limit | undefined =>
  limits.reduce<Limit | undefined>((a, b) => (a === undefined || b.ratio < a.ratio ? b : a), undefined);

/** The face that wrinkles first; undefined when none is compressed. */
export function wrinklingLimit({ sandwich, residual }: LoadResult): Limit | undefined {
  if (sandwich === undefined) return undefined;
  // Stress of temperature and moisture does not grow with the load.
  const of = residual === undefined ? 'the load' : 'its stress under this load';
  return least(
    (['tool', 'bag'] as const).flatMap((face) =>
      (['x', 'y'] as const).flatMap((axis) => {
        const { ratio } = sandwich[face][axis];
        return ratio === undefined ? [] : [{ ratio, what: `the ${face} face wrinkles along ${axis}`, of }];
      }),
    ),
  );
}

/** Shear of the core; undefined without a shear force or a strength. */
export function coreLimit({ sandwich }: LoadResult): Limit | undefined {
  const ratio = sandwich?.coreShear?.ratio;
  return ratio === undefined ? undefined : { ratio, what: 'the core shears', of: 'the load' };
}

/** The lesser of the two; undefined when neither is known. */
export const sandwichLimit = (result: LoadResult): Limit | undefined =>
  least([wrinklingLimit(result), coreLimit(result)].filter((one) => one !== undefined));

/** "at 0.703 of the load", "at 1.4 times the load". */
export const atWords = ({ ratio, of }: Limit): string => `at ${short(ratio)} ${ratio < 1 ? 'of' : 'times'} ${of}`;

/** "THE CORE SHEARS, at 0.703 of the load": a limit that the load as given passes. */
export const passedWords = (limit: Limit, first = ''): string =>
  `${`${limit.what}${first}`.toUpperCase()}, ${atWords(limit)}`;
