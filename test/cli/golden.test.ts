import { cp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { freshCommand } from './support/command.js';

/*
 * Every folder of golden/ is one call of the command: `cmd` holds its arguments, one per line; `stdin`, if there is one,
 * is fed to it; other files are what it finds in its working directory. `stdout`, `stderr` and `code` are what it must
 * answer. UPDATE_GOLDEN=1 writes these three anew; read the difference before you keep it.
 */
const golden = fileURLToPath(new URL('golden/', import.meta.url));
const answers = ['stdout', 'stderr', 'code'] as const;
const update = (process.env.UPDATE_GOLDEN ?? '') !== '';

const read = (path: string): Promise<string> => readFile(path, 'utf8').catch(() => '');

describe('the command answers as recorded', async () => {
  const command = freshCommand();
  const folders = (await readdir(golden, { withFileTypes: true })).filter((entry) => entry.isDirectory());
  for (const name of folders.map((entry) => entry.name).sort()) {
    it(name, async () => {
      const folder = join(golden, name);
      const cwd = await command.directory();
      await cp(folder, cwd, { recursive: true });
      for (const file of [...answers, 'cmd', 'stdin']) await rm(join(cwd, file), { force: true });
      const args = (await readFile(join(folder, 'cmd'), 'utf8')).split('\n').slice(0, -1);
      const stdin = await readFile(join(folder, 'stdin')).catch(() => '');
      const { code, stdout, stderr } = await command.run(args, { cwd, stdin });
      const found = { stdout, stderr, code: `${code}\n` };
      if (update) for (const answer of answers) await writeFile(join(folder, answer), found[answer]);
      const recorded = await Promise.all(answers.map(async (answer) => [answer, await read(join(folder, answer))]));
      expect(found).toEqual(Object.fromEntries(recorded));
    });
  }
});
