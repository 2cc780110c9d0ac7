import { expect } from 'vitest';
import type { Arm, BridgingRow } from '../../../../packages/core/src/fracture/index.js';
import { SelvageError } from '../../../../packages/core/src/problem/index.js';

export const mm = 1e-3;

/** A homogeneous arm. */
export interface Plain {
  readonly h: number;
  readonly E: number;
  readonly G: number;
  readonly E3: number;
}

/** Invented carbon cloth arm, 2 mm. */
export const cloth: Plain = { h: 2 * mm, E: 60e9, G: 4e9, E3: 9e9 };

export function armOf({ h, E, G, E3 }: Plain, failureStrain?: Arm['failureStrain']): Arm {
  return {
    thickness: h,
    bendingStiffness: (E * h ** 3) / 12,
    axialStiffness: E * h,
    shearStiffness: (5 / 6) * G * h,
    E3,
    ...(failureStrain && { failureStrain }),
  };
}

/** An arm without shear on a stiff bed: the slender cantilever of text books. */
export const slender = (h: number, E: number): Arm => armOf({ h, E, G: 1e22, E3: 1e25 });

/** Invented thread law: stretches, breaks at its lock, pulls out. Opening in mm. */
export function row(position: number, penetrations = 5, scale = 1): BridgingRow {
  const curve = {
    opening: [0, 0.1, 0.3, 0.3, 0.8].map((w) => w * mm),
    force: [0, 80, 120, 60, 0].map((F) => F * scale),
  };
  return { position, penetrations, curve, failure: 'threadAtAnchor' };
}

/** Rows a distance apart. */
export const rowsOf = (from: number, spacing: number, count: number, scale = 1): BridgingRow[] =>
  Array.from({ length: count }, (_, i) => row(from + i * spacing, 5, scale));

/** A spring that breaks at a force. */
export const brittle = (position: number, stiffness: number, strength: number): BridgingRow => ({
  position,
  penetrations: 1,
  curve: { opening: [0, strength / stiffness], force: [0, strength] },
  failure: 'threadAtCrack',
});

export function expectNear(found: number, wanted: number, relative: number): void {
  expect(Math.abs(found - wanted), `${found} against ${wanted}`).toBeLessThanOrEqual(relative * Math.abs(wanted));
}

export function codesOf(call: () => unknown): readonly string[] {
  try {
    call();
  } catch (error) {
    if (error instanceof SelvageError) return error.problems.map((problem) => problem.code);
    throw error;
  }
  return expect.fail('nothing was thrown');
}
