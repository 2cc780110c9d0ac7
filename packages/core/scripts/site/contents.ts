import { readdirSync, readFileSync, statSync } from 'node:fs';
import { basename, dirname, join, normalize } from 'node:path';

/** A file that the site shows as a page, and the section of the contents page in which it stands. */
export interface ListedPage {
  /** From the root of the repository. */
  readonly path: string;
  /** As the contents page names it; its own name where only the folder stands there. */
  readonly title: string;
  readonly section: string;
}

export const contentsPath = 'docs/README.md';

const filesOf = (root: string, path: string): string[] =>
  statSync(join(root, path)).isDirectory()
    ? readdirSync(join(root, path))
        .sort()
        .map((name) => join(path, name))
        .filter((one) => statSync(join(root, one)).isFile())
    : [path];

/** The heading of a page, the name of any other file. */
function titleOf(root: string, path: string): string {
  const heading = path.endsWith('.md') ? /^# (.+)$/m.exec(readFileSync(join(root, path), 'utf8'))?.[1] : undefined;
  return heading ?? basename(path);
}

/**
 * The pages in the order of docs/README.md: what stands in the lists below its headings. A folder that is linked there
 * stands for its files.
 */
export function listedPages(root: string): ListedPage[] {
  const pages: ListedPage[] = [];
  let section = '';
  for (const line of readFileSync(join(root, contentsPath), 'utf8').split('\n')) {
    section = /^## (.+)$/.exec(line)?.[1] ?? section;
    const [, title, target] = /^- \[([^\]]+)\]\(([^)#]+)\)/.exec(line) ?? [];
    if (title === undefined || target === undefined) continue;
    const path = normalize(join(dirname(contentsPath), target));
    for (const file of filesOf(root, path))
      pages.push({ path: file, section, title: file === path ? title : titleOf(root, file) });
  }
  return pages;
}
