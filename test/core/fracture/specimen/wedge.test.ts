import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { simulateWedge, type WedgeEdge } from '../../../../packages/core/src/fracture/index.js';
import { armOf, brittle, cloth, codesOf, expectNear, mm, slender } from './support.js';

const arm = slender(1.35 * mm, 22e9);
const edge: WedgeEdge = { arms: [arm, arm], width: 1, depth: 60 * mm, opening: 0.8 * mm, bondToughness: 600, rows: [] };
/** Rows at 6, 11 and 17 mm: k in N/mm per mm of opening and mm of edge, strength 44.6 N/mm. */
const three = (k: number) => [6, 11, 17].map((place) => brittle(place * mm, k * 1e6, 44.6e3));

describe('an edge opened by a wedge, slender arms', () => {
  it.each([
    [22, 600, 0.5, 8.06],
    [22, 600, 0.8, 10.2],
    [22, 600, 1.2, 12.49],
    [22, 300, 0.8, 12.13],
    [40, 600, 0.8, 11.84],
  ])('of %d GPa and %d J/m² opened %f mm splits %f mm', (E, Gc, opening, wanted) => {
    // Independent script: a_n = (3 E h³ Δ²/(16 Gc))^(1/4).
    const one = slender(1.35 * mm, E * 1e9);
    const { splitLength, naturalLength } = simulateWedge({
      ...edge,
      arms: [one, one],
      bondToughness: Gc,
      opening: opening * mm,
    });
    expect(Math.abs(splitLength / mm - wanted)).toBeLessThan(0.006);
    expectNear(splitLength, ((3 * E * 1e9 * (1.35 * mm) ** 3 * (opening * mm) ** 2) / (16 * Gc)) ** 0.25, 1e-4);
    expectNear(naturalLength, splitLength, 1e-4);
  });

  it.each([
    [1.35, 1.35, 649.5],
    [0.9, 1.8, 342.1],
  ])('with arms of %f and %f mm stops at 10 mm for a toughness of %f J/m²', (h1, h2, G) => {
    // Independent script: G = 9 Δ²/(2 a⁴ (1/D1 + 1/D2)), printed to four digits.
    const arms = [slender(h1 * mm, 22e9), slender(h2 * mm, 22e9)] as const;
    expectNear(simulateWedge({ ...edge, arms, bondToughness: G }).splitLength, 10 * mm, 2e-4);
  });

  // Independent script, marching by 0.02 mm at least: split length and force at 6 mm in N/mm, or which rows break.
  it.each([
    [0.8, 50, 9.3, 6.1, []],
    [0.8, 200, 8.5, 15.4, []],
    [0.8, 400, 8.1, 23.0, []],
    [0.8, 4000, 10.2, 0, [0]],
    [1.2, 50, 10.4, 11.7, []],
    [1.2, 200, 9.1, 27.4, []],
    [1.2, 400, 8.52, 39.6, []],
    [1.2, 4000, 11.58, 0, [0]],
    [1.6, 50, 11.08, 17.1, []],
    [1.6, 200, 9.46, 39.0, []],
    [1.6, 400, 12.6, 0, [0]],
    [1.6, 4000, 11.82, 0, [0]],
    [2.4, 50, 11.92, 27.6, []],
    [2.4, 200, 13.62, 0, [0]],
    [2.4, 400, 13.14, 0, [0]],
    [2.4, 4000, 17.36, 0, [0, 1]],
  ])('opened %f mm with three rows of k = %d stops at %f mm', (opening, k, split, q6, gone) => {
    const result = simulateWedge({ ...edge, opening: opening * mm, rows: three(k) });
    expect(Math.abs(result.splitLength / mm - split)).toBeLessThan(0.025);
    expect(Math.abs((result.rows[0]?.force ?? 0) / 1e3 - q6)).toBeLessThan(0.2);
    expect(result.broken.map(({ row }) => row)).toEqual(gone);
    expect(result.rows.flatMap(({ row, broken }) => (broken ? [row] : []))).toEqual(gone);
    expect(result.arrested).toBe(true);
  });

  it.each([
    [6, 6.17],
    [7, 7.16],
    [8, 8.14],
  ])('stops close behind one stiff row at %d mm that holds', (place, split) => {
    const result = simulateWedge({ ...edge, rows: [brittle(place * mm, 1e12, 1e12)] });
    expect(Math.abs(result.splitLength / mm - split)).toBeLessThan(0.015);
    expect(result.atRow).toBe(0);
  });

  it('just past a stiff row is a propped cantilever, P = 3 EI Δ/(2 s³), whose faces are pressed together at the tip', () => {
    const s = 6 * mm;
    const EI = (22e9 * (1.35 * mm) ** 3) / 12;
    const rows = [brittle(s, 1e21, 9e14)];
    const { load, splitLength } = simulateWedge({ ...edge, bondToughness: 1, rows, crackLength: s * 1.0005 });
    expectNear(load, (3 * EI * 0.8 * mm) / (2 * s ** 3), 1e-3);
    expect(splitLength).toBe(s * 1.0005);
  });

  it('carries in a row what moment balance asks for: q = (P a - √(Gc EI))/(a - s)', () => {
    const EI = (22e9 * (1.35 * mm) ** 3) / 12;
    fc.assert(
      fc.property(
        fc.double({ min: 3, max: 8, noNaN: true }),
        fc.double({ min: 20, max: 800, noNaN: true }),
        (place, k) => {
          const { splitLength: a, load, rows } = simulateWedge({ ...edge, rows: [brittle(place * mm, k * 1e6, 1e9)] });
          expectNear(rows[0]?.force ?? 0, (load * a - Math.sqrt(600 * EI)) / (a - place * mm), 2e-3);
        },
      ),
      { numRuns: 25 },
    );
  });
});

