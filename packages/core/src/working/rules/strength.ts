import type { Rule, SymbolTable } from '../rule.js';

export const strengthSymbols = {
  Xt: { kind: 'stress', meaning: 'tensile strength along the fibre' },
  Xc: { kind: 'stress', meaning: 'compressive strength along the fibre, positive' },
  Yt: { kind: 'stress', meaning: 'tensile strength across the fibre' },
  Yc: { kind: 'stress', meaning: 'compressive strength across the fibre, positive' },
  S: { kind: 'stress', meaning: 'shear strength in the plane of the ply' },
  F1: { kind: 'perStress', meaning: 'coefficient of the stress along the fibre (Tsai-Wu)' },
  F2: { kind: 'perStress', meaning: 'coefficient of the stress across the fibre (Tsai-Wu)' },
  F11: { kind: 'perStressSquared', meaning: 'coefficient of the squared stress along the fibre (Tsai-Wu)' },
  F22: { kind: 'perStressSquared', meaning: 'coefficient of the squared stress across the fibre (Tsai-Wu)' },
  F66: { kind: 'perStressSquared', meaning: 'coefficient of the squared shear stress (Tsai-Wu)' },
  F12: { kind: 'perStressSquared', meaning: 'half the coefficient of the product of both direct stresses (Tsai-Wu)' },
  F12star: { kind: 'number', meaning: 'interaction of both direct stresses (Tsai-Wu), chosen' },
  S_T: { kind: 'stress', meaning: 'shear strength across the fibre (Hashin)' },
  alpha_H: { kind: 'number', meaning: 'share of shear in the tension of fibres (Hashin), chosen' },
  p_plus: { kind: 'number', meaning: 'inclination of the failure curve toward tension (Puck), chosen' },
  p_minus: { kind: 'number', meaning: 'inclination of the failure curve toward compression (Puck), chosen' },
  p_across: { kind: 'number', meaning: 'inclination of the failure curve across the fibre (Puck)' },
  R_A: { kind: 'stress', meaning: 'resistance of the action plane to shear across the fibre (Puck)' },
  tau_c: { kind: 'stress', meaning: 'shear stress where the modes B and C meet (Puck)' },
  sigma_m1: { kind: 'stress', meaning: 'stress of the load along the fibre, which the ratio multiplies' },
  sigma_m2: { kind: 'stress', meaning: 'stress of the load across the fibre, which the ratio multiplies' },
  tau_m12: { kind: 'stress', meaning: 'shear stress of the load, which the ratio multiplies' },
  sigma_r1: { kind: 'stress', meaning: 'stress of heat and moisture along the fibre, which stays' },
  sigma_r2: { kind: 'stress', meaning: 'stress of heat and moisture across the fibre, which stays' },
  tau_r12: { kind: 'stress', meaning: 'shear stress of heat and moisture, which stays' },
  sigma_a1: { kind: 'stress', meaning: 'stress of the load along axis 1 that the mat was laid at' },
  sigma_a2: { kind: 'stress', meaning: 'stress of the load along axis 2 that the mat was laid at' },
  tau_a12: { kind: 'stress', meaning: 'shear stress of the load in the axes that the mat was laid at' },
  sigma_b1: { kind: 'stress', meaning: 'stress of heat and moisture along axis 1 that the mat was laid at' },
  sigma_b2: { kind: 'stress', meaning: 'stress of heat and moisture along axis 2 that the mat was laid at' },
  tau_b12: { kind: 'stress', meaning: 'shear stress of heat and moisture in the axes that the mat was laid at' },
  phi_mat: { kind: 'angle', meaning: 'direction from axis 1 of the mat in which it fails first, found by search' },
  X_lim: {
    kind: 'stress',
    meaning: 'strength along the fibre on the side that the stress drives to: Xt, or Xc negative',
  },
  Y_lim: {
    kind: 'stress',
    meaning: 'strength across the fibre on the side that the stress drives to: Yt, or Yc negative',
  },
  S_lim: { kind: 'stress', meaning: 'shear strength with the sign of the shear stress' },
  e_m1: { kind: 'stress', meaning: 'strain of the load along the fibre times the modulus' },
  e_m2: { kind: 'stress', meaning: 'strain of the load across the fibre times the modulus' },
  e_r1: {
    kind: 'stress',
    meaning: 'strain along the fibre that the stress of heat and moisture makes, times the modulus',
  },
  e_r2: {
    kind: 'stress',
    meaning: 'strain across the fibre that the stress of heat and moisture makes, times the modulus',
  },
  X_hill: { kind: 'stress', meaning: 'strength along the fibre in the sector of signs at hand (Tsai-Hill)' },
  Y_hill: { kind: 'stress', meaning: 'strength across the fibre in the sector of signs at hand (Tsai-Hill)' },
  X_cross: { kind: 'stress', meaning: 'strength along the fibre in the cross term (Tsai-Hill)' },
  q_2: { kind: 'number', meaning: 'coefficient of R² in the limit at hand' },
  q_1: { kind: 'number', meaning: 'coefficient of R in the limit at hand' },
  q_0: { kind: 'number', meaning: 'what the limit at hand reads at R = 0; below 0 while the ply is whole' },
  R: { kind: 'number', meaning: 'strength ratio: the multiple of the load at which the ply fails here' },
  f_1: { kind: 'number', meaning: 'what one load uses of the strength along the fibre' },
  f_2: { kind: 'number', meaning: 'what one load uses of the strength across the fibre' },
  f_12: { kind: 'number', meaning: 'what one load uses of the shear strength' },
  f_r: { kind: 'number', meaning: 'what the stress of heat and moisture uses of the strength' },
  R_fibre: { kind: 'number', meaning: 'strength ratio of the fibre' },
  R_matrix: { kind: 'number', meaning: 'strength ratio of the matrix' },
  R_between: { kind: 'number', meaning: 'strength ratio between fibres' },
  theta_fp: { kind: 'angle', meaning: 'angle of the crack from the normal plane of the ply' },
  n_ply: { kind: 'number', meaning: 'number of the ply from the tool side' },
  R_ply: { kind: 'number', meaning: 'strength ratio of the ply: the lesser of its two faces' },
  R_fpf: { kind: 'number', meaning: 'strength ratio of the laminate: the least of its plies' },
  R_before: { kind: 'number', meaning: 'multiple of the load that was reached before this step' },
  R_now: { kind: 'number', meaning: 'multiple of the load at this step of failure' },
  W_whole: { kind: 'forcePerLength', meaning: 'work of one load on the whole laminate, N·ε + M·κ' },
  W_now: { kind: 'forcePerLength', meaning: 'work of one load on what is left after the step, N·ε + M·κ' },
  s_left: { kind: 'fraction', meaning: 'stiffness against the load that is left, of that of the whole laminate' },
  n_fpf: { kind: 'number', meaning: 'number of the ply that fails first' },
} as const satisfies SymbolTable;

