import { fail } from '../problem/index.js';
import { type Note, uniqueNotes } from '../provenance/index.js';
import { inMillimetres } from '../stitch/index.js';
import type { Working } from '../working/index.js';
import { showPeelBend } from './peel-bend-steps.js';
import { followPeel, type PeelPath } from './peel-path.js';
import { peelRecord } from './peel-record.js';
import { hasLikeArms, type PeelSpecimen, type PreparedPeel, preparePeel } from './peel-specimen.js';
import { showPeel } from './peel-steps.js';
import { stiffArmsNote } from './peel-stiff.js';
import { peelVerdict } from './peel-verdict.js';
import { bondLeftNote } from './specimen/bond-left.js';
import { showGreatest } from './specimen/pulled-steps.js';
import { jumping } from './specimen/result.js';
import { fewPenetrationsNote } from './specimen/row-limits.js';
import type { SpecimenEvent, SpecimenResult } from './types.js';

const assumptions: readonly Note[] = [
  {
    level: 'assumption',
    text: 'The grips let the ends of the arms turn and pull them along one line; the arms are flat at the start.',
  },
  {
    level: 'assumption',
    text: 'Arms are elastic up to their failure strain; the bond takes its toughness, whatever the share of sliding at the front.',
  },
  {
    level: 'assumption',
    text: 'The penetrations of a row share its force, pull along the line between their two ends, unload along what is left of their elastic line, and hold from the moment the front passes them.',
  },
  jumping,
];

/** Turn of a bonded arm at the front up to which its bed, which is linear, is taken to hold, rad. */
const mostTurn = 0.2;

/**
 * A T-peel of two thin arms pulled apart, their bond crossed by rows of thread at their places.
 *
 * Each arm is a geometrically exact elastic beam (elastica with stretch and shear) on an elastic bed behind the front; the front moves when the energy release of the arms,
 * Σ (M²/2EI + F · dr/ds - N²/2EA - T²/2kGA)/b at their roots, reaches the bond's toughness. Rows pull the arms together and do not recover. Long
 * after the start and without rows the load is G b/2.
 *
 * @param specimen see {@link PeelSpecimen}; lengths in m, toughness in J/m²; a row's curve is that of opening
 * @param working takes down the steps
 * @returns displacement is the distance of the grips, m; toughness by load is 2 P/b where the arms stand upright at the grips
 * @throws out-of-range a size not above 0, a front or a row outside the bond, no room for growth, a curve that is not one, a refinement below 1, too many rows;
 *   not-admissible see `rowLaw`; not-computable no equilibrium
 * @source Reissner 1972 (beam); Kinloch, Lau & Williams 1994 (energy of the peel); Kanninen 1973 (bed); derivation in docs/theory/peel.md
 */
export function simulatePeel(specimen: PeelSpecimen, working?: Working): SpecimenResult {
  const prepared = preparePeel(specimen);
  const { peel, limits, units } = prepared;
  const path = followPeel(peel, limits);
  const last = path.points.at(-1);
  if (path.end === 'lost' || last === undefined) {
    const at = (last?.length ?? limits.from) * units.length;
    fail({
      code: 'not-computable',
      message: `no equilibrium of the arms was found beyond a crack length of ${inMillimetres(at)}`,
      allowed: 'arms and rows whose stiffnesses a number of 64 bits can hold together',
    });
  }
  const { width } = specimen;
  const { states, resistance, displacement, energyError, moments } = peelRecord(path, units, width);
  const checked = peel.limits.some(({ tension, compression }) => Number.isFinite(Math.min(tension, compression)));
  const notes = uniqueNotes([
    ...notesOn(specimen, path, energyError),
    ...fewPenetrationsNote(specimen.rows),
    ...stiffArmsNote(specimen, states),
    ...bondLeftNote(prepared.bond, states.at(-1)?.crackLength ?? 0),
  ]);
  if (working !== undefined) {
    showPeel(specimen, prepared, path, { displacement, moments }, working);
    showGreatest(states, working.part('peak'));
    if (checked && path.sharpest !== undefined)
      showPeelBend(specimen, prepared, path.sharpest, working.part('sharpestBend'));
    working.notes(notes);
  }
  return {
    states,
    events: eventsOf(prepared, path, displacement, width),
    resistance,
    peakForce: Math.max(...states.map(({ load }) => load)),
    ...(checked && {
      armShare: Math.max(...path.points.map(({ strainShare }) => strainShare)),
    }),
    zoneLength: Math.max(...path.points.map(({ zone }) => zone)) * units.length,
    verdict: peelVerdict(prepared, path, width, working),
    energyError,
    notes,
    sources: ['reissner-1972', 'kinloch-lau-williams-1994', 'kanninen-1973', 'selvage-2026-derivation'],
  };
}

function eventsOf(
  { rows, units }: PreparedPeel,
  { events, points }: PeelPath,
  displacement: readonly number[],
  width: number,
): SpecimenEvent[] {
  return events.flatMap(({ kind, row, point }) => {
    const at = points[point];
    const broken = row === undefined ? undefined : rows[row];
    const what = kind === 'row' ? broken?.failure : kind;
    if (at === undefined || what === undefined) return [];
    return [
      {
        kind: what,
        load: at.load * units.force * width,
        displacement: displacement[point] ?? 0,
        crackLength: at.length * units.length,
        ...(broken === undefined ? {} : { row: broken.index }),
        byLoad: at.byLoad * units.force,
      },
    ];
  });
}

function notesOn(specimen: PeelSpecimen, path: PeelPath, energyError: number): Note[] {
  const notes: Note[] = [...assumptions];
  if (!hasLikeArms(specimen)) {
    notes.push({
      level: 'assumption',
      text: 'The arms differ: the bonded part behind the front stays straight and is free to turn; each arm rests on its own bed.',
    });
  }
  if (specimen.arms.some(({ failureStrain }) => failureStrain === undefined)) {
    notes.push({ level: 'assumption', text: 'An arm without failure strain is not checked for breaking.' });
  }
  const behind = specimen.rows.filter(({ position }) => position < specimen.crackLength).length;
  if (behind > 0) {
    notes.push({
      level: 'assumption',
      text: `${behind === 1 ? 'One row lies' : `${behind} rows lie`} behind the front at the start and ${behind === 1 ? 'is' : 'are'} taken as cut.`,
    });
  }
  const turn = Math.max(...path.points.map((point) => point.turn));
  if (turn > mostTurn) {
    notes.push({
      level: 'warning',
      text: `A bonded arm turns by ${turn.toFixed(2)} rad at the front, its bed holds to about ${mostTurn}: stubby arms, or a bond too tough for them.`,
    });
  }
  if (energyError > 0.005) {
    notes.push({ level: 'warning', text: `The energy balance is open by ${(100 * energyError).toFixed(1)} %.` });
  }
  return notes;
}
