import type { Note } from '../../provenance/index.js';
import { handBookTolerance, thinFaceWeakCoreLimit } from './allen.js';
import type { Sandwich } from './types.js';

/** What the reader of the checks of a sandwich must know. */
export function sandwichNotes(checks: Omit<Sandwich, 'notes' | 'sources'>): Note[] {
  const { tool, bag } = checks;
  const notes: Note[] = [];
  if (checks.core.modulusAssumed) {
    notes.push({
      level: 'assumption',
      text: 'The modulus of the core through its thickness is taken as that in its plane; a core with a grain or cells needs its own, E3.',
    });
  }
  if ([tool.x, tool.y, bag.x, bag.y].some(({ faceStress }) => faceStress !== undefined && faceStress < 0)) {
    notes.push({
      level: 'assumption',
      text: 'Wrinkling is judged along x and along y, each alone: compression along both at once and shear in the plane of a face are not covered.',
    });
  }
  for (const axis of ['x', 'y'] as const) notes.push(...criteriaNotes(checks, axis), ...depthNotes(checks, axis));
  if (checks.coreShear !== undefined && checks.core.shearStrength === undefined) {
    notes.push({
      level: 'warning',
      text: 'The core has no shear strength, so its shear stress is not judged.',
    });
  }
  return notes;
}

function criteriaNotes(checks: Omit<Sandwich, 'notes' | 'sources'>, axis: 'x' | 'y'): Note[] {
  const { criteria, difference } = checks[axis];
  const { thinFaces, weakCore } = criteria;
  const notes: Note[] = [];
  if (thinFaces < thinFaceWeakCoreLimit) {
    notes.push({
      level: 'warning',
      text: `The faces are not thin: 3 (d/t)² is ${thinFaces.toPrecision(3)}, under ${thinFaceWeakCoreLimit}. Formulas for thin faces may be off by more than a per cent; D and H of the laminate are not.`,
      source: 'allen-1969',
    });
  }
  if (weakCore < thinFaceWeakCoreLimit) {
    notes.push({
      level: 'warning',
      text: `The core is not weak along ${axis}: 6 Ef t d²/(Ec c³) is ${weakCore.toPrecision(3)}, under ${thinFaceWeakCoreLimit}. It carries bending, and shear stress in it is not even.`,
      source: 'allen-1969',
    });
  }
  if (Math.abs(difference) > handBookTolerance) {
    notes.push({
      level: 'warning',
      text: `The hand-book D along ${axis} is ${(100 * Math.abs(difference)).toPrecision(2)} % ${difference > 0 ? 'above' : 'below'} the bending stiffness of the laminate, 1/d: faces and core hold each other in other directions, which the formula does not know. Use that of the laminate.`,
    });
  }
  return notes;
}

function depthNotes({ core, tool, bag }: Omit<Sandwich, 'notes' | 'sources'>, axis: 'x' | 'y'): Note[] {
  const depth = Math.max(tool[axis].depth, bag[axis].depth);
  if (depth <= core.thickness / 2) return [];
  const share = ((100 * depth) / core.thickness).toPrecision(3);
  return [
    {
      level: 'warning',
      text: `Wrinkles along ${axis} would reach ${share} % of the core's thickness into it, more than half: the waves of both faces meet, and the computed wrinkling stress is that of a deeper core.`,
      source: 'hoff-mautner-1945',
    },
  ];
}
