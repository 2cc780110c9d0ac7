/**
 * Writes src/examples/rules-shown.json: the published examples that print a result of each rule of the working.
 * Run: node --conditions=@selvage/source --import=tsx packages/core/scripts/write-rules-shown.ts
 * test/published/worked.test.ts fails when the file is stale.
 */
import { writeFileSync } from 'node:fs';
import { examplesByRule } from './printed-in-working.js';

const lines = Object.entries(examplesByRule()).map(
  ([rule, ids]) => `  ${JSON.stringify(rule)}: ${JSON.stringify(ids)}`,
);
writeFileSync(new URL('../src/examples/rules-shown.json', import.meta.url), `{\n${lines.join(',\n')}\n}\n`);
