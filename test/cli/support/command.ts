import { type SpawnOptions, spawn } from 'node:child_process';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll } from 'vitest';
import { bundle } from '../../../packages/cli/scripts/build.js';

export interface Ending {
  readonly code: number | null;
  readonly signal: NodeJS.Signals | null;
  readonly stdout: string;
  readonly stderr: string;
}

export interface Circumstances {
  readonly cwd?: string;
  readonly stdin?: Uint8Array | string;
  readonly env?: Readonly<Record<string, string>>;
}

/** The command as it ships, built anew for the tests of one file, and an empty directory to work in. */
export function freshCommand() {
  let home = '';
  beforeAll(async () => {
    home = await mkdtemp(join(tmpdir(), 'selvage-'));
    await bundle(join(home, 'dist'));
  }, 60_000);
  afterAll(() => rm(home, { recursive: true, force: true }));

  const path = () => join(home, 'dist', 'selvage.mjs');
  const start = (args: readonly string[], { cwd, env }: Circumstances = {}, stdio: SpawnOptions['stdio'] = 'pipe') =>
    spawn(process.execPath, [path(), ...args], {
      cwd: cwd ?? home,
      // Nothing of the developer's own surroundings: no NO_COLOR, no SHELL, no language.
      env: { PATH: process.env.PATH ?? '', ...env },
      stdio,
    });

  return {
    path,
    start,
    directory: () => mkdtemp(join(home, 'work-')),
    run(args: readonly string[], circumstances: Circumstances = {}): Promise<Ending> {
      return new Promise((resolve, reject) => {
        const child = start(args, circumstances);
        let [stdout, stderr] = ['', ''];
        child.stdout?.setEncoding('utf8').on('data', (text: string) => {
          stdout += text;
        });
        child.stderr?.setEncoding('utf8').on('data', (text: string) => {
          stderr += text;
        });
        child.on('error', reject);
        child.on('close', (code, signal) => resolve({ code, signal, stdout, stderr }));
        child.stdin?.on('error', () => undefined).end(circumstances.stdin ?? '');
      });
    },
  };
}
