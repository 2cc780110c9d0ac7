import { describe, expect, it } from 'vitest';
import {
  type CheckedExample,
  type CheckedValue,
  exampleCatalogue,
  exampleCounts,
  exampleIds,
  exampleOf,
  workedExamples,
} from '../../packages/core/src/examples/index.js';
import { likePrinted } from '../../packages/core/src/examples/words.js';
import type { Block } from '../../packages/core/src/report/blocks.js';
import { exampleBlocks } from '../../packages/core/src/report/example-blocks.js';
import { examplesReport } from '../../packages/core/src/report/examples-report.js';
import { render } from '../../packages/core/src/report/index.js';

type Table = Extract<Block, { kind: 'table' }>;
const tables = (blocks: readonly Block[]): Table[] => blocks.filter((block) => block.kind === 'table');

describe('the report of the worked examples', () => {
  const report = examplesReport();

  it('shows every value of every example once', () => {
    const { values, independent } = exampleCounts();
    const rows = tables(report.blocks)
      .filter(({ columns }) => columns.some(({ label }) => label === 'Within') && columns[1]?.label !== 'Subject')
      .flatMap((table) => table.rows);
    expect(rows.length).toBe(values + independent.values);
  });

  it('lists the publications with how each was obtained, and the verdict on its values', () => {
    const [overview] = tables(report.blocks);
    const published = exampleCatalogue()
      .filter(({ independent }) => !independent)
      .map(({ id }) => exampleOf(id));
    expect(overview!.rows.map(([id]) => id)).toEqual(published.map(({ id }) => id));
    expect(new Set(published)).toEqual(new Set(workedExamples.filter(({ access }) => access !== 'computed')));
    const words: Record<string, string> = {
      read: 'read in the source',
      quoted: 'read where it is quoted',
      recalled: 'recalled, not re-read',
    };
    expect(overview!.rows.map((row) => row[4])).toEqual(published.map(({ access }) => words[access]));
    const dropped = published.map(({ notReproduced }) => notReproduced?.length ?? 0);
    expect(overview!.rows.map((row) => row[7])).toEqual(
      dropped.map((count) => (count === 0 ? 'all' : `all; ${count} not counted`)),
    );
  });

  it('has ids and headings of their own, and prints in every format', () => {
    const ids = report.blocks.flatMap((block) => (block.kind === 'heading' ? [block.id] : []));
    const tableIds = tables(report.blocks).map(({ id }) => id);
    expect(new Set([...ids, ...tableIds]).size).toBeGreaterThanOrEqual(Math.max(ids.length, tableIds.length));
    expect(new Set(ids).size).toBe(ids.length);
    expect(new Set(tableIds).size).toBe(tableIds.length);
    for (const format of ['text', 'markdown', 'html', 'json', 'csv'] as const) {
      expect(render(report, format)).toContain('off-axis-stiffness-carbon');
    }
  });

  it('gives one example with its citation, place, inputs and remark', () => {
    const text = render(examplesReport('laminate-expansion-carbon'), 'markdown');
    for (const part of ['Kaw, A. K.', 'Example 4.6', 'alpha2 2.25e-5 1/K', 'recalled, not re-read', '1 of 1 within']) {
      expect(text).toContain(part);
    }
    expect(text).not.toContain('off-axis');
  });

  it('shows a recalled number that does not follow from the inputs, and does not count it', () => {
    const { blocks, data } = examplesReport('laminate-expansion-carbon');
    const dropped = tables(blocks).find(({ id }) => id.endsWith('-dropped'));
    expect(dropped!.rows).toEqual([['alphay', '1/K', '2.006e-6', '2.59959e-6']]);
    expect(data.counts).toMatchObject({ values: 1, within: 1, dropped: 1 });
    expect(render(examplesReport('laminate-expansion-carbon'), 'markdown')).toContain(
      '1 of 1 within the tolerance; 1 not',
    );
  });

  it('shows a sign that cannot be right as it was recalled', () => {
    const { blocks } = examplesReport('off-axis-compliance-aramid-30');
    const dropped = tables(blocks).find(({ id }) => id.endsWith('-dropped'));
    expect(dropped!.rows).toContainEqual(['Sbar66', '1/Pa', '-0.2905e-9', '0.290505e-9']);
  });

  it('says of an example without inputs that it has none', () => {
    const bare = workedExamples.filter(({ inputs }) => Object.keys(inputs).length === 0);
    expect(bare.length).toBeGreaterThan(0);
    for (const { id } of bare) expect(render(examplesReport(id), 'text')).toMatch(/Inputs\s+none, the value/);
    expect(render(report, 'markdown')).not.toContain('****');
  });

  it('begins with how many values of how many publications there are, how obtained, and how many agree', () => {
    const counts = exampleCounts();
    const list = report.blocks.find((block) => block.kind === 'list');
    const text = (list as Extract<Block, { kind: 'list' }>).items.join('\n');
    for (const part of [
      `${counts.values} published values from ${counts.sources} publications (${counts.examples} examples)`,
      `${counts.read} read in the publication`,
      `${counts.quoted} read where another publication quotes or solves it`,
      `${counts.recalled} recalled`,
      `${counts.within} of ${counts.values - counts.banded.values} lie within the tolerance`,
      `${counts.dropped} further recalled values do not follow from the inputs`,
      `with them it is ${counts.within} of ${counts.values - counts.banded.values + counts.dropped}`,
      `${counts.banded.within} of ${counts.banded.values} are of exact elasticity`,
      '"oracle" in reference-data/examples',
      'to 1e-9 of their size',
      'to 1e-6 of their size',
    ]) {
      expect(text).toContain(part);
    }
  });

  it('shows a band instead of a tolerance where plate theory approaches exact elasticity', () => {
    const { blocks, data } = examplesReport('plate-deflection-three-plies');
    const [values] = tables(blocks);
    expect(values!.rows.map((row) => [row[0], row[2], row[5], row[7]])).toEqual([
      ['w4', '2.82', 'band 13 %', 'in the band'],
      ['w10', '0.919', 'band 1.5 %', 'in the band'],
      ['w20', '0.61', 'band 0.45 %', 'in the band'],
    ]);
    expect(data.counts).toMatchObject({ values: 3, within: 0, banded: { values: 3, within: 3 } });
    expect(render(examplesReport('plate-deflection-three-plies'), 'markdown')).toContain('3 of 3 within the band');
  });

  it('gives the same as data, with numbers in the unit named beside them', () => {
    const { examples } = JSON.parse(render(examplesReport('bimetal-curvature'), 'json'));
    expect(examples).toMatchObject([
      {
        id: 'bimetal-curvature',
        source: 'timoshenko-1925',
        rows: [{ key: 'coefficient', published: 1.5, within: true }],
      },
    ]);
    expect(examples[0].rows[0].computed).toBeCloseTo(1.5, 12);
  });

  it('names the sources of the examples shown and no others', () => {
    const keys = (blocks: readonly Block[]) =>
      blocks.flatMap((block) => (block.kind === 'sources' ? block.entries.map(({ key }) => key) : []));
    expect(new Set(keys(report.blocks))).toEqual(new Set(workedExamples.map(({ source }) => source)));
    expect(keys(examplesReport('bimetal-curvature').blocks)).toEqual(['timoshenko-1925']);
  });

  it('refuses an unknown id and offers the nearest one', () => {
    expect(exampleIds).toContain('bimetal-curvature');
    expect(() => examplesReport('bimetal-curvatur')).toThrow(
      expect.objectContaining({
        problems: [expect.objectContaining({ code: 'unknown-name', hint: 'did you mean `bimetal-curvature`?' })],
      }),
    );
  });
});

