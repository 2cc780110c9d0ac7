import { chmod, mkdir, readdir, readFile, stat, symlink, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { beforeEach, describe, expect, it } from 'vitest';
import { freshCommand } from './support/command.js';
import { minimal, withTarget } from './support/designs.js';

const command = freshCommand();
let cwd = '';
beforeEach(async () => {
  cwd = await command.directory();
  await writeFile(join(cwd, 'design.yaml'), minimal);
});
const run = (...args: string[]) => command.run(args, { cwd });
const text = (name: string) => readFile(join(cwd, name), 'utf8');

describe('a report', () => {
  it('goes to standard output and nothing else does', async () => {
    const { code, stdout, stderr } = await run('report', 'design.yaml');
    expect({ code, stderr }).toEqual({ code: 0, stderr: '' });
    expect(stdout).toContain('Minimal');
    expect(stdout).not.toContain('\u001b[');
  });

  it('as JSON is one document of format 1', async () => {
    const { stdout } = await run('report', 'design.yaml', '--format', 'json');
    expect(JSON.parse(stdout)).toMatchObject({ format: 1, title: 'Minimal', laminates: { skin: {} } });
  });

  it('is the same from standard input', async () => {
    const piped = await command.run(['report', '-'], { cwd, stdin: minimal });
    expect(piped).toEqual(await run('report', 'design.yaml'));
  });

  it('of a design that misses a hard target ends with 1 and names it on standard error', async () => {
    await writeFile(join(cwd, 'design.yaml'), withTarget('{ quantity: laminates.skin.thickness, atMost: 0.5 mm }'));
    const { code, stdout, stderr } = await run('report', 'design.yaml');
    expect(code).toBe(1);
    expect(stdout).toContain('Minimal');
    expect(stderr).toBe('selvage: 1 target is not met: laminates.skin.thickness\n');
  });

  it('of a design that misses only a soft target ends with 0', async () => {
    const target = '{ quantity: laminates.skin.thickness, atMost: 0.5 mm, priority: soft }';
    await writeFile(join(cwd, 'design.yaml'), withTarget(target));
    expect(await run('report', 'design.yaml')).toMatchObject({ code: 0, stderr: '' });
  });

  it.each([
    ['--out', 'design.yaml', '--format', 'text'],
    ['--html', 'design.yaml'],
    ['--html', './design.yaml'],
    ['--out', 'link.html'],
  ])('never overwrites the design that it reads: %s %s', async (...args) => {
    await symlink('design.yaml', join(cwd, 'link.html'));
    const { code, stdout, stderr } = await run('report', 'design.yaml', ...args);
    expect({ code, stdout }).toEqual({ code: 64, stdout: '' });
    expect(stderr).toContain('is the design that is read');
    expect(await text('design.yaml')).toBe(minimal);
  });

  it('is not written twice into one file', async () => {
    const { code, stderr } = await run('report', 'design.yaml', '--out', 'r.html', '--html', 'r.html');
    expect(code).toBe(64);
    expect(stderr).toContain('another output');
    expect(await readdir(cwd)).not.toContain('r.html');
  });

  it('takes its format from the extension of the output file', async () => {
    for (const [name, start] of [
      ['r.html', '<!doctype html>'],
      ['r.md', '# Minimal'],
      ['r.json', '{'],
      ['r.txt', 'Minimal'],
    ] as const) {
      expect(await run('report', 'design.yaml', '--out', name)).toMatchObject({ code: 0, stdout: '' });
      expect((await text(name)).toLowerCase().startsWith(start.toLowerCase())).toBe(true);
    }
  });

  it('writes the page beside the summary on the terminal', async () => {
    const { code, stdout, stderr } = await run('report', 'design.yaml', '--summary', '--html', 'r.html');
    expect({ code, stderr }).toEqual({ code: 0, stderr: 'wrote r.html\n' });
    expect(await text('r.html')).toContain('</html>');
    expect(stdout.length).toBeLessThan((await run('report', 'design.yaml')).stdout.length);
  });
});

describe('an output file', () => {
  it('keeps its permissions, and nothing is left beside it', async () => {
    await writeFile(join(cwd, 'r.txt'), 'old');
    await chmod(join(cwd, 'r.txt'), 0o640);
    await run('report', 'design.yaml', '--out', 'r.txt');
    expect((await stat(join(cwd, 'r.txt'))).mode & 0o777).toBe(0o640);
    expect(await text('r.txt')).not.toBe('old');
    expect(await readdir(cwd)).toEqual(['design.yaml', 'r.txt']);
  });

  it('that is a link stays one', async () => {
    await mkdir(join(cwd, 'real'));
    await writeFile(join(cwd, 'real', 'r.txt'), 'old');
    await symlink(join('real', 'r.txt'), join(cwd, 'link.txt'));
    await run('report', 'design.yaml', '--out', 'link.txt');
    expect(await text(join('real', 'r.txt'))).toContain('Minimal');
    expect(await readdir(join(cwd, 'real'))).toEqual(['r.txt']);
  });

  it('stays as it was when the design has problems', async () => {
    await writeFile(join(cwd, 'r.txt'), 'old');
    await writeFile(join(cwd, 'design.yaml'), minimal.replace('title:', 'titel:'));
    expect(await run('report', 'design.yaml', '--out', 'r.txt')).toMatchObject({ code: 65, stdout: '' });
    expect(await text('r.txt')).toBe('old');
  });

  it('stays as it was when the disk takes no more', async () => {
    await writeFile(join(cwd, 'r.txt'), 'old');
    const env = { NODE_OPTIONS: `--import=${fullDisk}` };
    const { code, stderr } = await command.run(['report', 'design.yaml', '--out', 'r.txt'], { cwd, env });
    expect(code).toBe(74);
    expect(stderr).toBe('selvage: cannot write `r.txt`: no space left on the device\n');
    expect(await text('r.txt')).toBe('old');
    expect(await readdir(cwd)).toEqual(['design.yaml', 'r.txt']);
  });

  it('that is a directory cannot be written', async () => {
    await mkdir(join(cwd, 'r.txt'));
    const { code, stderr } = await run('report', 'design.yaml', '--out', 'r.txt');
    expect({ code, stderr }).toEqual({ code: 74, stderr: 'selvage: cannot write `r.txt`: it is a directory\n' });
  });

  it('named - is standard output', async () => {
    expect(await run('report', 'design.yaml', '--out', '-')).toEqual(await run('report', 'design.yaml'));
  });
});

/** A disk on which nothing is ever brought to rest. */
const fullDisk = `data:text/javascript,${encodeURIComponent(`
  import { open } from 'node:fs/promises';
  const file = await open(process.execPath);
  const prototype = Object.getPrototypeOf(file);
  await file.close();
  prototype.sync = async () => { throw Object.assign(new Error('full'), { code: 'ENOSPC' }); };
`)}`;

describe('standard output', () => {
  it('that is closed early ends the run quietly', async () => {
    const child = command.start(['report', 'design.yaml', '--format', 'json'], { cwd });
    let stderr = '';
    child.stderr?.on('data', (chunk: Buffer) => {
      stderr += chunk.toString();
    });
    child.stdout?.destroy();
    const code = await new Promise((resolve) => child.on('close', resolve));
    expect({ code, stderr }).toEqual({ code: 0, stderr: '' });
  });

  it.skipIf(process.platform !== 'linux')('on a full device cannot be written', async () => {
    const file = await import('node:fs/promises').then(({ open }) => open('/dev/full', 'w'));
    const child = command.start(['report', 'design.yaml'], { cwd }, ['ignore', file.fd, 'pipe']);
    let stderr = '';
    child.stderr?.on('data', (chunk: Buffer) => {
      stderr += chunk.toString();
    });
    const code = await new Promise((resolve) => child.on('close', resolve));
    await file.close();
    const message = 'selvage: cannot write to standard output: no space left on the device\n';
    expect({ code, stderr }).toEqual({ code: 74, stderr: message });
  });
});

describe('an error', () => {
  it('is JSON on standard error when the result would have been JSON', async () => {
    await writeFile(join(cwd, 'design.yaml'), minimal.replace('title:', 'titel:'));
    const { code, stdout, stderr } = await run('report', 'design.yaml', '--format', 'json');
    expect({ code, stdout }).toEqual({ code: 65, stdout: '' });
    expect(JSON.parse(stderr)).toMatchObject({
      error: { code: 'bad-data', exitCode: 65, problems: [{ code: 'unknown-key', where: { line: 2, column: 1 } }] },
    });
  });

  it('that nobody foresaw is called our fault, with its stack only on request', async () => {
    const broken = `data:text/javascript,${encodeURIComponent(
      "process.stdout.write = () => { throw new TypeError('something impossible') }",
    )}`;
    const env = { NODE_OPTIONS: `--import=${broken}` };
    const { code, stderr } = await command.run(['--version'], { env });
    expect(code).toBe(70);
    expect(stderr).toContain('internal error: something impossible\nThis is a fault of selvage');
    expect(stderr).not.toContain('    at ');
    expect((await command.run(['--version'], { env: { ...env, SELVAGE_DEBUG: '1' } })).stderr).toContain('    at ');
  });

  it.skipIf(process.getuid?.() === 0)('about an unreadable file says so', async () => {
    await chmod(join(cwd, 'design.yaml'), 0);
    const message = 'selvage: cannot read `design.yaml`: permission denied\n';
    expect(await run('check', 'design.yaml')).toMatchObject({ code: 66, stderr: message });
  });
});

describe('a starter design', () => {
  it('is written once, checks, reports, and is never overwritten', async () => {
    expect(await run('init', 'new/blade')).toMatchObject({ code: 0, stdout: '' });
    const path = join('new', 'blade', 'design.yaml');
    expect(await run('check', path)).toMatchObject({ code: 0, stdout: `${path}: ok\n` });
    expect((await run('report', path)).code).toBeLessThanOrEqual(1);
    const written = await text(path);
    expect(await run('init', 'new/blade')).toMatchObject({ code: 74 });
    expect(await text(path)).toBe(written);
  });

  it.skipIf(process.platform !== 'linux')('below a directory that takes none ends with 74', async () => {
    expect(await run('init', '/proc/selvage')).toMatchObject({ code: 74, stdout: '' });
  });
});
