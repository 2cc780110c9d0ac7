import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { designFileGuide } from '../../../packages/core/scripts/design-file-guide.js';

it('the reference page of the design file is the one that the schema gives', () => {
  expect(readFileSync(new URL('../../../docs/guide/design-file.md', import.meta.url), 'utf8')).toBe(designFileGuide());
});
