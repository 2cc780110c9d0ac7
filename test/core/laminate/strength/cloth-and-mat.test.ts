import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rotateStress } from '../../../../packages/core/src/laminate/axes.js';
import { laminate, respond, type Vector3 } from '../../../../packages/core/src/laminate/index.js';
import {
  type Criterion,
  failure,
  failureEnvelope,
  progressiveFailure,
  strengthRatio,
} from '../../../../packages/core/src/laminate/strength/index.js';
import { anyAngle, evenly, plyOf, problemCode, turned } from '../plies.js';
import { carbon } from './materials.js';

/** Invented: a balanced cloth, an unbalanced one, and a mat whose shear modulus is that of an isotropic sheet. */
const cloth = {
  name: 'cloth',
  E1: 20e9,
  E2: 20e9,
  G12: 3.5e9,
  nu12: 0.12,
  strengths: { Xt: 350e6, Xc: 280e6, Yt: 350e6, Yc: 280e6, S: 60e6 },
};
const uneven = {
  ...cloth,
  E1: 26e9,
  E2: 15e9,
  nu12: 0.15,
  strengths: { Xt: 420e6, Xc: 330e6, Yt: 240e6, Yc: 200e6, S: 60e6 },
};
const mat = {
  name: 'mat',
  E1: 7e9,
  E2: 7e9,
  G12: 7e9 / 2.6,
  nu12: 0.3,
  strengths: { Xt: 90e6, Xc: 140e6, Yt: 90e6, Yc: 140e6, S: 60e6 },
  expansion: { alpha1: 25e-6, alpha2: 25e-6 },
};
const t = 0.3e-3;
const force = evenly(-1e5, 1e5);
const anyN = fc.tuple(force, force, force).filter((N) => Math.hypot(...N) > 1e3);

describe('a cloth', () => {
  it('pulled across its warp breaks its weft, and has then failed', () => {
    const found = progressiveFailure(laminate([plyOf(cloth, 90, t)]), { N: [1e5, 0, 0] }, { criterion: 'hashin' });
    expect(found.firstPly.plies).toMatchObject([{ modeKey: 'weftTension', becomes: 'failed' }]);
    expect(found.firstPly.plies[0]!.mode).toBe('tension along the weft');
    expect(found.lastPly.ratio).toBeCloseTo((350e6 * t) / 1e5, 9);
    expect(failure(laminate([plyOf(cloth, 0, t)]), { N: [-1e5, 0, 0] }, 'maxStrain').modeKey).toBe('warpCompression');
  });

  it('whose matrix shears keeps both moduli, and may then break either yarn', () => {
    // Sheared alone it carries S; beside fibres at ±45° it goes on, its shear lost.
    const bare = progressiveFailure(laminate([plyOf(cloth, 0, t)]), { N: [0, 0, 1e5] }, { criterion: 'maxStress' });
    expect(bare.firstPly.ratio).toBeCloseTo((60e6 * t) / 1e5, 9);
    expect(bare.firstPly.plies).toMatchObject([{ modeKey: 'clothShear', becomes: 'cracked' }]);
    expect(bare.firstPly.inPlane.Ex / 20e9).toBeCloseTo(1, 9);
    expect(bare.firstPly.inPlane.Ey / 20e9).toBeCloseTo(1, 9);
    expect(bare.firstPly.inPlane.Gxy / 35e6).toBeCloseTo(1, 9);
    const both = [0, 45, 0].map((angle) => plyOf(cloth, angle, t));
    const found = progressiveFailure(laminate(both), { N: [4e4, -2e4, 6e4] }, { criterion: 'maxStress' });
    expect(found.firstPly.plies[0]).toMatchObject({ becomes: 'cracked' });
    const modes = found.steps.flatMap(({ plies }) => plies.filter(({ becomes }) => becomes === 'failed'));
    expect(modes.every(({ modeKey }) => /^(warp|weft)/.test(modeKey))).toBe(true);
    expect(modes.length).toBeGreaterThan(0);
  });

  it.each(['maxStress', 'maxStrain', 'tsaiWu'] as const)(
    'is as strong with its warp across as along, balanced, and whichever yarn is called the warp, by %s',
    (criterion) => {
      const stack = (angle: number, other = uneven, by = 0) =>
        laminate([plyOf(cloth, 45, t), plyOf(cloth, angle, t), plyOf(other, 20 + by, t), plyOf(carbon, 0, t)]);
      const { strengths: s } = uneven;
      const swapped = {
        ...uneven,
        E1: uneven.E2,
        E2: uneven.E1,
        nu12: (uneven.nu12 * uneven.E2) / uneven.E1,
        strengths: { Xt: s.Yt, Xc: s.Yc, Yt: s.Xt, Yc: s.Xc, S: s.S },
      };
      fc.assert(
        fc.property(anyN, (N) => {
          const run = (...of: Parameters<typeof stack>) => progressiveFailure(stack(...of), { N }, { criterion });
          const [one, across, renamed] = [run(0), run(90), run(0, swapped, 90)];
          for (const other of [across, renamed]) {
            expect(other.firstPly.ratio / one.firstPly.ratio).toBeCloseTo(1, 6);
            expect(other.lastPly.ratio / one.lastPly.ratio).toBeCloseTo(1, 6);
          }
        }),
        { numRuns: 40 },
      );
    },
  );

  it('is not so by Hashin where it is pressed and sheared, and the warning says by how much', () => {
    const at = (angle: number) => laminate([45 + angle, angle, angle, 45 + angle].map((one) => plyOf(cloth, one, t)));
    const load = { N: [-6e4, 0, 4e4] } as const;
    const sizes = (text: string) => [...text.matchAll(/([\d.]+) times/g)].map((one) => Number(one[1]));
    const told = (notes: readonly { level: string; text: string }[]) =>
      notes.flatMap(({ level, text }) => (level === 'warning' && /not alike/.test(text) ? [sizes(text)] : []));
    const [along, across] = [failure(at(0), load, 'hashin'), failure(at(90), load, 'hashin')];
    expect(along.ratio! / across.ratio!).toBeGreaterThan(1.01);
    expect(told(along.notes)).toEqual([[expect.closeTo(along.ratio!, 2), expect.closeTo(across.ratio!, 2)]]);
    const last = (angle: number) => progressiveFailure(at(angle), load, { criterion: 'hashin' });
    const wanted = [last(0).lastPly.ratio, last(90).lastPly.ratio].map((ratio) => expect.closeTo(ratio, 2));
    expect(told(last(0).notes)).toEqual(last(0).lastPly.ratio === last(90).lastPly.ratio ? [] : [wanted]);
    expect(told(failure(at(0), load, 'maxStress').notes)).toEqual([]);
  });
});

