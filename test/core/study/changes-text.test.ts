import { describe, expect, it } from 'vitest';
import { changesText } from '../../../packages/core/src/report/index.js';
import { differencesBetween } from '../../../packages/core/src/study/index.js';

const lines = (before: unknown, after: unknown, atMost?: number) =>
  changesText(differencesBetween(before, after), atMost === undefined ? {} : { atMost });

describe('what changed, in lines', () => {
  it('has words first, then numbers by their relative change', () => {
    const before = { verdict: 'bond', a: 1, b: { c: [2, 4] } };
    const after = { verdict: 'arm', a: 1.1, b: { c: [2, 6] } };
    expect(lines(before, after)).toBe(
      '  verdict  bond -> arm\n  b.c.1    4 -> 6  (+50 %)\n  a        1 -> 1.1  (+10 %)\n',
    );
  });

  it('gives no percentage of zero and counts what it does not show', () => {
    const text = lines({ a: [0, 1, 2] }, { a: [1, 2, 3] }, 2);
    expect(text).toContain('a.0  0 -> 1\n');
    expect(text).toContain('and 1 more');
  });

  it('has targets first, then what a designer looks at, in units, without remarks and the round-off of a list', () => {
    const of = (thickness: number, z: number, note: string) => ({
      targets: [{ quantity: 'laminates.skin.thickness', value: thickness, met: thickness < 1.1e-3 }],
      laminates: {
        skin: {
          thickness,
          plies: [
            { z: 1e-3, angle: 0 },
            { z, angle: 10 * thickness },
          ],
          notes: [note],
        },
      },
    });
    expect(lines(of(1e-3, 0, 'a'), of(1.2e-3, -5e-20, 'b'))).toBe(
      [
        '  target laminates.skin.thickness.met    met -> NOT MET',
        '  target laminates.skin.thickness.value  1 mm -> 1.2 mm  (+20 %)',
        '  laminates.skin.thickness               1 mm -> 1.2 mm  (+20 %)',
        '  and 1 more',
        '',
      ].join('\n'),
    );
  });

  it('is empty when nothing did', () => {
    expect(lines({ a: 1 }, { a: 1 })).toBe('');
  });
});
