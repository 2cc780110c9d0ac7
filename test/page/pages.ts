import { readdirSync, readFileSync } from 'node:fs';
import {
  assemble,
  type Comparison,
  compare,
  comparisonReport,
  compute,
  type DesignInputs,
  designInputs,
  examplesReport,
  libraryReport,
  parseVariation,
  type Report,
  render,
  report,
  search,
  searchReport,
  sensitivity,
  sensitivityReport,
  sweep,
  sweepReport,
  uncertainty,
  uncertaintyReport,
  workedReport,
} from '@selvage/core';
import { withSearch } from '../core/study/search/designs.js';

const folder = new URL('../../docs/examples/', import.meta.url);
/** Every design of docs/examples, by the name of its file. */
export const designNames: readonly string[] = readdirSync(folder)
  .filter((name) => name.endsWith('.yaml'))
  .map((name) => name.replace(/\.yaml$/, ''))
  .sort();

const textOf = (name: string): string => readFileSync(new URL(`${name}.yaml`, folder), 'utf8');
const inputsOf = (name: string): DesignInputs => designInputs(textOf(name), { fileName: `${name}.yaml` });

function comparison(texts: Readonly<Record<string, string>>): Comparison {
  return compare(
    Object.entries(texts).map(([name, text]) => {
      const inputs = designInputs(text, { fileName: `${name}.yaml` });
      return { name, inputs, results: compute(assemble(inputs.design)) };
    }),
  );
}

const minimal = textOf('minimal');
/** One design of docs/examples beside itself with another stack, so that curves differ. */
const turned = { minimal, turned: minimal.replace('[0/±45/90]s', '[0_2/±45]s') };

/** Two aims on a small stack: the search draws its front. */
const twoAims = withSearch(`  stack:
    laminate: skin
    angles: [0, 45, -45, 90]
    plies: 3
    symmetric: true
    balanced: true
  maximise: [laminates.skin.inPlane.Ex, laminates.skin.inPlane.Gxy]
`);

const swept = (name: string, quantities: readonly string[], ...vary: readonly string[]): Report =>
  sweepReport(sweep(inputsOf(name), vary.map(parseVariation), quantities));

const sewingTime = 'stitching.edge-rows.sewingTime';
const pitch = 'stitching.edge-rows.pitch=3mm..6mm:7';

/** The report of a design in docs/examples, as a page. */
export const designPage = (name: string): string => render(report(assemble(inputsOf(name).design)), 'html');

/** What is made of studies and of the library, as pages, each by a name. */
export const studyPages: Readonly<Record<string, () => string>> = {
  comparison: () => render(comparisonReport(comparison(turned)), 'html'),
  'sweep over one input': () => render(swept('shingle-640-three-rows', [sewingTime], pitch), 'html'),
  'sweep over two inputs': () =>
    render(
      swept('shingle-640-three-rows', [sewingTime], 'stitching.edge-rows.sewing.rate=60/min..100/min:5', pitch),
      'html',
    ),
  sensitivity: () =>
    render(
      sensitivityReport(sensitivity(inputsOf('shingle-640-three-rows'), ['laminates.edge.thickness', sewingTime])),
      'html',
    ),
  uncertainty: () =>
    render(
      uncertaintyReport(
        uncertainty(inputsOf('shingle-640-three-rows'), ['laminates.edge.thickness', sewingTime], {
          samples: 200,
          seed: 1,
        }),
      ),
      'html',
    ),
  search: () => render(searchReport(search(designInputs(twoAims))), 'html'),
  examples: () => render(examplesReport(), 'html'),
  example: () => render(examplesReport('ply-stiffness-carbon'), 'html'),
  working: () => render(workedReport(assemble(inputsOf('minimal').design), { of: 'laminates.skin' }), 'html'),
  data: () => render(libraryReport(), 'html'),
  threads: () => render(libraryReport('threads'), 'html'),
};
