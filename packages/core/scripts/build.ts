/**
 * Builds dist: one ESM bundle and the type declarations. The reference data and the few units of mathjs that are used go into the bundle
 * (importing all of mathjs takes a second); the other libraries stay outside.
 */
import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const root = fileURLToPath(new URL('..', import.meta.url));

await build({
  absWorkingDir: root,
  entryPoints: ['src/index.ts'],
  outfile: 'dist/index.js',
  bundle: true,
  format: 'esm',
  platform: 'neutral',
  mainFields: ['module', 'main'],
  target: 'es2022',
  external: ['yaml', 'zod', 'zod/*', 'd3-scale', 'd3-shape', 'fastest-levenshtein', 'ml-matrix'],
  sourcemap: true,
  logLevel: 'warning',
});
execFileSync('tsc', ['-p', 'tsconfig.build.json'], {
  cwd: root,
  stdio: 'inherit',
  shell: process.platform === 'win32',
});
