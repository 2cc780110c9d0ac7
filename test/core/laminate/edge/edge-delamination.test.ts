import table from '@selvage/reference-data/examples/tables/free-edge.json' with { type: 'json' };
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type EdgeOptions,
  edgeDelamination,
  flatEdgeRelease,
} from '../../../../packages/core/src/laminate/edge/index.js';
import { type Laminate, laminate, respond, stiffness } from '../../../../packages/core/src/laminate/index.js';
import { anyLaminate, evenly, expectNear, graphite, plyOf, problemCode, reversed, stackOf } from '../plies.js';

describe('energy release rates beside the independent script and finite elements', () => {
  const { release, onset } = table;
  const stack = stackOf(table.ply, release.stack, 1);
  const { pair, single } = edgeDelamination(stack).interfaces[release.pliesBelow - 1]!;

  it('of both mirror interfaces together, per front', () => {
    expectNear([pair!.perSquare], [release.pair.perFront], 1e-6);
    expect(pair!.fronts).toBe(2);
    expect(Math.abs(pair!.perSquare / release.pair.finiteElements - 1)).toBeLessThan(release.pair.tolerance);
  });

  it('of one interface alone, by strips that bend across: freeing every curvature would be 60 % too high', () => {
    expectNear(
      [single!.perSquare, single!.partedModulus],
      [release.single.perFront, release.single.partedModulus],
      1e-6,
    );
    expect(single!.fronts).toBe(1);
    expect(Math.abs(single!.perSquare / release.single.finiteElements - 1)).toBeLessThan(release.single.tolerance);
    expect(release.single.allCurvaturesFree / single!.perSquare).toBeGreaterThan(1.55);
  });

  it.each(Object.entries(onset.strains))('onset in a stack with plies of %s layers', (n, strain) => {
    const code = onset.stack.replaceAll('n', `_${n}`);
    const many = stackOf(table.ply, code, onset.plyThickness);
    // By the formula as printed: flat parts, one surface counted.
    const found = flatEdgeRelease(many, 3 * Number(n));
    expectNear([Math.sqrt(onset.G / found.perSquare)], [strain], 1e-6);
    expectNear([found.modulus, found.partedModulus], [onset.modulus, onset.partedModulus], 1e-6);
    // The outer part is unsymmetric, and free to bend it releases more: half of the toughness per front is reached sooner.
    const { interfaces } = edgeDelamination(many, { toughness: onset.G / 2 });
    const { tension, compression } = interfaces[3 * Number(n) - 1]!.pair!.onset!;
    expect(tension).toBeLessThan(0.97 * strain);
    expect(-compression).toBeLessThan(strain);
  });

  it('names the interface beside the 90 plies as the critical one, opening alone, of mirror images that nearer to the tool', () => {
    const { critical } = edgeDelamination(stack);
    expect(critical!.below).toBe(4);
    expect(critical!.opening).toBe('single');
    expectNear([critical!.perSquare], [single!.perSquare], 1e-9);
  });
});

describe('the moment rule for peel at the edge beside finite elements', () => {
  it.each(table.peel)('$stack', (row) => {
    const stack = stackOf(table.ply, row.stack, 1);
    const { midPlanePeel: peel } = edgeDelamination(stack);
    const scale = 0.001 * 20e6 * 100;
    expectNear([peel.moment], [row.moment], table.tolerance, Math.max(Math.abs(row.moment), scale));
    expectNear([peel.relative], [row.relative], table.tolerance, Math.max(row.relative, 1e-3));
    expect(peel.sense !== 'undecided').toBe(row.decisive);
    if (row.decisive) expect(peel.sense).toBe(row.finiteElementStress > 0 ? 'opening' : 'closing');
    // The couple of the peel stress is the moment within a few per cent.
    if (row.decisive) expect(Math.abs(row.finiteElementMoment / peel.moment - 1)).toBeLessThan(0.08);
  });

  it('changes its sign with the load and stays when the stack is reversed', () => {
    const stack = stackOf(graphite, '[45/-45/0/90]s', 1e-4);
    const sense = (strain: number, of: Laminate = stack) => edgeDelamination(of, { strain }).midPlanePeel.sense;
    expect([sense(1e-3), sense(-1e-3), sense(1e-3, reversed(stack))]).toEqual(['opening', 'closing', 'opening']);
  });

  it('is silent below a relative moment of 0.001', () => {
    const peelOf = (thickness: number) => {
      const [zero, ninety] = [plyOf(table.ply, 0, thickness), plyOf(table.ply, 90, 1)];
      return edgeDelamination(laminate([zero, ninety, ninety, zero])).midPlanePeel;
    };
    // The moment falls with the thickness of the outer plies.
    const thicknessFor = (relative: number): number => {
      let [low, high] = [1e-6, 1];
      for (let i = 0; i < 60; i++) {
        const t = (low + high) / 2;
        if (peelOf(t).relative > relative) high = t;
        else low = t;
      }
      return high;
    };
    expect(peelOf(thicknessFor(1.003e-3)).sense).toBe('opening');
    expect(peelOf(thicknessFor(0.997e-3)).sense).toBe('undecided');
  });

  it('is the moment about each interface of the stress above it, by sums over the plies', () => {
    const stack = stackOf(graphite, '[0/45/-45/90]s', 1e-4);
    const { interfaces } = edgeDelamination(stack, { strain: 2e-3 });
    const { plies } = respond(stack, { strain: [2e-3, null, null], curvature: [0, 0, 0] });
    for (const { z, below, peel } of interfaces) {
      const moment = plies.slice(below).reduce((sum, { middle }) => sum + middle.stress[1] * 1e-4 * (middle.z - z), 0);
      expectNear([peel.moment], [moment], 1e-9, 1e-2);
    }
  });
});

