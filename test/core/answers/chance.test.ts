import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyHomework, check, entryOf, modelOf, resultsOf } from './support.js';

describe('wrong answers without a reason', () => {
  it.each([2, 3, 4, 5])('of %i digits are hardly ever explained by a slip', (digits) => {
    let wrong = 0;
    let explained = 0;
    const factors = fc.array(
      fc.record({
        which: fc.noBias(fc.nat(100_000)),
        // From a quarter to four times the right value, a fifth of them with the other sign.
        log: fc.noBias(fc.integer({ min: -1e6, max: 1e6 })).map((k) => (k / 1e6) * Math.log(4)),
        turned: fc.noBias(fc.nat(4)),
      }),
      { minLength: 8, maxLength: 8 },
    );
    fc.assert(
      fc.property(anyHomework, factors, (homework, list) => {
        const model = modelOf(homework);
        const all = resultsOf(model);
        const entries = new Map(
          list.map(({ which, log, turned }) => {
            const one = all[which % all.length] as (typeof all)[number];
            return [one.key, entryOf(one, one.value * Math.exp(log) * (turned === 0 ? -1 : 1), digits)] as const;
          }),
        );
        for (const { verdict } of check(model, [...entries.values()]).answers) {
          if (verdict === 'slip') explained++;
          if (verdict === 'wrong') wrong++;
        }
      }),
      { numRuns: 60, seed: 20_260 },
    );
    expect(wrong + explained).toBeGreaterThan(300);
    expect(explained / (wrong + explained)).toBeLessThan(0.03);
  });
});