/** The stresses of a formula by their symbols, with residual stress beside that of the load or without. */
const load = { s1: 'sigma1', s2: 'sigma2', t: 'tau12' } as const;
const beside = { s1: 'sigma_m1', s2: 'sigma_m2', t: 'tau_m12' } as const;

/** The root at which a q_2 R² + q_1 R + q_0 rises to 0, without cancellation for a q_1 of 0 or more. */
const rising = '-(2 q_0 / (q_1 + sqrt(q_1^2 - 4 q_2 q_0)))';
/** The same for q_0 = -1, and for no linear term. */
const risingFromMinusOne = '2 / (q_1 + sqrt(q_1^2 + 4 q_2))';
const homogeneous = '1 / sqrt(q_2)';

/** A product of two stresses over the square of what stands against them: a square where they are one. */
type Over = (x: string, y: string) => string;

const over =
  (limit: string, factor = ''): Over =>
  (x, y) =>
    x === y ? `${factor}(${x} / ${limit})^2` : `${factor}${x} ${y} / ${limit}^2`;

/** A limit of one direct stress and the shear: squares, and for some a linear term; less 1, or for one of them less nothing. */
interface PairLimit {
  /** Index of the direct stress. */
  readonly i: 1 | 2;
  readonly square?: Over;
  readonly linear?: (x: string) => string;
  readonly shear: Over;
  readonly lessOne: boolean;
  readonly ratio: string;
}

/** The formulas of a limit without residual stress. */
function alone({ i, square, linear, shear, lessOne, ratio }: PairLimit): Record<string, string> {
  const s = `sigma${i}`;
  const R = !lessOne ? '-q_1 / q_2' : linear === undefined ? homogeneous : risingFromMinusOne;
  return {
    q_2: [...(square ? [square(s, s)] : []), shear('tau12', 'tau12')].join(' + '),
    ...(linear && { q_1: linear(s) }),
    [ratio]: R,
  };
}

