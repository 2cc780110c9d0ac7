import { Parser } from 'yargs/helpers';
import type { Command, Given, Option, Positional } from './command.js';
import { optionsOf } from './options.js';
import { usageStop } from './usage.js';

/** Nothing is guessed: no numbers from words, no nesting from dots, no negation from `no-`, no groups of letters. */
const configuration = {
  'boolean-negation': false,
  'camel-case-expansion': false,
  'dot-notation': false,
  'parse-numbers': false,
  'parse-positional-numbers': false,
  'populate--': true,
  'short-option-groups': false,
  'strip-aliased': true,
  'unknown-options-as-args': true,
};

/**
 * The arguments after the command's name, read by its table entry.
 *
 * @throws Stop 64 for an option or a choice that is not known, a value that is missing, and arguments too many or too few
 */
export function parseArguments(command: Command, args: readonly string[]): Given {
  const options = optionsOf(command);
  const valued = options.filter((option) => option.value !== undefined);
  const { argv, error } = Parser.detailed([...args], {
    string: valued.map(({ name }) => name),
    narg: Object.fromEntries(valued.map(({ name }) => [name, 1])),
    boolean: options.filter((option) => option.value === undefined).map(({ name }) => name),
    alias: Object.fromEntries(options.flatMap(({ name, short }) => (short === undefined ? [] : [[name, [short]]]))),
    configuration,
  });
  const { _: loose, '--': literal, ...named } = argv;
  const positionals = loose.map(String);
  refuseUnknown(command, options, args, [...positionals, ...Object.keys(named).map((name) => asTyped(name, args))]);
  if (error !== null) throw missingValue(command, options, error.message);
  const values = new Map<string, string>();
  const lists = new Map<string, readonly string[]>();
  for (const option of valued) {
    const value: unknown = named[option.name];
    if (value === undefined) continue;
    if (option.repeated === true) {
      const all = Array.isArray(value) ? value : [value];
      lists.set(
        option.name,
        all.map((one) => oneValue(command, option, one)),
      );
    } else values.set(option.name, oneValue(command, option, value));
  }
  const all = [...positionals, ...(Array.isArray(literal) ? literal.map(String) : [])];
  checkPositionals(command, all);
  const flags = new Set(options.filter(({ name }) => named[name] === true).map(({ name }) => name));
  return { command, positionals: all, flags, values, lists };
}

const asTyped = (name: string, args: readonly string[]): string =>
  args.includes(`-${name}`) ? `-${name}` : `--${name}`;

function refuseUnknown(
  command: Command,
  options: readonly Option[],
  args: readonly string[],
  found: readonly string[],
): void {
  const known = options.map(({ name }) => `--${name}`);
  for (const word of found) {
    if (!word.startsWith('-') || word === '-' || known.includes(word)) continue;
    const name = word.split('=')[0] ?? word;
    throw usageStop(`unknown option \`${name}\``, command, { word: name, known });
  }
  const flagWithValue = options.find(
    ({ name, value }) => value === undefined && args.some((arg) => arg.startsWith(`--${name}=`)),
  );
  if (flagWithValue !== undefined) throw usageStop(`\`--${flagWithValue.name}\` takes no value`, command);
}

function missingValue(command: Command, options: readonly Option[], message: string) {
  const name = message.slice(message.lastIndexOf(' ') + 1);
  const option = options.find((candidate) => candidate.name === name || candidate.short === name);
  return option === undefined ? usageStop(message, command) : needsValue(command, option);
}

const needsValue = (command: Command, { name, value, choices }: Option) =>
  usageStop(`\`--${name}\` needs a value: ${choices?.join(', ') ?? value}`, command);

function oneValue(command: Command, option: Option, value: unknown): string {
  if (Array.isArray(value)) throw usageStop(`\`--${option.name}\` is given more than once`, command);
  if (typeof value !== 'string' || value === '') throw needsValue(command, option);
  checkChoice(command, `\`--${option.name}\``, option.choices, value);
  return value;
}

function checkChoice(command: Command, name: string, choices: readonly string[] | undefined, value: string) {
  if (choices === undefined || choices.includes(value)) return;
  const message = `${name} cannot be \`${value}\`, only one of ${choices.join(', ')}`;
  throw usageStop(message, command, { word: value, known: choices });
}

function checkPositionals(command: Command, given: readonly string[]): void {
  const known: readonly Positional[] = command.positionals;
  const missing = known.find((positional, i) => !positional.optional && given[i] === undefined);
  if (missing !== undefined) throw usageStop(`${missing.name} is missing: ${missing.summary}`, command);
  const extra = given[known.length];
  if (extra !== undefined && known.at(-1)?.repeated !== true) {
    throw usageStop(`\`${extra}\` is one argument too many`, command);
  }
  for (const [i, value] of given.entries()) {
    const positional = known[Math.min(i, known.length - 1)];
    if (positional !== undefined) checkChoice(command, positional.name, positional.choices, value);
  }
}
