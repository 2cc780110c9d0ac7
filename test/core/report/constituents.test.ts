import { readFileSync } from 'node:fs';
import { assemble, type Block, compute, readDesign, render, report } from '@selvage/core';
import { describe, expect, it } from 'vitest';

const example = (name: string): string =>
  readFileSync(new URL(`../../../docs/examples/${name}.yaml`, import.meta.url), 'utf8');
const of = (text: string) => report(compute(assemble(readDesign(text))));

/** The blocks of the section, from its heading to the next. */
function section(text: string): readonly Block[] {
  const { blocks } = of(text);
  const start = blocks.findIndex((block) => block.kind === 'heading' && block.id === 'constituents');
  if (start < 0) return [];
  const length = blocks.slice(start + 1).findIndex((block) => block.kind === 'heading' && block.level === 2);
  return blocks.slice(start, start + 1 + length);
}
type Of<K extends Block['kind']> = Extract<Block, { kind: K }>;
const all = <K extends Block['kind']>(blocks: readonly Block[], kind: K): Of<K>[] =>
  blocks.filter((block): block is Of<K> => block.kind === kind);
const numberOf = (cell: unknown): number | undefined =>
  typeof cell === 'object' && cell !== null ? (cell as { value: number }).value : undefined;

const willet = section(example('willet-oar-hybrid-cloth'));
const cloth =
  '{ kind: fabric, architecture: woven, weave: twill, fibre: e-glass, resin: epoxy-infusion, arealMass: 300 g/m^2, fibreVolumeFraction: 0.5 }';
const design = (materials: string, laminates: string): string =>
  `format: 1\ntitle: T\nmaterials:\n${materials}\nlaminates:\n${laminates}\n`;

