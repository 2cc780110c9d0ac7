import type { LoadResult } from '../../../design/index.js';
import type { LaminateFailure } from '../../../laminate/index.js';
import type { UnitSystem } from '../../../quantity/index.js';
import type { Block, Cell } from '../../blocks.js';
import { amount, heading, listOf, table } from '../build.js';
import { atWords, type Limit, passedWords, sandwichLimit } from './limits.js';
import { criterionNames, faceWords, isMechanical, layerName, percent, short } from './words.js';

/** The criterion by which the load may be raised least; undefined when no load breaks anything. */
export function weakestBy(failures: readonly LaminateFailure[]): LaminateFailure | undefined {
  return failures
    .filter(({ ratio }) => ratio !== undefined)
    .reduce<LaminateFailure | undefined>(
      (least, one) => (least === undefined || (one.ratio ?? 0) < (least.ratio ?? 0) * (1 - 1e-9) ? one : least),
      undefined,
    );
}

const where = ({ ply, name, face, mode }: LaminateFailure): string =>
  `layer ${layerName(ply, name)}, ${face === undefined ? '' : `${faceWords[face]}, `}${mode}`;

/** What of a sandwich ends the load before any layer does. */
const beforeLayers = (limit: Limit): string =>
  limit.ratio < 1 ? passedWords(limit, ' first') : `${limit.what} first, ${atWords(limit)}: it may grow no further`;

/** What the ratios mean for the load as given. */
function verdict(result: LoadResult, units: UnitSystem): string[] {
  const { failures } = result;
  const least = weakestBy(failures);
  const limit = sandwichLimit(result);
  const before =
    limit !== undefined && limit.ratio < (least?.ratio ?? Number.POSITIVE_INFINITY) ? [beforeLayers(limit)] : [];
  return [...before, ...layerVerdict(failures, least, before.length > 0, units)];
}

function layerVerdict(
  failures: readonly LaminateFailure[],
  least: LaminateFailure | undefined,
  later: boolean,
  units: UnitSystem,
): string[] {
  if (least?.ratio === undefined) return ['no load of this kind breaks a layer'];
  const { ratio } = least;
  const by = `${criterionNames[least.criterion]}: ${where(least)}`;
  if (ratio === 0) return [`stress from temperature and moisture alone breaks a layer before any load acts (${by})`];
  const most = Math.max(...failures.map((one) => one.ratio ?? 0));
  return [
    ratio >= 1
      ? later
        ? `the first layer would break at ${short(ratio)} times the load (${by})`
        : `no layer breaks: the load may grow to ${short(ratio)} times itself, a margin of ${percent(ratio - 1, units)} (${by})`
      : `A LAYER BREAKS: first failure at ${percent(ratio, units)} of the load (${by})`,
    ...(most > 1.02 * ratio
      ? [
          `the criteria put first failure between ${short(ratio)} and ${short(most)} times the load; the spread is part of the answer`,
        ]
      : []),
  ];
}

const ratioCell = (value: number | undefined): Cell => (value === undefined ? 'no limit' : amount(value, 'number'));
const usedCell = (value: number | undefined): Cell =>
  value === undefined ? '0 %' : value === 0 ? 'all' : amount(1 / value, 'fraction', 3);

/** First-ply failure by every criterion; the ratio multiplies the load as given. */
export function failureTable(failures: readonly LaminateFailure[], id: string, caption: string): Block {
  const residual = failures.some((one) => one.withoutResidual !== undefined);
  const rows = failures.map((one): Cell[] => [
    criterionNames[one.criterion],
    ratioCell(one.ratio),
    ...(residual ? [ratioCell((one.withoutResidual ?? one).ratio)] : []),
    usedCell(one.ratio),
    one.ply === undefined ? '–' : `${one.ply} ${one.name ?? ''}`.trim(),
    one.face === undefined ? '–' : faceWords[one.face],
    one.mode,
  ]);
  return table(
    id,
    caption,
    [
      { label: 'Criterion' },
      { label: 'Ratio' },
      ...(residual ? [{ label: 'without residual stress' }] : []),
      { label: 'Used' },
      { label: 'Layer' },
      { label: 'Face' },
      { label: 'Mode' },
    ],
    rows,
  );
}

/** Layers whose material gives no strengths, by name. */
function unknown({ laminate }: LoadResult): string {
  const names = laminate.laminate.plies.filter((ply) => ply.core !== true && ply.strengths === undefined);
  return [...new Set(names.map(({ name }) => name))].join(', ');
}

/** First-ply failure under the mechanical load; what is missing when there is no answer. */
export function strengthBlocks(result: LoadResult, id: string, units: UnitSystem): Block[] {
  const { failures } = result;
  if (!isMechanical(result)) return [];
  if (failures.length === 0) {
    const names = unknown(result);
    const missing = names === '' ? 'no layer gives' : `not given for ${names}:`;
    return listOf([`no strength ratio; ${missing} strengths Xt, Xc, Yt, Yc, S`]);
  }
  return [
    heading(3, 'First layer to fail', `${id}-strength`),
    ...listOf(verdict(result, units)),
    failureTable(
      failures,
      `${id}-failure`,
      `First-ply failure: by how much the load may be multiplied until a layer breaks, and how much of that it uses`,
    ),
  ];
}
