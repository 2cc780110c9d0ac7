import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  allocateBatch,
  engineeringConstants,
  evaluateBatch,
  type Laminate,
  laminate,
  layout,
  makeQbarTable,
  STRIDE,
  stiffness,
  tabulateQbar,
} from '../../../packages/core/src/laminate/index.js';
import { anyLaminate, graphite, plyOf, problemCode } from './plies.js';

function batchOf(laminates: readonly Laminate[]) {
  const plies = laminates.flatMap((each) => each.plies);
  const { qbarTable, row } = tabulateQbar(plies);
  const { batch, out } = allocateBatch(laminates.length, plies.length, qbarTable);
  laminates.forEach((each, k) => {
    batch.plyOffsets[k + 1] = batch.plyOffsets[k]! + each.plies.length;
  });
  batch.row.set(row);
  batch.thickness.set(plies.map((ply) => ply.thickness));
  return { batch, out };
}

describe('the table of ply stiffness', () => {
  it('has exactly zero shear coupling at 0 and 90 degrees', () => {
    const table = makeQbarTable([graphite], [0, 90, -90, 180]);
    for (let r = 0; r < 4; r++) {
      expect(Math.abs(table[6 * r + 2]!)).toBe(0);
      expect(Math.abs(table[6 * r + 4]!)).toBe(0);
    }
  });

  it('holds a row for every material at every angle, in that order', () => {
    const soft = { E1: 40e9, E2: 8e9, G12: 4e9, nu12: 0.26 };
    const both = makeQbarTable([graphite, soft], [0, 30, 60]);
    expect([...both.subarray(24, 30)]).toEqual([...makeQbarTable([soft], [30])]);
  });

  it('is written over a given table, which must be long enough', () => {
    const given = new Float64Array(12);
    expect(makeQbarTable([graphite], [20, 70], given)).toBe(given);
    expect([...given]).toEqual([...makeQbarTable([graphite], [20, 70])]);
    expect(problemCode(() => makeQbarTable([graphite], [20, 70], new Float64Array(11)))).toBe('out-of-range');
  });

  it('computes a pair of material and angle once', () => {
    const plies = [0, 45, 0, 45, 45].map((angle) => plyOf(graphite, angle, 1e-3));
    const { qbarTable, row } = tabulateQbar(plies);
    expect(qbarTable.length).toBe(12);
    expect([...row]).toEqual([0, 1, 0, 1, 1]);
  });

  it('gives the stiffness of graphite/epoxy at 15, 30 and 45 degrees (Tsai & Hahn 1980, clt.json CLT-06 recomputed)', () => {
    const table = makeQbarTable([graphite], [15, 30, 45]);
    const expected = [
      160.469947564, 12.7521399872, 38.5028565541, 11.976918925, 4.36338847457, 17.0252155428, 109.379247187,
      32.4625710729, 54.1929911994, 23.6467571299, 20.0535231199, 36.7356466285, 56.6577866157, 42.3177866157,
      42.8662450286, 56.6577866157, 42.8662450286, 46.5908621714,
    ];
    expected.forEach((value, i) => {
      expect(Math.abs(table[i]! / 1e9 / value - 1)).toBeLessThan(1e-9);
    });
  });
});

