import fc from 'fast-check';
import { type CheckedAnswers, checkAnswers, readAnswers } from '../../../packages/core/src/answers/index.js';
import { type Quantity, quantitiesOf } from '../../../packages/core/src/answers/quantities.js';
import { assemble, type Model, readDesign, workedSteps } from '../../../packages/core/src/design/index.js';
import { kinds, toSI } from '../../../packages/core/src/quantity/index.js';

/** A homework: one material, one stack, one load. */
export interface Homework {
  readonly E1: number;
  readonly E2: number;
  readonly G12: number;
  readonly nu12: number;
  /** mm */
  readonly thickness: number;
  readonly angles: readonly number[];
  readonly symmetric: boolean;
  /** kN/m, N, K */
  readonly N: readonly number[];
  readonly M: readonly number[];
  readonly heat: number;
}

const between = (low: number, high: number, decimals: number): fc.Arbitrary<number> =>
  fc
    .integer({ min: Math.round(low * 10 ** decimals), max: Math.round(high * 10 ** decimals) })
    .map((k) => k / 10 ** decimals);

export const anyHomework: fc.Arbitrary<Homework> = fc.record({
  E1: between(30, 200, 1),
  E2: between(5, 15, 2),
  G12: between(2, 8, 2),
  nu12: between(0.2, 0.35, 3),
  thickness: between(0.1, 0.6, 3),
  angles: fc.array(fc.oneof(fc.constantFrom(0, 90, 45, -45, 30, -30, 60), fc.integer({ min: -80, max: 80 })), {
    minLength: 1,
    maxLength: 5,
  }),
  symmetric: fc.boolean(),
  N: fc.tuple(between(20, 200, 1), between(-100, 100, 1), between(5, 50, 1)),
  M: fc.tuple(between(-20, 20, 1), between(-20, 20, 1), between(-5, 5, 1)),
  heat: fc.oneof(fc.constant(0), between(-150, -50, 0)),
});

export const modelOf = (homework: Homework): Model => assemble(readDesign(textOf(homework)));

const textOf = ({ E1, E2, G12, nu12, thickness, angles, symmetric, N, M, heat }: Homework): string => `format: 1
title: homework
materials:
  ud:
    kind: ply
    E1: ${E1} GPa
    E2: ${E2} GPa
    G12: ${G12} GPa
    nu12: ${nu12}
    thickness: ${thickness} mm
    expansion: { alpha1: 0.5e-6 1/K, alpha2: 25e-6 1/K }
laminates:
  skin:
    stack: [${[...angles, ...(symmetric ? angles.toReversed() : [])].map((angle) => `{ material: ud, angle: ${angle} }`).join(', ')}]
loads:
  pull: { laminate: skin, N: [${N.map((n) => `${n} kN/m`).join(', ')}], M: [${M.map((m) => `${m} N`).join(', ')}]${heat === 0 ? '' : `, temperatureChange: ${heat} K`} }
`;

export const numbersOf = (model: Model): ReadonlyMap<string, Quantity> => quantitiesOf(workedSteps(model));

/** Results of a working that are not zero by rounding only. */
export const resultsOf = (model: Model): readonly Quantity[] => {
  const all = [...numbersOf(model).values()].filter(({ computed }) => computed);
  const largest = (kind: string): number =>
    Math.max(...all.filter((one) => one.kind === kind).map(({ value }) => Math.abs(value)));
  return all.filter(({ kind, value }) => Math.abs(value) > 1e-5 * largest(kind));
};

const inUnit = (value: number, unit: string): number => (unit === '' ? value : value / toSI(1, unit));

/** One answer of a sheet, from a value in SI. */
export const entryOf = (
  { key, kind }: Quantity,
  value: number,
  digits = 6,
  unit: string = kinds[kind].metric,
): string => `  - { quantity: ${key}, value: "${inUnit(value, unit).toPrecision(digits)} ${unit}" }`;

export const check = (model: Model, entries: readonly string[]): CheckedAnswers =>
  checkAnswers(model, readAnswers(`answers:\n${entries.join('\n')}\n`));
