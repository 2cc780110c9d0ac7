import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clothOfYarns } from '../../../packages/core/src/material/index.js';
import { codesOf, expectClose } from './phases.js';

const count = fc.double({ min: 100, max: 4000, noNaN: true });
const tex = fc.double({ min: 5e-6, max: 2e-3, noNaN: true });

describe('a cloth of its yarns', () => {
  it('of 8 yarns of 200 tex per centimetre each way weighs 320 g/m2, half of it in the warp', () => {
    const found = clothOfYarns({ yarnCount: 800, yarnLinearDensity: 200e-6 });
    expectClose(found.arealMass, 0.32);
    expectClose(found.warpShare, 0.5);
  });

  it('weighs what its warp and its weft weigh alone', () => {
    fc.assert(
      fc.property(count, count, tex, tex, (yarnCount, weftCount, yarnLinearDensity, weftLinearDensity) => {
        const { arealMass, warpShare } = clothOfYarns({ yarnCount, weftCount, yarnLinearDensity, weftLinearDensity });
        expectClose(arealMass * warpShare, yarnCount * yarnLinearDensity, 1e-12);
        expectClose(arealMass * (1 - warpShare), weftCount * weftLinearDensity, 1e-10);
      }),
    );
  });

  it('turned by 90 degrees has the other share in its warp', () => {
    const cloth = { yarnCount: 500, weftCount: 600, yarnLinearDensity: 200e-6, weftLinearDensity: 272e-6 };
    const turned = { yarnCount: 600, weftCount: 500, yarnLinearDensity: 272e-6, weftLinearDensity: 200e-6 };
    expectClose(clothOfYarns(turned).warpShare, 1 - clothOfYarns(cloth).warpShare);
    expectClose(clothOfYarns(turned).arealMass, clothOfYarns(cloth).arealMass);
  });

  it('refuses counts and linear densities that are not positive', () => {
    const cloth = { yarnCount: 500, yarnLinearDensity: 200e-6 };
    for (const key of ['yarnCount', 'weftCount', 'yarnLinearDensity', 'weftLinearDensity'])
      expect(codesOf(() => clothOfYarns({ ...cloth, [key]: 0 }))[0]).toBe('out-of-range');
    expect(codesOf(() => clothOfYarns({ ...cloth, weftCount: Number.NaN }))).toEqual(['not-a-number']);
  });
});
