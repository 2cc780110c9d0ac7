import { nearestHint } from './nearest.js';
import { fail } from './problem.js';

/** The value itself when it is one of the choices. @throws not-a-choice */
export function choice<T extends string>(what: string, value: string | undefined, choices: readonly T[]): T {
  const found = choices.find((one) => one === value);
  if (found !== undefined) return found;
  return fail({
    code: 'not-a-choice',
    message: value === undefined ? `${what} is not given` : `${what} is \`${value}\``,
    allowed: choices.join(', '),
    ...(value === undefined ? {} : nearestHint(value, choices)),
  });
}
