import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  arealFraction,
  countInField,
  type FieldPattern,
  holeDensity,
  nearestNeighbour,
  offsetRowLength,
  type Pattern,
  penetrationDensity,
  penetrations,
  rowsMetAcross,
  rowsMetAlong,
  stitchType,
  stitchTypeIds,
  threadConsumption,
  threadDiameter,
} from '../../packages/core/src/stitch/index.js';

/** Lengths in whole hundredths of a millimetre, as a shop would write them. */
const length = (low: number, high: number) => fc.integer({ min: low * 100, max: high * 100 }).map((n) => n * 1e-5);
const grid = fc.record({ pitch: length(2, 12), rowSpacing: length(2, 12) });
const field: fc.Arbitrary<FieldPattern> = fc.oneof(
  grid.map((size) => ({ kind: 'parallel' as const, ...size })),
  fc
    .tuple(grid, fc.double({ min: 0, max: 0.99, noNaN: true }))
    .map(([size, shift]) => ({ kind: 'staggered' as const, ...size, shift })),
  fc.tuple(grid, length(1, 6)).map(([size, swing]) => ({ kind: 'zigzag' as const, ...size, swing })),
  fc
    .tuple(grid, grid, fc.integer({ min: 1, max: 179 }))
    .map(([size, second, angle]) => ({ kind: 'crossing' as const, ...size, second, angle })),
);
const edgeRows: fc.Arbitrary<Pattern> = fc
  .array(fc.record({ gap: length(3, 9), length: length(60, 900), pitch: length(2, 9), share: fc.nat(9) }), {
    minLength: 2,
    maxLength: 5,
  })
  .map((rows) => ({
    kind: 'rows',
    rows: rows.map(({ length, pitch, share }, i) => ({
      offset: rows.slice(0, i + 1).reduce((sum, row) => sum + row.gap, 0),
      length,
      pitch,
      stagger: (share / 10) * pitch,
    })),
  }));
const pattern: fc.Arbitrary<Pattern> = fc.oneof({ weight: 4, arbitrary: field }, edgeRows);
const thread = fc
  .record({
    linearDensity: fc.integer({ min: 10, max: 200 }).map((t) => t * 1e-6),
    density: fc.integer({ min: 900, max: 2600 }),
    packing: fc.double({ min: 0.4, max: 0.9, noNaN: true }),
  })
  .map((values) => ({ name: 'some thread', ...values }));
const seam = fc.record({
  pattern,
  type: fc.constantFrom(...stitchTypeIds).map(stitchType),
  needleThread: thread,
  underThread: thread,
  dryThickness: length(0.5, 9),
  waste: fc.constant(0.1),
});

const near = (found: number, wanted: number, relative = 1e-9) =>
  expect(Math.abs(found - wanted), `${found} against ${wanted}`).toBeLessThanOrEqual(relative * Math.abs(wanted));

/** The same pattern drawn k times as large. */
function scale(it: Pattern, k: number): Pattern {
  if (it.kind === 'rows') {
    return {
      ...it,
      rows: it.rows.map((row) => ({
        offset: row.offset * k,
        length: row.length * k,
        pitch: row.pitch * k,
        stagger: (row.stagger ?? 0) * k,
      })),
    };
  }
  const size = { pitch: it.pitch * k, rowSpacing: it.rowSpacing * k };
  if (it.kind === 'zigzag') return { ...it, ...size, swing: it.swing * k };
  if (it.kind !== 'crossing') return { ...it, ...size };
  return { ...it, ...size, second: { pitch: it.second.pitch * k, rowSpacing: it.second.rowSpacing * k } };
}

