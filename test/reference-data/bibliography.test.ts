import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { allEntries, allValues, sources } from './tables.js';

const sourceFolder = new URL('../../packages/core/src/', import.meta.url);

/** Keys quoted in the code that have the form author-year or standard-number. */
function keysInCode(): Map<string, string> {
  const found = new Map<string, string>();
  for (const file of readdirSync(sourceFolder, { recursive: true, encoding: 'utf8' })) {
    if (!file.endsWith('.ts')) continue;
    const text = readFileSync(new URL(file, sourceFolder), 'utf8');
    for (const [, key = ''] of text.matchAll(/'([a-z]+(?:-[a-z]+)*-(?:1[89]|20)\d\d[a-z]?)'/g)) found.set(key, file);
    for (const [, key = ''] of text.matchAll(/'((?:iso|astm|din|en)-[a-z]?\d+(?:-\d+)*)'/g)) found.set(key, file);
  }
  return found;
}

const dataFolder = new URL('../../reference-data/', import.meta.url);

/** Sources named by the files of worked examples, of stitched laminates and of uncertain parameters. */
function keysInRecords(): string[] {
  const examples = readdirSync(new URL('examples/', dataFolder), { recursive: true, encoding: 'utf8' });
  const files = examples.filter((file) => file.endsWith('.json')).map((file) => `examples/${file}`);
  return ['stitched-laminates.json', 'stitch-priors.json', ...files]
    .flatMap((file) => [...readFileSync(new URL(file, dataFolder), 'utf8').matchAll(/"source": *"([^"]+)"/g)])
    .map(([, key = '']) => key);
}

/** Keys that the data name: sources of values, further sources of entries, sources of examples. */
const keysInData = new Set<string>([
  ...allValues.map(([, value]) => value.source),
  ...allEntries.flatMap(([, entry]) => entry.sources ?? []),
  ...keysInRecords(),
]);

describe('the bibliography', () => {
  it('holds every source that the data name', () => {
    expect([...keysInData].filter((key) => sources[key] === undefined)).toEqual([]);
  });

  it('holds every source that the code names', () => {
    const missing = [...keysInCode()].filter(([key]) => sources[key] === undefined);
    expect(missing).toEqual([]);
  });

  it('holds no source that nothing uses', () => {
    const inCode = keysInCode();
    const unused = Object.entries(sources).filter(
      ([key, source]) => !keysInData.has(key) && !inCode.has(key) && source.model !== true,
    );
    expect(unused.map(([key]) => key)).toEqual([]);
  });

  it('gives each source a lower-case key, a citation and how it was reached, and no address', () => {
    for (const [key, source] of Object.entries(sources)) {
      expect(key).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
      expect(source.citation.trim(), key).not.toBe('');
      expect(['read', 'quoted', 'recalled', 'computed', 'invented'], key).toContain(source.access);
      expect(`${source.citation} ${source.note ?? ''}`, key).not.toMatch(/https?:|www\.|doi/i);
    }
  });

  it('calls no value read whose source was only recalled', () => {
    for (const [place, value] of allValues) {
      if (value.access === 'read') expect(sources[value.source]?.access, place).toBe('read');
    }
  });
});
