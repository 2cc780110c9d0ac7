import { examplesReport, render } from '../src/report/index.js';

/** From the root of the repository. */
const command = 'node --conditions=@selvage/source --import=tsx packages/core/scripts/write-validation.ts';

/** docs/validation.md: the worked examples as the library computes them now. */
export function validationDocument(): string {
  const head = `<!-- Generated, do not edit. Written by: ${command} -->`;
  return `${head}\n\n${render(examplesReport(), 'markdown')}`;
}
