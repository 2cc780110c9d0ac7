import { describe, expect, it } from 'vitest';
import { times } from '../../../../packages/core/src/laminate/axes.js';
import { type Laminate, laminate, stiffness, type Vector3 } from '../../../../packages/core/src/laminate/index.js';
import { ellipseGrowth } from '../../../../packages/core/src/laminate/plate/ellipse-growth.js';
import { buckleEllipse } from '../../../../packages/core/src/laminate/plate/ellipse-ritz.js';
import { ellipseBlister, stripBlister } from '../../../../packages/core/src/laminate/plate/index.js';
import { expectNear, graphite, plyOf, problemCode, stackOf } from '../plies.js';
import { circularBlister } from './circular-blister.js';

const sheet = { E: 70e9, h: 5e-4, R: 0.02 };
const isotropic = (nu: number): Laminate =>
  laminate([plyOf({ E1: sheet.E, E2: sheet.E, G12: sheet.E / (2 * (1 + nu)), nu12: nu }, 0, sheet.h)]);
const circle = (nu: number, e: number) => ellipseBlister(isotropic(nu), { a: sheet.R, b: sheet.R, strain: [e, e, 0] });

describe('growth of a circular blister under even compression', () => {
  it.each([0, 1 / 3])('near buckling is the published closed form, nu = %d', (nu) => {
    // Hutchinson & Suo 1992 (recalled, not re-read): G/G0 = c2 (1 - (σc/σ)²), c2 = 1/(1 + 0.9021 (1 - nu)),
    // with G0 = (1 - nu) h σ²/E the energy that the film holds; 0.9021 has four digits.
    const ratio = 1.0001;
    const e = -1e-3 * circle(nu, -1e-3).multiplier * ratio;
    const sigma = (sheet.E * e) / (1 - nu);
    const G0 = ((1 - nu) * sheet.h * sigma ** 2) / sheet.E;
    const c2 = 1 / (1 + 0.9021 * (1 - nu));
    const { G } = circle(nu, e);
    expectNear([G[0] / G0 / (1 - ratio ** -2), G[1] / G0 / (1 - ratio ** -2)], [c2, c2], 1e-3);
  });

  it.each([1.2, 2, 5])('at %d times the buckling strain is that of the edge in an axisymmetric solution', (times) => {
    const nu = 1 / 3;
    const { strain, G } = circularBlister({ ...sheet, nu }, times);
    const found = circle(nu, strain);
    expectNear([1 / found.multiplier], [times], 1e-6);
    expectNear(found.G, [G, G], 2e-3);
  });
});

describe('growth of an elliptic blister', () => {
  const films = [
    ['[30/-60]', [-2e-3, -1e-3, 5e-4]],
    ['[45/-45/45]', [-4e-3, 1e-3, 0]],
  ] as const;

  it.each(films)(
    'of %s releases what the energy loses per area, by numerical derivatives',
    (code, strain) => {
      const { A, D } = stiffness(stackOf(graphite, code, 2e-4));
      const at = (a: number, b: number) => {
        const buckling = buckleEllipse(D, [a, b], times(A, strain))!;
        return ellipseGrowth({ A, D }, [a, b], strain, buckling)(1);
      };
      const [a, b, h] = [0.025, 0.02, 1e-6];
      const x = -(at(a + h, b).energy - at(a - h, b).energy) / (2 * h) / (Math.PI * b);
      const y = -(at(a, b + h).energy - at(a, b - h).energy) / (2 * h) / (Math.PI * a);
      const { G } = at(a, b);
      expect(Math.min(...G)).toBeGreaterThan(0);
      expectNear(G, [x, y], 1e-5);
    },
    30_000,
  );

  it('turns with the plies and the strain; of a circle the sum over both directions stays at any angle', () => {
    const film = stackOf(graphite, '[0/90/0]', 2e-4);
    const strain: Vector3 = [-3e-3, 8e-4, 0];
    const turned = (by: number) => laminate(film.plies.map((ply) => ({ ...ply, angle: ply.angle + by })));
    const one = ellipseBlister(film, { a: 0.03, b: 0.02, strain });
    const quarter = ellipseBlister(turned(90), { a: 0.02, b: 0.03, strain: [strain[1], strain[0], 0] });
    expectNear(quarter.G, [one.G[1], one.G[0]], 1e-6);
    const circle = { a: 0.02, b: 0.02 };
    const [c, s] = [Math.cos(Math.PI / 6), Math.sin(Math.PI / 6)];
    const tilted: Vector3 = [
      c * c * strain[0] + s * s * strain[1],
      s * s * strain[0] + c * c * strain[1],
      2 * c * s * (strain[0] - strain[1]),
    ];
    const sum = ({ G }: { G: readonly number[] }) => G[0]! + G[1]!;
    expectNear(
      [sum(ellipseBlister(turned(30), { ...circle, strain: tilted }))],
      [sum(ellipseBlister(film, { ...circle, strain }))],
      1e-6,
    );
  }, 30_000);

  it('scales with t⁵/L⁴ at equal multiples of the buckling strain', () => {
    const at = (thickness: number, size: number) => {
      const film = stackOf(graphite, '[0/90]', thickness);
      const shape = { a: size, b: 1.5 * size };
      const { multiplier } = ellipseBlister(film, { ...shape, strain: [-1e-3, 0, 0] });
      return ellipseBlister(film, { ...shape, strain: [-2e-3 * multiplier, 0, 0] }).G;
    };
    const [one, other] = [at(1e-4, 0.02), at(2e-4, 0.03)];
    expectNear(other, [one[0] * 32 * (2 / 3) ** 4, one[1] * 32 * (2 / 3) ** 4], 1e-6);
  }, 30_000);

  it('across a long ellipse is less than that of the strip as wide, and more than half of it', () => {
    // The edge of the strip is all as far from the middle as the ellipse's at its widest.
    const film = isotropic(0.3);
    const strain: Vector3 = [0, -6e-3, 0];
    const { G } = ellipseBlister(film, { a: 0.03, b: 0.01, strain });
    const strip = stripBlister(film, { length: 0.02, strain: strain[1] });
    expect(strip.criticalStrain).toBeGreaterThan(strain[1]);
    expect(G[1]).toBeLessThan(strip.G);
    expect(G[1]).toBeGreaterThan(strip.G / 2);
  });

  it('is nothing before buckling, and begins at the strain at which the larger G is the toughness', () => {
    const film = stackOf(graphite, '[0/90/0]', 2e-4);
    const shape = { a: 0.02, b: 0.02 };
    const { multiplier } = ellipseBlister(film, { ...shape, strain: [-1e-3, 0, 0] });
    expect(ellipseBlister(film, { ...shape, strain: [-0.999e-3 * multiplier, 0, 0] }).G).toEqual([0, 0]);
    const { growthMultiplier } = ellipseBlister(film, { ...shape, strain: [-1e-3, 0, 0], toughness: 150 });
    const { G } = ellipseBlister(film, { ...shape, strain: [-1e-3 * growthMultiplier!, 0, 0] });
    expectNear([Math.max(...G)], [150], 1e-5);
    const tough = ellipseBlister(film, { ...shape, strain: [-1e-3, 0, 0], toughness: 1e9 });
    expect(tough).not.toHaveProperty('growthMultiplier');
  });
});

