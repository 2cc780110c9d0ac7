/**
 * Writes docs/guide/errors.md from the catalogue of problem codes and the designs in error-examples.
 * Run: node --conditions=@selvage/source --import=tsx packages/core/scripts/write-error-guide.ts
 * test/core/problem/error-guide.test.ts fails when the page is stale.
 */
import { writeFileSync } from 'node:fs';
import { errorGuide } from './error-guide.js';

writeFileSync(new URL('../../../docs/guide/errors.md', import.meta.url), errorGuide());