describe('stitch geometry', () => {
  it('scales: densities fall with the square of size, distances grow with it', () => {
    // Powers of two: exact in binary, so that no row gains a stitch by rounding.
    fc.assert(
      fc.property(pattern, fc.constantFrom(0.25, 0.5, 2, 8), (it, k) => {
        const large = scale(it, k);
        near(penetrationDensity(large) * k * k, penetrationDensity(it));
        near(holeDensity(large) * k * k, holeDensity(it));
        near(nearestNeighbour(large).distance, nearestNeighbour(it).distance * k);
        near(rowsMetAlong(large).widest, rowsMetAlong(it).widest * k);
        near(rowsMetAcross(large)?.spacing ?? 0, (rowsMetAcross(it)?.spacing ?? 0) * k);
      }),
    );
  });

  it('splits a field without losing or doubling a hole', () => {
    fc.assert(
      fc.property(field, length(5, 60), length(5, 60), length(5, 60), (it, left, right, width) => {
        const part = (x: number, side: number) => countInField(it, { x, length: side, width }).penetrations;
        expect(part(0, left) + part(left, right)).toBe(part(0, left + right));
      }),
    );
  });

  it('has as many holes in a large field as its density says, within its border', () => {
    fc.assert(
      fc.property(field, (it) => {
        const side = 0.3;
        const reach = 2 * 0.012 + (it.kind === 'zigzag' ? it.swing : 0);
        const found = countInField(it, { length: side, width: side });
        const N = penetrationDensity(it);
        expect(Math.abs(found.penetrations - N * side * side)).toBeLessThan(N * 4 * side * reach);
        expect(found.holes).toBeLessThanOrEqual(found.penetrations);
      }),
      { numRuns: 40 },
    );
  });

  it('never has two distinct holes of a field closer than the nearest neighbour', () => {
    fc.assert(
      fc.property(field, (it) => {
        const holes = penetrations(it, { length: 0.03, width: 0.03 });
        const least = nearestNeighbour(it).distance;
        holes.forEach((a, i) => {
          for (const b of holes.slice(i + 1)) {
            const distance = Math.hypot(a.x - b.x, a.y - b.y);
            if (distance > 1e-8) expect(distance).toBeGreaterThan(least * (1 - 1e-9));
          }
        });
      }),
      { numRuns: 60 },
    );
  });

  it('holds in one line met by a crack all holes of the area up to the next', () => {
    fc.assert(
      fc.property(pattern, (it) => {
        for (const met of [rowsMetAcross(it), rowsMetAlong(it)]) {
          if (met === undefined) continue;
          near(met.perFrontLength, met.spacing * penetrationDensity(it));
          expect(met.narrowest).toBeLessThanOrEqual(met.spacing * (1 + 1e-9));
          expect(met.widest).toBeGreaterThanOrEqual(met.spacing * (1 - 1e-9));
        }
      }),
    );
  });

  it('spreads a staggered field no wider than an aligned one', () => {
    fc.assert(
      fc.property(grid, fc.double({ min: 0, max: 0.99, noNaN: true }), (size, shift) => {
        const aligned = rowsMetAlong({ kind: 'parallel', ...size });
        const staggered = rowsMetAlong({ kind: 'staggered', ...size, shift });
        expect(staggered.widest).toBeLessThanOrEqual(aligned.widest * (1 + 1e-12));
      }),
    );
  });
});

describe('thread of a seam', () => {
  it('is conserved: per stitch, per area and per row length tell the same', () => {
    fc.assert(
      fc.property(seam, (it) => {
        const found = threadConsumption(it);
        near(found.perArea.total, found.perStitch.total * penetrationDensity(it.pattern));
        near(found.perArea.needle + found.perArea.under, found.perArea.total);
        if (found.totals !== undefined) {
          near(found.totals.sewn.total, found.perStitch.total * found.totals.stitches);
          near(found.totals.sewn.total, found.perRowLength.total * found.totals.rowLength);
          near(found.totals.needed.total, found.totals.sewn.total * 1.1);
        }
      }),
    );
  });

  it('crosses the thickness as its areal fraction says, both sides of the lock together', () => {
    fc.assert(
      fc.property(seam, (it) => {
        const { above, below } = arealFraction(it);
        const mean = above.bundle * it.type.lockDepth + below.bundle * (1 - it.type.lockDepth);
        near(threadConsumption(it).addedThickness.through, mean * it.dryThickness);
      }),
    );
  });

  it('grows by two thicknesses per lockstitch with the stack and by nothing else', () => {
    fc.assert(
      fc.property(seam, length(0.1, 5), (it, more) => {
        const lock = { ...it, type: stitchType(301) };
        const thicker = { ...lock, dryThickness: it.dryThickness + more };
        const growth = threadConsumption(thicker).perStitch.total - threadConsumption(lock).perStitch.total;
        near(growth, 2 * more, 1e-6);
      }),
    );
  });

  it('is as long wherever the lock lies, and as long whatever the thread', () => {
    fc.assert(
      fc.property(seam, (it) => {
        const length = (id: string) => threadConsumption({ ...it, type: stitchType(id) }).perStitch.total;
        near(length('301'), length('301-modified'));
        const other = { ...it.needleThread, linearDensity: it.needleThread.linearDensity * 2 };
        near(threadConsumption({ ...it, needleThread: other }).perArea.total, threadConsumption(it).perArea.total);
      }),
    );
  });

  it('has twice the diameter at four times the linear density', () => {
    fc.assert(
      fc.property(thread, (it) => {
        near(threadDiameter({ ...it, linearDensity: 4 * it.linearDensity }), 2 * threadDiameter(it));
        near(threadDiameter(it, 4), 2 * threadDiameter(it));
      }),
    );
  });
});

describe('an offset row', () => {
  it('comes to the same in one step or two', () => {
    fc.assert(
      fc.property(length(300, 900), length(1, 20), length(1, 20), fc.integer({ min: 0, max: 360 }), (L, a, b, turn) => {
        near(offsetRowLength(offsetRowLength(L, a, turn), b, turn), offsetRowLength(L, a + b, turn));
      }),
    );
  });
});
