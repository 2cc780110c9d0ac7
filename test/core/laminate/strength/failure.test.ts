import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rotateStress } from '../../../../packages/core/src/laminate/axes.js';
import {
  type Laminate,
  type Load,
  laminate,
  respond,
  type Vector3,
} from '../../../../packages/core/src/laminate/index.js';
import { type Criterion, failure, failureCriteria } from '../../../../packages/core/src/laminate/strength/index.js';
import { anyAngle, evenly, plyOf, problemCode, stackOf, turned } from '../plies.js';
import { carbon, exposure, glass, ratioByHalving } from './materials.js';

const number = (size: number) => evenly(-size, size);
const anyStack = fc
  .array(fc.tuple(fc.constantFrom(carbon, glass), anyAngle), { minLength: 1, maxLength: 6 })
  .map((plies) => laminate(plies.map(([material, angle]) => plyOf(material, angle, 0.25e-3))));
const anyForce = fc
  .record({ N: fc.tuple(number(1e5), number(1e5), number(1e5)), M: fc.tuple(number(20), number(20), number(20)) })
  .filter(({ N, M }) => Math.hypot(...N, ...M) > 1);
const anyCriterion = fc.constantFrom(...failureCriteria);

/** Whether any face of any ply is past its limit, straight from the response to the whole load. */
const broken = (stack: Laminate, load: Load, criterion: Criterion): boolean =>
  respond(stack, load).plies.some(({ top, bottom }, k) => {
    const { strengths, ...ply } = stack.plies[k]!;
    return [top, bottom].some(({ stress12 }) => exposure(criterion, stress12, { ...ply, strengths: strengths! }) >= 1);
  });

const scaled = (R: number, [x, y, xy]: Vector3): Vector3 => [R * x, R * y, R * xy];

describe('first-ply failure', () => {
  it('with residual stress is at the load found by raising it and looking at the stresses of the whole', () => {
    fc.assert(
      fc.property(anyStack, anyForce, anyCriterion, number(60), (stack, { N, M }, criterion, temperatureChange) => {
        const found = failure(stack, { N, M, temperatureChange }, criterion);
        const ratio = ratioByHalving(
          (R) => broken(stack, { N: scaled(R, N), M: scaled(R, M), temperatureChange }, criterion),
          2 * (found.ratio ?? 1) || 1,
          60,
        );
        if (found.ratio === 0) expect(ratio).toBe(0);
        else expect(found.ratio! / ratio!).toBeCloseTo(1, 6);
      }),
      { numRuns: 60 },
    );
  });

  it('needs the inverse multiple of the load', () => {
    fc.assert(
      fc.property(
        anyStack,
        anyForce,
        anyCriterion,
        fc.double({ min: 1e-3, max: 1e3, noNaN: true }),
        (stack, { N, M }, criterion, by) => {
          const once = failure(stack, { N, M }, criterion).ratio!;
          const more = failure(stack, { N: scaled(by, N), M: scaled(by, M) }, criterion).ratio!;
          expect((more * by) / once).toBeCloseTo(1, 9);
        },
      ),
    );
  });

  it('does not change when laminate and load are turned together, heat included', () => {
    fc.assert(
      fc.property(
        anyStack,
        anyForce,
        anyCriterion,
        anyAngle,
        number(60),
        (stack, { N, M }, criterion, by, temperatureChange) => {
          const before = failure(stack, { N, M, temperatureChange }, criterion).ratio!;
          const load = { N: rotateStress(N, -by), M: rotateStress(M, -by), temperatureChange };
          const after = failure(turned(stack, by), load, criterion).ratio!;
          if (before < 1e-3) expect(after).toBeLessThan(1e-2);
          else expect(after / before).toBeCloseTo(1, 6);
        },
      ),
    );
  });

  it('names ply, face and mode: [90/0/90] bent down breaks the bag face of the last ply across its fibres', () => {
    const stack = stackOf(carbon, '[90/0/90]', 1e-3);
    const found = failure(stack, { M: [100, 0, 0] }, 'maxStress');
    expect(found).toMatchObject({
      criterion: 'maxStress',
      ply: 3,
      name: 'ply',
      face: 'bottom',
      mode: 'tension across the fibre',
    });
    const other = failure(stack, { M: [-100, 0, 0] }, 'maxStress');
    expect(other).toMatchObject({ ply: 1, face: 'top', modeKey: 'transverseTension' });
    expect(other.ratio).toBeCloseTo(found.ratio!, 9);
    expect(found.perPly.map(({ ply }) => ply)).toEqual([1, 2, 3]);
    expect(found.perPly[0]!.bottom.ratio).toBeGreaterThan(found.perPly[0]!.top.ratio!);
    expect(found.withoutResidual).toBeUndefined();
  });

  it('gives the ratio with and without residual stress, and says that the one is not multiplied', () => {
    const stack = stackOf(carbon, '[0/90]s', 0.125e-3);
    const load = { N: [1e5, 0, 0] as const };
    const cold = failure(stack, { ...load, temperatureChange: -100 }, 'tsaiWu');
    const plain = failure(stack, load, 'tsaiWu');
    expect(cold.withoutResidual).toEqual({
      ratio: plain.ratio,
      ply: 2,
      name: 'ply',
      face: 'top',
      modeKey: plain.modeKey,
      mode: plain.mode,
    });
    expect(cold.ratio).toBeLessThan(plain.ratio!);
    expect(cold.notes.some(({ text }) => text.includes('stays as it is'))).toBe(true);
    expect(plain.notes.some(({ text }) => text.includes('stays as it is'))).toBe(false);
    expect(cold.sources).toContain('tsai-wu-1971');
  });

  it('is 0 with a warning where cure alone cracks a ply', () => {
    const found = failure(stackOf(carbon, '[0/90]s', 0.125e-3), { N: [1e5, 0, 0], temperatureChange: -300 }, 'hashin');
    expect(found).toMatchObject({ ratio: 0, modeKey: 'matrixTension' });
    expect(found.notes.some(({ level, text }) => level === 'warning' && text.includes('alone'))).toBe(true);
  });

  it('multiplies a prescribed strain too, with heat held by the same grips', () => {
    const stack = stackOf(carbon, '[0/90]s', 0.125e-3);
    const hold = { strain: [1e-3, null, null] as const, curvature: [0, 0, 0] as const };
    const found = failure(stack, { ...hold, temperatureChange: -50 }, 'maxStress');
    const at = (R: number) => respond(stack, { ...hold, strain: [R * 1e-3, null, null], temperatureChange: -50 });
    expect(at(found.ratio!).plies[1]!.top.stress12[1]).toBeCloseTo(40e6, 0);
  });

  it('without mechanical stress has no ratio, and says so', () => {
    const found = failure(stackOf(carbon, '[0/90]s', 0.125e-3), { temperatureChange: -50 }, 'puck');
    expect(found).toMatchObject({ ratio: undefined, ply: undefined, face: undefined, mode: 'none', modeKey: 'none' });
    expect(found.notes.some(({ text }) => text.includes('no mechanical stress'))).toBe(true);
    expect(JSON.stringify(found)).not.toMatch(/Infinity|NaN/);
  });

  it('gives the angle of the crack with mode C of Puck', () => {
    const found = failure(stackOf(glass, '[90]', 1e-3), { N: [-1e5, 0, 0] }, 'puck');
    expect(found.mode).toContain('mode C');
    expect(found.fractureAngle).toBeGreaterThan(45);
    expect(found.fractureAngle).toBeLessThan(60);
  });
});

