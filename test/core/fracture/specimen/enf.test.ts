import { describe, expect, it } from 'vitest';
import { type Arm, type EnfSpecimen, simulateEnf } from '../../../../packages/core/src/fracture/index.js';
import { openingPair, rootLength } from '../../../../packages/core/src/fracture/specimen/opening-pair.js';
import { slidingPair } from '../../../../packages/core/src/fracture/specimen/sliding-pair.js';
import { armOf, cloth, codesOf, expectNear, mm, row, rowsOf } from './support.js';

const arm = armOf(cloth);
const { h, E } = cloth;
const b = 20 * mm;
const half = 50 * mm;
const plain: EnfSpecimen = {
  arms: [arm, arm],
  width: b,
  span: 2 * half,
  overhang: 20 * mm,
  crackLength: 25 * mm,
  bondToughness: 1200,
  rows: [],
};
/** An arm that neither shears nor gives at its bond: the beam of text books. */
const stiff = (of = arm): Arm => ({ ...of, shearStiffness: 1e18 });

const onset = (specimen: EnfSpecimen) => {
  const { events } = simulateEnf(specimen);
  const first = events[0];
  if (first === undefined) return expect.fail('nothing happened');
  return first;
};
const complianceAt = (specimen: EnfSpecimen, a: number) => {
  const { displacement = 0, load = 1 } =
    simulateEnf({ ...specimen, crackLength: a, until: { displacement: 0.01 * mm } }).states.at(-1) ?? {};
  return displacement / load;
};

