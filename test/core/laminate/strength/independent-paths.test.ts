import { createRequire } from 'node:module';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Criterion,
  failureCriteria,
  type StrengthPly,
  strengthRatio,
} from '../../../../packages/core/src/laminate/strength/index.js';
import { evenly } from '../plies.js';
import { anyStress, anyStrongPly, carbon, glass, ratioByHalving } from './materials.js';

/**
 * Strength ratios by another way than the library's: the criterion is written as its authors print it, evaluated by an
 * expression reader, and the load is found by doubling and halving. Nothing is solved for the ratio.
 */
type Stress = readonly [number, number, number];

const fromCore = createRequire(new URL('../../../../packages/core/package.json', import.meta.url));
const { compile } = fromCore('mathjs') as {
  compile(text: string): { evaluate(scope: Record<string, number>): number };
};

const written = {
  maxStress: 'max(a/Xt, -a/Xc, b/Yt, -b/Yc, abs(c)/S)',
  // Strain over the strain that the strength would make alone: e1 E1/Xt, e2 E2/Yt, gamma G/S.
  maxStrain: 'max((a - nu12*b)/Xt, (nu12*b - a)/Xc, (b - nu12*E2/E1*a)/Yt, (nu12*E2/E1*a - b)/Yc, abs(c)/S)',
  tsaiHill: '(a/X)^2 - a*b/X^2 + (b/Y)^2 + (c/S)^2',
  tsaiHillCrossTerm: '(a/X)^2 - a*b/Xcross^2 + (b/Y)^2 + (c/S)^2',
  tsaiHillTensile: '(a/Xt)^2 - a*b/Xt^2 + (b/Yt)^2 + (c/S)^2',
  tsaiWu: '(1/Xt - 1/Xc)*a + (1/Yt - 1/Yc)*b + a^2/(Xt*Xc) + b^2/(Yt*Yc) + c^2/S^2 + 2*F12star*a*b/sqrt(Xt*Xc*Yt*Yc)',
  hashinFibreTension: '(a/Xt)^2 + alpha*(c/S)^2',
  hashinFibreCompression: '-a/Xc',
  hashinMatrixTension: '(b/Yt)^2 + (c/S)^2',
  hashinMatrixCompression: '(b/(2*ST))^2 + ((Yc/(2*ST))^2 - 1)*b/Yc + (c/S)^2',
};
const index = Object.fromEntries(Object.entries(written).map(([name, text]) => [name, compile(text)])) as Record<
  keyof typeof written,
  ReturnType<typeof compile>
>;

interface Options {
  readonly F12star?: number;
  readonly alpha?: number;
  readonly ST?: number;
}

function scopeOf(ply: StrengthPly, [a, b, c]: Stress, { F12star = -0.5, alpha = 1, ST }: Options) {
  const { Xt, Xc, Yt, Yc, S } = ply.strengths;
  const { E1, E2, nu12 } = ply;
  const [X, Y, Xcross] = [a >= 0 ? Xt : Xc, b >= 0 ? Yt : Yc, b >= 0 ? Xt : Xc];
  return { a, b, c, Xt, Xc, Yt, Yc, S, E1, E2, nu12, X, Y, Xcross, F12star, alpha, ST: ST ?? Yc / 2 };
}

function indexOf(name: keyof typeof written | 'hashin', ply: StrengthPly, stress: Stress, options: Options): number {
  const scope = scopeOf(ply, stress, options);
  const value = (which: keyof typeof written): number => index[which].evaluate(scope);
  if (name !== 'hashin') return value(name);
  return Math.max(
    value(stress[0] >= 0 ? 'hashinFibreTension' : 'hashinFibreCompression'),
    value(stress[1] >= 0 ? 'hashinMatrixTension' : 'hashinMatrixCompression'),
  );
}

const times = (R: number, [a, b, c]: Stress): Stress => [R * a, R * b, R * c];

/** The factor on the stress at which the index passes 1. */
function found(passed: (R: number) => boolean): number {
  let high = 1;
  while (!passed(high)) high *= 2;
  let low = 0;
  for (let i = 0; i < 200 && high - low > 1e-15 * high; i++) {
    const middle = (low + high) / 2;
    if (passed(middle)) high = middle;
    else low = middle;
  }
  return high;
}

const share = evenly(0, 1);

