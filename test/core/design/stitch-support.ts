import { assemble, compute, type Problem, type Results, readDesign } from '@selvage/core';
import { problemsIn } from './faults.js';
import { head as allLaminates } from './load-support.js';

/** Without the laminate of 204 plies, which takes its time. */
const head = allLaminates.replace(/ {2}thick: .*\n/, '');

/** Invented threads: one that is known, one without strength, one as dense as glass, one with a packing of its own. */
const threads = `threads:
  firm: { linearDensity: 75 tex, density: 1440 kg/m^3, tenacity: 1.7 N/tex, modulus: 50 N/tex }
  plain: { linearDensity: 40 tex, density: 1380 kg/m^3 }
  dense: { linearDensity: 68 tex, density: 2540 kg/m^3, tenacity: 0.7 N/tex, modulus: 28 N/tex }
  packed: { linearDensity: 75 tex, density: 1440 kg/m^3, tenacity: 1.7 N/tex, modulus: 50 N/tex, packing: 0.7 }
`;

/** Laminates that a plan may name, besides those of the load cases. */
const laminates = `  one: { material: ud, stack: "[0]8" }
  odd: { material: ud, stack: "[0/90/0]" }
  slanted: { stack: "[10ud/0cloth/-20ud]s" }
  steep: { material: ud, stack: "[±20]s" }
  cored: { stack: "[0ud/0foam/0ud]" }
`;

const foam = '  foam: { kind: core, thickness: 4 mm, E: 100 MPa, G: 40 MPa, density: 100 kg/m^3 }\n';

/** A design with one stitch plan `p`: a modified lockstitch of 5 mm by 4 mm, with other keys after it. */
export const planText = (
  more = '',
  keys = 'laminate: one, thread: firm, stitchType: 301-modified, pattern: parallel, pitch: 4 mm, rowSpacing: 5 mm, dryThickness: 2 mm',
): string =>
  `${head.replace('laminates:', `${foam}laminates:`)}${laminates}${threads}stitching:\n  p: { ${keys}${more === '' ? '' : `, ${more}`} }\n`;

export const ofText = (text: string): Results => compute(assemble(readDesign(text)));

export const planResults = (...text: Parameters<typeof planText>): Results => ofText(planText(...text));

/** The plan in the JSON document, read back from JSON. */
// biome-ignore lint/suspicious/noExplicitAny: a JSON document has no type
export const planData = (...text: Parameters<typeof planText>): any =>
  JSON.parse(JSON.stringify(planResults(...text).data)).stitching.p;

export const planProblems = (...text: Parameters<typeof planText>): readonly Problem[] =>
  problemsIn(() => planResults(...text));

/** Rows 4 mm by 5 mm. */
export const rows = 'pattern: parallel, pitch: 4 mm, rowSpacing: 5 mm';

/** The usual plan without the keys that a pattern brings itself. */
export const keysOf = (rest: string): string =>
  `laminate: one, thread: firm, stitchType: 301-modified, dryThickness: 2 mm, ${rest}`;
