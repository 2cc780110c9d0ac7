import { failureCriteria, laminate, ply } from '@selvage/core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Criterion,
  failureUnder,
  type Load,
  progressiveFailure,
  type StrengthOptions,
  type StrengthPly,
  solveLoad,
  strengthConstants,
} from '../../../packages/core/src/laminate/index.js';
import type { Lay } from '../../../packages/core/src/laminate/strength/lay.js';
import { pointFailure } from '../../../packages/core/src/laminate/strength/strength-ratio.js';
import { type RecordedStep, type RuleName, startWorking } from '../../../packages/core/src/working/index.js';
import { strengthRules } from '../../../packages/core/src/working/rules/strength.js';
import { evenly } from '../laminate/plies.js';
import { anyStress, anyStrongPly, carbon, exposure } from '../laminate/strength/materials.js';
import { expectPrinted } from '../material/phases.js';
import { misses } from './support.js';

type Stress = readonly [number, number, number];

interface Point {
  readonly s: Stress;
  readonly r?: Stress;
  readonly options?: StrengthOptions;
  readonly lay?: Lay;
}

/** The steps of one criterion at a point of the carbon ply, with what it finds. */
function point(
  criterion: Criterion,
  { s, r, options = {}, lay = 'unidirectional' }: Point,
  material: StrengthPly = carbon,
) {
  const { working, steps } = startWorking();
  const c = strengthConstants(material, criterion, options, working);
  const shown = { working, residual: r !== undefined };
  const found = pointFailure(criterion, [...s], [...(r ?? [0, 0, 0])], c, lay, shown);
  return { found, steps };
}

const namesOf = (steps: readonly RecordedStep[]): RuleName[] => steps.map(({ rule }) => rule);

/** The step that closes a criterion: its ratio, and those of the limits that it is the lesser of. */
function closing(criterion: Criterion, steps: readonly RecordedStep[]): { R: number; limits: number[] } {
  const ends = ['', 'WithResidual', 'Broken', 'FibreOnly', 'MatrixOnly', 'BetweenOnly'];
  const names = ends.map((end) => criterion + end);
  const last = steps.findLast(({ rule }) => names.includes(rule));
  const { R = Number.NaN } = last?.values ?? {};
  const limits = Object.entries(last?.values ?? {}).flatMap(([name, value]) => (name.startsWith('R_') ? [value] : []));
  return { R, limits };
}

