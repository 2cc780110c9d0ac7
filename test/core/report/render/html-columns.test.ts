import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { paperClasses } from '../../../../packages/core/src/report/render/html-columns.js';

const column = (head: string, texts: readonly string[], numeric = false) => ({ head, texts, numeric });
const classes = (...columns: Parameters<typeof paperClasses>[0]): string[] => paperClasses(columns).split(' ');

describe('a table on paper', () => {
  it('may be cut by the end of a sheet from its twenty-fifth row on', () => {
    const rows = (count: number) => classes(column('No.', Array.from({ length: count }, String)));
    expect(rows(24)).toEqual(['table']);
    expect(rows(25)).toEqual(['table', 'long']);
  });

  it('is set closer when its words do not fit beside each other, broken wherever they can be', () => {
    const long = 'a'.repeat(40);
    const broken = 'laminates.edge.inPlane '.repeat(3);
    expect(classes(column('one', [broken]), column('two', [broken]))).toEqual(['table']);
    expect(classes(column('one', [long]), column('two', [`${long}aa`]))).toEqual(['table', 'broad']);
    expect(classes(column(long, [long]), column('two', [long]), column('three', [long]))).toEqual([
      'table',
      'broad',
      'broadest',
    ]);
  });

  it('keeps numbers beside their units as long as it can', () => {
    const number = (numeric: boolean) =>
      classes(...Array.from({ length: 7 }, () => column('x', ['12345.6 J/m²'], numeric)));
    expect(number(true)).toEqual(['table', 'broad']);
    expect(number(false)).toEqual(['table']);
  });

  it('is never set wider for having one column more', () => {
    const any = fc.record({
      head: fc.string({ maxLength: 30 }),
      texts: fc.array(fc.string({ maxLength: 50 }), { minLength: 3, maxLength: 3 }),
      numeric: fc.boolean(),
    });
    fc.assert(
      fc.property(fc.array(any, { minLength: 1, maxLength: 12 }), any, (columns, more) => {
        const after = classes(...columns, more);
        for (const name of classes(...columns)) expect(after).toContain(name);
      }),
    );
  });
});
