import type { Rule } from '../rule.js';

const own = { source: 'selvage-2026-derivation', where: 'docs/theory/specimens.md' } as const;
const opening = {
  source: 'selvage-2026-derivation',
  where:
    'root of an arm with shear on the elastic bed of its bond, after Kanninen 1973 and Williams 1989; docs/theory/specimens.md',
} as const;
const peel = { source: 'kinloch-lau-williams-1994', where: 'with stretch and shear; docs/theory/peel.md' } as const;

/** Forces along and across an arm that stands at an angle to the plane of the bond, under a force square to that plane. */
const resolved = (force: string, at: string): Record<string, string> => ({
  [`N_${at}`]: `${force} sin(theta_${at})`,
  [`T_${at}`]: `${force} cos(theta_${at})`,
});

/** Of the specimens that coupons are: cantilever, flexure, peel, wedged edge. */
export const specimenRules = {
  openingPair: {
    title: 'Both arms as one beam of openings, on the bed of their bond',
    formulas: {
      D_p: '1 / (1 / D_1 + 1 / D_2)',
      S_p: '1 / (1 / S_1 + 1 / S_2)',
      h_p: 'h_1 + h_2',
      E_p: 'h_p / (h_1 / E_z1 + h_2 / E_z2)',
      k_b: '2 E_p / h_p',
      chi: 'sqrt(D_p / S_p + 2 sqrt(D_p / k_b))',
    },
    remark: 'Both carry the same moment and shear force; the bed is what the inner halves of the arms yield.',
    ...opening,
  },
  openingLoad: {
    title: 'Load at which the crack grows without stitches',
    formulas: { P_0: 'b*sqrt(2 G_0 D_p) / (a_0 + chi)' },
    ...opening,
  },
  openingCompliance: {
    title: 'Opening under the load without stitches',
    formulas: { C_n: '(((a_0 + chi)^3 - chi^3) / (3 D_p) + chi / sqrt(k_b D_p)) / b' },
    ...opening,
  },
  openingRows: {
    title: 'Toughness from the load, state by state',
    each: { G_L: '(P*(a + chi))^2 / (2 b^2 D_p)' },
    row: 'state',
    remark:
      'For two like arms of modulus E and thickness h the same as 12 P²(a + χ)²/(b² E h³). Large displacements are not corrected for, in the simulation neither.',
    ...opening,
  },
  areaRows: {
    title: 'Toughness from the work of the load, piece by piece of the growth',
    each: { G_A: '(W_p - U_p) / (b a_p)' },
    row: 'piece of growth',
    remark: 'Work under the record, less what unloading would return. Jumps are in it.',
    ...own,
  },
  slidingPair: {
    title: 'Both arms bending as one and sliding on each other',
    formulas: {
      D_u: 'D_1 + D_2',
      H_p: '(h_1 + h_2) / 2',
      A_p: '1 / (1 / A_1 + 1 / A_2)',
      D_b: 'D_u + A_p H_p^2',
      B_p: '1 / (1 / A_p + H_p^2 / D_u)',
      k_s: '1 / (5 h_1^2 / (72 S_1) + 5 h_2^2 / (72 S_2))',
      omega: 'sqrt(k_s / B_p)',
    },
    source: 'selvage-2026-derivation',
    where: 'root of sliding arms, beside Wang & Williams 1992; docs/theory/specimens.md',
  },
  slidingLoad: {
    title: 'Load at which the crack grows without stitches',
    formulas: {
      m_a: 'a_0 / 2 - max(0, a_0 - x_P) / 2',
      P_0: 'b*sqrt(2 G_0 / (1 / D_u - 1 / D_b)) / (m_a + q_a / omega)',
    },
    source: 'russell-street-1982',
    where: 'with the root of the arms; docs/theory/specimens.md',
  },
  slidingRows: {
    title: 'Toughness from the load, state by state',
    each: {
      m_a: 'a / 2 - max(0, a - x_P) / 2',
      G_L: '(P*(m_a + q_a / omega) / b)^2*(1 / D_u - 1 / D_b) / 2',
    },
    row: 'state',
    remark:
      'Under one load and with like arms of modulus E and thickness h the same as 9 P²(a + 1/ω)²/(16 b² E h³). Rubbing is not in it.',
    source: 'russell-street-1982',
    where: 'with the root of the arms; docs/theory/specimens.md',
  },
  peelLoad: {
    title: 'Load at which the crack grows without stitches, between straight arms and upright ones',
    formulas: {
      P_s: 'b*sqrt(2 G_0 D_p) / (a_0 + chi)',
      P_u: 'b G_0 / 2',
      P_0: '(P_s^2.7 + P_u^2.7)^(1 / 2.7)',
    },
    remark:
      'Within 4 % of the simulation, whose own load is that of the first state below in which the bond gives way.',
    source: 'selvage-2026-derivation',
    where: 'docs/theory/coupon-prediction.md',
  },
  peelRows: {
    title:
      'Toughness from the load of two like arms, state by state: force per width, angle, stretch and shear at the grips',
    each: {
      P_w: 'P / b',
      ...resolved('P_w', 'g'),
      G_L: '2*(N_g + N_g^2 / (2 A_1) + T_g^2 / (2 S_1))',
    },
    row: 'state',
    remark: 'Arms that stand upright and do not stretch: 2 P/b.',
    ...peel,
  },
  peelFrontRows: {
    title: 'Energy that the front sets free, of bending and of the forces there, state by state',
    each: {
      G_b: '2 M_0^2 / (2 D_1)',
      ...resolved('V_0', '0'),
      G_F: 'G_b + 2*(N_0 + N_0^2 / (2 A_1) + T_0^2 / (2 S_1))',
    },
    row: 'state',
    remark:
      'While the crack grows it is the toughness of the bond; what the toughness from the load has more, the stitches behind the front take.',
    ...peel,
  },
  peelUnlikeRows: {
    title: 'Toughness from the load of two unlike arms, state by state: forces, angles, stretch and shear at the grips',
    each: {
      N_g: 'H_g cos(theta_g) + V_g sin(theta_g)',
      T_g: 'V_g cos(theta_g) - H_g sin(theta_g)',
      N_g2: 'H_g2 cos(theta_g2) + V_g2 sin(theta_g2)',
      T_g2: 'V_g2 cos(theta_g2) - H_g2 sin(theta_g2)',
      G_L: 'N_g - H_g + N_g^2 / (2 A_1) + T_g^2 / (2 S_1) + N_g2 - H_g2 + N_g2^2 / (2 A_2) + T_g2^2 / (2 S_2)',
    },
    row: 'state',
    remark: 'The bonded part behind the front is free to turn; H runs along it.',
    ...peel,
  },
  landingRows: {
    title: 'Toughness from the load where a jump lands, between two states of the path',
    each: { G_L: 'G_i + x_j*(G_j - G_i)' },
    row: 'landing',
    remark:
      'The grips stay where the specimen jumps; it lands where the path comes to that displacement again, between two computed states, in proportion to it.',
    source: 'selvage-2026-derivation',
    where: 'docs/theory/peel.md',
  },
  nextToGive: {
    title: 'How much further the next thing lies that would give way',
    formulas: { f_n: 'P_n / P_f' },
    remark:
      'By the same simulation with the first unbreakable. Shares of samples belong to the ranges and are not part of this working.',
    ...own,
  },
  armShare: {
    title: 'How near an arm comes to breaking',
    formulas: { x_a: 'eps_m / eps_f' },
    ...own,
  },
  rowsHold: {
    title: 'Rows that hold: force of a row from that of one stitch at its opening',
    each: { F_r: 'n_r F_w' },
    row: 'row of stitches',
    remark:
      'Openings are those of the simulation. The force of one stitch is read off its law at that opening; one that was opened further before unloads straight. Rows without force are left out.',
    ...own,
  },
  armBends: {
    title: 'The sharpest bend of the arms: no row between the load and it',
    results: ['a', 'x_m'],
    formulas: { M_b: 'P x_m / b', eps_m: 'M_b h_w / (2 D_w)' },
    remark: 'Behind the tip the moment is statics: it is greatest at a row or at the tip.',
    ...own,
  },
  armBendsBetweenRows: {
    title: 'The sharpest bend of the arms: moment of the load, less those of the rows between the load and it',
    results: ['a', 'x_m'],
    sums: { M_k: 'F_r*(x_m - x_r)' },
    formulas: { M_b: '(P x_m - M_k) / b', eps_m: 'M_b h_w / (2 D_w)' },
    row: 'row of stitches',
    remark:
      'Behind the tip the moment is statics: it is greatest at a row or at the tip. A moment below 0 bends the arms back.',
    ...own,
  },
  slidingBends: {
    title: 'The sharpest bend of the arms, behind the tip: both bend as one and slide on each other',
    results: ['a', 'x_m', 'N_row'],
    formulas: {
      m_x: 'x_m / 2 - max(0, x_m - x_P) / 2',
      eps_m: 'abs(P m_x - H_p N_row) h_w / (2 D_u b) + N_row / (A_w b)',
    },
    remark: 'Moments are statics; what rows and friction keep from sliding pulls one arm and presses the other.',
    ...own,
  },
  slidingBendsInBond: {
    title: 'The sharpest bend of the arms, under a load in the bond: as one section',
    results: ['a', 'x_m'],
    formulas: {
      m_x: 'x_m / 2 - max(0, x_m - x_P) / 2',
      x_o: 'H_p A_o / (A_w + A_o) + h_w / 2',
      eps_m: 'P m_x x_o / (D_b b)',
    },
    ...own,
  },
  peelBends: {
    title: 'The sharpest bend of an arm, and how near it comes to breaking there',
    results: ['a', 'P', 'x_m', 'M_b', 'theta_b', 'H_b', 'V_b'],
    formulas: {
      N_b: 'H_b cos(theta_b) + V_b sin(theta_b)',
      eps_b: 'M_b h_w / (2 D_w)',
      eps_N: 'N_b / A_w',
      x_a: 'max((eps_b + eps_N) / eps_t, (eps_b - eps_N) / eps_c)',
    },
    remark:
      'Moment, angle and forces are the solution of the arms at this place; of two like arms nothing pulls along the tail.',
    source: 'reissner-1972',
    where: 'docs/theory/peel.md',
  },
  peelBendEnergy: {
    title: 'Moment at the sharpest bend from the load: energy of bending and forces there',
    formulas: {
      N_r: 'V_r sin(theta_b)',
      T_r: 'V_r cos(theta_b)',
      G_e: '2*(M_b^2 / (2 D_1) + N_r + N_r^2 / (2 A_1) + T_r^2 / (2 S_1))',
    },
    remark:
      'With the forces on the side of the grips. From the grips to the next row this energy stays the same: at the hindmost row that holds it is the toughness from the load, from which the moment follows.',
    ...peel,
  },
  splitRoot: {
    title: 'Split without stitches: where the opening of the mouth sets free what the bond takes',
    form: {
      text: 'length of the split at which Gns = G0, at most the depth',
      tex: 'a_s \\text{ at which } G_{ns} = G_0,\\text{ at most the depth}',
    },
    results: ['a_s'],
    remark: 'A root, found by number; the next step has the energy there. Slender arms: a⁴ = 9 D Δ²/(2 G).',
    ...own,
  },
  splitWithoutStitches: {
    title: 'Energy that the tip sets free at the length of the split without stitches',
    formulas: {
      C_n: '(((a_s + chi)^3 - chi^3) / (3 D_p) + chi / sqrt(k_b D_p)) / b',
      P_ns: 'Delta / C_n',
      G_ns: '(P_ns*(a_s + chi))^2 / (2 b^2 D_p)',
    },
    ...own,
  },
  splitStops: {
    title: 'Where the split stops, and the force that then holds the mouth open',
    form: {
      text: 'length at which Gt = G0 with the rows holding, at most the depth less the root',
      tex: 'a \\text{ at which } G_t = G_0 \\text{ with the rows holding}',
    },
    results: ['a', 'P_m'],
    remark:
      'Found by growing the split from near the edge in small steps; rows that get past their greatest force break on the way. At the middle of what is known: a report leads with the median over samples.',
    ...own,
  },
  splitMomentAlone: {
    title: 'Moment and shear force of the arms at the tip: those of the force at the mouth',
    formulas: { M_t: 'P_m a / b', V_t: 'P_m / b' },
    ...own,
  },
  splitMoment: {
    title:
      'Moment and shear force of the arms at the tip: those of the force at the mouth, less those of the rows behind the tip',
    sums: { M_r: 'F_r*(a - x_r)', F_R: 'F_r' },
    formulas: { M_t: '(P_m a - M_r) / b', V_t: '(P_m - F_R) / b' },
    row: 'row of stitches',
    remark: 'Statics, with the forces that the rows have at their openings.',
    ...own,
  },
  splitTip: {
    title: 'Energy that the tip sets free where the split stops',
    formulas: { w_c: '(M_t + chi V_t) / sqrt(k_b D_p)', G_t: 'k_b w_t^2 / 2' },
    remark:
      'w_t is the opening of the simulation, w_c that of a bond without end and without rows ahead of the tip: near each other where neither is close. The energy is at most the toughness of the bond.',
    source: 'kanninen-1973',
    where: 'beam on an elastic bed; docs/theory/specimens.md',
  },
} as const satisfies Record<string, Rule>;