describe('the working of a criterion at a point', () => {
  it.each(failureCriteria)('%s: every formula gives its number, and the lesser limit is the ratio', (criterion) => {
    fc.assert(
      fc.property(anyStress, fc.option(anyStress, { nil: undefined }), evenly(0.001, 0.02), (s, rest, size) => {
        const r = rest === undefined ? undefined : ([rest[0] * size, rest[1] * size, rest[2] * size] as const);
        const { found, steps } = point(criterion, r === undefined ? { s } : { s, r });
        expect(misses(steps, 1e-9)).toEqual([]);
        const { R, limits } = closing(criterion, steps);
        expect(R).toBe(found.ratio);
        if (limits.length > 0) expect(Math.abs(Math.min(...limits) / R - 1)).toBeLessThan(1e-9);
      }),
      { numRuns: 100 },
    );
  });

  it.each(failureCriteria)('%s: the stress at the ratio is on the surface as its authors print it', (criterion) => {
    fc.assert(
      fc.property(anyStress, anyStrongPly, (s, material) => {
        const { working, steps } = startWorking();
        const c = strengthConstants(material, criterion);
        pointFailure(criterion, s, [0, 0, 0], c, 'unidirectional', { working, residual: false });
        const { R } = closing(criterion, steps);
        const at = s.map((one) => R * one);
        expect(exposure(criterion, at, material)).toBeCloseTo(1, 8);
        expect(misses(steps, 1e-9)).toEqual([]);
      }),
      { numRuns: 50 },
    );
  });

  const M = 1e6;
  const cases: readonly (readonly [string, Criterion, Point, readonly RuleName[]])[] = [
    ['one stress', 'maxStress', { s: [100 * M, 0, 0] }, ['maxStress']],
    ['three stresses', 'maxStress', { s: [0, -10 * M, -5 * M], r: [M, M, M] }, ['maxStressWithResidual']],
    ['strains', 'maxStrain', { s: [-100 * M, 0, 2 * M] }, ['maxStrain']],
    ['strains beside residual ones', 'maxStrain', { s: [-100 * M, 0, 2 * M], r: [M, M, M] }, ['maxStrainWithResidual']],
    [
      'fibre and matrix in tension',
      'hashin',
      { s: [100 * M, 5 * M, M] },
      ['hashinShear', 'hashinFibreTension', 'hashinMatrixTension', 'hashin'],
    ],
    [
      'fibre and matrix in compression, shear strength given',
      'hashin',
      { s: [-100 * M, -5 * M, M], options: { transverseShearStrength: 90 * M } },
      ['hashinFibreCompression', 'hashinMatrixCompression', 'hashin'],
    ],
    [
      'the fibre alone',
      'hashin',
      { s: [-100 * M, 0, 0] },
      ['hashinShear', 'hashinFibreCompression', 'hashinFibreOnly'],
    ],
    [
      'the matrix alone',
      'hashin',
      { s: [0, 5 * M, 0], options: { alpha: 0 } },
      ['hashinShear', 'hashinMatrixTension', 'hashinMatrixOnly'],
    ],
    ['the fibre alone', 'puck', { s: [-100 * M, 0, 0] }, ['puckConstants', 'puckFibre', 'puckFibreOnly']],
    ['mode A', 'puck', { s: [10 * M, 5 * M, 10 * M] }, ['puckConstants', 'puckFibre', 'puckA', 'puck']],
    ['mode B', 'puck', { s: [0, -5 * M, 10 * M] }, ['puckConstants', 'puckB', 'puckBetweenOnly']],
    ['mode C', 'puck', { s: [0, -50 * M, 10 * M] }, ['puckConstants', 'puckC', 'puckBetweenOnly', 'puckCrack']],
    ['all strengths by sign', 'tsaiHill', { s: [-100 * M, 5 * M, M] }, ['tsaiHill']],
    ['tensile strengths', 'tsaiHill', { s: [-100 * M, -5 * M, M], options: { variant: 'tensile' } }, ['tsaiHill']],
    [
      'the cross term by the other sign',
      'tsaiHill',
      { s: [-100 * M, 5 * M, M], options: { variant: 'crossTerm' } },
      ['tsaiHill'],
    ],
    [
      'its own interaction',
      'tsaiWu',
      { s: [10 * M, 5 * M, M], options: { F12star: 0.2 } },
      ['tsaiWuCoefficients', 'tsaiWu'],
    ],
  ];

  it.each(cases)('%s (%s)', (_, criterion, given, expected) => {
    const { found, steps } = point(criterion, given);
    expect(namesOf(steps)).toEqual(expected);
    expect(misses(steps)).toEqual([]);
    expect(
      closing(
        criterion,
        steps.filter(({ rule }) => rule !== 'puckCrack'),
      ).R,
    ).toBe(found.ratio);
  });

  it('takes X of the cross term by the sign of the stress across, in that variant', () => {
    const bySign = point('tsaiHill', { s: [-1e8, 5e6, 1e6] }, strong).steps.at(-1)?.values;
    const byOther = point('tsaiHill', { s: [-1e8, 5e6, 1e6], options: { variant: 'crossTerm' } }, strong).steps.at(
      -1,
    )?.values;
    expect(bySign).toMatchObject({ X_hill: 900e6, Y_hill: 40e6, X_cross: 900e6 });
    expect(byOther).toMatchObject({ X_hill: 900e6, Y_hill: 40e6, X_cross: 1500e6 });
  });

  it.each(failureCriteria)('%s: nothing but constants is taken down where no load would break the ply', (criterion) => {
    const { steps } = point(criterion, { s: [0, 0, 0] });
    const constants: readonly RuleName[] = ['tsaiWuCoefficients', 'hashinShear', 'puckConstants'];
    expect(namesOf(steps).filter((rule) => !constants.includes(rule))).toEqual([]);
  });

  it.each(failureCriteria)('%s: the ratio is 0 where the residual stress is past the surface', (criterion) => {
    const { found, steps } = point(criterion, { s: [1e6, 1e6, 1e6], r: [0, 60e6, 0] });
    expect(found.ratio).toBe(0);
    expect(misses(steps)).toEqual([]);
    expect(closing(criterion, steps).R).toBe(0);
    const { f_r = 1, q_0 = 0 } = steps.find(({ rule }) => rule.endsWith('Broken'))?.values ?? {};
    expect(f_r).toBeGreaterThanOrEqual(1);
    expect(q_0).toBeGreaterThanOrEqual(0);
  });

  it('reaches every rule of a limit', () => {
    const used = new Set<string>();
    const directions = [-1, 0, 1].flatMap((a) => [-1, 0, 1].flatMap((b) => [0, 1, 4].map((c) => [a, b, c] as const)));
    const sizes = [
      [900e6, 30e6, 20e6],
      [100e6, 100e6, 20e6],
      [0, 20e6, 60e6],
    ] as const;
    for (const criterion of failureCriteria) {
      for (const [a, b, c] of directions) {
        for (const [x, y, t] of sizes) {
          const s = [a * x, b * y, c * t] as const;
          if (s.every((one) => one === 0)) continue;
          for (const r of [undefined, [40e6, 10e6, 5e6], [0, 60e6, 0]] as const) {
            const { steps } = point(criterion, r === undefined ? { s } : { s, r });
            expect(misses(steps, 1e-10)).toEqual([]);
            for (const { rule } of steps) used.add(rule);
          }
        }
      }
    }
    const ofLaminates = /^(firstPly|stressOfLoad|loadAlone|matAxes|progressiveStep)/;
    const missing = Object.keys(strengthRules).filter((name) => !used.has(name) && !ofLaminates.test(name));
    expect(missing).toEqual([]);
  });
});

