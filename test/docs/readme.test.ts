import { describe, expect, it } from 'vitest';
import { exitMeanings } from '../../packages/cli/src/exit.js';
import { commands } from '../../packages/cli/src/table.js';
import { codeSpans, pageAt, tableRows } from './support/pages.js';

const readme = pageAt('README.md');

describe('the first page', () => {
  it('lists every command of the program, in the order of its help', () => {
    const listed = tableRows(readme, 'command', 'does').map(([cell = '']) => codeSpans(cell)[0]?.split(' ')[1]);
    expect(listed).toEqual(commands.map(({ name }) => name));
  });

  it('lists every exit code of the program', () => {
    const listed = tableRows(readme, 'exit code', 'meaning').map(([cell = '']) => Number(cell));
    expect(listed).toEqual(exitMeanings.map(([code]) => code));
  });

  it('says how everything is tested, by one command under one heading', () => {
    expect(readme.text).toMatch(/^## Test\n+```sh\nnpm test\n```$/m);
  });

  it('stays short', () => {
    expect(readme.text.split('\n').length).toBeLessThanOrEqual(131);
  });
});
