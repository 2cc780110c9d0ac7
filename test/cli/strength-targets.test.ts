import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { freshCommand } from './support/command.js';

const example = new URL('../../docs/examples/osier-500-strength.yaml', import.meta.url);

describe('a target on strength', () => {
  const command = freshCommand();

  it('that is met, or missed but soft, ends the report with 0', async () => {
    const answer = await command.run(['report', example.pathname, '--summary']);
    expect(answer.stdout).toContain('(soft)');
    expect(answer.code).toBe(0);
  });

  it('that is missed and hard ends it with 1, and is named', async () => {
    const cwd = await command.directory();
    const text = await readFile(example, 'utf8');
    const hard = text.replace('{ quantity: loads.stroke.progressive.lastPly.ratio, atLeast: 3 }', (target) =>
      target.replace('3', '30'),
    );
    await writeFile(join(cwd, 'hard.yaml'), hard);
    const answer = await command.run(['report', 'hard.yaml', '--summary'], { cwd });
    expect(answer.code).toBe(1);
    expect(answer.stderr).toContain('loads.stroke.progressive.lastPly.ratio');
  });

  it('on a ratio that is not there is an error at the target', async () => {
    const cwd = await command.directory();
    const text = await readFile(example, 'utf8');
    await writeFile(join(cwd, 'wrong.yaml'), text.replace('stroke.progressive.lastPly', 'clamped.progressive.lastPly'));
    const answer = await command.run(['check', 'wrong.yaml'], { cwd });
    expect(answer.code).toBe(65);
    expect(answer.stderr).toContain('the report has no `loads.clamped.progressive.lastPly.ratio`');
  });
});