const strong = { ...carbon, strengths: { Xt: 1500e6, Xc: 900e6, Yt: 40e6, Yc: 246e6, S: 68e6 } } as const;

// Tsai & Hahn 1980, table of strength parameters (recalled, not re-read): reference-data/examples/strength.json.
describe('the coefficients of Tsai-Wu', () => {
  it('of carbon/epoxy, E1 = 181 GPa, are those printed by Tsai and Hahn (1980)', () => {
    const { working, steps } = startWorking();
    strengthConstants(carbon, 'tsaiWu', {}, working);
    const { F11 = 0, F22 = 0, F66 = 0, F12 = 0, F2 = 0 } = steps[0]?.values ?? {};
    expectPrinted(F11 * 1e18, 0.444, 5e-4);
    expectPrinted(F22 * 1e18, 101.6, 0.05);
    expectPrinted(F66 * 1e18, 216.2, 0.1);
    expectPrinted(F12 * 1e18, -3.36, 0.005);
    expectPrinted(F2 * 1e9, 20.93, 0.01);
  });
});

const expanding = { ...strong, thickness: 0.25e-3, name: 'carbon' };
const at = (angle: number) => ply({ ...expanding, angle });
const mat = ply({
  name: 'mat',
  thickness: 0.5e-3,
  E1: 8e9,
  E2: 8e9,
  G12: 8e9 / 2.6,
  nu12: 0.3,
  expansion: { alpha1: 30e-6, alpha2: 30e-6 },
  strengths: { Xt: 90e6, Xc: 140e6, Yt: 90e6, Yc: 140e6, S: 60e6 },
});

/** The steps of a laminate under a load by every criterion. */
function judged(stack: Parameters<typeof laminate>[0], load: Load) {
  const { working, steps } = startWorking();
  const panel = laminate(stack);
  const solved = solveLoad(panel, load, working);
  const found = failureCriteria.map((criterion) => failureUnder(panel, solved, criterion, {}, working));
  return { found, steps };
}

const firstPly = {
  maxStress: 'firstPlyMaxStress',
  maxStrain: 'firstPlyMaxStrain',
  tsaiHill: 'firstPlyTsaiHill',
  tsaiWu: 'firstPlyTsaiWu',
  hashin: 'firstPlyHashin',
  puck: 'firstPlyPuck',
} as const satisfies Record<Criterion, RuleName>;

