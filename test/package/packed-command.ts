import { readFile, writeFile } from 'node:fs/promises';
import { assemble, compute, designInputs, readDesign, render, search, searchReport } from '@selvage/core';
import { expect, it } from 'vitest';
import manifest from '../../packages/cli/package.json' with { type: 'json' };
import { severalAims } from '../core/study/search/designs.js';
import type { PackedProject } from './project.js';

export function packedCommand({ at, run }: PackedProject): void {
  const selvage = (...args: readonly string[]) => run('npx', 'selvage', ...args);

  it('says its version', async () => {
    expect(await selvage('--version')).toEqual({ code: 0, stdout: `${manifest.version}\n`, stderr: '' });
  });

  it('finds a good design good, and says of a bad one what is wrong, and where', async () => {
    expect(await selvage('check', 'examples/minimal.yaml')).toMatchObject({ code: 0 });
    const text = await readFile(at('examples/minimal.yaml'), 'utf8');
    await writeFile(at('bad.yaml'), text.replace('E2: 10.3 GPa', 'E2: 10.3'));
    const bad = await selvage('check', 'bad.yaml');
    const line = text.split('\n').findIndex((one) => one.includes('E2: 10.3 GPa')) + 1;
    expect(bad.code).toBe(65);
    expect(bad.stderr).toMatch(new RegExp(`^bad\\.yaml:${line}:\\d+: error\\[unit-missing\\]`));
  });

  it('reports a design with the numbers of the library', async () => {
    const file = 'examples/shingle-640-three-rows.yaml';
    const { code, stdout } = await selvage('report', file, '--format', 'json');
    expect(code).toBe(0);
    const { data } = compute(assemble(readDesign(await readFile(at(file), 'utf8'))));
    expect(JSON.parse(stdout).laminates).toEqual(JSON.parse(JSON.stringify(data.laminates)));
  });

  it('searches with workers, which are files of its own', async () => {
    await writeFile(at('search.yaml'), severalAims);
    const { code, stdout, stderr } = await selvage('search', 'search.yaml', '--workers', '2', '--format', 'json');
    expect(code, stderr).toBe(0);
    const alone = searchReport(search(designInputs(severalAims)));
    expect(JSON.parse(stdout).best).toEqual(JSON.parse(render(alone, 'json')).best);
  }, 120_000);
}
