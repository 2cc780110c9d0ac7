import { type DesignInputs, type InputValue, kindAt } from '../design/index.js';
import { fail, type Problem, SelvageError } from '../problem/index.js';
import type { Note } from '../provenance/index.js';
import type { KindName } from '../quantity/index.js';
import { evaluateVariant } from './evaluate.js';
import { stillNotes } from './still.js';
import type { Variation } from './variation.js';

/** A point of a sweep: the varied inputs and what came of them. */
export interface SweepPoint {
  /** As written, in the order of the variations. */
  readonly inputs: readonly InputValue[];
  /** SI, in the order of the quantities; absent where the design cannot be computed. */
  readonly values?: readonly number[];
  /** Whether every hard target is met; absent without targets. */
  readonly met?: boolean;
  /** Why there are no values. */
  readonly problems?: readonly Problem[];
}

/** Quantities over one or two varied inputs. */
export interface Sweep {
  readonly variations: readonly Variation[];
  readonly quantities: readonly { readonly path: string; readonly kind: KindName }[];
  /** The values of the first input change slowest. */
  readonly points: readonly SweepPoint[];
  /** Which inputs move none, or not all, of the quantities. */
  readonly notes: readonly Note[];
}

const most = 10_001;

/**
 * Quantities of a design over one or two of its inputs. Points at which the design cannot be computed are kept, with the reason.
 * @param variations one or two
 * @param quantities dotted paths of numbers in the JSON report
 * @throws SelvageError `out-of-range` no or more than two variations, more than 10 001 points, an input varied twice, no quantity; where no
 * point at all can be computed, the problems of the first: `unknown-name` an input or a quantity that is not there
 */
export function sweep(inputs: DesignInputs, variations: readonly Variation[], quantities: readonly string[]): Sweep {
  check(variations, quantities);
  const [outer, inner] = variations;
  const rows = (outer?.values ?? []).flatMap((value) =>
    inner === undefined ? [[value]] : inner.values.map((other) => [value, other]),
  );
  const points = rows.map((values): SweepPoint => {
    const changes = values.map((value, i) => ({ path: variations[i]?.path ?? '', value }));
    const found = evaluateVariant(inputs, changes, { quantities, targets: true });
    if ('problems' in found) return { inputs: values, problems: found.problems };
    const hard = found.targets.filter((target) => target.hard);
    return { inputs: values, values: found.values, ...(hard.length > 0 && { met: hard.every(({ met }) => met) }) };
  });
  const first = points[0];
  // A path that is nowhere, a value that nothing takes: no table of the same complaint.
  if (first?.problems !== undefined && points.every(({ values }) => values === undefined)) {
    // A quantity that the design as written has not is not the fault of any point.
    const asWritten = evaluateVariant(inputs, [], { quantities, targets: false });
    const unknown = 'problems' in asWritten ? asWritten.problems.filter(({ code }) => code === 'unknown-name') : [];
    if (unknown.length > 0) throw new SelvageError(unknown);
    const tried = first.inputs.map((value, i) => `${variations[i]?.path} = ${value}`).join(', ');
    throw new SelvageError(
      first.problems.map((problem) => ({ ...problem, message: `${problem.message} (tried ${tried})` })),
    );
  }
  return {
    variations,
    quantities: quantities.map((path) => ({ path, kind: kindAt(path.split('.')) })),
    points,
    notes: stillNotes(
      variations.map(({ path }) => path),
      quantities,
      points,
    ),
  };
}

function check(variations: readonly Variation[], quantities: readonly string[]): void {
  const refuse = (message: string, allowed: string): never => fail({ code: 'out-of-range', message, allowed });
  if (variations.length < 1 || variations.length > 2) refuse(`${variations.length} inputs to vary`, 'one or two');
  if (variations[0]?.path === variations[1]?.path) refuse(`\`${variations[0]?.path}\` is varied twice`, 'two inputs');
  if (quantities.length === 0) refuse('no quantity', 'one or more numbers of the JSON report');
  const points = variations.reduce((product, { values }) => product * values.length, 1);
  if (points > most) refuse(`${points} points`, `at most ${most}`);
}
