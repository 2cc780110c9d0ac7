import { describe, expect, it } from 'vitest';
import {
  type BridgingSide,
  bridgingLaw,
  bridgingModel,
  givingWay,
  lawOf,
  openingWork,
  stitchType,
  withStrands,
} from '../../../../packages/core/src/stitch/index.js';
import { expectNear, mm } from '../support.js';
import { aramid, modelOf, penetration, plain, side } from './support.js';

/** Half the opening under a force by the shear-lag equations, stepped from the crack plane: dT/dx = -q, du/dx = -T/EA, until T or the length ends. */
function steppedSide({ axialStiffness, slipResistance, depth, anchorCompliance }: BridgingSide, force: number): number {
  const steps = 40_000;
  const dx = depth / steps;
  let [tension, out] = [force, 0];
  for (let i = 0; i < steps && tension > 0; i++) {
    const next = Math.max(0, tension - slipResistance * dx);
    out += (((tension + next) / 2) * dx) / axialStiffness;
    tension = next;
  }
  return out + anchorCompliance * tension;
}

describe('the law of one penetration that opens', () => {
  it('follows the shear-lag equations stepped through by themselves, below and above full slip, with unequal sides and a yielding anchor', () => {
    const cases = [
      modelOf(),
      modelOf({ depth: 0.4 * mm }, { depth: 2.6 * mm }),
      modelOf({ anchorCompliance: 4e-7 }, { axialStiffness: 4000, slipResistance: 6e3 }),
    ];
    for (const model of cases) {
      const { opening, force, peak } = lawOf(model);
      const rising = force.indexOf(peak.force);
      for (let i = 1; i <= rising; i += 7) {
        const w = steppedSide(model.sides[0], force[i]!) + steppedSide(model.sides[1], force[i]!);
        expectNear(opening[i]!, w, 1e-4);
      }
    }
  });

  it('has an area that is the closed-form work to 1e-4, whatever gives way', () => {
    const models = [
      modelOf(),
      modelOf({ depth: 0.2 * mm }, { depth: 2.8 * mm }),
      modelOf({}, {}, { crackStrength: 5 }),
      modelOf({ slipResistance: 0 }, { slipResistance: 0 }),
      modelOf({ anchorStrength: 0 }, { depth: 5 * mm }),
      modelOf({ anchorCompliance: 1e-6 }, {}, { siteScatter: 0.15 }),
    ];
    for (const model of models) expectNear(lawOf(model).work, openingWork(model), 1e-4);
  });

  it('is stretch and rupture alone without friction: peak at the anchor strength, work F^2 h/EA', () => {
    const law = lawOf(modelOf({ slipResistance: 0 }, { slipResistance: 0 }));
    expectNear(law.peak.force, side.anchorStrength);
    expectNear(law.peak.opening, (2 * side.anchorStrength * side.depth) / side.axialStiffness);
    expectNear(law.work, (side.anchorStrength ** 2 * side.depth) / side.axialStiffness);
    expect(law.failure).toBe('threadAtAnchor');
    expect(law.force.at(-1)).toBe(0);
  });

  it('never reaches its anchors under very high friction: w = F^2/(EA q), rupture in the plane of the crack, work 2 F^3/(3 EA q)', () => {
    const q = 1e6;
    const law = lawOf(modelOf({ slipResistance: q }, { slipResistance: q }));
    expect(law.failure).toBe('threadAtCrack');
    expectNear(law.peak.force, 210);
    expectNear(law.peak.opening, 210 ** 2 / (side.axialStiffness * q));
    expectNear(law.work, (2 * 210 ** 3) / (3 * side.axialStiffness * q), 1e-4);
    expect(law.force.at(-1)).toBe(0);
  });

  it('of a stiff rod without anchors is the closed form of z-pins, N W = 2 c tau h^2/d', () => {
    const [d, tau, h, N] = [0.28 * mm, 15e6, 1.5 * mm, 3e5];
    const rod = {
      depth: h,
      slipResistance: Math.PI * d * tau,
      axialStiffness: 1e12,
      anchorStrength: 0,
    };
    const law = lawOf(modelOf(rod, rod, { crackStrength: 1e4, siteScatter: 0.15 }));
    const c = (N * Math.PI * d ** 2) / 4;
    expectNear(N * law.work, (2 * c * tau * h ** 2) / d, 1e-6);
    expect(law.failure).toBe('threadPullOut');
    expectNear(law.opening.at(-1)!, h, 1e-6);
  });

  it('pulls the shorter of two unanchored legs out', () => {
    const law = lawOf(modelOf({ anchorStrength: 0, depth: 1 * mm }, { anchorStrength: 0, depth: 2 * mm }));
    expectNear(law.peak.force, side.slipResistance * 1 * mm);
    expectNear(law.opening.at(-1)!, law.peak.opening + 1 * mm);
    expect(law.failure).toBe('threadPullOut');
  });

  it('scales: pull-out with leg diameter and the square of depth, frictionless stretch with force, strain and depth', () => {
    const pin = (d: number, h: number) => {
      const leg = { depth: h, slipResistance: d * 1e8, anchorStrength: 0, axialStiffness: 1e12 };
      return openingWork(modelOf(leg, leg));
    };
    expectNear(pin(2e-4, 2e-3) / pin(1e-4, 1e-3), 8, 1e-6);
    const stretch = (changes: Partial<BridgingSide>) =>
      openingWork(modelOf({ slipResistance: 0, ...changes }, { slipResistance: 0, ...changes }));
    expectNear(stretch({ depth: 3 * mm }) / stretch({}), 2);
    expectNear(stretch({ axialStiffness: 15_000 }) / stretch({}), 0.5);
    expectNear(stretch({ anchorStrength: 75 }) / stretch({}), 0.25);
  });

  it('loses pull-out work smoothly as the crack plane becomes the weaker site, and abruptly only without scatter', () => {
    const at = (strength: number, siteScatter: number) =>
      openingWork(modelOf({}, {}, { crackStrength: strength, siteScatter }));
    const anchor = side.anchorStrength + side.slipResistance * side.depth;
    const [below, above] = [anchor * (1 - 1e-6), anchor * (1 + 1e-6)];
    expect(Math.abs(at(below, 0.15) / at(above, 0.15) - 1)).toBeLessThan(1e-4);
    expect(at(above, 0) - at(below, 0)).toBeGreaterThan(0.4 * side.slipResistance * side.depth ** 2);
    // Far from the switch scatter changes nothing.
    expectNear(at(4 * anchor, 0.15), at(4 * anchor, 0), 1e-4);
    let last = at(0.5 * anchor, 0.15);
    for (let strength = 0.5; strength <= 2; strength += 0.01) {
      const work = at(strength * anchor, 0.15);
      expect(Math.abs(work - last)).toBeLessThan(0.06 * last);
      last = work;
    }
  });
});

