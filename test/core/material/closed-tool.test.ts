import { describe, expect, it } from 'vitest';
import {
  fabricPlies,
  fibreVolumeFractionInGap,
  solidFibreThickness,
} from '../../../packages/core/src/material/index.js';
import { carbon, codesOf, eGlass, epoxy, expectClose, expectPrinted, problemsOf } from './phases.js';

describe('fibre fraction in a closed tool', () => {
  // Demonstration scenario, blade Brack 430: edge of 6 carbon and 2 glass cloths of 200 g/m2 (computed by an independent script).
  const fibreThickness = 6 * solidFibreThickness(0.2, 1780) + 2 * solidFibreThickness(0.2, 2540);

  it('has 0.832 mm of solid fibre in the scenario edge', () => {
    expectPrinted(fibreThickness * 1e3, 0.832, 5e-4);
  });

  it.each([
    [1.55, 0.537],
    [1.45, 0.574],
    [1.65, 0.504],
  ])('is, at a gap of %d mm, %d', (gap, Vf) => {
    expectPrinted(fibreVolumeFractionInGap({ fibreThickness, gap: gap / 1e3 }), Vf, 5e-4);
  });

  it('makes plies that fill the gap, cores included', () => {
    const gap = 5.85e-3;
    const fixedThickness = 5e-3;
    const centre = 4 * solidFibreThickness(0.2, 1780);
    const fibreVolumeFraction = fibreVolumeFractionInGap({ fibreThickness: centre, gap, fixedThickness });
    const cloth = { name: 'ca-tw200', fibre: carbon, resin: epoxy, arealMass: 0.2, architecture: 'woven' } as const;
    const [ply] = fabricPlies({ ...cloth, fibreVolumeFraction });
    expectClose(4 * (ply?.thickness ?? 0) + fixedThickness, gap);
  });

  it('refuses a gap too tight or too wide, with the gap that would do', () => {
    const [tight] = problemsOf(() => fibreVolumeFractionInGap({ fibreThickness: 0.83e-3, gap: 1e-3 }));
    expect(tight?.code).toBe('out-of-range');
    expect(tight?.message).toBe('closed tool gap 1 mm leaves fibre fraction 0.83, allowed 0.1 to 0.75');
    expect(tight?.hint).toBe('a gap of 1.51 mm would give 0.55');
    expect(codesOf(() => fibreVolumeFractionInGap({ fibreThickness: 0.83e-3, gap: 9e-3 }))).toEqual(['out-of-range']);
    expect(fibreVolumeFractionInGap({ fibreThickness: 0.75e-3, gap: 1e-3 })).toBeCloseTo(0.75, 12);
  });

  it('refuses a gap that the core fills', () => {
    const filling = { fibreThickness: 0.5e-3, gap: 5e-3, fixedThickness: 5e-3 };
    expect(codesOf(() => fibreVolumeFractionInGap(filling))).toEqual(['not-computable']);
  });

  it('refuses lengths that are not lengths', () => {
    expect(codesOf(() => fibreVolumeFractionInGap({ fibreThickness: 0, gap: -1 }))).toEqual([
      'out-of-range',
      'out-of-range',
    ]);
  });

  it('speaks of glass as of carbon', () => {
    expectClose(
      fibreVolumeFractionInGap({ fibreThickness: solidFibreThickness(1.27, eGlass.density), gap: 1e-3 }),
      0.5,
    );
  });
});
