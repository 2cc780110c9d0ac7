import type { Arm, BridgingRow, PeelSpecimen, SpecimenResult } from '../../../packages/core/src/fracture/index.js';

/** A homogeneous arm; invented. */
export const arm = (thickness = 0.6e-3, E = 20e9, rest: Partial<Arm> = {}): Arm => ({
  thickness,
  bendingStiffness: (E * thickness ** 3) / 12,
  axialStiffness: E * thickness,
  shearStiffness: (5 / 6) * 4e9 * thickness,
  E3: 8e9,
  ...rest,
});

/** An arm that neither stretches, shears nor turns at its root, as far as numbers go. */
export const thread = (thickness = 0.6e-3): Arm =>
  arm(thickness, 20e9, { axialStiffness: 1e14, shearStiffness: 1e14, E3: 1e19 });

/** Force rises with the root of the opening, drops, and runs out over the pull-out; per penetration. */
export const breaking = (peak = 60, at = 0.3e-3, after = 20, end = 1e-3): Pick<BridgingRow, 'curve' | 'failure'> => {
  const rise = Array.from({ length: 21 }, (_, i) => i / 20);
  return {
    curve: {
      opening: [...rise.map((x) => at * x * x), at, end],
      force: [...rise.map((x) => peak * x), after, 0],
    },
    failure: 'threadAtCrack',
  };
};

/** Force jumps to its greatest at once and fades in a straight line: a pull-out. */
export const fading = (peak: number, end: number): Pick<BridgingRow, 'curve' | 'failure'> => ({
  curve: { opening: [0, end / 20, end], force: [0, peak, 0] },
  failure: 'threadPullOut',
});

export function rowsOf(
  count: number,
  from: number,
  spacing: number,
  law: Pick<BridgingRow, 'curve' | 'failure'>,
  penetrations = 6,
): BridgingRow[] {
  return Array.from({ length: count }, (_, i) => ({ position: from + i * spacing, penetrations, ...law }));
}

/** A coupon 25 mm wide; invented. */
export const coupon = (rest: Partial<PeelSpecimen> = {}): PeelSpecimen => ({
  arms: [arm(), arm()],
  width: 0.025,
  bondToughness: 500,
  crackLength: 0.05,
  length: 0.12,
  rows: [],
  ...rest,
});

/** The energy balance of a record, state by state, as its worst share of the work. */
export function openBalance({ states }: SpecimenResult): number {
  return Math.max(
    ...states.map(({ work, elastic, bond, thread: lost, released = 0 }) =>
      work > 0 ? Math.abs(work - elastic - bond - lost - released) / work : 0,
    ),
  );
}

/** Every number in a value. */
export function numbersIn(value: unknown): number[] {
  if (typeof value === 'number') return [value];
  if (typeof value !== 'object' || value === null) return [];
  return Object.values(value).flatMap(numbersIn);
}
