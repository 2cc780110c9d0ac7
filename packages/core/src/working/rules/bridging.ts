import type { Rule, SymbolTable } from '../rule.js';

export const bridgingSymbols = {
  t_t: { kind: 'linearDensity', meaning: 'mass per length of one strand of thread' },
  rho_t: { kind: 'density', meaning: 'density of the fibre of the thread' },
  phi_t: { kind: 'fraction', meaning: 'packing: share of fibre inside the outline of a strand' },
  d_t: { kind: 'length', meaning: 'diameter of one strand of thread' },
  n_l: { kind: 'number', meaning: 'legs of this thread in the hole' },
  n_L: { kind: 'number', meaning: 'legs in the hole' },
  E_t: { kind: 'threadModulus', meaning: 'modulus of the thread as tabled' },
  sigma_t: { kind: 'tenacity', meaning: 'tenacity of the thread as tabled' },
  f_E: { kind: 'number', meaning: 'stiffness of the thread in the laminate over that of the table' },
  f_F: { kind: 'number', meaning: 'strength of the thread in hand over that of the table' },
  d_l: { kind: 'length', meaning: 'diameter of one leg, the mean where threads differ' },
  d_L: { kind: 'length', meaning: 'diameters of all legs in the hole together' },
  d_Q: { kind: 'smallArea', meaning: 'squares of the diameters of all legs in the hole together' },
  EA_l: { kind: 'force', meaning: 'axial stiffness of all legs in the hole' },
  eps_l: { kind: 'strain', meaning: 'strain at which this thread breaks' },
  eps_F: { kind: 'strain', meaning: 'strain at which the first of the threads in the hole breaks' },
  F_t: { kind: 'force', meaning: 'strength of all legs in the hole, straight and before sewing' },
  tau_l: { kind: 'stress', meaning: 'friction of the thread in its hole' },
  q_l: { kind: 'forcePerLength', meaning: 'friction per length along the legs' },
  p_0: { kind: 'stress', meaning: 'pressure at which the thread ploughs into the laminate' },
  f_w: { kind: 'number', meaning: 'width that bears over the diameter of the bundle' },
  q_n: { kind: 'forcePerLength', meaning: 'force per length at which the legs plough sideways' },
  f_l: { kind: 'fraction', meaning: 'depth of the lock under the needle side, of the thickness' },
  z_l: { kind: 'length', meaning: 'depth of the lock under the needle side' },
  z_c: { kind: 'length', meaning: 'depth of the crack under the needle side' },
  l_1: { kind: 'length', meaning: 'leg from the crack toward the needle side, to its anchor or end' },
  l_2: { kind: 'length', meaning: 'leg from the crack toward the other side, to its anchor or end' },
  l_s: { kind: 'length', meaning: 'leg from the crack to its anchor or end, on this side' },
  eta_s: { kind: 'fraction', meaning: 'strength left after sewing' },
  eta_a: { kind: 'fraction', meaning: 'strength left at an anchor' },
  F_a: { kind: 'force', meaning: 'force that breaks the thread at its anchor' },
  f_b: { kind: 'number', meaning: 'how far a bend over a face beds in until it breaks, in diameters of a leg' },
  C_a: { kind: 'stretchCompliance', meaning: 'how far the anchor gives way per force at it' },
  F_s: { kind: 'force', meaning: 'force at the crack at which this side gives way' },
  F_c: { kind: 'force', meaning: 'force that breaks the stitch in the plane of the crack' },
  F_s1: { kind: 'force', meaning: 'force at the crack at which the side of the needle gives way' },
  F_s2: { kind: 'force', meaning: 'force at the crack at which the other side gives way' },
  F_t1: { kind: 'force', meaning: 'straight strength of the legs on the side of the needle' },
  F_t2: { kind: 'force', meaning: 'straight strength of the legs on the other side' },
  F_p: { kind: 'force', meaning: 'greatest force of one stitch' },
  s_v: { kind: 'fraction', meaning: 'scatter of the strength of a site: coefficient of variation' },
  m_w: { kind: 'number', meaning: 'Weibull exponent of that scatter' },
  x_c: { kind: 'fraction', meaning: 'stitches that break in the plane of the crack' },
  x_1: { kind: 'fraction', meaning: 'stitches that give way on the side of the needle' },
  x_2: { kind: 'fraction', meaning: 'stitches that give way on the other side' },
  x_s: { kind: 'fraction', meaning: 'stitches that give way on this side' },
  e_s: { kind: 'length', meaning: 'length that this side lets out of the plane of the crack' },
  e_1: { kind: 'length', meaning: 'length let out on the side of the needle' },
  e_2: { kind: 'length', meaning: 'length let out on the other side' },
  w_p: {
    kind: 'length',
    meaning: 'length let out by both sides as the stitch gives way; straight open, the opening at its greatest force',
  },
  q_p: { kind: 'forcePerLength', meaning: 'friction per length of the stitches that pull out' },
  W_e: { kind: 'energy', meaning: 'work of stretch and slip on this side until the stitch gives way' },
  W_q: { kind: 'energy', meaning: 'work of pulling out on this side, a mean over the stitches' },
  W_s: { kind: 'energy', meaning: 'work on this side' },
  W_1: { kind: 'energy', meaning: 'work on the side of the needle' },
  W_2: { kind: 'energy', meaning: 'work on the other side' },
  W_c: { kind: 'energy', meaning: 'work of one stitch that opens straight, in closed form' },
  W_x: { kind: 'energy', meaning: 'what the straight chords of the drawn law leave out' },
  W: { kind: 'energy', meaning: 'work of one stitch' },
  f_c: { kind: 'number', meaning: 'pressure that a face bears under a bend over that inside the laminate' },
  f_R: { kind: 'number', meaning: 'radius of the bend as cured, in diameters of a leg' },
  q_b: { kind: 'forcePerLength', meaning: 'force per length at which the face yields under the bends' },
  R_b: { kind: 'length', meaning: 'the most that the radius of the bend can become' },
  F_b0: { kind: 'force', meaning: 'force at the bend from which it cuts into the face' },
  F_b1: { kind: 'force', meaning: 'force at the bend from which it finds no more room' },
  C_b: { kind: 'stretchCompliance', meaning: 'length that a bend sets free per force at it' },
  mu_b: { kind: 'number', meaning: 'friction around a bend' },
  x_b: { kind: 'fraction', meaning: 'share of the force that the bend passes on to the thread on the face' },
  f_g: { kind: 'fraction', meaning: 'share of its perimeter along which the thread on the face is held' },
  q_f: { kind: 'forcePerLength', meaning: 'friction per length of the thread on the face' },
  l_f: { kind: 'length', meaning: 'thread on the face, from the hole to the middle between two holes' },
  F_b: { kind: 'force', meaning: 'force at the bend as the stitch gives way' },
  F_f: { kind: 'force', meaning: 'force in the thread on the face' },
  e_b: { kind: 'length', meaning: 'length that the bend sets free' },
  e_f: { kind: 'length', meaning: 'length that the thread on the face sets free' },
  W_b: { kind: 'energy', meaning: 'work of the force at the bend on what the bend sets free' },
  W_f: { kind: 'energy', meaning: 'work of the force at the bend on what the thread on the face sets free' },
  B_n: { kind: 'stretchCompliance', meaning: 'radii of both arcs of the thread in its bed, per tension' },
  q_n1: { kind: 'forcePerLength', meaning: 'force per length against ploughing, on the side of the needle' },
  q_n2: { kind: 'forcePerLength', meaning: 'force per length against ploughing, on the other side' },
  alpha_p: { kind: 'angle', meaning: 'direction in which the crack moves: 0 opens, 90 slides' },
  theta_t: { kind: 'angle', meaning: 'angle of the thread from its straight hole' },
  theta_r: { kind: 'number', meaning: 'the same angle in radians' },
  w_b: { kind: 'length', meaning: 'opening of the crack as the stitch gives way' },
  u_b: { kind: 'length', meaning: 'sliding of the crack as the stitch gives way' },
  s_d: { kind: 'length', meaning: 'length of thread drawn out of its straight hole' },
  F_n: { kind: 'force', meaning: 'force that closes the crack' },
  F_u: { kind: 'force', meaning: 'force against the sliding of the crack' },
  F_d: { kind: 'force', meaning: 'force along the path of the crack as the stitch gives way' },
  F_m: { kind: 'force', meaning: 'greatest force along the path of the crack' },
  s_F: { kind: 'length', meaning: 'movement of the crack at the greatest force' },
  F_i: { kind: 'force', meaning: 'force at the beginning of a piece of the curve' },
  F_j: { kind: 'force', meaning: 'force at the end of a piece of the curve' },
  w_i: { kind: 'length', meaning: 'opening at the beginning of a piece of the curve' },
  w_j: { kind: 'length', meaning: 'opening at the end of a piece of the curve' },
  d_R: { kind: 'length', meaning: 'diameter of the rod' },
  E_R: { kind: 'modulus', meaning: 'modulus of the rod' },
  sigma_R: { kind: 'stress', meaning: 'strength of the rod' },
  tau_R: { kind: 'stress', meaning: 'friction of the rod in its hole' },
  alpha_R: { kind: 'angle', meaning: 'lean of the rod' },
  mu_R: { kind: 'number', meaning: 'friction at the mouth of the hole of a rod that leans' },
  f_m: { kind: 'number', meaning: 'force outside the mouth of the hole over that inside' },
  h_1: { kind: 'length', meaning: 'thickness on the first side of the crack' },
  h_2: { kind: 'length', meaning: 'thickness on the second side of the crack' },
} as const satisfies SymbolTable;

