import type { Results } from '../../../design/index.js';
import type { Block, Cell } from '../../blocks.js';
import { amountOr, table } from '../build.js';
import { weakestBy } from './strength.js';
import { criterionNames, isMechanical } from './words.js';

/** Load cases with their least strength ratio and the load of the last layer; absent when no load case has a ratio. */
export function loadsTable({ loads }: Results): Block[] {
  const judged = loads.filter((one) => isMechanical(one) && one.failures.length > 0);
  if (judged.length === 0) return [];
  const rows = judged.map((one): Cell[] => {
    const least = weakestBy(one.failures);
    return [
      one.model.name,
      one.model.laminate,
      amountOr(least?.ratio, 'number', 'no limit'),
      least === undefined ? '–' : criterionNames[least.criterion],
      least?.ply === undefined ? '–' : `${least.ply} ${least.name ?? ''}`.trim(),
      amountOr(one.progressive?.lastPly.ratio, 'number', '–'),
    ];
  });
  return [
    table(
      'loads',
      'Load cases at a glance: times the load until the first layer breaks, by the criterion that says least, and until the last',
      [
        { label: 'Load' },
        { label: 'Laminate' },
        { label: 'First layer' },
        { label: 'Criterion' },
        { label: 'in layer' },
        { label: 'Last layer' },
      ],
      rows,
    ),
  ];
}
