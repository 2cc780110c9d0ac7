import type { Working } from '../working/index.js';
import { type ArealFraction, type Seam, type SideFraction, underThreadOf } from './areal-fraction.js';
import type { ConsumptionInput, ThreadConsumption } from './consumption.js';
import { meanRun, penetrationDensity, rowLengthPerArea } from './density.js';
import { hasUnderThread, type Legs } from './stitch-type.js';
import { bundleArea, fibreArea, packingOf, threadDiameter } from './thread.js';
import type { Thread } from './types.js';

const section = (thread: Thread, is: 'n' | 'u'): Record<string, number> => ({
  [`t_${is}`]: thread.linearDensity,
  [`rho_${is}`]: thread.density,
  [`phi_${is}`]: packingOf(thread),
  [`A_f${is}`]: fibreArea(thread),
  [`A_b${is}`]: bundleArea(thread),
  [`d_${is}`]: threadDiameter(thread),
});

/** Takes down the cross-section of the threads and the areal fraction that they make. */
export function showThreads(seam: Seam, { fibre, above, below }: ArealFraction, working: Working): void {
  const { needleThread, type } = seam;
  const under = underThreadOf(seam).thread;
  const two = hasUnderThread(type);
  working.step('needleThreadSection', section(needleThread, 'n'));
  if (two) working.step('secondThreadSection', section(under, 'u'));
  const [A_bn, n_a] = [bundleArea(needleThread), type.legsAbove.needle];
  working.step('bundleDiameter', { n_a, A_bn, d_B: threadDiameter(needleThread, n_a) });
  const unlike = (a: Legs, b: Legs): boolean => a.needle !== b.needle || a.under !== b.under;
  const areas = { N: penetrationDensity(seam.pattern), A_fn: fibreArea(needleThread), A_bn };
  const show = ({ legs, fibre: c_f, bundle: c_b }: SideFraction, into: Working): void => {
    const found = { n_n: legs.needle, c_f, c_b };
    if (!two) into.step('arealFraction', { ...areas, ...found });
    else {
      const second = { A_fu: fibreArea(under), A_bu: bundleArea(under), n_u: legs.under };
      into.step('arealFractionOfTwo', { ...areas, ...second, ...found });
    }
  };
  if (!unlike(above.legs, below.legs)) {
    show(above, working);
    return;
  }
  show(above, working.part('needleSide'));
  show(below, working.part('otherSide'));
  const sides = { c_f1: above.fibre, c_f2: below.fibre };
  working.step('lesserFraction', { ...sides, c_f: fibre });
}

/** Takes down the thread that a seam takes up. */
export function showConsumption(input: ConsumptionInput, found: ThreadConsumption, working: Working): void {
  const { pattern, type, needleThread, dryThickness: h_d, tails = 0, waste = 0 } = input;
  const under = underThreadOf(input).thread;
  const two = hasUnderThread(type);
  const needle = {
    a_n: type.needle.run,
    b_n: type.needle.depth,
    A_bn: bundleArea(needleThread),
    t_n: needleThread.linearDensity,
  };
  const second = { a_u: type.under.run, b_u: type.under.depth, A_bu: bundleArea(under), t_u: under.linearDensity };
  const { perStitch, addedThickness } = found;
  const threads = {
    m: meanRun(pattern),
    h_d,
    N: penetrationDensity(pattern),
    l_R: rowLengthPerArea(pattern),
    ...needle,
    ...(two ? second : {}),
    l_n: perStitch.needle,
    ...(two ? { l_u: perStitch.under } : {}),
    l_t: perStitch.total,
    l_tA: found.perArea.total,
    l_tR: found.perRowLength.total,
    m_tA: found.massPerArea.total,
    m_tR: found.massPerRowLength.total,
    h_f: addedThickness.surface,
    h_th: addedThickness.through,
    h_t: addedThickness.total,
  };
  working.step(two ? 'threadsPerStitch' : 'threadPerStitch', threads);
  const { totals } = found;
  if (totals === undefined) return;
  const rows = totals.rows.map(({ rows: n_R, stitches: n_s, run: m, length: L_r, thread }) => ({
    n_s,
    n_R,
    m,
    L_r,
    n_st: n_s,
    n_rows: n_R,
    L_R: L_r,
    L_tn: thread.needle,
    ...(two ? { L_tu: thread.under } : {}),
  }));
  working.step(
    two ? 'threadsOfPart' : 'threadOfPart',
    {
      a_n: needle.a_n,
      b_n: needle.b_n,
      t_n: needle.t_n,
      ...(two ? { a_u: second.a_u, b_u: second.b_u, t_u: second.t_u } : {}),
      h_d,
      l_e: tails,
      x_w: waste,
      n_st: totals.stitches,
      n_rows: totals.rows.reduce((sum, row) => sum + row.rows, 0),
      L_R: totals.rowLength,
      L_tn: totals.sewn.needle,
      ...(two ? { L_tu: totals.sewn.under } : {}),
      L_nn: totals.needed.needle,
      ...(two ? { L_nu: totals.needed.under } : {}),
      m_T: totals.neededMass.total,
    },
    rows,
  );
}
