import type { LoadResult } from '../../../design/index.js';
import type { Criterion, PlyResponse } from '../../../laminate/index.js';
import { formatNumber, formatQuantity, type UnitSystem } from '../../../quantity/index.js';

export const criterionNames: Readonly<Record<Criterion, string>> = {
  maxStress: 'maximum stress',
  maxStrain: 'maximum strain',
  tsaiHill: 'Tsai-Hill',
  tsaiWu: 'Tsai-Wu',
  hashin: 'Hashin',
  puck: 'Puck',
};

/** The face of a ply as the moulder sees it: `top` is the one toward the tool. */
export const faceWords = { top: 'tool side', bottom: 'bag side' } as const;

/** The largest size among numbers; 0 for none. */
export const largest = (values: readonly number[]): number => Math.max(0, ...values.map(Math.abs));

/** "3 (ud)": the number of a layer with what it is made of. */
export const layerName = (ply: number | undefined, name: string | undefined): string =>
  ply === undefined ? '–' : `${ply}${name === undefined ? '' : ` (${name})`}`;

/** A ratio or a share with three digits. */
export const short = (value: number): string => formatNumber(value, 3);
export const percent = (value: number, units: UnitSystem): string =>
  formatQuantity(value, 'fraction', { units, digits: 3 });

/** Faces of a layer from the tool side up. */
export const facesOf = ({ top, bottom }: PlyResponse) => [top, bottom] as const;

/** Height of the laminate's faces above and below its middle, m. */
export const halfThickness = ({ response }: LoadResult): number =>
  largest(response.plies.flatMap((ply) => facesOf(ply).map(({ z }) => z)));

/** Whether forces, moments or deformations act; else there are temperature and moisture alone. */
export const isMechanical = ({ model: { N, M, strain, curvature } }: LoadResult): boolean =>
  [N, M, strain, curvature].flatMap((three) => three ?? []).some((value) => value !== null && value !== 0);
