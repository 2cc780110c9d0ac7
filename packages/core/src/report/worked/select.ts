import { fail, nearestHint } from '../../problem/index.js';
import { holderOf, keyOf, type RecordedStep, resultsOf } from '../../working/index.js';

/** Which steps of a working are shown. */
export interface WorkingSelection {
  /** Part of the design: `laminates.skin`, `laminates.skin.plies.2`, `loads.pull`, `stitching.rows`, `coupons.peel`, `materials.ud`. */
  readonly of?: string;
  /** Only this ply of each laminate, counted from 1 at the tool side, and what is of no ply. */
  readonly ply?: number;
  /** Ends with the last step of this rule, or that gives this quantity, in the first laminate, load, plan or coupon that has one. */
  readonly upto?: string;
}

/** The number of the ply that a step belongs to. */
function plyOf({ part }: Pick<RecordedStep, 'part'>): number | undefined {
  const at = part.indexOf('plies');
  return at < 0 ? undefined : Number(part[at + 1]);
}

/** Every part of the design that has steps, with the parts that these lie in. */
function partsOf(steps: readonly RecordedStep[]): string[] {
  const all = new Set<string>();
  for (const { part } of steps) {
    for (let length = 1; length <= part.length; length++) all.add(part.slice(0, length).join('.'));
  }
  return [...all];
}

/**
 * The steps that a reader asks for.
 * @throws unknown-name for a part, ply or step that is not there
 */
export function selectSteps(
  steps: readonly RecordedStep[],
  { of, ply, upto }: WorkingSelection,
): readonly RecordedStep[] {
  let chosen = steps;
  if (of !== undefined) {
    const parts = partsOf(steps);
    chosen = steps.filter(({ part }) => part.join('.') === of || part.join('.').startsWith(`${of}.`));
    if (chosen.length === 0) {
      fail({
        code: 'unknown-name',
        message: `the design has no part \`${of}\` with steps to show`,
        allowed: parts.filter((part) => part.split('.').length === 2).join(', '),
        ...nearestHint(of, parts),
      });
    }
  }
  if (ply !== undefined) {
    const plies = new Set(chosen.flatMap((step) => plyOf(step) ?? []));
    if (!plies.has(ply)) {
      fail({
        code: 'unknown-name',
        message: `there is no ply ${ply}`,
        allowed: plies.size === 0 ? 'a part with plies' : `1 to ${Math.max(...plies)}, counted from the tool side`,
      });
    }
    chosen = chosen.filter((step) => (plyOf(step) ?? ply) === ply);
  }
  return upto === undefined ? chosen : chosen.slice(0, endOf(chosen, upto));
}

/** How many steps there are up to the one that is named by its rule, a symbol or a whole quantity: the last of the first part that has it. */
function endOf(steps: readonly RecordedStep[], upto: string): number {
  const names = (step: RecordedStep): string[] => {
    const symbols = resultsOf(step.rule);
    return [step.rule, ...symbols, ...symbols.map((symbol) => keyOf(step.part, symbol))];
  };
  const first = steps.find((step) => names(step).includes(upto));
  const last = steps.findLastIndex(
    (step) => first !== undefined && holderOf(step) === holderOf(first) && names(step).includes(upto),
  );
  if (last >= 0) return last + 1;
  return fail({
    code: 'unknown-name',
    message: `there is no step \`${upto}\``,
    allowed: [...new Set(steps.map(({ rule }) => rule))].join(', '),
    ...nearestHint(upto, [...new Set(steps.flatMap(names))]),
  });
}
