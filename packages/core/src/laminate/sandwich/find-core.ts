import { laminate } from '../stack.js';
import type { Laminate } from '../types.js';

/** A laminate parted into its core and the two faces; the tool face lies at negative z. */
export interface SandwichParts {
  readonly tool: Laminate;
  readonly core: Laminate;
  readonly bag: Laminate;
}

/** The parts of a sandwich, or why the laminate is none. */
export function findCore({ plies }: Laminate): SandwichParts | string {
  const first = plies.findIndex((ply) => ply.core === true);
  if (first < 0) return 'no ply is a core';
  const last = plies.findLastIndex((ply) => ply.core === true);
  if (plies.slice(first, last).some((ply) => ply.core !== true)) return 'there is more than one core';
  if (first === 0) return 'the core has no face on the tool side';
  if (last === plies.length - 1) return 'the core has no face on the bag side';
  return {
    tool: laminate(plies.slice(0, first)),
    core: laminate(plies.slice(first, last + 1)),
    bag: laminate(plies.slice(last + 1)),
  };
}
