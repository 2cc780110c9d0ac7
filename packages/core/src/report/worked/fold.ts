import type { RecordedStep, StepValues } from '../../working/index.js';

/** A part of a design of which there are several, told apart by a number. */
export interface Counted {
  /** Where the number stands in the path of the part. */
  readonly at: number;
  /** "plies". */
  readonly many: string;
  /** "ply". */
  readonly one: string;
}

const counted: Readonly<Record<string, string>> = { plies: 'ply', sides: 'side', arms: 'arm' };

/** The last of the counted things that a step belongs to: a ply, a side of the crack. */
export function countedOf(part: readonly string[]): Counted | undefined {
  const before = part.findLastIndex((name) => Object.hasOwn(counted, name));
  const many = part[before] ?? '';
  return before < 0 ? undefined : { at: before + 1, many, one: counted[many] ?? many };
}

/** A step with the numbers of all plies, sides or arms for which it is the same. */
export interface FoldedStep extends RecordedStep {
  readonly numbers: readonly number[];
}

const equal = (one: StepValues, other: StepValues): boolean => {
  const names = Object.keys(one);
  return names.length === Object.keys(other).length && names.every((name) => one[name] === other[name]);
};

const equalSteps = (one: RecordedStep, other: RecordedStep): boolean => {
  const [rows = [], others = []] = [one.rows, other.rows];
  return (
    equal(one.values, other.values) &&
    rows.length === others.length &&
    rows.every((row, i) => equal(row, others[i] ?? {}))
  );
};

/** Steps that are the same for several plies, sides or arms, down to the last bit, become one that stands where the first stood. */
export function foldSteps(steps: readonly RecordedStep[]): FoldedStep[] {
  const folded: (RecordedStep & { numbers: number[] })[] = [];
  const alike = new Map<string, (typeof folded)[number][]>();
  for (const step of steps) {
    const { at } = countedOf(step.part) ?? {};
    const number = at === undefined ? [] : [Number(step.part[at])];
    const key = `${step.rule} ${step.part.map((name, i) => (i === at ? '*' : name)).join('.')}`;
    const others = alike.get(key) ?? [];
    const same = at === undefined ? undefined : others.find((other) => equalSteps(other, step));
    if (same !== undefined) {
      same.numbers.push(...number);
      continue;
    }
    const own = { ...step, numbers: number };
    folded.push(own);
    others.push(own);
    alike.set(key, others);
  }
  return folded;
}