/** Elastic energy per area, ∫ ½ σ·ε of the stress-bearing strain, by Simpson's rule on each ply: exact. κy free when null. */
function storedEnergy(part: Laminate, ky: number | null, strain: number, temperatureChange: number): number {
  const { plies } = respond(part, { strain: [strain, null, null], curvature: [0, ky, 0], temperatureChange });
  return plies.reduce((sum, { top, middle, bottom }) => {
    const density = ({ stress12: s, mechanicalStrain12: e }: typeof top) =>
      (s[0] * e[0] + s[1] * e[1] + s[2] * e[2]) / 2;
    return sum + ((bottom.z - top.z) / 6) * (density(top) + 4 * density(middle) + density(bottom));
  }, 0);
}

function determinant(rows: readonly (readonly number[])[]): number {
  const [first = [], ...others] = rows;
  if (others.length === 0) return first[0]!;
  return first.reduce(
    (sum, value, j) => sum + (j % 2 === 0 ? value : -value) * determinant(others.map((row) => row.toSpliced(j, 1))),
    0,
  );
}

const anySymmetric = anyLaminate.map(({ plies }) => laminate([...plies, ...plies.toReversed()]));
const anyState = fc.record({
  strain: evenly(-0.01, 0.01),
  temperatureChange: evenly(-150, 100),
});

