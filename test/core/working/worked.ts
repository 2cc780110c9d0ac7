import {
  type RecordedStep,
  type RuleName,
  startWorking,
  type Working,
} from '../../../packages/core/src/working/index.js';

/** The steps that a computation takes down, with what it gives. */
export function worked<Result>(compute: (working: Working) => Result): {
  readonly result: Result;
  readonly steps: readonly RecordedStep[];
} {
  const { working, steps } = startWorking();
  return { result: compute(working), steps };
}

/** The symbols of a part that name two numbers, apart from rounding; those of rows belong to their row. */
export function ambiguous(steps: readonly RecordedStep[]): readonly string[] {
  const seen = new Map<string, number>();
  return steps.flatMap(({ part, rule, values }) =>
    Object.entries(values).flatMap(([symbol, value]) => {
      const key = [...part, symbol].join('.');
      const before = seen.get(key) ?? value;
      seen.set(key, before);
      return Math.abs(before - value) > 1e-9 * Math.abs(value) ? [`${key} in ${rule}`] : [];
    }),
  );
}

/** The first step of a rule, in a part where one is named. */
export function named(steps: readonly RecordedStep[], rule: RuleName, ...part: readonly string[]): RecordedStep {
  const found = steps.find((step) => step.rule === rule && part.every((name, i) => step.part[i] === name));
  if (found === undefined) throw new Error(`no step ${rule} in ${part.join('.')}`);
  return found;
}
