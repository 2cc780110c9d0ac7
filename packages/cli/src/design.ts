import { assemble, type Model, readDesignBytes, renderProblems, SelvageError } from '@selvage/core';
import type { Given } from './command.js';
import { exit } from './exit.js';
import { type Input, readInput } from './input.js';
import { Stop } from './stop.js';
import { coloured } from './terminal.js';

/**
 * Computes something from an input.
 *
 * @throws Stop 65 with every problem of the input, each with its place
 */
export function fromInput<T>(input: Input, given: Given, compute: (model: Model) => T): T {
  try {
    return compute(assemble(readDesignBytes(input.bytes, { fileName: input.name })));
  } catch (error) {
    if (!(error instanceof SelvageError)) throw error;
    const options = { fileName: input.name, colour: coloured(process.stderr, given.flags) };
    throw new Stop(exit.badData, renderProblems(error.problems, options), error.problems);
  }
}

/** The design that the command line names. */
export function readDesignInput(given: Given): Promise<Input> {
  return readInput(given.positionals[0] ?? '-', given.command);
}
