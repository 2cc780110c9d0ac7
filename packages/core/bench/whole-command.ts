import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const path = (relative: string): string => fileURLToPath(new URL(relative, import.meta.url));
const command = path('../../cli/dist/selvage.mjs');
const design = path('../../../docs/examples/shingle-640-three-rows.yaml');
const runs = 21;

function milliseconds(args: readonly string[]): number {
  const start = performance.now();
  const { status } = spawnSync(process.execPath, args, { stdio: 'ignore' });
  if (status !== 0) throw new Error(`node ${args.join(' ')} ended with ${status}`);
  return performance.now() - start;
}

const median = (values: readonly number[]): number => [...values].sort((a, b) => a - b)[values.length >> 1] ?? 0;

/** The bundled command as a whole process beside bare Node, in turn; the ratio is the median of the pairs. */
export function wholeCommand(write: (line: string) => void): void {
  write('');
  write('whole process, ms (medians of pairs run in turn)');
  if (!existsSync(command)) {
    write('skipped: the command is not built (npm run build)');
    return;
  }
  const bare = ['-e', '0'];
  for (const args of [['report', design], ['report', design, '--summary'], ['check', design], ['--version']]) {
    const pairs = Array.from({ length: runs }, () => ({
      ours: milliseconds([command, ...args]),
      node: milliseconds(bare),
    }));
    const ours = median(pairs.map((pair) => pair.ours));
    const node = median(pairs.map((pair) => pair.node));
    const ratio = median(pairs.map((pair) => pair.ours / pair.node));
    const name = args.map((arg) => (arg === design ? 'DESIGN' : arg)).join(' ');
    write(
      `${name.padEnd(26)} ${ours.toFixed(0).padStart(5)}   node -e 0 ${node.toFixed(0).padStart(5)}   ratio ${ratio.toFixed(2)}`,
    );
  }
}
