import { execFile } from 'node:child_process';
import { existsSync } from 'node:fs';
import { cp, mkdir, mkdtemp, readdir, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll } from 'vitest';
import manifest from '../../package.json' with { type: 'json' };
import { inRoot } from '../docs/support/pages.js';

export interface Ending {
  readonly code: number;
  readonly stdout: string;
  readonly stderr: string;
}

/** Nothing that the script of the workspace that runs the tests has left for its own children: where it stands, what it is called. */
const surroundings = Object.fromEntries(
  Object.entries(process.env).filter(([name]) => !/^npm_(?!config_)|^npm_config_local_prefix$|^INIT_CWD$/.test(name)),
);

function run(program: string, args: readonly string[], cwd: string): Promise<Ending> {
  return new Promise((resolve) => {
    execFile(program, args, { cwd, env: surroundings, maxBuffer: 1 << 26 }, (error, stdout, stderr) => {
      const code = error === null ? 0 : typeof error.code === 'number' ? error.code : 1;
      resolve({ code, stdout, stderr });
    });
  });
}

async function demand(program: string, args: readonly string[], cwd: string): Promise<void> {
  const { code, stdout, stderr } = await run(program, args, cwd);
  if (code !== 0) throw new Error(`${program} ${args.join(' ')} ended with ${code}\n${stdout}${stderr}`);
}

/**
 * Both packages packed as they are published and installed, once, into an empty project in a folder of its own, with docs/examples beside.
 * The libraries that the core needs come from the registry; where that cannot be reached, the tests fail.
 */
export function packedProject() {
  let home = '';
  const tarballs: Record<string, string> = {};
  const at = (...path: readonly string[]) => join(home, 'project', ...path);

  beforeAll(async () => {
    home = await mkdtemp(join(tmpdir(), 'selvage-packed-'));
    for (const name of ['core', 'cli']) {
      const folder = inRoot(`packages/${name}`);
      if (!existsSync(join(folder, 'dist'))) throw new Error('nothing is built: run `npm run build` first');
      const into = join(home, name);
      await demand('npx', ['--yes', manifest.packageManager, 'pack', '--pack-destination', into], folder);
      const [tarball = ''] = await readdir(into);
      tarballs[name] = join(into, tarball);
    }
    await mkdir(at());
    await writeFile(at('package.json'), JSON.stringify({ name: 'a-script', private: true, type: 'module' }));
    const quickly = ['--prefer-offline', '--ignore-scripts', '--no-audit', '--no-fund'];
    await demand('npm', ['install', ...quickly, ...Object.values(tarballs)], at());
    await cp(inRoot('docs/examples'), at('examples'), { recursive: true });
  }, 300_000);
  afterAll(() => rm(home, { recursive: true, force: true }));

  return {
    /** A path in the project. */
    at,
    /** A path in an installed package. */
    installed: (name: 'core' | 'cli', ...path: readonly string[]) => at('node_modules', '@selvage', name, ...path),
    tarball: (name: 'core' | 'cli') => tarballs[name] ?? '',
    node: (...args: readonly string[]) => run(process.execPath, args, at()),
    run: (program: string, ...args: readonly string[]) => run(program, args, at()),
  };
}

export type PackedProject = ReturnType<typeof packedProject>;
