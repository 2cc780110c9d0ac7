import type { Rule } from '../rule.js';
import { specimenRules } from './specimen.js';

export { couponSymbols } from './coupon-symbols.js';

const prediction = { source: 'selvage-2026-derivation', where: 'docs/theory/coupon-prediction.md' } as const;

const medians =
  'A coupon is computed at the middle of what is known, half of the samples on either side; the working of a stitch plan takes the likeliest values, so that its stitch differs. Parameters whose median is the likeliest value are not listed.';

export const couponRules = {
  armShear: {
    title: 'Shear stiffness of the arm through its thickness',
    form: {
      text: 'Sa = H11, by the energy of the shear stresses through the thickness',
      tex: 'S_a = H_{11} \\text{ by the energy of the shear stresses through the thickness}',
    },
    results: ['S_a'],
    remark: 'One homogeneous ply: 5/6 of its shear modulus times its thickness.',
    source: 'whitney-1973',
    where: 'docs/theory/transverse-shear.md',
  },
  plyThrough: {
    title: 'Modulus of a ply through its thickness, where it is not given',
    each: { E_zk: '2*(1 + nu23) G23' },
    row: 'material',
    remark: 'As if alike across the fibres. Once for each material, in the order of the plies.',
    source: 'jones-1999',
    where: 'ch. 2',
  },
  armThrough: {
    title: 'Modulus of the arm through its thickness',
    sums: { c_z: 't_k / (h E_zk)' },
    formulas: { E_z: '1 / c_z' },
    row: 'ply',
    source: 'jones-1999',
  },
  armHeldAcross: {
    title: 'The laminate as a wide arm that bends along its length: strain and curvature across are held',
    formulas: {
      D_a: 'D11 - (A66 B11^2 - 2 A16 B11 B16 + A11 B16^2) / (A11 A66 - A16^2)',
      A_a: 'A11 - A16^2 / A66',
    },
    remark: 'About the neutral plane; the arm may shear but not twist.',
    source: 'jones-1999',
    where: 'ch. 4',
  },
  armFreeAcross: {
    title: 'The laminate as a narrow arm that bends along its length: free across',
    formulas: { D_a: '1 / d11', A_a: 'd11 / (a11 d11 - b11^2)' },
    source: 'jones-1999',
    where: 'ch. 4',
  },
  armCurvatures: {
    title: 'Curvatures at which a ply first breaks',
    form: {
      text: 'κ at which the first ply reaches one of its limits of strain, as σ/E of its own axes',
      tex: '\\kappa \\text{ at which the first ply reaches one of its limits of strain}',
    },
    results: ['kappa_t', 'kappa_c'],
    remark:
      'Maximum strain, ply by ply at both faces, under a curvature of 1 with the stretch that leaves the arm free of force: the limit over that strain. On either side of the neutral plane the least counts.',
    source: 'jones-1999',
    where: 'ch. 2 and 4',
  },
  armStrength: {
    title: 'Surface strain at which the arm breaks',
    formulas: { eps_t: 'kappa_t h / 2', eps_c: 'kappa_c h / 2' },
    source: 'jones-1999',
    where: 'ch. 2 and 4',
  },
  middleOfTests: {
    title: 'Middle of the samples, weighed by the tests',
    form: { text: 'weighted geometric mean of the samples', tex: '\\text{weighted geometric mean of the samples}' },
    results: ['f_D', 'f_B', 'f_G'],
    remark:
      'Samples weigh by how near they come to the peak forces of the tests; all numbers that follow are those of this middle.',
    ...prediction,
  },
  middleOfTestsInRange: {
    title: 'Middle of the samples, weighed by the tests; the bond by its place in its range',
    form: {
      text: 'weighted means of the samples: geometric, of the place the arithmetic one',
      tex: '\\text{weighted means of the samples}',
    },
    results: ['f_D', 'f_B', 'x_G'],
    remark:
      'Samples weigh by how near they come to the peak forces of the tests; all numbers that follow are those of this middle.',
    ...prediction,
  },
  medianBelowLikeliest: {
    title: 'Parameter of the stitch at its middle: the median of the triangle of what is known of it',
    formulas: { x_M: 'x_l + sqrt((x_h - x_l)*(x_mode - x_l) / 2)' },
    remark: medians,
    ...prediction,
  },
  medianAboveLikeliest: {
    title: 'Parameter of the stitch at its middle: the median of the triangle of what is known of it',
    formulas: { x_M: 'x_h - sqrt((x_h - x_l)*(x_h - x_mode) / 2)' },
    remark: medians,
    ...prediction,
  },
  armsAtMiddle: {
    title: 'The arms at the middle of the samples',
    formulas: {
      D_1: 'f_D D_a1',
      D_2: 'f_D D_a2',
      A_1: 'f_D A_a1',
      A_2: 'f_D A_a2',
      S_1: 'f_D S_a1',
      S_2: 'f_D S_a2',
    },
    ...prediction,
  },
  strengthAtMiddle: {
    title: 'Breaking strain of the arms at the middle of the samples',
    formulas: {
      eps_t1: 'f_B eps_ta1',
      eps_c1: 'f_B eps_ca1',
      eps_t2: 'f_B eps_ta2',
      eps_c2: 'f_B eps_ca2',
    },
    ...prediction,
  },
  bondAtMiddle: {
    title: 'The bond at the middle of the samples',
    formulas: { G_0: 'f_G G_g' },
    ...prediction,
  },
  bondBelowLikeliest: {
    title:
      'The bond at the middle of the samples, by its place in the triangle over its range: below the likeliest value',
    formulas: { G_0: 'G_l + sqrt(x_G*(G_h - G_l)*(G_g - G_l))' },
    remark: 'The place is the share of the triangle that lies below.',
    ...prediction,
  },
  bondAboveLikeliest: {
    title:
      'The bond at the middle of the samples, by its place in the triangle over its range: above the likeliest value',
    formulas: { G_0: 'G_h - sqrt((1 - x_G)*(G_h - G_l)*(G_h - G_g))' },
    remark: 'The place is the share of the triangle that lies below.',
    ...prediction,
  },
  greatestLoad: {
    title: 'Greatest load of the record',
    form: { text: 'P_max = greatest P', tex: 'P_{max} = \\max P' },
    results: ['P_max', 'a', 'Delta'],
    remark:
      'With the crack and the displacement at which it is reached. At the middle of what is known: a report leads with the median over samples.',
    ...prediction,
  },
  readMean: {
    title: 'Toughness that a tester reads: the mean of these values',
    sums: { G_S: 'G_L' },
    formulas: { G_R: 'G_S / n_o' },
    row: 'value',
    remark:
      'With rows: what the loads show each time a row gives way, those of one jump once; without: over the growth. At the middle of what is known: a report leads with the median over samples, which differs a little.',
    ...prediction,
  },
  readGreatest: {
    title: 'Toughness that a tester reads: the greatest of these values, since the bridged zone never gets full',
    form: { text: 'G_R = greatest G_L', tex: 'G_R = \\max G_L' },
    results: ['G_R'],
    row: 'value',
    remark:
      'In the order of growth. At the middle of what is known: a report leads with the median over samples, which differs a little.',
    ...prediction,
  },
  ...specimenRules,
} as const satisfies Record<string, Rule>;
