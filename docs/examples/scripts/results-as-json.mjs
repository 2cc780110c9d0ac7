// The few results of a design that another program needs, as JSON. Numbers are SI.
//
//   node results-as-json.mjs [DESIGN.yaml]
//
// The design that is read without a name is invented for demonstration.
import { readFileSync } from 'node:fs';
import { assemble, compute, readDesign, renderProblems, SelvageError } from '@selvage/core';

const file = process.argv[2] ?? new URL('../shingle-640-three-rows.yaml', import.meta.url);

/** Text goes in, a design is read from it, a model is assembled, everything that follows is computed. */
function chosenResults(text) {
  const { model, laminates, stitching, targets } = compute(assemble(readDesign(text)));
  return {
    title: model.title,
    laminates: laminates.map(({ model: { name, laminate }, canonicalCode, arealMass, constants }) => ({
      name,
      stack: canonicalCode,
      thickness: laminate.thickness, // m
      arealMass: arealMass.total, // kg/m²
      Ex: constants.inPlane.Ex, // Pa
      ExInBending: constants.flexural.Ex,
    })),
    stitching: stitching.map(({ model: { name, summary } }) => ({
      name,
      penetrationDensity: summary.penetrationDensity, // 1/m²
      threadMassPerArea: summary.threadMassPerArea, // kg/m²
    })),
    targets: targets.map(({ quantity, value, met, margin }) => ({ quantity, value, met, margin })),
  };
}

try {
  console.log(JSON.stringify(chosenResults(readFileSync(file, 'utf8')), null, 2));
} catch (error) {
  // Everything that is wrong with the text comes at once, each problem with its line. Anything else is a fault of a program.
  if (!(error instanceof SelvageError)) throw error;
  console.error(renderProblems(error.problems, { fileName: String(process.argv[2]) }));
  process.exitCode = 65;
}
