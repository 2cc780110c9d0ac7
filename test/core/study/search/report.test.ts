import { describe, expect, it } from 'vitest';
import { designInputs } from '../../../../packages/core/src/design/index.js';
import { type RenderFormat, render, searchReport } from '../../../../packages/core/src/report/index.js';
import { search, searchProblem, searchResult, startSearch } from '../../../../packages/core/src/study/search/index.js';
import { oneAim, severalAims, stitched, withSearch } from './designs.js';

const formats: readonly RenderFormat[] = ['text', 'markdown', 'html', 'json', 'csv'];

describe('the report of a search', () => {
  it.each([
    ['several aims', severalAims],
    ['one aim', oneAim],
    ['stitching', stitched],
    ['two aims', severalAims.replace(', laminates.skin.inPlane.Gxy]', ']')],
    ['no candidate', severalAims.replace('12 GPa', '450 GPa')],
  ])('can be read in every format and both systems of units: %s', (_, text) => {
    const found = search(designInputs(text));
    for (const units of ['metric', 'us'] as const) {
      const report = searchReport(found, { units });
      for (const format of formats) expect(render(report, format, { units }).length).toBeGreaterThan(200);
      const figures = report.blocks.filter(({ kind }) => kind === 'figure');
      expect(figures).toHaveLength(found.problem.goals.aims.length === 2 && found.candidates.length > 0 ? 1 : 0);
    }
  });

  it('says in its data what was found, in SI', () => {
    const found = search(designInputs(severalAims));
    const data = JSON.parse(render(searchReport(found), 'json'));
    expect(data.size).toEqual({ combinations: 576, candidates: 112, duplicates: 0 });
    expect(data.candidates.map(({ inputs }: { inputs: object }) => Object.keys(inputs))).toEqual(
      found.candidates.map(() => ['laminates.skin.stack']),
    );
    for (const [i, { quantities, limits }] of data.candidates.entries()) {
      expect(Object.values(quantities)).toEqual(found.candidates[i]!.values);
      expect(limits.every(({ met }: { met: boolean }) => met)).toBe(true);
    }
    expect(data.state).toEqual(JSON.parse(JSON.stringify(found.state)));
  });

  it('writes counts that a number does not hold as text', () => {
    const problem = searchProblem(
      designInputs(
        withSearch(
          '  stack: { laminate: skin, angles: [0, 90, 45], plies: 60 }\n  minimise: [laminates.skin.arealMass]\n',
        ),
      ),
    );
    const report = searchReport(searchResult(problem, startSearch(problem)));
    expect(JSON.parse(render(report, 'json')).size.candidates).toBe(String(3n ** 60n));
    expect(render(report, 'text')).toContain('not complete: 0 of 100 generations');
  });

  it('says that it is a share, and how much of it is done', () => {
    const problem = searchProblem(designInputs(severalAims));
    const text = render(searchReport(searchResult(problem, startSearch(problem, [2, 4]))), 'text');
    expect(text.replace(/\s+/g, ' ')).toContain('candidates 29 to 56');
    expect(text.replace(/\s+/g, ' ')).toContain('0 of 28 candidates were gone through');
  });
});