describe('an edge opened by a wedge, real arms', () => {
  const real = armOf({ ...cloth, h: 1.35 * mm });

  it('splits to where beam, shear and bed together say', () => {
    const { splitLength, naturalLength } = simulateWedge({ ...edge, arms: [real, real] });
    expectNear(splitLength, naturalLength, 1e-6);
    const bare = slender(1.35 * mm, 60e9);
    expect(splitLength).toBeLessThan(simulateWedge({ ...edge, arms: [bare, bare] }).splitLength);
  });

  it('is split right through when it is not deep enough', () => {
    const { arrested, splitLength } = simulateWedge({ ...edge, arms: [real, real], depth: 15 * mm, opening: 4 * mm });
    expect(arrested).toBe(false);
    expect(splitLength).toBeLessThan(15 * mm);
  });

  it('is not split by a mouth that opens less than the bed gives', () => {
    const { naturalLength, splitLength } = simulateWedge({
      ...edge,
      arms: [real, real],
      opening: 0.001 * mm,
      crackLength: 1 * mm,
    });
    expect([naturalLength, splitLength]).toEqual([0, 1 * mm]);
  });

  it('says when an arm would break', () => {
    const weak = { ...real, failureStrain: { tension: 0.0035, compression: 0.0035 } };
    const { notes, armStrain } = simulateWedge({ ...edge, arms: [weak, weak] });
    expect(armStrain).toBeGreaterThan(0.0035);
    expect(notes.filter(({ level }) => level === 'warning')).toHaveLength(1);
  });

  it('is never split further by rows than without', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 2, max: 20, noNaN: true }), { maxLength: 4 }),
        fc.double({ min: 10, max: 3000, noNaN: true }),
        fc.double({ min: 0.2, max: 2, noNaN: true }),
        (places, k, opening) => {
          const rows = places.map((place) => brittle(place * mm, k * 1e6, 40e3));
          const result = simulateWedge({ ...edge, arms: [real, real], opening: opening * mm, rows });
          expect(result.splitLength).toBeLessThanOrEqual(result.naturalLength * (1 + 1e-6));
          expect(Number.isFinite(result.load)).toBe(true);
          expect(result.rows.map(({ position }) => position)).toEqual(
            rows.map(({ position }) => position).sort((p, q) => p - q),
          );
        },
      ),
      { numRuns: 30 },
    );
  });

  it.each([
    ['width', { width: -1 }],
    ['depth', { depth: 0 }],
    ['depth that leaves no bond', { depth: 1 * mm, crackLength: 0.9 * mm }],
    ['opening', { opening: 0 }],
    ['toughness', { bondToughness: Number.NaN }],
    ['start', { crackLength: 0.1 }],
    ['row outside', { rows: [brittle(0.1, 1, 1)] }],
    ['refinement', { refine: -1 }],
  ])('is refused for its %s', (_, change) => {
    expect(codesOf(() => simulateWedge({ ...edge, arms: [real, real], ...change }))).toEqual(['out-of-range']);
  });

  it('has no equilibrium with a row stiff beyond all numbers', () => {
    expect(
      codesOf(() =>
        simulateWedge({
          ...edge,
          rows: [{ ...brittle(6 * mm, 1, 1), curve: { opening: [0, 1e-307, 1], force: [0, 1e10, 1e9] } }],
        }),
      ),
    ).toEqual(['not-computable']);
  });

  it('is refused for a row that drops where it has become stiffer again, but not down to what it was', () => {
    const curve = { opening: [0, 1e-4, 2e-4, 3e-4, 3e-4, 5e-4], force: [0, 10, 2, 9, 7, 0] };
    expect(codesOf(() => simulateWedge({ ...edge, rows: [{ ...brittle(6 * mm, 1, 1), curve }] }))).toEqual([
      'not-admissible',
    ]);
  });
});
