import { describe, expect, it } from 'vitest';
import {
  type HoleInput,
  holes,
  needleDiameter,
  needleFor,
  needleRatio,
  type Pattern,
  stitchType,
  threadDiameter,
} from '../../../packages/core/src/stitch/index.js';
import { aramid75, codesOf, expectNear, mm, tex } from './support.js';

const thread = (size: number) => ({ ...aramid75, linearDensity: size * tex });

describe('the needle for a thread', () => {
  // The table of common practice (no source) in reference-data/needles.json: its ranges, and the steps between them.
  it.each([
    [15, 80, 90],
    [25, 80, 90],
    [27, 90, 100],
    [40, 100, 110],
    [50, 110, 120],
    [75, 120, 140],
    [90, 120, 140],
    [100, 140, 160],
    [180, 160, 200],
  ])('of %d tex has a metric number of %d to %d', (size, from, to) => {
    expect(needleFor(thread(size))).toMatchObject({ from, to, notes: [] });
  });

  it.each([
    [10, 80, 90],
    [220, 160, 200],
  ])('of %d tex, outside the table, is that of the nearest size with a warning', (size, from, to) => {
    const found = needleFor(thread(size));
    expect(found).toMatchObject({ from, to });
    expect(found.notes.map((note) => note.level)).toEqual(['warning']);
    expect(found.notes[0]?.text).toContain('15 to 180 tex');
  });

  it('measures a hundredth of a millimetre per number', () => {
    expectNear(needleDiameter(110), 1.1 * mm);
  });

  it('is compared with two strands side by side', () => {
    expectNear(needleRatio(110, aramid75), (1.1 * mm) / (2 * threadDiameter(aramid75)));
  });

  it('is not sought for a thread or number that makes no sense', () => {
    expect(codesOf(() => needleFor(thread(-1)))).toEqual(['out-of-range']);
    expect(codesOf(() => needleDiameter(0))).toEqual(['out-of-range']);
    expect(codesOf(() => needleRatio(-1, aramid75))).toEqual(['out-of-range']);
  });
});

const rows = (offset: number, pitch: number, second: number): Pattern => ({
  kind: 'rows',
  rows: [offset, second].map((each) => ({ offset: each * mm, length: 0.6, pitch: pitch * mm })),
});
const good: HoleInput = {
  pattern: rows(6, 4, 11),
  type: stitchType('301-modified'),
  needleThread: aramid75,
  dryThickness: 3 * mm,
  needleNumber: 110,
  holeWidth: 1.1 * mm,
};
const warnings = (input: Partial<HoleInput>) => holes({ ...good, ...input }).notes.map((note) => note.text);

describe('the holes of a pattern', () => {
  // Hole 1.1 mm: net width at pitches of 4, 3 and 2 mm (invented scenario, computed by an independent script).
  it.each([
    [4, '0.72'],
    [3, '0.63'],
    [2, '0.45'],
  ])('of 1.1 mm at a pitch of %d mm leave %s of the width', (pitch, net) => {
    // 0.725 is printed as 0.72.
    expect(holes({ ...good, pattern: rows(6, pitch, 11) }).netWidth - Number(net)).toBeLessThanOrEqual(0.0051);
    expectNear(holes({ ...good, pattern: rows(6, pitch, 11) }).netWidth, 1 - 1.1 / pitch);
  });

  it('leave nothing where they touch', () => {
    expect(holes({ ...good, pattern: rows(6, 1, 11) }).netWidth).toBe(0);
  });

  it('of a wide zigzag stand two advances apart along each sub-row', () => {
    const zigzag = (swing: number): Pattern => ({ kind: 'zigzag', pitch: 3 * mm, swing, rowSpacing: 9 * mm });
    expectNear(holes({ ...good, pattern: zigzag(4 * mm) }).netWidth, 1 - 1.1 / 6);
    expectNear(holes({ ...good, pattern: zigzag(1 * mm) }).netWidth, 1 - 1.1 / 3);
  });

  it('are as wide as the needle when nothing is measured, with a word about it', () => {
    const { holeWidth: _, ...input } = good;
    expect(holes(input).width).toBe(needleDiameter(110));
    expect(holes(input).notes[0]).toMatchObject({ level: 'assumption' });
  });

  it('are 1.25 times as wide as the legs when there is no needle either', () => {
    const { holeWidth: _, needleNumber: __, ...input } = good;
    expectNear(holes(input).width, 1.25 * threadDiameter(aramid75, 2));
    expect(holes(input).notes[0]).toMatchObject({ level: 'assumption' });
  });

  it('pass without a word when all is usual', () => expect(warnings({})).toEqual([]));

  it.each<readonly [string, Partial<HoleInput>, string]>([
    ['holes closer than 2.5 needle diameters', { needleNumber: 180 }, 'at least 2.5 needle diameters = 4.5 mm'],
    ['a thin needle', { needleNumber: 90 }, '1.6 to 2.2 is usual'],
    ['a thick needle', { needleNumber: 150 }, '1.6 to 2.2 is usual'],
    ['a pitch below the usual', { pattern: rows(6, 2.4, 11) }, 'pitch = 2.4 mm, the usual lower bound is 2 to 2.5 mm'],
    ['rows below the usual', { pattern: rows(6, 4, 8.9) }, 'rows 2.9 mm apart, the usual lower bound is 2 to 3 mm'],
    ['a row near the edge', { pattern: rows(3.2, 4, 11) }, 'first row 3.2 mm from the edge, at least 3.3 mm is usual'],
    ['holes into each other', { holeWidth: 4.1 * mm }, 'holes 4.1 mm wide stand 4 mm apart and run into each other'],
    ['a thick stack', { dryThickness: 11 * mm }, 'dry stack of 11 mm, a lockstitch usually reaches 10 to 15 mm'],
  ])('warn of %s, with the limit', (_, input, text) => {
    expect(warnings(input).filter((warning) => warning.includes(text))).toHaveLength(1);
  });

  it('warn of a limit of practice as such', () => {
    const [note] = holes({ ...good, pattern: rows(6, 4, 8.9) }).notes;
    expect(note).toMatchObject({ level: 'warning', source: 'common-practice' });
    expect(note?.text).toContain('(common practice, no source)');
  });

  it('do not limit the stack of a hand stitch', () => {
    expect(warnings({ dryThickness: 11 * mm, type: stitchType('running') })).toEqual([]);
  });

  it('look at both sets of a crossing pattern', () => {
    const pattern: Pattern = {
      kind: 'crossing',
      pitch: 4 * mm,
      rowSpacing: 8 * mm,
      second: { pitch: 4 * mm, rowSpacing: 2.8 * mm },
      angle: 60,
    };
    expect(warnings({ pattern }).join('\n')).toContain('rows 2.8 mm apart');
  });

  it('are refused without width', () => {
    expect(codesOf(() => holes({ ...good, holeWidth: 0 }))).toEqual(['out-of-range']);
  });
});
