import { cp, mkdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { freshCommand } from '../cli/support/command.js';
import { commandLines, notAnswered } from './support/command-lines.js';
import { guides, inRoot } from './support/pages.js';

/*
 * Every page is followed from top to bottom in a directory of its own, which holds docs/examples and the files that the page
 * tells its reader to write: `yaml` blocks that begin with a comment of the file's name.
 */
describe('the commands of a page, in its order', () => {
  const command = freshCommand();

  const followed = guides.map((page) => ({ page, lines: commandLines(page) })).filter(({ lines }) => lines.length > 0);

  it('are on the first page and in the guides of the designer and the student', () => {
    const places = followed.map(({ page }) => page.path);
    expect(places).toEqual(expect.arrayContaining(['README.md', 'docs/guide/designer.md', 'docs/guide/student.md']));
  });

  it.each(followed.map(({ page, lines }) => [page.path, page, lines] as const))('%s', async (_, page, lines) => {
    const cwd = await command.directory();
    await mkdir(join(cwd, 'docs'));
    await cp(inRoot('docs/examples'), join(cwd, 'docs/examples'), { recursive: true });
    for (const { language, text } of page.blocks) {
      const name = language === 'yaml' ? /^# (\S+\.yaml)\n/.exec(text)?.[1] : undefined;
      if (name !== undefined) await writeFile(join(cwd, name), text);
    }
    for (const { line, args, status, stdin, stdout, shown } of lines) {
      const input = stdin === undefined ? '' : await readFile(join(cwd, stdin));
      const answer = await command.run(args, { cwd, stdin: input });
      expect(answer.code, `${line}\n${answer.stderr}`).toBe(status);
      if (stdout !== undefined) await writeFile(join(cwd, stdout), answer.stdout);
      if (shown === undefined) continue;
      const missing = notAnswered(shown, answer.stdout + answer.stderr);
      expect(missing, `the page shows lines that \`${line}\` does not print`).toBeUndefined();
    }
  });
});

describe('comparing what a page shows with what the program prints', () => {
  const answer = 'one\ntwo\nthree\nfour\n';

  it('accepts stretches in order, with lines left out between them', () => {
    expect(notAnswered('one\n…\nthree\nfour\n', answer)).toBeUndefined();
  });

  it('refuses lines that are not there, not next to each other or not in order', () => {
    expect(notAnswered('two\nfive\n', answer)).toBe('two\nfive');
    expect(notAnswered('one\nthree\n', answer)).toBe('one\nthree');
    expect(notAnswered('three\n…\none\n', answer)).toBe('one');
  });
});
