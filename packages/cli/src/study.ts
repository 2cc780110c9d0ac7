import { type DesignInputs, designInputs, renderProblems, SelvageError, type UnitSystem } from '@selvage/core';
import type { Given } from './command.js';
import { exit } from './exit.js';
import { type Input, readInput } from './input.js';
import { demandSeparate } from './output.js';
import { formatOf, unitsOf } from './presentation.js';
import { Stop } from './stop.js';
import { coloured } from './terminal.js';
import { usageStop } from './usage.js';

/** A design file opened for a study. */
export interface Opened {
  readonly input: Input;
  readonly inputs: DesignInputs;
}

/**
 * Runs what works on a design file; its problems end the command.
 * @throws Stop 65 with every problem, each with its place
 */
export function studied<T>(name: string, given: Given, run: () => T): T {
  try {
    return run();
  } catch (error) {
    if (!(error instanceof SelvageError)) throw error;
    const options = { fileName: name, colour: coloured(process.stderr, given.flags) };
    throw new Stop(exit.badData, renderProblems(error.problems, options), error.problems);
  }
}

/** The design file of a name, parsed. @throws Stop 65, 66 */
export async function openDesign(name: string, given: Given): Promise<Opened> {
  const input = await readInput(name, given.command);
  return { input, inputs: inputsOf(input, given) };
}

/** The inputs of a design file that was read. @throws Stop 65 */
export const inputsOf = ({ name, bytes }: Input, given: Given): DesignInputs =>
  studied(name, given, () => designInputs(bytes, { fileName: name }));

/**
 * The quantities asked for, or those of the design's targets.
 * @throws Stop 64 neither
 */
function quantitiesOf(given: Given, { inputs }: Opened): readonly string[] {
  const asked = given.lists.get('quantity') ?? [];
  const found = asked.length > 0 ? asked : (inputs.design.targets ?? []).map(({ quantity }) => quantity);
  if (found.length === 0) {
    throw usageStop('the design has no targets: name what to look at by `--quantity`', given.command);
  }
  return [...new Set(found)];
}

/**
 * A whole number given by an option.
 * @throws Stop 64 for anything else, or outside the range
 */
export function wholeOf(
  given: Given,
  name: string,
  otherwise: number,
  [low, high] = [0, Number.MAX_SAFE_INTEGER],
): number {
  const text = given.values.get(name);
  if (text === undefined) return otherwise;
  const value = /^\d+$/.test(text) ? Number(text) : Number.NaN;
  if (value >= low && value <= high) return value;
  throw usageStop(`\`--${name}\` is ${text}, must be a whole number from ${low} to ${high}`, given.command);
}

/** What a command that studies one design begins with. */
export interface Study extends Opened {
  readonly quantities: readonly string[];
  readonly units: UnitSystem;
}

/**
 * Opens the design that a study is made of, its output kept apart from it.
 * @throws Stop 64, 65, 66
 */
export async function beginStudy(given: Given): Promise<Study> {
  formatOf(given);
  const [file = '-'] = given.positionals;
  const out = given.values.get('out');
  await demandSeparate(file, out === undefined || out === '-' ? [] : [out]);
  const opened = await openDesign(file, given);
  const units = unitsOf(given).units ?? opened.inputs.design.units ?? 'metric';
  return { ...opened, quantities: quantitiesOf(given, opened), units };
}
