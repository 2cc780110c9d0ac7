import { readdirSync, readFileSync } from 'node:fs';
import { problemCatalogue, renderProblems } from '@selvage/core';
import { describe, expect, it } from 'vitest';
import { errorGuide, exampleProblems, problemCodes } from '../../../packages/core/scripts/error-guide.js';

const root = new URL('../../../', import.meta.url);

describe('the catalogue of errors', () => {
  it.each(problemCodes)('the example of %s has that fault and no other', (code) => {
    const problems = exampleProblems(code);
    expect(problems.length).toBeGreaterThan(0);
    expect(new Set(problems.map((problem) => problem.code)), renderProblems(problems)).toEqual(new Set([code]));
  });

  it.each(problemCodes)('the example of %s is shown with its place in the file', (code) => {
    expect(exampleProblems(code).every(({ where }) => where !== undefined)).toBe(true);
  });

  it('has an example for each code and no other', () => {
    const names = readdirSync(new URL('packages/core/scripts/error-examples/', root));
    expect(names.sort()).toEqual(problemCodes.map((code) => `${code}.yaml`).sort());
  });

  it('says of each code what it means, where it comes from and what helps, in sentences of its own', () => {
    const sentences = Object.values(problemCatalogue).flatMap(({ meaning, cause, cure }) => [meaning, cause, cure]);
    for (const sentence of sentences) expect(sentence).toMatch(/^[A-Z`].*\.$/);
    expect(new Set(sentences).size).toBe(sentences.length);
  });

  it('is the page that the guide shows', () => {
    expect(readFileSync(new URL('docs/guide/errors.md', root), 'utf8')).toBe(errorGuide());
  });
});

/** Codes that sources and tests name beside those of the closed list would be codes that no reader can look up. */
describe('the codes that docstrings promise', () => {
  it('are codes of the catalogue', () => {
    const core = new URL('packages/core/src/', root);
    const files = readdirSync(core, { recursive: true }).filter((name) => String(name).endsWith('.ts'));
    const promised = files.flatMap((name) => {
      const text = readFileSync(new URL(String(name), core), 'utf8');
      return [...text.matchAll(/@throws (?:\{@link SelvageError\} )?([a-z]+(?:-[a-z]+)+)\b/g)].map(([, code]) => code);
    });
    expect(promised.length).toBeGreaterThan(20);
    expect([...new Set(promised)].filter((code) => !(problemCodes as (string | undefined)[]).includes(code))).toEqual(
      [],
    );
  });
});