describe('a list of the worked examples', () => {
  const list = (what?: string): string => render(examplesReport(what, { list: true }), 'text', { width: 1000 });

  it('stands under the subjects in a few words on each example', () => {
    const text = list();
    expect(text).toMatch(/\nSandwich\n-+\n\n- wrinkling-coefficient: /);
    expect(text).toContain('Tsai and Hahn 1980; 17 values, worst +0.8 of the last digit; design file');
    expect(text).toContain('Pagano and Hatfield 1972; 3 values, in the band; no design file');
    const { examples, independent } = exampleCounts();
    expect(text.match(/design file$/gm)).toHaveLength(examples);
    expect(text).toContain(`${independent.examples} further examples, which no publication prints`);
    expect(text).not.toContain('S11');
  });

  it('of a subject or a word holds those about it alone', () => {
    expect(list('edge').match(/design file$/gm)).toHaveLength(1);
    expect(list('independent-script').match(/design file$/gm)).toHaveLength(exampleCounts().independent.examples);
  });

  it('gives one example whole all the same', () => {
    expect(list('bimetal-curvature')).toContain('published and computed');
  });
});

describe('the page of the worked examples', () => {
  it('leads from every example of the list to its section', () => {
    const page = render(examplesReport(), 'html');
    const links = [...page.matchAll(/<th [^>]*><a href="#(example-[^"]+)">/g)].map(([, id]) => id);
    expect(links).toHaveLength(exampleCounts().examples);
    for (const id of links) expect(page).toContain(`<h3 id="${id}">`);
    expect(page).toContain('<li><a href="#subject-strength">Strength</a></li>');
  });

  it('holds those about a word alone, the values of the independent script among them', () => {
    const { blocks, data } = examplesReport('thickness');
    expect(data.counts).toMatchObject({ examples: 4 });
    expect(tables(blocks).at(-1)!.id).toBe('independent-script');
    expect(tables(examplesReport('independent-script').blocks).map(({ id }) => id)).toEqual(['independent-script']);
  });
});

