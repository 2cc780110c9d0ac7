import type { UnitSystem } from '../../quantity/index.js';
import type { SearchResult } from '../../study/index.js';
import type { Block } from '../blocks.js';
import { chartFigure } from '../figures/index.js';

/** Names that fit beside their signs. */
const mostNamed = 12;

/** The front of a search with two aims, with the candidates that are shown and the design as written. */
export function frontFigure({ problem, candidates, written }: SearchResult, units: UnitSystem): Block[] {
  const [across, up, ...more] = problem.goals.aims;
  if (across === undefined || up === undefined || more.length > 0 || candidates.length === 0) return [];
  const place = (values: readonly number[]) => ({ x: values[across.quantity] ?? 0, y: values[up.quantity] ?? 0 });
  const points = candidates.map(({ values }) => place(values));
  const step = Math.ceil(points.length / mostNamed);
  const marks = points.flatMap((point, i) =>
    i % step === 0 ? [{ label: String(i + 1), ...point, spare: true as const }] : [],
  );
  const named = (one: typeof across): string => `${one.path}, to be ${one.sense === 1 ? 'small' : 'large'}`;
  return [
    chartFigure({
      id: 'search-front-figure',
      title: 'The front: candidates of which no other is better in both aims',
      x: { label: named(across), kind: across.kind },
      y: { label: named(up), kind: up.kind },
      series: [
        { label: 'candidates, numbered as in the table', points, apart: 'signs' },
        ...(written === undefined
          ? []
          : [{ label: 'the design as written', points: [place(written)], apart: 'signs' as const }]),
      ],
      marks,
      units,
    }),
  ];
}
