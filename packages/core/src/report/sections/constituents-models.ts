import type { CuredFabric, FibreModels } from '../../design/index.js';
import type { ComparedProperty, ComparedRule, PropertyComparison } from '../../material/index.js';
import type { KindName } from '../../quantity/index.js';
import type { Block, Cell } from '../blocks.js';
import { amount, slug, table } from './build.js';

const symbols: Readonly<Record<ComparedProperty, string>> = {
  E1: 'E1',
  E2: 'E2',
  G12: 'G12',
  nu12: 'ν12',
  nu23: 'ν23',
  G23: 'G23',
  alpha1: 'α1',
  alpha2: 'α2',
};

const kinds: Readonly<Record<PropertyComparison['unit'], KindName>> = {
  Pa: 'modulus',
  '': 'number',
  '1/K': 'expansion',
};

/** Rows between the one that is used and the bounds, with what they are called. */
const ruleNames: Readonly<Record<ComparedRule, string>> = {
  'rule-of-mixtures': 'Rule of mixtures',
  'halpin-tsai': 'Halpin-Tsai',
  inverse: 'Inverse rule',
  chamis: 'Square-root form',
  'transverse-isotropy': 'Transverse isotropy',
  schapery: 'Schapery',
};

const xiOf = (properties: readonly PropertyComparison[], wanted: ComparedProperty): string => {
  const xi = properties
    .find(({ property }) => property === wanted)
    ?.values.find(({ rule }) => rule === 'halpin-tsai')?.xi;
  return xi === undefined ? '–' : String(Number(xi.toPrecision(4)));
};

/** The value of one model, or the word `used` where it is the one in the ply. */
const by =
  (rule: ComparedRule) =>
  ({ values, unit }: PropertyComparison): Cell => {
    const found = values.find((one) => one.rule === rule);
    if (found === undefined) return '–';
    return found.role === 'used' ? 'used' : amount(found.value, kinds[unit], 3);
  };

/** One bound of the moduli; the model that is the bound and is used as well says so. */
const bound =
  (side: 'reuss' | 'voigt', rule: ComparedRule) =>
  ({ bounds, values, unit }: PropertyComparison): Cell => {
    if (values.some((one) => one.rule === rule && one.role === 'used')) return 'used';
    return bounds === undefined ? '–' : amount(bounds[side], kinds[unit], 3);
  };

const inPly = ({ values, unit }: PropertyComparison): Cell => {
  const used = values.find(({ role }) => role === 'used');
  return used === undefined ? '–' : amount(used.value, kinds[unit], 3);
};

/** What the constants are of; `of` names the fibre when there are several. */
const subjects: Readonly<Record<CuredFabric['fabric']['architecture'], (of: string) => string>> = {
  ud: () => 'The ply',
  woven: (of) => `The yarns${of} as if straight, before crimp,`,
  multiaxial: (of) => `The layers${of}`,
  mat: () => 'The unidirectional layer whose average over all angles is the mat,',
};

/** The constants of the unidirectional layers of one fibre by every model; `fraction` in words. */
function fibreTable({ fabric, models }: CuredFabric, one: FibreModels, id: string, fraction: string): Block {
  const { properties } = one.comparison;
  const of = models.length === 1 ? '' : ` of ${one.fibre}`;
  const rows: Cell[][] = [
    ['Used in the ply', ...properties.map(inPly)],
    [
      `${ruleNames['halpin-tsai']}, ξ = ${xiOf(properties, 'E2')} and ${xiOf(properties, 'G12')}`,
      ...properties.map(by('halpin-tsai')),
    ],
    ...(['chamis', 'transverse-isotropy', 'schapery'] as const).map((rule): Cell[] => [
      ruleNames[rule],
      ...properties.map(by(rule)),
    ]),
    ['Rule of mixtures (in parallel, upper bound)', ...properties.map(bound('voigt', 'rule-of-mixtures'))],
    ['Inverse rule (in series, lower bound)', ...properties.map(bound('reuss', 'inverse'))],
  ];
  return table(
    models.length === 1 ? `${id}-models` : `${id}-models-${slug(one.fibre)}`,
    `${subjects[fabric.architecture](of)} by every model at fibre fraction ${fraction}; “used” marks the model of each constant`,
    [{ label: 'Model' }, ...properties.map(({ property, unit }) => ({ label: symbols[property], kind: kinds[unit] }))],
    rows.filter(([, ...cells]) => cells.some((cell) => cell !== '–')),
  );
}

/** Which fabric has shown the table of these numbers already. */
export type ShownTables = Map<string, string>;

/** The models side by side, a table for each fibre of the fabric; one that stands with another fabric already is named. */
export function modelsTables(state: CuredFabric, id: string, fraction: string, shown: ShownTables): Block[] {
  return state.models.map((one): Block => {
    const key = JSON.stringify([one.fibre, one.comparison.properties]);
    const before = shown.get(key);
    if (before === undefined) {
      shown.set(key, state.fabric.name);
      return fibreTable(state, one, id, fraction);
    }
    return { kind: 'list', items: [`constants of ${one.fibre} by every model: as in the table of fabric ${before}`] };
  });
}
