import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { beforeEach, describe, expect, it } from 'vitest';
import { freshCommand } from './support/command.js';
import { minimal, withTarget } from './support/designs.js';

const command = freshCommand();
let cwd = '';
const target = '{ quantity: laminates.skin.thickness, atMost: 1.2 mm }';
beforeEach(async () => {
  cwd = await command.directory();
  await writeFile(join(cwd, 'a.yaml'), withTarget(target));
  await writeFile(join(cwd, 'b.yaml'), withTarget(target).replace('0.125 mm', '0.2 mm'));
});
const run = (...args: string[]) => command.run(args, { cwd });
const save = (name: string, text: string) => writeFile(join(cwd, name), text);

describe('compare', () => {
  it('shows inputs that differ and what came of it, and ends with 1 where a target is missed', async () => {
    const { code, stdout, stderr } = await run('compare', 'a.yaml', 'b.yaml');
    expect(code).toBe(1);
    expect(stderr).toBe('selvage: 1 target is not met: laminates.skin.thickness of b\n');
    expect(stdout).toMatch(/materials\.ud\.thickness +0\.125 mm +0\.2 mm/);
    expect(stdout).toMatch(/laminates\.skin\.thickness +1 mm +1\.6 mm +60 %/);
  });

  it('takes several designs and writes a page', async () => {
    expect(await run('compare', 'a.yaml', 'a.yaml', 'a.yaml', '--out', 'c.html')).toMatchObject({
      code: 0,
      stdout: '',
    });
    expect(await readFile(join(cwd, 'c.html'), 'utf8')).toContain('No input differs.');
  });

  it('needs two designs, never overwrites one, and says which of them is broken', async () => {
    expect(await run('compare', 'a.yaml')).toMatchObject({ code: 64, stdout: '' });
    expect(await run('compare', 'a.yaml', 'b.yaml', '--out', 'b.yaml', '--format', 'text')).toMatchObject({ code: 64 });
    await save('b.yaml', minimal.replace('stack:', 'stak:'));
    const { code, stdout, stderr } = await run('compare', 'a.yaml', 'b.yaml');
    expect({ code, stdout }).toEqual({ code: 65, stdout: '' });
    expect(stderr).toContain('b.yaml:15:');
    expect(await run('compare', 'a.yaml', 'none.yaml')).toMatchObject({ code: 66 });
  });
});

describe('sweep', () => {
  it('writes every point with the quantities asked for', async () => {
    const density = 'stitching.rows.penetrationDensity';
    const args = ['--vary', 'stitching.rows.pitch=2mm..4mm:3', '--quantity', density, '--format', 'json'];
    const { code, stdout } = await run('sweep', 'a.yaml', ...args);
    expect(code).toBe(0);
    const { points } = JSON.parse(stdout);
    expect(points.map(({ inputs }: { inputs: string[] }) => inputs[0])).toEqual(['2 mm', '3 mm', '4 mm']);
    for (const { inputs, values } of points) {
      expect(values[0] * Number.parseFloat(inputs[0]) * 1e-3 * 5.5e-3).toBeCloseTo(1, 9);
    }
  });

  it('looks at the targets where no quantity is named, and draws a figure', async () => {
    const { code } = await run('sweep', 'a.yaml', '--vary', 'materials.ud.thickness=0.1mm..0.2mm:5', '--out', 's.html');
    expect(code).toBe(0);
    const page = await readFile(join(cwd, 's.html'), 'utf8');
    expect(page).toContain('figure-sweep-laminates-skin-thickness');
    expect(page).toContain('NOT MET');
  });

  it('notes in every form that its input moves none of the quantities', async () => {
    const note = 'materials.ud.E1 does not move laminates.skin.thickness: the same at every point';
    const args = ['sweep', 'a.yaml', '--vary', 'materials.ud.E1=100GPa..120GPa:3'];
    for (const format of ['text', 'markdown']) {
      const { code, stdout } = await run(...args, '--format', format);
      expect(code).toBe(0);
      expect(stdout.replaceAll(/\s+/g, ' ')).toContain(note);
    }
    const { notes } = JSON.parse((await run(...args, '--format', 'json')).stdout);
    expect(notes).toEqual([{ level: 'warning', text: note }]);
  });

  it('says what is wrong with a variation, an input or a quantity', async () => {
    expect(await run('sweep', 'a.yaml')).toMatchObject({ code: 64 });
    const wrong = await run('sweep', 'a.yaml', '--vary', 'stitching.row.pitch=2mm..4mm:3');
    expect(wrong.code).toBe(65);
    expect(wrong.stderr).toContain('did you mean `rows`?');
    const typed = await run('sweep', 'a.yaml', '--vary', 'stitching.rows.pitch=2mm..4cm:3');
    expect(typed.code).toBe(64);
    expect(typed.stderr).toContain('ends in two units');
    await save('c.yaml', minimal);
    const none = await run('sweep', 'c.yaml', '--vary', 'stitching.rows.pitch=2mm..4mm:3');
    expect(none.code).toBe(64);
    expect(none.stderr).toContain('`--quantity`');
  });
});

