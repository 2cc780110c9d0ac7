import type { Rule, SymbolTable } from '../rule.js';

export const plySymbols = {
  E1: { kind: 'modulus', meaning: 'modulus along the fibre' },
  E2: { kind: 'modulus', meaning: 'modulus across the fibre' },
  G12: { kind: 'modulus', meaning: 'shear modulus in the plane of the ply' },
  nu12: { kind: 'number', meaning: "Poisson's ratio, contraction across the fibre under stress along it" },
  nu21: { kind: 'number', meaning: "Poisson's ratio, contraction along the fibre under stress across it" },
  Q11: { kind: 'modulus', meaning: 'stiffness of the ply along the fibre' },
  Q12: { kind: 'modulus', meaning: 'coupling stiffness of the ply' },
  Q22: { kind: 'modulus', meaning: 'stiffness of the ply across the fibre' },
  Q66: { kind: 'modulus', meaning: 'shear stiffness of the ply' },
  U1: { kind: 'modulus', meaning: 'invariant of the stiffness: mean of all directions' },
  U2: { kind: 'modulus', meaning: 'amplitude of the part that turns with twice the angle' },
  U3: { kind: 'modulus', meaning: 'amplitude of the part that turns with four times the angle' },
  U4: { kind: 'modulus', meaning: 'invariant of the stiffness: mean coupling' },
  U5: { kind: 'modulus', meaning: 'invariant of the stiffness: mean shear' },
  theta: { kind: 'angle', meaning: 'angle from x to the fibre, positive toward y' },
  Qbar11: { kind: 'modulus', meaning: 'stiffness of the ply in laminate axes, x' },
  Qbar12: { kind: 'modulus', meaning: 'stiffness of the ply in laminate axes, x with y' },
  Qbar16: { kind: 'modulus', meaning: 'stiffness of the ply in laminate axes, x with shear' },
  Qbar22: { kind: 'modulus', meaning: 'stiffness of the ply in laminate axes, y' },
  Qbar26: { kind: 'modulus', meaning: 'stiffness of the ply in laminate axes, y with shear' },
  Qbar66: { kind: 'modulus', meaning: 'stiffness of the ply in laminate axes, shear' },
} as const satisfies SymbolTable;

export const plyRules = {
  reducedStiffness: {
    title: 'Plane-stress stiffness of the ply in its own axes',
    formulas: {
      nu21: 'nu12 E2 / E1',
      Q11: 'E1 / (1 - nu12 nu21)',
      Q12: 'nu12 E2 / (1 - nu12 nu21)',
      Q22: 'E2 / (1 - nu12 nu21)',
      Q66: 'G12',
    },
    source: 'jones-1999',
    where: 'ch. 2.5',
  },
  invariants: {
    title: 'Invariants of the stiffness of the ply',
    formulas: {
      U1: '(3 Q11 + 3 Q22 + 2 Q12 + 4 Q66) / 8',
      U2: '(Q11 - Q22) / 2',
      U3: '(Q11 + Q22 - 2 Q12 - 4 Q66) / 8',
      U4: '(Q11 + Q22 + 6 Q12 - 4 Q66) / 8',
      U5: '(Q11 + Q22 - 2 Q12 + 4 Q66) / 8',
    },
    source: 'tsai-pagano-1968',
  },
  turnedStiffness: {
    title: 'Stiffness of the ply in laminate axes',
    formulas: {
      Qbar11: 'U1 + U2 cos(2 theta) + U3 cos(4 theta)',
      Qbar12: 'U4 - U3 cos(4 theta)',
      Qbar16: 'U2 sin(2 theta) / 2 + U3 sin(4 theta)',
      Qbar22: 'U1 - U2 cos(2 theta) + U3 cos(4 theta)',
      Qbar26: 'U2 sin(2 theta) / 2 - U3 sin(4 theta)',
      Qbar66: 'U5 - U3 cos(4 theta)',
    },
    remark:
      'The same as Q11 cos⁴θ + 2 (Q12 + 2 Q66) sin²θ cos²θ + Q22 sin⁴θ and its companions, written so that a quarter turn leaves no rounding.',
    source: 'tsai-pagano-1968',
  },
} as const satisfies Record<string, Rule>;
