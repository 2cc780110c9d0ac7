import type { TargetResult } from '../../design/index.js';
import { formatQuantity, type UnitSystem } from '../../quantity/index.js';

/** The limits of a target: "2.5 mm to 2.9 mm", "at most 20 min". */
export function limitWords(
  { kind, atLeast, atMost }: Pick<TargetResult, 'kind' | 'atLeast' | 'atMost'>,
  units: UnitSystem,
): string {
  const show = (value: number): string => formatQuantity(value, kind, { units });
  if (atLeast !== undefined && atMost !== undefined) return `${show(atLeast)} to ${show(atMost)}`;
  return atLeast !== undefined ? `at least ${show(atLeast)}` : `at most ${show(atMost ?? 0)}`;
}

export function verdictWords({ met, hard }: Pick<TargetResult, 'met' | 'hard'>): string {
  if (met) return 'met';
  return hard ? 'NOT MET' : 'not met (soft)';
}
