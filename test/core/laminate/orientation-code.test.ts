import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseOrientationCode, printOrientationCode } from '../../../packages/core/src/laminate/index.js';
import { type Problem, SelvageError } from '../../../packages/core/src/problem/index.js';

const angles = (code: string) => parseOrientationCode(code).map((item) => item.angle);
const words = (code: string) => parseOrientationCode(code).map(({ angle, material = '' }) => `${angle}${material}`);

function problemOf(code: string): Problem {
  try {
    parseOrientationCode(code);
  } catch (error) {
    if (error instanceof SelvageError) return error.problems[0]!;
    throw error;
  }
  throw new Error(`${code} was read`);
}

/** The part of the code that a problem points at. */
const pointed = (code: string) => {
  const { offset = -1, length = 0 } = problemOf(code).within ?? {};
  return [offset, code.slice(offset, offset + length)];
};

describe('an orientation code', () => {
  // The rules of ASTM D6507 (recalled, not re-read), each written out by hand.
  it.each([
    ['[0/90]', [0, 90]],
    ['[0/±45/90]s', [0, 45, -45, 90, 90, -45, 45, 0]],
    ['[0/±45]2s', [0, 45, -45, 0, 45, -45, -45, 45, 0, -45, 45, 0]],
    ['[(0/90)2/45]', [0, 90, 0, 90, 45]],
    ['[0/90~]s', [0, 90, 0]],
    ['[0/∓45]', [0, -45, 45]],
    ['[+-45/-+30]', [45, -45, -30, 30]],
    ['[+/-45/-/+30]', [45, -45, -30, 30]],
    ['[0_2/90_3]', [0, 0, 90, 90, 90]],
    ['[0]3', [0, 0, 0]],
    ['[0/90]_2s', [0, 90, 0, 90, 90, 0, 90, 0]],
    ['[0/90]T', [0, 90]],
    ['[0/90]2T', [0, 90, 0, 90]],
    ['[(0/90)s/45]', [0, 90, 90, 0, 45]],
    ['[(0/90~)s/45]s', [0, 90, 0, 45, 45, 0, 90, 0]],
    ['[((0/90)2/45)_2]', [0, 90, 0, 90, 45, 0, 90, 0, 90, 45]],
    ['[22.5/-67.25/.5]', [22.5, -67.25, 0.5]],
    [' [ 0 / + 45 / -45° ] s ', [0, 45, -45, -45, 45, 0]],
    ['[−30/30]', [-30, 30]],
    ['[-0/±0]', [0, 0, 0]],
  ])('%s is read as %j', (code, expected) => {
    expect(angles(code)).toEqual(expected);
    expect(angles(code).some((angle) => Object.is(angle, -0))).toBe(false);
  });

  it('takes materials as suffixes after the angle', () => {
    const half = ['0g', '45c', '0c', '90c', '0c', '90c'];
    expect(words('[0g/45c/(0c/90c)2]s')).toEqual([...half, ...half.toReversed()]);
    expect(words('[0glass-300_2/±45bx_veil/90]')).toEqual([
      '0glass-300',
      '0glass-300',
      '45bx_veil',
      '-45bx_veil',
      '90',
    ]);
    expect(words('[0_carbon_2]')).toEqual(['0carbon', '0carbon']);
  });

  it('says which plies are mirror images, and where each stands in the text', () => {
    const code = '[0g/±45c/90~]s';
    const items = parseOrientationCode(code);
    expect(items.map((item) => item.mirrored)).toEqual([false, false, false, false, true, true, true]);
    expect(items.map(({ offset, length }) => code.slice(offset, offset + length))).toEqual([
      '0g',
      '±45c',
      '±45c',
      '90~',
      '±45c',
      '±45c',
      '0g',
    ]);
    expect(Object.keys(items[3]!)).toEqual(['angle', 'mirrored', 'offset', 'length']);
  });
});

