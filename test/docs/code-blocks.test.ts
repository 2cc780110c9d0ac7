import { execFile } from 'node:child_process';
import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { promisify } from 'node:util';
import { build } from 'esbuild';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { inRoot, pages } from './support/pages.js';

const blocks = pages.flatMap(({ path, blocks }) =>
  blocks
    .filter(({ language }) => language === 'ts')
    .map(({ text, line }) => ({ place: `${path}:${line}`, name: `${path.replace(/\W/g, '-')}-${line}`, text })),
);

const core = inRoot('packages/core/src/index.ts');

/** The settings of the workspace, for code that stands elsewhere. */
const settings = {
  extends: inRoot('tsconfig.json'),
  compilerOptions: { paths: { '@selvage/core': [core] }, typeRoots: [inRoot('node_modules/@types')] },
  include: ['*.ts'],
};

/** Every `ts` block of every page is a whole program: it is run, and it says by itself what must come out. */
describe('the code of the pages', () => {
  let folder = '';

  beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), 'selvage-docs-'));
    await mkdir(join(folder, 'source'));
    for (const { name, text } of blocks) await writeFile(join(folder, 'source', `${name}.ts`), text);
    await build({
      entryPoints: blocks.map(({ name }) => join(folder, 'source', `${name}.ts`)),
      outdir: join(folder, 'run'),
      outExtension: { '.js': '.mjs' },
      bundle: true,
      splitting: true,
      format: 'esm',
      platform: 'node',
      target: 'node20',
      conditions: ['@selvage/source'],
      alias: { '@selvage/core': core },
      logLevel: 'silent',
    });
  });
  afterAll(() => rm(folder, { recursive: true, force: true }));

  it.each(blocks.map(({ place, name }) => [place, name]))('%s runs', async (_, name) => {
    await import(/* @vite-ignore */ pathToFileURL(join(folder, 'run', `${name}.mjs`)).href);
  });

  it('has no type error under the settings of the workspace', async () => {
    await writeFile(join(folder, 'source', 'tsconfig.json'), JSON.stringify(settings));
    const compiler = createRequire(import.meta.url).resolve('typescript/lib/tsc.js');
    const checked = promisify(execFile)(process.execPath, [compiler, '-p', join(folder, 'source')]);
    const said = await checked.then(
      ({ stdout }) => stdout,
      (error: { readonly stdout: string }) => error.stdout,
    );
    expect(said).toBe('');
  }, 120_000);

  it('is there', () => {
    expect(blocks.length).toBeGreaterThan(0);
  });

  it('says what comes out, and writes nothing', () => {
    for (const { place, text } of blocks) {
      expect(text, place).toMatch(/throw new Error/);
      expect(text, place).not.toMatch(/\bconsole\./);
    }
  });
});