describe('a mat', () => {
  it('by maximum stress fails by its principal stresses, or by half their difference in shear', () => {
    fc.assert(
      fc.property(anyN, anyAngle, evenly(3e7, 9e7), (N, angle, S) => {
        const [x, y, xy] = N.map((value) => value / t) as [number, number, number];
        const [mean, radius] = [(x + y) / 2, Math.hypot((x - y) / 2, xy)];
        const { Xt, Xc } = mat.strengths;
        const used = [mean + radius, mean - radius].map((s) => (s > 0 ? s / Xt : -s / Xc));
        const most = Math.max(...used, radius / Math.abs(S));
        const ply = plyOf({ ...mat, strengths: { ...mat.strengths, S: Math.abs(S) } }, angle, t);
        fc.pre(Math.abs(S) > 1e6);
        expect(failure(laminate([ply]), { N }, 'maxStress').ratio! * most).toBeCloseTo(1, 9);
      }),
    );
  });

  it.each<Criterion>(['maxStress', 'maxStrain', 'tsaiHill', 'tsaiWu', 'hashin'])(
    'has the least ratio of all directions, with and without residual stress, by %s',
    (criterion) => {
      const stack = laminate([plyOf(mat, 10, t), plyOf(carbon, 30, t), plyOf(mat, -70, t)]);
      const rotations = Array.from({ length: 1800 }, (_, i) => i / 10);
      fc.assert(
        fc.property(anyN, fc.constantFrom(0, -40), (N, temperatureChange) => {
          const [s, r] = [respond(stack, { N }), respond(stack, { temperatureChange })];
          const found = failure(stack, { N, temperatureChange }, criterion);
          const [point, rest] = [s.plies[0]!.top.stress as Vector3, r.plies[0]!.top.stress as Vector3];
          const all = rotations.map(
            (by) =>
              strengthRatio(plyOf(mat, 0, t), rotateStress(point, by), criterion, { residual: rotateStress(rest, by) })
                .ratio ?? Number.POSITIVE_INFINITY,
          );
          const ratio = found.perPly[0]!.top.ratio!;
          const least = Math.min(...all);
          expect(ratio).toBeLessThanOrEqual(least * (1 + 1e-9));
          expect(ratio / least).toBeCloseTo(1, 4);
        }),
        { numRuns: 12 },
      );
    },
  );

  it('turned gives the same first ply, last ply and envelope', () => {
    const stack = (angle: number) =>
      laminate([plyOf(mat, angle, t), plyOf(carbon, 0, t), plyOf(mat, 2 * angle, 2 * t)]);
    const load = { N: [3e4, -1e4, 2e4], M: [2, 0, 1], temperatureChange: -40 } as const;
    for (const criterion of ['maxStress', 'tsaiWu', 'tsaiHill', 'hashin'] as const) {
      const components = ['Nx', 'Nxy'] as const;
      const of = (angle: number) => ({
        first: failure(stack(angle), load, criterion),
        last: progressiveFailure(stack(angle), load, { criterion }).lastPly.ratio,
        envelope: failureEnvelope(stack(angle), { components, criterion, temperatureChange: -40, count: 12 }).points,
      });
      const straight = of(0);
      for (const angle of [45, 17, 90]) {
        const one = of(angle);
        expect(one.first.ratio! / straight.first.ratio!).toBeCloseTo(1, 6);
        expect(one.last / straight.last).toBeCloseTo(1, 6);
        one.envelope.forEach(({ x, y }, i) => {
          const { x: x0, y: y0 } = straight.envelope[i]!;
          expect(Math.hypot(x - x0, y - y0) / Math.hypot(x0, y0)).toBeLessThan(1e-6);
        });
      }
    }
    expect(failure(turned(stack(0), 0), load, 'maxStress').notes.some(({ text }) => /Mat \(mat\)/.test(text))).toBe(
      true,
    );
  });

  it('breaks as a whole', () => {
    const { firstPly } = progressiveFailure(laminate([plyOf(mat, 30, t)]), { N: [0, 0, 1e4] }, { criterion: 'hashin' });
    expect(firstPly.plies).toMatchObject([{ becomes: 'failed' }]);
    expect(firstPly.plies[0]!.modeKey).toMatch(/^mat/);
  });
});