describe('the batch kernel', () => {
  it('gives every laminate of a batch what it gives it alone, bit for bit', () => {
    fc.assert(
      fc.property(fc.array(anyLaminate, { minLength: 1, maxLength: 5 }), (laminates) => {
        const { batch, out } = batchOf(laminates);
        out.values.fill(Number.NaN);
        evaluateBatch(batch, out);
        laminates.forEach((each, k) => {
          const alone = batchOf([each]);
          evaluateBatch(alone.batch, alone.out);
          expect([...out.values.subarray(k * STRIDE, (k + 1) * STRIDE)]).toEqual([...alone.out.values]);
          expect(out.status[k]).toBe(0);
        });
      }),
      { numRuns: 50 },
    );
  });

  it('lays its numbers out as the layout says', () => {
    fc.assert(
      fc.property(anyLaminate, (each) => {
        const { batch, out } = batchOf([each]);
        evaluateBatch(batch, out);
        const s = stiffness(each);
        const six = (m: readonly (readonly number[])[]) => [
          m[0]![0]!,
          m[0]![1]!,
          m[0]![2]!,
          m[1]![1]!,
          m[1]![2]!,
          m[2]![2]!,
        ];
        const seven = (at: number) => [...out.values.subarray(at, at + 7)];
        const at = (offset: number, count: number) => [...out.values.subarray(offset, offset + count)];
        expect(at(layout.A, 6)).toEqual(six(s.A));
        expect(at(layout.B, 6)).toEqual(six(s.B));
        expect(at(layout.D, 6)).toEqual(six(s.D));
        expect(at(layout.a, 6)).toEqual(six(s.a));
        expect(at(layout.b, 9)).toEqual(s.b.flat());
        expect(at(layout.d, 6)).toEqual(six(s.d));
        const { inPlane, flexural } = engineeringConstants(s);
        for (const [offset, c] of [
          [layout.inPlane, inPlane],
          [layout.flexural, flexural],
        ] as const) {
          const expected = [c.Ex, c.Ey, c.Gxy, c.nuxy, c.nuyx, c.etaxyx, c.etaxyy];
          seven(offset).forEach((value, i) => {
            expect(value).toBeCloseTo(expected[i]!, 12 - Math.ceil(Math.log10(Math.abs(value) + 1)));
          });
        }
        expect(out.values[layout.thickness]).toBe(s.thickness);
        expect(out.values[layout.condition]).toBe(s.condition);
      }),
      { numRuns: 50 },
    );
  });

  it('marks a laminate that is not positive definite and leaves zeros, the others untouched by it', () => {
    const good = laminate([plyOf(graphite, 0, 1e-3), plyOf(graphite, 90, 1e-3)]);
    const { batch, out } = batchOf([good, good, good]);
    // The second laminate gets a ply of negative stiffness, by a row of its own.
    const qbarTable = Float64Array.from([...batch.qbarTable, -1e12, 0, 0, 1e9, 0, 1e9]);
    batch.row[2] = batch.qbarTable.length / 6;
    evaluateBatch({ ...batch, qbarTable }, out);
    expect([...out.status]).toEqual([0, 1, 0]);
    expect([...out.values.subarray(STRIDE, 2 * STRIDE)].every((value) => value === 0)).toBe(true);
    expect([...out.values.subarray(0, STRIDE)]).toEqual([...out.values.subarray(2 * STRIDE)]);
  });

  it('marks empty laminates, rows outside the table and thicknesses that are not numbers', () => {
    const good = laminate([plyOf(graphite, 0, 1e-3), plyOf(graphite, 90, 1e-3)]);
    const empty = allocateBatch(1, 0, new Float64Array(6));
    evaluateBatch(empty.batch, empty.out);
    expect(empty.out.status[0]).toBe(1);
    const outside = batchOf([good]);
    outside.batch.row[1] = 99;
    evaluateBatch(outside.batch, outside.out);
    expect(outside.out.status[0]).toBe(1);
    const notANumber = batchOf([good]);
    notANumber.batch.thickness[0] = Number.NaN;
    evaluateBatch(notANumber.batch, notANumber.out);
    expect(notANumber.out.status[0]).toBe(1);
    expect(notANumber.out.values.every((value) => value === 0)).toBe(true);
  });

  it('refuses arrays that are too short', () => {
    const { batch, out } = batchOf([laminate([plyOf(graphite, 0, 1e-3)])]);
    const short = [
      () => evaluateBatch({ ...batch, row: new Int32Array(0) }, out),
      () => evaluateBatch({ ...batch, thickness: new Float64Array(0) }, out),
      () => evaluateBatch(batch, { ...out, values: new Float64Array(STRIDE - 1) }),
      () => evaluateBatch(batch, { ...out, status: new Uint8Array(0) }),
    ];
    expect(short.map(problemCode)).toEqual(short.map(() => 'out-of-range'));
  });

  it('refuses to lay out a number of laminates or plies that cannot be', () => {
    for (const wrong of [-1, 1.5, Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(problemCode(() => allocateBatch(wrong, 1, new Float64Array(6)))).toBe('out-of-range');
      expect(problemCode(() => allocateBatch(1, wrong, new Float64Array(6)))).toBe('out-of-range');
    }
    expect(allocateBatch(0, 0, new Float64Array(0)).out.values).toHaveLength(0);
  });
});
