import { assemble, type Model, readDesignBytes } from '@selvage/core';
import type { Given } from './command.js';
import { type Input, readInput } from './input.js';
import { studied } from './study.js';

/**
 * Computes something from an input.
 *
 * @throws Stop 65 with every problem of the input, each with its place
 */
export function fromInput<T>(input: Input, given: Given, compute: (model: Model) => T): T {
  return studied(input.name, given, () => compute(assemble(readDesignBytes(input.bytes, { fileName: input.name }))));
}

/** The design that the command line names. */
export function readDesignInput(given: Given): Promise<Input> {
  return readInput(given.positionals[0] ?? '-', given.command);
}
