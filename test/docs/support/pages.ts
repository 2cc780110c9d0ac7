import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

/** One fenced block of a page. */
export interface FencedBlock {
  readonly language: string;
  readonly text: string;
  /** Line of the opening fence, counting from 1. */
  readonly line: number;
}

/** A Markdown file of the repository, `path` from its root. */
export interface DocPage {
  readonly path: string;
  readonly text: string;
  readonly blocks: readonly FencedBlock[];
}

export const root = new URL('../../../', import.meta.url);

/** What is installed, built or recorded, not written. */
const skipped = new Set(['node_modules', 'dist', 'coverage', 'golden', 'site']);

function markdownUnder(folder: string): string[] {
  return readdirSync(new URL(folder, root), { withFileTypes: true }).flatMap((entry) => {
    if (entry.isDirectory()) {
      const hidden = entry.name.startsWith('.') && entry.name !== '.github';
      return hidden || skipped.has(entry.name) ? [] : markdownUnder(`${folder}${entry.name}/`);
    }
    return entry.name.endsWith('.md') ? [folder + entry.name] : [];
  });
}

/** The fenced blocks of a Markdown text; a fence is three backticks at the start of a line. */
function fencedBlocks(text: string): FencedBlock[] {
  const blocks: FencedBlock[] = [];
  let open: { language: string; line: number; lines: string[] } | undefined;
  for (const [index, line] of text.split('\n').entries()) {
    const fence = /^```(\S*)\s*$/.exec(line);
    if (fence === null) open?.lines.push(line);
    else if (open === undefined) open = { language: fence[1] ?? '', line: index + 1, lines: [] };
    else {
      blocks.push({ language: open.language, text: `${open.lines.join('\n')}\n`, line: open.line });
      open = undefined;
    }
  }
  if (open !== undefined) throw new Error(`the block of line ${open.line} is not closed`);
  return blocks;
}

const page = (path: string): DocPage => {
  const text = readFileSync(new URL(path, root), 'utf8');
  return { path, text, blocks: fencedBlocks(text) };
};

/** Every page of the repository. */
export const pages: readonly DocPage[] = markdownUnder('').sort().map(page);

const generated = new Set(['docs/guide/design-file.md', 'docs/guide/errors.md']);

/** The pages that are written for users, and are run. */
export const guides: readonly DocPage[] = pages.filter(
  ({ path }) => path === 'README.md' || (path.startsWith('docs/guide/') && !generated.has(path)),
);

/** The page at a path. */
export function pageAt(path: string): DocPage {
  const found = pages.find((one) => one.path === path);
  if (found === undefined) throw new Error(`there is no page ${path}`);
  return found;
}

/** An absolute path in the repository. */
export const inRoot = (path: string): string => fileURLToPath(new URL(path, root));

/** Rows of the Markdown table whose head has these labels: the cells of each row, trimmed. */
export function tableRows({ text, path }: DocPage, ...labels: readonly string[]): string[][] {
  const lines = text.split('\n');
  const cells = (line: string): string[] =>
    line
      .split('|')
      .slice(1, -1)
      .map((cell) => cell.trim());
  const head = lines.findIndex((line) => line.startsWith('|') && cells(line).join('|') === labels.join('|'));
  if (head < 0) throw new Error(`${path} has no table with the head ${labels.join(', ')}`);
  const end = lines.findIndex((line, i) => i > head && !line.startsWith('|'));
  return lines.slice(head + 2, end < 0 ? undefined : end).map(cells);
}

/** The text of the code spans of a table cell. */
export function codeSpans(cell: string): string[] {
  return [...cell.matchAll(/(`+)( ?)(.+?)\2\1(?!`)/g)].map(([, , , text = '']) => text);
}
