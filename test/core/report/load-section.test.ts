import { readFileSync } from 'node:fs';
import { assemble, type Block, compute, type Report, readDesign, render, report } from '@selvage/core';
import { describe, expect, it } from 'vitest';
import { head } from '../design/load-support.js';

const osier = readFileSync(new URL('../../../docs/examples/osier-500-strength.yaml', import.meta.url), 'utf8');
const ofText = (text: string): Report => report(compute(assemble(readDesign(text))));
const ofLoad = (load: string): Report => ofText(`${head}loads:\n  l: ${load}\n`);
const strength = ofText(osier);

/** The blocks from the heading of a load case to the next section. */
function section({ blocks }: Report, id: string): Block[] {
  const start = blocks.findIndex((block) => block.kind === 'heading' && block.id === id);
  const end = blocks.findIndex((block, i) => i > start && block.kind === 'heading' && block.level === 2);
  return blocks.slice(start, end);
}
const ids = (blocks: readonly Block[]): string[] => blocks.flatMap((block) => ('id' in block ? [block.id] : []));
const words = (blocks: readonly Block[]): string =>
  blocks.flatMap((block) => (block.kind === 'list' ? block.items : [])).join('\n');
const tableOf = (blocks: readonly Block[], id: string) => {
  const found = blocks.find((block) => block.kind === 'table' && block.id === id);
  if (found?.kind !== 'table') throw new Error(`no table ${id}`);
  return found;
};

