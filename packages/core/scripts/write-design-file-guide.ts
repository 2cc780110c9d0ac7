/**
 * Writes docs/guide/design-file.md, the reference of the design file, from the JSON Schema.
 * Run: node --conditions=@selvage/source --import=tsx packages/core/scripts/write-design-file-guide.ts
 * test/core/design/guide.test.ts fails when the page is stale.
 */
import { writeFileSync } from 'node:fs';
import { designFileGuide } from './design-file-guide.js';

writeFileSync(new URL('../../../docs/guide/design-file.md', import.meta.url), designFileGuide());
