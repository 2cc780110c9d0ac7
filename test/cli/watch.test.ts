import { readFile, rename, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { changeLines, changesBetween } from '../../packages/cli/src/changes.js';
import { freshCommand } from './support/command.js';
import { minimal } from './support/designs.js';

const command = freshCommand();

/** Starts watching; `until` waits for the next part of either stream that holds a text. */
function watching(cwd: string, ...options: string[]) {
  const child = command.start(['report', 'design.yaml', '--watch', ...options], { cwd });
  let heard = '';
  const listen = (chunk: Buffer) => {
    heard += chunk.toString();
  };
  child.stdout?.on('data', listen);
  child.stderr?.on('data', listen);
  const ended = new Promise<number | null>((resolve) => child.on('close', resolve));
  return {
    async until(text: string): Promise<string> {
      for (let i = 0; i < 400 && !heard.includes(text); i++) await new Promise((wait) => setTimeout(wait, 25));
      expect(heard).toContain(text);
      const said = heard;
      heard = '';
      return said;
    },
    async interrupt(): Promise<number | null> {
      child.kill('SIGINT');
      return ended;
    },
  };
}

describe('watching a design', () => {
  it('computes again at every save, says what changed, survives problems and ends with 130', async () => {
    const cwd = await command.directory();
    const path = join(cwd, 'design.yaml');
    await writeFile(path, minimal);
    const session = watching(cwd, '--out', 'r.json');
    await session.until('ok; waiting');
    const good = JSON.parse(await readFile(join(cwd, 'r.json'), 'utf8'));

    await writeFile(path, minimal.replace('title:', 'titel:'));
    expect(await session.until('not computed; waiting')).toContain('design.yaml:2:1: error[unknown-key]');
    expect(JSON.parse(await readFile(join(cwd, 'r.json'), 'utf8'))).toEqual(good);

    await writeFile(join(cwd, 'next'), minimal.replace('0.125 mm', '0.25 mm'));
    await rename(join(cwd, 'next'), path);
    const said = await session.until('ok; waiting');
    expect(said).toContain('changed (SI units):');
    expect(said).toContain('(+100 %)');
    expect(await session.interrupt()).toBe(130);
  }, 30_000);
});

describe('what changed', () => {
  it('lists words first, then numbers by their relative change', () => {
    const before = { verdict: 'bond', a: 1, b: { c: [2, 4] } };
    const after = { verdict: 'arm', a: 1.1, b: { c: [2, 6] } };
    expect(changeLines(changesBetween(before, after))).toBe(
      [
        'changed (SI units):',
        '  verdict  bond -> arm',
        '  b.c[1]   4 -> 6  (+50 %)',
        '  a        1 -> 1.1  (+10 %)',
        '',
      ].join('\n'),
    );
  });

  it('leaves out the round-off of a matrix', () => {
    expect(changesBetween({ A: [[1e8, 1e-9]] }, { A: [[1e8, -3e-9]] })).toEqual([]);
  });

  it('gives no percentage of zero and counts what it does not show', () => {
    const lines = changeLines(changesBetween({ a: [0, 1, 2] }, { a: [1, 2, 3] }), 2);
    expect(lines).toContain('a[0]  0 -> 1\n');
    expect(lines).toContain('and 1 more');
  });

  it('puts targets first, then what a designer looks at, and leaves out remarks and the round-off of a list', () => {
    const of = (thickness: number, z: number, note: string) => ({
      targets: [{ quantity: 'laminates.skin.thickness', value: thickness, met: thickness < 1.1e-3 }],
      laminates: {
        skin: {
          thickness,
          plies: [
            { z: 1e-3, angle: 0 },
            { z, angle: 10 * thickness },
          ],
          notes: [note],
        },
      },
    });
    expect(changeLines(changesBetween(of(1e-3, 0, 'a'), of(1.2e-3, -5e-20, 'b')))).toBe(
      [
        'changed (SI units):',
        '  target laminates.skin.thickness.met    met -> NOT MET',
        '  target laminates.skin.thickness.value  0.001 -> 0.0012  (+20 %)',
        '  laminates.skin.thickness               0.001 -> 0.0012  (+20 %)',
        '  and 1 more',
        '',
      ].join('\n'),
    );
  });

  it('says when nothing did', () => {
    expect(changeLines(changesBetween({ a: 1 }, { a: 1 }))).toBe('no result changed\n');
  });
});
