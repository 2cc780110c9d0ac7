import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type BridgingModel,
  type BridgingSide,
  bridgingLaw,
  lawOf,
  openingWork,
  stitchType,
  stitchTypeIds,
} from '../../../../packages/core/src/stitch/index.js';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const oneSide: fc.Arbitrary<BridgingSide> = fc.record({
  depth: between(1e-4, 1e-2),
  axialStiffness: between(200, 5e4),
  slipResistance: between(10, 1e5),
  lateralResistance: between(1e5, 6e5),
  anchorStrength: fc.oneof(fc.constant(0), between(1, 1000)),
  anchorCompliance: fc.oneof(fc.constant(0), between(0, 1e-5)),
});
const anyModel: fc.Arbitrary<BridgingModel> = fc.record({
  sides: fc.tuple(oneSide, oneSide),
  crackStrength: between(1, 2000),
  siteScatter: fc.oneof(fc.constant(0), between(0.02, 0.5)),
});
const thread = fc.record({
  linearDensity: between(10e-6, 300e-6),
  density: between(900, 2600),
  tenacity: between(0.3e6, 3e6),
  modulus: between(2e6, 130e6),
});

function expectSound(law: ReturnType<typeof lawOf>): void {
  expect(law.opening[0]).toBe(0);
  for (const [i, w] of law.opening.entries()) {
    expect(Number.isFinite(w) && w >= (law.opening[i - 1] ?? 0)).toBe(true);
    const F = law.force[i]!;
    expect(Number.isFinite(F) && F >= 0 && F <= law.peak.force * (1 + 1e-9)).toBe(true);
  }
  expect(law.work).toBeGreaterThan(0);
  expect(Number.isFinite(law.work)).toBe(true);
}

describe('every bridging law', () => {
  it('is finite, starts at rest, opens forward, never pushes, and its area is the closed form', () => {
    fc.assert(
      fc.property(anyModel, (model) => {
        const law = lawOf(model);
        expectSound(law);
        const work = openingWork(model);
        expect(Math.abs(law.work / work - 1)).toBeLessThanOrEqual(1e-4);
        expect(law.force.at(-1)).toBeCloseTo(0, 9);
      }),
    );
  });

  it('is as sound along any path', () => {
    fc.assert(
      fc.property(anyModel, between(0, 90), (model, angle) => {
        const law = lawOf(model, { angle });
        expectSound(law);
        expect(law.failure).toBe(lawOf(model).failure);
      }),
      { numRuns: 60 },
    );
  });

  it('peaks no lower with more friction, a stronger plane or stronger anchors, and with a stiffer thread peaks earlier', () => {
    fc.assert(
      fc.property(anyModel, between(1, 4), (model, k) => {
        const all = (change: (one: BridgingSide) => BridgingSide): BridgingModel => ({
          ...model,
          sides: [change(model.sides[0]), change(model.sides[1])],
        });
        const { peak } = lawOf(model);
        const least = peak.force * (1 - 1e-12);
        expect(
          lawOf(all((one) => ({ ...one, slipResistance: k * one.slipResistance }))).peak.force,
        ).toBeGreaterThanOrEqual(least);
        expect(
          lawOf(all((one) => ({ ...one, anchorStrength: k * one.anchorStrength }))).peak.force,
        ).toBeGreaterThanOrEqual(least);
        expect(lawOf({ ...model, crackStrength: k * model.crackStrength }).peak.force).toBeGreaterThanOrEqual(least);
        const stiffer = lawOf(all((one) => ({ ...one, axialStiffness: k * one.axialStiffness })));
        expect(stiffer.peak.opening).toBeLessThanOrEqual(peak.opening * (1 + 1e-12));
      }),
    );
  });

  it('does not depend on which side is called the first', () => {
    fc.assert(
      fc.property(anyModel, (model) => {
        const turned = lawOf({ ...model, sides: [model.sides[1], model.sides[0]] });
        const law = lawOf(model);
        expect(Math.abs(turned.work / law.work - 1)).toBeLessThan(1e-9);
        expect(turned.peak.force).toBe(law.peak.force);
      }),
    );
  });

  it('holds of any thread, stitch type, thickness and crack plane, and grows with the number of like threads', () => {
    fc.assert(
      fc.property(
        thread,
        fc.constantFrom(...stitchTypeIds),
        between(0.5e-3, 8e-3),
        between(0.02, 0.98),
        (values, id, thickness, at) => {
          const needleThread = { name: 'some thread', ...values };
          const input = { type: stitchType(id), needleThread, thickness, crackDepth: at * thickness };
          const law = bridgingLaw(input);
          expectSound(law);
          const strong = bridgingLaw({ ...input, needleThread: { ...needleThread, tenacity: 1.5 * values.tenacity } });
          expect(strong.peak.force).toBeGreaterThan(law.peak.force);
        },
      ),
    );
  });
});
