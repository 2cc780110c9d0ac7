export { type CatalogueEntry, problemCatalogue } from './catalogue.js';
export { choice } from './choice.js';
export { nearest, nearestHint } from './nearest.js';
export type { Path, Place, Problem, ProblemCode } from './problem.js';
export { fail, SelvageError } from './problem.js';
export { type RenderProblemOptions, renderProblem, renderProblems } from './render.js';