describe('an end-notched flexure specimen without rows', () => {
  it('of slender arms has the compliance (2 L³ + 3 a³)/(8 b E h³) (Russell & Street 1982, recalled)', () => {
    for (const a of [10 * mm, 25 * mm, 40 * mm]) {
      const wanted = (2 * half ** 3 + 3 * a ** 3) / (8 * b * E * h ** 3);
      expectNear(complianceAt({ ...plain, arms: [stiff(), stiff()] }, a), wanted, 1e-5);
    }
  });

  it('adds L/(2 b S) by shear, S that of both arms', () => {
    const bare = complianceAt({ ...plain, arms: [stiff(), stiff()] }, 25 * mm);
    // A bed that hardly gives leaves shear of the arms alone: 6/5 of P L/(2 b 2h G) over the whole thickness.
    const sheared = complianceAt(plain, 25 * mm) - bare;
    const byShear = (6 / 5) * (half / (2 * b * 2 * h * cloth.G));
    const chi = h * Math.sqrt(E / (48 * cloth.G));
    const byRoot = (3 * ((25 * mm + chi) ** 3 - (25 * mm) ** 3)) / (8 * b * E * h ** 3);
    // What remains is the bond that gives below the load and at its end.
    expect(sheared).toBeGreaterThan(byShear + byRoot - chi ** 3);
    expectNear(sheared, byShear + byRoot, 0.15);
  });

  it('grows at 9 P² (a + 1/ω)²/(16 b² E h³)', () => {
    const { load } = onset(plain);
    const root = h * Math.sqrt(E / (48 * cloth.G));
    expectNear((9 * load ** 2 * (25 * mm + root) ** 2) / (16 * b ** 2 * E * h ** 3), 1200, 1e-6);
  });

  it('loses compliance energy just as fast as the tip says: G = P²/(2 b) dC/da', () => {
    const slope = (complianceAt(plain, 30.01 * mm) - complianceAt(plain, 29.99 * mm)) / (0.02 * mm);
    const { load } = onset({ ...plain, crackLength: 30 * mm });
    expectNear((load ** 2 * slope) / (2 * b), 1200, 1e-5);
  });

  it('has a root correction of about 0.42 of that of opening (Wang & Williams 1992, recalled)', () => {
    for (const of of [cloth, { h, E: 130e9, G: 5e9, E3: 10e9 }, { h, E: 40e9, G: 4e9, E3: 10e9 }]) {
      const two = [armOf(of), armOf(of)] as const;
      const ratio = 1 / (slidingPair(two).decay * rootLength(openingPair(two)));
      expect(ratio).toBeGreaterThan(0.42 * 0.8);
      expect(ratio).toBeLessThan(0.42 * 1.25);
    }
  });

  it('jumps where a is below 0.693 half spans, to where energy no longer suffices, and is stable beyond (Carlsson, Gillespie & Pipes 1986)', () => {
    const arms = [stiff(), stiff()] as const;
    const short = simulateEnf({ ...plain, arms, crackLength: 0.5 * half });
    const [before, after] = [short.states[1], short.states[2]];
    if (before === undefined || after === undefined) return expect.fail('no states');
    // At one displacement G ~ Δ² a²/C²: from a0 to the other root of a/(2 L³ + 3 a³) = the same.
    const same = (a: number) => a / (2 * half ** 3 + 3 * a ** 3);
    expect(after.crackLength).toBeGreaterThan(0.8 * half);
    expectNear(same(after.crackLength), same(0.5 * half), 1e-3);
    expect(after.displacement / before.displacement).toBeLessThan(1.001);
    // Set free: ∫ (G - G0) b da at constant displacement, which is elastic energy lost less G0 b Δa.
    const C = (a: number) => (2 * half ** 3 + 3 * a ** 3) / (8 * b * E * h ** 3);
    const lost = (before.displacement ** 2 / 2) * (1 / C(0.5 * half) - 1 / C(after.crackLength));
    expectNear(after.released ?? 0, lost - 1200 * b * (after.crackLength - 0.5 * half), 0.01);
    for (const [share, jumps] of [
      [0.66, true],
      [0.72, false],
    ] as const) {
      const { states } = simulateEnf({ ...plain, arms, crackLength: share * half, until: { crackLength: 0.9 * half } });
      expect((states.at(-1)?.released ?? 0) > 0).toBe(jumps);
    }
  });

  it('under two loads grows at a constant load between them', () => {
    const four: EnfSpecimen = { ...plain, loadSpan: 60 * mm, crackLength: 35 * mm };
    const { states, events } = simulateEnf({ ...four, until: { crackLength: 60 * mm } });
    const grown = states.filter(({ crackLength }) => crackLength > 35 * mm && crackLength < 59 * mm);
    const pair = slidingPair([arm, arm]);
    for (const { load } of grown) {
      const moment = (load * 10 * mm) / b;
      expectNear((moment ** 2 / 2) * (1 / pair.D - 1 / pair.bonded), 1200, 1e-4);
    }
    expect(grown.length).toBeGreaterThan(5);
    expect(events.map(({ kind }) => kind)).toEqual(['bond']);
    expect(states.at(-1)?.released).toBeUndefined();
  });

  it('of unequal arms stores M²/(2 b²) (1/D - 1/D_bonded)', () => {
    const arms = [armOf({ ...cloth, h: 1 * mm }), armOf({ ...cloth, h: 3 * mm })] as const;
    const { load } = onset({ ...plain, arms });
    const { D, bonded, decay } = slidingPair(arms);
    // One plate 4 mm thick once bonded.
    expectNear(bonded, (E * (4 * mm) ** 3) / 12, 1e-12);
    expectNear(((load * (25 * mm + 1 / decay)) / (2 * b)) ** 2 * (1 / D - 1 / bonded), 2 * 1200, 1e-6);
  });

  it('with friction carries what rubbing takes from its tip', () => {
    const four: EnfSpecimen = { ...plain, loadSpan: 60 * mm, crackLength: 35 * mm, friction: 0.3 };
    const { load } = onset(four);
    const { B, H, D } = slidingPair([arm, arm]);
    // Each arm takes half of P/2 through the faces at the support and at the load: friction 0.3 (P/4 + P/4) in all.
    const pulled = (H * load * 10 * mm) / D - (0.3 * load * 0.5) / B;
    expectNear((B / 2) * (pulled / b) ** 2, 1200, 1e-6);
    const { resistance, states } = simulateEnf(four);
    expect(resistance[0]?.byLoad).toBeGreaterThan(1200);
    expect(states.at(-1)?.friction).toBeGreaterThan(0);
  });
});

