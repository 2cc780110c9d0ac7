import firstPly from '@selvage/reference-data/examples/tables/first-ply-failure.json' with { type: 'json' };
import measured from '@selvage/reference-data/examples/tables/measured-laminates.json' with { type: 'json' };
import offAxis from '@selvage/reference-data/examples/tables/off-axis-strength.json' with { type: 'json' };
import { describe, expect, it } from 'vitest';
import { rotateStress } from '../../../../packages/core/src/laminate/axes.js';
import {
  type Criterion,
  failure,
  failureCriteria,
  progressiveFailure,
  strengthRatio,
} from '../../../../packages/core/src/laminate/strength/index.js';
import { stackOf } from '../plies.js';

function expectRatio(found: number | undefined, expected: number, tolerance: number, place: string): void {
  expect(Math.abs((found ?? 0) / expected - 1), `${place}: ${found} for ${expected}`).toBeLessThanOrEqual(tolerance);
}

describe('off-axis strength of an independent script (computed)', () => {
  for (const [id, { E1, E2, nu12, ...strengths }] of Object.entries(offAxis.materials)) {
    const ply = { E1, E2, nu12, strengths };
    const rows = offAxis.rows.filter(({ material }) => material === id);

    it(`is met for ${strengths.label}, ${rows.length} rows by eight criteria and variants`, () => {
      for (const row of rows) {
        const stress = rotateStress([row.sense, 0, 0], row.angle);
        const place = `${row.angle} degrees, sense ${row.sense}`;
        for (const criterion of failureCriteria) {
          const { ratio } = strengthRatio(ply, stress, criterion);
          expectRatio(ratio, row[criterion], offAxis.tolerance, `${criterion} at ${place}`);
        }
        const { Xt, Xc, Yt, Yc } = strengths;
        const tensile = strengthRatio(ply, stress, 'tsaiHill', { variant: 'tensile' });
        expectRatio(tensile.ratio, row.tsaiHillTensile, offAxis.tolerance, `tensile Tsai-Hill at ${place}`);
        const F12star = -Math.sqrt((Yt * Yc) / (Xt * Xc)) / 2;
        const hoffman = strengthRatio(ply, stress, 'tsaiWu', { F12star });
        expectRatio(hoffman.ratio, row.hoffman, offAxis.tolerance, `F12 = -1/(2 Xt Xc) at ${place}`);
      }
    });

    it(`has the same modes of Hashin and Puck for ${strengths.label}`, () => {
      for (const row of rows) {
        const stress = rotateStress([row.sense, 0, 0], row.angle);
        const place = `${row.angle} degrees, sense ${row.sense}`;
        expect(strengthRatio(ply, stress, 'hashin').modeKey, place).toBe(row.hashinMode);
        expect(strengthRatio(ply, stress, 'puck').modeKey, place).toBe(row.puckMode);
      }
    });
  }
});

describe('first-ply failure of an independent script (computed)', () => {
  const thickness = 0.125e-3;
  for (const [id, { label, source: _, access: __, E1, E2, G12, nu12, ...strengths }] of Object.entries(
    firstPly.materials,
  )) {
    for (const code of new Set(firstPly.rows.filter(({ material }) => material === id).map(({ stack }) => stack))) {
      it(`is met for ${code} of ${label}: ratio and angle of the ply`, () => {
        const stack = stackOf({ E1, E2, G12, nu12, strengths }, code, thickness);
        for (const row of firstPly.rows.filter(({ material, stack }) => material === id && stack === code)) {
          const [x = 0, y = 0, xy = 0] = row.load.map((stress) => stress * stack.thickness);
          for (const [criterion, expected] of Object.entries(row.failure)) {
            const place = `${criterion} under ${row.load}`;
            const found = failure(stack, { N: [x, y, xy] }, criterion as Criterion);
            expectRatio(found.ratio, expected.ratio, firstPly.tolerance, place);
            // Where several angles fail together, the script names one of them.
            const together = found.perPly.filter(({ ratio }) => ratio! <= found.ratio! * (1 + 1e-6));
            expect(
              together.map(({ angle }) => angle),
              place,
            ).toContain(expected.angle);
            expect(
              together.map(({ ply }) => ply),
              place,
            ).toContain(found.ply);
          }
        }
      });
    }
  }
});

describe('measured laminates of the failure exercise (Soden, Hinton & Kaddour 2002, recalled, not re-read)', () => {
  it.each(measured.rows)(
    '$stack of $material fails for good within the band around $last MPa',
    ({ material, stack, last }) => {
      const { E1, E2, G12, nu12, Xt, Xc, Yt, Yc, S } = firstPly.materials[material as keyof typeof firstPly.materials];
      const inPascal = { E1: E1 * 1e6, E2: E2 * 1e6, G12: G12 * 1e6, nu12 };
      const strengths = { Xt: Xt * 1e6, Xc: Xc * 1e6, Yt: Yt * 1e6, Yc: Yc * 1e6, S: S * 1e6 };
      const laminate = stackOf({ ...inPascal, strengths }, stack, 1e-4);
      const measuredLoad = { N: [last * 1e6 * laminate.thickness, 0, 0] } as const;
      for (const criterion of ['hashin', 'puck'] as const) {
        const { firstPly: first, lastPly } = progressiveFailure(laminate, measuredLoad, { criterion });
        expect(Math.abs(lastPly.ratio - 1), `${criterion}: ${lastPly.ratio} of what was measured`).toBeLessThan(
          measured.band,
        );
        expect(first.ratio, criterion).toBeLessThan(0.6);
      }
    },
  );
});
