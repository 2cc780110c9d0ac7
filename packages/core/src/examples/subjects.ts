import type { KindName } from './kinds.js';

/** What the worked examples are about, in the order in which they are listed. */
export const subjects = {
  ply: 'Ply',
  laminate: 'Laminate',
  heat: 'Heat and moisture',
  constituents: 'Fibre and resin',
  thickness: 'Thickness and mass',
  strength: 'Strength',
  shear: 'Shear through the thickness',
  deflection: 'Deflection',
  plates: 'Buckling and vibration of plates',
  sandwich: 'Sandwich',
  edge: 'Free edge',
  blister: 'Blisters',
} as const;

/** What a worked example is about. */
export type Subject = keyof typeof subjects;

/** The subjects by the words that choose them. */
export const exampleSubjects: readonly string[] = Object.keys(subjects);

const subjectOfKind: Readonly<Record<KindName, Subject>> = {
  'ply-stiffness': 'ply',
  'off-axis-stiffness': 'ply',
  'off-axis-compliance': 'ply',
  'off-axis-constants': 'ply',
  'off-axis-expansion': 'heat',
  'quasi-isotropic': 'laminate',
  'laminate-stiffness': 'laminate',
  'laminate-response': 'laminate',
  'prescribed-strain': 'laminate',
  'laminate-moduli': 'laminate',
  'thermal-response': 'heat',
  'laminate-expansion': 'heat',
  'bimetal-curvature': 'heat',
  micromechanics: 'constituents',
  'hybrid-micromechanics': 'constituents',
  'expansion-micromechanics': 'constituents',
  'ply-thickness': 'thickness',
  'fibre-mass-fraction': 'thickness',
  'glass-thickness-formula': 'thickness',
  'cured-ply': 'thickness',
  'off-axis-strength': 'strength',
  'tsai-wu-coefficients': 'strength',
  'max-stress-check': 'strength',
  'ply-discount': 'strength',
  'three-point-bending': 'shear',
  'strip-deflection': 'deflection',
  'plate-deflection': 'deflection',
  'orthotropic-plate-deflection': 'deflection',
  'plate-frequencies': 'plates',
  'plate-buckling-aspect': 'plates',
  'cross-ply-plate': 'plates',
  'wrinkling-coefficient': 'sandwich',
  'wrinkling-deep-core': 'sandwich',
  'edge-delamination-onset': 'edge',
  'clamped-circle': 'blister',
  'strip-blister': 'blister',
};

/** What an example of a kind is about. */
export const subjectOf = (kind: KindName): Subject => subjectOfKind[kind];
