import { assemble, compute, type Problem, type Results, readDesign } from '@selvage/core';
import { problemsIn } from './faults.js';

export { underlined } from './faults.js';

/** Two materials: `ud` knows everything, `bare` nothing but its stiffness; invented values. */
export const head = `format: 1
title: T
materials:
  ud: { kind: ply, E1: 140 GPa, E2: 9 GPa, G12: 5 GPa, nu12: 0.3, thickness: 0.2 mm, strengths: { Xt: 1800 MPa, Xc: 1100 MPa, Yt: 45 MPa, Yc: 180 MPa, S: 75 MPa }, expansion: { alpha1: 0.2e-6 1/K, alpha2: 28e-6 1/K }, moistureExpansion: { beta1: 0, beta2: 0.5 } }
  bare: { kind: ply, E1: 40 GPa, E2: 9 GPa, G12: 4 GPa, nu12: 0.28, thickness: 0.2 mm }
  cloth: { kind: ply, E1: 60 GPa, E2: 60 GPa, G12: 4 GPa, nu12: 0.05, thickness: 0.3 mm, strengths: { Xt: 600 MPa, Xc: 450 MPa, Yt: 600 MPa, Yc: 450 MPa, S: 80 MPa } }
laminates:
  skin: { material: ud, stack: "[0/±45/90]s" }
  bent: { material: ud, stack: "[0/90]" }
  plain: { material: bare, stack: "[0/90]s" }
  woven: { material: cloth, stack: "[0/45]s" }
  thick: { material: ud, stack: "[0/90]51s" }
`;

export const results = (loads: string, more = ''): Results =>
  compute(assemble(readDesign(`${head}loads:\n  l: ${loads}\n${more}`)));

/** The load case `l` in the JSON document, read back from JSON. */
// biome-ignore lint/suspicious/noExplicitAny: a JSON document has no type
export const dataOf = (loads: string): any => JSON.parse(JSON.stringify(results(loads).data)).loads.l;

export const problemsOf = (loads: string, more = ''): readonly Problem[] => problemsIn(() => results(loads, more));