const law = { source: 'jain-mai-1994', where: 'shear-lag with constant friction; docs/theory/bridging.md' } as const;
const sites = {
  source: 'tong-mouritz-bannister-2002',
  where: 'both sites of rupture; docs/theory/bridging.md',
} as const;
const own = { source: 'selvage-2026-derivation', where: 'docs/theory/bridging.md' } as const;
const sliding = {
  source: 'cox-1999',
  where: 'thread as a string in a bed that yields; docs/theory/bridging.md',
} as const;

/** What a side that has slipped to its anchor lets out, and its work, with what a bend that yields sets free. */
function stretched(more: { readonly length: string; readonly work: string }): Record<string, string> {
  return {
    e_s: `(F_p - q_l l_s / 2)*(l_s / EA_l) + C_a*(F_p - q_l l_s)${more.length}`,
    W_e: `(q_l l_s)^2 l_s / (3 EA_l) + (F_p - q_l l_s)*(F_p + q_l l_s)*(l_s / EA_l + C_a) / 2${more.work}`,
  };
}

const pulledOut = {
  q_p: 'min(q_l, F_p / l_s)',
  W_q: 'x_s q_p l_s^2 / 2',
  W_s: 'W_e + W_q',
};

const bend = {
  q_b: 'p_0 f_c f_w n_L d_l',
  F_b0: 'q_b f_R d_l',
  F_b1: 'max(F_b0, q_b R_b)',
  C_b: '(2 - pi / 2) / q_b',
};

