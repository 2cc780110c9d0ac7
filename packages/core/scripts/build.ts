/**
 * Builds dist: `index.js`, one ESM bundle with the reference data and the few units of mathjs that are used (importing all of mathjs takes a
 * second), the other libraries outside; `browser.js`, the same with every library inside, so that a page can import it as it is; the type
 * declarations; the licences of what is inside.
 */
import { execFileSync } from 'node:child_process';
import { rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type BuildOptions, build } from 'esbuild';
import { bundledLicences } from './bundled-licences.js';

const root = fileURLToPath(new URL('..', import.meta.url));

const common = {
  absWorkingDir: root,
  entryPoints: ['src/index.ts'],
  bundle: true,
  format: 'esm',
  platform: 'neutral',
  mainFields: ['module', 'main'],
  target: 'es2022',
  legalComments: 'none',
  metafile: true,
  logLevel: 'warning',
} as const satisfies BuildOptions;

// What a renamed source has left behind would be packed.
rmSync(join(root, 'dist'), { recursive: true, force: true });
await build({
  ...common,
  outfile: 'dist/index.js',
  external: ['yaml', 'zod', 'zod/*', 'd3-scale', 'd3-shape', 'fastest-levenshtein', 'ml-matrix'],
});
const { metafile } = await build({ ...common, outfile: 'dist/browser.js', minify: true });
writeFileSync(join(root, 'dist/third-party-licences.txt'), bundledLicences(metafile, root));
execFileSync('tsc', ['-p', 'tsconfig.build.json'], {
  cwd: root,
  stdio: 'inherit',
  shell: process.platform === 'win32',
});
