import type { Problem } from '@selvage/core';
import type { ExitCode } from './exit.js';

/** Ends the run: the exit status, what standard error says, and the problems of the input if there are any. */
export class Stop extends Error {
  readonly exitCode: ExitCode;
  readonly problems: readonly Problem[];
  constructor(exitCode: ExitCode, message: string, problems: readonly Problem[] = []) {
    super(message);
    this.name = 'Stop';
    this.exitCode = exitCode;
    this.problems = problems;
  }
}

/** The code of a system error such as `ENOENT`, or undefined for anything else. */
export function systemCode(thrown: unknown): string | undefined {
  return thrown instanceof Error && 'code' in thrown && typeof thrown.code === 'string' ? thrown.code : undefined;
}

const reasons: Readonly<Record<string, string>> = {
  ENOENT: 'no such file or directory',
  ENOTDIR: 'a part of the path is not a directory',
  EISDIR: 'it is a directory',
  EACCES: 'permission denied',
  EPERM: 'operation not permitted',
  EEXIST: 'it exists already',
  ENOSPC: 'no space left on the device',
  EROFS: 'the file system is read-only',
  EMFILE: 'too many open files',
  ENAMETOOLONG: 'the name is too long',
  ELOOP: 'too many symbolic links',
};

/** Why a file could not be read or written, in words; undefined when the error does not come from the system. */
export function systemReason(thrown: unknown): string | undefined {
  const code = systemCode(thrown);
  return code === undefined ? undefined : (reasons[code] ?? code);
}
