import { assemble, type DesignInputs, variant } from '../../design/index.js';
import { tabulateQbar } from '../../laminate/index.js';
import type { Ply } from '../../material/index.js';
import { SelvageError } from '../../problem/index.js';
import type { StackChoice, StackEntryOfSearch } from './stack-choices.js';

/** The layers that a choice becomes, from the tool side on, and in the mirrored half. */
export interface ChoiceLayers {
  readonly plain: readonly Ply[];
  readonly mirrored: readonly Ply[];
}

/**
 * The layers of every choice of a laminate by itself.
 *
 * In a closed tool the fibre fraction follows from the whole stack; the layers then have 50 %, which is enough to tell their directions.
 * @throws SelvageError at the choice that cannot be made into layers
 */
export function choiceLayers(
  inputs: DesignInputs,
  { laminate }: StackEntryOfSearch,
  choices: readonly StackChoice[],
): readonly ChoiceLayers[] {
  return choices.map(({ code, path }) => {
    try {
      const design = variant(inputs, [{ path: `laminates.${laminate}.stack`, value: `[${code}]s` }]);
      const { material, letters, stack, process } = design.laminates[laminate] ?? { stack: '' };
      const bag = { kind: 'bag', fibreVolumeFraction: 0.5 } as const;
      const bare = {
        stack,
        ...(material === undefined ? {} : { material }),
        ...(letters === undefined ? {} : { letters }),
        ...(process === undefined ? {} : { process: process.kind === 'closedTool' ? bag : process }),
      };
      const { format, title, materials, source } = design;
      const alone = { format, title, source, laminates: { [laminate]: bare }, ...(materials && { materials }) };
      const plies = assemble(alone).laminates[0]?.laminate.plies ?? [];
      const half = plies.length / 2;
      return { plain: plies.slice(0, half), mirrored: plies.slice(half) };
    } catch (error) {
      if (!(error instanceof SelvageError)) throw error;
      throw new SelvageError(error.problems.map(({ where: _, ...problem }) => ({ ...problem, path })));
    }
  });
}

/** Shearing by stretching that layers bring, A16 and A26, as a share of their A11 + A22. */
function coupling({ plain }: ChoiceLayers): readonly [number, number] {
  const { qbarTable, row } = tabulateQbar(plain);
  let [q16, q26, size] = [0, 0, 0];
  plain.forEach(({ thickness }, k) => {
    const at = 6 * (row[k] ?? 0);
    q16 += thickness * (qbarTable[at + 2] ?? 0);
    q26 += thickness * (qbarTable[at + 4] ?? 0);
    size += thickness * ((qbarTable[at] ?? 0) + (qbarTable[at + 3] ?? 0));
  });
  return [q16 / size, q26 / size];
}

/** Below this share coupling is rounding, or that of a cloth woven alike both ways. */
const none = 1e-9;

/** Whether a choice couples stretching with shearing by itself. */
export const couples = (layers: ChoiceLayers): boolean => coupling(layers).some((share) => Math.abs(share) > none);

/** Whether a choice has no direction of its own: a core. */
export const isCore = ({ plain }: ChoiceLayers): boolean => plain.every(({ core }) => core === true);
