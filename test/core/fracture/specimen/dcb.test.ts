import { Matrix, solve } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import { type DcbSpecimen, simulateDcb } from '../../../../packages/core/src/fracture/index.js';
import { openingPair, rootLength } from '../../../../packages/core/src/fracture/specimen/opening-pair.js';
import { armOf, brittle, cloth, codesOf, expectNear, mm, type Plain, row, rowsOf } from './support.js';

const arm = armOf(cloth);
const plain: DcbSpecimen = {
  arms: [arm, arm],
  width: 20 * mm,
  length: 150 * mm,
  crackLength: 50 * mm,
  bondToughness: 400,
  rows: [],
  until: { crackLength: 100 * mm },
};
const grown = (specimen: DcbSpecimen) =>
  simulateDcb(specimen).states.filter(({ crackLength }) => crackLength > specimen.crackLength);

/** Opening per load of two plain-element arms on springs, from the printed beam and bed equations, with no part of the library. */
function compliance({ h, E, G, E3 }: Plain, b: number, a: number, length: number, count: number): number {
  // One arm against the mid-plane: k = 2 E3 b/h.
  const l = length / count;
  const [EI, S, k] = [(E * b * h ** 3) / 12, (5 / 6) * G * b * h, (2 * E3 * b) / h];
  const n = 2 * (count + 1);
  const K = Matrix.zeros(n, n);
  const shear = [-1 / l, -0.5, 1 / l, -0.5];
  const bend = [0, -1 / l, 0, 1 / l];
  for (let i = 0; i < count; i++) {
    // With l²/12 EI added to the shear flexibility a plain element bends exactly under end forces.
    const stiff = 1 / (1 / S + (l * l) / (12 * EI));
    const bed = (i + 0.5) * l > a ? (k * l) / 2 : 0;
    for (let p = 0; p < 4; p++) {
      for (let q = 0; q < 4; q++) {
        const value =
          stiff * l * shear[p]! * shear[q]! + EI * l * bend[p]! * bend[q]! + (p === q && p % 2 === 0 ? bed : 0);
        K.set(2 * i + p, 2 * i + q, K.get(2 * i + p, 2 * i + q) + value);
      }
    }
  }
  const f = Matrix.zeros(n, 1);
  f.set(0, 0, 1);
  return 2 * solve(K, f).get(0, 0);
}

