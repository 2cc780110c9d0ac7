import { execFile } from 'node:child_process';
import { chmod, rm, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { type BuildOptions, build, type Metafile } from 'esbuild';
import { bundledLicences } from '../../core/scripts/bundled-licences.js';

const here = dirname(dirname(fileURLToPath(import.meta.url)));

const common = {
  absWorkingDir: here,
  bundle: true,
  minify: true,
  platform: 'node',
  target: 'node20',
  conditions: ['@selvage/source'],
  metafile: true,
  logLevel: 'warning',
} as const satisfies BuildOptions;

/** CommonJS parts inside the bundle call `require` for modules of Node; the name must not meet one of theirs. */
const banner =
  "import { createRequire as selvageCreateRequire } from 'node:module'; const require = selvageCreateRequire(import.meta.url);";

/**
 * Bundles the command into `outdir`: `selvage.mjs` and the parts it loads when it needs them, and the core, from its
 * sources, as `core.cjs` with its compiled code in `core.cache`; beside them the licences of the packages inside. The
 * answer, also written to `meta.json`, says which input went into which part.
 */
export async function bundle(outdir: string): Promise<Metafile> {
  await rm(outdir, { recursive: true, force: true });
  const command = await build({
    ...common,
    entryPoints: { selvage: 'src/selvage.ts', 'search-worker': 'src/search-worker.ts' },
    outdir,
    outExtension: { '.js': '.mjs' },
    chunkNames: 'part-[hash]',
    splitting: true,
    format: 'esm',
    alias: { '@selvage/core': './scripts/cached-core.cjs', 'string-width': './scripts/character-count.ts' },
    banner: { js: banner },
  });
  const core = await build({
    ...common,
    entryPoints: { core: '@selvage/core' },
    outdir,
    outExtension: { '.js': '.cjs' },
    format: 'cjs',
  });
  await chmod(join(outdir, 'selvage.mjs'), 0o755);
  // A process of its own, with no options of the one that builds: V8 refuses code that was compiled under others.
  await promisify(execFile)(process.execPath, ['scripts/warm-core.cjs', join(outdir, 'core.cjs')], {
    cwd: here,
    env: {},
  });
  const metafile: Metafile = {
    inputs: { ...command.metafile.inputs, ...core.metafile.inputs },
    outputs: { ...command.metafile.outputs, ...core.metafile.outputs },
  };
  await writeFile(join(outdir, 'meta.json'), JSON.stringify(metafile));
  await writeFile(join(outdir, 'third-party-licences.txt'), bundledLicences(metafile, here));
  return metafile;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) await bundle(join(here, 'dist'));
