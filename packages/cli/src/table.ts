import type { Command, Option, Positional } from './command.js';
import { anyFormat, format, out, quantity, quotedUnits, units, watch } from './options.js';

/** Which steps of a working are shown, and how. */
const ofWorking: readonly Option[] = [
  { name: 'ply', value: 'NUMBER', summary: 'of the plies only this one, counted from 1 at the tool side' },
  { name: 'upto', value: 'STEP', summary: 'end with this step, named by its rule or by a quantity that it gives' },
  { name: 'digits', value: 'NUMBER', summary: 'significant digits, 2 to 15; 4 by default' },
];

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
      watch,
    ],
    load: () => import('./commands/report.js'),
  },
  {
    name: 'worked',
    summary: 'the calculation of a design step by step: formula, numbers put in, result, source',
    examples: [
      'selvage worked rudder.yaml',
      'selvage worked rudder.yaml --of laminates.edge --upto stackSums',
      'selvage worked rudder.yaml --of loads.stroke --ply 2 --digits 6',
      'selvage worked rudder.yaml --out working.html',
      'selvage worked homework.yaml --check answers.yaml',
    ],
    positionals: [design],
    options: [
      {
        name: 'of',
        value: 'PART',
        summary:
          'one part: laminates.NAME, laminates.NAME.plies.2, loads.NAME, stitching.NAME, coupons.NAME, materials.NAME',
      },
      ...ofWorking,
      { name: 'check', value: 'FILE', summary: 'mark the answers of this file instead: right, a known slip, or wrong' },
      anyFormat,
      out,
      units,
    ],
    load: () => import('./commands/worked.js'),
  },
  {
    name: 'compare',
    summary: 'two or more designs side by side, the first as the baseline',
    examples: ['selvage compare plain.yaml stitched.yaml', 'selvage compare a.yaml b.yaml c.yaml --out compare.html'],
    positionals: [
      design,
      {
        name: 'OTHER',
        summary: 'designs that are held against it',
        repeated: true,
        completes: 'file',
      },
    ],
    options: [anyFormat, out, units, watch],
    load: () => import('./commands/compare.js'),
  },
  {
    name: 'sweep',
    summary: 'quantities of a design over one or two of its inputs',
    examples: [
      'selvage sweep rudder.yaml --vary "stitching.edge.pitch=2mm..8mm:13" --quantity stitching.edge.penetrationDensity',
      'selvage sweep rudder.yaml --vary materials.cloth.fibreVolumeFraction=0.4..0.6:5 --out sweep.csv',
    ],
    positionals: [design],
    options: [
      {
        name: 'vary',
        value: 'PATH=VALUES',
        repeated: true,
        summary: 'an input and its values, FROM..TO:COUNT or a list with commas; once or twice',
      },
      quantity,
      anyFormat,
      out,
      units,
    ],
    load: () => import('./commands/sweep.js'),
  },
  {
    name: 'search',
    summary: 'the best candidates of a design’s own search, within its limits',
    examples: [
      'selvage search rudder.yaml',
      'selvage search rudder.yaml --out found.html --write candidates',
      'selvage search rudder.yaml --shard 1/4 --out part-1.json',
      'selvage search rudder.yaml --merge part-*.json',
    ],
    positionals: [
      design,
      {
        name: 'RESULT',
        summary: 'further results that --merge puts together',
        optional: true,
        repeated: true,
        completes: 'file',
      },
    ],
    options: [
      { name: 'write', value: 'DIR', summary: 'write each candidate shown as a design file into DIR, all or none' },
      { name: 'workers', value: 'COUNT', summary: 'processor cores to use; all by default; the result is the same' },
      { name: 'shard', value: 'K/N', summary: 'only share K of N of the candidates, for several machines' },
      {
        name: 'merge',
        value: 'FILE',
        repeated: true,
        summary: 'put results together instead of searching: JSON reports of shares or of seeds',
      },
      { name: 'resume', value: 'FILE', summary: 'go on from the JSON report of a search that was interrupted' },
      { name: 'seed', value: 'NUMBER', summary: 'of the random numbers, instead of the design’s own' },
      anyFormat,
      out,
      units,
    ],
    load: () => import('./commands/search.js'),
  },
  {
    name: 'sensitivity',
    summary: 'which inputs of a design move its results, and by how much',
    examples: [
      'selvage sensitivity rudder.yaml',
      'selvage sensitivity rudder.yaml --quantity laminates.edge.inPlane.Ex --step 0.02',
    ],
    positionals: [design],
    options: [
      quantity,
      { name: 'step', value: 'SHARE', summary: 'share by which inputs without a tolerance are moved; 0.01 by default' },
      anyFormat,
      out,
      units,
    ],
    load: () => import('./commands/sensitivity.js'),
  },
  {
    name: 'uncertainty',
    summary: 'how sure the results are, from the tolerances of the design',
    examples: [
      'selvage uncertainty rudder.yaml',
      'selvage uncertainty rudder.yaml --samples 10000 --seed 7 --quantity laminates.edge.thickness',
    ],
    positionals: [design],
    options: [
      quantity,
      { name: 'samples', value: 'COUNT', summary: 'samples drawn; 2000 by default' },
      {
        name: 'seed',
        value: 'NUMBER',
        summary: 'of the random numbers; the same seed gives the same result; 1 by default',
      },
      anyFormat,
      out,
      units,
    ],
    load: () => import('./commands/uncertainty.js'),
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
    examples: [
      'selvage examples',
      'selvage examples strength',
      'selvage examples ply-stiffness-carbon',
      'selvage examples ply-stiffness-carbon --worked',
      'selvage examples ply-stiffness-carbon --design --out ply.yaml',
      'selvage examples --out examples.html',
    ],
    positionals: [
      {
        name: 'ID',
        summary: 'only this example; or a subject, or a word of the titles and sources: only those about it',
        optional: true,
        completes: 'example',
      },
    ],
    options: [
      { name: 'design', summary: 'the example as a design file, in YAML, instead of its values' },
      { name: 'worked', summary: 'the calculation of the example step by step, after its values' },
      ...ofWorking,
      anyFormat,
      out,
      quotedUnits,
    ],
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