describe('the ratio by doubling and halving of the printed criterion', () => {
  const expectSame = (
    name: keyof typeof written | 'hashin',
    criterion: Criterion,
    options: Options & { variant?: 'sign' | 'tensile' | 'crossTerm'; transverseShearStrength?: number } = {},
  ) =>
    fc.assert(
      fc.property(anyStrongPly, anyStress, (ply, stress) => {
        const { ratio } = strengthRatio(ply, stress, criterion, options);
        const expected = found((R) => indexOf(name, ply, times(R, stress), options) >= 1);
        expect(ratio! / expected, `${criterion} ${stress}`).toBeCloseTo(1, 10);
      }),
      { numRuns: 60 },
    );

  it('is that of maximum stress', () => expectSame('maxStress', 'maxStress'));

  it('is that of maximum strain', () => expectSame('maxStrain', 'maxStrain'));

  it('is that of Tsai-Hill in its three variants', () => {
    expectSame('tsaiHill', 'tsaiHill');
    expectSame('tsaiHillTensile', 'tsaiHill', { variant: 'tensile' });
    expectSame('tsaiHillCrossTerm', 'tsaiHill', { variant: 'crossTerm' });
  });

  it('is that of Tsai-Wu for any interaction', () => {
    for (const F12star of [-0.9, -0.5, 0, 0.3]) expectSame('tsaiWu', 'tsaiWu', { F12star });
  });

  it('is that of Hashin, the polynomial of pressed matrix for any shear strength across the fibre', () => {
    expectSame('hashin', 'hashin');
    for (const [ST, alpha] of [
      [60e6, 0],
      [110e6, 0.4],
      [25e6, 1],
    ] as const) {
      expectSame('hashin', 'hashin', { ST, transverseShearStrength: ST, alpha });
    }
  });
});

describe('residual stress, which the load does not multiply, with options of every kind', () => {
  const sum = (R: number, s: Stress, r: Stress): Stress => [r[0] + R * s[0], r[1] + R * s[1], r[2] + R * s[2]];

  const expectSame = (
    name: keyof typeof written | 'hashin',
    criterion: Criterion,
    options: Options & { variant?: 'tensile' | 'crossTerm'; transverseShearStrength?: number },
  ) =>
    fc.assert(
      fc.property(anyStrongPly, anyStress, anyStress, (ply, stress, other) => {
        const across = found((R) => indexOf(name, ply, times(R, other), options) >= 1);
        const residual = times(0.6 * across, other);
        const { ratio } = strengthRatio(ply, stress, criterion, { ...options, residual });
        const expected = ratioByHalving(
          (R) => indexOf(name, ply, sum(R, stress, residual), options) >= 1,
          3 * ratio!,
          300,
        );
        expect(ratio! / expected!, `${criterion} ${stress} on ${residual}`).toBeCloseTo(1, 7);
      }),
      { numRuns: 60 },
    );

  it('is met for the variants of Tsai-Hill and any interaction of Tsai-Wu', () => {
    expectSame('tsaiHillTensile', 'tsaiHill', { variant: 'tensile' });
    expectSame('tsaiHillCrossTerm', 'tsaiHill', { variant: 'crossTerm' });
    for (const F12star of [-0.8, 0.2]) expectSame('tsaiWu', 'tsaiWu', { F12star });
  });

  it('is met for any shear strength across the fibre of Hashin, and any share of shear in the fibre', () => {
    expectSame('hashin', 'hashin', { ST: 60e6, transverseShearStrength: 60e6, alpha: 0.3 });
    expectSame('hashin', 'hashin', { ST: 150e6, transverseShearStrength: 150e6, alpha: 0 });
  });
});

