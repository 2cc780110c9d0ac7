import { offAxisConstants } from '../../laminate/index.js';
import type { UnitSystem } from '../../quantity/index.js';
import type { ComparedDesign, Comparison } from '../../study/index.js';
import type { Block } from '../blocks.js';
import { chartFigure, polarFigure } from '../figures/index.js';
import { heading, slug } from '../sections/build.js';

/** What a figure tells apart. */
const mostCurves = 4;
const mostFigures = 6;
const angles = Array.from({ length: 73 }, (_, i) => i * 5);

/** Names that every design has in a section, in the order of the first. */
function shared(designs: readonly ComparedDesign[], names: (one: ComparedDesign) => readonly string[]): string[] {
  const [base, ...others] = designs.map(names);
  return (base ?? []).filter((name) => others.every((list) => list.includes(name)));
}

function stiffnessFigure(designs: readonly ComparedDesign[], laminate: string, units: UnitSystem): Block[] {
  const curves = designs.flatMap(({ name, results }) => {
    const found = results.laminates.find((one) => one.model.name === laminate);
    if (found === undefined) return [];
    const values = angles.map((angle) => offAxisConstants(found.stiffness, angle).Ex);
    return [{ label: name, values, kind: 'modulus' as const }];
  });
  const [first] = curves;
  if (first === undefined || curves.every(({ values }) => values.every((value, i) => value === first.values[i])))
    return [];
  const title = `Laminate ${laminate}: modulus in every direction`;
  return [polarFigure({ id: `compare-${slug(laminate)}-polar`, title, angles, curves, units })];
}

function couponFigure(designs: readonly ComparedDesign[], coupon: string, units: UnitSystem): Block[] {
  const series = designs.flatMap(({ name, results }) => {
    const states = results.coupons.find((one) => one.model.name === coupon)?.prediction.result?.states;
    return states === undefined
      ? []
      : [{ label: name, points: states.map(({ displacement, load }) => ({ x: displacement, y: load })) }];
  });
  if (series.length < 2) return [];
  return [
    chartFigure({
      id: `compare-${slug(coupon)}-load`,
      title: `Coupon ${coupon}: load against displacement`,
      x: { label: 'displacement', kind: 'length' },
      y: { label: 'load', kind: 'force' },
      series,
      units,
    }),
  ];
}

/** Figures with the curves of every design in one frame; of laminates and coupons that all designs have under one name and that differ. */
export function overlays({ designs }: Comparison, units: UnitSystem): Block[] {
  const drawn = designs.slice(0, mostCurves);
  const laminates = shared(drawn, ({ results }) => results.laminates.map(({ model }) => model.name));
  const coupons = shared(drawn, ({ results }) => results.coupons.map(({ model }) => model.name));
  const figures = [
    ...laminates.flatMap((name) => stiffnessFigure(drawn, name, units)),
    ...coupons.flatMap((name) => couponFigure(drawn, name, units)),
  ].slice(0, mostFigures);
  return figures.length === 0 ? [] : [heading(2, 'Drawn over each other', 'overlaid'), ...figures];
}
