import { describe, expect, it } from 'vitest';
import {
  type BridgingPath,
  bridgingLaw,
  bridgingParameters,
  lawOf,
  stitchType,
} from '../../../../packages/core/src/stitch/index.js';
import { codesOf, mm } from '../support.js';
import { aramid, modelOf, penetration, plain } from './support.js';

const refused = ['out-of-range'];

describe('a bridging law is refused', () => {
  it('without the strength or stiffness of a thread that crosses the crack', () => {
    const { tenacity, ...noStrength } = aramid;
    const { modulus, ...noStiffness } = aramid;
    expect([tenacity, modulus]).toEqual([1.7e6, 50e6]);
    expect(codesOf(() => bridgingLaw(penetration({ needleThread: noStrength })))).toEqual(['missing-key']);
    expect(codesOf(() => bridgingLaw(penetration({ needleThread: noStiffness })))).toEqual(['missing-key']);
    // The bobbin thread of a modified lockstitch stays on the face: its strength is not asked for.
    expect(bridgingLaw(penetration({ underThread: noStrength })).work).toBeGreaterThan(0);
    const balanced = { type: stitchType(301), underThread: noStrength };
    expect(codesOf(() => bridgingLaw(penetration(balanced)))).toEqual(['missing-key']);
  });

  it('for a thickness not above 0 or a crack not between the faces', () => {
    for (const thickness of [0, -1, Number.NaN]) {
      expect(codesOf(() => bridgingLaw(penetration({ thickness })))).toEqual(refused);
    }
    for (const crackDepth of [0, -1 * mm, 3 * mm, 4 * mm, Number.NaN]) {
      expect(codesOf(() => bridgingLaw(penetration({ crackDepth })))).toEqual(refused);
    }
  });

  it('for parameters outside their ranges', () => {
    for (const name of Object.keys(plain) as (keyof typeof plain)[]) {
      expect(
        codesOf(() => bridgingParameters({ [name]: -1 })),
        name,
      ).toEqual(refused);
      expect(
        codesOf(() => bridgingParameters({ [name]: Number.NaN })),
        name,
      ).toEqual(refused);
    }
    for (const name of ['sewnEfficiency', 'anchorEfficiency', 'packing'] as const) {
      expect(
        codesOf(() => bridgingParameters({ [name]: 1.2 })),
        name,
      ).toEqual(refused);
      expect(
        codesOf(() => bridgingParameters({ [name]: 0 })),
        name,
      ).toEqual(refused);
    }
    expect(codesOf(() => bridgingParameters({ floatGrip: 1.2 }))).toEqual(refused);
    expect(bridgingParameters({ bendRadius: 0, bendFriction: 0, floatGrip: 0 }).floatGrip).toBe(0);
    expect(bridgingParameters({ frictionStress: 0, beddingIn: 0, siteScatter: 0 }).frictionStress).toBe(0);
    expect(codesOf(() => bridgingLaw(penetration({ parameters: { packing: 0.95 }, needleThread: aramid })))).toEqual(
      refused,
    );
  });

  it('for a thread with neither friction nor anchor, and a model with impossible numbers', () => {
    const free = { anchors: { needleFace: 'none', underFace: 'none' } as const };
    expect(codesOf(() => bridgingLaw(penetration({ ...free, parameters: { ...plain, frictionStress: 0 } })))).toEqual(
      refused,
    );
    expect(codesOf(() => lawOf(modelOf({ depth: 0 })))).toEqual(refused);
    expect(codesOf(() => lawOf(modelOf({ anchorCompliance: -1 })))).toEqual(refused);
    expect(codesOf(() => lawOf(modelOf({}, {}, { crackStrength: 0 })))).toEqual(refused);
    expect(codesOf(() => lawOf(modelOf({}, {}, { siteScatter: Number.NaN })))).toEqual(refused);
  });

  it('along a path that is none', () => {
    const along = (path: BridgingPath) => codesOf(() => bridgingLaw({ ...penetration(), path }));
    expect(along({ angle: -1 })).toEqual(refused);
    expect(along({ angle: 91 })).toEqual(refused);
    expect(along({ angle: Number.NaN })).toEqual(refused);
    expect(along({ history: [] })).toEqual(refused);
    expect(along({ history: [{ opening: 0, sliding: 0 }] })).toEqual(refused);
    expect(
      along({
        history: [
          { opening: 1e-4, sliding: 0 },
          { opening: 5e-5, sliding: 0 },
        ],
      }),
    ).toEqual(refused);
    expect(along({ history: [{ opening: 1e-4, sliding: Number.POSITIVE_INFINITY }] })).toEqual(refused);
  });
});

describe('a tuft', () => {
  it('is a stitch whose under face holds nothing: it pulls out there', () => {
    const tuft = bridgingLaw(penetration({ anchors: { underFace: 'none' } }));
    expect(tuft.failure).toBe('threadPullOut');
    expect(tuft.work).toBeLessThan(bridgingLaw(penetration()).work);
  });
});
