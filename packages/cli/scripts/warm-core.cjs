'use strict';
/* Runs the bundled core once through what it is mostly used for and keeps the code that V8 compiled meanwhile. */
const { createRequire } = require('node:module');
const { writeFileSync } = require('node:fs');
const { compileCore, runCore } = require('./load-core.cjs');

const path = process.argv[2];
const script = compileCore(path);
const core = runCore(script, createRequire(path));
const report = core.report(core.assemble(core.readDesign(core.starterDesign)));
for (const format of ['text', 'html', 'json']) core.render(report, format);

// Every thread of a search compiles what it uses for itself.
const searched = `${core.starterDesign}search:
  stack: { laminate: edge, materials: [cloth, biax], angles: [0, 45], plies: 5, symmetric: true }
  minimise: [laminates.edge.arealMass]
  maximise: [laminates.edge.flexural.Ex]
`;
const found = core.search(core.designInputs(searched));
core.render(core.searchReport(found, {}), 'text');
writeFileSync(path.replace(/cjs$/, 'cache'), script.createCachedData());
