import type { Command, Positional } from './command.js';
import { anyFormat, format, out, quotedUnits, units } from './options.js';

const design: Positional = { name: 'DESIGN', summary: 'the design file; - reads standard input', completes: 'file' };

/** Every command. */
export const commands: readonly Command[] = [
  {
    name: 'report',
    summary: 'the whole report of a design file',
    examples: [
      'selvage report rudder.yaml',
      'selvage report rudder.yaml --out rudder.html',
      'selvage report rudder.yaml --summary --watch',
      'selvage report - --format json < rudder.yaml',
    ],
    positionals: [design],
    options: [
      anyFormat,
      out,
      { name: 'html', value: 'FILE', summary: 'also write the whole report to FILE, as a page' },
      { name: 'summary', summary: 'only the figures that decide' },
      units,
      { name: 'watch', summary: 'recompute whenever the file is saved and show what changed' },
    ],
    load: () => import('./commands/report.js'),
  },
  {
    name: 'check',
    summary: 'says what is wrong in a design file, and where',
    examples: ['selvage check rudder.yaml', 'selvage check - < rudder.yaml'],
    positionals: [design],
    options: [format('text', 'json')],
    load: () => import('./commands/check.js'),
  },
  {
    name: 'data',
    summary: 'the library of materials and threads, with sources',
    examples: [
      'selvage data',
      'selvage data threads',
      'selvage data plies --format json',
      'selvage data --out library.csv',
    ],
    positionals: [
      {
        name: 'KIND',
        summary: 'only this kind',
        optional: true,
        choices: ['fibres', 'resins', 'cores', 'fabrics', 'plies', 'threads'],
      },
      { name: 'ID', summary: 'only this entry, with all that is known of it', optional: true },
    ],
    options: [anyFormat, out, quotedUnits],
    load: () => import('./commands/data.js'),
  },
  {
    name: 'examples',
    summary: 'published worked examples: published value, computed value, deviation, source',
    examples: ['selvage examples', 'selvage examples --format csv'],
    positionals: [{ name: 'ID', summary: 'only this example', optional: true }],
    options: [anyFormat, out, quotedUnits],
    load: () => import('./commands/examples.js'),
  },
  {
    name: 'init',
    summary: 'writes a commented starter design, design.yaml',
    examples: ['selvage init', 'selvage init rudder'],
    positionals: [
      {
        name: 'DIR',
        summary: 'the directory to write it in, made if there is none; the current one by default',
        optional: true,
        completes: 'directory',
      },
    ],
    options: [],
    load: () => import('./commands/init.js'),
  },
  {
    name: 'schema',
    summary: 'the JSON Schema of the design file, for editors',
    examples: ['selvage schema --out design.schema.json'],
    positionals: [],
    options: [{ ...out, summary: 'write to FILE, whole or not at all' }],
    load: () => import('./commands/schema.js'),
  },
  {
    name: 'completion',
    summary: 'a completion script for the shell',
    examples: [
      'source <(selvage completion bash)',
      'source <(selvage completion zsh)',
      'selvage completion fish > ~/.config/fish/completions/selvage.fish',
    ],
    positionals: [
      {
        name: 'SHELL',
        summary: 'by default the one named by SHELL in the environment',
        optional: true,
        choices: ['bash', 'zsh', 'fish'],
      },
    ],
    options: [],
    load: () => import('./commands/completion.js'),
  },
];
