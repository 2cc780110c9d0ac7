import { arealMass, engineeringConstants, stiffness } from '../../laminate/index.js';
import type { Working } from '../../working/index.js';
import type { LaminateModel } from '../model.js';

/** Takes down stiffness and constants of a laminate. */
export function laminateSteps({ laminate }: LaminateModel, working: Working): void {
  arealMass(laminate, working);
  engineeringConstants(stiffness(laminate, working), working);
  working.notes(laminate.notes);
}
