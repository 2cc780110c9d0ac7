import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { engineeringConstants, laminate, stiffness } from '../../../../packages/core/src/laminate/index.js';
import { failure, failureCriteria, progressiveFailure } from '../../../../packages/core/src/laminate/strength/index.js';
import { anyAngle, evenly, plyOf, problemCode, stackOf } from '../plies.js';
import { carbon, glass } from './materials.js';

const pull = { N: [1e5, 0, 0] } as const;

describe('[0/90]s without Poisson ratio, pulled along x: two springs in a row of equal strain', () => {
  // Worked by hand: strain e, mean stress (E1 + E2) e/2; the cross plies crack at Yt/E2 and keep f E2, the others break at Xt/E1.
  const material = { ...carbon, nu12: 0 };
  const { E1, E2 } = material;
  const { Xt, Yt } = material.strengths;
  const { alpha1, alpha2 } = material.expansion;
  const stack = stackOf(material, '[0/90]s', 0.125e-3);
  const f = 0.02;
  const mean = pull.N[0] / stack.thickness;

  it('cracks, jumps in strain at constant load, and breaks at the strain of its fibres', () => {
    const found = progressiveFailure(stack, pull, { criterion: 'maxStress', factor: f });
    const first = ((E1 + E2) / 2) * (Yt / E2);
    const last = ((E1 + f * E2) / 2) * (Xt / E1);
    const jumped = (2 * first) / (E1 + f * E2);
    expect(found.firstPly.ratio).toBeCloseTo(first / mean, 9);
    expect(found.lastPly.ratio).toBeCloseTo(last / mean, 9);
    expect(found.steps.map(({ plies }) => plies.map(({ ply, becomes }) => [ply, becomes]))).toEqual([
      [
        [2, 'cracked'],
        [3, 'cracked'],
      ],
      [
        [1, 'failed'],
        [4, 'failed'],
      ],
    ]);
    expect(found.curve.map(({ ratio }) => ratio * mean)).toEqual(
      [0, first, first, last].map((v) => expect.closeTo(v, 0)),
    );
    const strains = found.curve.map(({ strain }) => strain[0]);
    expect(strains).toEqual([0, Yt / E2, jumped, Xt / E1].map((strain) => expect.closeTo(strain, 12)));
    expect(found.firstPly.stiffnessShare).toBeCloseTo((E1 + f * E2) / (E1 + E2), 12);
    expect(found.firstPly.inPlane.Ex / ((E1 + f * E2) / 2)).toBeCloseTo(1, 12);
    expect(found.collapsed).toBe(true);
  });

  it('cracks earlier when cured hot, since cure stress is not multiplied, and is let go by the crack', () => {
    const temperatureChange = -60;
    const found = progressiveFailure(stack, { ...pull, temperatureChange }, { criterion: 'maxStress', factor: f });
    const misfit = (alpha2 - alpha1) * -temperatureChange;
    const cured = (misfit * E1 * E2) / (E1 + E2);
    const left = (misfit * E1 * f * E2) / (E1 + f * E2);
    expect(found.firstPly.ratio * mean).toBeCloseTo(((E1 + E2) / (2 * E2)) * (Yt - cured), 0);
    expect(found.lastPly.ratio * mean).toBeCloseTo(((E1 + f * E2) / (2 * E1)) * (Xt + left), 0);
    expect(found.curve[0]!.strain).toEqual([0, 0, 0]);
    // The curve counts from the cured laminate, so that letting go of cure stress is part of the jump.
    const free = (k: number) => (E1 * alpha1 + k * E2 * alpha2) / (E1 + k * E2);
    const jumped = (2 * found.firstPly.ratio * mean) / (E1 + f * E2) + (free(f) - free(1)) * temperatureChange;
    expect(found.firstPly.after.strain[0]).toBeCloseTo(jumped, 12);
  });
});