/** The same on the stress of the load beside that of heat and moisture. */
function withResidual({ i, square, linear, shear, lessOne, ratio }: PairLimit): Record<string, string> {
  const [m, r] = [`sigma_m${i}`, `sigma_r${i}`];
  const sum = (direct: string[], inShear: string, along: string[]): string =>
    [...direct, inShear, ...along].join(' + ');
  const q_0 = sum(square ? [square(r, r)] : [], shear('tau_r12', 'tau_r12'), linear ? [linear(r)] : []);
  return {
    q_2: sum(square ? [square(m, m)] : [], shear('tau_m12', 'tau_m12'), []),
    q_1: sum(square ? [`2*${square(m, r)}`] : [], `2*${shear('tau_m12', 'tau_r12')}`, linear ? [linear(m)] : []),
    q_0: lessOne ? `${q_0} - 1` : q_0,
    [ratio]: lessOne ? rising : '(-q_1 + sqrt(q_1^2 - 4 q_2 q_0)) / (2 q_2)',
  };
}

const hashinFibre: PairLimit = {
  i: 1,
  square: over('Xt'),
  shear: over('S', 'alpha_H*'),
  lessOne: true,
  ratio: 'R_fibre',
};
const inShear = over('S');
const hashinTension: PairLimit = { i: 2, square: over('Yt'), shear: inShear, lessOne: true, ratio: 'R_matrix' };
const hashinCompression: PairLimit = {
  ...hashinTension,
  square: over('(2 S_T)'),
  linear: (x) => `((Yc / (2 S_T))^2 - 1) ${x} / Yc`,
  ratio: 'R_matrix',
};
const puckA: PairLimit = {
  ...hashinTension,
  square: over('Yt', '(1 - 2 p_plus Yt / S)*'),
  linear: (x) => `2 p_plus ${x} / S`,
  ratio: 'R_between',
};
const puckB: PairLimit = {
  i: 2,
  linear: (x) => `2 p_minus ${x} / S`,
  shear: inShear,
  lessOne: true,
  ratio: 'R_between',
};
const puckC: PairLimit = {
  i: 2,
  square: over('Yc'),
  linear: (x) => `${x} / Yc`,
  shear: over('(2*(1 + p_across) S)'),
  lessOne: false,
  ratio: 'R_between',
};

/** A limit of one stress: its ratio with the stress of the load alone, and beside residual stress. */
const reaches = (limit: string, stress: string): string => `${limit} / ${stress}`;
const reachesFrom = (limit: string, rest: string, stress: string): string => `(${limit} - ${rest}) / ${stress}`;

/** What a load uses of each strength, on the side that it drives to. */
const used = (along: string, across: string, shear: string) => ({
  f_1: `${along} / X_lim`,
  f_2: `${across} / Y_lim`,
  f_12: `${shear} / S_lim`,
});

/** The same of what heat and moisture leave of the strength. */
const usedOfRest = (along: string, across: string, restAlong: string, restAcross: string) => ({
  f_1: `${along} / (X_lim - ${restAlong})`,
  f_2: `${across} / (Y_lim - ${restAcross})`,
  f_12: 'tau_m12 / (S_lim - tau_r12)',
});

/** The most that heat and moisture alone use of a strength. */
const usedBefore = (along: string, across: string) => ({
  f_r: `max(${along} / X_lim, ${across} / Y_lim, tau_r12 / S_lim)`,
});

const hillQuadratic = ({ s1, s2, t }: { readonly s1: string; readonly s2: string; readonly t: string }): string =>
  `(${s1} / X_hill)^2 - ${s1} ${s2} / X_cross^2 + (${s2} / Y_hill)^2 + (${t} / S)^2`;

const tsaiWuQuadratic = ({ s1, s2, t }: { readonly s1: string; readonly s2: string; readonly t: string }): string =>
  `F11 ${s1}^2 + F22 ${s2}^2 + F66 ${t}^2 + 2 F12 ${s1} ${s2}`;

const rest = { s1: 'sigma_r1', s2: 'sigma_r2', t: 'tau_r12' } as const;

const hillLimit = {
  q_2: hillQuadratic(beside),
  q_1: '2 sigma_m1 sigma_r1 / X_hill^2 + 2 sigma_m2 sigma_r2 / Y_hill^2 + 2 tau_m12 tau_r12 / S^2 - (sigma_m1 sigma_r2 + sigma_m2 sigma_r1) / X_cross^2',
  q_0: `${hillQuadratic(rest)} - 1`,
} as const;

