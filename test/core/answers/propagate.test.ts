import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate } from '../../../packages/core/src/answers/evaluate.js';
import { propagate } from '../../../packages/core/src/answers/propagate.js';
import type { Quantity } from '../../../packages/core/src/answers/quantities.js';
import { negligibleSizes } from '../../../packages/core/src/answers/size.js';
import { workedSteps } from '../../../packages/core/src/design/index.js';
import { rules } from '../../../packages/core/src/working/index.js';
import { resultOf as byMathjs, symbolsOf } from '../working/support.js';
import { anyHomework, modelOf, numbersOf } from './support.js';

describe('the evaluation of a formula', () => {
  const all = Object.entries(rules).flatMap(([name, rule]) =>
    Object.entries({ ...rule.formulas, ...rule.sums }).map(([symbol, text]) => [`${name} ${symbol}`, text] as const),
  );

  it.each(all)('%s: is that of mathjs', (_, text) => {
    const values = Object.fromEntries(
      symbolsOf(text).map((symbol, i) => [symbol, symbol === 'pi' ? Math.PI : 0.37 + 0.11 * i]),
    );
    const expected = byMathjs(text, values);
    const found = evaluate(text, (symbol) => values[symbol] ?? Number.NaN);
    // A root of a negative number is none here, a complex one there.
    if (typeof expected !== 'number' || Number.isNaN(expected)) expect(found).toBeNaN();
    else expect(Math.abs(found - expected)).toBeLessThanOrEqual(1e-12 * Math.max(1, Math.abs(expected)));
  });
});

describe('a working gone through again', () => {
  const laminateOf = (): string => 'skin';

  it('keeps every number when a formula is replaced by itself', () => {
    fc.assert(
      fc.property(anyHomework, (homework) => {
        const model = modelOf(homework);
        const right = numbersOf(model);
        const negligible = negligibleSizes(right.values());
        const { formulas } = rules.turnedStiffness;
        const again = propagate(
          workedSteps(model),
          { formulas: { turnedStiffness: { Qbar11: `${formulas?.Qbar11 ?? ''} + 0` } } },
          laminateOf,
        );
        for (const [key, value] of again) {
          const one = right.get(key) as Quantity;
          expect(Math.abs(value - one.value), key).toBeLessThanOrEqual(negligible(one));
        }
      }),
      { numRuns: 25 },
    );
  });

  it('gives what the computation gives for a change that a model can have too: twice the shear modulus', () => {
    fc.assert(
      fc.property(anyHomework, (homework) => {
        const model = modelOf(homework);
        const again = propagate(workedSteps(model), { formulas: { reducedStiffness: { Q66: '2 G12' } } }, laminateOf);
        const stiffer = numbersOf(modelOf({ ...homework, G12: 2 * homework.G12 }));
        const negligible = negligibleSizes(stiffer.values());
        const results = [...stiffer.values()].filter(
          ({ symbol, computed }) =>
            computed &&
            /^(Qbar|A|B|D|a|b|d)\d\d$|^E[xy]b?$|^eps|^kappa|^sigma[12]$|^sigma_[xy]$|^tau12$|^tau_xy$/.test(symbol),
        );
        expect(results.length).toBeGreaterThan(50);
        for (const one of results) {
          const { key, value } = one;
          const found = again.get(key) ?? numbersOf(model).get(key)?.value ?? Number.NaN;
          expect(Math.abs(found - value), key).toBeLessThanOrEqual(negligible(one));
        }
      }),
      { numRuns: 8 },
    );
  });

  it('comes to an end where the stiffness has no inverse', () => {
    const [homework] = fc.sample(anyHomework, { numRuns: 1, seed: 3 });
    if (homework === undefined) throw new Error('no homework');
    const zero = Object.fromEntries(['11', '12', '16', '22', '26', '66'].map((ij) => [`D${ij}`, '0']));
    const again = propagate(
      workedSteps(modelOf({ ...homework, angles: [0] })),
      { formulas: { stackSums: zero } },
      laminateOf,
    );
    expect(again.get('laminates.skin.D11')).toBe(0);
    expect([...again.values()].every(Number.isFinite)).toBe(true);
  });
});
