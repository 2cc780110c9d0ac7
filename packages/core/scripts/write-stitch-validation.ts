/**
 * Writes docs/validation-stitching.md from what is printed of stitched laminates in reference-data.
 * Run: node --conditions=@selvage/source --import=tsx packages/core/scripts/write-stitch-validation.ts
 * test/published/stitched-laminates.test.ts compares the file with what this writes.
 */
import { writeFileSync } from 'node:fs';
import { stitchValidationDocument } from './stitch-validation-document.js';

writeFileSync(new URL('../../../docs/validation-stitching.md', import.meta.url), stitchValidationDocument());