describe('a double cantilever beam without rows', () => {
  it('has the root correction 0.64 h of an isotropic beam on its bed (Kanninen 1973, recalled)', () => {
    const isotropic = armOf({ h: 3 * mm, E: 70e9, G: 1e20, E3: 70e9 });
    expectNear(rootLength(openingPair([isotropic, isotropic])) / (3 * mm), 0.64, 0.002);
  });

  it('grows at 12 P² (a + χ)²/(b² E h³), within 1 % of the printed form', () => {
    const isotropic = armOf({ h: 3 * mm, E: 70e9, G: 1e20, E3: 70e9 });
    for (const { load, crackLength } of grown({ ...plain, arms: [isotropic, isotropic] }).slice(0, -1)) {
      const G =
        (12 * load ** 2 * crackLength ** 2 * (1 + (0.64 * 3 * mm) / crackLength) ** 2) /
        (0.02 ** 2 * 70e9 * 0.003 ** 3);
      expectNear(G, 400, 0.01);
    }
  });

  it('is as compliant as plain finite elements tend to, with the square of their length', () => {
    const [first] = simulateDcb({ ...plain, until: { displacement: 1 * mm } }).states.slice(-1);
    const exact = (first?.displacement ?? 0) / (first?.load ?? 1);
    const errors = [60, 120, 240].map((count) => compliance(cloth, 20 * mm, 50 * mm, 75 * mm, count) / exact - 1);
    expect(Math.abs(errors[2]!)).toBeLessThan(2e-3);
    expect(Math.log2(errors[0]! / errors[1]!)).toBeCloseTo(2, 0);
    expect(Math.log2(errors[1]! / errors[2]!)).toBeCloseTo(2, 0);
  });

  it('loses compliance energy just as fast as the tip says: G = P²/(2 b) dC/da', () => {
    const at = (a: number) => {
      const { displacement = 0, load = 1 } =
        simulateDcb({ ...plain, crackLength: a, until: { displacement: 1 * mm } }).states.at(-1) ?? {};
      return displacement / load;
    };
    const slope = (at(60.01 * mm) - at(59.99 * mm)) / (0.02 * mm);
    const onset = simulateDcb({ ...plain, crackLength: 60 * mm }).events[0];
    expectNear(((onset?.load ?? 0) ** 2 * slope) / (2 * 0.02), 400, 1e-5);
  });

  it('gives its toughness back by load and by area', () => {
    for (const { byLoad, byArea } of simulateDcb(plain).resistance) {
      expectNear(byLoad, 400, 1e-5);
      expectNear(byArea, 400, 1e-3);
    }
  });

  it('of unequal arms adds their compliances', () => {
    const [thin, thick] = [armOf({ ...cloth, h: 1 * mm }), armOf({ ...cloth, h: 3 * mm })];
    const pair = openingPair([thin, thick]);
    const onset = simulateDcb({ ...plain, arms: [thin, thick] }).events[0];
    const moment = ((onset?.load ?? 0) * (50 * mm + rootLength(pair))) / 0.02;
    // Each arm stores M²/(2 D) per length.
    expectNear((moment ** 2 / 2) * (1 / thin.bendingStiffness + 1 / thick.bendingStiffness), 400, 1e-7);
  });

  it('converges with the square of its steps', () => {
    const workAt = (refine: number) => {
      const { states } = simulateDcb({ ...plain, refine });
      const { work = 0, load = 0, displacement = 0, crackLength = 0 } = states.at(-2) ?? {};
      // Every state lies on the exact line of balance, so only the sum of work has an error.
      return work / ((load * displacement) / 2 + 400 * 0.02 * (crackLength - 50 * mm)) - 1;
    };
    const errors = [1, 2, 4].map(workAt);
    expect(Math.abs(errors[0]!)).toBeLessThan(1e-4);
    for (const i of [0, 1]) {
      const order = Math.log2(errors[i]! / errors[i + 1]!);
      expect(order).toBeGreaterThan(1.7);
      expect(order).toBeLessThan(2.4);
    }
  });
});

describe('a double cantilever beam with rows', () => {
  it('of ever closer rows takes G0 + N W to grow, within 2 %', () => {
    // Pull-out: W = F u/2 of each of 10 penetrations per 10 mm² of front.
    const [spacing, width, F, u] = [0.5 * mm, 20 * mm, 40, 0.4 * mm];
    const curve = { opening: [0, 0.02 * mm, u], force: [0, F, 0] };
    const rows = Array.from({ length: 180 }, (_, i) => ({
      position: (50.25 + 0.5 * i) * mm,
      penetrations: 2,
      curve,
      failure: 'threadPullOut' as const,
    }));
    const { states, zoneLength } = simulateDcb({ ...plain, rows, until: { crackLength: 110 * mm } });
    const from = states.find(({ crackLength }) => crackLength > 70 * mm);
    const to = states.at(-1);
    expect(zoneLength).toBeLessThan(20 * mm);
    const spent = (of: typeof to) => (of?.work ?? 0) - (of?.elastic ?? 0);
    const G = (spent(to) - spent(from)) / (width * ((to?.crackLength ?? 0) - (from?.crackLength ?? 0)));
    const N = 2 / (spacing * width);
    expectNear(G, 400 + (N * F * u) / 2, 0.02);
  });

  it('breaks them one after the other, nearest first, and jumps', () => {
    const { events, states } = simulateDcb({ ...plain, rows: rowsOf(52 * mm, 5 * mm, 18) });
    const order = events.flatMap((event) => (event.row === undefined ? [] : [event.row]));
    expect(order.length).toBeGreaterThan(5);
    expect(order).toEqual(order.map((_, i) => i));
    expect(states.at(-1)?.released).toBeGreaterThan(0);
    expect(events[0]?.kind).toBe('bond');
  });

  it('carries more by load before a jump than growth takes on average', () => {
    const { resistance } = simulateDcb({ ...plain, rows: rowsOf(52 * mm, 5 * mm, 18) });
    const byLoad = Math.max(...resistance.map((point) => point.byLoad));
    const steady = 400 + (5 / (5 * mm * 20 * mm)) * (4e-3 + 20e-3 + 15e-3);
    expect(byLoad / steady).toBeGreaterThan(1.2);
    expect(byLoad / steady).toBeLessThan(4);
  });

  it('measures the bridged zone from the farthest row that holds to the tip', () => {
    const strong = { ...row(20 * mm), failure: 'threadAtCrack' as const, curve: { opening: [0, 1], force: [0, 1] } };
    expectNear(simulateDcb({ ...plain, rows: [strong] }).zoneLength, 80 * mm, 1e-12);
    expect(simulateDcb(plain).zoneLength).toBe(0);
  });

  it('does not mind the order in which rows are given, and keeps their numbers', () => {
    const rows = rowsOf(52 * mm, 6 * mm, 4);
    const forward = simulateDcb({ ...plain, rows });
    const backward = simulateDcb({ ...plain, rows: rows.toReversed() });
    expect(backward.states).toEqual(forward.states);
    expect(backward.events.map((event) => event.row)).toEqual(
      forward.events.map(({ row: at }) => (at === undefined ? at : 3 - at)),
    );
  });

  it('takes two rows at one place as one', () => {
    const two = simulateDcb({ ...plain, rows: [row(55 * mm, 2), row(55 * mm, 3)] });
    const one = simulateDcb({ ...plain, rows: [row(55 * mm, 5)] });
    expectNear(two.peakForce, one.peakForce, 1e-9);
  });
});

