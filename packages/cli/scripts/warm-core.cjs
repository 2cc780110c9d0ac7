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
writeFileSync(path.replace(/cjs$/, 'cache'), script.createCachedData());
