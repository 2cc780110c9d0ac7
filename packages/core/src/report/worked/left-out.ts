import type { Model } from '../../design/index.js';
import type { Block } from '../blocks.js';

/** What the report of the design computes and the working does not write out, each with the page that has its formulas. */
export function leftOut({ laminates, loads }: Model): Block[] {
  const has = (asked: (one: Model['laminates'][number]) => unknown): boolean =>
    laminates.some((one) => Boolean(asked(one)));
  const subjects = [
    ...(has(({ laminate }) => laminate.plies.some(({ core }) => core)) ? ['sandwich (docs/theory/sandwich.md)'] : []),
    ...(has(({ freeEdge }) => freeEdge) ? ['free edge (docs/theory/free-edge.md)'] : []),
    ...(has(({ panel, blister }) => panel ?? blister) ? ['panels and blisters (docs/theory/plates.md)'] : []),
    ...(loads.some(({ shear }) => shear) ? ['shear through the thickness (docs/theory/transverse-shear.md)'] : []),
  ];
  if (subjects.length === 0) return [];
  return [{ kind: 'paragraph', text: `In the report, but without steps here: ${subjects.join('; ')}.` }];
}
