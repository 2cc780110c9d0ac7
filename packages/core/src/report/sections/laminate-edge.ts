import type { FirstOpening, FreeEdgeResult, LaminateResult } from '../../design/index.js';
import type { EdgeInterface, EdgeOpening, EdgePeel, Laminate } from '../../laminate/index.js';
import { formatQuantity, type UnitSystem } from '../../quantity/index.js';
import type { Block, Cell } from '../blocks.js';
import { chartFigure } from '../figures/index.js';
import { amount, heading, listOf, table, withoutNoise } from './build.js';
import { furtherNotes } from './further-notes.js';

/** Strain at which G is shown when the design gives no state, and in words. */
const shownStrain = 1e-3;
const shownStrainWords = '0.1 % strain';

/** Strain in tension that no laminate of glass or carbon bears (common practice, no source). */
const beyondFibres = 0.03;
const unreached = 'not before the fibres break';

const peelWords: Readonly<Record<EdgePeel['sense'], string>> = { opening: 'opens', closing: 'closes', undecided: '–' };

const isLoaded = ({ entry: { strain = 0, temperatureChange = 0 } }: FreeEdgeResult): boolean =>
  strain !== 0 || temperatureChange !== 0;

/** G of an opening in the state of the design, or at the strain shown instead. */
const releaseOf = (edge: FreeEdgeResult, opening: EdgeOpening): number =>
  isLoaded(edge) ? opening.G : opening.perSquare * shownStrain ** 2;

/** Strain at which an interface parts when pulled, whichever way is the earlier. */
const onsetOf = ({ single, pair }: EdgeInterface): number | undefined => {
  const onsets = [single, pair].flatMap((one) => (one?.onset === undefined ? [] : [one.onset.tension]));
  return onsets.length === 0 ? undefined : Math.min(...onsets);
};

function edgeTable(edge: FreeEdgeResult, thickness: number, id: string): Block {
  const { interfaces } = edge.found;
  const paired = interfaces.some(({ pair }) => pair !== undefined);
  const tough = edge.entry.toughness !== undefined;
  const size = Math.max(
    ...interfaces.flatMap(({ single, pair }) =>
      [single, pair].map((one) => (one === undefined ? 0 : releaseOf(edge, one))),
    ),
  );
  const release = (one: EdgeOpening | undefined): Cell =>
    one === undefined ? '–' : amount(withoutNoise(releaseOf(edge, one), size), 'toughness');
  const rows = interfaces.map((one): Cell[] => {
    const onset = onsetOf(one);
    return [
      `${one.below} | ${one.below + 1}`,
      amount(withoutNoise(one.z, thickness), 'length'),
      one.alike ? 'alike' : one.angles.map((angle) => formatQuantity(angle, 'angle')).join(' | '),
      release(one.single),
      ...(paired ? [release(one.pair)] : []),
      ...(tough ? [onset === undefined ? '–' : onset > beyondFibres ? unreached : amount(onset, 'strain')] : []),
      peelWords[one.peel.sense],
    ];
  });
  const at = isLoaded(edge) ? '' : ` at ${shownStrainWords}`;
  return table(
    `${id}-interfaces`,
    `Interfaces from the tool side: energy release rate per front${at}${tough ? ', and the strain in tension at which a crack grows' : ''}`,
    [
      { label: 'Layers' },
      { label: 'z', kind: 'length' },
      { label: 'Angles' },
      { label: 'G alone', kind: 'toughness' },
      ...(paired ? [{ label: 'G with mirror image', kind: 'toughness' as const }] : []),
      ...(tough ? [{ label: 'Grows at', kind: 'strain' as const }] : []),
      { label: 'Peel' },
    ],
    rows,
  );
}

/** "between layers 3 and 4 (0° | 90°), together with its mirror image". */
function place(edge: FreeEdgeResult, { below, opening }: Omit<FirstOpening, 'strain'>): string {
  const { interfaces } = edge.found;
  const angles = interfaces[below - 1]?.angles.map((angle) => formatQuantity(angle, 'angle')).join(' | ') ?? '';
  const mirror = interfaces.length + 1 - below;
  const pair = opening === 'pair' ? ` together with its mirror image between layers ${mirror} and ${mirror + 1}` : '';
  return `between layers ${below} and ${below + 1} (${angles})${pair}`;
}

const breakWords = (units: UnitSystem): string =>
  `no laminate of glass or carbon bears ${formatQuantity(beyondFibres, 'strain', { units })}: common practice, no source`;

function onsetWords(edge: FreeEdgeResult, units: UnitSystem): string[] {
  const { first, entry } = edge;
  if (first === undefined) return [];
  const { tension, compression } = first;
  if (tension.strain === 0) {
    return [`THE CHANGE OF TEMPERATURE ALONE PARTS THE EDGE ${place(edge, tension)}, without any load`];
  }
  const show = (value: number): string => formatQuantity(value, 'strain', { units });
  const alike = Math.abs(tension.strain + compression.strain) <= 1e-9 * tension.strain;
  const toughness = formatQuantity(entry.toughness ?? 0, 'toughness', { units });
  const beyond = (strain: number): boolean => Math.abs(strain) > beyondFibres;
  if (beyond(tension.strain) && beyond(compression.strain)) {
    return [`pulled or compressed, no crack at the edge grows before the fibres break (${breakWords(units)})`];
  }
  return alike
    ? [
        `the edge opens first ${place(edge, tension)}: a crack there grows at a strain of ±${show(tension.strain)}, where G is ${toughness}`,
      ]
    : [
        beyond(tension.strain)
          ? `pulled, no crack at the edge grows before the fibres break (${breakWords(units)})`
          : `pulled, the edge opens first ${place(edge, tension)}: a crack there grows at a strain of ${show(tension.strain)}, where G is ${toughness}`,
        beyond(compression.strain)
          ? `compressed, no crack at the edge grows before the fibres break (${breakWords(units)})`
          : `compressed, ${beyond(tension.strain) ? 'the edge' : 'it'} opens first ${place(edge, compression)}, at ${show(compression.strain)}, where G is ${toughness}`,
      ];
}