describe('the verdict of a double cantilever beam', () => {
  it('is the bond alone where nothing else can give way', () => {
    const { verdict, events } = simulateDcb(plain);
    expect(verdict).toEqual({ first: 'bond', load: events[0]?.load });
  });

  it('names the arm next, by the load at its breaking strain', () => {
    const limit = 0.012;
    const weak = armOf(cloth, { tension: 0.015, compression: limit });
    const { verdict, events } = simulateDcb({ ...plain, arms: [weak, weak] });
    expect([verdict.first, verdict.next]).toEqual(['bond', 'arm']);
    // Strain P a h/(2 D b).
    const load = (limit * 2 * weak.bendingStiffness * 0.02) / (50 * mm * 2 * mm);
    expectNear(verdict.margin ?? 0, load / (events[0]?.load ?? 1), 1e-6);
  });

  it('is the arm where it breaks before the bond, and ends the test', () => {
    const weak = armOf(cloth, { tension: 0.002, compression: 0.003 });
    const { verdict, events, states } = simulateDcb({ ...plain, arms: [weak, weak] });
    expect([verdict.first, verdict.next]).toEqual(['arm', 'bond']);
    expect(events.map(({ kind }) => kind)).toEqual(['arm']);
    expectNear(states.at(-1)?.armStrain ?? 0, 0.002, 1e-6);
    expect(verdict.margin).toBeGreaterThan(1);
  });

  it('is the rows where nothing else breaks, at the load that the first of them took', () => {
    const { verdict, events, peakForce } = simulateDcb({ ...plain, rows: rowsOf(52 * mm, 5 * mm, 10) });
    expect(verdict).toEqual({ first: 'threadAtAnchor', load: peakForce });
    expect(events.find(({ row }) => row === 0)?.load).toBeLessThanOrEqual(peakForce);
  });

  it('is the rows even where one far behind the tip breaks before the bond grows', () => {
    const { verdict, events } = simulateDcb({ ...plain, bondToughness: 1500, rows: [brittle(40 * mm, 2e5, 10)] });
    expect([verdict.first, verdict.next]).toEqual(['threadAtCrack', undefined]);
    expect(verdict.load).toBe(events[0]?.load);
    expect(events[0]?.row).toBe(0);
  });

  it('names the stronger of two kinds of rows', () => {
    const rows = [...rowsOf(52 * mm, 5 * mm, 4), brittle(75 * mm, 2e5, 900)];
    expect(simulateDcb({ ...plain, rows }).verdict.first).toBe('threadAtCrack');
  });

  it('names the arm behind the rows, by the load at which threads that hold break it', () => {
    const strong = armOf(cloth, { tension: 0.02, compression: 0.02 });
    const rows = rowsOf(52 * mm, 5 * mm, 10);
    const { verdict } = simulateDcb({ ...plain, arms: [strong, strong], rows });
    expect([verdict.first, verdict.next]).toEqual(['threadAtAnchor', 'arm']);
    // No strain at a load is larger than that of the bare lever: P a h/(2 D b), a beyond the first row.
    const lever = (0.02 * 2 * strong.bendingStiffness * 0.02) / (2 * mm * 52 * mm);
    expect(verdict.load * (verdict.margin ?? 0)).toBeLessThan(lever);
    expect(verdict.margin).toBeGreaterThan(1);
  });

  it('is the arm that breaks on the way, overloaded by the rows, which would be next', () => {
    const weak = armOf(cloth, { tension: 0.006, compression: 0.006 });
    const { verdict, events } = simulateDcb({ ...plain, arms: [weak, weak], rows: rowsOf(52 * mm, 5 * mm, 18) });
    expect([verdict.first, verdict.next]).toEqual(['arm', 'threadAtAnchor']);
    expect(events.at(-1)?.kind).toBe('arm');
    const endless = simulateDcb({ ...plain, rows: rowsOf(52 * mm, 5 * mm, 18) });
    const first = endless.events.find(({ row }) => row !== undefined)?.load ?? 0;
    expectNear((verdict.margin ?? 0) * verdict.load, first, 1e-3);
    const alone = simulateDcb({ ...plain, arms: [weak, weak] });
    expect(alone.events.map(({ kind }) => kind)).toEqual(['bond']);
  });

  it('of a test that ends before anything does is what would come first', () => {
    const { verdict, events } = simulateDcb({ ...plain, until: { displacement: 1 * mm } });
    expect(events).toEqual([]);
    expect(verdict.first).toBe('bond');
  });
});

