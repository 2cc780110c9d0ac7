import { readFileSync } from 'node:fs';
import { type ExitCode, exitMeanings } from '../../cli/src/exit.js';
import {
  assemble,
  compute,
  type Problem,
  type ProblemCode,
  problemCatalogue,
  readDesignBytes,
  renderProblems,
  SelvageError,
} from '../src/index.js';

export const problemCodes = Object.keys(problemCatalogue) as ProblemCode[];

/** The bytes of the small design in error-examples that has this fault and no other. */
const example = (code: ProblemCode): Uint8Array =>
  readFileSync(new URL(`error-examples/${code}.yaml`, import.meta.url));

/** What the library finds wrong in the example of a code. */
export function exampleProblems(code: ProblemCode): readonly Problem[] {
  try {
    compute(assemble(readDesignBytes(example(code), { fileName: `${code}.yaml` })));
  } catch (error) {
    if (error instanceof SelvageError) return error.problems;
    throw error;
  }
  return [];
}

/** The example as a reader sees it: in UTF-8, or else in the older encoding that it is in. */
function shown(bytes: Uint8Array): string {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder('latin1').decode(bytes);
  }
}

const head = `<!-- Generated, do not edit. Written by: node --conditions=@selvage/source --import=tsx packages/core/scripts/write-error-guide.ts -->

# Errors and exit codes

\`selvage check design.yaml\` lists everything that is wrong in a design, in the order of the file, and ends with 65. Each message says where and what was found, under the carets
what may have been meant, and what would be allowed:

\`\`\`text
file:line:column: error[code]: what was found
line | the line, with carets under the place; behind them a hint
     allowed: what would be accepted
\`\`\`

With \`--format json\` the same stands on standard error as JSON. In a script the library throws a \`SelvageError\`, whose \`problems\` carry \`code\`, \`message\`, \`allowed\`, \`hint\` and the
place; codes stay, sentences may change. The catalogue below is \`problemCatalogue\` of the library. Each example is a whole design, small and invented, with the message
printed of it.
`;

const advice: Readonly<Record<ExitCode, string>> = {
  0: 'nothing',
  1: 'look at the targets in the report; change the design or the target, or give it soft priority',
  64: '`selvage COMMAND --help`; the message proposes the nearest command or option',
  65: 'the codes below',
  66: 'look at name, folder and permissions; `-` reads standard input',
  70: 'report it as the message says; a smaller input may get you on',
  74: 'look at folder, permissions and room on the disk',
  130: 'start it again; `selvage search --resume` goes on from the report of an interrupted search',
};

const exitTable = (): string[] => [
  '| exit code | meaning | what to do |',
  '| ---: | --- | --- |',
  ...exitMeanings.map(([code, meaning]) => `| ${code} | ${meaning} | ${advice[code]} |`),
];

const codeTable = (): string[] => [
  '| code | meaning |',
  '| --- | --- |',
  ...problemCodes.map((code) => `| [${code}](#${code}) | ${problemCatalogue[code].meaning} |`),
];

/** Where more is said. */
const seeAlso: Readonly<Partial<Record<ProblemCode, string>>> = {
  'unknown-key': '[every key of the design file](design-file.md)',
  'missing-key': '[every key of the design file](design-file.md)',
  'orientation-code': '[the rules of the orientation code](../theory/orientation-code.md)',
  'not-computable': '[the limits of each model](../README.md#theory)',
};

function section(code: ProblemCode): string[] {
  const { meaning, cause, cure } = problemCatalogue[code];
  return [
    '',
    `### ${code}`,
    '',
    meaning,
    '',
    `- **Usual cause:** ${cause}`,
    `- **Cure:** ${cure}`,
    ...(seeAlso[code] === undefined ? [] : [`- **See also:** ${seeAlso[code]}`]),
    '',
    '```yaml',
    shown(example(code)).trimEnd(),
    '```',
    '',
    '```text',
    renderProblems(exampleProblems(code), { fileName: `${code}.yaml` }),
    '```',
  ];
}

/** The page on errors and exit codes as Markdown. */
export function errorGuide(): string {
  const lines = [
    head,
    '## Exit codes',
    '',
    ...exitTable(),
    '',
    '## Problem codes',
    '',
    ...codeTable(),
    ...problemCodes.flatMap(section),
  ];
  return `${lines.join('\n')}\n`;
}
