import type { WorkedOptions } from '@selvage/core';
import type { Given } from './command.js';
import { unitsOf } from './presentation.js';
import { wholeOf } from './study.js';

const mostPlies = 100_000;

/**
 * Which steps of a working the command line asks for, and with how many digits.
 * @throws Stop 64 for numbers that cannot be
 */
export function workingOptions(given: Given): WorkedOptions {
  const [of, upto] = [given.values.get('of'), given.values.get('upto')];
  return {
    ...unitsOf(given),
    digits: wholeOf(given, 'digits', 4, [2, 15]),
    ...(of === undefined ? {} : { of }),
    ...(upto === undefined ? {} : { upto }),
    ...(given.values.has('ply') ? { ply: wholeOf(given, 'ply', 1, [1, mostPlies]) } : {}),
  };
}