describe('a double cantilever beam that is none', () => {
  it.each([
    ['width', { width: 0 }],
    ['length', { length: Number.NaN }],
    ['toughness', { bondToughness: -1 }],
    ['crack beyond the bond', { crackLength: 0.2 }],
    ['no room for growth', { crackLength: 149 * mm }],
    ['an end before the start', { until: { crackLength: 40 * mm } }],
    ['displacement at the end', { until: { displacement: -1 } }],
    ['refinement', { refine: 0 }],
    ['row outside', { rows: [row(0.2)] }],
    ['row on the load line', { rows: [row(0)] }],
    ['penetrations', { rows: [row(60 * mm, 0)] }],
    ['thickness', { arms: [arm, { ...arm, thickness: 0 }] as const }],
    ['bending stiffness', { arms: [{ ...arm, bendingStiffness: -1 }, arm] as const }],
    ['shear stiffness', { arms: [{ ...arm, shearStiffness: 0 }, arm] as const }],
    ['axial stiffness', { arms: [{ ...arm, axialStiffness: 0 }, arm] as const }],
    ['E3', { arms: [{ ...arm, E3: Number.POSITIVE_INFINITY }, arm] as const }],
    ['failure strain', { arms: [{ ...arm, failureStrain: { tension: 0, compression: 0.01 } }, arm] as const }],
  ])('is refused for its %s', (_, change) => {
    expect(codesOf(() => simulateDcb({ ...plain, ...change }))).toEqual(['out-of-range']);
  });

  it('has no equilibrium with a row stiff beyond all numbers', () => {
    expect(
      codesOf(() =>
        simulateDcb({
          ...plain,
          rows: [{ ...row(60 * mm), curve: { opening: [0, 1e-307, 1], force: [0, 1e10, 1e9] } }],
        }),
      ),
    ).toEqual(['not-computable']);
  });

  it('is refused for a row that drops where it has become stiffer again, but not down to what it was', () => {
    const curve = { opening: [0, 1e-4, 2e-4, 3e-4, 3e-4, 5e-4], force: [0, 10, 2, 9, 7, 0] };
    expect(codesOf(() => simulateDcb({ ...plain, rows: [{ ...row(60 * mm), curve }] }))).toEqual(['not-admissible']);
  });

  it('is warned of where it bends too far for linear beams', () => {
    const { notes } = simulateDcb({ ...plain, rows: rowsOf(52 * mm, 5 * mm, 18) });
    expect(notes.filter(({ level }) => level === 'warning').map(({ text }) => text.slice(0, 20))).toEqual([
      'Displacement reaches',
    ]);
  });
});
