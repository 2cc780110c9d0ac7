import type { Rule, SymbolTable } from '../rule.js';

export const inPlaneSymbols = {
  f_S: {
    kind: 'number',
    meaning: 'width beside the hole in which fibres straighten again, over the width of the hole',
  },
  s_h: { kind: 'length', meaning: 'distance of the holes across the loaded fibres' },
  x_f: { kind: 'fraction', meaning: 'share of the width whose fibres are disturbed' },
  f_P: { kind: 'number', meaning: 'length of the resin pocket over its width' },
  phi_w: { kind: 'number', meaning: 'greatest angle of the fibres beside a hole, in radians' },
  phi_0: { kind: 'number', meaning: 'waviness of the fibres before stitching, in radians' },
  gamma_y: { kind: 'number', meaning: 'shear strain at which the ply yields' },
  E_L: {
    kind: 'modulus',
    meaning:
      'modulus of the ply along the loaded fibres; of a cloth loaded along its second direction the modulus there',
  },
  G_L12: { kind: 'modulus', meaning: 'shear modulus of that ply in its plane' },
  nu_L: { kind: 'number', meaning: "Poisson's ratio of that ply, stretched along the loaded fibres" },
  c_w: { kind: 'number', meaning: 'share by which waviness softens the disturbed fibres' },
  k_E: { kind: 'fraction', meaning: 'modulus left' },
  k_k: { kind: 'fraction', meaning: 'kinking strength left of the disturbed fibres' },
  k_C: { kind: 'fraction', meaning: 'strength left in compression, a mean over the width' },
  x_k: { kind: 'fraction', meaning: 'share of the fibres under the needle that are cut' },
  d_K: { kind: 'length', meaning: 'width that the needle takes' },
  k_T: { kind: 'fraction', meaning: 'strength left in tension, by cut fibres alone' },
  k_B0: { kind: 'fraction', meaning: 'strength left in bending across a row, holes as gaps' },
  k_B1: { kind: 'fraction', meaning: 'strength left in bending across a row, by cut fibres alone' },
  p_r: { kind: 'length', meaning: 'distance of the holes along a row' },
  A_B: { kind: 'smallArea', meaning: 'area of the thread in a hole' },
  l_h: { kind: 'length', meaning: 'distance of the holes along the loaded fibres' },
  A_P: { kind: 'smallArea', meaning: 'area that one stitch takes with its resin pocket' },
  x_t: { kind: 'fraction', meaning: 'share of the area that the thread alone takes' },
  x_p: { kind: 'fraction', meaning: 'share of the area that thread and resin pockets take' },
  k_t: { kind: 'number', meaning: 'thickness or fibre fraction over that before, for the thread alone' },
  k_p: { kind: 'number', meaning: 'thickness or fibre fraction over that before, for thread and resin pockets' },
  k_p1: { kind: 'number', meaning: 'thickness or fibre fraction over that before, pockets along the rows' },
  k_p2: { kind: 'number', meaning: 'thickness or fibre fraction over that before, pockets across the rows' },
  k_pm: { kind: 'number', meaning: 'thickness or fibre fraction over that before, mean of both' },
} as const satisfies SymbolTable;

const price = { where: 'docs/theory/in-plane-price.md' } as const;

export const inPlaneRules = {
  disturbedWidth: {
    title: 'Share of the width whose fibres a row of holes disturbs',
    formulas: { x_f: 'min(1, (d_h + f_S d_h) / s_h)', phi_w: '1 / f_P' },
    remark: 'By the single values of what is not known; the ranges are those of the results.',
    source: 'mouritz-cox-2000',
    ...price,
  },
  pocketWidth: {
    title: 'Width of hole or resin pocket, from the thread in it',
    formulas: { d_h: 'f_h d_B' },
    source: 'common-practice',
    ...price,
  },
  softerFibres: {
    title: 'Modulus along the loaded fibres',
    formulas: {
      c_w: '(E_L / G_L12 - 2*(1 + nu_L))*phi_w^2 / 2',
      k_E: '1 - x_f*(1 - 1 / (1 + c_w))',
    },
    source: 'mouritz-cox-2000',
    ...price,
  },
  kinkingFibres: {
    title: 'Strength of the loaded fibres in compression',
    formulas: {
      k_k: '(gamma_y + phi_0) / (gamma_y + phi_0 + phi_w)',
      k_C: '1 - x_f*(1 - k_k)',
    },
    source: 'budiansky-1983',
    ...price,
  },
  cutFibres: {
    title: 'Strength by what is left of the fibres: loaded fibres in tension, fibres across a row in bending',
    formulas: {
      k_T: '1 - x_k*min(1, d_K / s_h)',
      k_B0: 'max(0, 1 - d_h / p_r)',
      k_B1: '1 - x_k*min(1, d_K / p_r)',
    },
    source: 'mouritz-cox-2000',
    ...price,
  },
  crowding: {
    title: 'Room that thread and resin take',
    formulas: {
      A_B: 'pi d_B^2 / 4',
      l_h: '1 / (N s_h)',
      A_P: 'max(A_B, d_h*min(f_P d_h, l_h) / 2)',
      x_t: 'N A_B',
      x_p: 'N A_P',
      k_t: '1 / (1 - x_t)',
      k_p: '1 / (1 - min(0.5, x_p))',
    },
    remark: 'Under a soft tool the thickness grows by as much; in a closed one the fibre fraction between the holes.',
    source: 'mouritz-cox-2000',
    ...price,
  },
  crowdingOfBoth: {
    title: 'Room that thread and resin take, of fibres both ways',
    formulas: { k_pm: '(k_p1 + k_p2) / 2' },
    remark: 'Resin pockets lie along the fibres of every layer: the mean of those along and across the rows.',
    source: 'mouritz-cox-2000',
    ...price,
  },
} as const satisfies Record<string, Rule>;
