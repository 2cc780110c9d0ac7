import type { CouponResult } from '../../../design/index.js';
import type { UnitSystem } from '../../../quantity/index.js';
import type { Block } from '../../blocks.js';
import { specimenFigure } from '../../figures/index.js';
import { specimenNames } from './words.js';

/** The coupon from the side, to scale. */
export function couponDrawing({ model, prediction }: CouponResult, id: string, units: UnitSystem): Block {
  const { specimen } = model.coupon;
  const { kind, arms } = specimen;
  const common = {
    id: `${id}-drawing`,
    title: `Coupon ${model.name}: ${specimenNames[kind]}`,
    thickness: [arms[0].thickness, arms[1].thickness] as const,
    rows: prediction.rows.map(({ position }) => position),
    units,
  };
  switch (specimen.kind) {
    case 'enf':
      return specimenFigure({
        ...common,
        kind: 'enf',
        crackLength: specimen.crackLength,
        length: specimen.span + (specimen.overhang ?? 0),
        span: specimen.span,
        ...(specimen.loadSpan === undefined ? {} : { loadSpan: specimen.loadSpan }),
      });
    case 'wedge':
      return specimenFigure({
        ...common,
        kind: 'wedge',
        crackLength: prediction.splitLength?.median ?? prediction.wedge?.splitLength ?? 0,
        length: specimen.depth,
        opening: specimen.opening,
      });
    default:
      return specimenFigure({
        ...common,
        kind: specimen.kind,
        crackLength: specimen.crackLength,
        length: specimen.length,
      });
  }
}