describe('the energy release rate', () => {
  it('is the derivative of the stored energy of a half-parted edge, with strain and heat', () => {
    fc.assert(
      fc.property(anySymmetric, anyState, (stack, state) => {
        const { interfaces } = edgeDelamination(stack, state);
        const width = 0.1;
        const energy = (part: Laminate, ky: number | null) =>
          storedEnergy(part, ky, state.strain, state.temperatureChange);
        const bent = (part: Laminate): number =>
          respond(part, { ...state, strain: [state.strain, null, null], curvature: [0, null, 0] }).curvature[1];
        /** Least energy of parts that bend alike, from the parabola through three curvatures. */
        const together = (parts: readonly Laminate[]): number => {
          const at = (ky: number) => parts.reduce((sum, part) => sum + energy(part, ky), 0);
          const step = Math.max(...parts.map(bent).map(Math.abs), 1e-3);
          const [down, flat, up] = [at(-step), at(0), at(step)];
          return flat - (up - down) ** 2 / (8 * (up - 2 * flat + down));
        };
        // Parts that would bend into each other touch at the edge: a quarter of the way from bending alike to bending freely.
        const parted = (parts: readonly Laminate[]): number => {
          const free = parts.reduce((sum, part) => sum + energy(part, null), 0);
          const [lower, upper] = parts;
          const closes = bent(lower!) < (parts.length === 2 ? bent(upper!) : 0);
          const held = (): number =>
            parts.length === 2 ? together(parts) : parts.reduce((sum, part) => sum + energy(part, 0), 0);
          return closes ? free / 4 + (3 * held()) / 4 : free;
        };
        const stored = (cuts: readonly number[], a: number): number => {
          const bounds = [0, ...cuts, stack.plies.length];
          const parts = bounds.slice(1).map((end, i) => laminate(stack.plies.slice(bounds[i], end)));
          return (width - a) * energy(stack, null) + a * parted(parts);
        };
        const slope = (cuts: readonly number[]): number => (stored(cuts, 0.03) - stored(cuts, 0.01)) / 0.02;
        const scale = energy(stack, 0);
        for (const { below, single, pair } of interfaces) {
          if (single !== undefined) expectNear([single.G], [-slope([below])], 1e-7, scale);
          const mirror = stack.plies.length - below;
          if (pair !== undefined) {
            const cuts = [Math.min(below, mirror), Math.max(below, mirror)];
            expectNear([2 * pair.G], [-slope(cuts)], 1e-7, scale);
          }
        }
      }),
      { numRuns: 25 },
    );
  });

  it('is ε² t (E - E*)/2 over the fronts, with the moduli of the parts as strips weighed by thickness', () => {
    const stack = stackOf(graphite, '[0/90/45/-45]s', 2e-4);
    const E = (code: string): number => {
      const part = stackOf(graphite, code, 2e-4);
      const { A, B, D } = stiffness(part);
      // εx held, εy, γxy and κy free: a ratio of determinants.
      const rows = [
        [A[0][0], A[0][1], A[0][2], B[0][1]],
        [A[0][1], A[1][1], A[1][2], B[1][1]],
        [A[0][2], A[1][2], A[2][2], B[1][2]],
        [B[0][1], B[1][1], B[1][2], D[1][1]],
      ].map((row) => row.map((value = 0) => value));
      const free = rows.slice(1).map((row) => row.slice(1));
      return determinant(rows) / determinant(free) / part.thickness;
    };
    const { pair } = edgeDelamination(stack, { strain: 3e-3 }).interfaces[1]!;
    const parted = (2 * E('[0/90]') * 2 + E('[45/-45]s') * 4) / 8;
    expectNear([pair!.modulus, pair!.partedModulus], [E('[0/90/45/-45]s'), parted], 1e-9);
    expectNear([pair!.G], [(9e-6 * 16e-4 * (pair!.modulus - parted)) / 4], 1e-8);
  });

  it('grows with the square of the strain and with the thickness', () => {
    const G = (strain: number, thickness: number) =>
      edgeDelamination(stackOf(graphite, '[45/-45/0/90]s', thickness), { strain }).critical!.G;
    expectNear([G(2e-3, 1e-4), G(1e-3, 3e-4)], [4 * G(1e-3, 1e-4), 3 * G(1e-3, 1e-4)], 1e-9);
  });

  it('is found alike from either face', () => {
    const stack = stackOf(graphite, '[0/30/-45/90]', 1e-4);
    const options: EdgeOptions = { strain: 2e-3, temperatureChange: -80 };
    const one = edgeDelamination(stack, options).interfaces.map(({ single }) => single!.G);
    const other = edgeDelamination(reversed(stack), options).interfaces.map(({ single }) => single!.G);
    expectNear(other.toReversed(), one, 1e-8);
  });

  it('is nothing for a heated stack of one isotropic expansion, and not for a cooled cross-ply one', () => {
    const even = { ...graphite, expansion: { alpha1: 1e-5, alpha2: 1e-5 } };
    const none = edgeDelamination(stackOf(even, '[0/90]s', 1e-4), { strain: -100e-5, temperatureChange: -100 });
    expect(none.critical!.G).toBeLessThan(1e-9);
    const cooled = edgeDelamination(stackOf(graphite, '[0/90]s', 1e-4), { temperatureChange: -100 });
    expect(cooled.critical!.G).toBeGreaterThan(0.1);
  });
});

describe('the strain of onset', () => {
  const stack = stackOf(graphite, '[45/-45/0/90]s', 1e-4);

  it.each(['[45/-45/0/90]s', '[90/45/-45/0]s', '[0/90/45]'])(
    'of %s is where G reaches the toughness, pulled and compressed, with heat',
    (code) => {
      const stack = stackOf(graphite, code, 1e-4);
      const options = { temperatureChange: -60, toughness: 150 };
      const { interfaces } = edgeDelamination(stack, options);
      for (const [i, { single, pair }] of interfaces.entries()) {
        for (const [name, one] of [
          ['single', single],
          ['pair', pair],
        ] as const) {
          if (one === undefined) continue;
          const { tension, compression } = one.onset!;
          expect(tension).toBeGreaterThan(0);
          expect(compression).toBeLessThan(0);
          const at = (strain: number) => edgeDelamination(stack, { ...options, strain }).interfaces[i]![name]!.G;
          expectNear([at(tension), at(compression)], [150, 150], 1e-7);
        }
      }
    },
  );

  it('comes sooner in a laminate cooled from its cure than in one free of stress', () => {
    const onset = (temperatureChange: number) =>
      edgeDelamination(stack, { temperatureChange, toughness: 150 }).interfaces[2]!.single!.onset!.tension;
    expect(onset(-100)).toBeLessThan(onset(0));
  });

  it('is 0 with a warning where cooling alone is enough', () => {
    const { critical, notes } = edgeDelamination(stack, { temperatureChange: -150, toughness: 1e-3 });
    expect(critical!.onset).toEqual({ tension: 0, compression: 0 });
    expect(notes.at(-1)).toMatchObject({ level: 'warning' });
  });

  it('is not given without a toughness', () => {
    expect(edgeDelamination(stack, { strain: 1e-3 }).critical).not.toHaveProperty('onset');
  });
});

