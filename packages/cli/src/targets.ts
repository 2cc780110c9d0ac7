import type { Report } from '@selvage/core';
import { type ExitCode, exit } from './exit.js';
import { stderrText } from './terminal.js';

interface Target {
  readonly quantity: string;
  readonly met: boolean;
  readonly hard: boolean;
}

const isTarget = (value: unknown): value is Target =>
  typeof value === 'object' && value !== null && 'quantity' in value && 'met' in value && 'hard' in value;

/** The exit status of a finished report: 1 when a hard target of the design is missed, which standard error then names. */
export async function judgeTargets(report: Pick<Report, 'data'>): Promise<ExitCode> {
  const targets: unknown = report.data.targets;
  if (!Array.isArray(targets)) return exit.fine;
  const missed = targets.filter(isTarget).filter(({ met, hard }) => hard && !met);
  if (missed.length === 0) return exit.fine;
  const count = missed.length === 1 ? '1 target is' : `${missed.length} targets are`;
  await stderrText(`selvage: ${count} not met: ${missed.map(({ quantity }) => quantity).join(', ')}\n`);
  return exit.targetMissed;
}
