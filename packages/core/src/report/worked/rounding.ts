import { type KindName, kinds } from '../../quantity/index.js';
import type { StepValues } from '../../working/index.js';
import { kindOf } from '../formula/index.js';
import { withoutNoise } from '../sections/build.js';

/** Kinds whose numbers are of one nature, so that a far smaller one is a zero that was rounded. */
const alike = (kind: KindName): boolean => kinds[kind].si !== '' || kind === 'strain';

/** The numbers of a step with what rounding has left of a zero set to zero: anything far below the others of its kind. */
export function withoutRounding(all: readonly StepValues[]): StepValues[] {
  const largest = new Map<string, number>();
  for (const values of all) {
    for (const [symbol, value] of Object.entries(values)) {
      const kind = kindOf(symbol);
      largest.set(kind, Math.max(largest.get(kind) ?? 0, Math.abs(value)));
    }
  }
  const scale = (symbol: string): number => 1e-4 * (largest.get(kindOf(symbol)) ?? 0);
  return all.map((values) =>
    Object.fromEntries(
      Object.entries(values).map(([symbol, value]) => [
        symbol,
        alike(kindOf(symbol)) ? withoutNoise(value, scale(symbol)) : value,
      ]),
    ),
  );
}
