import stitched from '@selvage/reference-data/stitched-laminates.json' with { type: 'json' };
import { describe, expect, it } from 'vitest';
import { parseUnit } from '../../packages/core/src/quantity/index.js';
import { sources, tables } from './tables.js';

interface Row {
  readonly source?: string;
  readonly quantity?: string;
  readonly observation?: string;
  readonly pattern?: string;
  readonly value?: number;
  readonly low?: number;
  readonly high?: number;
  readonly unit?: string;
  readonly access: string;
  readonly confidence?: string;
}

interface DataSet {
  readonly label: string;
  readonly source: string;
  readonly use: string;
  readonly useNote: string;
  readonly access: string;
  readonly confidence: string;
  readonly inputs?: readonly (Row & { readonly name: string })[];
  readonly rows: readonly Row[];
}

const dataSets = Object.entries(stitched.dataSets) as unknown as readonly (readonly [string, DataSet])[];

describe('the published data of stitched laminates', () => {
  it('name a source that is in the bibliography', () => {
    const named = dataSets.flatMap(([, set]) => [set.source, ...set.rows.flatMap((row) => row.source ?? [])]);
    expect(named.filter((key) => sources[key] === undefined)).toEqual([]);
  });

  it('say how far each may be used and how every number was obtained', () => {
    expect(dataSets).toHaveLength(23);
    for (const [id, set] of dataSets) {
      expect(['validate', 'context', 'doNotGate'], id).toContain(set.use);
      for (const text of [set.label, set.useNote, set.confidence]) expect(text.trim(), id).not.toBe('');
      for (const row of [...(set.inputs ?? []), ...set.rows]) {
        expect(['read', 'recalled'], id).toContain(row.access);
        expect([undefined, 'high', 'medium', 'low'], id).toContain(row.confidence);
      }
    }
  });

  it('let only data that were read gate a test', () => {
    for (const [id, set] of dataSets) if (set.use === 'validate') expect(set.access, id).toBe('read');
  });

  it('hold finite numbers in known units, ranges that rise, and rows that say something', () => {
    for (const [id, set] of dataSets) {
      for (const row of [...(set.inputs ?? []), ...set.rows]) {
        const numbers = [row.low, row.value, row.high].filter((value) => value !== undefined);
        expect(numbers.every(Number.isFinite), id).toBe(true);
        expect(
          [...numbers].sort((a, b) => a - b),
          id,
        ).toEqual(numbers);
        if (numbers.length > 0) expect(parseUnit(row.unit ?? 'none'), `${id}: ${row.unit}`).toBeDefined();
        const said = [row.quantity, row.observation, row.pattern, 'name' in row ? 'input' : undefined];
        expect(
          said.some((text) => text !== undefined),
          id,
        ).toBe(true);
      }
    }
  });

  it('name threads of the library for the computed single stitches', () => {
    expect(stitched.singleStitches.rows).toHaveLength(24);
    expect(sources[stitched.singleStitches.source]?.access).toBe('computed');
    for (const row of stitched.singleStitches.rows) expect(tables.threads[row.thread], row.thread).toBeDefined();
  });
});
