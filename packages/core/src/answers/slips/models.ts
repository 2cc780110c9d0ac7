import type { LoadModel, Model } from '../../design/index.js';
import { type Laminate, laminate } from '../../laminate/index.js';
import { constantsFromStiffness, type Ply } from '../../material/index.js';
import { keyOf } from '../../working/index.js';
import type { Quantity } from '../quantities.js';
import type { ModelWay, Sheet, Slip, Slipped } from './slip.js';

const digits = 3;

type Plies = Laminate['plies'];

const withPlies = (model: Model, change: (plies: Plies) => Plies): Model => ({
  ...model,
  laminates: model.laminates.map((one) => ({ ...one, laminate: laminate(change(one.laminate.plies)) })),
});

const eachPly = (change: (ply: Ply, plies: Plies) => Ply): ModelWay => ({
  model: (model) => withPlies(model, (plies) => plies.map((ply) => change(ply, plies))),
});

const eachLoad = (change: (load: LoadModel) => LoadModel): ModelWay => ({
  model: (model) => ({ ...model, loads: model.loads.map(change) }),
});

/** Moisture that is given ply by ply follows the plies. */
const moistureOf = (load: LoadModel, change: (list: number[]) => number[]): LoadModel =>
  Array.isArray(load.moisture) ? { ...load, moisture: change([...load.moisture]) } : load;

const reversed: ModelWay = {
  model: (model) => ({
    ...withPlies(model, (plies) => plies.toReversed()),
    loads: model.loads.map((load) => moistureOf(load, (list) => list.toReversed())),
  }),
};

const alike = (one: Ply, other: Ply): boolean =>
  one.angle === other.angle && one.thickness === other.thickness && one.E1 === other.E1 && one.name === other.name;

/** The written half of a stack that is its own mirror image. */
const half = (plies: Plies): number | undefined =>
  plies.length > 1 && plies.every((ply, k) => alike(ply, plies[plies.length - 1 - k] ?? ply))
    ? Math.ceil(plies.length / 2)
    : undefined;

const writtenHalf: ModelWay = {
  model: (model) => {
    if (model.laminates.every((one) => half(one.laminate.plies) === undefined)) return undefined;
    const halved = new Map(model.laminates.map((one) => [one.name, half(one.laminate.plies)]));
    return {
      ...withPlies(model, (plies) => plies.slice(0, half(plies) ?? plies.length)),
      loads: model.loads.map((load) =>
        moistureOf(load, (list) => list.slice(0, halved.get(load.laminate) ?? list.length)),
      ),
    };
  },
};

const negated = eachPly((ply) => ({ ...ply, angle: -ply.angle }));
const fromY = eachPly((ply) => ({ ...ply, angle: 90 - ply.angle }));
const inRadians = eachPly((ply) => ({ ...ply, angle: (ply.angle * 180) / Math.PI }));

/** Thicknesses that a ply is given by mistake, as multiples of its own. */
const thicknesses: readonly ModelWay[] = [(n: number) => n, (n: number) => 1 / n, () => 2, () => 1 / 2].map((factor) =>
  eachPly((ply, plies) => ({ ...ply, thickness: ply.thickness * factor(plies.length) })),
);

const withConstants = (change: (ply: Ply) => Pick<Ply, 'E1' | 'E2' | 'G12' | 'nu12'>): ModelWay =>
  eachPly((ply) => (ply.E1 === ply.E2 ? ply : { ...ply, ...change(ply) }));

const poisson: readonly ModelWay[] = [
  // nu21 stands where nu12 belongs, and the other way round.
  withConstants((ply) => ({ ...ply, nu12: (ply.nu12 * ply.E2) / ply.E1 })),
  withConstants((ply) => ({ ...ply, nu12: (ply.nu12 * ply.E1) / ply.E2 })),
  // 1 - nu12² in place of 1 - nu12 nu21.
  withConstants(({ E1, E2, G12, nu12 }) => {
    const d = 1 - nu12 * nu12;
    return constantsFromStiffness([E1 / d, (nu12 * E2) / d, E2 / d, G12]);
  }),
  // nu12 with E1, nu21 with E2.
  withConstants(({ E1, E2, G12, nu12 }) => {
    const d = 1 - (nu12 * nu12 * E2) / E1;
    return constantsFromStiffness([E1 / d, (nu12 * E1) / d, E2 / d, G12]);
  }),
  // The denominator left out.
  withConstants(({ E1, E2, G12, nu12 }) => constantsFromStiffness([E1, nu12 * E2, E2, G12])),
];

const otherSign = (value: number | undefined): number => -(value ?? 0);
const heatSign = eachLoad((load) => ({
  ...load,
  temperatureChange: otherSign(load.temperatureChange),
  temperatureGradient: otherSign(load.temperatureGradient),
}));
const noHeat = eachLoad(({ temperatureChange: _, temperatureGradient: __, moisture: ___, ...load }) => load);

/** The same quantity of the ply on the other side: what is the second from the tool is the second from the bag. */
function opposite(of: Quantity, count: number, otherFace: boolean): Quantity {
  const at = of.part.indexOf('plies') + 1;
  if (at === 0) return of;
  const faces: Readonly<Record<string, string>> = { top: 'bottom', bottom: 'top' };
  const part = of.part.map((name, i) => {
    if (i === at) return String(count + 1 - Number(name));
    return otherFace && i > at ? (faces[name] ?? name) : name;
  });
  return { ...of, part, key: keyOf(part, of.symbol) };
}

type Numbers = (of: Quantity, sheet: Sheet) => Slipped[];

const slippedBy =
  (...ways: readonly ModelWay[]): Numbers =>
  (of, sheet) =>
    ways.flatMap((way): Slipped[] => {
      const value = sheet.under(way)(of);
      return value === undefined ? [] : [{ value }];
    });

/** In the reversed stack: the ply of the same number, and the same ply. */
const inReversed: Numbers = (of, sheet) =>
  [of, opposite(of, sheet.plyCount(of), false)].flatMap((one) => slippedBy(reversed)(one, sheet));

/** The same face of the same ply, at the opposite height. */
const atOppositeHeight: Numbers = (of, sheet) => slippedBy(reversed)(opposite(of, sheet.plyCount(of), true), sheet);

/** Slips that are another model of the laminate or its load. */
export const modelSlips: readonly Slip[] = [
  { name: 'anglesNegated', family: 'sign', digits, numbers: slippedBy(negated) },
  { name: 'orderReversed', family: 'order', digits, numbers: inReversed },
  { name: 'otherSide', family: 'order', digits, numbers: atOppositeHeight },
  { name: 'angleFromY', digits, numbers: slippedBy(fromY) },
  { name: 'plyThickness', digits, numbers: slippedBy(...thicknesses) },
  { name: 'halfStack', digits, numbers: slippedBy(writtenHalf) },
  { name: 'heatSign', digits, numbers: slippedBy(heatSign) },
  { name: 'heatForgotten', digits, numbers: slippedBy(noHeat) },
  { name: 'poisson', digits, numbers: slippedBy(...poisson) },
  { name: 'radians', digits, numbers: slippedBy(inRadians) },
];
