import type { Load } from '../load.js';
import { type Response, respond } from '../respond.js';
import type { Laminate, Vector3 } from '../types.js';
import { noStress } from './strength-ratio.js';

/** Stress in ply axes at both faces of a ply, Pa; `top` toward the tool (the smaller z), as in a response. */
export interface FaceStress {
  readonly top: Vector3;
  readonly bottom: Vector3;
}

/** The stress at the faces of every ply of a response. */
export const faceStress = ({ plies }: Response): FaceStress[] =>
  plies.map(({ top, bottom }) => ({ top: top.stress12, bottom: bottom.stress12 }));

/** No stress in any ply. */
export const unstressed = ({ plies }: Laminate): FaceStress[] => plies.map(() => ({ top: noStress, bottom: noStress }));

/** Stress and deformation that are not multiplied, with the notes of their response; all zero without a residual load. */
export interface Residual extends Pick<Response, 'strain' | 'curvature' | 'notes'> {
  readonly stress: readonly FaceStress[];
}

/** The response to heat and moisture alone. */
export function residualState(laminate: Laminate, load: Load | undefined): Residual {
  if (load === undefined) return { strain: noStress, curvature: noStress, notes: [], stress: unstressed(laminate) };
  const response = respond(laminate, load);
  return { ...response, stress: faceStress(response) };
}
