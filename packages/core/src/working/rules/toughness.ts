import type { Rule, SymbolTable } from '../rule.js';

export const toughnessSymbols = {
  G_0: { kind: 'toughness', meaning: 'toughness of the bond without stitches' },
  G_st: { kind: 'toughness', meaning: 'toughness that the stitches add with the bridged zone full' },
  G_ss: { kind: 'toughness', meaning: 'steady toughness, with the bridged zone full' },
  D_1: { kind: 'bendingStiffness', meaning: 'bending stiffness per width of the first arm' },
  D_2: { kind: 'bendingStiffness', meaning: 'bending stiffness per width of the second arm' },
  D_m: { kind: 'bendingStiffness', meaning: 'bending stiffness per width of each of two like arms that open as much' },
  l_b: { kind: 'length', meaning: 'bridging length' },
  f_z1: { kind: 'number', meaning: 'length of a full zone over the bridging length, least' },
  f_z2: { kind: 'number', meaning: 'length of a full zone over the bridging length, most' },
  f_zn: { kind: 'number', meaning: 'zones in print over computed ones; 1 for a measured stitch' },
  l_z1: { kind: 'length', meaning: 'length of a full bridged zone, least' },
  l_z2: { kind: 'length', meaning: 'length of a full bridged zone, most' },
  l_zn: { kind: 'length', meaning: 'growth among the stitches below which no steady value is given' },
  s_r: { kind: 'length', meaning: 'distance of the rows that the crack meets' },
  r_s: { kind: 'number', meaning: 'distance of the rows over the bridging length' },
  f_T: { kind: 'number', meaning: 'toughness read from the loads of a test over the steady one' },
  f_k: { kind: 'number', meaning: 'factor of the fit of ten computed cases' },
  m_k: { kind: 'number', meaning: 'exponent of the fit of ten computed cases' },
  eps_a1: { kind: 'strain', meaning: 'strain at which the surface of the first arm breaks' },
  eps_a2: { kind: 'strain', meaning: 'strain at which the surface of the second arm breaks' },
  M_1: { kind: 'momentPerLength', meaning: 'moment per width that breaks the first arm' },
  M_2: { kind: 'momentPerLength', meaning: 'moment per width that breaks the second arm' },
  M_f: { kind: 'momentPerLength', meaning: 'moment per width that breaks the weaker arm' },
  G_f: { kind: 'toughness', meaning: 'toughness at which an arm breaks at the tip' },
  G_u: { kind: 'toughness', meaning: 'toughness that can be used: the steady one, or that at which an arm breaks' },
} as const satisfies SymbolTable;

export const toughnessRules = {
  toughnessAdded: {
    title: 'Toughness that the stitches add once the bridged zone is full',
    formulas: { G_st: 'N W' },
    source: 'bao-suo-1992',
  },
  steadyToughness: {
    title: 'Steady toughness',
    formulas: { G_ss: 'G_0 + G_st' },
    source: 'bao-suo-1992',
  },
  bridgingLength: {
    title: 'Bridging length, and length of the zone',
    formulas: {
      D_m: '2 / (1 / D_1 + 1 / D_2)',
      l_b: '(2 D_m w_p / (N F_p))^(1/4)',
      l_z1: 'f_z1 l_b',
      l_z2: 'f_z2 l_b',
      l_zn: 'f_zn l_z2',
    },
    remark: 'Force and opening are those at the peak of the law.',
    source: 'selvage-2026-derivation',
    where: 'docs/theory/stitch-toughness.md',
  },
  rowsApart: {
    title: 'Rows that break one by one',
    formulas: { r_s: 's_r / l_b' },
    source: 'selvage-2026-derivation',
    where: 'docs/theory/stitch-toughness.md',
  },
  testOverSteady: {
    title: 'What a test with aligned rows reads over the steady toughness',
    formulas: { f_T: '1 + f_k r_s^m_k' },
    remark: 'A fit of computed cases with threads that break.',
    source: 'independent-script',
  },
  armBreaks: {
    title: 'Moment that breaks an arm, at its surface',
    formulas: { M_1: '2 D_1 eps_a1 / h_1', M_2: '2 D_2 eps_a2 / h_2', M_f: 'min(M_1, M_2)', G_f: 'M_f^2 / D_m' },
    remark:
      'The lesser of the strains in tension and compression counts, since one surface is stretched and the other pressed.',
    source: 'selvage-2026-derivation',
    where: 'docs/theory/stitch-toughness.md',
  },
  usableToughness: {
    title: 'Toughness that can be used',
    formulas: { G_u: 'min(G_ss, G_f)' },
    source: 'selvage-2026-derivation',
    where: 'docs/theory/stitch-toughness.md',
  },
} as const satisfies Record<string, Rule>;
