#!/usr/bin/env node
import * as nodeModule from 'node:module';
import { report } from './failure.js';
import { run } from './run.js';

// Node 22.1 and later can keep the compiled code of the parts that are loaded after this for the next start.
if ('enableCompileCache' in nodeModule && typeof nodeModule.enableCompileCache === 'function') {
  nodeModule.enableCompileCache();
}

// A write that fails tells its caller; without a listener the same error would also end the process.
process.stdout.on('error', () => undefined);
process.stderr.on('error', () => undefined);

const args = process.argv.slice(2);
const fail = async (thrown: unknown): Promise<void> => {
  process.exitCode = await report(thrown, args);
};
process.on('uncaughtException', fail);

try {
  process.exitCode = await run(args);
} catch (thrown) {
  await fail(thrown);
}
