import { type DesignInputs, inputAt, locateIn, type ToleranceEntry } from '../design/index.js';
import { fail, type Path, SelvageError } from '../problem/index.js';
import { formatNumber } from '../quantity/index.js';
import { type Amount, amountOf, isInput, numberIn } from './amount.js';
import { type Distribution, demandDistribution } from './method/distributions.js';

/** An input that is not exactly known: how its number, in the unit it is written in, is spread. */
export interface UncertainInput {
  readonly path: string;
  readonly amount: Amount;
  readonly distribution: Distribution;
}

/** Standard deviations from the middle to the ends of a normal range: 95 of 100 lie between them. */
const deviations = 2;

/** Both ends of a range in the unit of the input. */
function endsOf(entry: ToleranceEntry, { number, unit }: Amount, at: Path): readonly [number, number] {
  const given = (['relative', 'plusMinus', 'between'] as const).filter((key) => entry[key] !== undefined);
  if (given.length !== 1) {
    fail({
      code: given.length === 0 ? 'missing-key' : 'contradiction',
      message: `the range of \`${entry.input}\` is given ${given.length === 0 ? 'by nothing' : `by ${given.join(' and ')}`}`,
      allowed: 'one of `relative`, `plusMinus`, `between`',
      path: at,
    });
  }
  const inUnit = (value: string | number, path: Path): number => {
    const amount = amountOf(value);
    const found = amount && numberIn(amount, unit);
    return (
      found ??
      fail({
        code: amount === undefined ? 'not-a-number' : 'unit-mismatch',
        message: `\`${value}\` is not in a unit of the input, which is in \`${unit || 'no unit'}\``,
        allowed: `a number in \`${unit || 'no unit'}\` or a unit of the same kind`,
        path,
      })
    );
  };
  if (entry.between !== undefined) {
    const [low, high] = entry.between;
    return [inUnit(low, [...at, 'between', 0]), inUnit(high, [...at, 'between', 1])];
  }
  const half =
    entry.plusMinus === undefined
      ? (entry.relative ?? 0) * Math.abs(number)
      : inUnit(entry.plusMinus, [...at, 'plusMinus']);
  if (!(half > 0)) {
    fail({
      code: 'out-of-range',
      message: `half the range of \`${entry.input}\` is ${formatNumber(half)}`,
      allowed: 'above 0',
      path: entry.plusMinus === undefined ? at : [...at, 'plusMinus'],
    });
  }
  return [number - half, number + half];
}

function distributionOf(entry: ToleranceEntry, amount: Amount, at: Path): Distribution {
  const [low, high] = endsOf(entry, amount, at);
  const { number, unit } = amount;
  const inWords = unit === '' ? '' : ` ${unit}`;
  const kind = entry.distribution ?? 'normal';
  if (!(low < high)) {
    fail({
      code: 'contradiction',
      message: `a range from ${formatNumber(low)} to ${formatNumber(high)}${inWords}`,
      allowed: 'a low end below the high one',
      path: at,
    });
  }
  if (kind === 'uniform') return { kind, low, high };
  if (kind === 'triangular') return { kind, low, likeliest: Math.min(high, Math.max(low, number)), high };
  if (kind === 'normal') return { kind, mean: (low + high) / 2, standardDeviation: (high - low) / (2 * deviations) };
  if (!(low > 0)) {
    fail({
      code: 'out-of-range',
      message: `a lognormal range from ${formatNumber(low)}${inWords}`,
      allowed: 'ends above 0',
      path: at,
    });
  }
  return { kind, median: Math.sqrt(low * high), logDeviation: Math.log(high / low) / (2 * deviations) };
}

/**
 * The `tolerances` of a design as distributions.
 *
 * The ends of a range lie two standard deviations from its middle (normal; lognormal of the logarithm), or are the limits (uniform; triangular, with the
 * value of the design as the likeliest).
 *
 * @throws SelvageError with the place of the tolerance: `unknown-name` no such input; `not-a-number` an input or an end that is no number; `unit-mismatch`;
 * `missing-key` no range; `out-of-range` something that no result follows from; `contradiction` a range given twice, an input named twice, a range that does not rise; `out-of-range`
 */
export function uncertainInputs(inputs: DesignInputs): readonly UncertainInput[] {
  const seen = new Set<string>();
  return (inputs.design.tolerances ?? []).map((entry, i) => {
    const at = ['tolerances', i];
    try {
      if (!isInput(entry.input)) {
        fail({
          code: 'out-of-range',
          message: `no result follows from \`${entry.input}\``,
          allowed: 'a number of materials, threads, laminates, stitching, loads or coupons',
          path: [...at, 'input'],
        });
      }
      const amount = amountOf(inputAt(inputs, entry.input));
      if (amount === undefined) {
        return fail({
          code: 'not-a-number',
          message: `\`${entry.input}\` is not a number`,
          allowed: 'an input that is one number with its unit',
          path: [...at, 'input'],
        });
      }
      if (seen.has(entry.input)) {
        fail({
          code: 'contradiction',
          message: `\`${entry.input}\` has two tolerances`,
          allowed: 'one',
          path: [...at, 'input'],
        });
      }
      seen.add(entry.input);
      const distribution = distributionOf(entry, amount, at);
      demandDistribution(distribution);
      return { path: entry.input, amount, distribution };
    } catch (error) {
      if (!(error instanceof SelvageError)) throw error;
      const here = error.problems.map((problem) =>
        problem.path?.[0] === 'tolerances' ? problem : { ...problem, path: [...at, 'input'] },
      );
      throw new SelvageError(locateIn(inputs, here));
    }
  });
}
