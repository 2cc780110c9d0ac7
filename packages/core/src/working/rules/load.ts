import type { Rule, SymbolTable } from '../rule.js';

export const loadSymbols = {
  N_x: { kind: 'forcePerLength', meaning: 'force per length along x' },
  N_y: { kind: 'forcePerLength', meaning: 'force per length along y' },
  N_xy: { kind: 'forcePerLength', meaning: 'shear force per length' },
  M_x: { kind: 'momentPerLength', meaning: 'moment per length that bends along x' },
  M_y: { kind: 'momentPerLength', meaning: 'moment per length that bends along y' },
  M_xy: { kind: 'momentPerLength', meaning: 'twisting moment per length' },
  N_Tx: { kind: 'forcePerLength', meaning: 'force that hindered heat and moisture exert, x' },
  N_Ty: { kind: 'forcePerLength', meaning: 'force that hindered heat and moisture exert, y' },
  N_Txy: { kind: 'forcePerLength', meaning: 'shear force that hindered heat and moisture exert' },
  M_Tx: { kind: 'momentPerLength', meaning: 'moment that hindered heat and moisture exert, x' },
  M_Ty: { kind: 'momentPerLength', meaning: 'moment that hindered heat and moisture exert, y' },
  M_Txy: { kind: 'momentPerLength', meaning: 'twisting moment that hindered heat and moisture exert' },
  DeltaT: { kind: 'temperatureChange', meaning: 'change of temperature at the mid-plane' },
  g_T: { kind: 'temperatureGradient', meaning: 'change of temperature per height' },
  C: { kind: 'fraction', meaning: 'moisture taken up, mass per mass of the ply' },
  alpha1: { kind: 'expansion', meaning: 'thermal expansion along the fibre' },
  alpha2: { kind: 'expansion', meaning: 'thermal expansion across the fibre' },
  beta1: { kind: 'number', meaning: 'swelling along the fibre per moisture' },
  beta2: { kind: 'number', meaning: 'swelling across the fibre per moisture' },
  free1: { kind: 'strain', meaning: 'free strain of heat and moisture along the fibre' },
  free2: { kind: 'strain', meaning: 'free strain of heat and moisture across the fibre' },
  alpha_x: { kind: 'expansion', meaning: 'thermal expansion of the ply along x' },
  alpha_y: { kind: 'expansion', meaning: 'thermal expansion of the ply along y' },
  alpha_xy: { kind: 'expansion', meaning: 'thermal shear of the ply (engineering)' },
  beta_x: { kind: 'number', meaning: 'swelling of the ply along x per moisture' },
  beta_y: { kind: 'number', meaning: 'swelling of the ply along y per moisture' },
  beta_xy: { kind: 'number', meaning: 'shear of the ply per moisture (engineering)' },
  p_x: { kind: 'stressPerTemperature', meaning: 'stress that a hindered warming of the ply exerts, x' },
  p_y: { kind: 'stressPerTemperature', meaning: 'stress that a hindered warming of the ply exerts, y' },
  p_xy: { kind: 'stressPerTemperature', meaning: 'shear stress that a hindered warming of the ply exerts' },
  s_x: { kind: 'stress', meaning: 'stress that the hindered swelling of the ply exerts, x' },
  s_y: { kind: 'stress', meaning: 'stress that the hindered swelling of the ply exerts, y' },
  s_xy: { kind: 'stress', meaning: 'shear stress that the hindered swelling of the ply exerts' },
  eps0_x: { kind: 'strain', meaning: 'strain of the mid-plane, x' },
  eps0_y: { kind: 'strain', meaning: 'strain of the mid-plane, y' },
  gamma0_xy: { kind: 'strain', meaning: 'shear strain of the mid-plane (engineering)' },
  kappa_x: { kind: 'curvature', meaning: 'curvature along x' },
  kappa_y: { kind: 'curvature', meaning: 'curvature along y' },
  kappa_xy: { kind: 'curvature', meaning: 'twist (engineering)' },
  z: { kind: 'length', meaning: 'height over the mid-plane' },
  eps_x: { kind: 'strain', meaning: 'strain at this height, x' },
  eps_y: { kind: 'strain', meaning: 'strain at this height, y' },
  gamma_xy: { kind: 'strain', meaning: 'shear strain at this height (engineering)' },
  eps1: { kind: 'strain', meaning: 'strain along the fibre' },
  eps2: { kind: 'strain', meaning: 'strain across the fibre' },
  gamma12: { kind: 'strain', meaning: 'shear strain in ply axes (engineering)' },
  sigma1: { kind: 'stress', meaning: 'stress along the fibre' },
  sigma2: { kind: 'stress', meaning: 'stress across the fibre' },
  tau12: { kind: 'stress', meaning: 'shear stress in ply axes' },
  sigma_x: { kind: 'stress', meaning: 'stress in laminate axes, x' },
  sigma_y: { kind: 'stress', meaning: 'stress in laminate axes, y' },
  tau_xy: { kind: 'stress', meaning: 'shear stress in laminate axes' },
} as const satisfies SymbolTable;

