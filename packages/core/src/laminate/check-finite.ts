import { fail } from '../problem/index.js';

/**
 * Refuses a list that holds something else than finite numbers.
 * @throws not-a-number
 */
export function checkFinite(name: string, values: ArrayLike<number>): void {
  for (let i = 0; i < values.length; i++) {
    if (Number.isFinite(values[i])) continue;
    fail({ code: 'not-a-number', message: `entry ${i} of \`${name}\` is ${values[i]}`, allowed: 'finite numbers' });
  }
}