describe('progressive failure', () => {
  it('of [±45]s in tension ends at its first ply: fibres alone are a mechanism', () => {
    // Shear in the plies is half of the mean stress by equilibrium, whatever their stiffness.
    const stack = stackOf(carbon, '[±45]s', 0.125e-3);
    const found = progressiveFailure(stack, pull, { criterion: 'maxStress' });
    expect(found.steps.length).toBe(1);
    expect(found).toMatchObject({ discount: 'matrix', factor: 0.01, collapse: 0.1 });
    expect(found.lastPly).toBe(found.firstPly);
    expect((found.lastPly.ratio * pull.N[0]) / stack.thickness).toBeCloseTo(2 * 68e6, 0);
    expect(found.curve.length).toBe(2);
  });

  it('of [0/±45/90]s in tension cracks 90, then ±45, then breaks 0 and with it the rest', () => {
    const found = progressiveFailure(stackOf(carbon, '[0/±45/90]s', 0.125e-3), pull, { criterion: 'maxStress' });
    const angles = found.steps.map(({ plies }) => [...new Set(plies.map(({ angle }) => angle))]);
    expect(angles.slice(0, 3)).toEqual([[90], [45, -45], [0]]);
    expect(found.steps[2]!.plies[0]).toMatchObject({ becomes: 'failed', modeKey: 'fibreTension' });
    expect(found.lastPly.ratio).toBe(found.steps[2]!.ratio);
    expect(found.steps.slice(3).every(({ cascade }) => cascade)).toBe(true);
    expect(found.steps[3]!.plies[0]).toMatchObject({ angle: 45, becomes: 'failed', modeKey: 'fibreTension' });
  });

  it('leaves a cracked ply a share of E2, G12 and nu12, and all of E1', () => {
    const found = progressiveFailure(stackOf(glass, '[0/90]s', 0.25e-3), pull, { criterion: 'maxStress', factor: 0.2 });
    const cracked = { ...glass, E2: 3.24e9, G12: 1.166e9, nu12: 0.0556 };
    const left = laminate([0, 90, 90, 0].map((angle) => plyOf(angle === 0 ? glass : cracked, angle, 0.25e-3)));
    const { inPlane } = engineeringConstants(stiffness(left));
    expect(found.firstPly.plies.map(({ ply }) => ply)).toEqual([2, 3]);
    expect(found.firstPly.inPlane.nuxy / inPlane.nuxy).toBeCloseTo(1, 9);
    expect(found.firstPly.inPlane.Ey / inPlane.Ey).toBeCloseTo(1, 9);
    expect(found.firstPly.inPlane.Gxy / inPlane.Gxy).toBeCloseTo(1, 9);
  });

  it('starts at first-ply failure, never lowers the load, loses stiffness but for the bound of nu12, and never mends a ply', () => {
    const anyStack = fc
      .array(fc.tuple(fc.constantFrom(carbon, glass), anyAngle), { minLength: 1, maxLength: 5 })
      .map((plies) => laminate(plies.map(([material, angle]) => plyOf(material, angle, 0.25e-3))));
    const force = evenly(-1e5, 1e5);
    const anyN = fc.tuple(force, force, force).filter((N) => Math.hypot(...N) > 1);
    fc.assert(
      fc.property(
        anyStack,
        anyN,
        fc.constantFrom(...failureCriteria),
        fc.constantFrom('matrix' as const, 'total' as const),
        fc.constantFrom(0, -40),
        (stack, N, criterion, discount, temperatureChange) => {
          const load = { N, temperatureChange };
          const found = progressiveFailure(stack, load, { criterion, discount });
          expect(found.firstPly.ratio).toBe(failure(stack, load, criterion).ratio);
          let [ratio, share] = [0, 1];
          // Losing nu12 may stiffen one combination of strains, by nu12 nu21 / (1 - factor) at most: 0.0277 for the glass.
          const most = discount === 'total' ? 1 + 1e-9 : 1 / (1 - 0.0278);
          const condition = new Map<number, string>();
          for (const step of found.steps) {
            expect(step.ratio).toBeGreaterThanOrEqual(ratio);
            expect(step.stiffnessShare).toBeLessThanOrEqual(share * most);
            expect(step.inPlane.Ex).toBeGreaterThan(0);
            [ratio, share] = [step.ratio, step.stiffnessShare];
            for (const { ply, becomes } of step.plies) {
              expect(['failed', becomes]).not.toContain(condition.get(ply));
              condition.set(ply, becomes);
            }
          }
          for (const one of found.curve) expect(one.strain.every(Number.isFinite)).toBe(true);
          expect(found.collapsed).toBe(found.lastPly.stiffnessShare < found.collapse);
        },
      ),
      { numRuns: 60 },
    );
  });

  it('fails plies together only at one load: half a per cent of strength parts two plies into two steps', () => {
    const weaker = { ...carbon, strengths: { ...carbon.strengths, Yt: 0.995 * carbon.strengths.Yt } };
    const plies = (second: typeof carbon | typeof weaker) =>
      laminate([plyOf(carbon, 0, 1e-4), plyOf(carbon, 90, 1e-4), plyOf(second, 90, 1e-4), plyOf(carbon, 0, 1e-4)]);
    const first = (second: typeof carbon | typeof weaker) =>
      progressiveFailure(plies(second), pull, { criterion: 'maxStress' }).steps[0]!.plies.map(({ ply }) => ply);
    expect(first(carbon)).toEqual([2, 3]);
    expect(first(weaker)).toEqual([3]);
  });

  it('takes a factor from 1e-6 on', () => {
    const stack = stackOf(carbon, '[0/90]s', 1e-4);
    const run = (factor: number) => progressiveFailure(stack, pull, { criterion: 'maxStress', factor }).factor;
    expect(run(1e-6)).toBe(1e-6);
    expect(problemCode(() => run(0.99e-6))).toBe('out-of-range');
  });

  it('with total discount takes the whole ply and carries less or as much', () => {
    const stack = stackOf(glass, '[0/±45/90]s', 0.25e-3);
    const run = (discount: 'matrix' | 'total') => progressiveFailure(stack, pull, { criterion: 'puck', discount });
    expect(run('total').firstPly.ratio).toBe(run('matrix').firstPly.ratio);
    expect(run('total').lastPly.ratio).toBeLessThanOrEqual(run('matrix').lastPly.ratio);
    expect(run('total').steps[0]!.plies.every(({ becomes }) => becomes === 'failed')).toBe(true);
    expect(run('total').notes.some(({ text }) => text.includes('keeps 0.01 of E1'))).toBe(true);
  });

  it('of bent [0/90]s follows curvature, with B in what is left', () => {
    const stack = stackOf(glass, '[90/0]s', 0.25e-3);
    const found = progressiveFailure(stack, { M: [10, 0, 0] }, { criterion: 'tsaiWu' });
    expect(found.firstPly.plies).toMatchObject([{ ply: 4, face: 'bottom', becomes: 'cracked' }]);
    expect(found.firstPly.after.curvature[0]).toBeGreaterThan(found.firstPly.before.curvature[0]);
    expect(Math.abs(found.firstPly.after.strain[0])).toBeGreaterThan(1e-6);
    expect(found.firstPly.before.curvature[0]).toBeCloseTo(found.firstPly.ratio * 10 * stiffness(stack).d[0]![0]!, 9);
  });

  it('says when plies run out before stiffness: a stiff core without strengths', () => {
    const core = { ...plyOf(glass, 0, 5e-3), name: 'board', core: true };
    const { strengths: _, ...bare } = core;
    const skin = plyOf(glass, 90, 0.2e-3);
    const found = progressiveFailure(laminate([skin, bare, skin]), pull, { criterion: 'maxStress', discount: 'total' });
    expect(found.collapsed).toBe(false);
    expect(found.notes.some(({ text }) => text.startsWith('No ply is left'))).toBe(true);
  });

  it('refuses what it cannot raise, and options out of range', () => {
    const stack = stackOf(carbon, '[0/90]s', 0.125e-3);
    const code = (load: object, options: object = {}) =>
      problemCode(() => progressiveFailure(stack, load, { criterion: 'maxStress', ...options }));
    expect(code({ strain: [1e-3, null, null] })).toBe('not-computable');
    expect(code({})).toBe('not-computable');
    expect(code({ temperatureChange: -300 })).toBe('not-computable');
    expect(code({ ...pull, curvature: [0, 0, 0] })).toBeUndefined();
    expect(code(pull, { factor: 0 })).toBe('out-of-range');
    expect(code(pull, { factor: 1 })).toBe('out-of-range');
    expect(code(pull, { collapse: 0 })).toBe('out-of-range');
    expect(code(pull, { discount: 'some' })).toBe('not-a-choice');
    expect(code(pull, { criterion: 'some' })).toBe('not-a-choice');
    const { strengths: _, ...bare } = carbon;
    const bareStack = stackOf(bare, '[0/90]s', 1e-3);
    expect(problemCode(() => progressiveFailure(bareStack, pull, { criterion: 'puck' }))).toBe('not-computable');
  });
});
