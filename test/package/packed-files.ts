import { existsSync, statSync } from 'node:fs';
import { readdir, readFile } from 'node:fs/promises';
import { sep } from 'node:path';
import { expect, it } from 'vitest';
import type { PackedProject } from './project.js';

interface Manifest {
  readonly type: string;
  readonly sideEffects?: boolean;
  readonly license: string;
  readonly engines: { readonly node: string };
  readonly exports: Readonly<Record<string, string | Readonly<Record<string, string>>>>;
  readonly bin?: Readonly<Record<string, string>>;
  readonly dependencies?: Readonly<Record<string, string>>;
  readonly peerDependencies?: Readonly<Record<string, string>>;
  readonly optionalDependencies?: Readonly<Record<string, string>>;
}

export function packedFiles({ installed }: PackedProject): void {
  const read = (name: 'core' | 'cli', file: string) => readFile(installed(name, file), 'utf8');
  const manifestOf = async (name: 'core' | 'cli'): Promise<Manifest> => JSON.parse(await read(name, 'package.json'));

  /** Paths of the files of a package, those of other packages left out. */
  const filesOf = async (name: 'core' | 'cli'): Promise<string[]> => {
    const found = await readdir(installed(name), { recursive: true, withFileTypes: true });
    const folder = installed(name) + sep;
    return found
      .filter((entry) => entry.isFile())
      .map((entry) => `${entry.parentPath}${sep}${entry.name}`.slice(folder.length).replaceAll(sep, '/'));
  };

  it.each(['core', 'cli'] as const)(
    'of %s: what is built, a readme, licences, the manifest, and nothing else',
    async (name) => {
      const files = await filesOf(name);
      const root = files.filter((file) => !file.startsWith('dist/'));
      expect(root.sort()).toEqual(['LICENSE', 'README.md', 'package.json']);
      expect(files).toContain('dist/third-party-licences.txt');
      const foreign = files.filter((file) => !/^dist\/.*\.(js|mjs|cjs|d\.ts|txt)$/.test(file));
      expect(foreign.sort()).toEqual(root.sort());
    },
  );

  it.each(['core', 'cli'] as const)(
    'of %s: the manifest names only what is there, and nothing of the workspace',
    async (name) => {
      const manifest = await manifestOf(name);
      const targets = [...Object.values(manifest.exports), ...Object.values(manifest.bin ?? {})].flatMap((target) =>
        typeof target === 'string' ? [target] : Object.values(target),
      );
      expect(targets.filter((target) => !existsSync(installed(name, target)))).toEqual([]);
      const { dependencies, peerDependencies, optionalDependencies } = manifest;
      const needed = Object.entries({ ...dependencies, ...peerDependencies, ...optionalDependencies });
      expect(needed.filter(([other, range]) => other.startsWith('@selvage/') || range.includes(':'))).toEqual([]);
      expect(manifest).toMatchObject({ type: 'module', license: 'MIT', engines: { node: '>=20.19' } });
    },
  );

  it('of the core: no condition leads to sources, which are not packed', async () => {
    const { exports, sideEffects } = await manifestOf('core');
    const conditions = new Set(
      Object.values(exports).flatMap((one) => (typeof one === 'string' ? [] : Object.keys(one))),
    );
    expect([...conditions].sort()).toEqual(['default', 'types']);
    expect(Object.keys(exports)).toEqual(expect.arrayContaining(['.', './browser']));
    expect(sideEffects).toBe(false);
  });

  it('of the core: what the library imports is what the manifest names', async () => {
    const { dependencies = {} } = await manifestOf('core');
    const imported = [...(await read('core', 'dist/index.js')).matchAll(/^(?:import|export) [^;]*?from "([^"]+)";$/gm)];
    const packages = imported.map(([, from = '']) =>
      from
        .split('/')
        .slice(0, from.startsWith('@') ? 2 : 1)
        .join('/'),
    );
    expect([...new Set(packages)].sort()).toEqual(Object.keys(dependencies).sort());
  });

  it('of the core: the bundle for pages has everything inside, and the licences of it beside', async () => {
    const bundle = await read('core', 'dist/browser.js');
    expect(bundle).not.toMatch(/(?:^|[;}])import[\s{*"]|\bfrom"[^"]+";|\bimport\("/);
    const licences = await read('core', 'dist/third-party-licences.txt');
    for (const name of Object.keys((await manifestOf('core')).dependencies ?? {})) {
      expect(licences).toMatch(new RegExp(`^${name} [\\d.]+ \\(`, 'm'));
    }
  });

  it('of the command: it needs no other package, and can be run', async () => {
    const { dependencies, bin } = await manifestOf('cli');
    expect(dependencies).toBeUndefined();
    const file = installed('cli', bin?.selvage ?? '');
    expect(statSync(file).mode & 0o111).not.toBe(0);
    expect(await readFile(file, 'utf8')).toMatch(/^#!\/usr\/bin\/env node\n/);
  });
}
