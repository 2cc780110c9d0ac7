import { stiffness } from '../stiffness.js';
import type { Laminate } from '../types.js';

/** Share of twist in the bending stiffness, D16²/(D11 D66), from which a note says what is supposed about Mxy. */
const twistMatters = 0.01;

/** Whether bending and twisting are coupled so far that Mxy is not free to stay as it is where Mx or My changes. */
export function isTwistCoupled(laminate: Laminate): boolean {
  const [[D11 = 0, , D16 = 0], [, D22 = 0, D26 = 0], [, , D66 = 0]] = stiffness(laminate).D;
  return Math.max((D16 * D16) / D11, (D26 * D26) / D22) > twistMatters * D66;
}