function stateWords(edge: FreeEdgeResult, units: UnitSystem): string[] {
  const { critical } = edge.found;
  const { strain, temperatureChange, toughness } = edge.entry;
  if (critical === undefined) return [];
  const show = (value: number): string => formatQuantity(value, 'toughness', { units });
  const asking = toughness === undefined ? ['no strain of onset: `toughness` is not given'] : [];
  if (!isLoaded(edge)) {
    return [
      `most energy is released ${place(edge, critical)}: ${show(releaseOf(edge, critical))} at ${shownStrainWords}`,
      ...asking,
    ];
  }
  const state = [
    ...(strain === undefined ? [] : [`strain ${formatQuantity(strain, 'strain', { units })}`]),
    ...(temperatureChange === undefined
      ? []
      : [`temperature change ${formatQuantity(temperatureChange, 'temperatureChange', { units })}`]),
  ].join(', ');
  const share = toughness === undefined ? undefined : critical.G / toughness;
  const verdict =
    share === undefined
      ? ''
      : share >= 1
        ? `: AT LEAST THE TOUGHNESS OF ${show(toughness ?? 0)}, THE CRACK GROWS`
        : `, ${formatQuantity(share, 'fraction', { units, digits: 3 })} of the toughness`;
  return [
    `in the given state (${state}) most energy is released ${place(edge, critical)}: ${show(critical.G)}${verdict}`,
    ...asking,
  ];
}

/** Where the faces of a crack touch, each interface of a mirrored pair named by itself. */
function contactWords({ found }: FreeEdgeResult): string[] {
  const touching = found.interfaces.filter(({ single, pair }) => single?.touches === true || pair?.touches === true);
  if (touching.length === 0) return [];
  const where = touching.map(({ below, single, pair }) => {
    const how =
      pair === undefined || single?.touches === pair.touches
        ? ''
        : single?.touches === true
          ? ' (alone)'
          : ' (with mirror image)';
    return `${below} | ${below + 1}${how}`;
  });
  return [`the faces of a crack would touch at the edge, which lowers its G, between the layers ${where.join(', ')}`];
}

function peelStatement(edge: FreeEdgeResult): string[] {
  const { sense } = edge.found.midPlanePeel;
  if (sense === 'undecided') return [];
  const state = isLoaded(edge) ? 'in the given state' : 'in tension';
  return [
    `${state} the stress at the edge ${sense === 'opening' ? 'pulls the mid-plane open' : 'presses the mid-plane together'} (a sign only, by the moment rule)`,
  ];
}

/** G at the interfaces, with the layers as bands; none for a single interface, which a table shows as well. */
function edgeFigure(edge: FreeEdgeResult, laminate: Laminate, id: string, units: UnitSystem): Block[] {
  const { interfaces } = edge.found;
  const half = laminate.thickness / 2;
  const pointsOf = (key: 'single' | 'pair') =>
    interfaces.flatMap((one) => {
      const opening = one[key];
      return opening === undefined ? [] : [{ x: releaseOf(edge, opening), y: one.z }];
    });
  const [single, pair] = [pointsOf('single'), pointsOf('pair')];
  if (single.length < 2) return [];
  const series = [
    { label: 'alone', points: single, apart: 'stems' as const },
    ...(pair.length === 0 ? [] : [{ label: 'with its mirror image', points: pair, apart: 'signs' as const }]),
  ];
  const most = Math.max(...series.flatMap(({ points }) => points.map(({ x }) => x)));
  const { toughness } = edge.entry;
  const limit = { label: 'toughness', points: [-half, half].map((y) => ({ x: toughness ?? 0, y })) };
  let below = -half;
  const bands = laminate.plies.map(({ angle, thickness }, k) => {
    const from = below;
    below += thickness;
    return { label: `${k + 1}: ${formatQuantity(angle, 'angle')}`, from, to: below };
  });
  return [
    chartFigure({
      id: `${id}-release`,
      title: `Energy release rate at the free edge${isLoaded(edge) ? '' : ` at ${shownStrainWords}`}`,
      x: { label: 'G per front', kind: 'toughness' },
      y: { label: 'z', kind: 'length' },
      series: toughness !== undefined && toughness <= 3 * most ? [...series, limit] : series,
      bands,
      units,
    }),
  ];
}

/** The free edge of a laminate; absent when the design does not ask for it. */
export function laminateEdge(result: LaminateResult, id: string, units: UnitSystem): Block[] {
  const { freeEdge, model } = result;
  if (freeEdge === undefined) return [];
  const edgeId = `${id}--free-edge`;
  const head = heading(3, 'Free edge along x', edgeId);
  if (freeEdge.found.critical === undefined) {
    return [
      head,
      ...listOf(['the layers are alike in laminate axes: there is no interface at which an edge would part']),
    ];
  }
  return [
    head,
    ...listOf([
      ...onsetWords(freeEdge, units),
      ...stateWords(freeEdge, units),
      ...contactWords(freeEdge),
      ...peelStatement(freeEdge),
    ]),
    edgeTable(freeEdge, model.laminate.thickness, edgeId),
    ...edgeFigure(freeEdge, model.laminate, edgeId, units),
    furtherNotes(freeEdge.notes, result.notes),
  ];
}
