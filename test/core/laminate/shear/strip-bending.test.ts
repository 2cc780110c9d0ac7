import sandwiches from '@selvage/reference-data/examples/tables/sandwich-strip.json' with { type: 'json' };
import table from '@selvage/reference-data/examples/tables/strip-bending.json' with { type: 'json' };
import { describe, expect, it } from 'vitest';
import { laminate, stiffness } from '../../../../packages/core/src/laminate/index.js';
import {
  cylindricalBending,
  type Matrix2,
  shearStiffnessOf,
  shearStressDistribution,
  transverseShear,
} from '../../../../packages/core/src/laminate/shear/index.js';
import { expectNear, graphite, plyOf, problemCode, stackOf } from '../plies.js';

const unitStack = (code: string) => {
  const { plies } = stackOf(table.ply, code, 1);
  return laminate(plies.map((ply) => ({ ...ply, thickness: 1 / plies.length })));
};
interface Row {
  readonly stack: string;
  readonly span: number;
  readonly exact: number;
  readonly thin?: number;
  readonly firstOrder?: number;
  readonly firstOrderFiveSixths?: number;
}
const rows: Row[] = table.strips.flatMap(({ stack, rows }) => rows.map((row) => ({ stack, ...row })));
const scaled = (w: number, span: number): number => (100 * w) / span ** 4;

/** Error of a computed deflection beside exact elasticity. */
const error = ({ stack, span, exact }: Row, deflection = deflectionOf(stack, span)): number =>
  scaled(deflection, span) / exact - 1;
const deflectionOf = (stack: string, span: number): number =>
  cylindricalBending(unitStack(stack), { span, pressure: 1 }).deflection;

/**
 * Deflection with the shear energy of the moments that a strip held from twisting has: under κx alone all three components grow with Mx,
 * so ∂M/∂x = V M/Mx and w = p/(k⁴ Mx) + p/k² ∫ τᵀ G⁻¹ τ dz for V = 1. Symmetric stacks: no membrane forces.
 */
function withOwnMoments(code: string, span: number): number {
  const stack = unitStack(code);
  const [M1 = 0, M2 = 0, M6 = 0] = stiffness(stack).D[0];
  const { points } = shearStressDistribution(stack, { alongX: [1, M2 / M1, M6 / M1], alongY: [0, 0, 0] }, 5);
  const boole = [7, 32, 12, 32, 7];
  let compliance = 0;
  stack.plies.forEach((ply, k) => {
    const [Gxz, Gxyz, Gyz] = shearStiffnessOf(ply);
    points
      .filter((point) => point.ply === k + 1)
      .forEach(({ tauXz, tauYz }, i) => {
        const energy = (Gyz * tauXz ** 2 - 2 * Gxyz * tauXz * tauYz + Gxz * tauYz ** 2) / (Gxz * Gyz - Gxyz ** 2);
        compliance += (ply.thickness * boole[i]! * energy) / 90;
      });
  });
  const k2 = (Math.PI / span) ** 2;
  return 1 / (k2 * k2 * M1) + compliance / k2;
}

