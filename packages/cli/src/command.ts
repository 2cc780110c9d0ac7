import type { ExitCode } from './exit.js';

/** An option of a command; without `value` it is a flag. */
export interface Option {
  /** Long name without dashes. */
  readonly name: string;
  /** One letter. */
  readonly short?: string;
  /** The placeholder of its value in the help. */
  readonly value?: string;
  readonly choices?: readonly string[];
  /** May be given several times. */
  readonly repeated?: boolean;
  readonly summary: string;
}

/** An argument that is known by its position. */
export interface Positional {
  readonly name: string;
  readonly summary: string;
  readonly optional?: boolean;
  /** May be given several times; only the last one of a command. */
  readonly repeated?: boolean;
  readonly choices?: readonly string[];
  /** What a shell completes it with. */
  readonly completes?: 'file' | 'directory' | 'example';
}

/** What the command line gives to a command, checked against its table entry. */
export interface Given {
  readonly command: Command;
  readonly positionals: readonly string[];
  readonly flags: ReadonlySet<string>;
  readonly values: ReadonlyMap<string, string>;
  /** Every value of an option that may be given several times, in their order. */
  readonly lists: ReadonlyMap<string, readonly string[]>;
}

/** Runs a command, given also the table of all commands; the answer is the exit status. */
export type Run = (given: Given, commands: readonly Command[]) => Promise<ExitCode>;

/** One row of the table from which parsing, help and completion are made. */
export interface Command {
  readonly name: string;
  readonly summary: string;
  /** Each with the program's name, as one would type it. */
  readonly examples: readonly string[];
  readonly positionals: readonly Positional[];
  readonly options: readonly Option[];
  /** Loads the code of the command, and with it what it computes with. */
  readonly load: () => Promise<{ readonly run: Run }>;
}
