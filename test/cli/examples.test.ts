import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { freshCommand } from './support/command.js';

describe('selvage examples', () => {
  const command = freshCommand();
  const id = 'thermal-response-cross-ply-carbon';

  it('writes an example as a design file, which is checked and reported', async () => {
    const cwd = await command.directory();
    const written = await command.run(['examples', id, '--design', '--out', 'cooled.yaml'], { cwd });
    expect(written).toMatchObject({ code: 0, stdout: '', stderr: 'wrote cooled.yaml\n' });
    const printed = await command.run(['examples', id, '--design']);
    expect(printed.stdout).toBe(await readFile(join(cwd, 'cooled.yaml'), 'utf8'));
    expect(await command.run(['check', 'cooled.yaml'], { cwd })).toMatchObject({ code: 0 });
    const report = await command.run(['report', 'cooled.yaml'], { cwd });
    expect(report.code).toBe(0);
    // Kaw: kappax = -1.276e-1 1/m.
    expect(report.stdout).toContain('-0.1276');
  });

  it.each([
    { args: ['--design'], says: '`--design` needs the id of an example' },
    { args: [id, '--design', '--format', 'html'], says: '`--design` writes YAML' },
    { args: ['strength', '--design'], says: 'there is no worked example `strength`' },
    { args: ['glass-thickness-formula', '--design'], says: 'has no design file: its values are coefficients' },
    { args: ['strenght'], says: 'did you mean `strength`?' },
  ])('with $args is wrong usage, and says why', async ({ args, says }) => {
    const answer = await command.run(['examples', ...args]);
    expect(answer).toMatchObject({ code: 64, stdout: '' });
    expect(answer.stderr).toContain(says);
  });

  it('lists in text, and gives the examples themselves in every other format', async () => {
    const text = await command.run(['examples', 'edge']);
    expect(text.stdout).toContain('- edge-delamination-onset: ');
    expect(text.stdout).not.toContain('GMetric');
    for (const format of ['markdown', 'html', 'json', 'csv']) {
      const whole = await command.run(['examples', 'edge', '--format', format]);
      expect(whole.stdout, format).toContain('GMetric');
    }
  });
});
