import type { BlisterResult, LaminateResult } from '../../design/index.js';
import { formatNumber, formatQuantity, type UnitSystem } from '../../quantity/index.js';
import type { Block, Cell } from '../blocks.js';
import { amount, heading, listOf, table } from './build.js';
import { furtherNotes } from './further-notes.js';

/** Strains as given, at buckling and at growth; one axis for a strip, three for an ellipse. */
interface States {
  readonly axes: readonly string[];
  readonly given?: readonly number[];
  readonly buckling: readonly number[];
  readonly force: readonly number[];
  readonly growth?: readonly number[];
  /** What the given strain is multiplied by; absent when nothing is given, or when it pulls. */
  readonly multiplier?: number;
  readonly growthMultiplier?: number;
  /** G in the given state by direction of growth. */
  readonly release: readonly { readonly label: string; readonly G: number }[];
}

export function blisterStates(result: BlisterResult): States {
  if (result.shape === 'strip') {
    const { strain, found } = result;
    const factor = (value: number | undefined) =>
      strain !== undefined && strain < 0 && value !== undefined ? value / strain : undefined;
    const [multiplier, growthMultiplier] = [factor(found.criticalStrain), factor(found.growthStrain)];
    return {
      axes: ['x'],
      buckling: [found.criticalStrain],
      force: [found.criticalN],
      ...(strain === undefined ? {} : { given: [strain] }),
      ...(found.growthStrain === undefined ? {} : { growth: [found.growthStrain] }),
      ...(multiplier === undefined ? {} : { multiplier }),
      ...(growthMultiplier === undefined ? {} : { growthMultiplier }),
      release: strain === undefined ? [] : [{ label: 'G at each of its two fronts', G: found.G }],
    };
  }
  const { strain, found } = result;
  const { growthMultiplier } = found;
  const [x, y] = found.G;
  return {
    axes: ['x', 'y', 'xy'],
    given: strain,
    buckling: found.strain,
    force: found.N,
    multiplier: found.multiplier,
    ...(growthMultiplier === undefined
      ? {}
      : { growthMultiplier, growth: strain.map((value) => value * growthMultiplier) }),
    release: [
      { label: 'G, growing along x', G: x },
      { label: 'G, growing along y', G: y },
    ],
  };
}

/** Strain that no laminate of glass or carbon bears (common practice, no source). */
const beyondFibres = 0.03;

function statesTable({ axes, given, buckling, force, growth }: States, id: string): Block {
  const strain = (values: readonly number[] | undefined, i: number): Cell[] =>
    values === undefined ? [] : [amount((values[i] ?? 0) + 0, 'strain')];
  const column = (label: string, values: readonly number[] | undefined) =>
    values === undefined ? [] : [{ label, kind: 'strain' as const }];
  const rows = axes.map((axis, i): Cell[] => [
    axis,
    ...strain(given, i),
    ...strain(buckling, i),
    amount((force[i] ?? 0) + 0, 'forcePerLength'),
    ...(growth?.some((value) => Math.abs(value) > beyondFibres) === true
      ? ['not before the fibres break']
      : strain(growth, i)),
  ]);
  return table(
    `${id}-strains`,
    `Strain of the laminate, tension positive: ${given === undefined ? '' : 'as given, '}when the blister buckles${growth === undefined ? '' : ' and when it grows'}`,
    [
      { label: '' },
      ...column('Given', given),
      ...column('Buckles at', buckling),
      { label: 'Force in it there', kind: 'forcePerLength' },
      ...column('Grows at', growth),
    ],
    rows,
  );
}

function statements({ entry }: BlisterResult, states: States, units: UnitSystem): string[] {
  const { given, multiplier, growth, growthMultiplier, release } = states;
  const { toughness } = entry;
  const show = (value: number): string => formatQuantity(value, 'toughness', { units });
  const times = (value: number): string => formatNumber(value, 3);
  const most = Math.max(0, ...release.map(({ G }) => G));
  if (given === undefined) return ['no `strain` is given: G is not computed'];
  if (multiplier === undefined) return ['the given strain does not compress it: it does not buckle'];
  if (multiplier >= 1) {
    return [
      `it stays flat: the given strain would have to be ${times(multiplier)} times as large to buckle it`,
      ...(growthMultiplier === undefined ? [] : [`and ${times(growthMultiplier)} times as large to make it grow`]),
    ];
  }
  if (toughness === undefined) {
    return [
      `it is buckled, from ${times(multiplier)} of the given strain on`,
      'whether it grows is not judged: `toughness` is not given',
    ];
  }
  const grows = most >= toughness;
  return [
    `it is buckled, from ${times(multiplier)} of the given strain on`,
    grows
      ? `IT GROWS UNDER THE GIVEN STRAIN: G is ${show(most)}, the toughness ${show(toughness)}${growthMultiplier === undefined ? '' : `; growth begins at ${times(growthMultiplier)} of the strain`}`
      : `it does not grow: G is ${show(most)} of a toughness of ${show(toughness)}${growthMultiplier === undefined ? '' : `; growth would begin at ${times(growthMultiplier)} times the strain`}`,
    ...(growth === undefined && !grows ? ['no growth was found up to 20 times the buckling strain'] : []),
  ];
}

const round = (shape: BlisterResult['entry']['shape']): string =>
  shape === 'strip' ? 'as a strip across x' : shape === 'circle' ? 'round' : 'elliptic';

/** A delamination inside a laminate; absent when the design does not ask for it. */
export function laminateBlister(result: LaminateResult, id: string, units: UnitSystem): Block[] {
  const { blister } = result;
  if (blister === undefined) return [];
  const { entry, film } = blister;
  const blisterId = `${id}--blister`;
  const states = blisterStates(blister);
  const [first, last] = film.layers;
  return [
    heading(3, 'Blister', blisterId),
    ...listOf(statements(blister, states, units)),
    {
      kind: 'facts',
      items: [
        {
          label: 'Delamination',
          value: `between layers ${entry.interface} and ${entry.interface + 1}`,
          remark: round(entry.shape),
        },
        { label: entry.shape === 'circle' ? 'Diameter' : 'Length along x', value: amount(entry.length, 'length') },
        ...(entry.shape === 'ellipse' && blister.shape === 'ellipse'
          ? [{ label: 'Width along y', value: amount(blister.width, 'length') }]
          : []),
        {
          label: 'May buckle',
          value: first === last ? `layer ${first}` : `layers ${first} to ${last}`,
          remark: `the thinner side, toward the ${film.side}`,
        },
        { label: 'Thickness of these', value: amount(film.laminate.thickness, 'length') },
        ...states.release.map(({ label, G }) => ({
          label,
          value: amount(G, 'toughness') as Cell,
          remark: 'under the given strain',
        })),
      ],
    },
    statesTable(states, blisterId),
    furtherNotes(blister.notes, result.notes),
  ];
}
