import {
  faceStress,
  failureCriteria,
  failureUnder,
  type Laminate,
  type Load,
  progressiveFailure,
  respond,
  type SolvedLoad,
  type StrengthOptions,
  showStressOfLoad,
  solveLoad,
} from '../../laminate/index.js';
import { SelvageError } from '../../problem/index.js';
import type { Working } from '../../working/index.js';
import type { LaminateModel, LoadModel } from '../model.js';
import { isMechanical, loadOf, progressiveOptionsOf, strengthOptionsOf } from '../results/load-of.js';
import { mostFollowed } from '../results/load-strength.js';

/** Takes down the response of a laminate to a load case, and how near its plies are to failing. */
export function loadSteps(model: LoadModel, { laminate }: LaminateModel, working: Working): void {
  const load = loadOf(model);
  const options = strengthOptionsOf(model);
  const solved = isMechanical(load) ? solveLoad(laminate, load, working) : solveLoad(laminate, load);
  const whole = respond(laminate, load, working);
  working.notes(whole.notes);
  if (solved.residual !== undefined && isMechanical(load)) {
    showStressOfLoad(faceStress(whole), faceStress(solved.mechanical), faceStress(solved.residual), working);
  }
  strengthSteps(laminate, load, solved, options, working);
  if (!isMechanical(load) || laminate.plies.length > mostFollowed) return;
  whereComputable(() => progressiveFailure(laminate, load, progressiveOptionsOf(model), working));
}

/** Does what the design may not allow; what it says against it stands in the report. */
function whereComputable(compute: () => void): boolean {
  try {
    compute();
    return true;
  } catch (error) {
    if (error instanceof SelvageError) return false;
    throw error;
  }
}

/** Takes down every criterion that can judge the laminate; heat and moisture without a load are judged as one. */
function strengthSteps(
  laminate: Laminate,
  load: Load,
  solved: SolvedLoad,
  options: StrengthOptions,
  working: Working,
): void {
  const { residual } = solved;
  const judged = isMechanical(load) || residual === undefined ? solved : { mechanical: residual, residual: undefined };
  for (const criterion of failureCriteria) {
    if (whereComputable(() => failureUnder(laminate, judged, criterion, options))) {
      working.notes(failureUnder(laminate, judged, criterion, options, working).notes);
    }
  }
}
