import { type Candidate, type Explanation, once, type RecognisedSlip } from './explain.js';

/** A slip that explains several answers of a sheet. */
export interface SharedSlip extends RecognisedSlip {
  readonly count: number;
}

/** What the counting needs of an answer. */
interface Explained<E extends Explanation> {
  readonly verdict: string;
  readonly explanations: readonly E[];
}

/** Slips with a detail that belongs to the student, not to the quantity. */
const detailed: ReadonlySet<string> = new Set(['powerOfTen']);
const same = (one: RecognisedSlip, other: RecognisedSlip): boolean =>
  one.name === other.name && (!detailed.has(one.name) || one.detail === other.detail);

/** Every slip with the number of answers that it explains, the most first. */
export function sharedSlips(answers: readonly Explained<Explanation>[]): readonly SharedSlip[] {
  const found: SharedSlip[] = [];
  for (const { explanations, verdict } of answers) {
    if (verdict !== 'slip') continue;
    const own: RecognisedSlip[] = [];
    for (const slip of explanations.flatMap(({ slips }) => slips)) {
      if (!own.some((other) => same(other, slip))) own.push(slip);
    }
    for (const slip of own) {
      const at = found.findIndex((other) => same(other, slip));
      const { name, detail } = slip;
      const kept = detailed.has(name) && detail !== undefined ? { name, detail } : { name };
      found[at < 0 ? found.length : at] = { ...kept, count: (found[at]?.count ?? 0) + 1 };
    }
  }
  return found.toSorted((one, other) => other.count - one.count);
}

/**
 * The answers with their explanations settled: those first that explain most of the sheet, equals in their order; of slips that give one number
 * by symmetry the one that explains most, so that all angles with the other sign also stand where the other sign of shear would do.
 */
export function settled<A extends Explained<Candidate>>(
  answers: readonly A[],
): readonly (Omit<A, 'explanations'> & { readonly explanations: readonly Explanation[] })[] {
  const shared = sharedSlips(answers);
  const weight = ({ slips }: Explanation): number =>
    Math.min(...slips.map((slip) => shared.find((other) => same(other, slip))?.count ?? 0));
  return answers.map((answer) => ({
    ...answer,
    explanations: once(answer.explanations.toSorted((one, other) => weight(other) - weight(one))).map(
      ({ slips, value }) => ({ slips, value }),
    ),
  }));
}
