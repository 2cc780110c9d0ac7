import { describe, expect, it } from 'vitest';
import type { Block, Report } from '../../../../packages/core/src/report/blocks.js';
import { render } from '../../../../packages/core/src/report/render/index.js';
import { problemCode } from '../markup.js';
import { sampleReport } from './sample.js';

const withData = (data: Record<string, unknown>): Report => ({ title: 'T', blocks: [], data, units: 'metric' });

describe('json', () => {
  it('is the data and nothing else', () => {
    const report = sampleReport();
    const text = render(report, 'json');
    expect(JSON.parse(text)).toEqual(report.data);
    expect(text.endsWith('}\n')).toBe(true);
  });

  it('agrees with the built-in writer on odd values', () => {
    const data = {
      'quoted "key"\n': 'line\u2028',
      none: null,
      empty: [],
      nothing: {},
      missing: undefined,
      list: [undefined, -0, 1e21, 1e-7, true, [1, [2]], { a: 1 }],
      date: new Date(0),
    };
    expect(JSON.parse(render(withData(data), 'json'))).toEqual(JSON.parse(JSON.stringify(data)));
  });

  it('keeps a row of a matrix on one line', () => {
    expect(render(withData({ A: [[1, 2, 3]] }), 'json')).toBe('{\n  "A": [\n    [1, 2, 3]\n  ]\n}\n');
  });

  it('refuses NaN and infinity by their path: not-computable', () => {
    expect(problemCode(() => render(withData({ a: { b: [1, Number.NaN] } }), 'json'))).toBe('not-computable');
    expect(problemCode(() => render(withData({ a: Number.NEGATIVE_INFINITY }), 'json'))).toBe('not-computable');
    expect(() => render(withData({ a: { b: [1, Number.NaN] } }), 'json')).toThrow('a.b[1] = NaN');
  });
});

/** An independent reader of comma-separated values after RFC 4180. */
function readCsv(text: string): string[][] {
  const records: string[][] = [];
  let record: string[] = [];
  let field = '';
  let quoted = false;
  for (let i = 0; i < text.length; i++) {
    const character = text[i]!;
    if (quoted) {
      if (character !== '"') field += character;
      else if (text[i + 1] === '"') {
        field += '"';
        i++;
      } else quoted = false;
    } else if (character === '"') quoted = true;
    else if (character === ',') {
      record.push(field);
      field = '';
    } else if (character === '\r' && text[i + 1] === '\n') {
      records.push([...record, field]);
      record = [];
      field = '';
      i++;
    } else field += character;
  }
  expect([quoted, field, record.length]).toEqual([false, '', 0]);
  return records;
}

/** Blocks of a file: divided by empty records. */
function sections(records: readonly string[][]): string[][][] {
  const blocks: string[][][] = [[]];
  for (const record of records) {
    if (record.length === 1 && record[0] === '') blocks.push([]);
    else blocks.at(-1)?.push(record);
  }
  return blocks;
}

