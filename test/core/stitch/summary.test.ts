import { describe, expect, it } from 'vitest';
import { type Pattern, type StitchPlan, stitchSummary } from '../../../packages/core/src/stitch/index.js';
import { aramid75, codesOf, expectNear, mm, polyester40 } from './support.js';

const plan: StitchPlan = {
  pattern: { kind: 'parallel', pitch: 4 * mm, rowSpacing: 5.5 * mm },
  type: '301',
  needleThread: aramid75,
  dryThickness: 1 * mm,
  waste: 0.1,
};
const row = { offset: 6 * mm, length: 0.6, pitch: 4 * mm };
const texts = (changed: Partial<StitchPlan>) =>
  stitchSummary({ ...plan, ...changed })
    .notes.map((note) => note.text)
    .join('\n');

describe('the summary of a stitch plan', () => {
  it('gives density, areal fraction and thread by the formulas of a lockstitch', () => {
    const found = stitchSummary(plan);
    const cell = 22 * mm * mm;
    expectNear(found.penetrationDensity, 1 / cell);
    expectNear(found.arealFraction, (2 * 75e-6) / 1440 / cell);
    expectNear(found.threadLengthPerArea, (2 * 4 * mm + 2 * 1 * mm) / cell);
    expectNear(found.threadMassPerArea, (75e-6 * 10 * mm) / cell);
    expectNear(found.threadMassPerRowLength, (75e-6 * 10) / 4);
    expect(found.strands).toBe(2);
    expect(found.nearestNeighbour).toBe(4 * mm);
  });

  it('has no stitches or time without a field, and both with one', () => {
    expect(stitchSummary(plan)).not.toHaveProperty('stitches');
    const sewing = { rate: 2, setup: 10, handling: 60 };
    const found = stitchSummary({ ...plan, field: { length: 0.04, width: 0.011 }, sewing });
    expect(found.stitches).toBe(20);
    expect(found.sewingTime).toBe(20 / 2 + 2 * 10 + 60);
  });

  it('counts the strands of the side that holds less', () => {
    expect(stitchSummary({ ...plan, type: 'running' }).strands).toBe(1);
    expect(stitchSummary({ ...plan, type: 'running', strands: 2 }).strands).toBe(2);
    const saddle = stitchSummary({ ...plan, type: 'saddle', strands: 2, underThread: polyester40 });
    expect(saddle.strands).toBe(3);
  });

  it('doubles thread and areal fraction with a doubled hand thread', () => {
    const single = stitchSummary({ ...plan, type: 'running' });
    const doubled = stitchSummary({ ...plan, type: 'running', strands: 2 });
    expectNear(doubled.arealFraction, 2 * single.arealFraction);
    expectNear(doubled.threadMassPerArea, 2 * single.threadMassPerArea);
  });

  it('holds nothing but finite numbers', () => {
    const patterns: Pattern[] = [
      plan.pattern,
      { kind: 'staggered', pitch: 4 * mm, rowSpacing: 5 * mm },
      { kind: 'zigzag', pitch: 3 * mm, swing: 4 * mm, rowSpacing: 9 * mm },
      { kind: 'crossing', pitch: 4 * mm, rowSpacing: 8 * mm, second: { pitch: 4 * mm, rowSpacing: 8 * mm }, angle: 50 },
      { kind: 'rows', rows: [row] },
    ];
    for (const pattern of patterns) {
      JSON.stringify(stitchSummary({ ...plan, pattern, needleNumber: 110 }), (_, value) => {
        if (typeof value === 'number') expect(value).toBeGreaterThanOrEqual(0);
        expect(value).not.toBe(Number.POSITIVE_INFINITY);
        return value;
      });
    }
  });

  it('names its sources', () => {
    expect(stitchSummary(plan).sources).toEqual(['iso-4915', 'common-practice']);
    expect(stitchSummary({ ...plan, type: 'running' }).sources).toEqual(['common-practice']);
  });

  it('says how edge rows were counted', () => {
    expect(texts({ pattern: { kind: 'rows', rows: [row] } })).toContain('band of 12 mm: twice the offset');
    const two = [row, { ...row, offset: 10 * mm }];
    expect(texts({ pattern: { kind: 'rows', rows: two } })).toContain('band of 8 mm: rows times their mean distance');
    expect(texts({ pattern: { kind: 'rows', rows: two, bandWidth: 9 * mm } })).toContain(
      'band of 9 mm: the given band',
    );
    const short = { ...row, length: 10.2 * mm };
    expect(texts({ pattern: { kind: 'rows', rows: [short] } })).toContain(
      'row 1 closes at a pitch of 3.4 mm instead of 4 mm',
    );
  });

  it('says how crossing sets lie to each other', () => {
    const pattern = {
      kind: 'crossing',
      pitch: 4 * mm,
      rowSpacing: 8 * mm,
      second: { pitch: 4 * mm, rowSpacing: 8 * mm },
    } as const;
    // Of 3/64 holes per mm^2, 1/64 is shared.
    expect(texts({ pattern })).toContain('33.3 % of the holes are sewn by both sets');
    expect(texts({ pattern: { ...pattern, angle: 45 } })).toContain('never fall into step');
    expect(texts({ pattern: { ...pattern, angle: 45 } })).toContain('those of the first set');
  });

  it('warns of zigzags that reach over each other and of too much thread', () => {
    const pattern = { kind: 'zigzag', pitch: 3 * mm, swing: 9 * mm, rowSpacing: 9 * mm } as const;
    expect(texts({ pattern })).toContain('reach over each other');
    expect(texts({ pattern: { kind: 'parallel', pitch: 3 * mm, rowSpacing: 3 * mm } })).toContain(
      'areal fraction of thread = 1.16 %, above 1 % to 2 % in-plane losses dominate',
    );
  });

  it('refuses a plan with a value outside its range', () => {
    expect(codesOf(() => stitchSummary({ ...plan, dryThickness: -1 }))).toEqual(['out-of-range']);
    expect(codesOf(() => stitchSummary({ ...plan, strands: 0 }))).toEqual(['out-of-range']);
  });
});
