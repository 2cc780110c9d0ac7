import type { Problem } from '../problem/index.js';

/** Problems of the answers whose key an earlier answer has already. @param keys by the position of the answer; undefined for one that has none */
export function repeated(keys: readonly (string | undefined)[]): Problem[] {
  return keys.flatMap((key, i): Problem[] => {
    const first = keys.indexOf(key);
    if (key === undefined || first === i) return [];
    return [
      {
        code: 'duplicate-key',
        message: `the quantity \`${key}\` is answered twice`,
        allowed: 'each quantity once',
        path: ['answers', i, 'quantity'],
        also: [{ label: 'first answered here', path: ['answers', first, 'quantity'] }],
      },
    ];
  });
}