describe('Puck', () => {
  const stack = laminate([
    plyOf(cloth, 0, t),
    plyOf({ ...carbon, name: 'ud' }, 0, t),
    plyOf({ ...carbon, name: 'ud' }, 90, t),
    plyOf(mat, 0, t),
  ]);
  const load = { N: [5e4, 0, 1e4] } as const;

  it('judges the unidirectional plies, as it would each alone, and names what it leaves out', () => {
    const found = failure(stack, load, 'puck');
    expect(found.perPly.map(({ ply }) => ply)).toEqual([2, 3]);
    const { plies } = respond(stack, load);
    const alone = [1, 2].flatMap((k) =>
      [plies[k]!.top, plies[k]!.bottom].map(({ stress12 }) => strengthRatio(stack.plies[k]!, stress12, 'puck').ratio!),
    );
    expect(found.ratio! / Math.min(...alone)).toBeCloseTo(1, 9);
    expect(found.notes.some(({ text }) => text.includes('cloth and mat (cloth, mat) are left out'))).toBe(true);
  });

  it('layer by layer breaks cloth and mat by maximum stress, so that they do not carry for ever', () => {
    const { steps, notes } = progressiveFailure(stack, load, { criterion: 'puck' });
    const broken = steps.flatMap(({ plies }) => plies).filter(({ becomes }) => becomes === 'failed');
    expect(broken.map(({ modeKey }) => modeKey)).toContain('matTension');
    expect(notes.some(({ text }) => text.includes('by maximum stress in place of Puck'))).toBe(true);
  });

  it('refuses a laminate of cloth and mat alone', () => {
    const woven = laminate([plyOf(cloth, 0, t), plyOf(mat, 0, t)]);
    expect(problemCode(() => failure(woven, load, 'puck'))).toBe('not-computable');
  });
});
