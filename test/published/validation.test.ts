import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { validationDocument } from '../../packages/core/scripts/validation-document.js';

describe('docs/validation.md', () => {
  const file = readFileSync(new URL('../../docs/validation.md', import.meta.url), 'utf8');

  it('is what the library computes now', () => {
    expect(file).toBe(validationDocument());
  });

  it('says how it is written, and that most values are recalled', () => {
    const [command] = /node [^>]*\.ts/.exec(file) ?? [''];
    expect(command).toContain('packages/core/scripts/write-validation.ts');
    expect(file).toContain('recalled, not re-read');
    expect(file).toContain('not that the book prints it');
  });
});
