/**
 * Writes docs/validation.md from the worked examples in reference-data.
 * Run: node --conditions=@selvage/source --import=tsx packages/core/scripts/write-validation.ts
 * test/published/validation.test.ts compares the file with what this writes.
 */
import { writeFileSync } from 'node:fs';
import { validationDocument } from './validation-document.js';

writeFileSync(new URL('../../../docs/validation.md', import.meta.url), validationDocument());