const bendGives = {
  F_b: 'F_p - q_l l_s',
  e_b: 'C_b*(min(max(F_b, F_b0), F_b1) - F_b0)',
  W_b: 'C_b*(min(max(F_b, F_b0), F_b1) - F_b0)*(min(max(F_b, F_b0), F_b1) + F_b0) / 2',
};

export const bridgingRules = {
  legsOfOneThread: {
    title: 'The legs in one hole, all of one thread',
    formulas: {
      d_l: 'sqrt(4 t_t / (pi rho_t phi_t))',
      EA_l: 'n_L t_t E_t f_E',
      F_t: 'n_L t_t sigma_t f_F',
      q_l: 'tau_l*(pi + 2*(n_L - 1)) d_l',
      q_n: 'p_0 f_w*sqrt(n_L) d_l',
    },
    remark: 'Friction acts along a tight cord around legs that lie side by side.',
    ...own,
  },
  legsOfTwoThreads: {
    title: 'The legs in one hole, of two threads',
    each: { d_t: 'sqrt(4 t_t / (pi rho_t phi_t))', eps_l: 'sigma_t f_F / (E_t f_E)' },
    sums: { n_L: 'n_l', EA_l: 'n_l t_t E_t f_E', d_L: 'n_l d_t', d_Q: 'n_l d_t^2' },
    formulas: {
      d_l: 'd_L / n_L',
      F_t: 'EA_l eps_F',
      q_l: 'tau_l*(pi + 2*(n_L - 1)) d_l',
      q_n: 'p_0 f_w*sqrt(d_Q)',
    },
    row: 'thread',
    remark: 'Both stretch together, so that the thread with the least strain at break is the first to break.',
    ...own,
  },
  legsFaceToFace: {
    title: 'Legs on both sides of the crack, from face to face',
    formulas: { l_1: 'z_c', l_2: 'h - z_c' },
    ...own,
  },
  legsAboveLock: {
    title: 'Legs on both sides of the crack, between the needle side and the lock',
    formulas: { z_l: 'f_l h', l_1: 'z_c', l_2: 'z_l - z_c' },
    ...own,
  },
  legsBelowLock: {
    title: 'Legs on both sides of the crack, between the lock and the under side',
    formulas: { z_l: 'f_l h', l_1: 'z_c - z_l', l_2: 'h - z_c' },
    ...own,
  },
  legsAtLock: {
    title: 'Legs on both sides of the crack, which runs through the lock',
    formulas: { z_l: 'f_l h', l_1: 'z_c', l_2: 'h - z_c' },
    remark:
      'The lock lies within a diameter of the crack: each side has its own thread, and the lock is what breaks between them.',
    ...own,
  },
  rodInHole: {
    title: 'A rod seen from the crack',
    formulas: {
      f_m: 'exp(mu_R alpha_R pi / 180)',
      EA_l: 'f_m E_R pi d_R^2 / 4',
      q_l: 'f_m pi d_R tau_R',
      q_n: 'p_0 f_w d_R',
      l_1: 'h_1 / cos(alpha_R)',
      l_2: 'h_2 / cos(alpha_R)',
      F_c: 'sigma_R pi d_R^2 / 4',
    },
    source: 'tong-mouritz-bannister-2002',
  },
  strengthAtAnchor: {
    title: 'Strength at the anchor of this side',
    formulas: { F_a: 'eta_a F_t' },
    ...sites,
  },
  beddingIn: {
    title: 'How the bend over the face gives way',
    formulas: { C_a: 'f_b d_l / F_a' },
    ...own,
  },
  yieldingBend: {
    title: 'The bend over a face that yields under it',
    formulas: bend,
    source: 'hill-1950',
    where: 'slip lines under a punch; docs/theory/bridging.md',
  },
  floatBehindBend: {
    title: 'The thread on the face behind the bend',
    formulas: { x_b: 'exp(-mu_b pi / 2)', q_f: 'tau_l f_g pi n_L d_l' },
    ...own,
  },
  sideGivesWay: {
    title:
      'Force at the crack at which this side gives way: the anchor breaks, friction in the hole keeps part of the force from it',
    formulas: { F_s: 'F_a + q_l l_s' },
    ...sites,
  },
  sideSlips: {
    title:
      'Force at the crack at which this side gives way: no anchor, the leg slips out against friction along its whole length',
    formulas: { F_s: 'q_l l_s' },
    ...sites,
  },
  crackSite: {
    title: 'Force that breaks the legs in the plane of the crack',
    formulas: { F_c: 'eta_s F_t' },
    ...sites,
  },
  lockSite: {
    title: 'Force that breaks the lock in the plane of the crack',
    formulas: { F_c: 'eta_a*min(F_t1, F_t2)' },
    ...own,
  },
  weakestSite: {
    title: 'The weakest of the three sites: what gives way, and at what force',
    formulas: { F_p: 'min(F_c, F_s1, F_s2)' },
    ...sites,
  },
  sharesOfSites: {
    title: 'How often each site is the weakest',
    formulas: {
      m_w: 's_v^(-1.086)',
      x_c: '(F_p / F_c)^m_w / ((F_p / F_c)^m_w + (F_p / F_s1)^m_w + (F_p / F_s2)^m_w)',
      x_1: '(F_p / F_s1)^m_w / ((F_p / F_c)^m_w + (F_p / F_s1)^m_w + (F_p / F_s2)^m_w)',
      x_2: '(F_p / F_s2)^m_w / ((F_p / F_c)^m_w + (F_p / F_s1)^m_w + (F_p / F_s2)^m_w)',
    },
    ...own,
  },
  sharesWithoutScatter: {
    title: 'How often each site is the weakest, without scatter',
    form: {
      text: 'x = 1 for the weakest site, 0 for the others; equal ones share',
      tex: 'x = 1 \\text{ for the weakest site, else } 0',
    },
    results: ['x_c', 'x_1', 'x_2'],
    ...own,
  },
  slipOfSide: {
    title: 'What this side lets out, slip having not reached its end, and its work',
    formulas: { e_s: 'F_p^2 / (2 EA_l q_l)', W_e: 'F_p^3 / (3 EA_l q_l)', ...pulledOut },
    ...law,
  },
  stretchOfSide: {
    title: 'What this side lets out, its whole length being stretched, and its work',
    formulas: { ...stretched({ length: '', work: '' }), ...pulledOut },
    ...law,
  },
  bendOfSide: {
    title: 'What the bend sets free as the stitch gives way',
    formulas: bendGives,
    ...own,
  },
  floatSlips: {
    title: 'What the thread on the face sets free, slip having not reached the middle between two holes',
    formulas: { F_f: 'x_b F_b', e_f: 'F_f^2 / (2 EA_l q_f)', W_f: 'F_f^3 / (3 EA_l q_f) / x_b' },
    ...law,
  },
  floatStretches: {
    title: 'What the thread on the face sets free, stretched as a whole',
    formulas: {
      F_f: 'x_b F_b',
      e_f: '(F_f - q_f l_f / 2) l_f / EA_l',
      W_f: '((q_f l_f)^2 l_f / (3 EA_l) + (F_f - q_f l_f)*(F_f + q_f l_f)*l_f / (2 EA_l)) / x_b',
    },
    ...law,
  },
  stretchWithBend: {
    title: 'What this side lets out, its whole length being stretched and its bend yielding, and its work',
    formulas: {
      ...stretched({ length: ' + e_b + e_f', work: ' + q_l l_s*(e_b + e_f) + W_b + W_f' }),
      ...pulledOut,
    },
    ...law,
  },
  bothSides: {
    title: 'Both sides together',
    formulas: { w_p: 'e_1 + e_2' },
    ...law,
  },
  workOpening: {
    title: 'Work of one stitch that opens straight',
    formulas: { W_c: 'W_1 + W_2' },
    ...law,
  },
  areaUnderLaw: {
    title: 'Work of one stitch: the area under its law as it is drawn',
    form: { text: 'W = area under the straight chords of the law', tex: 'W = \\int F\\,\\mathrm{d}w' },
    results: ['W'],
    formulas: { W_x: 'W_c - W' },
    remark: 'Some fifty chords to a bend. Later steps use this number; what the chords leave out is next to nothing.',
    ...own,
  },
  areaUnderPoints: {
    title: 'Work of one stitch: the area under the measured curve',
    sums: { W: '(F_i + F_j)*(w_j - w_i) / 2' },
    row: 'piece of the curve',
    remark: 'Exact for a curve of straight pieces: trapeziums.',
    ...own,
  },
  bedOfThread: {
    title: 'The bed in which the thread ploughs',
    formulas: { B_n: '1 / q_n1 + 1 / q_n2' },
    ...sliding,
  },
  threadAcrossCrack: {
    title: 'The thread across the crack as it gives way: a string, straight across the gap and in arcs in the laminate',
    formulas: {
      theta_r: 'theta_t pi / 180',
      u_b: '2 F_p B_n sin(theta_t / 2)^2 + w_b tan(theta_t)',
      s_d: 'F_p B_n*(theta_r - sin(theta_t)) + w_b / cos(theta_t)',
    },
    remark: 'The movement is the one at which the length drawn out is what both sides let out.',
    ...sliding,
  },
  threadInCrack: {
    title: 'The thread across a crack that slides shut, as it gives way: in the plane of the crack, ploughing',
    formulas: { s_d: 'u_b - F_p B_n*(2 - pi / 2)' },
    remark: 'The movement is the one at which the length drawn out is what both sides let out.',
    ...sliding,
  },
  forcesOnCrack: {
    title: 'Forces of the thread on the laminate as it gives way',
    formulas: { F_n: 'F_p cos(theta_t)', F_u: 'F_p sin(theta_t)', F_d: 'F_n cos(alpha_p) + F_u sin(alpha_p)' },
    ...sliding,
  },
  lawAlongPath: {
    title: 'Greatest force along the path, and work: the area under the law along the path',
    form: { text: 'F_m = max F,  W = ∫ F ds', tex: 'F_m = \\max F,\\quad W = \\int F\\,\\mathrm{d}s' },
    results: ['F_m', 's_F', 'W'],
    remark:
      'The law is followed step by step: at each movement the tension is that at which the length drawn out is what both sides let out.',
    ...sliding,
  },
} as const satisfies Record<string, Rule>;
