import type { Note } from '../../provenance/index.js';
import { inMillimetres, requirePositive } from '../../stitch/index.js';
import type { Working } from '../../working/index.js';
import type { SpecimenResult } from '../types.js';
import { openingRelease } from './beam-toughness.js';
import { showSharpestBend } from './bend-steps.js';
import { type BondLeft, bondLeftNote, endOfGrowth, requireRoom } from './bond-left.js';
import { checkArms, modelRows, requireInside } from './check.js';
import { openingNote } from './large-displacement.js';
import type { Model } from './model.js';
import { openingChain } from './opening-chain.js';
import { bedStiffness, openingPair, rootLength } from './opening-pair.js';
import { openingStrain } from './opening-strain.js';
import { showOpeningPair, showOpeningStart } from './pair-steps.js';
import { planOf } from './plan.js';
import { jumping, type Pulled, pull } from './result.js';
import { checkRowsMet, fewPenetrationsNote, mostRowsOf } from './row-limits.js';
import type { DcbSpecimen } from './types.js';

const notes: readonly Note[] = [
  {
    level: 'assumption',
    text: 'Arms are linear beams with shear; both carry the same moment, so that unequal arms open as one beam of added compliance.',
  },
  {
    level: 'assumption',
    text: 'The bond is an elastic bed of the inner halves of the arms; a row ahead of the tip acts beside it, against the same opening.',
  },
  {
    level: 'assumption',
    text: 'Threads of a row share its force equally, unload straight to where force began, and do not recover.',
  },
  jumping,
];

/**
 * A double cantilever beam pulled open by displacement, its crack bridged by rows of thread at their places.
 *
 * Two arms of opening δ on a bed k: growth at k δ²/2 = G0 at the tip, rows as springs that do not recover, jumps at constant displacement. Toughness by
 * load G = P² (a + χ)²/(2 b² D), χ² = D/S + 2 √(D/k), which without rows is exact for this model.
 *
 * @param specimen see {@link DcbSpecimen}; a row's curve is that of opening
 * @param working takes down the steps
 * @returns displacement is the whole opening at the load line, m
 * @throws out-of-range a size not above 0, a crack or a row outside the bond, a curve that is not one, a refinement below 1, too many rows;
 * not-admissible see `rowLaw`; not-computable no equilibrium, or no end
 * @source Kanninen 1973 (bed), Williams 1989 (root correction); rows and their order derived in docs/theory/specimens.md
 */
export function simulateDcb(specimen: DcbSpecimen, working?: Working): SpecimenResult {
  const { width, arms, crackLength, length, bondToughness } = specimen;
  checkArms(arms);
  requirePositive('width', width, inMillimetres);
  requirePositive('length', length, inMillimetres);
  requirePositive('bondToughness', bondToughness, (value) => `${value} J/m²`);
  requireInside('crackLength', crackLength, length, 'length');
  const pair = openingPair(arms);
  const bond: BondLeft = { root: rootLength(pair), length, name: 'length' };
  requireRoom(bond, crackLength);
  const plan = planOf(specimen, endOfGrowth(bond));
  const rows = modelRows(specimen.rows, length, 'length');
  checkRowsMet(rows, plan.longest, specimen.mostRows ?? mostRowsOf.dcb);
  const model: Model = {
    chain: openingChain(
      pair,
      width,
      length,
      rows.map(({ place }) => place),
    ),
    rows,
    tipLimit: Math.sqrt((2 * bondToughness) / bedStiffness(pair)),
    bondWork: bondToughness * width,
    longest: plan.longest,
    ...openingStrain(specimen, rows),
  };
  if (working !== undefined) showOpeningPair(arms, pair, working);
  if (working !== undefined) showOpeningStart({ pair, width, crackLength, bondToughness }, working);
  const pulled: Pulled = {
    model,
    plan,
    width,
    byLoad: (load, a) => openingRelease(pair, width, load, a),
    rows: { rule: 'openingRows', values: { chi: rootLength(pair), b: width, D_p: pair.bendingStiffness } },
    showBend: (state, into) => showSharpestBend(specimen, rows, state, into),
    straight: { of: (a) => a, note: openingNote },
    notes: [...notes, ...fewPenetrationsNote(specimen.rows)],
    ending: (a) => bondLeftNote(bond, a),
    sources: ['kanninen-1973', 'williams-1989', 'selvage-2026-derivation'],
  };
  return pull(pulled, working);
}
