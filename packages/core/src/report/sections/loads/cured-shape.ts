import type { LoadResult } from '../../../design/index.js';
import type { CuredShape, Response } from '../../../laminate/index.js';
import { formatQuantity, type UnitSystem } from '../../../quantity/index.js';
import type { Block, Cell } from '../../blocks.js';
import { amount, amountOr, heading, listOf, table, withoutNoise } from '../build.js';
import { stressProfile } from './profile.js';
import { failureTable, weakestBy } from './strength.js';
import { criterionNames, facesOf, faceWords, isMechanical, largest, layerName, short } from './words.js';

const shapes: Readonly<Record<CuredShape['kind'], string>> = {
  flat: 'it stays flat: temperature and moisture change its size only',
  cylinder: 'it curls like a cylinder, about one axis',
  dome: 'it becomes a dome, curved both ways to the same side',
  saddle: 'it becomes a saddle, curved both ways to opposite sides',
  twist: 'it twists: a saddle whose edges along x and y stay straight',
};

/** Along a direction of negative curvature the bag side is shorter, so that the ends lift toward it. */
function bend(k: number, direction: number, units: UnitSystem): string {
  const angle = formatQuantity(Math.round(direction * 10) / 10 + 0, 'angle', { units });
  const radius = formatQuantity(1 / Math.abs(k), 'longLength', { units, digits: 3 });
  return `along ${angle} the ends lift toward the ${k < 0 ? 'bag' : 'tool'} side, radius ${radius}`;
}

/** The free shape in words, and how far the linear numbers reach. */
export function shapeWords(shape: CuredShape, units: UnitSystem): string[] {
  const { kind, principal, direction, riseOfThickness } = shape;
  const other = direction > 0 ? direction - 90 : direction + 90;
  const bent = kind === 'flat' ? [] : kind === 'cylinder' ? [direction] : [direction, other];
  return [
    `nothing holding it, ${shapes[kind]}`,
    ...bent.map((angle, i) => bend(principal[i] ?? 0, angle, units)),
    ...(riseOfThickness === undefined
      ? []
      : [
          `over a length of ${formatQuantity(riseOfThickness, 'length', { units, digits: 3 })} the rise equals the thickness; a larger piece does not follow these linear numbers`,
        ]),
  ];
}

const components = ['σ1', 'σ2', 'τ12'] as const;

interface Point {
  readonly ply: number;
  readonly name: string;
  readonly face: 'top' | 'bottom';
  readonly stress: number;
  /** Of the strength against it; undefined when that is not known. */
  readonly share: number | undefined;
}

/** One component of the residual stress at every face. */
function pointsOf(result: LoadResult, response: Response, i: number, size: number): Point[] {
  return response.plies.flatMap((ply, k) => {
    const s = result.laminate.laminate.plies[k]?.strengths;
    return (['top', 'bottom'] as const).map((face) => {
      const stress = withoutNoise(ply[face].stress12[i] ?? 0, size);
      const limit = s === undefined ? undefined : [stress < 0 ? s.Xc : s.Xt, stress < 0 ? s.Yc : s.Yt, s.S][i];
      const share = limit === undefined ? undefined : Math.abs(stress) / limit;
      return { ply: k + 1, name: ply.name, face, stress, share };
    });
  });
}

/** The residual stress of each kind that comes nearest to its strength; the largest where no layer has strengths. */
function residualTable(result: LoadResult, response: Response, id: string): Block {
  const size = largest(response.plies.flatMap((ply) => facesOf(ply).flatMap(({ stress12 }) => [...stress12])));
  const known = result.laminate.laminate.plies.some((ply) => ply.strengths !== undefined);
  const rows = components.map((label, i): Cell[] => {
    const weight = ({ share, stress }: Point): number => (known ? (share ?? 0) : Math.abs(stress));
    const most = pointsOf(result, response, i, size).reduce((a, b) => (weight(b) > weight(a) * (1 + 1e-9) ? b : a));
    const nothing = most.stress === 0;
    return [
      label,
      amount(most.stress, 'stress'),
      nothing ? '–' : layerName(most.ply, most.name),
      nothing ? '–' : faceWords[most.face],
      ...(known ? [amountOr(most.share, 'fraction', '–')] : []),
    ];
  });
  return table(
    `${id}-residual`,
    known
      ? 'Residual stress in the axes of a layer, of each kind the one that uses most of the strength against it'
      : 'Largest residual stress in the axes of a layer',
    [
      { label: '' },
      { label: 'Stress', kind: 'stress' },
      { label: 'Layer' },
      { label: 'Face' },
      ...(known ? [{ label: 'of the strength', kind: 'fraction' as const }] : []),
    ],
    rows,
  );
}

/** What temperature and moisture do by themselves: shape, stress, and how far that is from breaking a layer. */
export function residualBlocks(result: LoadResult, id: string, units: UnitSystem): Block[] {
  const { residual, model } = result;
  if (residual === undefined) return [];
  const { response, failures, curedShape } = residual;
  const mechanical = isMechanical(result);
  const broken = result.failures.some((one) => one.ratio === 0);
  const stressed = response.plies.some((ply) => facesOf(ply).some(({ stress12 }) => largest([...stress12]) > 0));
  const least = weakestBy(failures);
  return [
    heading(3, 'Temperature and moisture alone', `${id}-cured`),
    ...listOf([
      ...shapeWords(curedShape, units),
      ...(least?.ratio === undefined
        ? []
        : [
            `${least.ratio > 1 ? 'their stress alone would break' : 'THEIR STRESS ALONE BREAKS'} a layer at ${short(least.ratio)} times this change (${criterionNames[least.criterion]}: layer ${layerName(least.ply, least.name)}, ${least.mode})`,
          ]),
    ]),
    ...(stressed ? [residualTable(result, response, id)] : []),
    ...((mechanical && !broken) || failures.length === 0
      ? []
      : [
          failureTable(
            failures,
            `${id}-residual-failure`,
            'By how much temperature and moisture may be multiplied until they alone break a layer',
          ),
        ]),
    ...(mechanical
      ? stressProfile(result, response, {
          id: `${id}-residual-profile`,
          title: `Residual stress through the thickness, load ${model.name}`,
          units,
        })
      : []),
  ];
}
