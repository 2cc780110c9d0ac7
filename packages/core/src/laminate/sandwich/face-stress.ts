import type { Load } from '../load.js';
import { respond } from '../respond.js';
import type { Laminate } from '../types.js';
import type { FaceStress } from './types.js';

/** Mean stress of the plies `first` up to, not including, `end` of a loaded laminate, along x and y, Pa. */
export function meanStress(laminate: Laminate, load: Load, first: number, end: number): FaceStress {
  const { plies } = respond(laminate, load);
  let [x, y, thickness] = [0, 0, 0];
  plies.slice(first, end).forEach(({ middle }, k) => {
    const t = laminate.plies[first + k]?.thickness ?? 0;
    x += middle.stress[0] * t;
    y += middle.stress[1] * t;
    thickness += t;
  });
  return [x / thickness, y / thickness];
}
