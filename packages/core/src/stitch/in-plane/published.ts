import table from '@selvage/reference-data/stitched-laminates.json' with { type: 'json' };
import type { Access, SourceKey } from '../../provenance/index.js';

/** Changes of an in-plane property in print, as factors on the property without stitches. */
export interface PublishedChange {
  readonly loading: string;
  readonly quantity: string;
  readonly low: number;
  readonly high: number;
  readonly source: SourceKey;
  readonly access: Access;
}

interface Row {
  readonly loading?: string;
  readonly quantity?: string;
  readonly value?: number;
  readonly low?: number;
  readonly high?: number;
  readonly unit?: string;
  readonly access: string;
}

const inPlane = [
  'tension',
  'flexure',
  'compression, undamaged',
  'tension, compression, flexure',
  'interlaminar shear strength',
  'in-plane modulus and tensile strength',
];

/** Every change in print of a property in the plane, in percent in reference-data/stitched-laminates.json. */
export const publishedChanges: readonly PublishedChange[] = Object.values(table.dataSets).flatMap(({ source, rows }) =>
  (rows as readonly Row[]).flatMap(({ loading = '', quantity = '', value, low = value, high = value, unit, access }) =>
    unit === '%' && inPlane.includes(loading) && low !== undefined && high !== undefined
      ? [{ loading, quantity, low: 1 + low / 100, high: 1 + high / 100, source, access: access as Access }]
      : [],
  ),
);
