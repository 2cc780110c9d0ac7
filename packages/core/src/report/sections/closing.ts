import type { Provenance, Results } from '../../design/index.js';
import { uniqueNotes } from '../../provenance/index.js';
import type { Block, Cell } from '../blocks.js';
import { heading, table } from './build.js';

function origin(one: Provenance): string {
  const parts = [
    one.source,
    one.library === undefined
      ? undefined
      : `library entry ${one.library}${one.sources.length === 0 ? '' : ` (${one.sources.join(', ')})`}`,
    one.overridden.length === 0 ? undefined : `own values of the design file: ${one.overridden.join(', ')}`,
    one.note,
  ].filter((part) => part !== undefined);
  return parts.length === 0 ? 'not stated in the design file' : parts.join('; ');
}

function basisOf({ library, overridden }: Provenance): string {
  if (library === undefined) return 'not stated';
  return overridden.length === 0 ? 'library' : 'library and own values';
}

/** Every material and thread used, with where its numbers come from. */
export function materialsSection({ model }: Results): Block[] {
  const rows = model.provenance.map((one): Cell[] => [
    one.name,
    one.kind,
    one.label ?? '–',
    one.basis ?? basisOf(one),
    origin(one),
  ]);
  if (rows.length === 0) return [];
  return [
    heading(2, 'Where the numbers come from', 'materials'),
    table(
      'materials',
      'Materials and threads of this design',
      [{ label: 'Name' }, { label: 'Kind' }, { label: 'Description' }, { label: 'Basis' }, { label: 'Source' }],
      rows,
    ),
    { kind: 'notes', notes: uniqueNotes(model.provenance.flatMap((one) => one.notes)) },
  ];
}

/** Cautions that belong to every report; further ones where the design calls for them. */
export function cautionSection({ model }: Results): Block {
  const carbon = model.provenance.some(
    (one) => one.kind === 'fibre' && /carbon/i.test(`${one.name} ${one.label ?? ''}`),
  );
  return {
    kind: 'caution',
    title: 'Before you build on these numbers',
    items: [
      'These are estimates from the values given in the design file and the library. Verify them by tests on your own parts. They are not a certification.',
      'Where failure can hurt somebody (rudders, craft that carry others, rescue, rigging) the local rules, the applicable standard and a licensed engineer decide.',
      ...(model.stitching.length === 0
        ? []
        : [
            'Sewing: switch the machine off to thread it, guard eyes against broken needles, and count the pieces of a broken needle: one left in the stack is a defect and an injury.',
          ]),
      ...(model.coupons.length === 0
        ? []
        : [
            'What is foretold of coupons ranks patterns; it does not replace tests, nor the standard and the local code that govern them and the part.',
            'Testing coupons: test pieces are sharp where they split, splinters and thread ends fly when arms break or a crack jumps, and a wedge can slip. Eye protection, gloves, a shield, hands away from a loaded piece.',
          ]),
      'Dust of cut and ground fibre: extraction at the tool, wet work where possible, a fitted particle mask, no compressed air.',
      'Resins and hardeners can sensitise for life: gloves, sleeves, ventilation, small batches against exotherm; follow the safety data sheet.',
      ...(carbon
        ? [
            'Carbon dust conducts: keep it from motors and electronics. Carbon on bare metal corrodes the metal in salt water: isolate it.',
          ]
        : []),
    ],
  };
}