describe('the section of a load case', () => {
  it('goes from stress to first failure, envelope, last failure and residual stress, with one block of notes at the end', () => {
    const blocks = section(strength, 'load-stroke');
    expect(ids(blocks)).toEqual([
      'load-stroke',
      'load-stroke-response',
      'load-stroke-profile',
      'load-stroke-stresses',
      'load-stroke-laminate-axes',
      'load-stroke-strength',
      'load-stroke-failure',
      'load-stroke-envelope',
      'load-stroke-progressive',
      'load-stroke-steps',
      'load-stroke-progress',
      'load-stroke-cured',
      'load-stroke-residual',
      'load-stroke-residual-profile',
    ]);
    expect(blocks.filter(({ kind }) => kind === 'notes')).toHaveLength(1);
    expect(blocks.at(-1)?.kind).toBe('notes');
    const notes = blocks.flatMap((block) => (block.kind === 'notes' ? block.notes : []));
    expect(new Set(notes.map(({ text }) => text)).size).toBe(notes.length);
  });

  it('repeats no id in the whole report and lists every source of its models', () => {
    for (const kind of ['heading', 'table', 'figure']) {
      const all = ids(strength.blocks.filter((block) => block.kind === kind));
      expect(new Set(all).size).toBe(all.length);
    }
    const listed = strength.blocks.flatMap((block) => (block.kind === 'sources' ? block.entries : []));
    const keys = listed.map(({ key }) => key);
    for (const key of ['hahn-tsai-1974', 'hashin-1980', 'puck-schuermann-1998', 'hyer-1981'])
      expect(keys).toContain(key);
  });

  it('says what holds, what breaks, and how much stronger the laminate is than its first layer', () => {
    expect(words(section(strength, 'load-stroke'))).toMatch(/no layer breaks: the load may grow to 2\.38 times/);
    expect(words(section(strength, 'load-stroke'))).toMatch(/first layer at .* last at .* takes .* times as much/);
    const broken = ofLoad('{ laminate: skin, N: [1500 kN/m, 0 N/m, 0 N/m] }');
    expect(words(section(broken, 'load-l'))).toMatch(/A LAYER BREAKS: first failure at [\d.]+ % of the load/);
    expect(words(section(broken, 'load-l'))).toMatch(/THE LOAD AS GIVEN IS NOT CARRIED/);
    const cracked = ofLoad('{ laminate: skin, N: [1 kN/m, 0 N/m, 0 N/m], temperatureChange: -400 K }');
    expect(words(section(cracked, 'load-l'))).toMatch(/stress from temperature and moisture alone breaks a layer/);
    expect(ids(section(cracked, 'load-l'))).toContain('load-l-residual-failure');
  });

  it('uses 1/R of a strength ratio R', () => {
    const { rows } = tableOf(section(strength, 'load-stroke'), 'load-stroke-failure');
    for (const row of rows) {
      const [ratio, used] = [row[1], row[3]];
      if (typeof ratio !== 'object' || typeof used !== 'object') throw new Error('no numbers');
      expect(ratio.value * used.value).toBeCloseTo(1, 12);
    }
  });

  it('by strain has its reactions, no failure layer by layer, and says so', () => {
    const blocks = section(strength, 'load-clamped');
    expect(tableOf(blocks, 'load-clamped-response').caption).toContain('reactions');
    expect(ids(blocks)).not.toContain('load-clamped-steps');
    expect(words(blocks)).toContain('a deformation is prescribed');
    expect(JSON.stringify(blocks.at(-1))).toContain('ply discount raises forces');
  });

  it('of heat alone has the cured shape in words and how far heat is from breaking a layer', () => {
    const blocks = section(strength, 'load-storage');
    expect(ids(blocks)).toEqual([
      'load-storage',
      'load-storage-response',
      'load-storage-profile',
      'load-storage-stresses',
      'load-storage-laminate-axes',
      'load-storage-cured',
      'load-storage-residual',
      'load-storage-residual-failure',
    ]);
    expect(words(blocks)).toMatch(/saddle, curved both ways/);
    expect(words(blocks)).toMatch(/ends lift toward the bag side, radius/);
    expect(words(blocks)).toContain('0.2 %, 0.2 %, 0.5 %, 0.5 %');
    const flat = ofLoad('{ laminate: thick, temperatureChange: -60 K, temperatureGradient: 2 K/mm }');
    expect(words(section(flat, 'load-l'))).toMatch(/dome/);
    expect(words(section(flat, 'load-l'))).toMatch(/rises toward the bag side by 2 K\/mm/);
  });

  it('lifts the ends of the cooled [0/90] toward the bag side along x, where the 90 shrinks across its fibres', () => {
    const text = words(section(ofLoad('{ laminate: bent, temperatureChange: -60 K }'), 'load-l'));
    expect(text).toMatch(/along 0° the ends lift toward the bag side/);
    expect(text).toMatch(/along (-90|90)° the ends lift toward the tool side/);
  });

  it('of a laminate without strengths names the materials that lack them', () => {
    const text = words(section(ofLoad('{ laminate: plain, N: [1 kN/m, 0 N/m, 0 N/m] }'), 'load-l'));
    expect(text).toContain('not given for bare: strengths Xt, Xc, Yt, Yc, S');
  });

  it('says what an envelope leaves out', () => {
    const both = ofLoad('{ laminate: skin, N: [50 kN/m, 10 kN/m, 5 kN/m], M: [4 N, 0 N, 0 N] }');
    expect(words(section(both, 'load-l'))).toContain('the load also has Nxy and Mx');
  });

  it('shows a layer once where nothing bends, both faces where something does, extremes when there are many', () => {
    const rows = (load: string) => tableOf(section(ofLoad(load), 'load-l'), 'load-l-stresses').rows.length;
    expect(rows('{ laminate: skin, N: [50 kN/m, 0 N/m, 0 N/m] }')).toBe(8);
    expect(rows('{ laminate: skin, M: [5 N, 0 N, 0 N] }')).toBe(16);
    expect(rows('{ laminate: thick, M: [5 N, 0 N, 0 N] }')).toBe(2);
  });

  it('gathers the steps of a laminate that cracks layer by layer', () => {
    const bent = head.replace('[0/90]51s', '[±45/0/90]15s');
    const blocks = section(
      ofText(`${bent}loads:\n  l: { laminate: thick, M: [400 N, 0 N, 0 N], temperatureChange: -60 K }\n`),
      'load-l',
    );
    const steps = tableOf(blocks, 'load-l-steps');
    expect(steps.caption).toMatch(/loads gathered/);
    expect(steps.rows.length).toBeLessThan(30);
    const shares = steps.rows.map((row) => row[5]).filter((cell) => typeof cell === 'object');
    const values = shares.map(({ value }) => value);
    expect(values).toEqual(values.toSorted((a, b) => b - a));
  });

  it('shows no rounding noise beside real numbers', () => {
    const { rows } = tableOf(section(strength, 'load-stroke'), 'load-stroke-response');
    for (const row of rows) expect(row[4]).toMatchObject({ value: 0 });
  });

  it.each(['text', 'markdown', 'html', 'csv', 'json'] as const)(
    'is written as %s in either system of units',
    (format) => {
      for (const units of ['metric', 'us'] as const) {
        const written = render(strength, format, { units });
        expect(written).not.toMatch(/\bNaN\b|Infinity|undefined|\[object/);
      }
    },
  );

  it('fits a terminal of 80 columns', () => {
    for (const line of render(strength, 'text', { width: 80 }).split('\n')) {
      expect([...line].length, line).toBeLessThanOrEqual(80);
    }
  });
});

describe('load cases at a glance', () => {
  it('name the least ratio of each, and the load of the last layer where it was followed', () => {
    const { rows } = tableOf(strength.blocks, 'loads');
    expect(rows.map((row) => row[0])).toEqual(['stroke', 'clamped', 'prying']);
    expect(rows[1]?.[5]).toBe('–');
  });

  it('are absent when no load case can be judged', () => {
    expect(ids(ofLoad('{ laminate: plain, N: [1 kN/m, 0 N/m, 0 N/m] }').blocks)).not.toContain('loads');
  });
});
