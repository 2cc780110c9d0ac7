import { si, stackOf } from '../inputs.js';
import type { maxStressCheck, offAxisStrength, plyDiscount } from '../strength-kinds.js';
import { stackEntry } from './laminate-designs.js';
import { plyEntry } from './materials.js';
import { at, type DesignParts, over, vectorAt } from './parts.js';
import { anyThickness, perWidth, single } from './ply-designs.js';

const thicknessIsOurs = 'The thickness of the ply, 1 mm: stress times 1 mm is the force per width.';
const stresses = vectorAt(['s1', 's2', 't12'], 'loads.stressed.plies.0.middle.stress12');

export const offAxisStrengthDesign = (inputs: Parameters<typeof offAxisStrength>[0]): DesignParts => {
  const { ply, strengths, angle, stress } = inputs;
  const ratios = ['maxStress', 'tsaiHill', 'tsaiWu'].map(
    (criterion) => [criterion, at(`loads.stressed.failure.${criterion}.ratio`)] as const,
  );
  return {
    ours: [thicknessIsOurs],
    materials: { ply: plyEntry(ply, anyThickness, { strengths }) },
    laminates: { ply: single(angle) },
    loads: { stressed: { laminate: 'ply', N: perWidth(stress) } },
    held: { ...stresses, ...Object.fromEntries(ratios) },
  };
};

export const maxStressCheckDesign = (inputs: Parameters<typeof maxStressCheck>[0]): DesignParts => {
  const { strengths, angle, stress } = inputs;
  return {
    ours: [thicknessIsOurs, 'The elastic constants: the stress in a single ply does not depend on them.'],
    materials: {
      ply: {
        // Not alike along and across the fibre, or the criterion would look at principal stresses.
        ...plyEntry({ E1: '100 GPa', E2: '10 GPa', G12: '5 GPa', nu12: 0.3 }, anyThickness, { strengths }),
        note: 'The elastic constants are not of the source; the stress in a single ply does not depend on them.',
      },
    },
    laminates: { ply: single(angle) },
    loads: { stressed: { laminate: 'ply', N: perWidth(stress) } },
    // The largest of the shares is 1/R; the others stand in the report as stresses alone.
    held: { ...stresses, share12: { terms: [over('loads.stressed.failure.maxStress.ratio')] } },
  };
};

export const plyDiscountDesign = (inputs: Parameters<typeof plyDiscount>[0]): DesignParts => {
  const { ply, strengths, angles, plyThickness, N, discount, factor } = inputs;
  const progressive = 'loads.pull.progressive';
  return {
    ours: ['The stiffness that a failed ply keeps, which a design file needs above zero.'],
    materials: { ply: plyEntry(ply, plyThickness, { strengths }) },
    laminates: { stack: stackEntry(angles) },
    loads: {
      pull: { laminate: 'stack', N, strength: { criterion: 'tsaiWu', discount, remainingStiffness: factor } },
    },
    held: {
      firstRatio: at(`${progressive}.firstPly.ratio`),
      firstStress: at(`${progressive}.firstPly.ratio`, si(N[0], 'forcePerLength') / stackOf(inputs).thickness),
      lastRatio: at(`${progressive}.lastPly.ratio`),
      lastStrain: at(`${progressive}.lastPly.before.strain.0`),
    },
  };
};
