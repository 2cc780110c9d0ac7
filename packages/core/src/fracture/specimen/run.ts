import { fail } from '../../problem/index.js';
import type { SpecimenState } from '../types.js';
import { stored } from './energy.js';
import { equilibriumOf } from './equilibrium.js';
import { eventsOf, type Happening } from './events.js';
import type { Model, State } from './model.js';
import { proportionalLimit } from './proportional.js';
import { bridgedLength, overlapAtRows, recordOf, type Sums } from './record.js';
import { type Settled, type Stride, settle } from './settle.js';
import { type StepEnergy, stepEnergy } from './step.js';

/** How a model is pulled. */
export interface RunPlan {
  /** Crack length at the start, m. */
  readonly crackLength: number;
  /** Displacement at the end, m; infinite for none. */
  readonly displacement: number;
  /** Ends where the first row gives way, or beyond this load. */
  readonly untilRow?: { readonly load: number };
  /** Divides the steps of displacement and growth and what their energy may be off by, 1 when not given. */
  readonly refine?: number;
}

/** What a run has seen. */
export interface Run {
  readonly states: readonly SpecimenState[];
  readonly events: readonly Happening[];
  readonly zoneLength: number;
  readonly energyError: number;
  /** Deepest overlap of the crack faces at a row, m. */
  readonly overlap: number;
  /** The state in which an arm comes nearest to breaking. */
  readonly sharpest: State;
}

/** Steps of displacement as shares of it; what does not follow smoothly at the smallest is a jump. */
const largest = 0.03;
const smallest = 1e-4;
const mostSteps = 200_000;

/** Shares by which the energy of a step may be off: of its work, and of all work so far. */
const ofStep = 3e-4;
const ofAll = 1e-8;

/** By this a step in proportion stays short of what then gives way, so that rounding does not put that into the step. */
const justShort = 1e-9;

/** In steps no larger than this the trapezium rule errs by far less than the jump of a row sets free; a jump that frees no more than this share of
all work is then not narrowed down further. */
const fine = 1e-3;
const smallJump = 2e-3;

/**
 * Pulls a model by its displacement until the crack or the displacement has come to its limit, or an arm breaks.
 *
 * While nothing gives way the state grows in proportion, straight to where something does. From there steps adapt so that the work of each is found again:
 * elastic, in the bond, lost by threads, rubbed away. A step that even at the smallest size sets energy free is a jump at constant displacement.
 */
export function run(model: Model, { crackLength, displacement: end, untilRow, refine = 1 }: RunPlan): Run {
  const equilibrium = equilibriumOf(model);
  const straight = model.rows.every(({ law }) => law.straight);
  const stride = strideOf(model, crackLength, refine);
  const seen = Float64Array.from(model.rows, ({ law }) => law.firm);
  let now = equilibrium(crackLength, 1e-9 * crackLength, seen, new Float64Array(seen.length));
  let energy = stored(model, now);
  const sums: Sums = { work: energy.elastic, friction: 0, released: 0, off: 0 };
  const nothing = { ...now, displacement: 0, load: 0, rubbed: [] };
  const states = [{ ...recordOf(model, nothing, energy, sums, crackLength), work: 0, elastic: 0, armStrain: 0 }];
  const events: Happening[] = [];
  let [zoneLength, energyError, overlap] = [bridgedLength(model, now), 0, 0];
  let [sharpest, strained] = [now, 0];
  let step = largest / refine;
  let grew = false;
  /** Growth per displacement in the last step. */
  let rate = 0;

  for (let count = 0; now.displacement < end && now.crackLength < model.longest; count++) {
    if (count === mostSteps) tooLong(now);
    const factor = straight ? proportionalLimit(model, now) : 1;
    if (Math.min(factor, end) === Number.POSITIVE_INFINITY) break;
    const inProportion = factor > 1 + 1e-7;
    const least = inProportion || step <= smallest / refine;
    const target = Math.min(end, now.displacement * (inProportion ? factor * (1 - justShort) : 1 + step));
    const enough = least ? Number.POSITIVE_INFINITY : (0.03 / refine) * now.crackLength;
    const first = rate > 0 ? Math.min(1.1 * rate * (target - now.displacement), stride.longest) : stride.first;
    const reached = settle(model, equilibrium, now, target, { ...stride, first, enough });
    const cost = stepEnergy(model, now, energy, reached.state);
    const slight = step <= fine / refine && cost.off > 0 && cost.off <= smallJump * sums.work;
    const smooth = Math.abs(cost.off) <= (ofStep * Math.abs(cost.work)) / refine + ofAll * sums.work;
    const strain = model.strain(reached.state) / model.strainLimit;
    const good = reached.complete && (smooth || slight) && strain < 1 + 1e-4;
    if (!good && !least) {
      step = Math.max(smallest / refine, step / (reached.complete ? 2 : 4));
      continue;
    }
    accept(reached, cost, !smooth && cost.off > 0);
    if (strain >= 1 - 1e-7) {
      const { load, displacement, crackLength } = now;
      events.push({ kind: 'arm', load, displacement, crackLength, from: crackLength });
      break;
    }
    if (untilRow !== undefined && (now.load > untilRow.load || events.some(({ kind }) => kind !== 'bond'))) break;
    const most = (straight || grew ? largest : 1) / refine;
    step = Math.min(most, smooth ? 1.6 * step : slight ? step : largest / refine / 10);
  }
  return { states, events, zoneLength, energyError, overlap, sharpest };

  function accept(reached: Settled, cost: StepEnergy, jump: boolean): void {
    events.push(...eventsOf(model, now, reached, jump, grew));
    const growth = reached.state.crackLength - now.crackLength;
    grew = growth > 0;
    rate = jump ? 0 : growth / (reached.state.displacement - now.displacement);
    now = reached.state;
    energy = cost.stored;
    sums.work += cost.work;
    sums.friction += cost.friction;
    if (jump) sums.released += cost.off;
    else sums.off += cost.off;
    energyError = Math.max(energyError, Math.abs(sums.off) / sums.work);
    zoneLength = Math.max(zoneLength, bridgedLength(model, now));
    overlap = Math.max(overlap, overlapAtRows(model, now));
    const record = recordOf(model, now, energy, sums, crackLength);
    states.push(record);
    if (record.armStrain > strained) [sharpest, strained] = [now, record.armStrain];
  }
}

/** Pieces of growth: some to the gap between rows, but neither very many nor very few over the whole length. */
function strideOf({ rows, longest }: Model, crackLength: number, refine: number): Omit<Stride, 'enough'> {
  const places = rows.map(({ place }) => place).filter((place) => place > crackLength);
  const gap = places.slice(1).reduce((least, place, i) => {
    const distance = place - (places[i] ?? 0);
    return distance > 0 ? Math.min(least, distance) : least;
  }, longest);
  const whole = Math.max(longest - crackLength, 1e-6 * longest);
  const piece = Math.max(whole / 1000, Math.min(whole / 100, gap / 4)) / refine;
  return { first: piece / 8, longest: piece };
}

function tooLong({ displacement, crackLength }: State): never {
  return fail({
    code: 'not-computable',
    message: `steps = ${mostSteps}, given up at displacement ${displacement} m and crack length ${crackLength} m`,
    hint: 'give a displacement or a crack length at which to stop',
  });
}
