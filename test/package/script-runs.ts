import { readdirSync, readFileSync } from 'node:fs';
import { readFile, writeFile } from 'node:fs/promises';
import { assemble, compute, designInputs, inputAt, readDesign, report } from '@selvage/core';
import { describe, expect, it } from 'vitest';
import { codeSpans, inRoot, pageAt, tableRows } from '../docs/support/pages.js';
import type { PackedProject } from './project.js';

/** Serves until it is stopped: see script-page.ts. */
const server = 'serve-page.mjs';

const folder = inRoot('docs/examples/scripts');
const names = readdirSync(folder).filter((name) => name.endsWith('.mjs'));

const lines = (text: string): string[] => text.split('\n').filter((line) => line.trim() !== '');
const numbers = (line: string): number[] => (line.match(/-?\d+(?:\.\d+)?(?:e[+-]?\d+)?/g) ?? []).map(Number);
const cells = (csv: string): string[][] => lines(csv).map((line) => line.split(','));

export function scriptRuns({ at, node }: PackedProject): void {
  const example = (name: string) => readFile(at('examples', `${name}.yaml`), 'utf8');

  /** What a script prints; it says nothing on the other stream. */
  async function run(name: string, ...args: readonly string[]): Promise<string> {
    const { code, stdout, stderr } = await node(at('examples/scripts', `${name}.mjs`), ...args);
    expect({ code, stderr }, name).toEqual({ code: 0, stderr: '' });
    expect(stdout).not.toMatch(/\bNaN\b|\bInfinity\b|undefined|\[object/);
    return stdout;
  }

  it('stand in the table of their page, each with what it shows', () => {
    const rows = tableRows(pageAt('docs/examples/scripts/README.md'), 'script', 'shows');
    expect(rows.flatMap(([script = '']) => codeSpans(script)).sort()).toEqual([...names, 'page.html'].sort());
  });

  it('import the core and what Node has, nothing else', () => {
    for (const name of names) {
      const text = readFileSync(`${folder}/${name}`, 'utf8');
      const imported = [...text.matchAll(/(?:from|import\.meta\.resolve\(|import) ?'([^']+)'/g)].map(
        ([, from]) => from,
      );
      expect(imported.filter((from) => !/^(node:|@selvage\/core(\/browser)?$)/.test(from ?? ''))).toEqual([]);
      expect(
        imported.some((from) => from?.startsWith('@selvage/core')),
        name,
      ).toBe(true);
    }
  });

  /** One test for each script; the list is held against the folder below. */
  const tests: Record<string, () => Promise<void>> = {
    'results-as-json': async () => {
      const found = JSON.parse(await run('results-as-json'));
      const { laminates, targets } = compute(assemble(readDesign(await example('shingle-640-three-rows'))));
      const ofLibrary = laminates.map(({ model, constants }) => [model.laminate.thickness, constants.inPlane.Ex]);
      expect(found.laminates.map((one: { thickness: number; Ex: number }) => [one.thickness, one.Ex])).toEqual(
        ofLibrary,
      );
      expect(found.targets.map(({ met }: { met: boolean }) => met)).toEqual(targets.map(({ met }) => met));

      await writeFile(at('faulty.yaml'), (await example('minimal')).replace('stack:', 'stacks:'));
      const faulty = await node(at('examples/scripts/results-as-json.mjs'), 'faulty.yaml');
      expect(faulty).toMatchObject({ code: 65, stdout: '' });
      expect(faulty.stderr).toMatch(/^faulty\.yaml:\d+:\d+: error/);
    },

    'laminate-stiffness': async () => {
      const text = lines(await run('laminate-stiffness', '[0/±45/90]s'));
      const matrix = (name: string) => {
        const head = text.findIndex((line) => line.startsWith(`${name} in `));
        return text.slice(head + 1, head + 4).map(numbers);
      };
      const [[A11 = 0, A12 = 0], [, A22], [, , A66]] = matrix('A') as [number[], number[], number[]];
      // A quasi-isotropic stack is isotropic in its plane, and a mirrored one is not coupled; digits as printed.
      expect(A22).toBe(A11);
      expect(A66).toBeCloseTo((A11 - A12) / 2, -4);
      expect(matrix('B').flat()).toEqual(Array(9).fill(0));
      const D = matrix('D');
      expect(D).toEqual(D.map((row, i) => row.map((_, j) => D[j]?.[i])));
      const [Ex = 0, Ey, Gxy] = numbers(text.find((line) => line.startsWith('in plane')) ?? '');
      expect(Ey).toBe(Ex);
      expect(Gxy).toBeCloseTo(Ex / (2 * (1 + A12 / A11)), 1);
    },

    'lightest-laminate': async () => {
      const shown = async (ratio: number) => {
        const [head = '', , ...rows] = lines(await run('lightest-laminate', String(ratio)));
        return { counted: numbers(head), rows: rows.map((row) => ({ row, numbers: numbers(row) })) };
      };
      const [some, more] = [await shown(1.5), await shown(3)];
      // Half stacks of one to five plies, each of eight.
      expect(some.counted[0]).toBe(8 + 8 ** 2 + 8 ** 3 + 8 ** 4 + 8 ** 5);
      expect(more.counted[2]).toBeLessThan(some.counted[2] ?? 0);
      for (const [ratio, { rows }] of [
        [1.5, some],
        [3, more],
      ] as const) {
        const masses = rows.map((row) => row.numbers[0] ?? 0);
        expect(rows).toHaveLength(5);
        expect(masses).toEqual([...masses].sort((a, b) => a - b));
        for (const { row, numbers } of rows) {
          expect(numbers[1]).toBeGreaterThanOrEqual(ratio);
          expect(row).toMatch(/\[-?\d+g[/\]]/);
        }
      }
      expect(more.rows[0]?.numbers[0]).toBeGreaterThanOrEqual(some.rows[0]?.numbers[0] ?? 0);
    },

    'pitch-sweep': async () => {
      await run('pitch-sweep', 'sweep.csv');
      const [head = [], ...rows] = cells(await readFile(at('sweep.csv'), 'utf8'));
      expect(rows).toHaveLength(13);
      expect(new Set(rows.map((row) => row.length))).toEqual(new Set([head.length]));
      // Rows are 5.5 mm apart: one hole in every pitch by row distance.
      for (const [pitch = '', density] of rows) {
        expect(Number(density) * Number.parseFloat(pitch) * 1e-3 * 5.5e-3).toBeCloseTo(1, 5);
      }
      const thread = rows.map(([, , mass]) => Number(mass));
      expect(thread).toEqual([...thread].sort((a, b) => b - a));
    },

    'compare-designs': async () => {
      const text = await run('compare-designs');
      expect(text).toContain('2 inputs differ');
      expect(text).toContain('stitching.edge-rows.pitch: 4 mm -> 6 mm');
      expect(text).toMatch(/penetrationDensity: \d+ -> \d+ {2}\(-33\.\d %\)/);
      const same = at('examples/minimal.yaml');
      expect(await run('compare-designs', same, same)).toMatch(/\b0 inputs differ.*\b0 results moved/s);
    },

    'toughness-and-density': async () => {
      const rows = lines(await run('toughness-and-density'))
        .filter((line) => /^ +\d/.test(line))
        .map(numbers);
      expect(rows).toHaveLength(8);
      // Each penetration adds the same work: toughness less that of the bond, 350 J/m², goes with one over the area of a hole.
      const works = rows.map(([spacing = 0, pitch = 0, , toughness = 0]) => (toughness - 350) * spacing * pitch);
      for (const work of works) expect(work / (works[0] ?? 0)).toBeCloseTo(1, 2);
      for (const [, , , toughness = 0, low = 0, high = 0] of rows)
        expect(low < toughness && toughness < high).toBe(true);
    },

    'double-cantilever': async () => {
      const said = await run('double-cantilever', 'dcb.csv');
      const [, ...rows] = cells(await readFile(at('dcb.csv'), 'utf8'));
      const peaks = ['without stitches', 'with rows of stitches'].map((name) => {
        const states = rows.filter(([specimen]) => specimen === name).map((row) => row.slice(1).map(Number));
        const lengths = states.map(([, , length]) => length ?? 0);
        expect(lengths).toEqual([...lengths].sort((a, b) => a - b));
        const peak = Math.max(...states.map(([, load]) => load ?? 0));
        expect(said).toContain(`${name}: ${states.length} states, at most ${peak.toFixed(1)} N`);
        return peak;
      });
      expect(peaks[1]).toBeGreaterThan(peaks[0] ?? 0);
    },

    'design-variants': async () => {
      const said = await run('design-variants', 'variants');
      const wanted = { 'closer-pitch': '3 mm', 'wider-pitch': '6 mm', 'more-glass': '4 mm' };
      for (const [name, pitch] of Object.entries(wanted)) {
        const text = await readFile(at('variants', `${name}.yaml`), 'utf8');
        expect(inputAt(designInputs(text), 'stitching.edge-rows.pitch')).toBe(pitch);
        expect(text.match(/#.*$/gm)).toEqual((await example('shingle-640-three-rows')).match(/#.*$/gm));
        const missed = compute(assemble(readDesign(text))).targets.filter(({ met }) => !met);
        const line = lines(said).find((one) => one.includes(name)) ?? '';
        expect(line.split('missed: ')[1]).toBe(missed.map(({ quantity }) => quantity).join(', ') || 'none');
      }
    },

    'target-probability': async () => {
      const text = await run('target-probability', '200');
      expect(await run('target-probability', '200')).toBe(text);
      const shares = [...text.matchAll(/: ([\d.]+) %, ([\d.]+) % to ([\d.]+) %$/gm)].map((row) =>
        row.slice(1).map(Number),
      );
      const { targets } = compute(assemble(readDesign(await example('shingle-640-three-rows'))));
      expect(shares).toHaveLength(targets.length + 1);
      for (const [value = 0, low = 0, high = 0] of shares)
        expect(0 <= low && low <= value && value <= high && high <= 100).toBe(true);
      const hard = shares.slice(0, -1).filter((_, i) => targets[i]?.hard);
      expect(shares.at(-1)?.[0]).toBeLessThanOrEqual(Math.min(...hard.map(([value = 0]) => value)));
    },

    'report-and-figures': async () => {
      await run('report-and-figures', 'report');
      const files = readdirSync(at('report'));
      const { blocks } = report(assemble(readDesign(await example('shingle-640-three-rows'))));
      const figures = blocks.flatMap((block) => (block.kind === 'figure' ? [block] : []));
      expect(figures.length).toBeGreaterThan(3);
      expect(files.sort()).toEqual(
        [...figures.map(({ id }) => `${id}.svg`), 'report.html', 'report-us.html', 'tables.csv'].sort(),
      );
      for (const { id, svg } of figures) expect(await readFile(at('report', `${id}.svg`), 'utf8')).toBe(svg);
      expect(await readFile(at('report/report.html'), 'utf8')).toMatch(/^<!doctype html>.*2\.677.*<\/html>\s*$/s);
    },
  };

  describe('run, and what they print holds', () => {
    it('for every script there is a test', () => {
      expect([...Object.keys(tests).map((name) => `${name}.mjs`), server].sort()).toEqual(names.sort());
    });
    for (const [name, test] of Object.entries(tests)) it(name, test, 120_000);
  });
}
