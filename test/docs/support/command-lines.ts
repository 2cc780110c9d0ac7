import type { DocPage } from './pages.js';

/** One call of the command as a page shows it. */
export interface CommandLine {
  readonly line: string;
  readonly args: readonly string[];
  /** Status with which it ends: 0, or what a comment behind it says: `# status 1`. */
  readonly status: number;
  /** File that a `<` feeds to it, and file that a `>` writes. */
  readonly stdin?: string;
  readonly stdout?: string;
  /** What the page shows of the answer; a line with only `…` stands for lines left out. */
  readonly shown?: string;
}

/** Calls that end only by the keyboard. */
const needsTerminal = (line: string): boolean => /\s--watch\b/.test(line);

function words(line: string): string[] {
  const plain = line.replace(/\s+#.*$/, '');
  return [...plain.matchAll(/"([^"]*)"|'([^']*)'|(\S+)/g)].map(
    ([, double, single, bare]) => double ?? single ?? bare ?? '',
  );
}

function commandLine(line: string): CommandLine {
  const args: string[] = [];
  const redirected: { stdin?: string; stdout?: string } = {};
  const all = words(line).slice(1);
  for (let i = 0; i < all.length; i++) {
    const word = all[i] ?? '';
    if (word === '<') redirected.stdin = all[++i] ?? '';
    else if (word === '>') redirected.stdout = all[++i] ?? '';
    else args.push(word);
  }
  return { line, args, status: Number(/\s#.*\bstatus (\d+)/.exec(line)?.[1] ?? 0), ...redirected };
}

/**
 * The calls of a page in its order: lines of `sh` blocks that begin with `selvage `. A `text` block that is the next one after
 * an `sh` block shows what its last call answers.
 */
export function commandLines({ blocks }: DocPage): CommandLine[] {
  return blocks.flatMap((block, i) => {
    if (block.language !== 'sh') return [];
    const lines = block.text.split('\n').filter((line) => line.startsWith('selvage ') && !needsTerminal(line));
    const next = blocks[i + 1];
    return lines.map((line, k) => ({
      ...commandLine(line),
      ...(next?.language === 'text' && k === lines.length - 1 ? { shown: next.text } : {}),
    }));
  });
}

/** The first stretch of shown lines that the answer does not have, in its place and order; undefined when all is there. */
export function notAnswered(shown: string, answer: string): string | undefined {
  const lines = answer.split('\n').map((line) => line.trimEnd());
  const stretches = shown
    .split(/^[ \t]*…[ \t]*$/m)
    .map((stretch) =>
      stretch
        .replace(/^\n+|\n+$/g, '')
        .split('\n')
        .map((line) => line.trimEnd()),
    )
    .filter((stretch) => stretch.join('') !== '');
  let from = 0;
  for (const stretch of stretches) {
    const at = lines.findIndex((_, k) => k >= from && stretch.every((line, i) => lines[k + i] === line));
    if (at < 0) return stretch.join('\n');
    from = at + stretch.length;
  }
  return undefined;
}