const axes = ['x', 'y', 'xy'] as const;

/** The three components of a result of the plane, each by a template in which the axis stands for `?`. */
const each = (name: string, expression: (i: 0 | 1 | 2) => string): Record<string, string> =>
  Object.fromEntries(axes.map((axis, i) => [`${name}${axis}`, expression(i as 0 | 1 | 2)]));

const rowsOf = (m: string): readonly (readonly [string, string, string])[] => [
  [`${m}11`, `${m}12`, `${m}16`],
  [`${m}12`, `${m}22`, `${m}26`],
  [`${m}16`, `${m}26`, `${m}66`],
];
const b = [
  ['b11', 'b12', 'b16'],
  ['b21', 'b22', 'b26'],
  ['b61', 'b62', 'b66'],
] as const;

/** The product of a row of three symbols with a vector. */
const product = (row: readonly string[] | undefined, vector: readonly string[]): string =>
  (row ?? []).map((symbol, i) => `${symbol}*${vector[i]}`).join(' + ');

/** e = a N + b M and k = bᵀ N + d M with the forces N and M written as given. */
function law(N: readonly string[], M: readonly string[]): Record<string, string> {
  const transposed = [0, 1, 2].map((j) => b.map((row) => row[j] ?? ''));
  const strain = (i: number): string => `${product(rowsOf('a')[i], N)} + ${product(b[i], M)}`;
  const curvature = (i: number): string => `${product(transposed[i], N)} + ${product(rowsOf('d')[i], M)}`;
  return {
    eps0_x: strain(0),
    eps0_y: strain(1),
    gamma0_xy: strain(2),
    ...each('kappa_', curvature),
  };
}

const strains = ['eps0_x', 'eps0_y', 'gamma0_xy'];
const curvatures = axes.map((axis) => `kappa_${axis}`);
const N = axes.map((axis) => `N_${axis}`);
const M = axes.map((axis) => `M_${axis}`);

/** The turned strain of a ply from its two along and across the fibre, shear engineering. */
const turned = (name: string): Record<string, string> => ({
  [`${name}_x`]: `${name}1 cos(theta)^2 + ${name}2 sin(theta)^2`,
  [`${name}_y`]: `${name}1 sin(theta)^2 + ${name}2 cos(theta)^2`,
  [`${name}_xy`]: `2*(${name}1 - ${name}2) sin(theta) cos(theta)`,
});

const turnedAxes = (name: string): string[] => axes.map((axis) => `${name}_${axis}`);