describe('csv', () => {
  it('gives back every table: id, caption, head with units, and numbers with all their digits', () => {
    const report = sampleReport();
    const read = sections(readCsv(render(report, 'csv')));
    const tables = report.blocks.filter((block): block is Extract<Block, { kind: 'table' }> => block.kind === 'table');
    for (const table of tables) {
      const found = read.find(([title]) => title?.[0] === table.id);
      expect(found?.[0]?.[1]).toBe(table.caption);
      expect(found?.slice(1).every((record) => record.length === table.columns.length)).toBe(true);
      expect(found).toHaveLength(table.rows.length + 2);
    }
    const moduli = read.find(([title]) => title?.[0] === 'edge-moduli');
    expect(moduli?.[1]?.slice(0, 3)).toEqual(['Direction [°]', 'In-plane modulus [GPa]', 'Flexural modulus [GPa]']);
    expect(moduli?.[2]).toEqual(['0', '18.19', '18.8', '33161', '0.33', 'along the edge']);
  });

  it('keeps a third in full and the sign of a number', () => {
    const table: Block = {
      kind: 'table',
      id: 't',
      caption: 'c',
      columns: [{ label: 'x', kind: 'number' }, { label: 'mixed' }],
      rows: [
        [
          { value: -1 / 3, kind: 'number' },
          { value: 1 / 3000, kind: 'length' },
        ],
      ],
    };
    expect(render({ title: 'T', blocks: [table], data: {}, units: 'metric' }, 'csv')).toBe(
      'report,T\r\n\r\nt,c\r\nx,mixed,mixed unit\r\n-0.333333333333333,0.333333333333333,mm\r\n',
    );
  });

  it('ends with what must be known, each once', () => {
    const notes = [{ level: 'warning' as const, text: 'mind, this', source: 'x-2000' }];
    const blocks = [
      { kind: 'notes' as const, notes },
      { kind: 'notes' as const, notes },
      { kind: 'caution' as const, title: 'C', items: ['wear a mask'] },
    ];
    const printed = render({ title: 'T', blocks, data: {}, units: 'metric' }, 'csv');
    expect(printed.split('\r\n').slice(-4)).toEqual([
      'Level,Text,Source',
      'warning,"mind, this",x-2000',
      'caution,wear a mask,',
      '',
    ]);
  });

  it("writes facts with value and unit apart, under the heading's id", () => {
    const read = sections(readCsv(render(sampleReport(), 'csv')));
    const facts = read.find(([title]) => title?.[0] === 'edge-constants-facts');
    expect(facts?.[1]).toEqual(['Quantity', 'Value', 'Unit', 'Remark']);
    expect(facts?.[2]).toEqual(['Thickness', '2.677', 'mm', '']);
    expect(facts?.at(-1)).toEqual(['Symmetric', 'yes', '', '']);
    expect(read[1]?.[0]?.[0]).toBe('report-facts');
  });

  it('numbers a second list of facts under one heading', () => {
    const facts: Block = { kind: 'facts', items: [{ label: 'a', value: 'b' }] };
    const text = render({ title: 'T', blocks: [facts, facts], data: {}, units: 'metric' }, 'csv');
    expect(text).toContain('report-facts,T\r\n');
    expect(text).toContain('\r\n\r\nreport-facts-2,T\r\n');
  });

  it('disarms formulas but leaves numbers alone', () => {
    const read = readCsv(render(sampleReport(), 'csv')).flat();
    expect(read).toEqual(
      expect.arrayContaining(["'=1+2", "'@name", "'-not a number", '-1.5', 'a, "quoted"\nsecond line']),
    );
    expect(read).not.toContain('=1+2');
  });
});

describe('every format', () => {
  const table = (value: number, cells = 1): Report => ({
    title: 'T',
    blocks: [
      {
        kind: 'table',
        id: 't',
        caption: 'c',
        columns: [{ label: 'x', kind: 'number' }],
        rows: [Array.from({ length: cells }, () => ({ value, kind: 'number' as const }))],
      },
    ],
    data: {},
    units: 'metric',
  });
  const formats = ['text', 'markdown', 'html', 'json', 'csv'] as const;

  it.each(formats)('%s prints the sample in both systems of units, the same each time', (format) => {
    for (const units of ['metric', 'us'] as const) {
      const printed = render(sampleReport(units), format);
      expect(printed).toBe(render(sampleReport(units), format));
      expect(printed.endsWith('\n')).toBe(true);
      expect(/\b(?:NaN|Infinity|undefined|\[object)\b/.exec(printed)).toBeNull();
    }
  });

  it.each(formats)('%s refuses a NaN in a table (not-computable) and a ragged row (contradiction)', (format) => {
    expect(problemCode(() => render(table(Number.NaN), format))).toBe('not-computable');
    expect(problemCode(() => render(table(1, 2), format))).toBe('contradiction');
    expect(() => render(table(Number.NaN), format)).toThrow('table `t`, row 1, x is NaN');
  });

  it.each(formats)('%s refuses an infinite fact: not-computable', (format) => {
    const blocks: Block[] = [
      { kind: 'facts', items: [{ label: 'a', value: { value: Number.POSITIVE_INFINITY, kind: 'length' } }] },
    ];
    expect(problemCode(() => render({ title: 'T', blocks, data: {}, units: 'metric' }, format))).toBe('not-computable');
  });
});
