import { describe, expect, it } from 'vitest';
import {
  arealFraction,
  type FieldPattern,
  fibreArea,
  type Pattern,
  penetrationDensity,
  penetrations,
  stitchType,
  threadConsumption,
} from '../../../packages/core/src/stitch/index.js';
import { aramid75, codesOf, expectNear, mm, polyester40 } from './support.js';

const parallel: Pattern = { kind: 'parallel', pitch: 4 * mm, rowSpacing: 5 * mm };
const seam = {
  pattern: parallel,
  type: stitchType('301-modified'),
  needleThread: aramid75,
  underThread: polyester40,
  dryThickness: 3 * mm,
};

type Space = readonly [number, number, number];
const pathLength = (path: readonly Space[]) =>
  path.slice(1).reduce((sum, [x, y, z], k) => {
    const [x0, y0, z0] = path[k]!;
    return sum + Math.hypot(x - x0, y - y0, z - z0);
  }, 0);

describe('thread consumption', () => {
  it('of a modified lockstitch is that of its needle and bobbin paths walked hole by hole', () => {
    // Needle thread: along the top, down to the under face and up again at each hole. Bobbin thread: along the under face.
    const T = 3 * mm;
    const holes = penetrations(parallel as FieldPattern, { length: 0.4, width: 5 * mm });
    const needle = holes.flatMap(({ x, y }): Space[] => [
      [x, y, T],
      [x, y, 0],
      [x, y, T],
    ]);
    const bobbin = holes.map(({ x, y }): Space => [x, y, 0]);
    const { perStitch } = threadConsumption(seam);
    // 100 holes, 99 runs between them.
    expectNear(perStitch.needle * 100 - 4 * mm, pathLength(needle));
    expectNear(perStitch.under * 100 - 4 * mm, pathLength(bobbin));
  });

  it('of a zigzag lockstitch is that of both slanting paths, each reaching half the thickness', () => {
    const T = 3 * mm;
    const pattern = { kind: 'zigzag', pitch: 3 * mm, swing: 4 * mm, rowSpacing: 9 * mm } as const;
    const holes = penetrations(pattern, { length: 0.3, width: 9 * mm, y: -4.5 * mm });
    const through = (face: number) =>
      holes.flatMap(({ x, y }): Space[] => [
        [x, y, face],
        [x, y, T / 2],
        [x, y, face],
      ]);
    const { perStitch } = threadConsumption({ ...seam, pattern, type: stitchType(304) });
    expectNear(perStitch.needle * 100 - 5 * mm, pathLength(through(T)));
    expectNear(perStitch.under * 100 - 5 * mm, pathLength(through(0)));
  });

  it('of a running stitch is that of one thread changing face at every hole', () => {
    const T = 3 * mm;
    const holes = penetrations(parallel as FieldPattern, { length: 0.4, width: 5 * mm });
    const path = holes.flatMap(({ x, y }, k): Space[] =>
      k % 2 === 0
        ? [
            [x, y, T],
            [x, y, 0],
          ]
        : [
            [x, y, 0],
            [x, y, T],
          ],
    );
    const { perStitch } = threadConsumption({ ...seam, type: stitchType('running') });
    expectNear(perStitch.needle * 100 - 4 * mm, pathLength(path));
    expect(perStitch.under).toBe(0);
  });

  it('of a single-thread chain is that of its loops, each reaching through to the next hole and back', () => {
    // At each hole: down, along the under face to the next hole and back (the loop), up, along the top.
    const [p, T] = [4 * mm, 3 * mm];
    const path = Array.from({ length: 100 }, (_, k): Space[] => [
      [k * p, 0, T],
      [k * p, 0, 0],
      [(k + 1) * p, 0, 0],
      [k * p, 0, 0],
      [k * p, 0, T],
    ]).flat();
    const { perStitch } = threadConsumption({ ...seam, type: stitchType(101) });
    expectNear(perStitch.needle * 100 - p, pathLength(path));
  });

  it('of a double-thread chain lays three runs of looper thread under every stitch', () => {
    const { perStitch } = threadConsumption({ ...seam, type: stitchType(401) });
    expectNear(perStitch.needle, (4 + 2 * 3) * mm);
    expectNear(perStitch.under, 3 * 4 * mm);
  });

  it('counts the same length per stitch, per row length and per area', () => {
    const found = threadConsumption(seam);
    expectNear(found.perRowLength.total, found.perStitch.total / (4 * mm));
    expectNear(found.perArea.total, found.perRowLength.total / (5 * mm));
    expectNear(found.surfacePerArea.total + found.throughPerArea.total, found.perArea.total);
    expectNear(found.massPerArea.needle, found.perArea.needle * aramid75.linearDensity);
    expectNear(found.massPerArea.under, found.perArea.under * polyester40.linearDensity);
    expectNear(found.massPerRowLength.total, found.massPerArea.total * 5 * mm);
    expect(found.addedArealMass).toBe(found.massPerArea.total);
  });

  it('adds the layer that holds its mass at the density and packing of each thread', () => {
    const loose = { ...polyester40, packing: 0.5 };
    const { addedThickness, massPerArea } = threadConsumption({ ...seam, underThread: loose });
    expectNear(addedThickness.total, massPerArea.needle / (1440 * 0.65) + massPerArea.under / (1380 * 0.5));
    expectNear(addedThickness.surface + addedThickness.through, addedThickness.total);
  });

  it('across the thickness fills it to the areal fraction of the bundles', () => {
    // The layer of through-thickness thread over the dry thickness is the mean bundle fraction of both sides.
    const balanced = { ...seam, type: stitchType(301) };
    const { above, below } = arealFraction(balanced);
    const { addedThickness } = threadConsumption(balanced);
    expectNear(addedThickness.through / (3 * mm), (above.bundle + below.bundle) / 2);
  });

  it('has totals for a field with every hole in it', () => {
    const field = { length: 0.2, width: 0.1 };
    const { totals, perStitch } = threadConsumption({ ...seam, field });
    expect(totals?.stitches).toBe(50 * 20);
    expect(totals?.rows.map((row) => row.rows)).toEqual([20]);
    expectNear(totals?.rowLength ?? 0, 4);
    expectNear(totals?.sewn.total ?? 0, perStitch.total * 1000);
  });

  it('sums both sets of a crossing pattern in a field by their own runs', () => {
    const pattern = {
      kind: 'crossing',
      pitch: 4 * mm,
      rowSpacing: 10 * mm,
      second: { pitch: 5 * mm, rowSpacing: 10 * mm },
    } as const;
    const { totals } = threadConsumption({ ...seam, pattern, field: { length: 0.2, width: 0.2 } });
    expect(totals?.rows.map((row) => [row.rows, row.stitches])).toEqual([
      [20, 1000],
      [20, 800],
    ]);
    expectNear(totals?.sewn.under ?? 0, 8);
  });

  it('has no totals for an endless field', () => {
    expect(threadConsumption(seam).totals).toBeUndefined();
  });

  it('adds tails at both ends of every row, and waste to all of it', () => {
    const rows = [6, 11].map((offset) => ({ offset: offset * mm, length: 0.4, pitch: 4 * mm }));
    const pattern: Pattern = { kind: 'rows', rows };
    const { totals } = threadConsumption({ ...seam, pattern, tails: 0.1, waste: 0.12 });
    expectNear(totals?.needed.needle ?? 0, ((totals?.sewn.needle ?? 0) + 0.4) * 1.12);
    expectNear(totals?.needed.under ?? 0, (0.8 + 0.4) * 1.12);
    expectNear(totals?.neededMass.under ?? 0, (totals?.needed.under ?? 0) * polyester40.linearDensity);
    const single = threadConsumption({ ...seam, pattern, type: stitchType('running'), tails: 0.1 });
    expect(single.totals?.needed.under).toBe(0);
  });

  it('says what it assumed', () => {
    const { underThread: _, ...withoutUnder } = seam;
    const texts = threadConsumption(withoutUnder).notes.map((note) => note.text);
    expect(texts.join('\n')).toContain('second thread taken to be the needle thread (aramid 75)');
    expect(texts.join('\n')).toContain('no waste allowance given');
    expect(threadConsumption({ ...withoutUnder, waste: 0.1, type: stitchType(101) }).notes).toHaveLength(1);
    const straight = threadConsumption({ ...seam, type: stitchType(304) }).notes;
    expect(straight.filter((note) => note.level === 'warning').map((note) => note.text)).toEqual([
      'stitch type 304 sews a zigzag, the pattern is parallel and has no swing: counted as straight stitches',
    ]);
  });

  it('is refused without thickness, with less than no waste or less than no tails', () => {
    expect(codesOf(() => threadConsumption({ ...seam, dryThickness: 0 }))).toEqual(['out-of-range']);
    expect(codesOf(() => threadConsumption({ ...seam, waste: -0.1 }))).toEqual(['out-of-range']);
    expect(codesOf(() => threadConsumption({ ...seam, tails: Number.NaN }))).toEqual(['out-of-range']);
  });
});

