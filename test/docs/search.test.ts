import { execFile, spawnSync } from 'node:child_process';
import { chmod, mkdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { describe, expect, it } from 'vitest';
import { freshCommand } from '../cli/support/command.js';
import { pageAt } from './support/pages.js';

const hasParallel = spawnSync('parallel', ['--version']).status === 0;

/** The scripts of the page are run as they stand, with the command in the path; of Slurm there is only what it sets in the environment. */
describe('the scripts of the page on searches', () => {
  const command = freshCommand();
  const { blocks } = pageAt('docs/guide/search.md');
  const design = blocks.find(({ language }) => language === 'yaml')?.text ?? '';
  const script = (pattern: RegExp): string =>
    blocks.find(({ language, text }) => language === 'sh' && pattern.test(text))?.text ?? 'exit 9';

  const surroundings = async () => {
    const cwd = await command.directory();
    await mkdir(join(cwd, 'bin'));
    await writeFile(join(cwd, 'skin.yaml'), design);
    await writeFile(join(cwd, 'bin/selvage'), `#!/bin/sh\nexec "${process.execPath}" "${command.path()}" "$@"\n`);
    await chmod(join(cwd, 'bin/selvage'), 0o755);
    const run = (text: string, env: Readonly<Record<string, string>> = {}) =>
      promisify(execFile)('bash', ['-e', '-c', text], {
        cwd,
        env: { PATH: `${join(cwd, 'bin')}:${process.env.PATH ?? ''}`, ...env },
      });
    const whole = async () => JSON.parse((await run('selvage search skin.yaml --format json')).stdout);
    return { run, whole, result: async (name: string) => JSON.parse(await readFile(join(cwd, name), 'utf8')) };
  };

  it('begin with a front that leaves a choice, as the page says', async () => {
    const { whole } = await surroundings();
    const { candidates, size } = await whole();
    expect([size.candidates, candidates.length]).toEqual([4368, 8]);
    expect(pageAt('docs/guide/search.md').text).toContain('Of the 4368 candidates of this search 8 are on the front');
  });

  it('go through all candidates in a loop of the shell', async () => {
    const { run, whole, result } = await surroundings();
    await run(script(/^for k/));
    expect(await result('found.json')).toEqual(await whole());
  });

  it.skipIf(!hasParallel)('go through all candidates by GNU parallel', async () => {
    const { run, whole, result } = await surroundings();
    await run(script(/^parallel/));
    expect(await result('found.json')).toEqual(await whole());
  });

  it('go through all candidates as an array of jobs', async () => {
    const { run, whole } = await surroundings();
    const job = script(/^#!\/bin\/bash\n#SBATCH/);
    const count = /--array=1-(\d+)/.exec(job)?.[1] ?? '';
    for (let k = 1; k <= Number(count); k++) {
      await run(job, { SLURM_ARRAY_TASK_ID: String(k), SLURM_ARRAY_TASK_COUNT: count });
    }
    expect(JSON.parse((await run('selvage search skin.yaml --merge part-*.json --format json')).stdout)).toEqual(
      await whole(),
    );
  });
});
