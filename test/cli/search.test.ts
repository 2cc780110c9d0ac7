import { readdir, readFile, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { oneAim, severalAims, stitched, withSearch } from '../core/study/search/designs.js';
import { freshCommand } from './support/command.js';

/** Enough laminates for an interrupt to come in time. */
const large =
  withSearch(`  stack: { laminate: skin, materials: [ud, stiff], angles: [0, 30, -30, 45, -45, 90], plies: 10 }
  minimise: [laminates.skin.arealMass]
  maximise: [loads.pull.failure.tsaiWu.ratio, loads.pull.failure.hashin.ratio]
  method: exhaustive
`);
const bred = `${stitched}  method: nsga2\n  population: 12\n  generations: 6\n`;

describe('selvage search', () => {
  const command = freshCommand();
  const withDesign = async (text: string) => {
    const cwd = await command.directory();
    await writeFile(join(cwd, 'design.yaml'), text);
    const search = (...args: string[]) => command.run(['search', 'design.yaml', ...args], { cwd });
    const json = async (...args: string[]) => (await search(...args, '--format', 'json')).stdout;
    return { cwd, search, json };
  };

  it('shows the front, with a figure for two aims, in every format', async () => {
    const { search, cwd } = await withDesign(severalAims.replace(', laminates.skin.inPlane.Gxy]', ']'));
    for (const format of ['text', 'markdown', 'csv', 'json']) {
      const { code, stdout, stderr } = await search('--format', format);
      expect([code, stderr]).toEqual([0, '']);
      expect(stdout).toContain('0c/90c');
    }
    expect((await search('--out', 'found.html')).code).toBe(0);
    const page = await readFile(join(cwd, 'found.html'), 'utf8');
    expect(page).toContain('<svg');
    expect(page).toContain('the design as written');
  });

  it('ends with 1 where no candidate keeps to the limits, and shows the closest', async () => {
    const { search } = await withDesign(severalAims.replace('12 GPa', '450 GPa'));
    const { code, stdout, stderr } = await search();
    expect(code).toBe(1);
    expect(stderr).toBe('selvage: no candidate keeps to all limits\n');
    expect(stdout).toContain('misses laminates.skin.inPlane.Ey');
  });

  it('points into the file at what is wrong', async () => {
    const { search } = await withDesign(severalAims.replace('angles: [0, 45', 'angels: [0, 45'));
    const { code, stderr } = await search();
    expect(code).toBe(65);
    expect(stderr).toMatch(/design\.yaml:\d+:\d+: error\[unknown-key\].*angels/);
    expect(stderr).toContain('^^^^^^');
  });

  it('refuses ways to begin that do not go together', async () => {
    const { search } = await withDesign(oneAim);
    expect((await search('--shard', '1/2', '--resume', 'a.json')).code).toBe(64);
    expect((await search('--shard', '3/2')).code).toBe(64);
    expect((await search('other.json')).code).toBe(64);
    expect((await search('--workers', '0')).code).toBe(64);
  });

  it.each([
    ['laminates', severalAims],
    ['whole designs', stitched],
    ['a breeding', bred],
  ])('gives the same bits with one worker and two: %s', async (_, text) => {
    const { json } = await withDesign(text);
    const one = await json('--workers', '1');
    expect(JSON.parse(one).complete).toBe(true);
    expect(await json('--workers', '2')).toBe(one);
  });

  it('gives the same bits where threads take large pieces and this one small ones', async () => {
    const { json } = await withDesign(large);
    const share = ['--shard', '1/200000'];
    const one = await json(...share, '--workers', '1');
    expect(JSON.parse(one).evaluated).toBeGreaterThan(300_000);
    for (const workers of ['2', '4']) expect(await json(...share, '--workers', workers)).toBe(one);
  }, 60_000);

  it.each([
    ['cannot start', "throw new Error('no room for a thread');", 'no room for a thread'],
    ['ends by itself', 'process.exit(3);', 'a worker of the search has ended before its work was done'],
    [
      'fails at its work',
      `import { parentPort } from 'node:worker_threads';
      parentPort.on('message', ({ id, method }) =>
        parentPort.postMessage({ id, result: true, error: method === 'perform' ? { message: 'out of laminates' } : null }));
      parentPort.postMessage('ready');`,
      'out of laminates',
    ],
  ])('ends with 70 and no result when a worker %s', async (_, script, message) => {
    const { search } = await withDesign(large);
    const path = join(dirname(command.path()), 'search-worker.mjs');
    const whole = await readFile(path, 'utf8');
    await writeFile(path, script);
    try {
      const { code, stdout, stderr } = await search('--workers', '2', '--shard', '1/2000');
      expect([code, stdout]).toEqual([70, '']);
      expect(stderr).toContain(`internal error: ${message}`);
    } finally {
      await writeFile(path, whole);
    }
  });

  it('needs no other thread for one worker', async () => {
    const { search } = await withDesign(severalAims);
    const path = join(dirname(command.path()), 'search-worker.mjs');
    const whole = await readFile(path, 'utf8');
    await writeFile(path, 'process.exit(3);');
    try {
      expect(await search('--workers', '1')).toMatchObject({ code: 0, stderr: '' });
    } finally {
      await writeFile(path, whole);
    }
  });

  it('gives the same bits from five shares, put together in any order', async () => {
    const { json, search, cwd } = await withDesign(severalAims);
    for (const k of [1, 2, 3, 4, 5]) await writeFile(join(cwd, `${k}.json`), await json('--shard', `${k}/5`));
    expect(await json('--merge', '3.json', '1.json', '5.json', '2.json', '4.json')).toBe(await json());
    const again = await search('--merge', '3.json', '3.json');
    expect(again.code).toBe(65);
    expect(again.stderr).toContain('in two of the results');
    await writeFile(join(cwd, 'design.yaml'), severalAims.replace('12 GPa', '13 GPa'));
    expect((await search('--merge', '1.json')).stderr).toContain('that of another design');
    await writeFile(join(cwd, 'odd.json'), '{}');
    expect((await search('--merge', 'odd.json')).code).toBe(65);
    await writeFile(join(cwd, 'odd.json'), 'format: 1');
    expect((await search('--merge', 'odd.json')).code).toBe(65);
    expect((await search('--merge', 'none.json')).code).toBe(66);
  });

  it('ends with 65 where shares are missing, shows what there is, and goes through the rest', async () => {
    const { json, search, cwd } = await withDesign(severalAims);
    for (const k of [1, 3]) await writeFile(join(cwd, `${k}.json`), await json('--shard', `${k}/3`));
    const { code, stdout, stderr } = await search('--merge', '1.json', '3.json');
    expect(code).toBe(65);
    expect(stderr).toBe(
      'selvage: the search is not complete: 75 of 112 candidates gone through; missing: share 2/3 (candidates 39 to 75)\n',
    );
    expect(stdout).toMatch(/Method +not complete/);
    await writeFile(join(cwd, 'gaps.json'), await json('--merge', '1.json', '3.json'));
    expect(await json('--resume', 'gaps.json')).toBe(await json());
    expect((await search('--shard', '2/3')).stdout).toMatch(/Method +only share 2 of 3/);
  });

  it('has no shares of a breeding, but joins its seeds', async () => {
    const { json, search, cwd } = await withDesign(bred);
    const refused = await search('--shard', '1/2');
    expect(refused.code).toBe(65);
    expect(refused.stderr).toContain('several seeds');
    for (const seed of ['1', '2']) await writeFile(join(cwd, `${seed}.json`), await json('--seed', seed));
    expect(JSON.parse(await json('--merge', '1.json', '2.json')).state.seeds).toEqual([1, 2]);
  });

  it('writes candidates that differ from the file in what was searched alone', async () => {
    const text = severalAims
      .replace('plies: [2, 3]', 'plies: 2')
      .replace('maximise: [laminates.skin.flexural.Ex, laminates.skin.inPlane.Gxy]', 'keep: 1');
    const { search, cwd } = await withDesign(text);
    expect((await search('--write', 'found')).stderr).toBe('wrote 1 candidate into found\n');
    const lines = (await readFile(join(cwd, 'found/candidate-1.yaml'), 'utf8')).split('\n');
    const differing = text.split('\n').flatMap((line, i) => (line === lines[i] ? [] : [line]));
    expect(differing).toEqual([expect.stringContaining('# the beginning')]);
  });

  it('writes candidates as design files that the report takes, all or none', async () => {
    const { search, cwd } = await withDesign(severalAims);
    expect((await search('--write', 'found')).stderr).toBe('wrote 4 candidates into found\n');
    const names = await readdir(join(cwd, 'found'));
    expect(names.sort()).toEqual([1, 2, 3, 4].map((k) => `candidate-${k}.yaml`));
    for (const name of names) {
      expect((await command.run(['report', join('found', name), '--summary'], { cwd })).code).toBe(0);
    }
    const again = await search('--write', 'found');
    expect([again.code, again.stdout]).toEqual([74, '']);
    await writeFile(join(cwd, 'file'), '');
    expect((await search('--write', 'file')).code).toBe(74);
  });

  it.each([1, 2])(
    'writes what it has found when interrupted, and goes on from it: %i workers',
    async (workers) => {
      const { cwd, search } = await withDesign(large);
      const part = join(cwd, 'part.json');
      const args = ['search', 'design.yaml', '--workers', String(workers), '--out', 'part.json', '--shard', '1/2000'];
      /** Lets it work for a while, then interrupts it. */
      const interrupted = (wait: number) =>
        new Promise<{ code: number | null; said: string }>((resolve) => {
          const child = command.start(args, { cwd });
          let said = '';
          child.stderr?.setEncoding('utf8').on('data', (text: string) => {
            said += text;
          });
          child.on('close', (code) => resolve({ code, said }));
          setTimeout(() => child.kill('SIGINT'), wait);
        });
      const evaluated = async (): Promise<number> => JSON.parse(await readFile(part, 'utf8')).evaluated;
      // On a busy machine it may be interrupted before it has begun.
      let [ending, wait] = [await interrupted(1500), 1500];
      while (wait < 20_000 && (ending.code !== 130 || (await evaluated()) === 0)) {
        wait *= 2;
        ending = await interrupted(wait);
      }
      expect(ending.code).toBe(130);
      expect(ending.said).toContain('--resume goes on from this result');
      const found = JSON.parse(await readFile(part, 'utf8'));
      expect(found.complete).toBe(false);
      expect(found.evaluated).toBeGreaterThan(0);
      expect(found.state.done).toEqual([{ from: 0, to: found.evaluated }]);

      // A share that the interrupted run has nearly gone through: what is left is done by the resumed one.
      const to = found.evaluated + 5000;
      await writeFile(part, JSON.stringify({ ...found, state: { ...found.state, share: { from: 0, to } } }));
      const resumed = await search('--resume', 'part.json', '--format', 'json');
      expect(resumed.code).toBe(0);
      const after = JSON.parse(resumed.stdout);
      expect([after.complete, after.evaluated, after.state.done]).toEqual([true, to, [{ from: 0, to }]]);
    },
    120_000,
  );
});
