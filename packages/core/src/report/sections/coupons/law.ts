import type { CouponResult } from '../../../design/index.js';
import type { UnitSystem } from '../../../quantity/index.js';
import type { Block } from '../../blocks.js';
import { chartFigure } from '../../figures/index.js';
import { limitNames } from './words.js';

/** Force in one stitch against the movement of the crack at it; absent without stitches. */
export function lawFigure({ model, prediction }: CouponResult, id: string, units: UnitSystem): Block[] {
  const { law } = prediction;
  if (law === undefined || law.opening.length < 2) return [];
  const sliding = model.coupon.specimen.kind === 'enf';
  return [
    chartFigure({
      id: `${id}-law`,
      title: `How one stitch holds the crack${law.measured === true ? ', as measured' : ''}, coupon ${model.name}`,
      x: { label: sliding ? 'sliding of the crack' : 'opening of the crack', kind: 'length' },
      y: { label: 'force of one stitch', kind: 'force' },
      series: [
        { label: 'one stitch', points: law.opening.map((opening, i) => ({ x: opening, y: law.force[i] ?? 0 })) },
      ],
      marks: [{ label: 'peak', x: law.peak.opening, y: law.peak.force }],
      units,
      summary: `At its peak it is ${limitNames[law.failure]} that gives way.`,
    }),
  ];
}