describe('an end-notched flexure specimen with rows', () => {
  it('of ever closer rows takes G0 + N W once they have slid free, within 2 %', () => {
    const [F, u] = [60, 0.1 * mm];
    const curve = { opening: [0, 0.01 * mm, u], force: [0, F, 0] };
    const rows = Array.from({ length: 200 }, (_, i) => ({
      position: (20.25 + 0.5 * i) * mm,
      penetrations: 2,
      curve,
      failure: 'threadPullOut' as const,
    }));
    const long: EnfSpecimen = {
      ...plain,
      span: 200 * mm,
      loadSpan: 140 * mm,
      crackLength: 40 * mm,
      rows,
      until: { crackLength: 110 * mm },
    };
    const { states, zoneLength } = simulateEnf(long);
    const from = states.find(({ crackLength }) => crackLength > 90 * mm);
    const to = states.at(-1);
    expect(zoneLength).toBeLessThan(50 * mm);
    const spent = (of: typeof to) => (of?.work ?? 0) - (of?.elastic ?? 0);
    const G = (spent(to) - spent(from)) / (b * ((to?.crackLength ?? 0) - (from?.crackLength ?? 0)));
    expectNear(G, 1200 + ((2 / (0.5 * mm * b)) * F * u) / 2, 0.02);
  });

  it('holds more than without, and less load bends its arms through', () => {
    const bare = simulateEnf(plain);
    const held = simulateEnf({ ...plain, rows: rowsOf(10 * mm, 5 * mm, 16, 3) });
    expect(held.peakForce).toBeGreaterThan(1.05 * bare.peakForce);
    expect(held.verdict.first).toBe('threadAtAnchor');
  });

  it('breaks an arm at its strain: (M/D) h/2 behind the tip', () => {
    const weak = armOf(cloth, { tension: 0.004, compression: 0.003 });
    const { verdict, events } = simulateEnf({ ...plain, arms: [weak, weak], crackLength: 45 * mm });
    expect([verdict.first, verdict.next]).toEqual(['arm', 'bond']);
    const D = 2 * arm.bendingStiffness;
    const [tip, middle] = [
      ((events[0]?.load ?? 0) * 45 * mm) / (2 * b * D),
      ((events[0]?.load ?? 0) * half) / (2 * b * 4 * D),
    ];
    expectNear(Math.max((tip * h) / 2, middle * h), 0.003, 1e-6);
  });
});

describe('an end-notched flexure specimen that is none', () => {
  it.each([
    ['span', { span: 0 }],
    ['overhang', { overhang: -1 }],
    ['load span', { loadSpan: 0.1 }],
    ['friction', { friction: -0.1 }],
    ['friction that is no number', { friction: Number.NaN }],
    ['crack beyond the load', { crackLength: 51 * mm }],
    ['width', { width: 0 }],
    ['toughness', { bondToughness: 0 }],
    ['row outside', { rows: [row(0.13)] }],
    ['refinement', { refine: 1000 }],
  ])('is refused for its %s', (_, change) => {
    expect(codesOf(() => simulateEnf({ ...plain, ...change }))).toEqual(['out-of-range']);
  });

  it('has no equilibrium with a row stiff beyond all numbers', () => {
    expect(
      codesOf(() =>
        simulateEnf({
          ...plain,
          rows: [{ ...row(20 * mm), curve: { opening: [0, 1e-307, 1], force: [0, 1e10, 1e9] } }],
        }),
      ),
    ).toEqual(['not-computable']);
  });

  it('is refused for a row that drops where it has become stiffer again, but not down to what it was', () => {
    const curve = { opening: [0, 1e-4, 2e-4, 3e-4, 3e-4, 5e-4], force: [0, 10, 2, 9, 7, 0] };
    expect(codesOf(() => simulateEnf({ ...plain, rows: [{ ...row(60 * mm), curve }] }))).toEqual(['not-admissible']);
  });
});
