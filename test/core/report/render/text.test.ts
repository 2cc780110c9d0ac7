import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Block, Report } from '../../../../packages/core/src/report/blocks.js';
import { type RenderOptions, render } from '../../../../packages/core/src/report/render/index.js';
import { sampleReport } from './sample.js';

const text = (blocks: readonly Block[], options: RenderOptions = {}): string =>
  render({ title: 'T', blocks, data: {}, units: 'metric' }, 'text', options);
/** Lines below the title and its rule. */
const body = (blocks: readonly Block[], options: RenderOptions = {}): string[] =>
  text(blocks, options).split('\n').slice(3, -1);

const moduli: Block = {
  kind: 'table',
  id: 'moduli',
  caption: 'Moduli',
  columns: [{ label: 'Direction' }, { label: 'Young modulus', kind: 'modulus' }, { label: 'Ratio', kind: 'number' }],
  rows: [
    ['along', { value: 18.25e9, kind: 'modulus' }, { value: 0.3, kind: 'number' }],
    ['across', { value: 9e9, kind: 'modulus' }, 'not known'],
  ],
};

describe('text', () => {
  it('sets a table with the unit once in the head and the decimal points below each other', () => {
    expect(body([moduli])).toEqual([
      'Moduli',
      '',
      'Direction  Young modulus      Ratio',
      '                     GPa',
      '---------  -------------  ---------',
      'along              18.25        0.3',
      'across              9     not known',
    ]);
  });

  it("prints the reader's units", () => {
    const lines = body([moduli], { units: 'us' });
    expect(lines[3]?.trim()).toBe('Msi');
    // 18.25 GPa / 6.894757 GPa per Msi (NIST SP 811, psi to pascal) = 2.647
    expect(lines[5]).toContain('2.647');
  });

  it('prints a quantity of another kind than its column with its own unit', () => {
    const odd: Block = { ...moduli, rows: [['along', { value: 2e6, kind: 'stress' }, 'x']] };
    expect(text([odd])).toContain('2 MPa');
  });

  it('underlines headings as long as they are', () => {
    const lines = body([
      { kind: 'heading', level: 2, id: 'a', text: 'Edge' },
      { kind: 'heading', level: 3, id: 'b', text: 'Detail' },
    ]);
    expect(lines).toEqual(['', 'Edge', '----', '', '', 'Detail', '- - -']);
  });

  it('sets facts in columns and hangs remarks beside them', () => {
    const facts: Block = {
      kind: 'facts',
      items: [
        {
          label: 'Thickness',
          value: { value: 2.677e-3, kind: 'length' },
          remark: 'at the edge, where the band of cloth and bias cloth is solid and has no core at all',
        },
        { label: 'Symmetric', value: 'yes' },
      ],
    };
    expect(body([facts], { width: 60 })).toEqual([
      'Thickness  2.677 mm  at the edge, where the band of cloth',
      '                     and bias cloth is solid and has no core',
      '                     at all',
      'Symmetric  yes',
    ]);
    expect(body([facts], { width: 30 })[1]).toBe('    at the edge, where the');
  });

  it('keeps every line within the width, whatever the width', () => {
    const report = sampleReport();
    fc.assert(
      fc.property(fc.integer({ min: 40, max: 140 }), (width) => {
        for (const line of render(report, 'text', { width }).split('\n'))
          expect([...line].length, line).toBeLessThanOrEqual(width);
      }),
      { numRuns: 25 },
    );
  });

  it('cuts a word longer than a line, best after a slash', () => {
    const code = { kind: 'paragraph', text: `code [${Array.from({ length: 8 }, () => '45cloth').join('/')}]` } as const;
    expect(body([code], { width: 30 })).toEqual([
      'code [45cloth/45cloth/45cloth/',
      '45cloth/45cloth/45cloth/',
      '45cloth/45cloth]',
    ]);
  });

  it('splits a wide table by columns and repeats the first one', () => {
    const wide: Block = {
      kind: 'table',
      id: 'wide',
      caption: 'Wide',
      columns: [{ label: 'Row' }, ...['A', 'B', 'C', 'D'].map((label) => ({ label, kind: 'number' as const }))],
      rows: [['first', ...[1111, 2222, 3333, 4444].map((value) => ({ value, kind: 'number' as const }))]],
    };
    expect(body([wide], { width: 20 })).toEqual([
      'Wide',
      '',
      'Row       A     B',
      '-----  ----  ----',
      'first  1111  2222',
      '',
      'Row       C     D',
      '-----  ----  ----',
      'first  3333  4444',
    ]);
  });

  it('turns rows into lists when not even two columns fit', () => {
    const long: Block = {
      kind: 'table',
      id: 'long',
      caption: 'Long',
      columns: [{ label: 'Name' }, { label: 'Size', kind: 'length' }],
      rows: [['an-unbreakable-name', { value: 1e-3, kind: 'length' }]],
    };
    expect(body([long], { width: 22 })).toEqual(['Long', '', 'an-unbreakable-name', '  Size  1 mm']);
  });

  it('marks notes by level and source, and cautions', () => {
    const lines = body([
      {
        kind: 'notes',
        notes: [
          { level: 'warning', text: 'too thick' },
          { level: 'assumption', text: 'plane stress', source: 'jones-1999' },
        ],
      },
      { kind: 'caution', title: 'Careful', items: ['test first'] },
    ]);
    expect(lines).toEqual([
      '! Warning: too thick',
      '* Assumption: plane stress [jones-1999]',
      '',
      '!! Careful',
      '   - test first',
    ]);
  });

  it('shows a drawing in characters where it fits and its description where not', () => {
    const figure: Block = {
      kind: 'figure',
      id: 'f',
      caption: 'Stack',
      alt: 'Two layers.',
      svg: '<svg/>',
      text: '=====\n-----',
    };
    expect(body([figure])).toEqual(['Figure: Stack', '', '  =====', '  -----']);
    expect(body([{ ...figure, text: '='.repeat(79) }])).toEqual(['Figure: Stack', '  Two layers.']);
  });

  it('uses terminal colours only when asked, and without a change to the words', () => {
    const introducer = String.fromCharCode(27);
    const report = sampleReport();
    const plain = render(report, 'text');
    const coloured = render(report, 'text', { colour: true });
    expect(plain).not.toContain(introducer);
    expect(coloured).toContain(`${introducer}[33m! Warning`);
    expect(coloured).toContain(`2.677 ${introducer}[2mmm${introducer}[22m`);
    expect(coloured.replaceAll(new RegExp(`${introducer}\\[\\d+m`, 'g'), '')).toBe(plain);
  });

  it('lets no control character of a report reach the terminal', () => {
    const report: Report = {
      title: 'a\u001b[2Jb',
      blocks: [{ kind: 'paragraph', text: 'c\u0007\u009bd\u001b]0;x' }],
      data: {},
      units: 'metric',
    };
    expect([...render(report, 'text')].filter((c) => c !== '\n' && /\p{Cc}/u.test(c))).toEqual([]);
  });

  it('prints an empty report and empty blocks', () => {
    expect(text([])).toBe('T\n=\n');
    expect(
      text([
        { kind: 'notes', notes: [] },
        { kind: 'facts', items: [] },
        { kind: 'list', items: [] },
      ]),
    ).toBe('T\n=\n');
  });
});
