import * as z from 'zod/mini';
import { couponEntry } from './coupons.js';
import { choice, listOf, named, section, text } from './fields.js';
import { laminateEntry } from './laminates.js';
import { loadEntry, targetEntry } from './loads.js';
import { material, threadEntry } from './materials.js';
import { searchEntry } from './search.js';
import { stitchingEntry } from './stitching.js';
import { toleranceEntry } from './tolerances.js';

/** The design file, version 1: the one source of its types, of the JSON Schema and of the reference page. */
export const designSchema = section('a design', {
  format: z
    .literal(1, { error: () => '1, the only format there is' })
    .check(z.describe('version of the file format: 1')),
  title: text('title of the design'),
  units: z.optional(choice('units of the report', ['metric', 'us'])),
  notes: z.optional(
    z
      .union([z.string(), z.array(z.string())], { error: () => 'text or a list of texts' })
      .check(z.describe('remarks, printed in the report')),
  ),
  materials: z.optional(named('materials by name', material)),
  threads: z.optional(named('threads by name', threadEntry)),
  laminates: named('laminates by name', laminateEntry),
  stitching: z.optional(named('stitch plans by name', stitchingEntry)),
  loads: z.optional(named('load cases by name', loadEntry)),
  coupons: z.optional(named('coupons by name', couponEntry)),
  targets: z.optional(listOf('a list of targets', targetEntry, 500)),
  tolerances: z.optional(listOf('how well inputs are known, for the study of uncertainty', toleranceEntry, 200)),
  search: z.optional(searchEntry),
});

export type DesignFile = z.output<typeof designSchema>;
export type MaterialEntry = NonNullable<DesignFile['materials']>[string];
export type FabricEntry = Extract<MaterialEntry, { kind: 'fabric' }>;
export type PlyEntry = Extract<MaterialEntry, { kind: 'ply' }>;
export type FibreEntry = Extract<MaterialEntry, { kind: 'fibre' }>;
export type ResinEntry = Extract<MaterialEntry, { kind: 'resin' }>;
export type CoreEntry = Extract<MaterialEntry, { kind: 'core' }>;
export type ThreadEntry = NonNullable<DesignFile['threads']>[string];
export type LaminateEntry = DesignFile['laminates'][string];
export type FreeEdgeEntry = NonNullable<LaminateEntry['freeEdge']>;
export type PanelEntry = NonNullable<LaminateEntry['panel']>;
export type BlisterEntry = NonNullable<LaminateEntry['blister']>;
export type StitchingEntry = NonNullable<DesignFile['stitching']>[string];
export type BridgingEntry = NonNullable<StitchingEntry['bridging']>;
export type CouponEntry = NonNullable<DesignFile['coupons']>[string];
export type LoadEntry = NonNullable<DesignFile['loads']>[string];
export type ToleranceEntry = NonNullable<DesignFile['tolerances']>[number];
export type SearchEntry = NonNullable<DesignFile['search']>;
export type TargetEntry = NonNullable<DesignFile['targets']>[number];

/** JSON Schema (draft-07) of the design file, for editors. */
export function designJsonSchema(): Record<string, unknown> {
  const schema = z.toJSONSchema(designSchema, {
    target: 'draft-07',
    io: 'input',
    override: ({ jsonSchema }) => {
      const own = jsonSchema as { choices?: string[]; enum?: unknown[]; anyOf?: unknown };
      if (own.choices === undefined) return;
      own.enum = [...own.choices, ...own.choices.filter((one) => /^\d+$/.test(one)).map(Number)];
      delete own.choices;
      delete own.anyOf;
    },
  });
  return { title: 'Selvage design file', ...schema };
}