const tsaiWuLimit = {
  q_2: tsaiWuQuadratic(beside),
  q_1: 'F1 sigma_m1 + F2 sigma_m2 + 2*(F11 sigma_m1 sigma_r1 + F22 sigma_m2 sigma_r2 + F66 tau_m12 tau_r12 + F12*(sigma_m1 sigma_r2 + sigma_m2 sigma_r1))',
  q_0: `F1 sigma_r1 + F2 sigma_r2 + ${tsaiWuQuadratic(rest)} - 1`,
} as const;

const hillTitle = 'Tsai-Hill: a quadratic equation for the ratio';
const tsaiWuTitle = 'Tsai-Wu: a quadratic equation for the ratio';

/** The lesser of the two limits above; the only one where the load never reaches the other; none where that is not asked. */
const lesser = (name: string, other: 'R_matrix' | 'R_between', source: Rule['source']) => {
  const what = other === 'R_matrix' ? 'matrix' : 'between fibres';
  return {
    both: { title: `${name}: the lesser of fibre and ${what}`, formulas: { R: `min(R_fibre, ${other})` }, source },
    fibre: { title: `${name}: the fibre, the load does not reach the other limit`, formulas: { R: 'R_fibre' }, source },
    other: {
      title: `${name}: ${what}, the load does not reach the limit of the fibre`,
      formulas: { R: other },
      source,
    },
    broken: {
      title: `${name}: broken before the load`,
      formulas: { R: '0' },
      remark: 'The stress of heat and moisture alone is past a limit.',
      source,
    },
  } as const;
};

const hashinLesser = lesser('Hashin', 'R_matrix', 'hashin-1980');
const puckLesser = lesser('Puck', 'R_between', 'puck-schuermann-1998');

/** Stresses turned by the direction of a mat's axes. */
const turnedStress = (to: { readonly s1: string; readonly s2: string; readonly t: string }, from: 'a' | 'b') => {
  const [s1, s2, t] = [`sigma_${from}1`, `sigma_${from}2`, `tau_${from}12`];
  return {
    [to.s1]: `${s1} cos(phi_mat)^2 + ${s2} sin(phi_mat)^2 + 2 ${t} sin(phi_mat) cos(phi_mat)`,
    [to.s2]: `${s1} sin(phi_mat)^2 + ${s2} cos(phi_mat)^2 - 2 ${t} sin(phi_mat) cos(phi_mat)`,
    [to.t]: `(${s2} - ${s1}) sin(phi_mat) cos(phi_mat) + ${t}*(cos(phi_mat)^2 - sin(phi_mat)^2)`,
  };
};

/** Of a laminate, by one criterion. */
const first = (name: string, source: Rule['source']) =>
  ({
    title: `First ply to fail by ${name}: the least ratio of all plies`,
    form: {
      text: 'R_fpf = min R_ply over the judged plies, n_fpf that ply',
      tex: 'R_{\\mathrm{fpf}} = \\min_{k} R_{\\mathrm{ply},k}',
    },
    results: ['R_fpf', 'n_fpf'],
    row: 'judged ply',
    remark: 'A ply that the load never breaks is not in the table.',
    source,
  }) as const;

const stress = { source: 'jones-1999', where: 'ch. 2.9' } as const;
const puckSource = { source: 'puck-schuermann-1998' } as const;
const hashinSource = { source: 'hashin-1980' } as const;

