import { readdirSync, readFileSync } from 'node:fs';
import { assemble, compute, readDesign, renderProblems, SelvageError } from '@selvage/core';
import { describe, expect, it } from 'vitest';
import { codeSpans, guides, inRoot, pageAt, root, tableRows } from './support/pages.js';

const exampleFolder = new URL('docs/examples/', root);
const examples = readdirSync(exampleFolder)
  .filter((name) => name.endsWith('.yaml'))
  .map((name) => readFileSync(new URL(name, exampleFolder), 'utf8'));
const shingle = readFileSync(inRoot('docs/examples/shingle-640-three-rows.yaml'), 'utf8');

/** Everything that is wrong with a design, as the command prints it; empty when nothing is. */
function complaints(text: string): string {
  try {
    compute(assemble(readDesign(text)));
    return '';
  } catch (error) {
    if (!(error instanceof SelvageError)) throw error;
    return renderProblems(error.problems);
  }
}

const plain = (line: string): string => line.trim().replace(/\s+/g, ' ');
const lineLists = examples.map((text) => text.split('\n').map(plain));

/** Whether lines stand one after the other in an example, whatever their indentation. */
const quoted = (stretch: readonly string[]): boolean =>
  lineLists.some((lines) => lines.some((_, k) => stretch.every((line, i) => lines[k + i] === line)));

const designs = guides.flatMap(({ path, blocks }) =>
  blocks
    .filter(({ language, text }) => language === 'yaml' && !/^answers:/m.test(text))
    .map(({ text, line }) => ({ place: `${path}:${line}`, text, whole: /^format:/m.test(text) })),
);

describe('the designs that the guides show', () => {
  it.each(designs.filter(({ whole }) => whole))('$place is a design without fault', ({ text }) => {
    expect(complaints(text)).toBe('');
  });

  it.each(designs.filter(({ whole }) => !whole))('$place quotes a design of docs/examples', ({ text }) => {
    for (const stretch of text.split(/^\s*…\s*$/m)) {
      const lines = stretch
        .split('\n')
        .map(plain)
        .filter((line) => line !== '');
      expect(quoted(lines), lines.join('\n')).toBe(true);
    }
  });
});

describe('the mistakes that the designer’s guide lists', () => {
  const rows = tableRows(pageAt('docs/guide/designer.md'), 'written', 'instead of', 'what the program says');

  it.each(rows)('%s instead of %s', (writtenCell, insteadCell, saysCell) => {
    const [written = ''] = codeSpans(writtenCell);
    const [instead = ''] = codeSpans(insteadCell);
    const [says = ''] = codeSpans(saysCell);
    expect(shingle).toContain(instead);
    expect(complaints(shingle.replaceAll(instead, written))).toContain(says);
  });
});
