import { readFile, rename, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { freshCommand } from './support/command.js';
import { minimal } from './support/designs.js';

const command = freshCommand();

/** Starts watching; `until` waits for the next part of either stream that holds a text. */
function watching(cwd: string, ...args: string[]) {
  const child = command.start([...args, '--watch'], { cwd });
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
    const session = watching(cwd, 'report', 'design.yaml', '--out', 'r.json');
    await session.until('ok; waiting');
    const good = JSON.parse(await readFile(join(cwd, 'r.json'), 'utf8'));

    await writeFile(path, minimal.replace('title:', 'titel:'));
    expect(await session.until('not computed, the numbers above still hold; waiting')).toContain(
      'design.yaml:2:1: error[unknown-key]',
    );
    expect(JSON.parse(await readFile(join(cwd, 'r.json'), 'utf8'))).toEqual(good);

    await writeFile(join(cwd, 'next'), minimal.replace('0.125 mm', '0.25 mm'));
    await rename(join(cwd, 'next'), path);
    const said = await session.until('ok; waiting');
    expect(said).toMatch(/^changed:\n/m);
    expect(said).toMatch(/laminates\.skin\.thickness +1 mm -> 2 mm +\(\+100 %\)/);
    expect(said).not.toContain('since the start');

    await writeFile(path, minimal.replace('0.125 mm', '0.5 mm'));
    expect(await session.until('ok; waiting')).toMatch(
      /since the start:\n[\s\S]*laminates\.skin\.thickness +1 mm -> 4 mm +\(\+300 %\)/,
    );
    await writeFile(path, minimal);
    expect(await session.until('ok; waiting')).toContain('as at the start again');
    expect(await session.interrupt()).toBe(130);
  }, 30_000);

  it('watches every design of a comparison and says of which of them something changed', async () => {
    const cwd = await command.directory();
    await writeFile(join(cwd, 'a.yaml'), minimal);
    await writeFile(join(cwd, 'b.yaml'), minimal);
    const session = watching(cwd, 'compare', 'a.yaml', 'b.yaml');
    expect(await session.until('ok; waiting')).toContain('No input differs.');
    await writeFile(join(cwd, 'b.yaml'), minimal.replace('0.125 mm', '0.25 mm'));
    const said = await session.until('ok; waiting');
    expect(said).toMatch(/b:\n[\s\S]*laminates\.skin\.thickness +1 mm -> 2 mm/);
    expect(said).not.toMatch(/^a:/m);
    await writeFile(join(cwd, 'b.yaml'), minimal.replace(/\nloads:[\s\S]*$/, '\n'));
    expect(await session.until('ok; waiting')).toMatch(/b:\n {2}gone: loads\n/);
    await rename(join(cwd, 'b.yaml'), join(cwd, 'c.yaml'));
    expect(await session.until('numbers above still hold')).toContain('b.yaml');
    expect(await session.interrupt()).toBe(130);
  }, 30_000);
});