describe('a laminate with plies that lack strengths', () => {
  const core = { ...plyOf({ E1: 75e6, E2: 75e6, G12: 28e6, nu12: 0.33 }, 0, 10e-3), name: 'foam', core: true };
  const skin = plyOf(carbon, 0, 1e-3);

  it('leaves out a core, and says so', () => {
    const found = failure(laminate([skin, core, skin]), { M: [100, 0, 0] }, 'maxStress');
    expect(found.perPly.map(({ ply }) => ply)).toEqual([1, 3]);
    expect(found.notes.map(({ text }) => text).join()).toContain('Ply 2 (foam): a core without strengths');
  });

  it('judges a core that has them', () => {
    const strengths = { Xt: 1e6, Xc: 1e6, Yt: 1e6, Yc: 1e6, S: 0.7e6 };
    const found = failure(laminate([skin, { ...core, strengths }, skin]), { M: [100, 0, 0] }, 'maxStress');
    expect(found.perPly.length).toBe(3);
  });

  it('refuses any other ply, by its name, and a laminate without any', () => {
    const { strengths: _, ...bare } = carbon;
    const veil = { ...plyOf(bare, 0, 1e-4), name: 'veil' };
    const mixed = laminate([skin, veil]);
    expect(problemCode(() => failure(mixed, { N: [1, 0, 0] }, 'puck'))).toBe('not-computable');
    expect(() => failure(mixed, { N: [1, 0, 0] }, 'puck')).toThrow(/ply 2 \(veil\) has no strengths/);
    expect(problemCode(() => failure(laminate([core]), { N: [1, 0, 0] }, 'puck'))).toBe('not-computable');
    expect(problemCode(() => failure(laminate([skin]), { N: [1, 0, 0] }, 'guess' as Criterion))).toBe('not-a-choice');
    expect(problemCode(() => failure(laminate([skin]), { N: [1, 0, 0] }, 'tsaiWu', { F12star: 2 }))).toBe(
      'out-of-range',
    );
    expect(problemCode(() => failure(laminate([skin]), { N: [Number.NaN, 0, 0] }, 'tsaiWu'))).toBe('not-a-number');
  });
});