export const strengthRules = {
  tsaiWuCoefficients: {
    title: 'Coefficients of Tsai-Wu',
    formulas: {
      F1: '1 / Xt - 1 / Xc',
      F2: '1 / Yt - 1 / Yc',
      F11: '1 / (Xt Xc)',
      F22: '1 / (Yt Yc)',
      F66: '1 / S^2',
      F12: 'F12star sqrt(F11 F22)',
    },
    source: 'tsai-wu-1971',
  },
  hashinShear: {
    title: 'Shear strength across the fibre, taken from the compressive strength as it is not given',
    formulas: { S_T: 'Yc / 2' },
    ...hashinSource,
  },
  puckConstants: {
    title: 'Constants of the action plane',
    formulas: {
      R_A: 'Yc / (1 + sqrt(1 + 2 p_minus Yc / S))',
      p_across: 'p_minus R_A / S',
      tau_c: 'S sqrt(1 + 2 p_across)',
    },
    remark: 'R_A = S/(2 p⁻) (√(1 + 2 p⁻ Yc/S) - 1) in the form that also holds for p⁻ = 0.',
    ...puckSource,
  },
  stressOfLoad: {
    title: 'The part of the stress that the load makes, which the strength ratio multiplies',
    formulas: {
      sigma_m1: 'sigma1 - sigma_r1',
      sigma_m2: 'sigma2 - sigma_r2',
      tau_m12: 'tau12 - tau_r12',
    },
    remark: 'What heat and moisture make is computed by itself and stays as it is.',
    source: 'jones-1999',
    where: 'ch. 4.5',
  },
  loadAlone: {
    title: 'The same face without the stress of heat and moisture',
    formulas: { sigma1: 'sigma_m1', sigma2: 'sigma_m2', tau12: 'tau_m12' },
    source: 'jones-1999',
    where: 'ch. 4.5',
  },
  matAxes: {
    title: 'Stress in the axes of the mat in which it fails first',
    formulas: turnedStress(load, 'a'),
    remark: 'A mat has no axes of its own: all directions are tried, and the one of the least ratio is taken.',
    source: 'jones-1999',
    where: 'ch. 2.6',
  },
  matAxesWithResidual: {
    title: 'Stress in the axes of the mat in which it fails first',
    formulas: { ...turnedStress(beside, 'a'), ...turnedStress(rest, 'b') },
    remark: 'A mat has no axes of its own: all directions are tried, and the one of the least ratio is taken.',
    source: 'jones-1999',
    where: 'ch. 2.6',
  },
  maxStress: {
    title: 'Maximum stress: what the load uses of each strength, and the ratio',
    formulas: { ...used('sigma1', 'sigma2', 'tau12'), R: '1 / max(f_1, f_2, f_12)' },
    ...stress,
  },
  maxStressWithResidual: {
    title: 'Maximum stress: what the load uses of the strength that heat and moisture leave, and the ratio',
    formulas: { ...usedOfRest('sigma_m1', 'sigma_m2', 'sigma_r1', 'sigma_r2'), R: '1 / max(f_1, f_2, f_12)' },
    ...stress,
  },
  maxStressBroken: {
    title: 'Maximum stress: broken before the load',
    formulas: { ...usedBefore('sigma_r1', 'sigma_r2'), R: '0' },
    remark: 'The stress of heat and moisture alone is past a limit.',
    ...stress,
  },
  maxStrain: {
    title: 'Maximum strain, times the modulus: what the load uses of each strength, and the ratio',
    formulas: {
      e_m1: 'sigma1 - nu12 sigma2',
      e_m2: 'sigma2 - nu21 sigma1',
      ...used('e_m1', 'e_m2', 'tau12'),
      R: '1 / max(f_1, f_2, f_12)',
    },
    ...stress,
  },
  maxStrainWithResidual: {
    title:
      'Maximum strain, times the modulus: what the load uses of the strength that heat and moisture leave, and the ratio',
    formulas: {
      e_m1: 'sigma_m1 - nu12 sigma_m2',
      e_m2: 'sigma_m2 - nu21 sigma_m1',
      e_r1: 'sigma_r1 - nu12 sigma_r2',
      e_r2: 'sigma_r2 - nu21 sigma_r1',
      ...usedOfRest('e_m1', 'e_m2', 'e_r1', 'e_r2'),
      R: '1 / max(f_1, f_2, f_12)',
    },
    ...stress,
  },
  maxStrainBroken: {
    title: 'Maximum strain, times the modulus: broken before the load',
    formulas: {
      e_r1: 'sigma_r1 - nu12 sigma_r2',
      e_r2: 'sigma_r2 - nu21 sigma_r1',
      ...usedBefore('e_r1', 'e_r2'),
      R: '0',
    },
    remark: 'The stress of heat and moisture alone is past a limit.',
    ...stress,
  },
  tsaiHill: {
    title: 'Tsai-Hill: every term is a square of the ratio',
    formulas: { q_2: hillQuadratic(load), R: homogeneous },
    source: 'azzi-tsai-1965',
  },
  tsaiHillWithResidual: { title: hillTitle, formulas: { ...hillLimit, R: rising }, source: 'azzi-tsai-1965' },
  tsaiHillBroken: {
    title: 'Tsai-Hill: broken before the load, as q₀ is not below 0',
    formulas: { q_0: hillLimit.q_0, R: '0' },
    source: 'azzi-tsai-1965',
  },
  tsaiWu: {
    title: tsaiWuTitle,
    formulas: { q_2: tsaiWuQuadratic(load), q_1: 'F1 sigma1 + F2 sigma2', R: risingFromMinusOne },
    source: 'tsai-wu-1971',
  },
  tsaiWuWithResidual: { title: tsaiWuTitle, formulas: { ...tsaiWuLimit, R: rising }, source: 'tsai-wu-1971' },
  tsaiWuBroken: {
    title: 'Tsai-Wu: broken before the load, as q₀ is not below 0',
    formulas: { q_0: tsaiWuLimit.q_0, R: '0' },
    source: 'tsai-wu-1971',
  },
  hashinFibreTension: { title: 'Hashin: fibre in tension', formulas: alone(hashinFibre), ...hashinSource },
  hashinFibreTensionWithResidual: {
    title: 'Hashin: fibre in tension',
    formulas: withResidual(hashinFibre),
    ...hashinSource,
  },
  hashinFibreCompression: {
    title: 'Hashin: fibre in compression',
    formulas: { R_fibre: reaches('X_lim', 'sigma1') },
    ...hashinSource,
  },
  hashinFibreCompressionWithResidual: {
    title: 'Hashin: fibre in compression',
    formulas: { R_fibre: reachesFrom('X_lim', 'sigma_r1', 'sigma_m1') },
    ...hashinSource,
  },
  hashinMatrixTension: { title: 'Hashin: matrix in tension', formulas: alone(hashinTension), ...hashinSource },
  hashinMatrixTensionWithResidual: {
    title: 'Hashin: matrix in tension',
    formulas: withResidual(hashinTension),
    ...hashinSource,
  },
  hashinMatrixCompression: {
    title: 'Hashin: matrix in compression',
    formulas: alone(hashinCompression),
    ...hashinSource,
  },
  hashinMatrixCompressionWithResidual: {
    title: 'Hashin: matrix in compression',
    formulas: withResidual(hashinCompression),
    ...hashinSource,
  },
  hashin: hashinLesser.both,
  hashinFibreOnly: hashinLesser.fibre,
  hashinMatrixOnly: hashinLesser.other,
  hashinBroken: hashinLesser.broken,
  puckFibre: { title: 'Puck: fibre', formulas: { R_fibre: reaches('X_lim', 'sigma1') }, ...puckSource },
  puckFibreWithResidual: {
    title: 'Puck: fibre',
    formulas: { R_fibre: reachesFrom('X_lim', 'sigma_r1', 'sigma_m1') },
    ...puckSource,
  },
  puckA: { title: 'Puck: between fibres, mode A, squared', formulas: alone(puckA), ...puckSource },
  puckAWithResidual: { title: 'Puck: between fibres, mode A, squared', formulas: withResidual(puckA), ...puckSource },
  puckB: { title: 'Puck: between fibres, mode B, squared', formulas: alone(puckB), ...puckSource },
  puckBWithResidual: { title: 'Puck: between fibres, mode B, squared', formulas: withResidual(puckB), ...puckSource },
  puckC: { title: 'Puck: between fibres, mode C', formulas: alone(puckC), ...puckSource },
  puckCWithResidual: { title: 'Puck: between fibres, mode C', formulas: withResidual(puckC), ...puckSource },
  puck: puckLesser.both,
  puckFibreOnly: puckLesser.fibre,
  puckBetweenOnly: puckLesser.other,
  puckBroken: puckLesser.broken,
  puckCrack: {
    title: 'Puck: angle of the oblique crack of mode C',
    formulas: { theta_fp: 'acos(sqrt(R_A / (-R sigma2)))' },
    ...puckSource,
  },
  puckCrackWithResidual: {
    title: 'Puck: angle of the oblique crack of mode C',
    formulas: { theta_fp: 'acos(sqrt(R_A / (-sigma_r2 - R sigma_m2)))' },
    ...puckSource,
  },
  firstPlyMaxStress: first('maximum stress', 'jones-1999'),
  firstPlyMaxStrain: first('maximum strain', 'jones-1999'),
  firstPlyTsaiHill: first('Tsai-Hill', 'azzi-tsai-1965'),
  firstPlyTsaiWu: first('Tsai-Wu', 'tsai-wu-1971'),
  firstPlyHashin: first('Hashin', 'hashin-1980'),
  firstPlyPuck: first('Puck', 'puck-schuermann-1998'),
  progressiveStep: {
    title: 'A step of failure ply by ply: the load at which the next ply fails, and the stiffness that is left then',
    formulas: { R_now: 'max(R_before, R_ply)', s_left: 'W_whole / W_now' },
    row: 'failing ply',
    remark:
      'The table holds what the failing plies keep of their constants. A ply that fails at less than the load already reached fails at once.',
    source: 'hahn-tsai-1974',
  },
} as const satisfies Record<string, Rule>;
