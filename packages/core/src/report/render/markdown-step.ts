import type { UnitSystem } from '../../quantity/index.js';
import type { StepBlock } from '../blocks.js';
import { origin, printedStep } from './step.js';
import { chainTex, matrixTex } from './step-tex.js';

const display = (tex: string): string[] => ['', '$$', tex, '$$'];

/** A step in Markdown: its formulas in LaTeX between double dollar signs. */
export function stepMarkdown(step: StepBlock, units: UnitSystem, e: (text: string) => string): string[] {
  const { chains, matrices } = printedStep(step, units);
  return [
    `**${step.number} ${e(step.title)}** - ${e(step.of)} \`${step.part}\` \`${step.rule}\``,
    ...(step.form === undefined ? [] : display(step.form.tex)),
    ...(chains.length === 0
      ? []
      : display(`\\begin{aligned}\n${chains.map(chainTex).join(' \\\\\n')}\n\\end{aligned}`)),
    ...matrices.flatMap((matrix) => display(matrixTex(matrix))),
    '',
    ...(step.remark === undefined ? [] : [e(step.remark), '']),
    `Source: ${e(origin(step))}`,
  ];
}
