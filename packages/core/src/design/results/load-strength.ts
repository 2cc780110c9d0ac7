import {
  type Criterion,
  failureCriteria,
  failureUnder,
  isCloth,
  isIsotropic,
  type Laminate,
  type LaminateFailure,
  type Load,
  type ProgressiveFailure,
  progressiveFailure,
  type SolvedLoad,
  unloaded,
} from '../../laminate/index.js';
import type { Ply } from '../../material/index.js';
import { fail, type Path, SelvageError } from '../../problem/index.js';
import type { Note } from '../../provenance/index.js';
import { placed } from '../assemble/context.js';
import type { LoadModel } from '../model.js';
import { type LoadEnvelope, loadEnvelope } from './load-envelope.js';
import { isHeld, isMechanical, progressiveOptionsOf, strengthOptionsOf } from './load-of.js';

/** First-ply failure, the failure of the plies after it, and envelopes; what cannot be had is named in the notes. */
export interface LoadStrength {
  readonly failures: readonly LaminateFailure[];
  readonly progressive?: ProgressiveFailure;
  readonly envelope?: LoadEnvelope;
  readonly strengthNotes: readonly Note[];
}

/** Whether every ply but a core has strengths, and one has them. */
function hasStrengths({ plies }: Laminate): boolean {
  const strong = plies.some((ply) => ply.strengths !== undefined);
  return strong && plies.every((ply) => ply.core === true || ply.strengths !== undefined);
}

/** Whether Puck judges a ply. */
const isUnidirectional = (ply: Ply): boolean =>
  ply.strengths !== undefined && ply.core !== true && !isCloth(ply) && !isIsotropic(ply);

/** What is drawn when the design does not say. */
const drawn: readonly Criterion[] = ['maxStress', 'tsaiWu', 'hashin', 'puck'];

/**
 * Strength under a load case.
 * @throws SelvageError with the path of the key in `strength` that asks for what the materials do not allow
 */
export function loadStrength(model: LoadModel, laminate: Laminate, load: Load, solved: SolvedLoad): LoadStrength {
  if (!hasStrengths(laminate)) return { failures: [], strengthNotes: [] };
  const { strength = {} } = model;
  const path = ['loads', model.name, 'strength'];
  const options = strengthOptionsOf(model);
  const failures: LaminateFailure[] = [];
  const faults = new Map<Criterion, SelvageError>();
  for (const criterion of failureCriteria) {
    try {
      failures.push(failureUnder(laminate, solved, criterion, options));
    } catch (error) {
      if (!(error instanceof SelvageError)) throw error;
      faults.set(criterion, error);
    }
  }
  /** The criterion, which the design names at this path. */
  const wanted = (criterion: Criterion, at: Path): Criterion => {
    const fault = faults.get(criterion);
    if (fault === undefined) return criterion;
    return placed(at, (): never => fail(fault.problems[0] ?? { code: 'not-computable', message: fault.message }));
  };
  if (strength.puck !== undefined && laminate.plies.some(isUnidirectional)) wanted('puck', [...path, 'puck']);
  wanted(progressiveOptionsOf(model).criterion, [...path, 'criterion']);
  const criteria =
    strength.envelopeCriteria?.map((one, i) => wanted(one, [...path, 'envelopeCriteria', i])) ??
    drawn.filter((one) => !faults.has(one));
  const notes: Note[] = [...faults].map(([one, fault]) => leftOut(one, fault));
  if (!isMechanical(load)) return { failures: failures.map(withoutUnloaded), strengthNotes: notes };

  const progressive = isPrescribed(load)
    ? raisesForces
    : laminate.plies.length > mostFollowed
      ? tooMany(laminate.plies.length)
      : orNote('Failure layer by layer', () => progressiveFailure(laminate, load, progressiveOptionsOf(model)));
  const plane = { components: strength.envelope, criteria, options };
  const envelope = orNote('The failure envelope', () => loadEnvelope(laminate, load, solved, plane));
  return {
    failures,
    ...('level' in progressive ? {} : { progressive }),
    ...('level' in envelope ? {} : { envelope }),
    strengthNotes: [...notes, ...[progressive, envelope].filter((one) => 'level' in one)],
  };
}

/** Where nothing mechanical is meant to act, its absence is worth no warning. */
const withoutUnloaded = (found: LaminateFailure): LaminateFailure => ({
  ...found,
  notes: found.notes.filter((note) => note !== unloaded),
});

const isPrescribed = (load: Load): boolean =>
  isHeld(load) && [...(load.strain ?? []), ...(load.curvature ?? [])].some((value) => value !== null && value !== 0);

/** Each ply of a bent laminate fails by itself, and each failure is a new solution: beyond this a report would keep its reader waiting. */
export const mostFollowed = 200;

const tooMany = (count: number): Note => ({
  level: 'assumption',
  text: `Failure is not followed layer by layer: the laminate has ${count} plies, more than ${mostFollowed}.`,
});

const raisesForces: Note = {
  level: 'assumption',
  text: 'Failure is not followed layer by layer: this load prescribes a deformation, and ply discount raises forces.',
};

/** A result, or a note that says why it is not there. */
function orNote<Result extends object>(what: string, compute: () => Result): Result | Note {
  try {
    return compute();
  } catch (error) {
    if (!(error instanceof SelvageError)) throw error;
    return { level: 'warning', text: `${what} is not computed: ${error.message}.` };
  }
}

/** Whether a ply does not allow the inclinations of Puck, which the design may choose. */
const isInclination = ({ problems }: SelvageError): boolean =>
  problems.some(({ code, message }) => code === 'out-of-range' && message.includes('inclination'));

const leftOut = (criterion: Criterion, fault: SelvageError): Note => ({
  level: 'warning',
  text: `The criterion ${criterion} is left out: ${fault.message}.${isInclination(fault) ? ' `strength: { puck: [plus, minus] }` takes other inclinations.' : ''}`,
});