describe('the areal fraction', () => {
  it('is passes times legs times the area of a leg', () => {
    expectNear(arealFraction(seam).fibre, penetrationDensity(parallel) * 2 * fibreArea(aramid75));
    expectNear(arealFraction(seam).bundle * 0.65, arealFraction(seam).fibre);
  });

  it('is that of one leg in a running stitch', () => {
    expectNear(arealFraction({ ...seam, type: stitchType('running') }).fibre, arealFraction(seam).fibre / 2);
  });

  it('of a balanced lockstitch differs across the lock and leads with the smaller', () => {
    const { fibre, above, below, notes } = arealFraction({ ...seam, type: stitchType(301) });
    expectNear(above.fibre, arealFraction(seam).fibre);
    expectNear(below.fibre / above.fibre, (40 / 1380) * (1440 / 75));
    expect(fibre).toBe(below.fibre);
    expect(notes[0]?.text).toContain('below the lock');
    const turned = { ...seam, needleThread: polyester40, underThread: aramid75, type: stitchType(301) };
    expect(arealFraction(turned).notes[0]?.text).toContain('above the lock');
  });

  it('counts both threads of a saddle stitch', () => {
    const found = arealFraction({ ...seam, type: stitchType('saddle') });
    expectNear(found.fibre, penetrationDensity(parallel) * (fibreArea(aramid75) + fibreArea(polyester40)));
  });

  it('is refused when the bundles would fill the whole area', () => {
    const thick = { name: 'rope', linearDensity: 0.01, density: 1000 };
    expect(codesOf(() => arealFraction({ ...seam, needleThread: thick }))).toEqual(['out-of-range']);
  });
});
