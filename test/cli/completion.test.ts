import { execFile } from 'node:child_process';
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { describe, expect, it } from 'vitest';
import { optionsOf } from '../../packages/cli/src/options.js';
import { commands } from '../../packages/cli/src/table.js';
import { freshCommand } from './support/command.js';

const command = freshCommand();
const shell = promisify(execFile);
const script = async (name: string): Promise<string> => (await command.run(['completion', name])).stdout;

describe('completion', () => {
  it('for every shell names every command and option', async () => {
    for (const name of ['bash', 'zsh', 'fish']) {
      const text = await script(name);
      for (const entry of commands) {
        expect(text).toContain(entry.name);
        for (const option of optionsOf(entry)) expect(text).toContain(option.name);
      }
    }
  });

  it('chooses the shell of the environment when none is named', async () => {
    const { stdout } = await command.run(['completion'], { env: { SHELL: '/usr/bin/fish' } });
    expect(stdout).toBe(await script('fish'));
  });

  const completed = async (...words: string[]): Promise<string[]> => {
    const path = join(await command.directory(), 'completion.bash');
    await writeFile(path, await script('bash'));
    await shell('bash', ['-n', path]);
    const ask = `source "$0"; COMP_WORDS=("$@"); COMP_CWORD=$(($# - 1)); _selvage; printf '%s\\n' "\${COMPREPLY[@]}"`;
    const { stdout } = await shell('bash', ['-c', ask, path, 'selvage', ...words]);
    return stdout.split('\n').filter((line) => line !== '');
  };

  it.each([
    { words: ['rep'], answer: ['report'] },
    { words: ['report', '--form'], answer: ['--format'] },
    { words: ['report', '--format', 'm'], answer: ['markdown'] },
    { words: ['report', 'des'], answer: [] },
    { words: ['report', '--out', 'x'], answer: [] },
    { words: ['data', 'f'], answer: ['fibres', 'fabrics'] },
    { words: ['examples', 'bi'], answer: ['bimetal-curvature'] },
    { words: ['examples', 'sa'], answer: ['sandwich'] },
  ])('in bash turns $words into $answer', async ({ words, answer }) => {
    expect(await completed(...words)).toEqual(answer);
  });

  it.each(['zsh', 'fish'])('for %s passes the syntax check of that shell, where it is installed', async (name) => {
    const path = join(await command.directory(), 'script');
    await writeFile(path, await script(name));
    const found = await shell(name, ['-c', 'true']).catch(() => undefined);
    if (found !== undefined) await shell(name, ['-n', path]);
  });
});
