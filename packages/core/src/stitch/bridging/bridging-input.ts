import type { PenetrationInput } from './bridging-model.js';
import type { CrackMovement } from './path-law.js';
import type { RodInput } from './rod.js';

/** How the crack moves at the penetration: straight at an angle from pure opening, or through given points. */
export type BridgingPath =
  | {
      /** Degrees: 0 opens, 90 slides, between them u = w tan(angle). */
      readonly angle: number;
    }
  | {
      /** Movements in order, neither opening nor sliding ever falling; the start at rest is understood. */
      readonly history: readonly CrackMovement[];
    };

/** One penetration, by a thread or a rod, and how the crack moves there. */
export type BridgingInput = (PenetrationInput | RodInput) & {
  /** Pure opening when not given. */
  readonly path?: BridgingPath;
};
