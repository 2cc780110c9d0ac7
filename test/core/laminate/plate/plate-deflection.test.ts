import table from '@selvage/reference-data/examples/tables/plate-bending.json' with { type: 'json' };
import sandwiches from '@selvage/reference-data/examples/tables/sandwich-strip.json' with { type: 'json' };
import { describe, expect, it } from 'vitest';
import { type Laminate, laminate, stiffness } from '../../../../packages/core/src/laminate/index.js';
import { plateDeflection } from '../../../../packages/core/src/laminate/plate/index.js';
import { cylindricalBending } from '../../../../packages/core/src/laminate/shear/index.js';
import { expectNear, graphite, plyOf, problemCode, stackOf } from '../plies.js';

const crossPly = (code: string): Laminate => {
  const { plies } = stackOf(table.ply, code, 1);
  return laminate(plies.map((ply) => ({ ...ply, thickness: 1 / plies.length })));
};

function sandwich(): Laminate {
  const { share, ...core } = table.core;
  const face = plyOf(table.ply, 0, (1 - share) / 2);
  return laminate([face, { ...plyOf(core, 0, share), core: true }, face]);
}

const errors = sandwiches.rows.map((row) => ({ span: row.span, error: Math.abs(row.firstOrder / row.exact - 1) }));

/** What first-order theory misses in sandwich strips, by the independent script's own numbers, at the nearest span that is no longer. */
function band(slenderness: number): number {
  const span = Math.max(...errors.filter((one) => one.span <= slenderness).map((one) => one.span));
  return Math.max(...errors.filter((one) => one.span === span).map(({ error }) => error));
}

describe('sandwich plates by first-order theory beside exact elasticity (computed)', () => {
  it.each(table.rows)('a/h = $slenderness', ({ slenderness: a, aspect, exact }) => {
    const { withShear } = plateDeflection(sandwich(), { a, b: aspect * a }, { pressure: 1, shape: 'sine' });
    // A plate may be a twentieth worse than the worst strip.
    expect(Math.abs((100 * withShear) / a ** 4 / exact - 1)).toBeLessThan(1.05 * band(a));
  });
});

const noH = [
  [0, 0],
  [0, 1],
] as const;

describe('the deflection of a plate', () => {
  it('is 0.00406 p a⁴/D for a thin square isotropic plate under uniform pressure, and p a⁴/(4 π⁴ D) under a sine', () => {
    // Timoshenko & Woinowsky-Krieger 1959, Table 8 (recalled, not re-read): 0.00406; its series sums to 0.0040624.
    const stack = laminate([plyOf({ E1: 70e9, E2: 70e9, G12: 70e9 / 2.6, nu12: 0.3 }, 0, 1e-3)]);
    const D = stiffness(stack).D[0][0]!;
    const uniform = plateDeflection(stack, { a: 1, b: 1 }, { pressure: 10, shape: 'uniform' });
    expect(Math.abs((uniform.thin * D) / 10 - 0.00406)).toBeLessThan(0.000005);
    const sine = plateDeflection(stack, { a: 1, b: 1 }, { pressure: 10, shape: 'sine' });
    expectNear([sine.thin], [10 / (4 * Math.PI ** 4 * D)], 1e-12);
    expect(uniform.withShear).toBeGreaterThan(uniform.thin);
    expect(uniform.sources).toEqual(['whitney-1973', 'vlachoutsis-1992', 'jones-1999', 'reddy-2004']);
  });

  it('becomes that of the strip when the plate is wide', () => {
    const stack = crossPly('[0/90/0]');
    const strip = cylindricalBending(stack, { span: 10, pressure: 1 });
    const plate = plateDeflection(stack, { a: 10, b: 1e5 }, { pressure: 1, shape: 'sine' });
    expectNear([plate.thin, plate.withShear], [strip.bending, strip.deflection], 1e-6);
  });

  it('keeps its digits on a plate a hundred thousand times as long as thick', () => {
    const stack = crossPly('[0/90/90/0]');
    const { thin, withShear } = plateDeflection(stack, { a: 1e5, b: 1e5 }, { pressure: 1, shape: 'sine' });
    expectNear([withShear], [thin], 1e-7);
  });

  it('uses the shear stiffness that it is given', () => {
    const stack = crossPly('[0]');
    const H = [
      [1e12, 0],
      [0, 1e12],
    ] as const;
    const { thin, withShear } = plateDeflection(stack, { a: 5, b: 5 }, { pressure: 1, shape: 'sine', H });
    expectNear([withShear], [thin], 1e-9);
  });

  it('warns of a deflection above half the thickness, to either side', () => {
    const stack = crossPly('[0/90/90/0]');
    const at = (pressure: number) => plateDeflection(stack, { a: 20, b: 20 }, { pressure, shape: 'uniform' });
    const half = (0.5 * stack.thickness) / at(1).withShear;
    const warned = (pressure: number) => at(pressure).notes.some(({ text }) => text.includes('times its thickness'));
    expect([warned(0.99 * half), warned(1.01 * half), warned(-1.01 * half)]).toEqual([false, true, true]);
  });

  it('refuses sides and pressure that cannot be', () => {
    const stack = crossPly('[0]');
    const load = { pressure: 1, shape: 'sine' } as const;
    expect(problemCode(() => plateDeflection(stack, { a: 0, b: 1 }, load))).toBe('out-of-range');
    expect(problemCode(() => plateDeflection(stack, { a: 1, b: Number.NaN }, load))).toBe('out-of-range');
    expect(problemCode(() => plateDeflection(stack, { a: 1, b: 1 }, { ...load, pressure: Number.NaN }))).toBe(
      'out-of-range',
    );
    expect(problemCode(() => plateDeflection(stack, { a: 1, b: 1 }, { ...load, H: noH }))).toBe('out-of-range');
    for (const shape of ['sinus', undefined] as const) {
      const unknown = { pressure: 1, shape } as unknown as typeof load;
      expect(problemCode(() => plateDeflection(stack, { a: 1, b: 1 }, unknown))).toBe('not-a-choice');
    }
    const bad = laminate([plyOf({ ...graphite, G12: -1e9 }, 0, 1e-3)]);
    expect(problemCode(() => plateDeflection(bad, { a: 1, b: 1 }, load))).toBe('not-admissible');
  });
});