describe('the list of interfaces', () => {
  it('marks plies that are alike, 90 and -90 among them, and counts no release there', () => {
    const stack = stackOf(graphite, '[0/0/90/-90/45]', 1e-4);
    const { interfaces, notes, critical } = edgeDelamination(stack, { strain: 1e-3 });
    expect(interfaces.map(({ alike }) => alike)).toEqual([true, false, true, false]);
    expect(interfaces.map(({ single }) => single === undefined)).toEqual([true, false, true, false]);
    expect(interfaces.every(({ pair }) => pair === undefined)).toBe(true);
    expect(notes.map(({ text }) => text).join()).toContain('alike in laminate axes');
    expect(interfaces.map(({ below }) => below)).toEqual([1, 2, 3, 4]);
    expectNear(
      interfaces.map(({ z }) => z),
      [-1.5e-4, -0.5e-4, 0.5e-4, 1.5e-4],
      1e-9,
    );
    expect(interfaces[3]!.angles).toEqual([-90, 45]);
    expect(critical!.G).toBe(Math.max(...interfaces.map(({ single }) => single?.G ?? 0)));
  });

  it('says what its crack is, and how far from balanced its parts are', () => {
    const texts = (code: string) =>
      edgeDelamination(stackOf(graphite, code, 1e-4))
        .notes.map(({ text }) => text)
        .join();
    expect(texts('[0/90]s')).toContain('longer than a ply is thick');
    expect(texts('[0/90]s')).not.toContain('A16/A11');
    const { A } = stiffness(stackOf(graphite, '[30]', 1e-4));
    expect(texts('[30/-30]')).toContain(`A16/A11 up to ${(A[0][2]! / A[0][0]!).toPrecision(2)}`);
  });

  it('tells plies of one stiffness and another expansion apart', () => {
    const other = { ...graphite, expansion: { alpha1: 5e-6, alpha2: 22.5e-6 } };
    const stack = laminate([plyOf(graphite, 0, 1e-4), plyOf(other, 0, 1e-4)]);
    expect(edgeDelamination(stack).interfaces[0]!.alike).toBe(false);
  });

  it('has pairs in a symmetric laminate only, and none at its mid-plane', () => {
    const { interfaces } = edgeDelamination(stackOf(graphite, '[0/90/45]s', 1e-4));
    expect(interfaces.map(({ pair }) => pair !== undefined)).toEqual([true, true, false, true, true]);
    const thicker = stackOf(graphite, '[0/90/0]', 1e-4).plies;
    const uneven = laminate([thicker[0]!, thicker[1]!, { ...thicker[2]!, thickness: 2e-4 }]);
    expect(edgeDelamination(uneven).interfaces.every(({ pair }) => pair === undefined)).toBe(true);
  });

  it('is empty for one ply, without a critical interface', () => {
    const found = edgeDelamination(stackOf(graphite, '[0]', 1e-4), { strain: 1e-3 });
    expect(found.interfaces).toEqual([]);
    expect(found).not.toHaveProperty('critical');
    expect(found.midPlanePeel.sense).toBe('undecided');
  });

  it('names its sources', () => {
    const { sources } = edgeDelamination(stackOf(graphite, '[0/90]', 1e-4));
    expect(sources).toEqual(['obrien-1982', 'pagano-pipes-1971', 'selvage-2026-derivation']);
  });

  it('refuses values that cannot be and heat on plies without expansion', () => {
    const stack = stackOf(graphite, '[0/90]s', 1e-4);
    expect(problemCode(() => edgeDelamination(stack, { strain: Number.NaN }))).toBe('out-of-range');
    expect(problemCode(() => edgeDelamination(stack, { temperatureChange: Number.POSITIVE_INFINITY }))).toBe(
      'out-of-range',
    );
    for (const toughness of [0, -5, Number.NaN]) {
      expect(problemCode(() => edgeDelamination(stack, { toughness }))).toBe('out-of-range');
    }
    const bare = laminate(stack.plies.map(({ expansion: _, ...ply }) => ply));
    expect(problemCode(() => edgeDelamination(bare, { temperatureChange: -100 }))).toBe('not-computable');
    expect(edgeDelamination(bare, { strain: 1e-3 }).critical!.G).toBeGreaterThan(0);
    const bad = laminate([plyOf({ ...graphite, G12: -1e9 }, 0, 1e-3)]);
    expect(problemCode(() => edgeDelamination(bad))).toBe('not-admissible');
  });
});
