import { describe, expect, it } from 'vitest';
import { findQuantity } from '../../../packages/core/src/answers/find.js';
import type { Quantity } from '../../../packages/core/src/answers/quantities.js';

/** A table of quantities from keys with their values; a star marks what is only used. */
const table = (numbers: Readonly<Record<string, number>>): ReadonlyMap<string, Quantity> =>
  new Map(
    Object.entries(numbers).map(([marked, value]) => {
      const key = marked.replace('*', '');
      const part = key.split('.');
      const symbol = part.pop() ?? '';
      return [key, { key, part, symbol, kind: 'number', value, computed: key === marked }];
    }),
  );

const criteria = table({
  'loads.pull.eps0_x': 1e-3,
  'loads.pull.residual.eps0_x': 2e-3,
  'loads.pull.plies.1.top.eps0_x*': 1e-3,
  'loads.pull.tsaiWu.R_fpf': 2.1,
  'loads.pull.maxStress.R_fpf': 2.4,
  'loads.pull.plies.2.top.tsaiWu.R': 2.1,
  'loads.pull.plies.2.top.maxStress.R': 2.4,
  'loads.pull.plies.2.top.tsaiWu.F_1': 3,
  'loads.pull.plies.2.top.maxStress.F_1': 3,
  'loads.pull.plies.1.top.sigma1': 5,
  'loads.pull.residual.plies.1.top.sigma1': 6,
  'laminates.skin.A11': 7,
  'stitching.rows.arms.1.A11': 8,
  'laminates.skin.nu21': 0.02,
  'stitching.rows.arms.1.nu21': 0.02,
  'materials.ud.E1': 140e9,
  'laminates.skin.plies.1.E1*': 140e9,
  'laminates.skin.plies.2.E1*': 70e9,
});
const found = (name: string): string => {
  const one = findQuantity(name, criteria, () => undefined);
  return 'quantity' in one ? one.quantity.key : one.problem.message;
};

describe('a short name', () => {
  it.each(['pull.R_fpf', 'R_fpf', 'loads.pull.R_fpf'])('%s that two criteria have is refused with both', (name) => {
    const one = findQuantity(name, criteria, () => undefined);
    expect(one).toMatchObject({
      problem: {
        code: 'unknown-name',
        message: `\`${name}\` can be 2 quantities of this design`,
        allowed: 'the whole name: loads.pull.tsaiWu.R_fpf, loads.pull.maxStress.R_fpf',
      },
    });
  });

  it('is that of the thing itself before that of its parts', () => {
    expect(found('pull.eps0_x')).toBe('loads.pull.eps0_x');
    expect(found('eps0_x')).toBe('loads.pull.eps0_x');
    expect(found('residual.eps0_x')).toBe('loads.pull.residual.eps0_x');
    expect(found('plies.1.top.sigma1')).toBe('loads.pull.plies.1.top.sigma1');
  });

  it('may leave out parts where all that have it agree', () => {
    expect(found('pull.tsaiWu.R')).toBe('loads.pull.plies.2.top.tsaiWu.R');
    expect(found('pull.plies.2.top.F_1')).toBe('loads.pull.plies.2.top.tsaiWu.F_1');
    expect(found('pull.plies.2.top.R')).toContain('can be 2 quantities');
  });

  it('of different numbers elsewhere in the design is refused, however deep they lie; the same number is no question', () => {
    expect(found('A11')).toContain('can be 2 quantities');
    expect(found('skin.A11')).toBe('laminates.skin.A11');
    expect(found('nu21')).toBe('laminates.skin.nu21');
  });

  it('does not pass over a number that is only used where it is another than the computed one', () => {
    expect(found('E1')).toContain('can be 2 quantities');
    expect(found('ud.E1')).toBe('materials.ud.E1');
  });

  it('that the report has for a path is that of the report, before a key that only has its parts', () => {
    const reported: Quantity = {
      ...{ key: 'loads.pull.top.R', part: [], symbol: 'R', kind: 'number', value: 7, computed: true },
    };
    expect(findQuantity('pull.tsaiWu.R', criteria, () => reported)).toEqual({ quantity: reported });
    expect(findQuantity('tsaiWu.R_fpf', criteria, () => reported)).toMatchObject({
      quantity: { key: 'loads.pull.tsaiWu.R_fpf' },
    });
  });
});
