import type { Note } from '../../provenance/index.js';
import { inMillimetres, requirePositive } from '../../stitch/index.js';
import type { Working } from '../../working/index.js';
import type { SpecimenResult } from '../types.js';
import { slidingRelease, tipMoment } from './beam-toughness.js';
import { heldRows, showRowsHold, showSlidingBend } from './bend-steps.js';
import type { Bending } from './bending.js';
import { checkArms, modelRows, requireFriction, requireInside } from './check.js';
import { bendingNote } from './large-displacement.js';
import type { Model } from './model.js';
import { showSlidingPair, showSlidingStart } from './pair-steps.js';
import { planOf } from './plan.js';
import { jumping, type Pulled, pull } from './result.js';
import { checkRowsMet, fewPenetrationsNote, mostRowsOf } from './row-limits.js';
import { slidingChain } from './sliding-chain.js';
import { slidingPair } from './sliding-pair.js';
import { slidingStrain } from './sliding-strain.js';
import type { EnfSpecimen } from './types.js';

const notes: readonly Note[] = [
  {
    level: 'assumption',
    text: 'Arms are linear beams with shear that bend as one: crack faces touch, sections of both turn alike.',
  },
  {
    level: 'assumption',
    text: 'The bond is an elastic bed in shear; a row ahead of the tip acts beside it, against the same sliding.',
  },
  {
    level: 'assumption',
    text: 'Threads of a row share its force equally, unload straight to where force began, and do not recover.',
  },
  jumping,
];

/**
 * Decay lengths 1/ω before a load within which the load is not read. There the moment bends off within reach of the tip and the closed form is
 * above the release by 4 e^(-ωd)/(1 + ωa) at a distance d: at 3 below 1 % for cracks of 20 decay lengths and more, against a 5th at the load itself.
 */
const readFrom = 3;
const rubbing: Note = {
  level: 'assumption',
  text: 'Crack faces rub where supports and loads press the arms together, each arm taking its share of the bending; friction keeps its direction.',
};

/**
 * An end-notched flexure specimen bent by displacement, its crack bridged by rows of thread that slide.
 *
 * Bending moments are statics; the sliding s of the arms is that of a bar, N = B (s' + H M/D), on a bed k: growth at k s²/2 = G0 at the tip.
 * Without rows and friction G = (M + M'/ω)²/(2 b²) (1/D - 1/D_bonded), under one load 9 P² (a + 1/ω)²/(16 b² E h³) for like arms: toughness by load.
 * Growth that would need the displacement to go back is a jump at constant displacement: under one load while a < about 0.69 half spans.
 *
 * @param specimen see {@link EnfSpecimen}; a row's curve is that of sliding
 * @param working takes down the steps
 * @returns displacement is that of the loads, m, the mean of two
 * @throws out-of-range a size not above 0, a crack or a row outside the specimen, a load span not below the span, a friction coefficient outside 0 to 2,
 * a curve that is not one, a refinement below 1, too many rows; not-admissible see `rowLaw`; not-computable no equilibrium, or no end
 * @source Russell & Street 1982 (beam), Wang & Williams 1992 (root correction), Carlsson, Gillespie & Pipes 1986 (friction, stability), Martin & Davidson 1999 (two loads);
 * bar on a bed derived in docs/theory/specimens.md
 */
export function simulateEnf(specimen: EnfSpecimen, working?: Working): SpecimenResult {
  const { width, arms, crackLength, span, overhang = 0, loadSpan, friction = 0, bondToughness } = specimen;
  checkArms(arms);
  requirePositive('width', width, inMillimetres);
  requirePositive('span', span, inMillimetres);
  requirePositive('bondToughness', bondToughness, (value) => `${value} J/m²`);
  requireFriction(friction);
  if (overhang !== 0) requirePositive('overhang', overhang, inMillimetres);
  if (loadSpan !== undefined) requireInside('loadSpan', loadSpan, span, 'span');
  const length = span + overhang;
  const loads = loadsOf(span, loadSpan);
  const last = loads.at(-1)?.place ?? span / 2;
  requireInside('crackLength', crackLength, last, 'place of the last load');
  const bending: Bending = { span, loads };
  const pair = slidingPair(arms);
  const plan = planOf(specimen, last);
  const rows = modelRows(specimen.rows, length, 'length');
  checkRowsMet(rows, plan.longest, specimen.mostRows ?? mostRowsOf.enf);
  const upperShare = arms[0].bendingStiffness / pair.D;
  const places = rows.map(({ place }) => place);
  const { sharpest, ...strain } = slidingStrain(specimen, pair, bending, rows);
  const model: Model = {
    chain: slidingChain({ pair, width, length, bending, rows: places, friction, upperShare }),
    rows,
    tipLimit: Math.sqrt((2 * bondToughness) / pair.k),
    bondWork: bondToughness * width,
    longest: plan.longest,
    ...strain,
  };
  if (working !== undefined) showSlidingPair(arms, pair, working);
  if (working !== undefined) showSlidingStart({ pair, bending, width, crackLength, bondToughness }, working);
  const pulled: Pulled = {
    model,
    plan,
    width,
    byLoad: (load, a) => slidingRelease(pair, bending, width, load, a),
    rows: {
      rule: 'slidingRows',
      values: { omega: pair.decay, b: width, D_u: pair.D, D_b: pair.bonded, x_P: bending.loads[0]?.place ?? 0 },
      of: (a) => {
        const { moment: m_a, slope: q_a } = tipMoment(pair, bending, a);
        return { m_a, q_a };
      },
    },
    showBend: (state, into) => {
      showRowsHold(heldRows(rows, specimen.rows, state), into);
      showSlidingBend(specimen, pair, bending, state, sharpest(state), into);
    },
    readable: (a) => loads.every(({ place }) => a >= place || place - a >= readFrom / pair.decay),
    straight: { of: () => span, note: bendingNote },
    notes: [...notes, ...(friction > 0 ? [rubbing] : []), ...fewPenetrationsNote(specimen.rows)],
    sources: [
      'russell-street-1982',
      'wang-williams-1992',
      'carlsson-gillespie-pipes-1986',
      ...(loadSpan === undefined ? [] : ['martin-davidson-1999']),
      'selvage-2026-derivation',
    ],
  };
  return pull(pulled, working);
}

function loadsOf(span: number, loadSpan: number | undefined): Bending['loads'] {
  if (loadSpan === undefined) return [{ place: span / 2, share: 1 }];
  return [-1, 1].map((side) => ({ place: (span + side * loadSpan) / 2, share: 0.5 }));
}
