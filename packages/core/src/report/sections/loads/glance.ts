import type { LoadResult, Results } from '../../../design/index.js';
import type { Block, Cell } from '../../blocks.js';
import { amountOr, table } from '../build.js';
import { atWords, coreLimit, sandwichLimit, wrinklingLimit } from './limits.js';
import { weakestBy } from './strength.js';
import { criterionNames, isMechanical, short } from './words.js';

const isJudged = (one: LoadResult): boolean =>
  (isMechanical(one) && one.failures.length > 0) || sandwichLimit(one) !== undefined;

/** Load cases with their least strength ratio, the load of the last layer, and the limits of a sandwich; absent when none has any. */
export function loadsTable({ loads }: Results): Block[] {
  const judged = loads.filter(isJudged);
  if (judged.length === 0) return [];
  const sandwich = judged.some((one) => one.sandwich !== undefined);
  const rows = judged.map((one): Cell[] => {
    const least = weakestBy(one.failures);
    return [
      one.model.name,
      one.model.laminate,
      amountOr(least?.ratio, 'number', one.failures.length === 0 ? 'not known' : 'no limit'),
      least === undefined ? '–' : criterionNames[least.criterion],
      least?.ply === undefined ? '–' : `${least.ply} ${least.name ?? ''}`.trim(),
      amountOr(one.progressive?.lastPly.ratio, 'number', '–'),
      ...(sandwich
        ? [
            amountOr(wrinklingLimit(one)?.ratio, 'number', '–'),
            amountOr(coreLimit(one)?.ratio, 'number', one.sandwich?.coreShear === undefined ? '–' : 'not known'),
          ]
        : []),
    ];
  });
  return [
    table(
      'loads',
      `Load cases at a glance: times the load until the first layer breaks, by the criterion that says least, and until the last${sandwich ? '; wrinkling of a face and shear of the core, strength over stress' : ''}`,
      [
        { label: 'Load' },
        { label: 'Laminate' },
        { label: 'First layer' },
        { label: 'Criterion' },
        { label: 'in layer' },
        { label: 'Last layer' },
        ...(sandwich ? [{ label: 'Wrinkling' }, { label: 'Core shear' }] : []),
      ],
      rows,
    ),
  ];
}

/** What a load case as given breaks, in words: its first and last layer, a face, the core. */
export function loadFailures(result: LoadResult): string[] {
  const first = isMechanical(result) ? weakestBy(result.failures)?.ratio : undefined;
  const last = result.progressive?.lastPly.ratio;
  const heat = result.residual?.failures.map(({ ratio }) => ratio ?? Number.POSITIVE_INFINITY) ?? [];
  const passed = [wrinklingLimit(result), coreLimit(result)].filter((one) => one !== undefined && one.ratio < 1);
  return [
    ...(first === undefined || first >= 1
      ? []
      : [first === 0 ? 'a layer breaks before any load acts' : `a layer breaks at ${short(first)} of the load`]),
    ...(first === undefined && Math.min(Number.POSITIVE_INFINITY, ...heat) < 1
      ? ['temperature and moisture alone break a layer']
      : []),
    ...(last === undefined || last >= 1 ? [] : [`the last layer breaks at ${short(last)} of the load`]),
    ...passed.flatMap((one) => (one === undefined ? [] : [`${one.what} ${atWords(one)}`])),
  ];
}
