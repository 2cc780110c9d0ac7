import type { LaminateResult, Results } from '../../design/index.js';
import { formatNumber } from '../../quantity/index.js';
import type { Block, Cell } from '../blocks.js';
import { amount, table } from './build.js';
import { blisterStates } from './laminate-blister.js';

/** A check of a laminate: how far what is given may grow until it happens, and what happens. */
interface Check {
  readonly name: string;
  readonly ratio: number;
  /** What the ratio multiplies, or what it is. */
  readonly of: string;
  /** What fails below 1, "the panel buckles"; absent where it may happen without harm. */
  readonly what?: string;
}

function checksOf({ panel, blister, freeEdge }: LaminateResult): Check[] {
  const found: Check[] = [];
  const add = (name: string, ratio: number | undefined, of: string, what?: string): void => {
    if (ratio === undefined || !Number.isFinite(ratio)) return;
    found.push({ name, ratio, of, ...(what === undefined ? {} : { what }) });
  };
  add('Panel buckles', panel?.buckling?.withShear.multiplier, 'the compression', 'the panel buckles');
  if (blister !== undefined) {
    const { multiplier, growthMultiplier } = blisterStates(blister);
    // A blister that buckles and does not grow is no failure; whether it grows is known by its toughness only.
    const judged = growthMultiplier !== undefined;
    add('Blister buckles', multiplier, 'the strain', judged ? undefined : 'the blister buckles');
    add('Blister grows', growthMultiplier, 'the strain', 'the blister grows');
  }
  const [G, toughness] = [freeEdge?.found.critical?.G, freeEdge?.entry.toughness];
  if (G !== undefined && G > 0 && toughness !== undefined) {
    add('Free edge parts', toughness / G, 'toughness over G', 'a crack at the free edge grows');
  }
  return found;
}

/** What the checks of a laminate find to happen in the state as given, in words. */
export const laminateFailures = (result: LaminateResult): string[] =>
  checksOf(result).flatMap(({ ratio, of, what }) => {
    if (what === undefined || ratio >= 1) return [];
    const shown = formatNumber(ratio, 3);
    return [of.startsWith('the ') ? `${what} at ${shown} of ${of} as given` : `${what}: ${of} is ${shown}`];
  });

/** The checks that the design asks for, one row each; absent without any. */
export function checksTable({ laminates }: Results): Block[] {
  const rows = laminates.flatMap((one) =>
    checksOf(one).map(({ name, ratio, of }): Cell[] => [
      one.model.name,
      name,
      amount(ratio, 'number'),
      of.startsWith('the ') ? `times ${of}` : of,
      ratio < 1 ? 'YES' : 'no',
    ]),
  );
  if (rows.length === 0) return [];
  return [
    table(
      'checks',
      'Checks of laminates at a glance: at which multiple of what is given it happens; below 1 it does happen',
      [{ label: 'Laminate' }, { label: 'Check' }, { label: 'Ratio' }, { label: 'of' }, { label: 'Happens' }],
      rows,
    ),
  ];
}