describe('a deviation beside its value', () => {
  it('counts in the last digit printed, to a tenth and with its sign', () => {
    const [example] = examplesReport('bimetal-curvature').data.examples as CheckedExample[];
    const cells = (value: Partial<CheckedValue>): unknown[] => {
      const rows = [{ ...example!.rows[0]!, ...value }];
      return [...tables(exampleBlocks({ ...example!, rows }))[0]!.rows[0]!];
    };
    expect(cells({ printed: '181.8', lastDigits: 0.11, tolerance: 0.05 }).slice(4, 6)).toEqual(['+0.1', '0.5']);
    expect(cells({ printed: '1.20e6', lastDigits: -3.26, tolerance: 1e4 }).slice(4, 6)).toEqual(['-3.3', '1']);
    expect(cells({ lastDigits: -0.04 })[4]).toBe('0');
  });

  it('stands in every format', () => {
    const constants = examplesReport('off-axis-constants-carbon-60');
    for (const format of ['text', 'markdown', 'html', 'csv'] as const) {
      expect(render(constants, format)).toContain('-0.9');
    }
    // The book prints 5.854, the independent script 5.85311368164.
    const { examples } = JSON.parse(render(constants, 'json'));
    const mx = examples[0].rows.find(({ key }: CheckedValue) => key === 'mx');
    expect(mx.lastDigits).toBeCloseTo((5.85311368164 - 5.854) / 0.001, 6);
  });
});

describe('a computed number in the style of the printed one', () => {
  it('has the same power of ten and two more digits', () => {
    expect(likePrinted(181811138844, '181.8e9')).toBe('181.811e9');
    expect(likePrinted(-1.54696132597e-12, '-1.547e-12')).toBe('-1.54696e-12');
    expect(likePrinted(0.512499, '0.512')).toBe('0.51250');
    expect(likePrinted(1280.5, '1280')).toBe('1280.50');
  });
});
