import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { assemble, readDesign } from '../../../packages/core/src/design/index.js';
import { kinds } from '../../../packages/core/src/quantity/index.js';
import { anyHomework, check, entryOf, modelOf, numbersOf, resultsOf } from './support.js';

const someOf = <T>(all: readonly T[], seed: number, count: number): T[] =>
  all.filter((_, i) => (i * 7919 + seed) % Math.max(1, Math.ceil(all.length / count)) === 0);

describe('right answers', () => {
  it('pass in every unit of their kind and with any number of digits from three on', () => {
    fc.assert(
      fc.property(anyHomework, fc.integer({ min: 3, max: 12 }), fc.nat(1000), (homework, digits, seed) => {
        const model = modelOf(homework);
        const chosen = someOf(resultsOf(model), seed, 25);
        const entries = chosen.map((one, i) => {
          const { metric, us, si, alsoAccepted } = kinds[one.kind];
          const units = [...new Set([metric, us, si, ...alsoAccepted])];
          return entryOf(one, one.value, digits, units[(i + seed) % units.length]);
        });
        const { answers } = check(model, entries);
        expect(answers.filter(({ verdict }) => verdict !== 'right')).toEqual([]);
      }),
      { numRuns: 60 },
    );
  });

  it.each(['minimal', 'osier-500-strength', 'practice-panel-us', 'peel-coupons'])(
    'of the whole working of %s pass with four digits',
    (name) => {
      const file = new URL(`../../../docs/examples/${name}.yaml`, import.meta.url);
      const model = assemble(readDesign(readFileSync(file, 'utf8')));
      const all = [...numbersOf(model).values()];
      const chosen = someOf(all, 5, 600);
      expect(chosen.length).toBeGreaterThan(300);
      const { answers } = check(
        model,
        chosen.map((one) => entryOf(one, one.value, 4)),
      );
      expect(answers.filter(({ verdict }) => verdict !== 'right')).toEqual([]);
    },
  );

  it('are zero where the right value is zero by symmetry, and small leftovers of a sum count as zero', () => {
    const model = modelOf({
      ...{ E1: 140, E2: 10, G12: 5, nu12: 0.3, thickness: 0.25, heat: -100 },
      ...{ angles: [0, 45, -45, 90], symmetric: true, N: [100, 0, 0], M: [0, 0, 0] },
    });
    const { answers } = check(model, [
      '  - { quantity: laminates.skin.B11, value: 0, unit: N }',
      '  - { quantity: laminates.skin.B16, value: 3.1e-9, unit: N }',
      '  - { quantity: loads.pull.kappa_x, value: "0.00 1/m" }',
      '  - { quantity: loads.pull.M_Tx, value: 1.2e-14 N }',
    ]);
    expect(answers.map(({ verdict }) => verdict)).toEqual(['right', 'right', 'right', 'right']);
  });

  it('are not a written zero where the value is none, however few digits it has', () => {
    const model = modelOf({
      ...{ E1: 140, E2: 10, G12: 5, nu12: 0.3, thickness: 0.25, heat: -100 },
      ...{ angles: [0, 90], symmetric: false, N: [0, 0, 0], M: [0, 0, 0] },
    });
    const { answers } = check(model, [
      '  - { quantity: laminates.skin.B11, value: 0, unit: kN }',
      '  - { quantity: loads.pull.kappa_x, value: 0, unit: 1/m }',
    ]);
    expect(answers.map(({ verdict }) => verdict)).toEqual(['wrong', 'wrong']);
  });

  it('may be up to 1 % off by rounding on the way, which is said, and not more', () => {
    fc.assert(
      fc.property(anyHomework, fc.constantFrom(0.003, -0.004, 0.0095, -0.0095), (homework, off) => {
        const model = modelOf(homework);
        const A11 = numbersOf(model).get('laminates.skin.A11');
        if (A11 === undefined) throw new Error('no A11');
        const [near, far] = check(model, [entryOf(A11, A11.value * (1 + off), 6)]).answers.concat(
          check(model, [entryOf(A11, A11.value * (1 + 3 * off + Math.sign(off) * 0.01), 6)]).answers,
        );
        expect(near?.verdict).toBe('rounded');
        expect(near?.deviation).toBeCloseTo(off, 4);
        expect(['slip', 'wrong']).toContain(far?.verdict);
      }),
      { numRuns: 30 },
    );
  });
});