describe('the section from fibre and resin to the ply', () => {
  it('has a part for each fabric and one table for each of its fibres', () => {
    const parts = all(willet, 'heading').filter(({ level }) => level === 3);
    expect(parts.map(({ text }) => text.replace(/:.*/, ''))).toEqual([
      'Fabric hybrid-cloth',
      'Fabric hybrid-triax',
      'Fabric mat',
    ]);
    expect(all(willet, 'table').map(({ id }) => id)).toEqual([
      'constituents-hybrid-cloth-models-carbon-fibre',
      'constituents-hybrid-cloth-models-glass-fibre',
      'constituents-hybrid-triax-models-carbon-fibre',
      'constituents-hybrid-triax-models-glass-fibre',
      'constituents-mat-models',
      'constituents-listed',
    ]);
  });

  it('marks the model of each constant by a word, once in every column', () => {
    for (const { id, columns, rows } of all(willet, 'table').filter(({ id }) => id.includes('models'))) {
      columns.slice(1).forEach((column, i) => {
        const cells = rows.map((row) => row[i + 1]);
        expect(cells.filter((cell) => cell === 'used').length, `${id} ${column.label}`).toBe(1);
        expect(numberOf(cells[0]), `${id} ${column.label}`).toBeDefined();
      });
    }
  });

  it('keeps the moduli used between the bounds that stand below them', () => {
    for (const { rows } of all(willet, 'table').filter(({ id }) => id.includes('models'))) {
      const row = (start: string) => rows.find(([label]) => String(label).startsWith(start)) ?? [];
      const [used, high, low] = [row('Used'), row('Rule of mixtures'), row('Inverse rule')];
      for (const column of [2, 3]) {
        expect(numberOf(used[column])!).toBeGreaterThan(numberOf(low[column])!);
        expect(numberOf(used[column])!).toBeLessThan(numberOf(high[column])!);
      }
    }
  });

  it('gives masses, thickness, resin, voids and crimp with where it comes from', () => {
    const [facts] = all(willet, 'facts');
    const fact = (label: string) => facts?.items.find((item) => item.label === label);
    expect(fact('of it carbon-fibre, warp')).toBeDefined();
    expect(numberOf(fact('Resin content')?.value)).toBeCloseTo(
      numberOf(fact('Resin')?.value)! / numberOf(fact('Areal mass, cured')?.value)!,
      12,
    );
    expect(fact('Voids')?.remark).toBe('they soften the resin, as spherical pores');
    expect(fact('Crimp factor, warp')?.remark).toMatch(
      /^low estimate, from yarns tilted by up to .*; high estimate 0\.9/,
    );
    expect(fact('Strengths')?.remark).toBe('not scaled with the fibre fraction');
    expect(numberOf(fact('Warp yarns')?.value)).toBe(500);
    const crimp = (keys: string) => {
      const text = design(`  f: ${cloth.replace(' }', `${keys} }`)}`, '  a: { material: f, stack: [0] }');
      return all(section(text), 'facts')[0]?.items.find(({ label }) => label === 'Crimp factor')?.remark;
    };
    expect(crimp('')).toBe('usual for a twill weave (common practice, no source)');
    expect(crimp(', crimpFactor: 0.95')).toBe('as given');
  });

  it('sets a ply given by its constants beside its constituents, and warns beside the materials', () => {
    const table = all(willet, 'table').at(-1);
    expect(table?.rows.map((row) => [row[0], row.at(-1)])).toEqual([['spine-tape', 'OFF by more than 8 %']]);
    const { blocks } = of(example('willet-oar-hybrid-cloth'));
    const materials = blocks.findIndex((block) => block.kind === 'heading' && block.id === 'materials');
    const notes = all(blocks.slice(materials), 'notes')[0]?.notes ?? [];
    expect(notes.filter(({ text }) => text.startsWith('spine-tape: E1 = 126 GPa')).map(({ level }) => level)).toEqual([
      'warning',
    ]);
  });

  it('shows a table once when two fabrics share it', () => {
    const text = design(
      `  f: ${cloth}\n  g: ${cloth.replace('300', '200')}`,
      '  a: { stack: [{ angle: 0, material: f }, { angle: 0, material: g }] }',
    );
    expect(all(section(text), 'table').map(({ id }) => id)).toEqual(['constituents-f-models']);
    expect(all(section(text), 'list')[0]?.items).toEqual([
      'constants of e-glass by every model: as in the table of fabric f',
    ]);
  });

  it('has facts for each fibre fraction of a fabric, and one table', () => {
    const text = design(
      `  f: ${cloth}`,
      '  a: { material: f, stack: [0] }\n  b: { material: f, stack: [0], process: { kind: closedTool, gap: 0.2 mm } }',
    );
    expect(all(section(text), 'facts')).toHaveLength(2);
    expect(all(section(text), 'table')).toHaveLength(1);
    const headings = all(section(text), 'heading').map((heading) => heading.text);
    expect(headings.slice(1)).toEqual(['Fabric f, at fibre fraction 50 %', 'Fabric f, at fibre fraction 59.06 %']);
  });

  it('marks the rule that is chosen in place of Halpin-Tsai', () => {
    const text = design(
      `  f: ${cloth.replace(' }', ', transverseModel: inverse, shearModel: chamis }')}`,
      '  a: { material: f, stack: [0] }',
    );
    const [{ rows } = { rows: [] }] = all(section(text), 'table');
    const cell = (start: string, column: number) => rows.find(([label]) => String(label).startsWith(start))?.[column];
    expect(cell('Inverse rule', 2)).toBe('used');
    expect(cell('Square-root', 3)).toBe('used');
    expect(numberOf(cell('Halpin-Tsai', 2))).toBeDefined();
  });

  it('is absent without fabrics and listed constituents, and from a summary', () => {
    expect(section(example('minimal'))).toEqual([]);
    const { blocks } = report(compute(assemble(readDesign(example('willet-oar-hybrid-cloth')))), { summary: true });
    expect(blocks.some((block) => block.kind === 'heading' && block.id === 'constituents')).toBe(false);
  });

  it('has ids that stand once in the report, and every source of its models among the sources', () => {
    const whole = of(example('willet-oar-hybrid-cloth'));
    const ids = whole.blocks.flatMap((block) => ('id' in block ? [`${block.kind} ${block.id}`] : []));
    expect(new Set(ids).size).toBe(ids.length);
    const keys = all(whole.blocks, 'sources')[0]?.entries.map(({ key }) => key);
    expect(keys).toEqual(expect.arrayContaining(['chamis-1984', 'hashin-1979', 'schapery-1968', 'halpin-kardos-1976']));
  });

  it.each([80, 60, 40])('fits %d columns of a terminal', (width) => {
    const text = render(of(example('willet-oar-hybrid-cloth')), 'text', { width });
    const from = text.indexOf('From fibre and resin to the ply');
    const part = text.slice(from, text.indexOf('Where the numbers come from'));
    for (const line of part.split('\n')) expect([...line].length, line).toBeLessThanOrEqual(width);
  });
});
