import { rmSync } from 'node:fs';
import { type FileHandle, mkdir, open, realpath, rename, stat } from 'node:fs/promises';
import { basename, dirname, join, resolve } from 'node:path';
import { exit } from './exit.js';
import { Stop, systemCode, systemReason } from './stop.js';

/**
 * Writes a file whole or not at all: beside it under another name, then renamed over it. What stood there keeps its
 * permissions, or stays as it was when the writing fails. Devices and pipes are written to directly.
 *
 * @throws Stop 74 when it cannot be written
 */
export async function writeWhole(path: string, text: string): Promise<void> {
  await explained(path, async () => {
    const target = await realpath(path).catch(() => path);
    const old = await stat(target).catch(() => undefined);
    if (old !== undefined && !old.isFile()) return overwrite(target, text);
    const beside = join(dirname(target), `.${basename(target)}.${process.pid}.part`);
    await writeNew(beside, text, old?.mode);
    await rename(beside, target).catch((error: unknown) => {
      rmSync(beside, { force: true });
      throw error;
    });
  });
}

/** Makes a directory and those above it, from the top down: Node's own recursive way never ends below /proc. */
async function makeDirectory(path: string): Promise<void> {
  if ((await stat(path).catch(() => undefined))?.isDirectory()) return;
  if (dirname(path) !== path) await makeDirectory(dirname(path));
  await mkdir(path);
}

/**
 * Writes a file that must not exist yet, and the directories that lead to it.
 *
 * @throws Stop 74 when it exists or cannot be written
 */
export async function createWhole(path: string, text: string): Promise<void> {
  await explained(path, async () => {
    await makeDirectory(dirname(path)).catch((error: unknown) => {
      if (systemCode(error) !== 'EEXIST') throw error;
      throw new Stop(exit.cannotWrite, `cannot write \`${path}\`: \`${dirname(path)}\` is not a directory`);
    });
    await writeNew(path, text);
  });
}

/**
 * Stops before anything is written when an output is the input itself, by whatever name or link, or when two outputs are one file.
 *
 * @throws Stop 64
 */
export async function demandSeparate(input: string, outputs: readonly string[]): Promise<void> {
  const place = async (path: string): Promise<string> => realpath(path).catch(() => resolve(path));
  const taken = new Map(input === '-' ? [] : [[await place(input), 'the design that is read']]);
  for (const path of outputs) {
    const target = await place(path);
    const file = await stat(target).catch(() => undefined);
    if (file !== undefined && !file.isFile()) continue;
    const holder = taken.get(target);
    if (holder !== undefined) throw new Stop(exit.usage, `\`${path}\` is ${holder}; nothing was written`);
    taken.set(target, 'already the file of another output');
  }
}

async function explained(path: string, write: () => Promise<void>): Promise<void> {
  try {
    await write();
  } catch (error) {
    const reason = systemCode(error) === 'ENOENT' ? 'there is no such directory' : systemReason(error);
    if (reason === undefined) throw error;
    throw new Stop(exit.cannotWrite, `cannot write \`${path}\`: ${reason}`);
  }
}

async function overwrite(path: string, text: string): Promise<void> {
  const file = await open(path, 'w');
  try {
    await file.writeFile(text);
  } finally {
    await file.close();
  }
}

/** Creates the file and brings it to the disk; nothing is left of it when that fails or is interrupted. */
async function writeNew(path: string, text: string, mode?: number): Promise<void> {
  const file = await open(path, 'wx');
  const interrupted = () => {
    rmSync(path, { force: true });
    process.exit(exit.interrupted);
  };
  process.once('SIGINT', interrupted);
  process.once('SIGTERM', interrupted);
  try {
    await fill(file, text, mode);
  } catch (error) {
    rmSync(path, { force: true });
    throw error;
  } finally {
    process.off('SIGINT', interrupted);
    process.off('SIGTERM', interrupted);
  }
}

async function fill(file: FileHandle, text: string, mode: number | undefined): Promise<void> {
  try {
    if (mode !== undefined) await file.chmod(mode & 0o7777);
    await file.writeFile(text);
    await file.sync();
  } finally {
    await file.close();
  }
}
