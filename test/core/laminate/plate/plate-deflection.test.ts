import table from '@selvage/reference-data/examples/tables/plate-bending.json' with { type: 'json' };
import sandwiches from '@selvage/reference-data/examples/tables/sandwich-strip.json' with { type: 'json' };
import strips from '@selvage/reference-data/examples/tables/strip-bending.json' with { type: 'json' };
import { describe, expect, it } from 'vitest';
import { type Laminate, laminate, stiffness } from '../../../../packages/core/src/laminate/index.js';
import { plateDeflection } from '../../../../packages/core/src/laminate/plate/index.js';
import { cylindricalBending } from '../../../../packages/core/src/laminate/shear/index.js';
import { expectNear, graphite, plyOf, problemCode, stackOf } from '../plies.js';

const crossPly = (code: string): Laminate => {
  const { plies } = stackOf(table.ply, code, 1);
  return laminate(plies.map((ply) => ({ ...ply, thickness: 1 / plies.length })));
};

/** The single orthotropic layer from its three-dimensional stiffness, C11 = 1. */
function orthotropic(): Laminate {
  const { C12, C13, C22, C23, C33, C44, C55, C66 } = table.orthotropic;
  const [Q11, Q12, Q22] = [1 - C13 ** 2 / C33, C12 - (C13 * C23) / C33, C22 - C23 ** 2 / C33];
  const moduli = { E1: Q11 - Q12 ** 2 / Q22, E2: Q22 - Q12 ** 2 / Q11, nu12: Q12 / Q22, G12: C66 };
  return laminate([plyOf({ ...moduli, G13: C55, G23: C44 }, 0, 1)]);
}

function sandwich(): Laminate {
  const { share, ...core } = table.core;
  const face = plyOf(table.ply, 0, (1 - share) / 2);
  return laminate([face, { ...plyOf(core, 0, share), core: true }, face]);
}

const stacks: Record<string, () => Laminate> = { orthotropic, sandwich };

/** Deviations of first-order theory from exact elasticity in strips, by the independent script's own numbers. */
const stripErrors = strips.strips.flatMap(({ rows }) =>
  rows.flatMap((row) =>
    'firstOrder' in row ? [{ span: row.span, error: Math.abs(row.firstOrder! / row.exact - 1) }] : [],
  ),
);
const sandwichErrors = sandwiches.rows.map((row) => ({
  span: row.span,
  error: Math.abs(row.firstOrder / row.exact - 1),
}));

/** The largest deviation at the nearest span that is no longer than the plate. */
function band(errors: readonly { span: number; error: number }[], slenderness: number): number {
  const span = Math.max(...errors.filter((one) => one.span <= slenderness).map((one) => one.span));
  return Math.max(...errors.filter((one) => one.span === span).map(({ error }) => error));
}

describe('plates by first-order theory beside exact elasticity', () => {
  it.each(table.rows)('$id ($source, $access)', (row) => {
    const stack = stacks[row.stack]?.() ?? crossPly(row.stack);
    const a = row.slenderness;
    const shape = row.load === 'sine' ? 'sine' : 'uniform';
    const { withShear } = plateDeflection(stack, { a, b: row.aspect * a }, { pressure: 1, shape });
    const found = row.stack === 'orthotropic' ? withShear : (100 * withShear) / a ** 4;
    const errors = row.stack === 'sandwich' ? sandwichErrors : stripErrors;
    // A plate may be a twentieth worse than the worst strip.
    expect(Math.abs(found / row.exact - 1)).toBeLessThan(1.05 * band(errors, a));
    const decimals = row.printed?.split('.')[1]?.length ?? 0;
    if (row.printed === undefined) return;
    // What is printed is exact but for the last digit, or for a part in ten thousand.
    expect(Math.abs(Number(row.printed) - row.exact)).toBeLessThan(Math.max(0.6 * 10 ** -decimals, 1e-4 * row.exact));
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

  it('refuses sides and pressure that cannot be', () => {
    const stack = crossPly('[0]');
    const load = { pressure: 1, shape: 'sine' } as const;
    expect(problemCode(() => plateDeflection(stack, { a: 0, b: 1 }, load))).toBe('out-of-range');
    expect(problemCode(() => plateDeflection(stack, { a: 1, b: Number.NaN }, load))).toBe('out-of-range');
    expect(problemCode(() => plateDeflection(stack, { a: 1, b: 1 }, { ...load, pressure: Number.NaN }))).toBe(
      'out-of-range',
    );
    expect(problemCode(() => plateDeflection(stack, { a: 1, b: 1 }, { ...load, H: noH }))).toBe('out-of-range');
    const bad = laminate([plyOf({ ...graphite, G12: -1e9 }, 0, 1e-3)]);
    expect(problemCode(() => plateDeflection(bad, { a: 1, b: 1 }, load))).toBe('not-admissible');
  });
});