export const loadRules = {
  turnedExpansion: {
    title: 'Thermal expansion of the ply in laminate axes, and the stress of a warming that is hindered',
    formulas: {
      ...turned('alpha'),
      ...each('p_', (i) => product(rowsOf('Qbar')[i], turnedAxes('alpha'))),
    },
    remark: 'Expansion turns like strain; its shear is the engineering one, twice the tensor component.',
    source: 'jones-1999',
    where: 'ch. 4.5',
  },
  turnedSwelling: {
    title: 'Swelling of the ply in laminate axes, and the stress of a swelling that is hindered',
    formulas: {
      ...turned('beta'),
      ...each('s_', (i) => `(${product(rowsOf('Qbar')[i], turnedAxes('beta'))})*C`),
    },
    source: 'jones-1999',
    where: 'ch. 4.5',
  },
  hinderedHeat: {
    title: 'What heat would push with if the laminate were held flat at its old size',
    sums: {
      ...each('N_T', (i) => `p_${axes[i]}*(DeltaT + g_T z_k) t_k`),
      ...each('M_T', (i) => `p_${axes[i]}*((DeltaT + g_T z_k) t_k z_k + g_T t_k^3 / 12)`),
    },
    row: 'ply',
    source: 'jones-1999',
    where: 'ch. 4.5',
  },
  hinderedHeatAndMoisture: {
    title: 'What heat and moisture would push with if the laminate were held flat at its old size',
    sums: {
      ...each('N_T', (i) => `(p_${axes[i]}*(DeltaT + g_T z_k) + s_${axes[i]}) t_k`),
      ...each('M_T', (i) => `(p_${axes[i]}*(DeltaT + g_T z_k) + s_${axes[i]}) t_k z_k + p_${axes[i]} g_T t_k^3 / 12`),
    },
    row: 'ply',
    source: 'jones-1999',
    where: 'ch. 4.5',
  },
  deformation: {
    title: 'Strain and curvature of the mid-plane',
    formulas: law(N, M),
    source: 'jones-1999',
    where: 'ch. 4.4',
  },
  deformationUnderHeat: {
    title: 'Strain and curvature of the mid-plane, heat and moisture included',
    formulas: law(
      axes.map((axis) => `(N_${axis} + N_T${axis})`),
      axes.map((axis) => `(M_${axis} + M_T${axis})`),
    ),
    source: 'jones-1999',
    where: 'ch. 4.5',
  },
  mixedDeformation: {
    title: 'Strain and curvature of the mid-plane, some of them given',
    form: {
      text: 'A ε⁰ + B κ = N + N_T and B ε⁰ + D κ = M + M_T, solved for what is not given',
      tex: '\\begin{bmatrix} A & B \\\\ B & D \\end{bmatrix} \\begin{bmatrix} \\varepsilon^{0} \\\\ \\kappa \\end{bmatrix} = \\begin{bmatrix} N + N_{T} \\\\ M + M_{T} \\end{bmatrix}',
    },
    results: ['eps0_x', 'eps0_y', 'gamma0_xy', 'kappa_x', 'kappa_y', 'kappa_xy'],
    remark:
      'Of each of the six components either the force or the deformation is given. The rows whose force is given are solved for their deformation, with the given deformation brought to the right side; the next step gives the forces of the other rows, and the given ones back.',
    source: 'jones-1999',
    where: 'ch. 4.2 and 4.5',
  },
  forces: {
    title: 'Forces and moments of the deformation',
    formulas: {
      ...each(
        'N_',
        (i) => `${product(rowsOf('A')[i], strains)} + ${product(rowsOf('B')[i], curvatures)} - N_T${axes[i]}`,
      ),
      ...each(
        'M_',
        (i) => `${product(rowsOf('B')[i], strains)} + ${product(rowsOf('D')[i], curvatures)} - M_T${axes[i]}`,
      ),
    },
    source: 'jones-1999',
    where: 'ch. 4.2 and 4.5',
  },
  strainAtHeight: {
    title: 'Strain at this height',
    formulas: {
      eps_x: 'eps0_x + z kappa_x',
      eps_y: 'eps0_y + z kappa_y',
      gamma_xy: 'gamma0_xy + z kappa_xy',
    },
    source: 'jones-1999',
    where: 'ch. 4.2',
  },
  freeStrain: {
    title: 'Free strain at this height, in the axes of the ply',
    formulas: {
      free1: 'alpha1*(DeltaT + g_T z) + beta1 C',
      free2: 'alpha2*(DeltaT + g_T z) + beta2 C',
    },
    source: 'jones-1999',
    where: 'ch. 4.5',
  },
  strainInPlyAxes: {
    title: 'The same strain in the axes of the ply',
    formulas: {
      eps1: 'eps_x cos(theta)^2 + eps_y sin(theta)^2 + gamma_xy sin(theta) cos(theta)',
      eps2: 'eps_x sin(theta)^2 + eps_y cos(theta)^2 - gamma_xy sin(theta) cos(theta)',
      gamma12: '2*(eps_y - eps_x) sin(theta) cos(theta) + gamma_xy*(cos(theta)^2 - sin(theta)^2)',
    },
    source: 'jones-1999',
    where: 'ch. 2.6',
  },
  stressInPlyAxes: {
    title: 'Stress in the axes of the ply',
    formulas: {
      sigma1: 'Q11 eps1 + Q12 eps2',
      sigma2: 'Q12 eps1 + Q22 eps2',
      tau12: 'Q66 gamma12',
    },
    source: 'jones-1999',
    where: 'ch. 2.5',
  },
  stressOfMechanicalStrain: {
    title: 'Stress in the axes of the ply, of the strain less the free strain',
    formulas: {
      sigma1: 'Q11*(eps1 - free1) + Q12*(eps2 - free2)',
      sigma2: 'Q12*(eps1 - free1) + Q22*(eps2 - free2)',
      tau12: 'Q66 gamma12',
    },
    source: 'jones-1999',
    where: 'ch. 2.5 and 4.5',
  },
  stressInLaminateAxes: {
    title: 'The same stress in the axes of the laminate',
    formulas: {
      sigma_x: 'sigma1 cos(theta)^2 + sigma2 sin(theta)^2 - 2 tau12 sin(theta) cos(theta)',
      sigma_y: 'sigma1 sin(theta)^2 + sigma2 cos(theta)^2 + 2 tau12 sin(theta) cos(theta)',
      tau_xy: '(sigma1 - sigma2) sin(theta) cos(theta) + tau12*(cos(theta)^2 - sin(theta)^2)',
    },
    source: 'jones-1999',
    where: 'ch. 2.6',
  },
} as const satisfies Record<string, Rule>;