describe('the working of the strength of a laminate', () => {
  const loads: Record<string, Load> = {
    'by forces': { N: [1e5, 2e4, 1e4], M: [10, -5, 2] },
    'with residual stress': { N: [-1e5, 2e4, 1e4], M: [10, 0, 0], temperatureChange: -80 },
  };
  it.each(Object.entries(loads))('%s: the least over faces and plies, by every criterion', (_, load) => {
    const { found, steps } = judged([at(0), mat, at(45), at(90)], load);
    expect(misses(steps, 1e-10)).toEqual([]);
    for (const { criterion, ratio, ply: number, perPly, withoutResidual } of found) {
      const written = steps.find(({ rule, part }) => rule === firstPly[criterion] && part.length === 1);
      const rows = written?.rows ?? [];
      expect(written?.values).toMatchObject({ R_fpf: ratio, n_fpf: number });
      expect(Math.min(...rows.map(({ R_ply = Number.NaN }) => R_ply))).toBe(ratio);
      expect(rows).toEqual(perPly.map((one) => ({ n_ply: one.ply, R_ply: one.ratio })));
      const alone = steps.find(({ rule, part }) => rule === firstPly[criterion] && part[0] === 'loadAlone');
      expect(alone?.values.R_fpf).toBe(withoutResidual?.ratio);
    }
  });

  it('names the axes in which a mat fails first: no other direction has a lower ratio', () => {
    const { steps } = judged([mat, at(0)], { N: [3e4, -1e4, 2e4] });
    const axes = steps.filter(({ rule }) => rule === 'matAxes');
    expect(axes).toHaveLength(10);
    for (const { part, values } of axes) {
      const criterion = part.at(-1) as Criterion;
      const { sigma_a1 = 0, sigma_a2 = 0, tau_a12 = 0 } = values;
      const { R } = closing(
        criterion,
        steps.filter((step) => step.part.join() === part.join()),
      );
      for (let angle = 0; angle < 180; angle += 3) {
        const [c, s] = [Math.cos((angle * Math.PI) / 180), Math.sin((angle * Math.PI) / 180)];
        const turned = [
          sigma_a1 * c * c + sigma_a2 * s * s + 2 * tau_a12 * s * c,
          sigma_a1 * s * s + sigma_a2 * c * c - 2 * tau_a12 * s * c,
          (sigma_a2 - sigma_a1) * s * c + tau_a12 * (c * c - s * s),
        ];
        const atR = turned.map((one) => R * one);
        expect(exposure(criterion, atR, { ...mat, strengths: mat.strengths ?? strong.strengths })).toBeLessThanOrEqual(
          1 + 1e-8,
        );
      }
    }
  });
});

describe('the working of failure ply by ply', () => {
  it('holds each step: the load reached, the stiffness left, what the failing plies keep', () => {
    const { working, steps } = startWorking();
    const found = progressiveFailure(
      laminate([at(0), at(90), at(0)]),
      { N: [1e5, 0, 0] },
      { criterion: 'maxStress' },
      working,
    );
    expect(misses(steps)).toEqual([]);
    expect(steps.map(({ part }) => part.join('.'))).toEqual(found.steps.map((_, i) => `progressive.${i + 1}`));
    for (const [i, { ratio, stiffnessShare, plies }] of found.steps.entries()) {
      expect(steps[i]?.values).toMatchObject({ R_now: ratio, s_left: stiffnessShare });
      expect(steps[i]?.rows?.map(({ n_ply }) => n_ply)).toEqual(plies.map((one) => one.ply));
    }
    // The 90 cracks first: a hundredth of its constants across the fibre and in shear is left.
    const { E1, E2, G12, nu12 } = strong;
    const [first] = steps[0]?.rows ?? [];
    expect(first).toMatchObject({ n_ply: 2, E1 });
    expect([first?.E2, first?.G12, first?.nu12]).toEqual([E2, G12, nu12].map((one) => one * 0.01));
  });
});
