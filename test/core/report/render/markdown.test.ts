import { describe, expect, it } from 'vitest';
import type { Block } from '../../../../packages/core/src/report/blocks.js';
import { render } from '../../../../packages/core/src/report/render/index.js';
import { hostile, sampleReport } from './sample.js';

const markdown = (...blocks: Block[]): string => render({ title: 'T', blocks, data: {}, units: 'metric' }, 'markdown');

describe('markdown', () => {
  it('sets a table with units in the head, numbers to the right and pipes escaped', () => {
    const table: Block = {
      kind: 'table',
      id: 't',
      caption: 'Moduli',
      columns: [{ label: 'a|b' }, { label: 'Ex', kind: 'modulus' }, { label: 'Ratio', kind: 'number' }],
      rows: [['x|y', { value: 18.2e9, kind: 'modulus' }, { value: 0.33, kind: 'number' }]],
    };
    expect(markdown(table).split('\n').slice(2)).toEqual([
      '**Moduli**',
      '',
      '| a\\|b | Ex (GPa) | Ratio |',
      '| :--- | ---: | ---: |',
      '| x\\|y | 18.2 | 0.33 |',
      '',
    ]);
  });

  it('gives every table row the same number of cells, whatever is in them', () => {
    const rows = render(sampleReport(), 'markdown')
      .split('\n')
      .filter((line) => line.startsWith('|'));
    let columns = 0;
    rows.forEach((row, i) => {
      const cells = row.replaceAll(/\\./g, '').split('|').length;
      if (/^\| :?-+/.test(rows[i + 1] ?? '')) columns = cells;
      expect(cells).toBe(columns);
    });
  });

  it('escapes marks, tags and what would begin a list or heading', () => {
    expect(markdown({ kind: 'paragraph', text: hostile })).toContain(
      '\\<script\\>alert("1")\\</script\\> & \'a\\|b\' \\*c\\* \\_d\\_ \\`e\\`',
    );
    expect(markdown({ kind: 'paragraph', text: '# 1' })).toContain('\n\\# 1\n');
    expect(markdown({ kind: 'paragraph', text: '1. one' })).toContain('\n1\\. one\n');
    expect(markdown({ kind: 'paragraph', text: '&lt; R&D' })).toContain('&amp;lt; R&D');
    expect(markdown({ kind: 'list', items: ['a\n\n# b'] })).toContain('- a  # b\n');
  });

  it('describes a figure in a quotation, without a drawing of its own', () => {
    const figure: Block = {
      kind: 'figure',
      id: 'f',
      caption: 'Stack',
      alt: 'Two layers.',
      svg: '<svg></svg>',
      text: 'a```b',
    };
    expect(markdown(figure).split('\n').slice(2)).toEqual([
      '> **Figure: Stack**',
      '>',
      '> Two layers.',
      '',
      '````text',
      'a```b',
      '````',
      '',
    ]);
    expect(render(sampleReport(), 'markdown')).not.toContain('<svg');
  });

  it('prints facts, notes, cautions and sources', () => {
    const lines = markdown(
      { kind: 'heading', level: 2, id: 'h', text: 'Edge' },
      { kind: 'facts', items: [{ label: 'Mass', value: { value: 0.607, kind: 'mass' }, remark: 'dry' }] },
      { kind: 'notes', notes: [{ level: 'warning', text: 'thick', source: 'jones-1999' }] },
      { kind: 'caution', title: 'Careful', items: ['test'] },
      { kind: 'sources', entries: [{ key: 'jones-1999', text: 'A book.', access: 'recalled' }] },
    ).split('\n');
    expect(lines).toEqual(
      expect.arrayContaining([
        '## Edge',
        '- Mass: **607 g** - dry',
        '- **Warning:** thick (jones-1999)',
        '> **Careful**',
        '> - test',
        '- **jones-1999** - A book. (recalled)',
      ]),
    );
  });
});