describe('what the elliptic blister says of itself', () => {
  const film = stackOf(graphite, '[0/90/0]', 2e-4);
  const texts = (of: { notes: readonly { text: string }[] }) => of.notes.map(({ text }) => text).join('\n');

  it('G is a mean, where it is computed', () => {
    const shape = { a: 0.02, b: 0.02 };
    expect(texts(ellipseBlister(film, { ...shape, strain: [-1e-3, 0, 0] }))).not.toContain('mean over an edge');
    const buckled = ellipseBlister(film, { ...shape, strain: [-3e-3, 0, 0] });
    expect(texts(buckled)).toContain('mean over an edge');
    expect(buckled.sources).toContain('hutchinson-suo-1992');
  });

  it('warns beyond five times buckling, and where the plies press on what is under them', () => {
    const shape = { a: 0.02, b: 0.02 };
    const { multiplier } = ellipseBlister(film, { ...shape, strain: [-1e-3, 0, 0] });
    const at = (times: number) => ellipseBlister(film, { ...shape, strain: [-1e-3 * multiplier * times, 0, 0] });
    expect(texts(at(4.9))).not.toContain('times its buckling strain');
    expect(texts(at(5.1))).toContain('Under the given strain the blister is at 5.1 times its buckling strain');
    const tough = ellipseBlister(film, { ...shape, strain: [-1e-3, 0, 0], toughness: 5000 });
    expect(texts(tough)).toContain('At the strain of growth the blister is at');
    expect(texts(ellipseBlister(film, { ...shape, strain: [0, 0, 1e-3] }))).toContain(
      'From buckling on the plies bend to both sides',
    );
  });

  it('warns of plies that are not symmetric among themselves', () => {
    const strain: Vector3 = [-1e-3, 0, 0];
    expect(texts(ellipseBlister(film, { a: 0.02, b: 0.02, strain }))).not.toContain('not symmetric');
    const odd = stackOf(graphite, '[0/90]', 2e-4);
    expect(texts(ellipseBlister(odd, { a: 0.02, b: 0.02, strain }))).toContain('not symmetric among themselves');
  });

  it('and the strip tell how thin the plies are beside the rest, and warn above a fifth', () => {
    const base = (plies: number) => stackOf(graphite, `[0_${plies}]`, 2e-4);
    const one = stackOf(graphite, '[0]', 2e-4);
    for (const blister of [
      (of: Laminate) => stripBlister(one, { length: 0.02, base: of }),
      (of: Laminate) => ellipseBlister(one, { a: 0.01, b: 0.01, strain: [-1e-3, 0, 0], base: of }),
    ]) {
      // One ply of five and one of four.
      expect(texts(blister(base(4)))).toContain('Here they have up to 20 % of the stiffness in the plane');
      expect(texts(blister(base(4)))).not.toContain('no thin film');
      expect(texts(blister(base(3)))).toContain('no thin film: they have up to 25 % of the stiffness');
    }
  });

  it('refuses a toughness that cannot be', () => {
    for (const toughness of [0, -1, Number.NaN]) {
      expect(problemCode(() => ellipseBlister(film, { a: 1, b: 1, strain: [-1, 0, 0], toughness }))).toBe(
        'out-of-range',
      );
    }
  });

  it('cannot be computed for an ellipse whose energy is no number of 64 bits', () => {
    const film = stackOf(graphite, '[0/90/0]', 2e-4);
    expect(problemCode(() => ellipseBlister(film, { a: 1e160, b: 1e160, strain: [-1e-3, 0, 0] }))).toBe(
      'not-computable',
    );
  });
});
