import { fail, nearestHint } from '../problem/index.js';
import { workedExamples } from './data.js';
import type { WorkedExample } from './types.js';

/** The ids of the worked examples, in their order. */
export const exampleIds: readonly string[] = workedExamples.map(({ id }) => id);

/** The worked example of an id. @throws unknown-name for an id that is not there */
export function exampleOf(id: string): WorkedExample {
  return (
    workedExamples.find((one) => one.id === id) ??
    fail({
      code: 'unknown-name',
      message: `there is no worked example \`${id}\``,
      allowed: 'an id from the overview of all examples',
      ...nearestHint(id, exampleIds),
    })
  );
}