describe('a fault in an orientation code', () => {
  it.each([
    ['', 0, ''],
    ['0/90', 0, '0'],
    ['[0/90', 0, '['],
    ['[0/(90/45]', 3, '('],
    ['[0/90)]', 5, ')'],
    ['[0/[90]]', 3, '['],
    ['[]', 1, ']'],
    ['[0//90]', 3, '/'],
    ['[0/]', 3, ']'],
    ['[0/', 2, '/'],
    ['[0,90]', 2, ','],
    ['[0;90]', 2, ';'],
    ['[0 90]', 3, '9'],
    ['[0/abc]', 3, 'a'],
    ['[±-45]', 1, '±-'],
    ['[0/45!]', 5, '!'],
    ['[450]', 1, '450'],
    ['[0/90~]', 3, '90~'],
    ['[0~/90]s', 1, '0~'],
    ['[0/90~]2s', 3, '90~'],
    ['[(0/90~)/45]s', 4, '90~'],
    ['[±45~]s', 1, '±45~'],
    ['[0/90_2~]s', 3, '90_2~'],
    ['[±45_2]', 1, '±45_2'],
    ['[0_0]', 2, '_0'],
    ['[0]0', 3, '0'],
    ['[0/90]x', 6, 'x'],
    ['[0/90]s2', 7, '2'],
    ['[0/90]s s', 8, 's'],
  ])('%s points at character %i', (code, offset, text) => {
    expect(problemOf(code).code).toBe('orientation-code');
    expect(pointed(code)).toEqual([offset, text]);
  });

  it('comes with what would be right', () => {
    expect(problemOf('[0,90]').hint).toContain('write `/`');
    expect(problemOf('0/90').hint).toBe('write [0/90]');
    expect(problemOf('[0/90~]').message).toBe('90~ must be the last ply of a symmetric code');
    expect(problemOf('[0/90]s2').hint).toBe('a repeat stands before `s`, as in ]2s');
    expect(problemOf('[±45g_2]').hint).toBe('write (±45g)2 or 45g_2/-45g_2');
    expect(problemOf('[0/[90]]').hint).toBe('write groups as (0/90)2');
  });

  it('is also more than 2000 plies, however they are asked for, and too long a text', () => {
    for (const code of [
      '[0]2001',
      '[0_2001]',
      '[0_1001]s',
      '[((0)500)500]',
      '[0]99999999999999999999',
      `[0${'/0'.repeat(2000)}]`,
      `[${' '.repeat(10_000)}0]`,
    ]) {
      expect(problemOf(code).code, code.slice(0, 30)).toBe('too-large');
    }
    expect(angles('[0_1000]s').length).toBe(2000);
    expect(angles('[0_999/90~]s').length).toBe(1999);
  });

  it('is also a group nested too deep', () => {
    expect(problemOf(`[${'('.repeat(4000)}0`).code).toBe('orientation-code');
    expect(problemOf(`[${'('.repeat(21)}0`).message).toContain('the limit is 20');
  });

  it('never ends in anything but a problem with a place inside the text', () => {
    const pieces = [
      '[',
      ']',
      '(',
      ')',
      '/',
      '0',
      '45',
      '±',
      '-',
      '+',
      '_',
      '2',
      's',
      '~',
      'g',
      ' ',
      ',',
      '.',
      'T',
      '∓',
    ];
    fc.assert(
      fc.property(fc.array(fc.constantFrom(...pieces), { maxLength: 12 }), fc.boolean(), (parts, bracketed) => {
        const code = bracketed ? `[0/${parts.join('')}]` : parts.join('');
        try {
          expect(parseOrientationCode(code).length).toBeGreaterThan(0);
        } catch (error) {
          if (!(error instanceof SelvageError)) throw error;
          const { offset, length } = error.problems[0]!.within!;
          expect(length).toBeGreaterThan(0);
          expect(offset + length).toBeLessThanOrEqual(Math.max(1, code.length));
        }
      }),
      { numRuns: 2000 },
    );
  });
});

