import shown from './rules-shown.json' with { type: 'json' };

/**
 * Published examples by the rules of the working whose results they print: found by scripts/write-rules-shown.ts, which compares the printed numbers with
 * the working of each example's design.
 */
export const rulesShown: Readonly<Record<string, readonly string[]>> = shown;