describe('sites that compete', () => {
  it('give way in the shares of the weakest of Weibull strengths with the given coefficient of variation', () => {
    const model = modelOf({ anchorStrength: 180 }, { anchorStrength: 200 }, { crackStrength: 190, siteScatter: 0.15 });
    const { force, failure, pullOut } = givingWay(model);
    expect([force, failure]).toEqual([190, 'threadAtCrack']);
    // Weibull strengths of exponent m by their quantiles: their scatter, and how often each of the three is the least.
    const limits = [190, 180 + 18, 200 + 18];
    const m = Math.log(pullOut[0].share / pullOut[1].share) / Math.log(218 / 198);
    const n = 20_000;
    const draws = Array.from({ length: n }, (_, i) => (-Math.log((i + 0.5) / n)) ** (1 / m));
    const mean = draws.reduce((sum, x) => sum + x, 0) / n;
    const spread = Math.sqrt(draws.reduce((sum, x) => sum + (x - mean) ** 2, 0) / n) / mean;
    expectNear(spread, 0.15, 0.01);
    const weights = limits.map((limit) => limit ** -m);
    const sum = weights[0]! + weights[1]! + weights[2]!;
    expectNear(pullOut[0].share, weights[1]! / sum, 1e-9);
    expectNear(pullOut[1].share, weights[2]! / sum, 1e-9);
  });

  it('pull out with no more friction than the force at which they gave way', () => {
    const { pullOut, force } = givingWay(modelOf({ slipResistance: 2e5 }, {}, { siteScatter: 0.3 }));
    expectNear(pullOut[0].resistance, force / side.depth);
    expect(pullOut[1].resistance).toBe(side.slipResistance);
  });
});

