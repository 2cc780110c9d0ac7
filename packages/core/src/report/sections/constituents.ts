import type { CuredFabric, FabricResult, ListedPlyResult, Results } from '../../design/index.js';
import { uniqueNotes } from '../../provenance/index.js';
import { formatQuantity, type UnitSystem } from '../../quantity/index.js';
import type { Block, Cell } from '../blocks.js';
import { amount, heading, slug, table } from './build.js';
import { constituentFacts } from './constituents-facts.js';
import { modelsTables, type ShownTables } from './constituents-models.js';

/** A fabric at one fibre fraction; the models side by side stand with the first. */
function curedBlocks(
  result: FabricResult,
  state: CuredFabric,
  { label, tables, units }: { label: string | undefined; tables: ShownTables; units: UnitSystem },
): Block[] {
  const { name, cured } = result;
  const first = state === cured[0];
  const id = `constituents-${slug(name)}`;
  const fraction = formatQuantity(state.fabric.fibreVolumeFraction, 'fraction', { units });
  const called = label === undefined ? `Fabric ${name}` : `Fabric ${name}: ${label}`;
  const title = cured.length > 1 ? `${called}, at fibre fraction ${fraction}` : called;
  return [
    heading(3, title, first ? id : `${id}-state-${cured.indexOf(state) + 1}`),
    { kind: 'facts', items: constituentFacts(state) },
    ...(first ? modelsTables(state, id, fraction, tables) : []),
  ];
}

/** Plies given by their constants beside what their constituents give. */
function listedTable(plies: readonly ListedPlyResult[]): Block[] {
  if (plies.length === 0) return [];
  const rows = plies.map(({ name, model }): Cell[] => {
    const { fibre, resin, architecture, fibreVolumeFraction, namedBy, found } = model;
    return [
      name,
      `${fibre.name} in ${resin.name}${architecture === 'woven' ? ', woven' : ''}${namedBy === 'library' ? ', by the library' : ''}`,
      amount(fibreVolumeFraction, 'fraction'),
      amount(found.E1.given, 'modulus'),
      amount(found.E1.expected, 'modulus'),
      amount(found.E1.departure, 'fraction', 3),
      found.consistent ? 'agrees' : 'OFF by more than 8 %',
    ];
  });
  return [
    table(
      'constituents-listed',
      'Plies given by their constants against the constituents named for them; a cloth is compared before crimp. The values given are used as they stand',
      [
        { label: 'Ply' },
        { label: 'Named as' },
        { label: 'Fibre', kind: 'fraction' },
        { label: 'E1 as given', kind: 'modulus' },
        { label: 'E1 of the constituents', kind: 'modulus' },
        { label: 'Departure', kind: 'fraction' },
        { label: 'Verdict' },
      ],
      rows,
    ),
  ];
}

/** How the plies of the design follow from fibre and resin, with the models side by side; nothing when none does. */
export function constituentsSection({ model, materials, laminates }: Results, units: UnitSystem): Block[] {
  if (materials.length === 0) return [];
  const fabrics = materials.filter((one) => one.kind === 'fabric');
  const labelOf = (name: string): string | undefined =>
    model.provenance.find((one) => one.kind === 'fabric' && one.name === name)?.label;
  const tables: ShownTables = new Map();
  const shown = new Set(laminates.flatMap((one) => one.notes.map(({ text }) => text)));
  return [
    heading(2, 'From fibre and resin to the ply', 'constituents'),
    ...fabrics.flatMap((one) => {
      const label = labelOf(one.name);
      return one.cured.flatMap((state) => curedBlocks(one, state, { label, tables, units }));
    }),
    ...listedTable(materials.filter((one) => one.kind === 'ply')),
    // What stands with a laminate already is not said again.
    { kind: 'notes', notes: uniqueNotes(fabrics.flatMap((one) => one.notes)).filter(({ text }) => !shown.has(text)) },
  ];
}
