import { fail } from '../../problem/index.js';
import { inMillimetres, requirePositive } from '../../stitch/index.js';
import { requireRefine } from './check.js';
import type { RunPlan } from './run.js';
import type { Specimen } from './types.js';

/** Where a test ends: as asked, at the latest where the model does. @throws out-of-range */
export function planOf(
  { until, refine = 1, crackLength }: Specimen,
  end: number,
): RunPlan & { readonly longest: number } {
  const displacement = until?.displacement ?? Number.POSITIVE_INFINITY;
  const wanted = until?.crackLength ?? end;
  if (displacement !== Number.POSITIVE_INFINITY)
    requirePositive('displacement at the end', displacement, inMillimetres);
  requireRefine(refine);
  const longest = Math.min(wanted, end);
  if (!(longest > crackLength)) {
    fail({
      code: 'out-of-range',
      message: `crackLength = ${inMillimetres(crackLength)}, must be below the ${inMillimetres(longest)} at which the test ends`,
      allowed: `below ${inMillimetres(longest)}`,
      hint: 'a longer bond leaves room for growth',
    });
  }
  return { crackLength, displacement, refine, longest };
}