describe('a penetration', () => {
  it('has the stiffness and strength of its legs and the perimeter of a cord around them', () => {
    const { model, notes } = bridgingModel(penetration({ underThread: aramid }));
    const d = Math.sqrt((4 * 75e-6) / (Math.PI * 1440 * 0.65));
    for (const one of model.sides) {
      expectNear(one.axialStiffness, 2 * 75e-6 * 50e6);
      expectNear(one.slipResistance, 7e6 * (Math.PI + 2) * d);
      expectNear(one.lateralResistance, 200e6 * 0.92 * Math.SQRT2 * d);
      expectNear(one.anchorStrength, 0.6 * 2 * 75e-6 * 1.7e6);
      expect(one.depth).toBe(1.5 * mm);
    }
    expectNear(model.crackStrength, 0.85 * 255);
    expect(notes).toEqual([]);
  });

  it('of a doubled thread has four legs', () => {
    const single = bridgingModel(penetration()).model;
    const doubled = bridgingModel(penetration({ type: withStrands(stitchType('301-modified'), 2) })).model;
    expectNear(doubled.crackStrength, 2 * single.crackStrength);
    expectNear(doubled.sides[0].slipResistance / single.sides[0].slipResistance, (Math.PI + 6) / (Math.PI + 2));
  });

  it('of two threads side by side breaks when the first of them does', () => {
    const polyester = { name: 'polyester', linearDensity: 75e-6, density: 1380, tenacity: 0.65e6, modulus: 6e6 };
    const { model } = bridgingModel(penetration({ type: stitchType('saddle'), underThread: polyester }));
    const strain = 1.7 / 50;
    expectNear(model.crackStrength, 0.85 * strain * 75e-6 * (50e6 + 6e6));
  });

  it('of a balanced lockstitch crosses the thread of the side where the crack lies, between face and lock', () => {
    const polyester = { name: 'polyester', linearDensity: 40e-6, density: 1380, tenacity: 0.65e6, modulus: 6e6 };
    const at = (crackDepth: number) =>
      bridgingModel(penetration({ type: stitchType(301), underThread: polyester, crackDepth })).model;
    const upper = at(0.5 * mm);
    expect(upper.sides.map((one) => Math.round(one.axialStiffness))).toEqual([7500, 7500]);
    expectNear(upper.sides[0].depth, 0.5 * mm);
    expectNear(upper.sides[1].depth, 1 * mm);
    const lower = at(2.2 * mm);
    expect(lower.sides.map((one) => Math.round(one.axialStiffness))).toEqual([480, 480]);
    expectNear(lower.sides[0].depth, 0.7 * mm);
    expectNear(lower.sides[1].depth, 0.8 * mm);
  });

  it('with its lock in the plane of the crack has a thread of its own on each side and breaks at the lock', () => {
    const polyester = { name: 'polyester', linearDensity: 40e-6, density: 1380, tenacity: 0.65e6, modulus: 6e6 };
    const { model, notes } = bridgingModel(penetration({ type: stitchType(301), underThread: polyester }));
    expect(model.sides.map((one) => Math.round(one.axialStiffness))).toEqual([7500, 480]);
    expectNear(model.crackStrength, 0.6 * 2 * 40e-6 * 0.65e6);
    expect(notes.map((note) => note.text)).toContainEqual(expect.stringContaining('lock lies in the plane'));
    // In the plane within one diameter of the thicker leg.
    const d = Math.sqrt((4 * 75e-6) / (Math.PI * 1440 * 0.65));
    const locked = (away: number) => {
      const crackDepth = 1.5 * mm - away * d;
      const found = bridgingModel(penetration({ type: stitchType(301), underThread: polyester, crackDepth }));
      return found.notes.length > 0;
    };
    expect([0.995, 1.005, -0.995, -1.005].map(locked)).toEqual([true, false, true, false]);
  });

  it('opens further when its surface bends sink in, by the given share of a diameter at the breaking force, with the same peak', () => {
    const stiff = bridgingLaw(penetration());
    const soft = bridgingLaw(penetration({ parameters: { ...plain, beddingIn: 0.5 } }));
    const d = Math.sqrt((4 * 75e-6) / (Math.PI * 1440 * 0.65));
    expectNear(soft.peak.force, stiff.peak.force);
    expectNear(soft.peak.opening - stiff.peak.opening, 2 * 0.5 * d);
  });

  it('says which parameters it assumed, and nothing when all are given', () => {
    const bare = { type: stitchType('301-modified'), needleThread: aramid, underThread: aramid, thickness: 3 * mm };
    const assumed = bridgingLaw(bare).notes.filter((note) => note.level === 'assumption');
    expect(assumed).toHaveLength(1);
    expect(assumed[0]?.text).toContain('friction 7 MPa');
    expect(bridgingLaw({ ...bare, parameters: plain }).notes).toEqual([]);
    const packed = { ...aramid, packing: 0.6 };
    const [note] = bridgingLaw({ ...bare, needleThread: packed, underThread: packed }).notes;
    expect(note?.text).not.toContain('packing');
  });
});
