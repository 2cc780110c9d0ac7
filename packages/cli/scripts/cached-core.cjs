'use strict';
/* Stands for `@selvage/core` in the bundle of the command; the core is a file beside it. */
const { compileCore, runCore } = require('./load-core.cjs');

const core = './core.cjs';
module.exports = runCore(compileCore(require.resolve(core)), require);