describe('Puck beside a search over all planes parallel to the fibre', () => {
  interface Inclinations {
    readonly plus: number;
    readonly minus: number;
  }

  /**
   * Effort of the plane at θ from the criterion on the action plane (Puck & Schürmann 1998), stresses σn, τnt, τnl, with
   * p/R alike along and across the fibre; RA from the pressed ply, which breaks on its own worst plane.
   */
  function effort([, b, c]: Stress, ply: StrengthPly, { plus, minus }: Inclinations, degrees: number): number {
    const { Yt, Yc, S } = ply.strengths;
    const RA = minus === 0 ? Yc / 2 : (S / (2 * minus)) * (Math.sqrt(1 + (2 * minus * Yc) / S) - 1);
    const [cos, sin] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
    const [n, nt, nl] = [b * cos * cos, -b * sin * cos, c * cos];
    const sheared = (nt / RA) ** 2 + (nl / S) ** 2;
    if (n < 0) return Math.sqrt(sheared + ((minus / S) * n) ** 2) + (minus / S) * n;
    return Math.sqrt(sheared + ((1 / Yt - plus / S) * n) ** 2) + (plus / S) * n;
  }

  /** The greatest effort: a grid of whole degrees, then thirds around the best. */
  function greatest(of: (degrees: number) => number): number {
    let best = -90;
    for (let degrees = -90; degrees <= 90; degrees++) if (of(degrees) > of(best)) best = degrees;
    let [low, high] = [best - 1, best + 1];
    for (let i = 0; i < 120; i++) {
      const [p, q] = [low + (high - low) / 3, high - (high - low) / 3];
      if (of(p) < of(q)) low = p;
      else high = q;
    }
    return Math.max(of(low), of(best));
  }

  it('has the ratio of the worst plane, in tension and under pressure, for the inclinations of carbon, glass and others', () => {
    const inclinations = fc.record({ plus: share.map((x) => 0.4 * x), minus: share.map((x) => 0.01 + 0.35 * x) });
    fc.assert(
      fc.property(fc.constantFrom(carbon, glass), anyStress, inclinations, (ply, stress, puck) => {
        const { Xt, Xc } = ply.strengths;
        const { ratio } = strengthRatio(ply, stress, 'puck', { puck });
        const [a] = stress;
        const between = greatest((degrees) => effort(stress, ply, puck, degrees));
        expect(1 / ratio!).toBeCloseTo(Math.max(a / Xt, -a / Xc, between), 8);
      }),
    );
  });
});

describe('what holds for every criterion', () => {
  it('does not depend on the sign of shear', () => {
    fc.assert(
      fc.property(anyStrongPly, anyStress, (ply, [a, b, c]) => {
        for (const criterion of failureCriteria) {
          const [one, other] = [strengthRatio(ply, [a, b, c], criterion), strengthRatio(ply, [a, b, -c], criterion)];
          expect(other.ratio).toBe(one.ratio);
          expect(other.modeKey).toBe(one.modeKey);
        }
      }),
    );
  });

  it('with residual stress depends on the product of both shears, not on the sign of the pair', () => {
    fc.assert(
      fc.property(anyStrongPly, anyStress, (ply, [a, b, c]) => {
        for (const criterion of failureCriteria) {
          const R = (sign: number, at: number) =>
            strengthRatio(ply, [a, b, sign * c], criterion, { residual: [0, 0, at * 0.2 * ply.strengths.S] }).ratio;
          expect(R(-1, -1)).toBe(R(1, 1));
          expect(R(-1, 1)).toBe(R(1, -1));
        }
      }),
    );
  });
});

describe('the two quadratic criteria', () => {
  const stress: Stress = [6e8, 2e7, 3e7];
  const R = (strengths: StrengthPly['strengths'], criterion: Criterion, F12star?: number) =>
    strengthRatio({ ...carbon, strengths }, stress, criterion, F12star === undefined ? {} : { F12star }).ratio!;
  const equal = { Xt: 1500e6, Xc: 1500e6, Yt: 60e6, Yc: 60e6, S: 68e6 };

  it('agree where tension and compression are alike and F12* = -Y/(2X), by hand', () => {
    // (600/1500)² - 600·20/1500² + (20/60)² + (30/68)² = 0.160000 - 0.005333 + 0.111111 + 0.194637
    const sum = 0.16 - 12000 / 2.25e6 + 1 / 9 + (30 / 68) ** 2;
    expect(R(equal, 'tsaiHill')).toBeCloseTo(1 / Math.sqrt(sum), 12);
    expect(R(equal, 'tsaiWu', -60 / 3000)).toBeCloseTo(1 / Math.sqrt(sum), 12);
  });

  it('part with another interaction, and where the strengths are not alike', () => {
    expect(Math.abs(R(equal, 'tsaiWu', -0.5) / R(equal, 'tsaiHill') - 1)).toBeGreaterThan(0.05);
    for (const unlike of [{ Xc: 900e6 }, { Yc: 200e6 }]) {
      const strengths = { ...equal, ...unlike };
      expect(Math.abs(R(strengths, 'tsaiWu', -60 / 3000) / R(strengths, 'tsaiHill') - 1)).toBeGreaterThan(0.01);
    }
  });
});