describe('sensitivity', () => {
  it('ranks the inputs and names those that move nothing', async () => {
    const { code, stdout } = await run('sensitivity', 'a.yaml', '--format', 'json');
    expect(code).toBe(0);
    const { inputs, idle } = JSON.parse(stdout);
    expect(inputs).toHaveLength(1);
    expect(inputs[0]).toMatchObject({ path: 'materials.ud.thickness' });
    expect(inputs[0].responses[0].elasticity).toBeCloseTo(1, 9);
    expect(idle).toContain('materials.ud.E1');
  });

  it('lists what moves none of the quantities, and apart from it what is no quantity', async () => {
    const { stdout } = await run('sensitivity', 'a.yaml');
    expect(stdout).toContain('Inputs that move none of these quantities');
    const apart = stdout.slice(stdout.indexOf('Numbers that name or count something, not varied'));
    expect(apart).toContain('stitching.rows.stitchType');
  });

  it('refuses a step that is none', async () => {
    expect(await run('sensitivity', 'a.yaml', '--step', '2')).toMatchObject({ code: 64, stdout: '' });
  });
});

describe('uncertainty', () => {
  const tolerances = 'tolerances:\n  - { input: materials.ud.thickness, relative: 10 % }\n';

  it('gives the same bits for the same seed', async () => {
    await save('t.yaml', `${withTarget(target)}${tolerances}`);
    const args = ['uncertainty', 't.yaml', '--samples', '200', '--format', 'json'];
    const first = await run(...args);
    expect(first.code).toBe(0);
    expect(await run(...args, '--seed', '1')).toEqual(first);
    expect((await run(...args, '--seed', '2')).stdout).not.toBe(first.stdout);
    const { quantities } = JSON.parse(first.stdout);
    // Eight plies of 0.125 mm, two standard deviations are 10 %.
    expect(quantities[0].linear.standardDeviation).toBeCloseTo(0.05e-3, 12);
  });

  it('has its tolerances checked with the rest of the design', async () => {
    await save('t.yaml', `${minimal}tolerances:\n  - { input: materials.ud.thicknes, relative: 10 % }\n`);
    const { code, stderr } = await run('check', 't.yaml');
    expect(code).toBe(65);
    expect(stderr).toContain('t.yaml:23:14: error[unknown-name]');
    expect(stderr).toContain('did you mean `thickness`?');
  });

  it('needs tolerances and a number of samples that makes sense', async () => {
    const { code, stderr } = await run('uncertainty', 'a.yaml');
    expect(code).toBe(65);
    expect(stderr).toContain('tolerances');
    expect(await run('uncertainty', 'a.yaml', '--samples', 'many')).toMatchObject({ code: 64 });
  });
});
