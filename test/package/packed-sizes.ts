import { readFileSync, writeFileSync } from 'node:fs';
import { readFile, stat } from 'node:fs/promises';
import { gzipSync } from 'node:zlib';
import { transform } from 'esbuild';
import { afterAll, expect, it } from 'vitest';
import { inRoot } from '../docs/support/pages.js';
import type { PackedProject } from './project.js';

/* ceilings.json says what each size is and why there is a limit. UPDATE_CEILINGS=1 sets it anew, an eighth above what is measured. */
const file = inRoot('test/package/ceilings.json');
const update = (process.env.UPDATE_CEILINGS ?? '') !== '';

type Size = 'library' | 'browser' | 'core' | 'cli';

interface Ceilings {
  readonly why: string;
  readonly what: Readonly<Record<Size, string>>;
  readonly measured: Readonly<Record<Size, number>>;
  readonly ceiling: Readonly<Record<Size, number>>;
}

const roomAbove = (size: number): number => Math.ceil((size * 1.125) / 1000) * 1000;

export function packedSizes({ installed, tarball }: PackedProject): void {
  const compressed = (text: string): number => gzipSync(text, { level: 9 }).length;
  const read = (name: string): Promise<string> => readFile(installed('core', name), 'utf8');

  const sizes: Record<Size, () => Promise<number>> = {
    library: async () => compressed((await transform(await read('dist/index.js'), { minify: true })).code),
    browser: async () => compressed(await read('dist/browser.js')),
    core: async () => (await stat(tarball('core'))).size,
    cli: async () => (await stat(tarball('cli'))).size,
  };

  let ceilings: Ceilings = JSON.parse(readFileSync(file, 'utf8'));

  for (const [name, measure] of Object.entries(sizes) as [Size, () => Promise<number>][]) {
    it(`\`${name}\` is below its ceiling, and not so far below that the ceiling says nothing`, async () => {
      const size = await measure();
      if (update) {
        const { measured, ceiling } = ceilings;
        ceilings = {
          ...ceilings,
          measured: { ...measured, [name]: size },
          ceiling: { ...ceiling, [name]: roomAbove(size) },
        };
      }
      const limit = ceilings.ceiling[name];
      const said = `${ceilings.what[name]}: ${size} bytes, ceiling ${limit}, ${ceilings.measured[name]} when it was set`;
      expect(size, said).toBeLessThanOrEqual(limit);
      expect(size, said).toBeGreaterThan(0.7 * limit);
    });
  }
  if (update) afterAll(() => writeFileSync(file, `${JSON.stringify(ceilings, null, 2)}\n`));
}
