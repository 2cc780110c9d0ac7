import { type DesignInputs, type InputChange, inputList, kindAt } from '../design/index.js';
import { fail } from '../problem/index.js';
import type { KindName } from '../quantity/index.js';
import { type Amount, amountOf, isInput, isQuantity, roundOff, written } from './amount.js';
import { evaluateDesign, evaluateVariant } from './evaluate.js';
import { momentsOf } from './method/distribution-moments.js';
import { uncertainInputs } from './tolerances.js';

/** How a quantity answers to an input. */
export interface InputResponse {
  /** d ln(quantity)/d ln(input), by central differences; a change of 1 % in the input changes the quantity by as many percent. */
  readonly elasticity: number;
  /** Of the quantity for the step down and up, SI. */
  readonly low: number;
  readonly high: number;
}

/** How the results answer to one input. */
export interface InputSensitivity {
  readonly path: string;
  /** As written. */
  readonly value: string | number;
  /** Share of the value that the input was moved by, either way. */
  readonly step: number;
  /** In the order of the quantities. */
  readonly responses: readonly InputResponse[];
}

/** Which inputs move the results, and by how much. */
export interface Sensitivity {
  readonly quantities: readonly { readonly path: string; readonly kind: KindName; readonly value: number }[];
  /** Those that move something, by their largest elasticity. */
  readonly inputs: readonly InputSensitivity[];
  /** Inputs that move none of the quantities. */
  readonly idle: readonly string[];
  /** Numbers that name or count something, and are no quantities that vary. */
  readonly nominal: readonly string[];
  /** Inputs that could not be moved, and why: zero, or a value that may not lie beside this one. */
  readonly fixed: readonly { readonly path: string; readonly why: string }[];
}

/** How far the inputs are moved. */
export interface SensitivityOptions {
  /** Share by which every input without a tolerance is moved; 0.01 when not given. */
  readonly step?: number;
  /** Own shares of some inputs, by path. */
  readonly steps?: Readonly<Record<string, number>>;
}

/** An input that is a number of mechanics. */
const movable = ({ path, value }: InputChange): Amount | undefined => (isInput(path) ? amountOf(value) : undefined);

/** No input is moved by more than this share of its value. */
const mostMoved = 0.4;

/** Standard deviations of the inputs with tolerances, as shares of their values. */
function toleranceShares(inputs: DesignInputs): ReadonlyMap<string, number> {
  return new Map(
    uncertainInputs(inputs).flatMap(({ path, amount: { number }, distribution }) =>
      number === 0
        ? []
        : [[path, Math.min(mostMoved, momentsOf(distribution).standardDeviation / Math.abs(number))] as const],
    ),
  );
}

/** Smaller steps drown in round-off. */
const leastStep = 1e-6;

/**
 * Elasticities of quantities with respect to every number of a design file, each moved up and down: by the standard deviation of its tolerance where the
 * design gives one, else by the common step.
 * @param quantities dotted paths of numbers in the JSON report
 * @throws SelvageError `unknown-name` a quantity that is not there; `out-of-range` no quantity, a step below 1e-6 or not below 0.5
 */
export function sensitivity(
  inputs: DesignInputs,
  quantities: readonly string[],
  { step = 0.01, steps = {} }: SensitivityOptions = {},
): Sensitivity {
  if (quantities.length === 0) fail({ code: 'out-of-range', message: 'no quantity', allowed: 'one or more' });
  for (const one of [step, ...Object.values(steps)]) {
    if (one >= leastStep && one < 0.5) continue;
    fail({
      code: 'out-of-range',
      message: `step = ${one}, must be at least ${leastStep} and below 0.5`,
      allowed: `at least ${leastStep}, below 0.5`,
    });
  }
  const base = evaluateDesign(inputs.design, { quantities }).values;
  const tolerances = toleranceShares(inputs);
  const moved: InputSensitivity[] = [];
  const idle: string[] = [];
  const nominal: string[] = [];
  const fixed: { path: string; why: string }[] = [];
  for (const input of inputList(inputs)) {
    const amount = movable(input);
    if (amount === undefined) continue;
    const { path, value } = input;
    if (!isQuantity(path)) {
      nominal.push(path);
      continue;
    }
    const own = steps[path] ?? tolerances.get(path) ?? step;
    if (amount.number === 0) {
      fixed.push({ path, why: 'is zero' });
      continue;
    }
    const [down, up] = [-own, own].map((by) =>
      evaluateVariant(inputs, [{ path, value: written({ ...amount, number: amount.number * (1 + by) }) }], {
        quantities,
      }),
    );
    const wrong = [down, up].find((one) => one !== undefined && 'problems' in one);
    if (wrong !== undefined && 'problems' in wrong) {
      fixed.push({ path, why: wrong.problems[0]?.message ?? 'cannot be computed' });
      continue;
    }
    const values = (one: typeof up): readonly number[] => (one !== undefined && 'values' in one ? one.values : []);
    const responses = base.map((at, i): InputResponse => {
      const [low = at, high = at] = [values(down)[i], values(up)[i]];
      const change = high - low;
      const still = Math.abs(change) <= roundOff * Math.max(Math.abs(high), Math.abs(low));
      return { elasticity: still || at === 0 ? 0 : change / (2 * own * at), low, high };
    });
    if (responses.every(({ elasticity }) => elasticity === 0)) idle.push(path);
    else moved.push({ path, value: value as string | number, step: own, responses });
  }
  const largest = ({ responses }: InputSensitivity) =>
    Math.max(...responses.map(({ elasticity }) => Math.abs(elasticity)));
  return {
    quantities: quantities.map((path, i) => ({ path, kind: kindAt(path.split('.')), value: base[i] ?? 0 })),
    inputs: moved.sort((a, b) => largest(b) - largest(a)),
    idle,
    nominal,
    fixed,
  };
}
