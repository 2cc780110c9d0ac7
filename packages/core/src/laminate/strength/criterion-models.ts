import type { Note, SourceKey } from '../../provenance/index.js';
import { type Criterion, puckInclination, type StrengthOptions } from './criterion.js';
import { hashinRatio } from './ratio-hashin.js';
import { maxStrainRatio } from './ratio-max-strain.js';
import { maxStressRatio } from './ratio-max-stress.js';
import { puckRatio } from './ratio-puck.js';
import { tsaiHillRatio } from './ratio-tsai-hill.js';
import { tsaiWuRatio } from './ratio-tsai-wu.js';
import type { StrengthConstants } from './strength-constants.js';

/**
 * Strength ratio R of the stress r + R s in ply axes; Infinity when never reached, 0 when r alone reaches it.
 *
 * An R of `limit` or more need not be told apart: any number from `limit` on may stand for it.
 */
export type RatioFunction = (
  s1: number,
  s2: number,
  s12: number,
  r1: number,
  r2: number,
  r12: number,
  c: StrengthConstants,
  limit: number,
) => number;

/** The ratio function of each criterion: numbers in, a number out, no allocation. */
export const ratioFunctions: Readonly<Record<Criterion, RatioFunction>> = {
  maxStress: maxStressRatio,
  maxStrain: maxStrainRatio,
  tsaiHill: tsaiHillRatio,
  tsaiWu: tsaiWuRatio,
  hashin: hashinRatio,
  puck: puckRatio,
};

/** Where each criterion comes from. */
export const criterionSources: Readonly<Record<Criterion, readonly SourceKey[]>> = {
  maxStress: ['jones-1999'],
  maxStrain: ['jones-1999'],
  tsaiHill: ['azzi-tsai-1965', 'hill-1948'],
  tsaiWu: ['tsai-wu-1971', 'tsai-hahn-1980'],
  hashin: ['hashin-1980'],
  puck: ['puck-schuermann-1998', 'puck-schuermann-2002', 'puck-kopp-knops-2002'],
};

const hillWords = {
  sign: 'each strength is tensile or compressive by the sign of its stress',
  tensile: 'tensile strengths for either sign, which suits equal strengths only',
  crossTerm: 'strengths by the sign of their stress, X of the cross term by the sign of the stress across the fibre',
} as const;

/** What the criterion takes for granted, in one sentence; empty when nothing is chosen. */
export function criterionNotes(criterion: Criterion, options: StrengthOptions): Note[] {
  const text = assumption(criterion, options);
  const [source] = criterionSources[criterion];
  return text === undefined ? [] : [{ level: 'assumption', text, ...(source === undefined ? {} : { source }) }];
}

function assumption(criterion: Criterion, options: StrengthOptions): string | undefined {
  switch (criterion) {
    case 'maxStress':
      return undefined;
    case 'maxStrain':
      return 'Maximum strain: the limits are strength over modulus, each measured with the other stresses zero.';
    case 'tsaiHill':
      return `Tsai-Hill, variant \`${options.variant ?? 'sign'}\`: ${hillWords[options.variant ?? 'sign']}.`;
    case 'tsaiWu':
      return `Tsai-Wu with the interaction F12* = ${options.F12star ?? -0.5}.`;
    case 'hashin': {
      const ST = options.transverseShearStrength;
      const given = ST === undefined ? 'Yc/2' : `${Number((ST / 1e6).toPrecision(4))} MPa`;
      return `Hashin with shear strength across the fibre ${given} and alpha = ${options.alpha ?? 1}.`;
    }
    case 'puck': {
      const { plus, minus } = puckInclination(options);
      return `Puck with inclinations ${plus} (tension) and ${minus} (compression); the one across the fibre follows from them.`;
    }
  }
}
