import { readFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import type { Metafile } from 'esbuild';
import { describe, expect, it } from 'vitest';
import { freshCommand } from './support/command.js';

/** Every input that is loaded before any command is chosen: the entry and what it imports statically, to the end. */
function loadedAtStart({ outputs }: Metafile): string[] {
  const entry = Object.keys(outputs).find((path) => path.endsWith('selvage.mjs'));
  const seen = new Set<string>();
  const visit = (path: string): void => {
    if (seen.has(path)) return;
    seen.add(path);
    for (const { path: next, kind, external } of outputs[path]?.imports ?? []) {
      if (kind === 'import-statement' && external !== true) visit(next);
    }
  };
  visit(entry ?? '');
  return [...seen].flatMap((path) => Object.keys(outputs[path]?.inputs ?? {}));
}

describe('starting the command', () => {
  const command = freshCommand();

  it('loads neither the parser of arguments nor the core nor a library before a command is chosen', async () => {
    const meta: Metafile = JSON.parse(await readFile(join(dirname(command.path()), 'meta.json'), 'utf8'));
    const loaded = loadedAtStart(meta);
    expect(loaded).toContain('src/run.ts');
    expect(loaded.filter((path) => path.includes('node_modules') || path.includes('core/'))).toEqual([]);
    const all = Object.values(meta.outputs).flatMap(({ inputs }) => Object.keys(inputs));
    for (const library of ['/zod/', '/yaml/', '/mathjs/', '/yargs-parser/']) {
      expect(all.some((path) => path.includes(library))).toBe(true);
    }
  });

  it('prints the version of the package', async () => {
    const manifest = JSON.parse(await readFile(new URL('../../packages/cli/package.json', import.meta.url), 'utf8'));
    expect(await command.run(['--version'])).toMatchObject({ code: 0, stdout: `${manifest.version}\n`, stderr: '' });
  });
});
