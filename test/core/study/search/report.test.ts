import { describe, expect, it } from 'vitest';
import { designInputs } from '../../../../packages/core/src/design/index.js';
import { type RenderFormat, render, searchProgress, searchReport } from '../../../../packages/core/src/report/index.js';
import {
  acceptRange,
  evaluateRange,
  finishSearch,
  mergeSearches,
  type SearchState,
  search,
  searchProblem,
  searchResult,
  startSearch,
} from '../../../../packages/core/src/study/search/index.js';
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
    expect(text.replace(/\s+/g, ' ')).toContain('share 2 of 4, candidates 29 to 56: not complete');
    expect(text.replace(/\s+/g, ' ')).toContain('0 of 28 candidates gone through');
    expect(text).toContain('None was evaluated.');
  });

  it('says on the line of the method whether all was gone through', () => {
    const problem = searchProblem(designInputs(severalAims));
    const share = (k: number) => finishSearch(problem, startSearch(problem, [k, 4]));
    const report = (state: SearchState) => searchReport(searchResult(problem, state));
    const method = (state: SearchState) =>
      report(state)
        .blocks.flatMap((block) => (block.kind === 'facts' ? block.items : []))
        .find(({ label }) => label === 'Method')?.value;
    expect(method(share(2))).toBe('only share 2 of 4, candidates 29 to 56: all of these gone through');
    expect(method(mergeSearches(problem, [1, 2, 3, 4].map(share)))).toBe('all candidates gone through');
    const gaps = mergeSearches(problem, [share(4), share(1)]);
    expect(method(gaps)).toBe('not complete, 56 of 112 candidates gone through');
    expect(searchProgress(searchResult(problem, gaps))).toBe(
      'The search is not complete: 56 of 112 candidates gone through; missing: shares 2/4 to 3/4 (candidates 29 to 84).',
    );
    expect(JSON.parse(render(report(gaps), 'json')).missing).toEqual([{ from: 28, to: 84, shards: ['2/4', '3/4'] }]);
    const resumed = finishSearch(problem, gaps);
    expect(resumed).toEqual(finishSearch(problem, startSearch(problem)));
    expect(searchProgress(searchResult(problem, resumed))).toBeUndefined();
  });

  it('names no share where results are of different divisions, or only a part of it is missing', () => {
    const problem = searchProblem(designInputs(severalAims));
    const share = (k: number, n: number) => finishSearch(problem, startSearch(problem, [k, n]));
    const said = (states: readonly SearchState[]) =>
      searchProgress(searchResult(problem, mergeSearches(problem, states)));
    expect(said([share(1, 2), share(4, 4)])).toContain('missing: candidates 57 to 84.');
    const begun = startSearch(problem, [1, 2]);
    const part = acceptRange(begun, { from: 0, to: 55 }, evaluateRange(problem, { from: 0, to: 55 }));
    expect(said([part, share(2, 2)])).toContain('missing: candidate 56.');
  });

  it('shows the design as written with its own stack and inputs', () => {
    const rows = (text: string) => {
      const { blocks } = searchReport(search(designInputs(text)));
      const front = blocks.find((block) => block.kind === 'table' && block.id === 'search-front');
      return front?.kind === 'table' ? front.rows : [];
    };
    expect(rows(severalAims)[0]?.slice(0, 2)).toEqual(['as written', '[0/90]s']);
    expect(rows(stitched)[0]?.slice(0, 4)).toEqual(['as written', '4 mm', '5.5 mm', '[0/90]s']);
    const needle = withSearch(
      '  vary: { stitching.rows.needle: [100, 110] }\n  minimise: [laminates.skin.arealMass]\n',
    );
    expect(rows(needle)[0]?.slice(0, 2)).toEqual(['as written', '–']);
  });

  it('prints what is listed twice, and counts in CSV as plain numbers', () => {
    const text = withSearch(
      '  stack: { laminate: skin, angles: [0, 45, -45, 90, 0], plies: [6, 6] }\n  minimise: [laminates.skin.arealMass]\n',
    );
    const report = searchReport(search(designInputs(text)));
    expect(render(report, 'text').replace(/\s+/g, ' ')).toContain('`plies` lists 6 2 times');
    expect(render(report, 'csv')).toContain('Evaluated,4096,');
    expect(render(report, 'text')).toMatch(/Evaluated +4 096/);
  });
});