describe('a wide strip under half a sine wave of pressure', () => {
  it.each(rows.filter((row) => 'firstOrder' in row))(
    '$stack at a span of $span: thin plate and first-order theory',
    (row) => {
      const stack = unitStack(row.stack);
      const { span } = row;
      const found = cylindricalBending(stack, { span, pressure: 1 });
      expectNear([scaled(found.bending, span)], [row.thin!], table.tolerance);
      expectNear([scaled(found.deflection, span)], [row.firstOrder!], table.tolerance);
      expectNear([found.bending + found.shear], [found.deflection], 1e-12);
    },
  );

  it.each(rows.filter((row) => 'firstOrderFiveSixths' in row && !row.stack.includes('45')))(
    '$stack at a span of $span: with another shear stiffness, 5/6 of the sum',
    (row) => {
      const stack = unitStack(row.stack);
      const [x, y] = transverseShear(stack).sums;
      const H: Matrix2 = [
        [(5 / 6) * x, 0],
        [0, (5 / 6) * y],
      ];
      const found = cylindricalBending(stack, { span: row.span, pressure: 1, H });
      expectNear([scaled(found.deflection, row.span)], [row.firstOrderFiveSixths!], table.tolerance);
    },
  );

  it.each(table.strips.map(({ stack }) => stack))('%s: the error falls with the square of a growing span', (stack) => {
    const [shorter, longer] = rows.filter((row) => row.stack === stack).slice(-2) as [Row, Row];
    const order = Math.log(error(shorter) / error(longer)) / Math.log(longer.span / shorter.span);
    expect(Math.round(order)).toBe(2);
  });

  it('leaves out how the twisting moment of a held strip changes: with its energy angle plies are as good as cross plies', () => {
    const at100 = (stack: string): Row => rows.find((row) => row.stack === stack && row.span === 100)!;
    const crossPlies = ['[0]', '[0/90/0]', '[90/0/90]', '[0/90/90/0]'].map(at100).map((row) => Math.abs(error(row)));
    for (const stack of ['[45/-45/-45/45]', '[30/-30/-30/30]', '[0/45/-45/90]s']) {
      const row = at100(stack);
      expect(Math.abs(error(row))).toBeGreaterThan(Math.max(...crossPlies));
      expect(Math.abs(error(row, withOwnMoments(stack, 100)))).toBeLessThan(Math.max(...crossPlies));
    }
  });

  it('has for one ply the error of plates that keep their thickness: 3/40 ν (π t/L)², ν that of the plane xz', () => {
    // Reissner's plate against the first-order one, ν t²/10 of ∇²p, less ν t²/40 for the mid-plane's deflection beside the mean one.
    // Pagano's ply has the same ν12 in every plane along the fibre, and 0.25 across.
    const { E1, E2, nu12 } = table.ply;
    const nu = (nu12 + nu12 * 0.25) / (1 - (nu12 * nu12 * E2) / E1);
    const row = rows.find(({ stack, span }) => stack === '[0]' && span === 100)!;
    expect(Math.abs(error(row) - (3 / 40) * nu * (Math.PI / 100) ** 2)).toBeLessThan(table.tolerance);
  });

  it('is as near to exact elasticity as its docstring and its warning state', () => {
    const stated: Record<string, Record<number, number>> = { '[30/-30/-30/30]': { 4: 0.086, 10: 0.035, 20: 0.012 } };
    for (const row of rows) {
      const bound = (stated[row.stack] ?? { 4: 0.12, 10: 0.014, 20: 0.005 })[row.span];
      if (bound !== undefined) expect(Math.abs(error(row)), `${row.stack} at ${row.span}`).toBeLessThan(bound);
    }
  });

  it('says by how much a strip free to twist would bend more, where bending and twisting are coupled', () => {
    const coupled = unitStack('[30/-30]s');
    const { notes } = cylindricalBending(coupled, { span: 20, pressure: 1 });
    const { D } = stiffness(coupled);
    const r = D[0][2]! ** 2 / (D[0][0]! * D[2][2]!);
    expect(notes.at(-1)).toMatchObject({ level: 'assumption' });
    expect(notes.at(-1)?.text).toContain(`it would bend ${((100 * r) / (1 - r)).toPrecision(2)} % more`);
    for (const code of ['[0/90]s', '[0]', '[45/-45]']) {
      expect(cylindricalBending(unitStack(code), { span: 20, pressure: 1 }).notes).toEqual([]);
    }
  });

  it('warns of a short span only', () => {
    const stack = unitStack('[0/90]s');
    const short = cylindricalBending(stack, { span: 4, pressure: 1 });
    expect(short.notes.at(-1)).toMatchObject({ level: 'warning', source: 'pagano-1969' });
    expect(cylindricalBending(stack, { span: 10, pressure: 1 }).notes).toEqual([]);
    expect(short.sources).toContain('pagano-1969');
  });

  it('refuses a span or pressure that cannot be', () => {
    const stack = unitStack('[0/90]s');
    for (const span of [0, -1, Number.POSITIVE_INFINITY]) {
      expect(problemCode(() => cylindricalBending(stack, { span, pressure: 1 }))).toBe('out-of-range');
    }
    expect(problemCode(() => cylindricalBending(stack, { span: 1, pressure: Number.NaN }))).toBe('out-of-range');
    for (const H of [
      [
        [1, 2],
        [2, 1],
      ],
      [
        [1, 0.1],
        [0.2, 1],
      ],
      [
        [Number.NaN, 0],
        [0, 1],
      ],
      [
        [-1, 0],
        [0, -1],
      ],
    ] as const) {
      expect(problemCode(() => cylindricalBending(stack, { span: 1, pressure: 1, H }))).toBe('out-of-range');
    }
    const bad = laminate([plyOf({ ...graphite, G12: -1e9 }, 0, 1e-3)]);
    expect(problemCode(() => cylindricalBending(bad, { span: 1, pressure: 1 }))).toBe('not-admissible');
  });
});

describe('a sandwich strip beside the independent script', () => {
  const { nuFace, nuCore } = sandwiches;
  it.each(sandwiches.rows)('Ef $Ef, Ec $Ec at a span of $span', (row) => {
    const layer = (E: number, nu: number, G: number, t: number) =>
      plyOf({ E1: E, E2: E, G12: E / (2 * (1 + nu)), nu12: nu, G13: G, G23: G }, 0, t);
    const face = layer(row.Ef, nuFace, row.Gf, row.tf);
    const stack = laminate([face, layer(row.Ec, nuCore, row.Gc, row.tc), face]);
    const span = row.span * stack.thickness;
    const found = cylindricalBending(stack, { span, pressure: 1 });
    expectNear([found.bending], [row.bending], sandwiches.tolerance);
    expectNear([found.deflection], [row.firstOrder], sandwiches.toleranceFirstOrder);
    // Exact elasticity: first-order theory is 2 % too soft at a span of 8, 0.5 % at 15, 0.1 % at 30 (columns of the table).
    expect(found.deflection / row.exact - 1).toBeLessThan({ 8: 0.02, 15: 0.005, 30: 0.001 }[row.span]!);
  });
});