describe('printing an orientation code', () => {
  const print = (...list: number[]) => printOrientationCode(list.map((angle) => ({ angle })));

  it('finds mirrors, repeats, runs, pairs and groups', () => {
    expect(print(0, 45, -45, 90, 90, -45, 45, 0)).toBe('[0/±45/90]s');
    expect(print(...angles('[0/±45]2s'))).toBe('[0/±45]2s');
    expect(print(0, 90, 0, 90, 45)).toBe('[(0/90)2/45]');
    expect(print(0, 90, 0)).toBe('[0/90~]s');
    expect(print(0, -45, 45)).toBe('[0/∓45]');
    expect(print(0, 90, 0, 90, 0, 90)).toBe('[0/90]3');
    expect(print(0, 0, 0)).toBe('[0]3');
    expect(print(0, 0, 90)).toBe('[0_2/90]');
    expect(print(0)).toBe('[0]');
    expect(print()).toBe('[]');
  });

  it('brings angles to (-90, 90] and writes them without exponent', () => {
    expect(print(-90, 180, 135)).toBe('[90/0/-45]');
    expect(print(1e-7)).toBe('[0.0000001]');
  });

  it('names materials only where there are several', () => {
    const of = (...list: [number, string?][]) =>
      printOrientationCode(list.map(([angle, material]) => (material === undefined ? { angle } : { angle, material })));
    expect(of([0, 'g'], [90, 'g'])).toBe('[0g/90g]'.replaceAll('g', ''));
    expect(of([0, 'g'], [45, 'c'], [-45, 'c'], [0, 'g'])).toBe('[0g/±45c/0g]');
    expect(of([0, 'g'], [45])).toBe('[0g/45]');
  });

  it('writes names that a suffix cannot hold with hyphens, each its own', () => {
    const names = ['bx_400', 'bx 400', '300 twill'];
    const code = printOrientationCode(names.map((material) => ({ angle: 0, material })));
    expect(code).toBe('[0bx-400/0bx-400-2/0m300-twill]');
    expect(words(code)).toEqual(['0bx-400', '0bx-400-2', '0m300-twill']);
  });

  const item = fc.record({
    angle: fc.oneof(
      fc.constantFrom(0, 90, 45, -45, 30, -30),
      fc.integer({ min: -89, max: 90 }),
      fc.double({ min: -89.9, max: 90, noNaN: true }).map((angle) => Number(angle.toFixed(6)) + 0),
    ),
  });
  const suffixed = fc.record({
    angle: fc.constantFrom(0, 90, 45, -45),
    material: fc.constantFrom('g', 'c', 's', 'T', 'glass-300', 'ud_c', 'e2'),
  });
  /** Stacks with the structure that a code draws together: repeats and mirrors of small parts. */
  const structured = <Item>(part: fc.Arbitrary<Item>) =>
    fc
      .tuple(
        fc.array(part, { minLength: 1, maxLength: 5 }),
        fc.integer({ min: 1, max: 3 }),
        fc.boolean(),
        fc.boolean(),
        fc.array(part, { maxLength: 2 }),
      )
      .map(([base, count, mirrored, odd, rest]) => {
        const half = Array.from({ length: count }, () => base).flat();
        const whole = mirrored ? [...half, ...half.toReversed().slice(odd ? 1 : 0)] : half;
        return [...whole, ...rest];
      });

  it('is read back as the same plies', () => {
    fc.assert(
      fc.property(fc.oneof(structured(item), fc.array(item, { minLength: 1, maxLength: 80 })), (items) => {
        const code = printOrientationCode(items);
        expect(parseOrientationCode(code).map(({ angle }) => ({ angle }))).toEqual(items);
      }),
      { numRuns: 300 },
    );
  });

  it('is read back as the same plies of several materials', () => {
    fc.assert(
      fc.property(structured(suffixed), (items) => {
        const several = new Set(items.map(({ material }) => material)).size > 1;
        const back = parseOrientationCode(printOrientationCode(items));
        expect(back.map(({ angle }) => angle)).toEqual(items.map(({ angle }) => angle));
        if (several) expect(back.map(({ material }) => material)).toEqual(items.map(({ material }) => material));
      }),
      { numRuns: 300 },
    );
  });

  it('is never longer than the plies written one by one', () => {
    fc.assert(
      fc.property(structured(item), (items) => {
        const plain = `[${items.map(({ angle }) => angle).join('/')}]`;
        expect(printOrientationCode(items).length).toBeLessThanOrEqual(plain.length);
      }),
    );
  });
});
